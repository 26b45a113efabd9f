// A first placing in the plane: every round a circle or a polygon, as deep as its stitches are high, turned so
// that the stitches stand over their bases as well as they can. Only a start for the minimiser.

import type { RoundCorners } from "@roundwright/motif"
import type { EdgePlan } from "./edge-plan.ts"
import type { Leg } from "./legs.ts"
import { cornerMitres, firstTips } from "./mitre.ts"
import type { Ground } from "./places.ts"

export function placeInPlane(
  ground: Ground,
  corners: readonly RoundCorners[],
  legs: readonly Leg[][],
  count: number,
): Float64Array {
  const xy = new Float64Array(2 * count)
  const ring = ground.ring.nodes
  if (ring.length > 1)
    ring.forEach((node, k) => {
      const angle = (2 * Math.PI * k) / ring.length
      put(xy, node, ground.ring.lengthMm / (2 * Math.PI), angle)
    })
  ground.edges.forEach((edge, round) => {
    const base = ground.firstNode[round]!
    const tips =
      round === 0
        ? firstTips(ground, corners)
        : cornerMitres(ground, round, corners).map((m) => m.tip)
    const outline = edge.nodes.map((node) => onOutline(node.along, edge.lengthMm, tips))
    let [c, s, reach, weight] = [0, 0, 0, 0]
    for (const leg of legs[round]!) {
      const { nodes, weights } = leg.place.point
      let [x, y] = [0, 0]
      nodes.forEach((node, k) => {
        x += weights[k]! * xy[2 * node]!
        y += weights[k]! * xy[2 * node + 1]!
      })
      const own = outline[leg.index]!
      const at = Math.hypot(x, y)
      if (at > 0) {
        const turn = Math.atan2(y, x) - own.angle
        c += Math.cos(turn)
        s += Math.sin(turn)
      }
      reach += ((at + leg.restMm) / own.radius) * leg.top.widthMm
      weight += leg.top.widthMm
    }
    // A round of chains alone, or one that is worked into nothing below, gets the circle of its length.
    const size = weight > 0 ? reach / weight : edge.lengthMm / (2 * Math.PI)
    const turn = Math.hypot(c, s) > 1e-9 ? Math.atan2(s, c) : 0
    const bulges = loopBulges(edge)
    outline.forEach(({ radius, angle }, k) => {
      put(xy, base + k, size * radius + bulges[k]!, turn + angle)
    })
  })
  return xy
}

/**
 * Loops of chains start bulging outward, as the next round or the pins draw them: else rounding alone would
 * decide on which side of their ends a slack loop comes to lie.
 */
const bulgeShare = 0.15

function loopBulges(edge: EdgePlan): number[] {
  const bulges = edge.nodes.map(() => 0)
  for (let first = 0; first < edge.nodes.length; first++) {
    const { element, isChain } = edge.nodes[first]!
    if (!isChain) continue
    let last = first
    while (edge.nodes[last + 1]?.element === element) last++
    const count = last - first + 1
    for (let k = first; k <= last; k++)
      bulges[k] =
        bulgeShare *
        count *
        edge.nodes[k]!.widthMm *
        Math.sin((Math.PI * (k - first + 0.5)) / count)
    first = last
  }
  return bulges
}

/** Place on an outline of reach 1: the unit circle, or the polygon of apothem 1 whose corners are at the tips. */
function onOutline(
  along: number,
  length: number,
  tips: readonly number[],
): { radius: number; angle: number } {
  const k = tips.length
  if (k < 3) return { radius: 1, angle: (2 * Math.PI * along) / length }
  const sorted = tips.map((tip) => ((tip % length) + length) % length).sort((a, b) => a - b)
  let corner = k - 1
  for (let i = 0; i < k; i++) if (sorted[i]! <= along) corner = i
  if (along < sorted[0]!) corner = k - 1
  const from = sorted[corner]!
  const next = corner + 1 < k ? sorted[corner + 1]! : sorted[0]! + length
  const share = ((along < from ? along + length : along) - from) / (next - from)
  const half = Math.PI / k
  const sideways = (2 * share - 1) * Math.tan(half)
  return { radius: Math.hypot(1, sideways), angle: 2 * half * corner + half + Math.atan(sideways) }
}

function put(xy: Float64Array, node: number, radius: number, angle: number): void {
  xy[2 * node] = radius * Math.cos(angle)
  xy[2 * node + 1] = radius * Math.sin(angle)
}
