// Skew: how far the corners of the last round have turned against those of the first that has corners. Corners set over
// the middles of the sides below, as some squares do on purpose, are not turned by that.

import type { CornerGroup, RoundCorners } from "@roundwright/motif"
import { middle } from "./measure-outline.ts"
import type { Net } from "./net.ts"

/** Degrees, positive counterclockwise as first laid out; null when fewer than two rounds have the same corners. */
export function measureSkew(
  net: Net,
  xy: Float64Array,
  corners: readonly RoundCorners[],
): number | null {
  const last = net.edges.length - 1
  const count = corners[last]?.count ?? 0
  if (count < 3) return null
  const cornered = corners.flatMap((one, round) =>
    one.count === count && one.groups.length === count ? [round] : [],
  )
  if (cornered.length < 2) return null
  const turn = (round: number): number => cornerTurn(net, xy, round, corners[round]!)
  const halfSide = Math.PI / count
  let skew = 0
  // Round by round, so that a turn of more than half a side is followed.
  cornered.forEach((round, k) => {
    if (k === 0) return
    const change = turn(round) - turn(cornered[k - 1]!)
    skew += change - halfSide * Math.round(change / halfSide)
  })
  return (skew * 180) / Math.PI
}

/** Direction of the corners, as one angle within a k-th of a turn. */
function cornerTurn(
  net: Net,
  xy: Float64Array,
  round: number,
  { count, groups }: RoundCorners,
): number {
  const [cx, cy] = middle(net, xy, 2)
  let [c, s] = [0, 0]
  for (const group of groups) {
    const nodes = tipOfGroup(net, round, group)
    const x = nodes.reduce((sum, node) => sum + xy[2 * node]! - cx, 0)
    const y = nodes.reduce((sum, node) => sum + xy[2 * node + 1]! - cy, 0)
    const angle = Math.atan2(y, x) * count
    c += Math.cos(angle)
    s += Math.sin(angle)
  }
  return Math.atan2(s, c) / count
}

/** What makes the corner: the longest run of chains of its group, or without chains the one or two stitches in the middle. */
function tipOfGroup(net: Net, round: number, { first, last }: CornerGroup): number[] {
  const { elements, nodes } = net.edges[round]!
  const turn = Math.max(...elements) + 1
  const span = (last - first + turn) % turn
  const own = new Map<number, number[]>()
  elements.forEach((element, k) => {
    const place = (element - first + turn) % turn
    if (place <= span) own.set(place, [...(own.get(place) ?? []), nodes[k]!])
  })
  const runs = [...own.values()].filter((run) => net.nodes[run[0]!]!.kind === "chain")
  const longest = Math.max(0, ...runs.map((run) => run.length))
  if (longest > 0) return runs.filter((run) => run.length === longest).flat()
  const inOrder = [...own].sort(([a], [b]) => a - b).flatMap(([, run]) => run)
  return inOrder.slice((inOrder.length - 1) >> 1, (inOrder.length >> 1) + 1)
}
