// From rows to one verdict for the piece and the round it starts from. Rows of the growth ledger and rows that a laid-out
// shape has corrected are judged alike: there is one judge.

import type { LedgerRow, Verdict } from "./result.ts"
import type { PieceSummary } from "./summary.ts"
import { severityOf, verdictOf } from "./verdict.ts"

export interface Judgement {
  readonly verdict: Verdict
  /** Printed number of the first round from which the verdict holds to the end; null when flat. */
  readonly fromRound: number | null
  /** Fullness by which the piece is judged: edge over flat edge of its last round. */
  readonly fullness: number
  /** The rows, the last of the ground as full as the piece: no row says otherwise than the piece. */
  readonly rows: readonly LedgerRow[]
}

/**
 * The last round judges the piece: a round that is full on purpose before a lean one works itself out. Where the last round
 * is scalloped its scallops open only as far as the fabric below lets them: the piece is as full as the round below it,
 * within what the scallops can take. Rounds of a free layer, which nothing of the ground is worked into, do not count.
 */
export function judgePiece(rows: readonly LedgerRow[], piece: PieceSummary): Judgement {
  const ground = rows.filter((_, index) => piece.rounds[index]?.ground)
  const last = ground.at(-1)
  if (!last) return { verdict: "flat", fromRound: null, fullness: 1, rows }
  const body = ground.at(-2)?.accumulatedFullness ?? last.accumulatedFullness
  const fullness =
    last.heldFullness > last.accumulatedFullness
      ? Math.min(last.heldFullness, Math.max(last.accumulatedFullness, body))
      : last.accumulatedFullness
  const verdict = verdictOf(fullness)
  const judged = rows.map((row) =>
    row === last ? { ...row, accumulatedFullness: fullness, verdict } : row,
  )
  if (verdict === "flat") return { verdict, fromRound: null, fullness, rows: judged }
  let first = ground.length - 1
  while (first > 0 && asBadAs(ground[first - 1]!, verdict, fullness)) first -= 1
  return { verdict, fromRound: ground[first]!.round, fullness, rows: judged }
}

/** Off to the same side and by as much: a slight excess of early rounds is not yet the ruffle of late ones. */
function asBadAs(row: LedgerRow, verdict: Verdict, fullness: number): boolean {
  return (
    severityOf(row.verdict) >= severityOf(verdict) && row.accumulatedFullness > 1 === fullness > 1
  )
}
