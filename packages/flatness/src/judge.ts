// From ledger rows to one verdict for the piece and the round it starts from.

import type { LedgerRow, Verdict } from "./result.ts"
import type { PieceSummary } from "./summary.ts"
import { severityOf } from "./verdict.ts"

/**
 * Inside this share of the final radius a misfit cannot keep a whole piece from lying flat: that is a
 * quarter of its area, and the few stitches round the centre spread as they need.
 */
const middleOfPiece = 1 / 2

export interface Judgement {
  readonly verdict: Verdict
  /** Printed number of the first round from which the verdict holds to the end; null when flat. */
  readonly fromRound: number | null
}

/**
 * The last round judges the piece: a round that is full on purpose before a lean one works itself
 * out. A misfit shut in in the body of the piece has to be blocked out where the edge is flat again,
 * and is the verdict where the edge is still off. Rounds that nothing is worked into (petals standing
 * in front) do not count.
 */
export function judgePiece(rows: readonly LedgerRow[], piece: PieceSummary): Judgement {
  const ground = rows.filter((_, index) => piece.rounds[index]?.ground)
  const last = ground.at(-1)
  if (!last) return { verdict: "flat", fromRound: null }
  const shutIn = ground.find(
    (row, index) =>
      index > 0 && row.radiusMm > middleOfPiece * last.radiusMm && severityOf(row.verdict) === 2,
  )
  if (last.verdict === "flat")
    return shutIn
      ? { verdict: "blocks-flat", fromRound: shutIn.round }
      : { verdict: "flat", fromRound: null }
  if (last.verdict === "blocks-flat" && shutIn)
    return { verdict: shutIn.verdict, fromRound: shutIn.round }
  let first = ground.length
  while (first > 0 && asBadAs(ground[first - 1]!, last)) first -= 1
  return { verdict: last.verdict, fromRound: ground[first]?.round ?? last.round }
}

/** Off to the same side and by as much: a slight excess of early rounds is not yet the ruffle of late ones. */
function asBadAs(row: LedgerRow, last: LedgerRow): boolean {
  return (
    severityOf(row.verdict) >= severityOf(last.verdict) &&
    row.accumulatedFullness > 1 === last.accumulatedFullness > 1
  )
}
