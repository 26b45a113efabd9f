// Steps that belong together though nothing brackets them: several "each" that go round at once, and
// groups said without brackets.

import type { Place, Step } from "../base/tree.ts"
import { isUnplaced } from "./clauses.ts"

/**
 * Two or more "each" in a row go round together: "1 dc in each ch, 2 dc in each sc", "sc in each st
 * around, 3 sc in each corner". They become one pass in which the later and narrower one wins.
 */
export function asPasses(given: readonly Step[]): Step[] {
  if (given.length < 2) return [...given]
  const steps = withChainsBetween(
    intoCorner(afterSkips(withBareGroups(evenSides(slippedInSpace(given))))),
  )
  const result: Step[] = []
  for (const step of steps) {
    const previous = result[result.length - 1]
    if (previous && isFullPass(step) && (isFullPass(previous) || previous.do === "pass")) {
      const cases = previous.do === "pass" ? previous.cases : [previous]
      result[result.length - 1] = onePass(previous, step, [...cases, step])
      continue
    }
    if (previous && isFullPass(previous) && isEveryNth(step) && intoStitches(previous, step)) {
      // "1 sc in each sc, 2 sc in every 4th": those are made in the same pass.
      result[result.length - 1] = onePass(previous, step, [previous, step])
      continue
    }
    if (
      previous &&
      isFullPass(step) &&
      step.place?.at === "each" &&
      step.place.others &&
      isEveryNth(previous)
    ) {
      result[result.length - 1] = onePass(previous, step, [step, previous])
      continue
    }
    if (previous && isFullPass(previous) && intoCornerLeft(step)) {
      // "dc in each dc around. When you reach the corner, (2 dc, ch 2, 2 dc)": nothing else is left for it.
      const place: Place = {
        start: step.place.start,
        end: step.place.end,
        at: "each",
        nouns: [step.place.noun],
        until: { kind: "around" },
      }
      result[result.length - 1] = onePass(previous, step, [previous, { ...step, place }])
      continue
    }
    result.push(step)
  }
  return result
}

/** "sc evenly around, 3 sc in each corner": one in each stitch between the corners. */
function evenSides(steps: readonly Step[]): readonly Step[] {
  return steps.map((step, i) => {
    const corners = steps[i + 1]
    if (step.do !== "work" || !step.even || step.count > 0 || step.extra || step.place) return step
    if (!corners || !isFullPass(corners) || corners.place?.at !== "each") return step
    if (!corners.place.nouns.every((noun) => noun.what === "corner" || noun.what === "space"))
      return step
    const { start, end, stitch } = step
    const place: Place = {
      start,
      end,
      at: "each",
      nouns: [{ what: "stitch" }],
      until: { kind: "around" },
      unsaid: true,
    }
    return { start, end, do: "work", stitch, count: 1, place }
  })
}

/** A list that goes into the one corner named. */
function intoCornerLeft(
  step: Step,
): step is Extract<Step, { do: "group" }> & { place: Extract<Place, { at: "next" }> } {
  if (step.do !== "group" || step.place.at !== "next" || step.place.count > 1) return false
  const { noun, order } = step.place
  return order === undefined && (noun.what === "corner" || noun.corner === true)
}

/** "skip 1 dc, 2 dc ch 1 2 dc": what stands between skips and reads the same both ways goes into the next stitch. */
function afterSkips(steps: readonly Step[]): readonly Step[] {
  const [skip, ...list] = steps
  const [first, last] = [list[0], list[list.length - 1]]
  if (skip?.do !== "skip" || !first || !last || list.length < 3 || !isPalindrome(list)) return steps
  if (!list.every((step) => isUnplaced(step) && (step.do === "work" || step.do === "chain")))
    return steps
  if (first.do !== "work" || !list.some(({ do: what }) => what === "chain")) return steps
  const span = { start: first.start, end: last.end }
  const place: Place = { ...span, at: "next", noun: { what: "stitch" }, count: 1 }
  return [skip, { ...span, do: "group", steps: list, place }]
}

/** "dc in each dc until you reach the corner, then 2 dc, ch 2, 2 dc": the list goes into the corner. */
function intoCorner(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex(
    (step) => step.do === "work" && step.place?.at === "each" && step.place.until.kind === "to",
  )
  const side = steps[at]
  if (side?.do !== "work" || side.place?.at !== "each" || side.place.until.kind !== "to")
    return steps
  const { noun } = side.place.until
  let to = at + 1
  while (to < steps.length && isUnplaced(steps[to])) to += 1
  const list = steps.slice(at + 1, to)
  const [first, last] = [list[0], list[list.length - 1]]
  if (first?.do !== "work" || last?.do !== "work" || !list.some(({ do: what }) => what === "chain"))
    return steps
  if (noun.what !== "corner" && noun.what !== "space" && !noun.corner) return steps
  const span = { start: first.start, end: last.end }
  const place: Place = { ...span, at: "next", noun, count: 1 }
  const group: Step = { ...span, do: "group", steps: list, place }
  return [...steps.slice(0, at + 1), group, ...intoCorner(steps.slice(to))]
}

/** Two neighbours as one pass over the cases. */
function onePass(first: Step, last: Step, cases: Extract<Step, { do: "pass" }>["cases"]): Step {
  return { start: first.start, end: last.end, do: "pass", cases }
}

/** "(...) in each corner, ch 2, 3 dc in each side sp, ch 2": the chains follow every one of them. */
function withChainsBetween(steps: readonly Step[]): Step[] {
  const passes = steps.filter(isFullPass).length
  const result: Step[] = []
  for (const [i, step] of steps.entries()) {
    const previous = result[result.length - 1]
    const wanted =
      step.do === "chain" && !step.place && (step.between === true || (passes > 1 && i > 0))
    if (!wanted || !previous || !isFullPass(previous)) {
      result.push(step)
      continue
    }
    const chain: Step = { ...step, between: false }
    const place = previous.place!
    const inner: readonly Step[] =
      previous.do === "group" ? previous.steps : [{ ...previous, place: null }]
    result[result.length - 1] = {
      start: previous.start,
      end: step.end,
      do: "group",
      steps: [...inner, chain],
      place,
    }
    // "ch 1 between groups": after the passes before it as well.
    if (step.between)
      for (let k = result.length - 2; k >= 0; k--) {
        const earlier = result[k]!
        if (!isFullPass(earlier)) break
        const own: readonly Step[] =
          earlier.do === "group" ? earlier.steps : [{ ...earlier, place: null }]
        result[k] = { ...earlier, do: "group", steps: [...own, chain], place: earlier.place! }
      }
  }
  return result
}

/**
 * "3 dc, ch 2, 3 dc in next sp", "sc, hdc, dc, hdc, sc in next sp": the same forwards and backwards, so all of
 * it goes there; "1 dc, 3 tr, 1 dc in every loop": what goes into each of several is the whole list.
 */
function withBareGroups(steps: readonly Step[]): Step[] {
  const result: Step[] = []
  for (const step of steps) {
    const from = step.do === "work" && step.place ? listBefore(result, step) : null
    const first = from === null ? undefined : result[from]
    if (step.do !== "work" || !step.place || from === null || !first) {
      result.push(step)
      continue
    }
    const inner = [...result.slice(from), { ...step, place: null }]
    result.splice(from, result.length - from, {
      start: first.start,
      end: step.end,
      do: "group",
      steps: inner,
      place: step.place,
      loose: true,
    })
  }
  return result
}

/** Where the list that ends in a placed stitch begins; null when that stitch stands alone. */
function listBefore(before: readonly Step[], last: Extract<Step, { do: "work" }>): number | null {
  const { place } = last
  if (!place || !isOnePlace(place)) return null
  let from = before.length
  while (from > 0 && isListed(before[from - 1]!)) from -= 1
  const inEach =
    place.at === "each" &&
    place.every === undefined &&
    place.pick === undefined &&
    place.nouns.every((noun) => noun.what === "space" || noun.what === "corner")
  if (inEach) {
    while (from < before.length && before[from]!.do === "chain") from += 1
    return from < before.length ? from : null
  }
  // The longest stretch that reads the same both ways.
  for (let start = from; start < before.length; start++)
    if (before[start]!.do === "work" && isPalindrome([...before.slice(start), last])) return start
  return null
}

/** A stitch or a run of chains with no place of its own. */
function isListed(step: Step): boolean {
  if (step.do === "chain") return !step.place && !step.between && !step.countsAs
  return (
    step.do === "work" &&
    !step.place &&
    !step.even &&
    !step.legs &&
    !step.stitch.tog &&
    step.doubled === undefined &&
    step.between === undefined
  )
}

function isPalindrome(steps: readonly Step[]): boolean {
  if (steps.length < 3) return false
  return steps.every((step, i) => alikeInList(step, steps[steps.length - 1 - i]!))
}

function alikeInList(a: Step, b: Step): boolean {
  if (a.do === "chain") return b.do === "chain" && a.chains === b.chains
  return (
    a.do === "work" &&
    b.do === "work" &&
    a.count === b.count &&
    a.stitch.kind.basic === b.stitch.kind.basic &&
    a.stitch.shape === b.stitch.shape
  )
}

function isOnePlace(place: Place): boolean {
  return (
    (place.at === "next" && place.count === 1) ||
    (place.at === "each" && place.nouns.every((noun) => noun.what !== "chain"))
  )
}

function isEveryNth(step: Step): step is Extract<Step, { do: "work" | "group" }> {
  return (
    (step.do === "work" || step.do === "group") &&
    step.place?.at === "each" &&
    step.place.every !== undefined
  )
}

function intoStitches(...steps: readonly Step[]): boolean {
  return steps.every(
    (step) =>
      step.do === "work" &&
      step.place?.at === "each" &&
      step.place.pick === undefined &&
      step.place.nouns.every((noun) => noun.what === "stitch" || noun.what === "chain"),
  )
}

function isFullPass(step: Step): step is Extract<Step, { do: "work" | "group" }> {
  if (step.do !== "work" && step.do !== "group") return false
  return (
    step.place?.at === "each" &&
    step.place.until.kind === "around" &&
    step.place.every === undefined
  )
}

/** "*sc in next loop, ch 1, 3 tr, ch 1, sc*": a list that ends as it began goes into the one space it names. */
export function mirroredInSpace(steps: readonly Step[]): readonly Step[] {
  const [first, ...rest] = steps
  const last = rest[rest.length - 1]
  if (first?.do !== "work" || first.place?.at !== "next" || first.place.count !== 1) return steps
  if (first.place.noun.what !== "space" || last?.do !== "work" || !rest.every(isUnplaced))
    return steps
  if (
    last.stitch.kind.basic !== first.stitch.kind.basic ||
    rest.filter((step) => step.do === "work").length < 2
  )
    return steps
  const inner = [{ ...first, place: null }, ...rest]
  return [{ start: first.start, end: last.end, do: "group", steps: inner, place: first.place }]
}

/** "sl st into next loop, 5 sc, sl st": from slip stitch to slip stitch all of it goes into the loop. */
function slippedInSpace(steps: readonly Step[]): readonly Step[] {
  const from = steps.findIndex(
    (step, i) => slipsIntoSpace(step) && isUnplaced(steps[i + 1]) && steps[i + 1]!.do === "work",
  )
  const first = steps[from]
  if (first?.do !== "slip" || first.place?.at !== "next") return steps
  let to = from + 1
  while (to < steps.length && isUnplaced(steps[to]) && steps[to]!.do !== "slip") to += 1
  const last = steps[to]
  if (last?.do !== "slip" || (last.place && last.place.at !== "same")) return steps
  const inner: readonly Step[] = [
    { ...first, place: null, to: false },
    ...steps.slice(from + 1, to + 1),
  ]
  const group: Step = {
    start: first.start,
    end: last.end,
    do: "group",
    steps: inner,
    place: first.place,
  }
  return [...steps.slice(0, from), group, ...slippedInSpace(steps.slice(to + 1))]
}

function slipsIntoSpace(step: Step): boolean {
  if (step.do !== "slip" || step.place?.at !== "next") return false
  return step.place.count === 1 && step.place.noun.what === "space"
}
