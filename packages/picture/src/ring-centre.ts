// A ring about a centre of its own: hand-made rings do not share one centre to the pixel, and a ring that
// is off by half a stitch loses its comb. The ring's centre may move by a part of its radius and is kept
// only where the comb grows clearly.

import { climbTo } from "./climb-to.ts"
import { combs, mostAt } from "./comb.ts"
import type { ReCentre } from "./count-ring.ts"
import { pooledPower } from "./fourier.ts"
import type { GreyPicture, Point } from "./grey.ts"
import { sampleRound } from "./unroll.ts"

/** Farthest the centre moves, and the steps of the climb, of the ring's radius. */
const farthest = 0.14
const steps = [0.05, 0.025, 0.012] as const
/** The comb has to grow by this share. */
const leastGain = 1.15
/** Clear rings need no centre of their own. */
const clearComb = 0.45
const rowsUsed = 5
const coarse = Float64Array.from({ length: 512 }, (_, i) => (2 * Math.PI * i) / 512)

export function ringCentre(evened: GreyPicture, centre: Point): ReCentre {
  return (rows, way) => {
    if (rows.some((row) => row.byLength !== row.byAngle)) return null
    const before = Math.max(...way.comb)
    if (before >= clearComb || rows.length < 3) return null
    const middle = rows[rows.length >> 1]!.radius
    const reach = farthest * middle
    const used = Array.from(
      { length: rowsUsed },
      (_, i) => rows[Math.floor(((i + 0.5) * rows.length) / rowsUsed)]!.radius,
    )
    const combAt = (point: Point) =>
      Math.hypot(point.x - centre.x, point.y - centre.y) > reach
        ? -1
        : Math.max(
            ...combs(
              pooledPower(
                used.map((radius) => sampleRound(evened, point, radius, undefined, coarse)),
              ),
              mostAt(middle),
            ),
          )
    const climbed = climbTo(
      centre,
      steps.map((share) => share * middle),
      combAt,
    )
    const samples = rows.map((row) => sampleRound(evened, climbed.point, row.radius))
    const comb = combs(pooledPower(samples), mostAt(middle))
    return Math.max(...comb) >= leastGain * before ? { comb, samples } : null
  }
}
