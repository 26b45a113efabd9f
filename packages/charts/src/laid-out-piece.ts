// A laid-out piece made ready for drawing: checked, its centre at the origin, a polygon turned so that a
// side lies at the bottom. x to the right, y up, lengths in the unit the chart names.

import { findCorners, type Motif } from "@roundwright/motif"
import { RoundwrightError, requireFinite, requirePositive } from "@roundwright/numerics"
import { cornerNodes, type LaidOutShape, middle, type Net } from "@roundwright/relaxation"
import type { ChartOptions, LengthUnit } from "./spec.ts"

/** What charts of the shape are drawn from. */
export interface LaidOutPiece {
  readonly motif: Motif
  /** Null when the piece was not, or could not be, laid out. */
  readonly shape: LaidOutShape | null
}

export interface FlatPlace {
  readonly x: number
  readonly y: number
}

export interface FlatPiece {
  readonly net: Net
  /** Place of every node. */
  readonly places: readonly FlatPlace[]
  /** Nodes of the last round's corners, counterclockwise; none for a round piece. */
  readonly corners: readonly number[]
  /** Largest distance from the centre, in the unit; above 0. */
  readonly reach: number
  readonly unit: LengthUnit
  /** mm in one unit. */
  readonly mmPerUnit: number
}

/** @throws RoundwrightError `nothing-to-draw`, `not-finite`, `not-positive`, `shape-of-another-motif` */
export function placeFlat(motif: Motif, shape: LaidOutShape, options: ChartOptions): FlatPiece {
  const { net, flat } = shape
  requireSamePiece(motif, net)
  const mmPerUnit = requirePositive(shape.mmPerUnit, "The length of a unit")
  for (const value of flat.xy) requireFinite(value, "A coordinate of the flat shape")
  for (const [name, value] of Object.entries(shape.outline))
    if (value !== null) requireFinite(value, `${name} of the outline`)
  const [cx, cy] = middle(net, flat.xy, 2)
  const centred = net.nodes.map((_, node) => ({
    x: (flat.xy[2 * node]! - cx) / mmPerUnit,
    y: (flat.xy[2 * node + 1]! - cy) / mmPerUnit,
  }))
  const corners = cornersOf(motif, net, centred)
  const turn = turnUpright(corners.map((node) => centred[node]!))
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const places = centred.map(({ x, y }) => ({ x: c * x - s * y, y: s * x + c * y }))
  const reach = places.reduce((most, { x, y }) => Math.max(most, Math.hypot(x, y)), 0)
  return {
    net,
    places,
    corners,
    reach: requirePositive(reach, "The reach of the piece"),
    unit: unitOf(shape, options),
    mmPerUnit,
  }
}

/** The unit a chart names: that of the options, else what the shape was laid out in. */
export function unitOf(shape: LaidOutShape, options: ChartOptions): LengthUnit {
  return options.lengthUnit ?? (shape.mmPerUnit === 1 ? "mm" : "widths of one sc")
}

/** @throws RoundwrightError `nothing-to-draw`, `shape-of-another-motif` */
export function requireSamePiece(motif: Motif, net: Net): void {
  if (motif.rounds.length === 0 || net.edges.length === 0)
    throw new RoundwrightError("nothing-to-draw", "There is no round to draw.", {
      hint: "The pattern must have at least one round that could be read.",
    })
  const fits =
    net.edges.length === motif.rounds.length &&
    net.edges.every(
      (edge, round) =>
        edge.nodes.length > 0 &&
        edge.elements.every((element) => motif.rounds[round]!.elements[element] !== undefined),
    )
  if (!fits)
    throw new RoundwrightError(
      "shape-of-another-motif",
      "The laid-out shape does not belong to this motif.",
      { hint: "Lay out the same motif that is to be drawn." },
    )
}

function cornersOf(motif: Motif, net: Net, places: readonly FlatPlace[]): number[] {
  const last = net.edges.length - 1
  const found = findCorners(motif)[last]
  if (found === undefined || found.count < 3) return []
  const { nodes } = net.edges[last]!
  const reach = nodes.map((node) => Math.hypot(places[node]!.x, places[node]!.y))
  return cornerNodes(net, last, found, reach).map((k) => nodes[k]!)
}

/** The smallest turn, radians, that brings the middle of a side to the bottom. */
function turnUpright(corners: readonly FlatPlace[]): number {
  const k = corners.length
  if (k < 3) return 0
  let [c, s] = [0, 0]
  for (const { x, y } of corners) {
    const angle = k * Math.atan2(y, x)
    c += Math.cos(angle)
    s += Math.sin(angle)
  }
  if (Math.hypot(c, s) < leastAgreement * k) return 0
  const step = (2 * Math.PI) / k
  const turn = -Math.PI / 2 + Math.PI / k - Math.atan2(s, c) / k
  return turn - step * Math.round(turn / step)
}

/** Corners that point in all directions alike have no common turn to be taken out. */
const leastAgreement = 0.1
