// How high a piece lifts, and how many waves its edge makes.
//
// Waves are counted on the height of an edge: the mean and the tilt are taken out, then the upward
// crossings of zero are counted, with a dead zone so that single stitches are not waves.

import type { Net } from "./net.ts"

export interface Lift {
  /** Highest point above the lowest, mm. */
  readonly liftMm: number
  /** Highest point above the lowest by round. */
  readonly liftByRoundMm: readonly number[]
  /** Waves round the last edge; 0 for a flat piece and for a cup. */
  readonly waves: number
  /** Half the height from trough to crest of the last edge, tilt taken out, mm. */
  readonly waveHeightMm: number
}

/** A wave must swing this share of the edge's greatest departure to either side. */
const swingShare = 0.25
/** Departures of the edge below this are not waves, mm: a fifth of a yarn's thickness. */
const leastSwingMm = 0.5
/** In a cup, departures below this share of the lift are unevenness of the rim, not waves. */
const leastSwingOfLift = 0.05

export function measureLift(net: Net, xyz: Float64Array): Lift {
  const heights = (nodes: readonly number[]): number[] => nodes.map((node) => xyz[3 * node + 2]!)
  // The ring at the centre is hidden under the stitches round it: where it tilts nothing is to be seen.
  const all = heights(net.edges.flatMap(({ nodes }) => nodes))
  const lowest = Math.min(...all)
  const liftMm = Math.max(...all) - lowest
  const last = net.edges.at(-1)!
  const departures = withoutTilt(xyz, last.nodes)
  const swing = Math.max(...departures.map(Math.abs))
  return {
    liftMm,
    liftByRoundMm: net.edges.map((edge) => Math.max(...heights(edge.nodes)) - lowest),
    waves:
      swing < Math.max(leastSwingMm, leastSwingOfLift * liftMm)
        ? 0
        : countWaves(departures, swingShare * swing),
    waveHeightMm: (Math.max(...departures) - Math.min(...departures)) / 2,
  }
}

/** Waves along one edge, by its node numbers, any amplitude. */
export function wavesAlong(net: Net, xyz: Float64Array, round: number): number {
  const departures = withoutTilt(xyz, net.edges[round]!.nodes)
  const swing = Math.max(...departures.map(Math.abs))
  return countWaves(departures, swingShare * swing)
}

/** Heights less their best plane: a tilted edge is not a wave. */
function withoutTilt(xyz: Float64Array, nodes: readonly number[]): number[] {
  const n = nodes.length
  const mean = (k: number): number => nodes.reduce((sum, node) => sum + xyz[3 * node + k]!, 0) / n
  const [mx, my, mz] = [mean(0), mean(1), mean(2)]
  let [xx, xy, yy, xz, yz] = [0, 0, 0, 0, 0]
  for (const node of nodes) {
    const [x, y, z] = [xyz[3 * node]! - mx, xyz[3 * node + 1]! - my, xyz[3 * node + 2]! - mz]
    xx += x * x
    xy += x * y
    yy += y * y
    xz += x * z
    yz += y * z
  }
  const det = xx * yy - xy * xy
  const [a, b] =
    det > 1e-12 * (xx + yy) ** 2 ? [(xz * yy - yz * xy) / det, (yz * xx - xz * xy) / det] : [0, 0]
  return nodes.map(
    (node) => xyz[3 * node + 2]! - mz - a * (xyz[3 * node]! - mx) - b * (xyz[3 * node + 1]! - my),
  )
}

function countWaves(departures: readonly number[], threshold: number): number {
  let state = 0
  let crossings = 0
  // Twice round, counting on the second turn only, so that the start does not matter.
  for (let turn = 0; turn < 2; turn++)
    for (const z of departures) {
      const side = z > threshold ? 1 : z < -threshold ? -1 : 0
      if (side === 0 || side === state) continue
      if (side === 1 && state === -1 && turn === 1) crossings++
      state = side
    }
  return crossings
}
