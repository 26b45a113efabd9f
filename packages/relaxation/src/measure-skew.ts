// Skew: how far the corners of the last round have turned against those of the first that has corners. Corners set over
// the middles of the sides below, as some squares do on purpose, are not turned by that.

import type { RoundCorners } from "@roundwright/motif"
import { cornerNodes, middle, tipAt } from "./measure-outline.ts"
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
function cornerTurn(net: Net, xy: Float64Array, round: number, corners: RoundCorners): number {
  const [cx, cy] = middle(net, xy, 2)
  const { nodes } = net.edges[round]!
  const points = nodes.map((node) => {
    const [x, y] = [xy[2 * node]! - cx, xy[2 * node + 1]! - cy]
    return { x, y, r: Math.hypot(x, y) }
  })
  const reach = points.map((point) => point.r)
  let [c, s] = [0, 0]
  for (const k of cornerNodes(net, round, corners, reach)) {
    const tip = tipAt(points, k)
    const angle = Math.atan2(tip.y, tip.x) * corners.count
    c += Math.cos(angle)
    s += Math.sin(angle)
  }
  return Math.atan2(s, c) / corners.count
}
