// How well rings about a point lie round it: worked in rounds, a piece has lines of thread and gaps that run all the
// way round, so that about the right centre the mean brightness of a circle changes much with its radius, and about a
// wrong one it is smeared. Needs no count, and no repeats: it places the centre to a part of a stitch.

import type { GreyPicture, Point } from "./grey.ts"
import { sampleRound } from "./unroll.ts"

/** Radii looked at, shares of the reach; each the same factor above the one below, so that inner rings count as outer ones do. */
const [nearest, farthest, circles] = [0.07, 0.7, 64] as const
const around = Float64Array.from({ length: 256 }, (_, i) => (2 * Math.PI * i) / 256)

/** Share of the thread's variance that lies between circles, not along them: 0 to 1. */
export function concentricity(evened: GreyPicture, centre: Point, reachPx: number): number {
  const means: number[] = []
  let power = 0
  for (let k = 0; k < circles; k++) {
    const radius = reachPx * nearest * (farthest / nearest) ** ((k + 0.5) / circles)
    const row = sampleRound(evened, centre, radius, undefined, around)
    let [sum, squares] = [0, 0]
    for (const value of row) {
      sum += value
      squares += value * value
    }
    means.push(sum / row.length)
    power += squares / row.length / circles
  }
  if (!(power > 0)) return 0
  const mean = means.reduce((a, b) => a + b, 0) / circles
  return means.reduce((sum, m) => sum + (m - mean) ** 2, 0) / circles / power
}
