// A stand-in for the check of a pattern: every line of numbers is the stitch counts of a disc in
// single crochet, so that tests of notebooks do not depend on how patterns are read.

import type { CheckResult } from "@roundwright/assessment"
import { keepLedger } from "@roundwright/flatness"
import { buildDisc } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { type LaidOutPattern, shapeFound } from "../src/laid-out-pattern.ts"

/** `6 12 18` -> a disc with those counts, 5 mm wide and 5 mm high stitches. `?` adds a problem. */
export function checkCounts(text: string): CheckResult {
  const counts = countsIn(text)
  const lines = text.split("\n")
  const problems: CheckResult["problems"] = lines.flatMap((line, index) => {
    const at = line.indexOf("?")
    if (at < 0) return []
    return [
      {
        severity: "error" as const,
        code: "unknown-word",
        round: null,
        line: index + 1,
        column: at + 1,
        length: line.length - at,
        message: `Not understood: ${line.slice(at)}`,
        hint: "Write it another way.",
      },
    ]
  })
  const width = 5
  const swatch = { kind: { basic: "sc" as const }, widthMm: width, heightMm: width }
  const gauge = gaugeFrom({ swatches: [swatch] })
  const ledger = counts.length > 0 ? keepLedger(buildDisc({ basic: "sc" }, counts), gauge) : null
  return {
    file: null,
    motif: ledger && { title: "Made", rounds: counts.length, corners: 0, symmetry: 1 },
    terms: "US",
    gauge: { source: "swatch", absolute: true, notes: [], scWidthMm: width },
    rounds: counts.map((stitches, index) => {
      const row = ledger!.rows[index]!
      return {
        round: index + 1,
        counted: { stitches, chains: 0, spaces: 0 },
        stated: null,
        agrees: null,
        edgeMm: row.edgeMm,
        depthMm: row.depthMm,
        radiusMm: row.radiusMm,
        growthMm: row.growthMm,
        flatGrowthMm: row.flatGrowthMm,
        fullness: row.fullness,
        accumulatedFullness: row.accumulatedFullness,
        curvatureDeg: row.curvatureDeg,
        verdict: row.verdict,
      }
    }),
    laidOut: ledger && {
      by: "ledger",
      verdict: ledger.verdict,
      odds: ledger.odds,
      fromRound: ledger.fromRound,
      liftMm: null,
      waves: null,
      sideReachMm: ledger.rows.at(-1)!.radiusMm,
      cornerReachMm: ledger.rows.at(-1)!.cornerReachMm,
      acrossMm: 2 * ledger.rows.at(-1)!.radiusMm,
      bowMm: null,
      cornerAngleDeg: null,
      skewDeg: null,
      blockingStretch: null,
      blockingRound: null,
      meanStretch: null,
      acrossAfterRoundMm: ledger.rows.map((row) => 2 * row.radiusMm),
      slack: null,
      settled: null,
    },
    remedies: [
      { round: 2, change: "Do <it> otherwise.", fullnessAfter: 1.01, verdictAfter: "flat" },
    ],
    problems,
    ledger: [...(ledger?.rows ?? [])],
    notes: ["A <note>."],
    exitStatus: ledger ? 0 : 2,
  }
}

/** A fence with its cell. */
export function cell(info: string, text = ""): string {
  return `\n\`\`\`${info}\n${text}\n\`\`\`\n`
}

/** The same for a page that lays every piece out: it cannot be, and the stand-in's own verdict stays. */
export function layOutCounts(text: string): LaidOutPattern {
  const motif = buildDisc({ basic: "sc" }, countsIn(text))
  return { found: shapeFound(checkCounts(text)), piece: { motif, shape: null } }
}

function countsIn(text: string): number[] {
  return [...text.matchAll(/(?<![\w.])\d{1,4}(?![\w.])/g)].map((match) => Number(match[0]))
}
