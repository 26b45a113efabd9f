// Steps that belong together though nothing brackets them: several "each" that go round at once, and
// groups said without brackets.

import type { Place, Step } from "./tree.ts"

/**
 * Two or more "each" in a row go round together: "1 dc in each ch, 2 dc in each sc", "sc in each st
 * around, 3 sc in each corner". They become one pass in which the later and narrower one wins.
 */
export function asPasses(given: readonly Step[]): Step[] {
  const steps = withChainsBetween(withBareGroups(given))
  const result: Step[] = []
  for (const step of steps) {
    const previous = result[result.length - 1]
    if (previous && isFullPass(step) && (isFullPass(previous) || previous.do === "pass")) {
      const cases = previous.do === "pass" ? previous.cases : [previous]
      result[result.length - 1] = {
        start: previous.start,
        end: step.end,
        do: "pass",
        cases: [...cases, step],
      }
      continue
    }
    if (
      previous &&
      isFullPass(step) &&
      step.place?.at === "each" &&
      step.place.others &&
      isEveryNth(previous)
    ) {
      result[result.length - 1] = {
        start: previous.start,
        end: step.end,
        do: "pass",
        cases: [step, previous],
      }
      continue
    }
    result.push(step)
  }
  return result
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

/** "3 dc, ch 2, 3 dc in next sp": alike before and after the chains, so all of it goes there. */
function withBareGroups(steps: readonly Step[]): Step[] {
  const result: Step[] = []
  for (const step of steps) {
    const chain = result[result.length - 1]
    const first = result[result.length - 2]
    if (
      step.do === "work" &&
      step.place &&
      isOnePlace(step.place) &&
      chain?.do === "chain" &&
      first?.do === "work" &&
      !first.place &&
      !first.even &&
      first.count === step.count &&
      first.stitch.kind.basic === step.stitch.kind.basic &&
      !first.legs
    ) {
      const last: Step = { ...step, place: null }
      result.splice(-2, 2, {
        start: first.start,
        end: step.end,
        do: "group",
        steps: [first, chain, last],
        place: step.place,
      })
    } else result.push(step)
  }
  return result
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

function isFullPass(step: Step): step is Extract<Step, { do: "work" | "group" }> {
  if (step.do !== "work" && step.do !== "group") return false
  return (
    step.place?.at === "each" &&
    step.place.until.kind === "around" &&
    step.place.every === undefined
  )
}
