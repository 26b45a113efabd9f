// A first placing in the plane: every round a circle, as deep as its stitches are high, turned so that the
// stitches stand over their bases as well as they can. Only a start for the minimiser.

import type { Leg } from "./legs.ts"
import type { Ground } from "./places.ts"

export function placeInCircles(
  ground: Ground,
  legs: readonly Leg[][],
  count: number,
): Float64Array {
  const xy = new Float64Array(2 * count)
  const angle = new Float64Array(count)
  const radius = new Float64Array(count)
  const ring = ground.ring.nodes
  ring.forEach((node, k) => {
    angle[node] = (2 * Math.PI * k) / ring.length
    radius[node] = ring.length > 1 ? ground.ring.lengthMm / (2 * Math.PI) : 0
  })
  ground.edges.forEach((edge, round) => {
    const base = ground.firstNode[round]!
    const fraction = (along: number): number => (2 * Math.PI * along) / edge.lengthMm
    let [c, s, reach, weight] = [0, 0, 0, 0]
    for (const leg of legs[round]!) {
      const { nodes, weights } = leg.place.point
      let [x, y] = [0, 0]
      nodes.forEach((node, k) => {
        x += weights[k]! * radius[node]! * Math.cos(angle[node]!)
        y += weights[k]! * radius[node]! * Math.sin(angle[node]!)
      })
      const at = Math.hypot(x, y)
      if (at > 0) {
        const turn = Math.atan2(y, x) - fraction(leg.top.along)
        c += Math.cos(turn)
        s += Math.sin(turn)
      }
      reach += (at + leg.top.heightMm + leg.place.aboveMm) * leg.top.widthMm
      weight += leg.top.widthMm
    }
    // A round of chains alone, or one that is worked into nothing below, gets the circle of its length.
    const r = weight > 0 ? reach / weight : edge.lengthMm / (2 * Math.PI)
    const turn = Math.hypot(c, s) > 1e-9 ? Math.atan2(s, c) : 0
    edge.nodes.forEach((node, k) => {
      angle[base + k] = turn + fraction(node.along)
      radius[base + k] = r
    })
  })
  for (let node = 0; node < count; node++) {
    xy[2 * node] = radius[node]! * Math.cos(angle[node]!)
    xy[2 * node + 1] = radius[node]! * Math.sin(angle[node]!)
  }
  return xy
}
