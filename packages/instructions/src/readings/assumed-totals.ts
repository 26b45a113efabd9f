// A round that stands for its total: when the total settles its count, and how that is told.

import type { Round } from "@roundwright/motif"
import { countsOf } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import type { TreeReading } from "../grammar/read-words.ts"
import type { RoundText } from "../text/layout.ts"
import type { OneRound } from "./list-rounds.ts"

/** That a round could not be worked is told once more where it stands for its total: as what was missing. */
export function withoutCannot(own: Finding[], settled: boolean): void {
  // The round stands for its total, so how its words could have met it says nothing.
  const rare = own.findIndex(({ code }) => code === "total-met-rarely")
  if (rare >= 0) own.splice(rare, 1)
  own.forEach((finding, i) => {
    if (finding.severity === "note") return
    if (settled) own[i] = { ...finding, severity: "note" }
    else if (finding.severity === "error") own[i] = { ...finding, severity: "warning" }
  })
}

/** A total of less than half the stitches of the round below, or of the words as worked, may count groups. */
export function isFarFewer(round: Round, others: readonly (Round | null | undefined)[]): boolean {
  return others.some((other) => other && 2 * countsOf(round).stitches < countsOf(other).stitches)
}

/** One total of stitches, and of no spaces alone, told once and at the end of the round. */
export function clearTotal(tree: TreeReading, text: RoundText): boolean {
  const firm = tree.totals.filter((total) => total.firm)
  const last = firm[firm.length - 1]
  if (!last || last.end < text.end - longestAfterTotal) return false
  return (
    last.items.some(({ unit }) => unit === "kind" || unit === "stitches") &&
    last.items.every(({ unit }) => /^(?:kind|stitches|space|chains)$/.test(unit))
  )
}

/** Words that may follow the total of a round: a join, the end of the yarn. */
const longestAfterTotal = 120

export function assumedFinding(
  one: OneRound,
  round: Round,
  label: Span,
  severity: Finding["severity"],
): Finding {
  const { stitches, spaces } = countsOf(round)
  const what = stitches > 0 ? `${stitches} stitches` : `${spaces} spaces`
  return {
    severity,
    code: "read-with-gap",
    ...label,
    message: `Round ${one.number} is read with a gap: its words could not be worked to the total it states, so ${what}, spread evenly, are assumed.`,
    hint: "The counts go on from the total; where the stitches stand is not known. Mend the words named here to have the round worked.",
  }
}
