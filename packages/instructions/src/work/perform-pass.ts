// "In each": one pass over the edge below, from the hook to where it stops, each place of the kinds
// named getting its stitches; of several cases the later and narrower wins.

import type { Noun, Place, Span, Step } from "../base/tree.ts"
import { nounWords } from "../base/wording.ts"
import { groupsFor } from "../edge/groups.ts"
import { fits } from "../edge/meanings.ts"
import type { Site } from "../edge/site.ts"
import { findSite } from "../edge/sites.ts"
import { boundaryOf, endOfSide } from "./boundaries.ts"
import { makeAt } from "./make-stitches.ts"
import { otherGroups } from "./other-names.ts"
import { positionFor } from "./positions.ts"
import type { Position } from "./round-parts.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"
import { noPlace } from "./shortages.ts"

type Filling = Extract<Step, { do: "work" | "group" }>
type Each = Extract<Place, { at: "each" }>

/** One "each". */
export function passEach(work: RoundWork, step: Filling): void {
  const place = step.place as Each
  const [noun] = place.nouns
  if (place.every && place.every > 1 && noun && work.repeatDepth > 0 && isImplied(place)) {
    // "*1 dc in every 3rd sc, ch 4; rep around": the 3rd of the next three, each time.
    const { start, end, every } = place
    const next: Place = { start, end, at: "next", noun, count: every, pick: every }
    work.performers.steps(work, [{ ...step, place: next }])
    return
  }
  const position = positionFor(work, place)
  if (place.pick !== undefined) work.picked = true
  if (position.edge.size === 0) {
    if (
      work.index === 0 &&
      place.nouns.some((noun) => noun.what === "ring" || noun.what === "chain")
    )
      throw noPlace(place, "The number of chains in the ring is not known.")
    throw noPlace(place, "There is nothing below to work into.")
  }
  const boundary =
    place.until.kind === "around" && place.until.side && noun?.what === "space"
      ? endOfSide(position.edge, position.at, work.limitOf(position))
      : boundaryOf(work, position, place.until, place)
  const all = sitesOf(work, position, place, boundary, place)
  const sites = beginsInGap(work, noun, all) ? all.slice(1) : all
  const needed = place.until.kind === "around" && place.until.rest !== true
  if (sites.length === 0 && needed) throw nothingLeft(place)
  const one = alone(step)
  const every = place.every ?? 1
  const started = needed && every === 1 && startsInFirst(work, step, sites)
  if (needed && every === 1 && !started) fillFirst(work, step, sites.length)
  const widens = every > 2 || (every === 2 && alternates(work, step))
  if (every > 1 && sites.length < every && !widens)
    work.find({
      severity: "warning",
      code: "step-without-effect",
      start: step.start,
      end: step.end,
      message: "Fewer places are left than this passes over, so that nothing is worked here.",
      hint: "Look at what stands before it: it may use up the round already.",
    })
  sites.forEach((site, k) => {
    work.countStep(step)
    if (k === 0 && started && step.do === "work") {
      position.at = site.to
      fill(work, { ...one, count: step.count - 1 } as Filling, site, position)
      return
    }
    if ((k + 1) % every !== 0 && widens && step.do === "work" && increases(step)) {
      // "2 sc in every 5th st", "inc every 5th st": an increase round; the others get one each.
      position.at = site.to
      const { shape: _increase, ...stitch } = step.stitch
      fill(work, { ...one, stitch, count: 1 } as Filling, site, position)
      return
    }
    if ((k + 1) % every !== 0 && every > 1) {
      work.use(position, site, "skipped")
      position.at = site.to
      return
    }
    position.at = site.to
    fill(work, one, site, position)
  })
  if (place.until.kind === "around") position.at = Math.max(position.at, boundary)
  else position.at = Math.max(position.at, Math.min(boundary, position.at))
}

/** "ch 3, dc in same sp, 2 dc in each sp" over stitches without chains: the round has begun in the first of the gaps. */
function beginsInGap(
  { allSteps, startSite }: RoundWork,
  noun: Noun | undefined,
  sites: readonly Site[],
): boolean {
  if (startSite?.anchor.at !== "stitch" || sites.length < 2) return false
  if (noun?.what !== "space" && noun?.what !== "gap") return false
  if (sites[0]!.anchor.at !== "between") return false
  return allSteps.some(
    (step) =>
      (step.do === "work" || step.do === "group") &&
      step.place?.at === "same" &&
      (step.place.noun.what === "space" || step.place.noun.what === "gap"),
  )
}

/** "2 sc in every other st" and nothing else: with one in each of the others the round grows; a total may say else. */
function alternates(work: RoundWork, step: Filling): boolean {
  if (step.do !== "work" || !increases(step) || step.count > 2 || step.stitch.kind.gathered)
    return false
  const others = work.allSteps.filter(
    ({ do: what }) => !/^(?:join|slip|turn|mode|attach)$/.test(what),
  )
  if (others.length > 1 || work.repeatDepth > 0) return false
  return work.choices.take("every-second", ["increase", "skip"]) === "increase"
}

function increases({ count, stitch }: Extract<Step, { do: "work" }>): boolean {
  return count > 1 || stitch.shape === "increase"
}

function isImplied(place: Each): boolean {
  return place.until.kind === "around" && place.until.implied === true
}

/** "ch 3 (counts as dc), 3 dc in each sp around": no space is led to, and the chain is the first of three in the first. */
function startsInFirst(work: RoundWork, step: Filling, sites: readonly Site[]): boolean {
  if (step.do !== "work" || step.stitch.kind.gathered || step.stitch.shape) return false
  if (work.repeatDepth > 0 || sites.length < 2 || step.count < 2) return false
  const [first] = work.elements
  if (work.elements.length !== 1 || work.startChain?.counts !== true) return false
  if (first?.type !== "stitch" || first.anchors[0]?.at !== "stitch") return false
  if (!sites.every(({ anchor }) => anchor.at === "space" || anchor.at === "between")) return false
  if (work.choices.take("first-place", ["in-space", "filled", "short"]) !== "in-space") return false
  work.elements[0] = { ...first, anchors: [sites[0]!.anchor] }
  work.find({
    severity: "note",
    code: "begins-in-space",
    start: step.start,
    end: step.end,
    message:
      "Nothing leads to the first space; the starting chain is taken for the first stitch in it.",
    hint: 'Write "sl st to next sp" first.',
  })
  return true
}

/** "ch 3 (counts as dc), 2 dc in each st around": the chain is the first of the two in its stitch. */
function fillFirst(work: RoundWork, step: Filling, places: number): void {
  if (step.do !== "work" || step.stitch.kind.gathered || work.repeatDepth > 0 || places < 2) return
  const each = step.count * (step.stitch.shape === "increase" ? 2 : 1)
  const [first] = work.elements
  if (each < 2 || work.elements.length !== 1 || work.startChain?.counts !== true) return
  if (first?.type !== "stitch" || first.anchors[0]?.at !== "stitch") return
  const short = each * places + 1
  const even = short + each - 1
  const filled = work.choices.take("first-place", ["filled", "short"]) === "filled"
  if (filled)
    for (let k = 1; k < each; k++)
      work.stitch(step.stitch.kind, first.anchors, { start: step.start, end: step.end })
  work.find({
    severity: "warning",
    code: "first-place-short",
    start: step.start,
    end: step.end,
    message: filled
      ? `The starting chain is taken for the first of ${each} in its stitch: that makes ${even}; with the chain alone there it would be ${short}.`
      : `The first stitch has only the starting chain in it, each of the others ${each}: that makes ${short}, where an even round has ${even}.`,
    hint: `If the first is to have ${each} too, write ${each === 2 ? "one more" : `${each - 1} more`} in the same stitch.`,
  })
}

/** Several "each" at once. */
export function passAround(work: RoundWork, cases: readonly Filling[]): void {
  const first = cases[0]
  if (!first) return
  const position = positionFor(work, first.place as Each)
  const { edge } = position
  if (edge.size === 0) throw noPlace(first, "There is nothing below to work into.")
  work.chainsNamed = cases.some(
    (step) =>
      (step.place as Each).pickNoun?.what === "chain" ||
      (step.place as Each).nouns.some((noun) => noun.what === "chain"),
  )
  const boundary = position === work.main ? work.endAround : work.limitOf(position)
  const found = new Map<number, { site: Site; step: Filling }>()
  const worked: { step: Filling; one: Filling }[] = []
  for (const step of cases) {
    const place = step.place as Each
    const one = alone(step)
    if (isSideOfNone(position, place)) continue
    const all = sitesOf(work, position, place, boundary, place)
    if (all.length === 0) throw nothingLeft(place)
    const every = place.every ?? 1
    const sites = all.filter((_, k) => (k + 1) % every === 0)
    if (saysNothingNew(sites, one, found))
      work.find({
        severity: "note",
        code: "step-without-effect",
        start: step.start,
        end: step.end,
        message: "These places are worked into already by what stands before.",
        hint: "",
      })
    worked.push({ step, one })
    for (const site of sites) {
      for (let at = site.from; at < site.to; at++) found.delete(at)
      found.set(site.from, { site, step: one })
    }
  }
  const left = new Set([...found.values()].map(({ step }) => step))
  for (const { step, one } of worked)
    if (!left.has(one))
      work.find({
        severity: "note",
        code: "step-without-effect",
        start: step.start,
        end: step.end,
        message: "What is said after this goes into the same places; this is not worked.",
        hint: "Take out what is not meant.",
      })
  const ordered = [...found.values()].sort((a, b) => a.site.from - b.site.from)
  for (const { site, step } of ordered) {
    work.countStep(step)
    position.at = site.to
    fill(work, step, site, position)
  }
  position.at = Math.max(position.at, boundary)
}

/** "hdc in each hdc around, in every other st": the same again, or nowhere. */
function saysNothingNew(
  sites: readonly Site[],
  step: Filling,
  found: ReadonlyMap<number, { readonly step: Filling }>,
): boolean {
  const work = (one: Filling | undefined) =>
    one?.do === "work" ? JSON.stringify([one.stitch, one.count]) : ""
  return sites.every(({ from }) => step.do === "work" && work(found.get(from)?.step) === work(step))
}

/** "3 dc in each side sp" where all spaces are corners yet: there are none to fill. */
function isSideOfNone(position: Position, place: Each): boolean {
  const { edge } = position
  return (
    edge.round >= 0 &&
    place.nouns.every((noun) => noun.what === "space" && noun.side === true) &&
    !place.nouns.some((noun) => fits(edge, noun)) &&
    fits(edge, { what: "space", corner: true })
  )
}

/** The step as worked into one place found for it. */
function alone(step: Filling): Filling {
  return step.do === "work" ? { ...step, place: null } : step
}

function fill(work: RoundWork, step: Filling, site: Site, position: Position): void {
  if (step.do === "group") {
    // A bare "ch 1" at the head of what goes into each place is no start of the round.
    const [head] = step.steps
    const own = head?.do === "chain" && head.chains === 1 && !head.countsAs
    if (own) work.repeatDepth += 1
    work.performers.groupAt(work, step, site, position)
    if (own) work.repeatDepth -= 1
    return
  }
  work.use(position, site, "worked")
  work.current = site
  if (isPlain(step) && !work.own && !work.pendingLeg) {
    makeAt(work, step, [[site.anchor]], null)
    return
  }
  const before = work.inPlace
  work.inPlace = [site.anchor]
  work.performers.stitches(work, step)
  work.inPlace = before
}

/** Nothing is said of the stitches but how many, so each place simply gets them. */
function isPlain(step: Extract<Step, { do: "work" }>): boolean {
  return step.place === null && !step.between && !step.even && !step.legs && !step.corner
}

/** Every place of the kinds named, in order, from the hook up to the boundary. */
function sitesOf(
  work: RoundWork,
  position: Position,
  place: Each,
  boundary: number,
  span: Span,
): Site[] {
  const { edge } = position
  if (place.pick !== undefined) return pickedSites(work, position, place, boundary)
  const meanings = place.nouns.map((noun) => meaningFor(work, position, noun, span))
  const sites: Site[] = []
  let at = position.at
  while (at < boundary) {
    let best: Site | null = null
    for (const noun of meanings) {
      if (!noun) continue
      const site = findSite(edge, noun, at, boundary, position.base, null)
      if (site && (best === null || site.from < best.from)) best = site
    }
    if (!best) break
    sites.push(best)
    at = Math.max(at + 1, best.past ?? best.to)
  }
  return sites
}

function meaningFor(work: RoundWork, position: Position, noun: Noun, span: Span): Noun | null {
  if (position.edge.round < 0) return { what: "chain" }
  const meaning = work.meaning(position, noun, span)
  if (!meaning.exists) {
    throw new CannotWork({
      severity: "error",
      code: "no-such-place",
      start: span.start,
      end: span.end,
      message: `There is no ${nounWords(noun)} in the round before.`,
      hint: "Compare the name with what the round before makes.",
    })
  }
  return meaning.noun
}

/** "centre ch of each loop", "centre st of each scallop". */
function pickedSites(work: RoundWork, position: Position, place: Each, boundary: number): Site[] {
  const { edge } = position
  const noun = place.nouns[0]!
  const sites: Site[] = []
  if (noun.what === "space") {
    const meaning = meaningFor(work, position, noun, place)
    for (let at = position.at; meaning && at < boundary; ) {
      const space = findSite(edge, meaning, at, boundary, position.base, null)
      if (!space) break
      const width = space.to - space.from
      const k =
        place.pick === "centre"
          ? Math.floor((width - 1) / 2)
          : place.pick === "last"
            ? width - 1
            : Math.min(width, place.pick as number) - 1
      const cell = space.from + k
      sites.push({
        from: cell,
        to: cell + 1,
        anchor: edge.anchorAt(((cell % edge.size) + edge.size) % edge.size, false),
      })
      at = space.to
    }
    return sites
  }
  work.tell(otherGroups(edge, noun, place))
  for (const group of groupsFor(edge, noun.size, place.pick === "centre")) {
    const members = group.cells
    const chosen =
      place.pick === "centre"
        ? members[Math.floor((members.length - 1) / 2)]
        : place.pick === "last"
          ? members[members.length - 1]
          : members[(place.pick as number) - 1]
    if (chosen === undefined) continue
    let at = ((chosen % edge.size) + edge.size) % edge.size
    while (at < position.at) at += edge.size
    if (at < boundary)
      sites.push({
        from: at,
        to: at + 1,
        anchor: edge.anchorAt(at % edge.size, edge.cells[at % edge.size]?.type === "chain"),
      })
  }
  return sites.sort((a, b) => a.from - b.from)
}

function nothingLeft(place: Each): CannotWork {
  return new CannotWork({
    severity: "error",
    code: "nothing-left",
    start: place.start,
    end: place.end,
    message: `No ${nounWords(place.nouns[0] ?? { what: "any" }, 2)} are left to work into here.`,
    hint: "Look at what the steps before this one have used.",
  })
}
