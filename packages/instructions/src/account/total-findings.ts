// A stated total that ours does not match, told with the likely slip.

import type { Round } from "@roundwright/motif"
import { kindName } from "@roundwright/stitches"
import type { Finding } from "../base/problem-list.ts"
import type { RoundWork } from "../work/round-work.ts"
import type { Comparison } from "./totals.ts"

/** A stated total that ours does not match, with the likely slip. */
export function totalFindings(work: RoundWork, round: Round, comparison: Comparison): Finding[] {
  return comparison.differing.map(({ item, stated, ours }) => ({
    severity: "warning" as const,
    code: "stated-total-differs",
    start: item.start,
    end: item.end,
    message: `The text states ${stated} ${unitWords(item.word, item.kind ? kindName(item.kind) : "")}; worked as written it comes to ${ours}.`,
    hint: likelySlip(work, round, stated, ours),
  }))
}

function unitWords(word: string, kind: string): string {
  return word !== "" ? word : kind !== "" ? kind : "stitches"
}

function likelySlip(work: RoundWork, _round: Round, stated: number, ours: number): string {
  const difference = stated - ours
  if (difference === 1 && work.startChain && !work.startChain.counts)
    return "The starting chain may be counted as a stitch in the total: say whether it counts."
  if (difference === -1 && work.startChain?.counts)
    return "The starting chain may not be meant to count: say whether it counts."
  if (difference === 1)
    return "The join may have been counted as a stitch, or one stitch is missing in the round."
  const repeats = work.mainRepeats
  if (repeats > 1) {
    const each = perRepeat(ours, repeats)
    if (each !== null && Math.abs(difference) === each)
      return difference > 0
        ? `One repeat more (${repeats + 1} in all) would give ${stated}.`
        : `One repeat fewer (${repeats - 1} in all) would give ${stated}.`
    if (each !== null && difference % repeats === 0)
      return `${Math.abs(difference / repeats)} ${difference > 0 ? "more" : "fewer"} in each of the ${repeats} repeats would give ${stated}.`
  }
  return "Count the round again; the total may belong to another round."
}

function perRepeat(ours: number, repeats: number): number | null {
  return ours % repeats === 0 ? ours / repeats : null
}
