// Corners read off the outline itself, where no increases stack: a lace circle squared by graded heights has corners too.
//
// The band laid round the edge reaches r(angle) from the middle. A polygon of k corners has a strong k-th harmonic in r; what
// there is of it against that of the regular polygon tells how cornered the outline is, whatever its scallops do.

import { hullOf, type PlanePoint } from "./hull.ts"

export interface OutlinePoint {
  readonly x: number
  readonly y: number
  readonly r: number
  readonly angle: number
}

/** Polygons the eye takes for one; more corners than these look round. */
const fewest = 3
const most = 8
/** An outline is cornered from this share of the regular polygon's harmonic on: half way from the circle. */
const least = 0.5
const directions = 720

/** Places among the points of the corners of their outline, in the order of the points; none where it is round. */
export function cornersOfOutline(points: readonly OutlinePoint[]): number[] {
  if (points.length < fewest) return []
  const reach = reachOf(hullOf(points.map(({ x, y }): PlanePoint => [x, y])))
  // A square has some of an octagon in it: the strongest harmonic tells.
  let found = { corners: 0, size: 0, phase: 0 }
  for (let corners = fewest; corners <= most; corners++) {
    const { size, phase } = harmonic(reach, corners)
    if (size > found.size && size >= least * harmonicOfPolygon(corners))
      found = { corners, size, phase }
  }
  const { corners, phase } = found
  const tips = Array.from({ length: corners }, (_, k) => {
    const towards = (phase + 2 * Math.PI * k) / corners
    const beside = (p: OutlinePoint): number =>
      Math.abs(Math.atan2(Math.sin(p.angle - towards), Math.cos(p.angle - towards)))
    // The outermost within a sixth of a side to either hand.
    return points.reduce(
      (best, p, place) => {
        const off = beside(p)
        const score = off <= Math.PI / (3 * corners) ? p.r : -off
        return score > best.score ? { place, score } : best
      },
      { place: 0, score: Number.NEGATIVE_INFINITY },
    ).place
  })
  return new Set(tips).size === corners ? tips.sort((a, b) => a - b) : []
}

/** Reach of a convex line of points round the origin in evenly spread directions. */
function reachOf(hull: readonly PlanePoint[]): Float64Array {
  const reach = new Float64Array(directions)
  for (let k = 0; k < directions; k++) {
    const angle = (2 * Math.PI * k) / directions
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    hull.forEach(([x, y], i) => {
      const [u, v] = hull[(i + 1) % hull.length]!
      // Where the ray from the origin crosses this side.
      const cross = c * (v - y) - s * (u - x)
      if (Math.abs(cross) < 1e-12) return
      const along = (s * x - c * y) / cross
      const far = (x * (v - y) - y * (u - x)) / cross
      if (along >= -1e-9 && along <= 1 + 1e-9) reach[k] = Math.max(reach[k]!, far)
    })
  }
  return reach
}

/** Amplitude of the k-th harmonic over the mean, and its phase. */
function harmonic(reach: Float64Array, k: number): { size: number; phase: number } {
  let [mean, c, s] = [0, 0, 0]
  reach.forEach((r, i) => {
    const angle = (2 * Math.PI * k * i) / reach.length
    mean += r
    c += r * Math.cos(angle)
    s += r * Math.sin(angle)
  })
  return { size: mean > 0 ? (2 * Math.hypot(c, s)) / mean : 0, phase: Math.atan2(s, c) }
}

const known = new Map<number, number>()

/** The same of the regular polygon of k corners, 1 / cos of the angle from the middle of a side. */
function harmonicOfPolygon(k: number): number {
  const before = known.get(k)
  if (before !== undefined) return before
  const reach = Float64Array.from({ length: directions }, (_, i) => {
    const side = (2 * Math.PI) / k
    const angle = (((2 * Math.PI * i) / directions) % side) - side / 2
    return 1 / Math.cos(angle)
  })
  const { size } = harmonic(reach, k)
  known.set(k, size)
  return size
}
