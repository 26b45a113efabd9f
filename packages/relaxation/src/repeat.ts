// A net that turns into itself: what one of its repeats holds, so that the rest need not be solved. Node k of a round of
// n nodes comes to node k + n / order when the piece turns by one repeat.

import type { Net, Point } from "./net.ts"

export interface Repeat {
  /** How many repeats make the piece, at least 2. */
  readonly order: number
  /** Nodes of the repeat: the unknowns. */
  readonly nodes: readonly number[]
  /** For each node of the net the unknown it is an image of, and by how many repeats it is turned. */
  readonly unknown: Int32Array
  readonly turn: Int32Array
  /** The unknown that stays in place when the piece turns; -1 when the centre is a ring. */
  readonly axis: number
}

/** Largest number by which the nodes of every round can be divided; 1 when an edge is open. */
export function mostRepeats(net: Net): number {
  if (net.edges.some(({ closed }) => !closed)) return 1
  const ring = net.centre.length > 1 ? [net.centre.length] : []
  return [...ring, ...net.edges.map(({ nodes }) => nodes.length)].reduce(greatestDivisor, 0)
}

/**
 * @param order must divide `mostRepeats(net)`
 * @param which of the repeats is taken for all, 0 for the one that every round begins with
 */
export function repeatOf(net: Net, order: number, which = 0): Repeat {
  const count = net.nodes.length
  const [unknown, turn] = [new Int32Array(count), new Int32Array(count)]
  const nodes: number[] = []
  const enter = (all: readonly number[]): void => {
    const own = all.length / order
    const first = nodes.length
    all.forEach((node, k) => {
      const repeat = Math.floor(k / own)
      if (repeat === which) nodes.push(node)
      unknown[node] = first + (k % own)
      turn[node] = (repeat - which + order) % order
    })
  }
  const alone = net.centre.length === 1
  if (alone) {
    unknown[net.centre[0]!] = 0
    nodes.push(net.centre[0]!)
  } else enter(net.centre)
  for (const edge of net.edges) enter(edge.nodes)
  return { order, nodes, unknown, turn, axis: alone ? 0 : -1 }
}

/**
 * Whether a term belongs to the repeat, judged by the first of its points that is one node off the axis. Null when it
 * has no such point.
 */
export function isOfRepeat(repeat: Repeat, points: readonly Point[]): boolean | null {
  for (const { nodes } of points)
    if (nodes.length === 1 && repeat.unknown[nodes[0]!] !== repeat.axis)
      return repeat.turn[nodes[0]!] === 0
  return null
}

/** All coordinates of the net from those of the repeat. */
export function unfold(repeat: Repeat, x: Float64Array, d: 2 | 3): Float64Array {
  const out = new Float64Array(d * repeat.unknown.length)
  for (let node = 0; node < repeat.unknown.length; node++) {
    const from = d * repeat.unknown[node]!
    const angle = (2 * Math.PI * repeat.turn[node]!) / repeat.order
    const [c, s] = [Math.cos(angle), Math.sin(angle)]
    out[d * node] = c * x[from]! - s * x[from + 1]!
    out[d * node + 1] = s * x[from]! + c * x[from + 1]!
    if (d === 3) out[d * node + 2] = x[from + 2]!
  }
  return out
}

/** Mean over the repeats of coordinates of the net, turned back; the axis comes to lie on itself. */
export function foldTogether(repeat: Repeat, x: Float64Array, d: 2 | 3): Float64Array {
  const out = new Float64Array(d * repeat.nodes.length)
  for (let node = 0; node < repeat.unknown.length; node++) {
    const to = d * repeat.unknown[node]!
    if (repeat.unknown[node] === repeat.axis) {
      if (d === 3) out[to + 2] = x[d * node + 2]!
      continue
    }
    const angle = (2 * Math.PI * repeat.turn[node]!) / repeat.order
    const [c, s] = [Math.cos(angle) / repeat.order, Math.sin(angle) / repeat.order]
    out[to]! += c * x[d * node]! + s * x[d * node + 1]!
    out[to + 1]! += c * x[d * node + 1]! - s * x[d * node]!
    if (d === 3) out[to + 2]! += x[d * node + 2]! / repeat.order
  }
  return out
}

export function greatestDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestDivisor(b, a % b)
}
