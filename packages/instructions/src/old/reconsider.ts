// A round that does not fit the one before may be right, and the one before taken wrongly: where that
// one could be read in another way, or states a total that its own words do not come to.

import type { Round } from "@roundwright/motif"
import type { ChoiceName, ChoiceValue } from "../work/choices.ts"
import { largeReading } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"
import { otherReadingsOf, type RoundRequest, type RoundResult, workRoundAs } from "./read-round.ts"
import { standIn } from "./stand-in.ts"
import { toldChoices } from "./told-choices.ts"
import type { Span } from "../base/tree.ts"

/** The round before, as it was read. */
export interface Earlier {
  readonly request: RoundRequest
  readonly result: RoundResult
  readonly span: Span
}

export interface Reconsidered {
  /** What the round before is taken for now. */
  readonly before: Round
  /** False when it only stands for the total it states. */
  readonly worked: boolean
  readonly spans: readonly Span[]
  readonly result: RoundResult
  readonly told: Finding
}

/** A reading of the round before with which this one fits better; null when there is none. */
export function reconsider(
  earlier: Earlier,
  request: RoundRequest,
  result: RoundResult,
): Reconsidered | null {
  if (earlier.result.steps > largeReading || result.steps > largeReading) return null
  return otherReading(earlier, request, result) ?? statedGround(earlier, request, result)
}

function otherReading(
  earlier: Earlier,
  request: RoundRequest,
  result: RoundResult,
): Reconsidered | null {
  if (earlier.result.comparison.stated !== null) return null
  for (const forced of otherReadingsOf(
    earlier.request,
    new Set<ChoiceName>(["start-chain", "skipped-chains", "times"]),
  )) {
    const before = workRoundAs(earlier.request, forced)
    if (!before.round || before.score > earlier.result.score) continue
    const again = onGround(request, before.round)
    if (again.score >= result.score) continue
    return {
      before: before.round,
      worked: true,
      spans: before.spans,
      result: again,
      told: told(forced, earlier, request),
    }
  }
  return null
}

/** The round before states a total that its words do not come to, and this round fits the total. */
function statedGround(
  earlier: Earlier,
  request: RoundRequest,
  result: RoundResult,
): Reconsidered | null {
  const { comparison } = earlier.result
  const differs = comparison.differing[0]
  if (!differs || comparison.stated === null) return null
  const before = standIn(earlier.request.tree, earlier.request.number, earlier.request.index)
  if (!before) return null
  const again = onGround(request, before)
  if (again.score >= result.score || again.score > 0) return null
  const finding: Finding = {
    severity: "note",
    code: "next-round-fits-total",
    start: differs.item.start,
    end: differs.item.end,
    message: `Round ${request.number} fits the total stated here (${differs.stated}), not the ${differs.ours} that the words come to: the slip is in this round's words. The motif ends with it.`,
    hint: `Mend this round so that it comes to ${differs.stated}.`,
  }
  return { before, worked: false, spans: [], result: again, told: finding }
}

/** The round worked on another round before it. */
export function onGround(request: RoundRequest, before: Round): RoundResult {
  const rounds = [...request.shared.rounds]
  rounds[request.index - 1] = before
  return workRoundAs({ ...request, shared: { ...request.shared, rounds } }, new Map())
}

function told(
  forced: ReadonlyMap<ChoiceName, ChoiceValue>,
  earlier: Earlier,
  request: RoundRequest,
): Finding {
  return toldChoices(forced, `then round ${request.number} fits`, earlier.span)
}
