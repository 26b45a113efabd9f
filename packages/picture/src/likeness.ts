// How alike the rows below and above each row are: within a round the stitches stand over one another, so the rows
// next to each other look alike; where one round ends and the next begins they do not, whether or not a closed line of
// thread lies between. Tops of open loops are told by it.

import type { Row } from "./rows.ts"

/** Rows looked at on either side, of the piece's depth, and at least. */
const [beside, fewest] = [0.022, 2]

/** Correlation of the rows just below with those just above each row, -1 to 1. */
export function likenessOf(rows: readonly Row[]): number[] {
  const span = Math.max(fewest, Math.round(beside * rows.length))
  const size = rows[0]?.byAngle.length ?? 0
  const meanOf = (from: number, to: number) => {
    const [first, last] = [Math.max(0, from), Math.min(rows.length - 1, to)]
    const mean = new Float64Array(size)
    for (let r = first; r <= last; r++) {
      const row = rows[r]!.byAngle
      for (let i = 0; i < size; i++) mean[i]! += row[i]! / (last - first + 1)
    }
    return mean
  }
  return rows.map((_, r) =>
    r === 0 || r === rows.length - 1
      ? 1
      : correlation(meanOf(r - 1 - span, r - 2), meanOf(r + 2, r + 1 + span)),
  )
}

function correlation(a: Float64Array, b: Float64Array): number {
  const n = a.length
  let [sa, sb, aa, bb, ab] = [0, 0, 0, 0, 0]
  for (let i = 0; i < n; i++) {
    sa += a[i]!
    sb += b[i]!
    aa += a[i]! ** 2
    bb += b[i]! ** 2
    ab += a[i]! * b[i]!
  }
  const spread = (aa - (sa * sa) / n) * (bb - (sb * sb) / n)
  return spread > 1e-12 ? (ab - (sa * sb) / n) / Math.sqrt(spread) : 0
}
