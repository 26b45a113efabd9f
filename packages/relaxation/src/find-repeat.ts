// Whether a net turns into itself, found on its forces: moved a little at random, and moved likewise after a turn, it
// must pull back with the same forces, turned. Where only the beginnings and joins of rounds are otherwise, the piece nearly
// does: one of its repeats is like the next, and what that one comes to is where the whole begins.

import { seededRandom } from "@roundwright/numerics"
import type { NetEnergy } from "./energy.ts"
import type { Net } from "./net.ts"
import { mostRepeats, type Repeat, repeatOf } from "./repeat.ts"

/** Random moves, as a share of the size of a stitch: within every kink of the energy. */
const moveShare = 1e-3
/** Forces agree when they differ by no more than rounding, as a share of the largest. */
const agreement = 1e-6

export interface FoundRepeat {
  readonly repeat: Repeat
  /** False when some nodes are otherwise: the repeat is then only where the whole begins. */
  readonly exact: boolean
}

/** Nodes that are otherwise in a piece that nearly turns into itself, as a share of all: joins, not another pattern. */
const mostOtherwise = 0.1

/**
 * The repeat of the highest order, or else one like its neighbour; null when there is none.
 * @param energy of the whole net in the plane
 * @param scale size of a stitch, mm
 */
export function findRepeat(net: Net, energy: NetEnergy, scale: number): FoundRepeat | null {
  const most = mostRepeats(net)
  if (most < 2) return null
  const random = seededRandom(1)
  const moved = net.start.map((place) => place + moveShare * scale * random.normal())
  const forces = new Float64Array(moved.length)
  if (!Number.isFinite(energy.gradient(moved, forces))) return null
  const largest = forces.reduce((most, force) => Math.max(most, Math.abs(force)), 0)
  let near: FoundRepeat | null = null
  for (let order = most; order >= 2; order--) {
    if (most % order !== 0) continue
    const repeat = repeatOf(net, order)
    const turned = turnBy(repeat, moved)
    const expected = turnBy(repeat, forces)
    const found = new Float64Array(turned.length)
    energy.gradient(turned, found)
    const otherwise = repeat.turn.reduce((list: number[], turn, node) => {
      const differs = [2 * node, 2 * node + 1].some(
        (k) => !(Math.abs(found[k]! - expected[k]!) <= agreement * largest),
      )
      if (differs) list.push(turn)
      return list
    }, [])
    if (otherwise.length === 0) return { repeat, exact: true }
    if (near === null && otherwise.length <= mostOtherwise * repeat.turn.length) {
      const which = likeTheOneBefore(order, new Set(otherwise))
      if (which !== null) near = { repeat: repeatOf(net, order, which), exact: false }
    }
  }
  return near
}

/** A repeat like the one before it, and like the one after it where there is such a one. */
function likeTheOneBefore(order: number, otherwise: ReadonlySet<number>): number | null {
  const alike = Array.from({ length: order }, (_, k) => k).filter((k) => !otherwise.has(k))
  return alike.find((k) => !otherwise.has((k + 1) % order)) ?? alike[0] ?? null
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
