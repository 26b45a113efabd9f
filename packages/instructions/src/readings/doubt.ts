// A round in doubt leaves the rounds after it standing on doubtful ground: their counts are told to be
// in doubt, until a round comes to the total it states or will not fit the other reading of that ground.

import type { Round } from "@roundwright/motif"
import { sameCounts } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import { assumedRound } from "./assumed.ts"
import { keepsFold } from "./fold-lost.ts"
import { placesTaken } from "./places-taken.ts"
import { workRoundAs } from "./read-round.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"

export interface Doubt {
  /** Printed number of the round in doubt. */
  readonly number: number
  /** What the round just read would be otherwise; null when there is nothing to compare with. */
  readonly other: Round | null
  /** The round could not be worked, but reading goes on from a stated total of nothing but stitches. */
  readonly firm?: boolean
  /** The round broke what went alike round the motif so often: one that takes it up again stands on no doubt. */
  readonly fold?: number
}

export interface After {
  readonly doubt: Doubt | null
  readonly finding: Finding | null
  /** What the next round is worked on, where the round's own words stand on nothing firm. */
  readonly ground?: Round
}

/** The doubt a round leaves for the next one. */
export function doubtAfter(
  before: Doubt | null,
  request: RoundRequest,
  result: RoundResult,
): After {
  const { comparison, round } = result
  if (comparison.agrees === true || comparison.inRange === true)
    return { doubt: null, finding: null }
  if (result.otherRound)
    return { doubt: { number: request.number, other: result.otherRound }, finding: null }
  if (comparison.agrees === false && before && !before.other && !before.firm) {
    // The ground is not known and the total is: reading goes on from it.
    const ground = standIn(request)
    if (ground) return { doubt: null, finding: standsOn(before, request), ground }
  }
  if (comparison.agrees === false) {
    const other = standIn(request)
    return { doubt: { number: request.number, other }, finding: null }
  }
  if (!before || !round) return { doubt: before, finding: null }
  if (before.fold && keepsFold(before.fold, round)) return { doubt: null, finding: null }
  if (!before.other) {
    // A long repeat that goes into the ground without a remainder would hardly do so were it wrong.
    if (
      before.firm &&
      before.number === request.number - 1 &&
      result.score === 0 &&
      dividesGround(request)
    )
      return { doubt: null, finding: null }
    return { doubt: before, finding: standsOn(before, request) }
  }
  const other = onGround(request, before.other)
  // This round fits what was read, and not the other: it bears the reading out.
  if (!other.round || other.score > result.score) return { doubt: null, finding: null }
  const doubt = { number: before.number, other: other.round }
  if (sameCounts(round, other.round)) return { doubt, finding: null }
  return { doubt, finding: standsOn(before, request) }
}

/** Fewest stitches a repeat must take for its going in evenly to say much. */
const longRepeat = 4

function dividesGround({ tree }: RoundRequest): boolean {
  return tree.steps.some(
    (step) =>
      step.do === "repeat" &&
      step.times.kind === "until" &&
      step.times.until.kind === "around" &&
      placesTaken(step.body) >= longRepeat,
  )
}

function standsOn(doubt: Doubt, request: RoundRequest): Finding {
  return {
    severity: "warning",
    code: "stands-on-doubt",
    ...request.span,
    message: `What is counted here stands on round ${doubt.number}, which is in doubt.`,
    hint: `Mend round ${doubt.number} first, or state the total of this one.`,
  }
}

function standIn({ tree, number, index, shared }: RoundRequest): Round | null {
  return assumedRound(tree, { number, index, below: shared.rounds[index - 1] })
}

/** The round worked on another round before it. */
function onGround(request: RoundRequest, before: Round): RoundResult {
  const rounds = [...request.shared.rounds]
  rounds[request.index - 1] = before
  return workRoundAs({ ...request, shared: { ...request.shared, rounds } }, new Map())
}
