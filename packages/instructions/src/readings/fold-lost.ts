// Rounds of a motif are repeated alike round it: a round that comes to one stitch more or fewer than the fold of the
// rounds before asks for has most likely its start or its end counted wrongly.

import { commonDivisor, type Round } from "@roundwright/motif"
import { countsOf } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"

/** A motif of fewer repeats says little: one count in two would be off by one. */
const leastFold = 3
/** So many repeats hardly come out even by chance. */
const clearFold = 5

/** What the last two rounds are divided by alike: how often their work can be repeated round the motif. */
export function sharedFold(rounds: readonly Round[]): number {
  return rounds.slice(-2).reduce((fold, round) => commonDivisor(fold, ownFold(round)), 0)
}

/** The round comes to one stitch more or fewer than goes round the motif alike. */
export function losesFold(before: readonly Round[], round: Round): boolean {
  const fold = sharedFold(before)
  if (fold < leastFold || commonDivisor(fold, ownFold(round)) >= leastFold) return false
  const rest = countsOf(round).stitches % fold
  return rest === 1 || rest === fold - 1
}

/** The round goes round alike as often as those before it, and not by chance; the first of a motif has none to differ from. */
export function goesRoundAlike(before: readonly Round[], round: Round): boolean {
  const fold = sharedFold(before)
  return fold === 0 ? before.length === 0 : fold >= clearFold && keepsFold(fold, round)
}

/** The round goes round alike as often. */
export function keepsFold(fold: number, round: Round): boolean {
  return ownFold(round) % fold === 0
}

/** The round goes round alike, and clearly so, where another reading of it does not. */
export function takesUpFold(before: readonly Round[], round: Round): boolean {
  return countsOf(round).stitches > 0 && goesRoundAlike(before, round)
}

export function foldLost(before: readonly Round[], round: Round, span: Span): Finding {
  const { stitches } = countsOf(round)
  return {
    severity: "warning",
    code: "fold-lost",
    ...span,
    message: `The rounds before go round in ${sharedFold(before)} like parts; with ${stitches} stitches this one does not.`,
    hint: "State the total of this round, or say whether the chains at its start count as a stitch.",
  }
}

/** Fewer do not go round: the text tells most of such a round in other words, or elsewhere. */
const fewestRound = 3

/** A round of one or two stitches, where nothing bears it out. */
export function fewStitches(round: Round, span: Span): Finding | null {
  const { stitches, spaces } = countsOf(round)
  if (stitches >= fewestRound || spaces >= fewestRound) return null
  return {
    severity: "warning",
    code: "few-stitches",
    ...span,
    message: `This round comes to ${stitches} stitches only: too few to go round.`,
    hint: 'Say how often it is worked ("rep from * around"), or state its total.',
  }
}

/** The space that a chain before the join leaves is no part of the work that is repeated. */
function ownFold(round: Round): number {
  const { stitches, spaces } = countsOf(round)
  return commonDivisor(stitches, spaces > 1 ? spaces : 0)
}
