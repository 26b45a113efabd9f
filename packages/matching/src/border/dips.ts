// Taller stitches into dips, so that a border's first round comes out straight: each place gets the stitch whose top comes
// nearest to the line that the lowest stitch on the highest place makes.

import { findCorners, type Motif } from "@roundwright/motif"
import { cornerNodes, layOut, measureOutline } from "@roundwright/relaxation"
import { type BasicStitch, type Gauge, sizeOf } from "@roundwright/stitches"

const ladder: readonly BasicStitch[] = ["sl st", "sc", "hdc", "dc", "tr", "dtr"]

export interface LevelledPlace {
  readonly depthMm: number
  readonly stitch: BasicStitch
  /** How far the top lies below the line (positive) or over it, mm. */
  readonly offMm: number
}

/** @param depthsMm how far each place lies below the highest, mm @param lowest stitch on the highest place */
export function levelDips(
  depthsMm: readonly number[],
  gauge: Gauge,
  lowest: BasicStitch = "sc",
): LevelledPlace[] {
  const height = (basic: BasicStitch) => sizeOf({ basic }, gauge, { turned: false }).heightMm
  const line = height(lowest)
  const choice = ladder.slice(ladder.indexOf(lowest))
  return depthsMm.map((depthMm) => {
    const wanted = line + depthMm
    const stitch = choice.reduce((best, one) =>
      Math.abs(height(one) - wanted) < Math.abs(height(best) - wanted) ? one : best,
    )
    return { depthMm, stitch, offMm: wanted - height(stitch) }
  })
}

/** Depths of the stitches of one side of a piece below its outermost, from corner to corner, mm; null for a round outline. */
export function dipsOfSide(motif: Motif, gauge: Gauge): number[] | null {
  const { net, flat, mmPerUnit } = layOut(motif, gauge, { inSpace: false })
  const last = motif.rounds.length - 1
  const corners = findCorners(motif)[last]!
  const edge = net.edges[last]!
  const points = edge.nodes.map((node) => {
    const [x, y] = [flat.xy[2 * node]!, flat.xy[2 * node + 1]!]
    return { x, y }
  })
  const [cx, cy] = [mean(points.map(({ x }) => x)), mean(points.map(({ y }) => y))]
  const reach = points.map(({ x, y }) => Math.hypot(x - cx, y - cy))
  if (measureOutline(net, flat.xy, 2, last, corners).corners < 3) return null
  const at = cornerNodes(net, last, corners, reach)
  if (at.length < 3) return null
  const [from, to] = [at[0]!, at[1]!]
  const [a, b] = [points[from]!, points[to]!]
  const length = Math.hypot(b.x - a.x, b.y - a.y)
  const out = edge.nodes.slice(from, to + 1).flatMap((node, k) => {
    const p = points[from + k]!
    const across = ((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / length
    return net.nodes[node]!.kind === "chain" ? [] : [across]
  })
  // A side is the same from either end, and a single loop does not draw the line.
  const even = out.map((one, k) => (one + out[out.length - 1 - k]!) / 2)
  const outermost = [...even]
    .sort((x, y) => y - x)
    .slice(0, Math.max(1, Math.round(even.length / 4)))
  const line = mean(outermost)
  return even.map((one) => Math.max(0, line - one) / mmPerUnit)
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / Math.max(1, values.length)
}
