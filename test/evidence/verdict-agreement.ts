// Verdicts against reported outcomes: of the cases that list the verdicts agreeing with their report,
// how many does the check meet, and does any come out as the opposite.

import { examinePattern, layOutMotif } from "@roundwright/assessment"
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
  /** Verdict of the laid-out shape; null where it could not be laid out. */
  readonly netVerdict: Verdict | null
  readonly netAgrees: boolean
  readonly netOpposite: boolean
  /** Cups where only ruffles is accepted, or the reverse. */
  readonly opposite: boolean
  readonly fitted: boolean
  /** No published hand (height over width within the extremes of all gauges) gives an accepted verdict. */
  readonly beyondEveryHand: boolean
}

/**
 * Extremes of height over width against the default used, among the published core gauges of each
 * stitch (stitches-gauges.json): sc 0.80 to 1.19 against 0.92 in rows or 1.0 in rounds, hdc 1.167 to
 * 1.667 against 1.317, dc 1.5 to 2.5 against 2.0.
 */
const handExtremes: Readonly<Record<string, readonly [number, number]>> = {
  sc: [0.8, 1.25],
  hdc: [0.886, 1.266],
  dc: [0.75, 1.25],
}
const handSteps = 40

export function judgeOutcomes(cases: readonly EvidenceCase[]): VerdictOutcome[] {
  return cases.filter((evidence) => evidence.accept !== undefined).map(judgeOutcome)
}

function judgeOutcome(evidence: EvidenceCase): VerdictOutcome {
  const accept = evidence.accept!
  let check = examinePattern(caseText(evidence), { remedies: false })
  const read = check.reading.motif.rounds.length
  if (evidence.counts && read < evidence.counts.length)
    check = examinePattern(countsText(evidence), { remedies: false })
  const verdict = check.ledger?.verdict ?? null
  const laid = check.gauge && layOutMotif(check.reading.motif, check.gauge)
  const netVerdict = laid && !("fault" in laid) ? laid.verdict : null
  return {
    id: evidence.id,
    accept,
    verdict,
    fullness: check.ledger?.rows.at(-1)?.accumulatedFullness ?? null,
    agrees: verdict !== null && accept.includes(verdict),
    netVerdict,
    netAgrees: netVerdict !== null && accept.includes(netVerdict),
    netOpposite: isOpposite(netVerdict, accept),
    opposite: isOpposite(verdict, accept),
    fitted: fittingCases.test(evidence.id),
    beyondEveryHand: !someHandAgrees(check, evidence.stitch ?? "sc", accept),
  }
}

function isOpposite(verdict: Verdict | null, accept: readonly string[]): boolean {
  return (
    (verdict === "cups" && !accept.includes("cups") && accept.includes("ruffles")) ||
    (verdict === "ruffles" && !accept.includes("ruffles") && accept.includes("cups"))
  )
}

function someHandAgrees(
  check: ReturnType<typeof examinePattern>,
  stitch: string,
  accept: readonly string[],
): boolean {
  if (!check.gauge || !check.ledger) return false
  const [low, high] = handExtremes[stitch] ?? [1, 1]
  for (let i = 0; i <= handSteps; i++) {
    const factor = low * (high / low) ** (i / handSteps)
    const ledger = keepLedger(check.reading.motif, check.gauge, { heightFactor: factor })
    if (accept.includes(ledger.verdict)) return true
  }
  return false
}
