// Invented ledger rows for tests of charts, and arbitrary ones for properties.

import type { LedgerRow, Verdict } from "@roundwright/flatness"
import fc from "fast-check"

/** Rows with these growths, 10 mm deep each, against the flat growth of a circle or of k corners. */
export function rowsWith(growths: readonly number[], corners = 0): LedgerRow[] {
  const factor = corners === 0 ? 2 * Math.PI : 2 * corners * Math.tan(Math.PI / corners)
  const flatGrowthMm = 10 * factor
  let edgeMm = 0
  return growths.map((growthMm, index) => {
    edgeMm += growthMm
    const round = index + 1
    const fullness = growthMm / flatGrowthMm
    const accumulatedFullness = edgeMm / (flatGrowthMm * round)
    const radiusMm = 10 * round
    return {
      round,
      edgeMm,
      gatheredEdgeMm: edgeMm,
      depthMm: 10,
      radiusMm,
      cornerReachMm: corners === 0 ? radiusMm : radiusMm / Math.cos(Math.PI / corners),
      growthMm,
      flatGrowthMm,
      fullness,
      accumulatedFullness,
      fullnessRange: [accumulatedFullness, accumulatedFullness],
      heldFullness: accumulatedFullness,
      curvatureDeg: 360 * (1 - fullness),
      outline: { corners, sharpness: corners === 0 ? 0 : 1 },
      slackMm: 0,
      verdict: Math.abs(accumulatedFullness - 1) <= 0.07 ? "flat" : "ruffles",
    }
  })
}

const length = fc.double({ min: -1e7, max: 1e7, noNaN: true })
const above = fc.double({ min: 0, max: 1e7, noNaN: true })
const share = fc.double({ min: -1e4, max: 1e4, noNaN: true })

/** Any row a ledger could hold, wild ones too. */
export const anyRow: fc.Arbitrary<LedgerRow> = fc.record({
  round: fc.integer({ min: 1, max: 2000 }),
  edgeMm: above,
  gatheredEdgeMm: above,
  depthMm: length,
  radiusMm: above,
  cornerReachMm: above,
  growthMm: length,
  flatGrowthMm: length,
  fullness: share,
  accumulatedFullness: share,
  fullnessRange: fc.tuple(share, share),
  heldFullness: share,
  curvatureDeg: fc.double({ min: -1e7, max: 1e7, noNaN: true }),
  outline: fc.record({
    corners: fc.integer({ min: 0, max: 16 }),
    sharpness: fc.double({ min: 0, max: 1, noNaN: true }),
  }),
  slackMm: above,
  verdict: fc.constantFrom<Verdict>("flat", "blocks-flat", "cups", "ruffles"),
})

export const anyRows = fc.array(anyRow, { minLength: 1, maxLength: 40 })
