// The best mends laid out as a check lays the piece out, so that verdicts before and after come from one judge.

import { severityOf } from "@roundwright/flatness"
import type { Gauge } from "@roundwright/stitches"
import { layOutAsChecked } from "./lay-out-as-checked.ts"
import type { Mend } from "./mend-result.ts"
import { byRank, type Ranked } from "./mend-varied.ts"

/** Laid out as a net: the best few, within a budget of nodes in all (a second or two). */
const mostLaidOut = 4

const mostNodes = 3_000

/**
 * The best few laid out, within a budget; what the net finds no better than before falls away, and so does what there
 * is no budget for, since a verdict of the ledger beside one of the net would compare two judges.
 */
export function byTheNet(ranked: readonly Ranked[], gauge: Gauge, before: number): Ranked[] {
  let nodes = 0
  let laid = 0
  const judged = ranked.flatMap((one): Ranked[] => {
    const { motif } = one.mend
    if (!motif || laid === mostLaidOut || nodes > mostNodes) return []
    const shape = layOutAsChecked(motif, gauge)
    if (shape === null) return []
    laid++
    nodes += shape.net.nodes.length
    const severity = severityOf(shape.verdict)
    if (severity > 0 && severity >= before) return []
    const { verdict: verdictAfter, fullness: fullnessAfter } = shape
    const mend: Mend = { ...one.mend, verdictAfter, fullnessAfter, judgedBy: "net" }
    return [{ mend, rank: one.rank, severity, pattern: one.pattern }]
  })
  return judged.sort(byRank)
}
