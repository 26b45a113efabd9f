// How a measured picture agrees with what is known of it: centre, main count, rings, radii.

import { countBetween, type PictureMeasurement, type Point } from "@roundwright/picture"

export interface TrueRing {
  /** Radii in pixels of the picture given. */
  readonly innerPx: number
  readonly outerPx: number
  /** Counts that are right: repeats, or strands where they are given. */
  readonly repeats: number
  readonly strands?: number | undefined
  readonly open?: boolean
}

export interface RingScore {
  readonly truth: TrueRing
  /** Repeats and strands of the measured ring that covers most of it. */
  readonly repeats: number | null
  readonly strands: number | null
  readonly sureness: number
  readonly ring: PictureMeasurement["rings"][number] | null
  readonly right: boolean
  readonly rightWithBounds: boolean
  /** Distance of the nearest measured edge from the ring's outer radius, pixels of the picture. */
  readonly edgeOffPx: number
}

export function centreOf(measured: PictureMeasurement): Point {
  return measured.centreGiven
}

/**
 * Count that covers most of the piece's depth, rings that are surer counting for more. A ring told as "4 repeats, 24
 * strands" on a square counts as its strands: the four are its corners.
 */
export function mainCount(measured: PictureMeasurement): number | null {
  const weights = new Map<number, number>()
  for (const ring of measured.rings) {
    const count = ring.repeats === measured.outline.corners ? ring.strands : ring.repeats
    if (count !== null)
      weights.set(
        count,
        (weights.get(count) ?? 0) + (ring.toRow - ring.fromRow + 1) * ring.sureness,
      )
  }
  return [...weights].sort((a, b) => b[1] - a[1])[0]?.[0] ?? null
}

export function scoreRings(
  measured: PictureMeasurement,
  truths: readonly TrueRing[],
  bounds = true,
): RingScore[] {
  const radius = (row: number) =>
    (measured.rows[Math.min(row, measured.rows.length - 1)]!.radius - 0) / measured.scale
  const edges = measured.rings.map((ring) => radius(ring.toRow + 1))
  return truths.map((truth) => {
    const cover = (ring: PictureMeasurement["rings"][number]) =>
      Math.min(radius(ring.toRow + 1), truth.outerPx) -
      Math.max(radius(ring.fromRow), truth.innerPx)
    const best = measured.rings.reduce((a, b) => (cover(b) > cover(a) ? b : a))
    const ring = cover(best) > 0 ? best : null
    const within = bounds
      ? countBetween(measured, truth.innerPx * measured.scale, truth.outerPx * measured.scale)
      : null
    const agrees = (counted: { repeats: number | null; strands: number | null } | null) =>
      counted !== null &&
      counted.repeats !== null &&
      (counted.repeats === truth.repeats || counted.strands === (truth.strands ?? truth.repeats))
    return {
      truth,
      repeats: ring?.repeats ?? null,
      strands: ring?.strands ?? null,
      sureness: ring?.sureness ?? 0,
      ring,
      right: agrees(ring),
      rightWithBounds: agrees(within),
      edgeOffPx: Math.min(...edges.map((edge) => Math.abs(edge - truth.outerPx))),
    }
  })
}
