// Sizes against measured motifs: the size the check gives after a round against the stated one.

import { checkPattern } from "@roundwright/assessment"
import type { LedgerRow } from "@roundwright/flatness"
import { caseText, type EvidenceCase } from "./cases.ts"

export interface SizeOutcome {
  readonly id: string
  readonly round: number
  readonly statedMm: number
  readonly foundMm: number
  /** (found - stated) / stated */
  readonly error: number
  readonly shape: string
  readonly yarnWeight: number | null
  /** A swatch is given; else only yarn and hook. */
  readonly gaugeStated: boolean
}

/** One outcome for each stated size whose round is read and whose gauge is in mm. */
export function compareSizes(cases: readonly EvidenceCase[]): SizeOutcome[] {
  return cases.flatMap((evidence) => {
    const measured = evidence.measured
    if (!measured) return []
    const result = checkPattern(caseText(evidence))
    if (!result.gauge.absolute) return []
    return measured.at_rounds.flatMap((round, index) => {
      const row = result.ledger.find((candidate) => candidate.round === round)
      if (!row) return []
      const statedMm = measured.cm[index]! * 10
      const foundMm = sizeOfRow(row, measured.what)
      return {
        id: evidence.id,
        round,
        statedMm,
        foundMm,
        error: (foundMm - statedMm) / statedMm,
        shape: evidence.shape,
        yarnWeight: evidence.yarn?.cyc ?? null,
        gaugeStated: evidence.gauge !== undefined,
      }
    })
  })
}

/** `side` of a square and `across flats` are both twice the side reach. */
function sizeOfRow(row: LedgerRow, what: NonNullable<EvidenceCase["measured"]>["what"]): number {
  return what === "corner to corner" ? 2 * row.cornerReachMm : 2 * row.radiusMm
}
