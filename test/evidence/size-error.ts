// Sizes against measured motifs: the size found after a round against the stated one, by the ledger and by the laid-out
// shape; and again with the size after one round given, judged on the other rounds the source measured.

import { examinePattern, sizeAfter } from "@roundwright/assessment"
import type { Gauge } from "@roundwright/stitches"
import { caseText, type EvidenceCase } from "./cases.ts"

export interface SizeOutcome {
  readonly id: string
  readonly round: number
  readonly statedMm: number
  readonly foundMm: number
  /** (found - stated) / stated, by the laid-out shape. */
  readonly error: number
  /** The same by the ledger. */
  readonly ledgerError: number
  readonly shape: string
  readonly yarnWeight: number | null
  /** The tallest stitch of the piece so far, and "lace" where it has chain spaces. */
  readonly stitches: string
  /** What the sizes rest on. */
  readonly gauge: Gauge["source"]
}

/** One outcome for each stated size whose round is read and whose gauge is in mm. */
export function compareSizes(cases: readonly EvidenceCase[]): SizeOutcome[] {
  return cases.flatMap((evidence) => sizesOf(evidence, caseText(evidence)))
}

/** One size of a case judged with the size after another of its rounds told. */
export interface SizeFromOne extends SizeOutcome {
  readonly told: { readonly round: number; readonly mm: number }
}

/** For cases measured after several rounds: each size in turn is told, and the others are judged. */
export function compareSizesFromOne(cases: readonly EvidenceCase[]): SizeFromOne[] {
  return cases.flatMap((evidence) => {
    const { measured } = evidence
    if (!measured || measured.at_rounds.length < 2) return []
    const where = measured.what === "corner to corner" ? " corner to corner" : ""
    return measured.at_rounds.flatMap((round, k) => {
      const cm = measured.cm[k]!
      const told = `Size: ${cm} cm${where} after Rnd ${round}\n`
      const text = caseText(evidence).replace(/^(?=Terms:)/m, told)
      return sizesOf(evidence, text)
        .filter((size) => size.round !== round)
        .map((size) => ({ ...size, told: { round, mm: 10 * cm } }))
    })
  })
}

function sizesOf(evidence: EvidenceCase, text: string): SizeOutcome[] {
  const { measured } = evidence
  if (!measured) return []
  const { ledger, gauge, reading } = examinePattern(text, { remedies: false })
  if (!gauge?.absolute || !ledger) return []
  const across = measured.what === "corner to corner" ? "corners" : "sides"
  return measured.at_rounds.flatMap((round, index) => {
    const row = ledger.rows.find((candidate) => candidate.round === round)
    if (!row) return []
    const statedMm = measured.cm[index]! * 10
    const foundMm = sizeAfter(reading.motif, gauge, { round, across })
    if (typeof foundMm !== "number") return []
    const byLedger = 2 * (across === "corners" ? row.cornerReachMm : row.radiusMm)
    return {
      id: evidence.id,
      round,
      statedMm,
      foundMm,
      error: (foundMm - statedMm) / statedMm,
      ledgerError: (byLedger - statedMm) / statedMm,
      shape: evidence.shape,
      yarnWeight: evidence.yarn?.cyc ?? null,
      stitches: stitchesOf(reading.motif.rounds.filter(({ number }) => number <= round)),
      gauge: gauge.source,
    }
  })
}

const byHeight = ["sl st", "sc", "hdc", "dc", "tr", "dtr", "trtr"]

function stitchesOf(
  rounds: ReturnType<typeof examinePattern>["reading"]["motif"]["rounds"],
): string {
  const elements = rounds.flatMap((round) => round.elements)
  const kinds = elements.flatMap((element) =>
    element.type === "stitch" ? [element.kind.basic] : [],
  )
  const tallest = kinds.reduce(
    (most, kind) => (byHeight.indexOf(kind) > byHeight.indexOf(most) ? kind : most),
    kinds[0] ?? "none",
  )
  return elements.some((element) => element.type === "chain")
    ? `${tallest}, lace`
    : `${tallest}, solid`
}
