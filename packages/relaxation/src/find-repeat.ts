// Whether a net turns into itself, found on its forces: moved a little at random, and moved likewise after a turn, it
// must pull back with the same forces, turned.

import { seededRandom } from "@roundwright/numerics"
import type { NetEnergy } from "./energy.ts"
import type { Net } from "./net.ts"
import { mostRepeats, type Repeat, repeatOf } from "./repeat.ts"

/** Random moves, as a share of the size of a stitch: within every kink of the energy. */
const moveShare = 1e-3
/** Forces agree when they differ by no more than rounding, as a share of the largest. */
const agreement = 1e-6

/**
 * The repeat of the highest order, or null when there is none of order 2 or more.
 * @param energy of the whole net in the plane
 * @param scale size of a stitch, mm
 */
export function findRepeat(net: Net, energy: NetEnergy, scale: number): Repeat | null {
  const most = mostRepeats(net)
  if (most < 2) return null
  const random = seededRandom(1)
  const moved = net.start.map((place) => place + moveShare * scale * random.normal())
  const forces = new Float64Array(moved.length)
  if (!Number.isFinite(energy.gradient(moved, forces))) return null
  const largest = forces.reduce((most, force) => Math.max(most, Math.abs(force)), 0)
  for (let order = most; order >= 2; order--) {
    if (most % order !== 0) continue
    const repeat = repeatOf(net, order)
    const turned = turnBy(repeat, moved)
    const expected = turnBy(repeat, forces)
    const found = new Float64Array(turned.length)
    energy.gradient(turned, found)
    if (found.every((force, k) => Math.abs(force - expected[k]!) <= agreement * largest))
      return repeat
  }
  return null
}

/** What stood at each node stands, turned by one repeat, at the next. */
function turnBy(repeat: Repeat, xy: Float64Array): Float64Array {
  const angle = (2 * Math.PI) / repeat.order
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const out = new Float64Array(xy.length)
  const images = new Map<string, number>()
  for (let node = 0; node < repeat.unknown.length; node++)
    images.set(`${repeat.unknown[node]}:${repeat.turn[node]}`, node)
  for (let node = 0; node < repeat.unknown.length; node++) {
    const own = repeat.unknown[node]!
    const next = own === repeat.axis ? 0 : (repeat.turn[node]! + 1) % repeat.order
    const to = images.get(`${own}:${next}`)!
    out[2 * to] = c * xy[2 * node]! - s * xy[2 * node + 1]!
    out[2 * to + 1] = s * xy[2 * node]! + c * xy[2 * node + 1]!
  }
  return out
}
