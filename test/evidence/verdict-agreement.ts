// Verdicts against reported outcomes: of the cases that list the verdicts agreeing with their report,
// how many does the check meet, and does any come out as the opposite.

import { examinePattern } from "@roundwright/assessment"
import { keepLedger, type Verdict } from "@roundwright/flatness"
import { caseText, countsText, type EvidenceCase } from "./cases.ts"

/**
 * Cases that the bands of the verdict were read from (see flatness/src/verdict.ts): one series of ten
 * discs by one maker. They fit and do not judge.
 */
export const fittingCases = /^sc-inc\d+-six-rounds-worsted$/

export interface VerdictOutcome {
  readonly id: string
  readonly accept: readonly string[]
  readonly verdict: Verdict | null
  readonly fullness: number | null
  readonly agrees: boolean
  /** Cups where only ruffles is accepted, or the reverse. */
  readonly opposite: boolean
  readonly fitted: boolean
  /** No published hand (height over width within the extremes of all gauges) gives an accepted verdict. */
  readonly beyondEveryHand: boolean
}

/** Extremes of height over width against its median in the published gauges of sc, hdc and dc. */
const handExtremes = [0.8, 1.25]
const handSteps = 40

export function judgeOutcomes(cases: readonly EvidenceCase[]): VerdictOutcome[] {
  return cases.filter((evidence) => evidence.accept !== undefined).map(judgeOutcome)
}

function judgeOutcome(evidence: EvidenceCase): VerdictOutcome {
  const accept = evidence.accept!
  let check = examinePattern(caseText(evidence))
  const read = check.reading.motif.rounds.length
  if (evidence.counts && read < evidence.counts.length) check = examinePattern(countsText(evidence))
  const verdict = check.ledger?.verdict ?? null
  return {
    id: evidence.id,
    accept,
    verdict,
    fullness: check.ledger?.rows.at(-1)?.accumulatedFullness ?? null,
    agrees: verdict !== null && accept.includes(verdict),
    opposite:
      (verdict === "cups" && !accept.includes("cups") && accept.includes("ruffles")) ||
      (verdict === "ruffles" && !accept.includes("ruffles") && accept.includes("cups")),
    fitted: fittingCases.test(evidence.id),
    beyondEveryHand: !someHandAgrees(check, accept),
  }
}

function someHandAgrees(
  check: ReturnType<typeof examinePattern>,
  accept: readonly string[],
): boolean {
  if (!check.gauge || !check.ledger) return false
  const [low, high] = handExtremes as [number, number]
  for (let i = 0; i <= handSteps; i++) {
    const factor = low * (high / low) ** (i / handSteps)
    const ledger = keepLedger(check.reading.motif, check.gauge, { heightFactor: factor })
    if (accept.includes(ledger.verdict)) return true
  }
  return false
}
