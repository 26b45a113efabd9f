// The circle before anything is added: one that ruffles or cups does so still when it is squared, so that is told first.

import { severityOf } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import type { Gauge } from "@roundwright/stitches"
import { layOutAsChecked } from "./lay-out-as-checked.ts"

/** A sentence, or null for a circle that lies flat or blocks flat. */
export function baseWords(motif: Motif, gauge: Gauge): string | null {
  if (motif.rounds.length === 0) return null
  const laid = layOutAsChecked(motif, gauge)
  if (!laid || severityOf(laid.verdict) <= severityOf("blocks-flat")) return null
  const round = laid.fromRound ?? motif.rounds.at(-1)!.number
  const does = laid.verdict === "cups" ? "cups" : "ruffles"
  return `The circle ${does} from round ${round} on, before anything is added: mend that first, for no round that squares it takes it back.`
}
