// From rows to one verdict for the piece and the round it starts from. Rows of the growth ledger and rows that a laid-out
// shape has corrected are judged alike: there is one judge.

import { handsOf, oddsOf, verdictInHands } from "./odds.ts"
import type { LedgerRow, Odds, Verdict } from "./result.ts"
import type { PieceSummary, RoundSummary } from "./summary.ts"
import { severityOf } from "./verdict.ts"
import { wallOf } from "./wall.ts"

export interface Judgement {
  readonly verdict: Verdict
  /** Printed number of the first round from which the verdict holds to the end; null when flat. */
  readonly fromRound: number | null
  /** Fullness by which the piece is judged: edge over flat edge of its last round. */
  readonly fullness: number
  readonly odds: Odds
  /** The rows, the last of the ground as full as the piece: no row says otherwise than the piece. */
  readonly rows: readonly LedgerRow[]
}

/**
 * The last round judges the piece: a round that is full on purpose before a lean one works itself out. Where the last round
 * is scalloped its scallops open only as far as the fabric below lets them: the piece is as full as the round below it,
 * within what the scallops can take. Rounds of a free layer, which nothing of the ground is worked into, do not count.
 */
export function judgePiece(rows: readonly LedgerRow[], piece: PieceSummary): Judgement {
  const hands = handsOf(piece)
  const wall = wallOf(rows, piece)
  const inHand = (full: number, index: number): number =>
    asFabric(
      wall && index >= wall.first ? full / Math.exp(wall.handLog) : full,
      piece.rounds[index],
    )
  const judgedAt = (row: LedgerRow, index: number): LedgerRow => ({
    ...row,
    verdict: verdictInHands(inHand(row.accumulatedFullness, index), hands),
  })
  const ground = rows.filter((_, index) => piece.rounds[index]?.ground)
  const last = ground.at(-1)
  if (!last) return { verdict: "flat", fromRound: null, fullness: 1, odds: oddsOf(1, hands), rows }
  const body = ground.at(-2)?.accumulatedFullness ?? last.accumulatedFullness
  const fullness =
    last.heldFullness > last.accumulatedFullness
      ? Math.min(last.heldFullness, Math.max(last.accumulatedFullness, body))
      : last.accumulatedFullness
  const judged = rows.map((row, index) =>
    judgedAt(row === last ? { ...row, accumulatedFullness: fullness } : row, index),
  )
  const at = rows.indexOf(last)
  const { verdict } = judged[at]!
  const odds = oddsOf(inHand(fullness, at), hands)
  if (verdict === "flat") return { verdict, fromRound: null, fullness, odds, rows: judged }
  const judgedGround = judged.filter((_, index) => piece.rounds[index]?.ground)
  let first = judgedGround.length - 1
  while (first > 0 && asBadAs(judgedGround[first - 1]!, verdict, fullness)) first -= 1
  return { verdict, fromRound: judgedGround[first]!.round, fullness, odds, rows: judged }
}

/**
 * Fullness as solid fabric would have to be off for the same word. A fabric that is too short makes it up twice, by tops that
 * stretch and by posts that close up; loops on loops are strings that are drawn straight already and have only the stretch of
 * the chain, half as much. Slack loops hang as they like: where a net is too long nothing changes.
 */
function asFabric(fullness: number, round: RoundSummary | undefined): number {
  return fullness < 1 ? fullness ** (1 + (round?.netShare ?? 0)) : fullness
}

/** Off to the same side and by as much: a slight excess of early rounds is not yet the ruffle of late ones. */
function asBadAs(row: LedgerRow, verdict: Verdict, fullness: number): boolean {
  return (
    severityOf(row.verdict) >= severityOf(verdict) && row.accumulatedFullness > 1 === fullness > 1
  )
}
