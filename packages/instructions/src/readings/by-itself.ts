// A round counted by its own words, where the round below is not known or has not what is asked for. What its words
// leave open of how often and where is taken from the fold of the motif and the units of the round below, and told.

import type { Round } from "@roundwright/motif"
import { makesStitches } from "../account/idle-steps.ts"
import { countsOf } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Place, RoundTree, Span, Step } from "../base/tree.ts"
import { groupsInOnePlace, roundEdge } from "../edge/edge.ts"
import type { Gap } from "../grammar/read-words.ts"
import { impliedRepeats } from "./implied-repeat.ts"
import { groundOf, onPlainPlaces } from "./own-ground.ts"
import { workRound } from "./read-round.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"

export interface ByItself {
  /** What it stands on. */
  readonly ground: Round
  readonly round: Round
  readonly result: RoundResult
  /** Its words leave nothing open of how often things are repeated. */
  readonly sure: boolean
}

/** What is known around such a round. */
export interface Around {
  /** How often what is worked once comes around in the rounds before. */
  readonly fold: number
  /** The round below, where it is known. */
  readonly below: Round | null
  /** The words take more than the round below has. */
  readonly short: boolean
}

/** Most repeats and places guessed. */
const mostTimes = 60

/**
 * @param request its `index` that of the round; of the rounds before it the one below is not worked on
 * @param gaps words of it passed over
 */
export function countedByItself(
  request: RoundRequest,
  gaps: readonly Gap[],
  around: Around,
): ByItself | null {
  const { steps } = request.tree
  const repeats = steps.some(tellsHowOften)
  // What is told once, and nowhere that it is repeated, may be a part of the round, unless it takes more than is there.
  const open = gaps.some(({ cost }) => cost >= 1) || leavesTimesOpen(steps)
  if (repeats || (around.short && !open)) {
    const told = worked(request, onPlainPlaces(steps, null))
    const sure = repeats && !open && told?.result.score === 0
    if (told && (sure || !growsTooFast(told.round, around.below))) return { ...told, sure }
  }
  let best: { found: Omit<ByItself, "sure">; weight: number } | null = null
  const goesRound = steps.some(saysAround)
  const least = !goesRound ? leastImplied : around.below ? leastTold : leastLost
  const whole = goesRound ? [steps] : impliedRepeats(steps)
  for (const one of whole)
    for (const [fold, weight] of foldsOf(one, request.tree, around))
      for (const times of leadsWithUnit(one) ? [fold - 1, fold] : [fold]) {
        if (weight + evenCount < least) continue
        const found = worked(request, onPlainPlaces(one, times))
        if (!found || growsTooFast(found.round, around.below)) continue
        const { agrees } = found.result.comparison
        const even = countsOf(found.round).stitches % fold === 0 ? evenCount : 0
        const all = weight + even + (agrees === true ? totalMet : agrees === false ? -totalMet : 0)
        if (all >= least && (!best || all > best.weight)) best = { found, weight: all }
      }
  return best && { ...best.found, sure: false }
}

/** A first round whose place is not there: whatever it is called, it is the centre. */
export function countedOnCentre(request: RoundRequest): ByItself | null {
  const { tree, foundation } = request
  const steps = (foundation?.steps ?? tree.steps).flatMap(ontoCentre)
  const result = workRound({
    ...request,
    tree: { ...tree, steps },
    foundation: foundation && { ...foundation, steps },
  })
  const { round } = result
  if (!round || countsOf(round).stitches < fewestOfFirst) return null
  return { ground: round, round, result, sure: false }
}

/** A first round of fewer is hardly one. */
const fewestOfFirst = 4

function ontoCentre(step: Step): Step[] {
  if (step.do === "slip" || step.do === "skip") return []
  if (step.do === "repeat") return [{ ...step, body: step.body.flatMap(ontoCentre) }]
  if ((step.do !== "work" && step.do !== "group") || !step.place || step.place.at === "each")
    return [step]
  const { start, end } = step.place
  return [{ ...step, place: { start, end, at: "ring" } }]
}

function worked(
  request: RoundRequest,
  steps: readonly Step[] | null,
): Omit<ByItself, "sure"> | null {
  if (!steps) return null
  const found = [true, false].flatMap((leads) => {
    const ground = groundOf(steps, leads, { number: request.number - 1, index: request.index - 1 })
    if (!ground) return []
    const before = request.shared.rounds.slice(0, request.index - 1)
    const result = workRound({
      ...request,
      tree: { ...request.tree, steps },
      turned: false,
      shared: { ...request.shared, rounds: [...before, ground] },
    })
    return result.round ? [{ ground, round: result.round, result }] : []
  })
  return found.sort((a, b) => a.result.score - b.result.score)[0] ?? null
}

/** What speaks for a number of repeats: a total met, the fold of the motif, units that are there, a count it divides. */
const totalMet = 100
const keepsFold = 3
const doublesFold = 1
const unitsThere = 3
const groupsThere = 2
const evenCount = 2
/** What has to speak for a guess: where nothing says that the round goes around at all, and where it is said. */
const leastImplied = 6
const leastTold = 5
const leastLost = 3
/** No round has so many times the stitches and spaces of the one below. */
const fastestGrowth = 4

function growsTooFast(round: Round, below: Round | null): boolean {
  return below !== null && round.elements.length > fastestGrowth * below.elements.length
}

/** How often the round may go around, each with what speaks for it. */
function foldsOf(
  steps: readonly Step[],
  { totals }: RoundTree,
  { fold, below }: Around,
): ReadonlyMap<number, number> {
  const found = new Map<number, number>()
  const add = (times: number, weight: number) => {
    if (Number.isInteger(times) && times >= 2 && times <= mostTimes)
      found.set(times, (found.get(times) ?? 0) + weight)
  }
  if (fold > 1) {
    add(fold, keepsFold)
    add(2 * fold, doublesFold)
  }
  for (const { items } of totals)
    for (const { unit, count } of items)
      if (unit === "groups" || unit === "repeats" || unit === "space") add(count, unitsThere)
  if (below) {
    const units = unitsTaken(steps)
    const { spaces, stitches } = countsOf(below)
    if (units.places > 0) {
      add(spaces / units.places, unitsThere)
      const groups = groupsInOnePlace(roundEdge(below, 0, false), false)
      add(groups.filter(({ cells }) => cells.length > 1).length / units.places, groupsThere)
    } else if (units.stitches > 0) add(stitches / units.stitches, unitsThere)
  }
  return found
}

/** What one time of the repeat takes of the round below: places other than stitches, and stitches. */
function unitsTaken(steps: readonly Step[]): { places: number; stitches: number } {
  const repeat = steps.find(saysAround)
  const body = repeat?.do === "repeat" ? repeat.body : steps
  const sum = { places: 0, stitches: 0 }
  for (const step of body) {
    const place = placeOf(step)
    if (place?.at === "each") sum.places += 1
    if (place?.at === "next") {
      const single = place.noun.what === "stitch" && place.pick === undefined
      sum[single ? "stitches" : "places"] += place.pick === undefined ? place.count : 1
    } else if (step.do === "work" && !place) sum.stitches += step.count
  }
  return sum
}

function placeOf(step: Step): Place | null {
  return step.do === "work" || step.do === "group" || step.do === "slip" || step.do === "skip"
    ? step.place
    : null
}

/** Before its repeat it makes stitches: the first of what is repeated, or a part of it. */
function leadsWithUnit(steps: readonly Step[]): boolean {
  const at = steps.findIndex(saysAround)
  return at > 0 && steps.slice(0, at).some((step) => makesStitches(step))
}

/** A repeat, or so many places named: "in each of 12 ch-3 spaces". */
function tellsHowOften(step: Step): boolean {
  const place = placeOf(step)
  return (
    step.do === "repeat" ||
    (place?.at === "each" && place.total !== undefined) ||
    (place?.at === "next" && place.each === true && place.count >= fewestPlaces)
  )
}

/** Fewer places named may be a part of the round. */
const fewestPlaces = 5

/** It goes around for as long as the round below lasts. */
function saysAround(step: Step): boolean {
  if (step.do === "repeat") return step.times.kind === "until" && step.times.until.kind === "around"
  return (step.do === "work" || step.do === "group") && step.place?.at === "each"
}

/** "Repeat from * 3 times": nothing says whether the first time is counted. */
function leavesTimesOpen(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do === "repeat" &&
      ((step.times.kind === "more" && step.times.plain) || leavesTimesOpen(step.body)),
  )
}

export function byItselfFinding(number: number, { sure }: ByItself, label: Span): Finding {
  return {
    severity: sure ? "note" : "warning",
    code: "counted-by-itself",
    ...label,
    message: sure
      ? `Round ${number} is counted by its own words: it is taken to stand on what it asks for.`
      : `Round ${number} is counted by its own words: where and how often it is worked is guessed from the rounds before.`,
    hint: sure
      ? "Mend the first error above; then it is worked on the round before."
      : "Mend the first error above, and say how many times each repeat is worked in all.",
  }
}
