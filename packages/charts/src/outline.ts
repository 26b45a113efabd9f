// The outline of the last round, pressed flat, over the polygon (or circle) it would ideally be: the regular
// polygon with corners as far from the centre as these are on average. How far the middle of a side stands
// off that polygon's side is its bow. Both axes have one scale.

import { cornersSeen } from "@roundwright/assessment"
import type { Motif } from "@roundwright/motif"
import type { LaidOutShape, Outline } from "@roundwright/relaxation"
import { lengthWords, tidy } from "./findings.ts"
import { type FlatPiece, type FlatPlace, placeFlat } from "./laid-out-piece.ts"
import { outlineFinding } from "./shape-findings.ts"
import {
  type ChartLayer,
  type ChartOptions,
  type ChartSpec,
  frameChart,
  ink,
  plotWidth,
  type SpecValue,
} from "./spec.ts"

const rightPx = 16

/** Room round the outline, as a share of its extent. */
const edgeRoom = 1.08

/** Points of a circle or polygon that look smooth at any size. */
const idealPoints = 180

/**
 * @throws RoundwrightError `nothing-to-draw`, `not-finite`, `not-positive`, `chart-too-narrow`,
 * `shape-of-another-motif`
 */
export function outlineChart(
  motif: Motif,
  shape: LaidOutShape,
  options: ChartOptions = {},
): ChartSpec {
  const piece = placeFlat(motif, shape, options)
  const { unit } = piece
  const edge = piece.net.edges.at(-1)!
  const points = edge.nodes.map((node) => piece.places[node]!)
  const outline = asSeen(shape.outline, points)
  const ideal = idealOutline(outline, piece)
  const reach = edgeRoom * extentOf([...points, ...ideal])
  const axis = (field: string, title: string | null): Readonly<Record<string, SpecValue>> => ({
    field,
    type: "quantitative",
    title: null,
    scale: { domain: [-reach, reach], nice: false, zero: false },
    axis: { tickCount: 6, grid: false, title },
  })
  const x = axis("x", `from the centre, ${unit}`)
  const y = axis("y", null)
  const title = outlineFinding(outline, unit)
  return frameChart(
    {
      title,
      key: `Solid: the edge as it lies flat. Dashed: ${idealWords(outline)}.`,
      description: `${title}. ${tellOutline(outline, unit)}`,
    },
    `from the centre, ${unit}`,
    closed(points, edge.closed),
    [
      outlineLayer(x, y, closed(ideal, true), { strokeWidth: 1.1, strokeDash: [5, 4] }),
      outlineLayer(x, y, null, { strokeWidth: 2 }),
      ...measures(piece, outline, x, y),
    ],
    options,
    { rightPx, heightPx: plotWidth(options, rightPx) },
  )
}

/** The outline as the eye takes it: a doily of many scallops is round, and as far out as its edge is on average. */
function asSeen(outline: Outline, points: readonly FlatPlace[]): Outline {
  if (outline.corners < 3 || cornersSeen(outline) > 0) return outline
  const reach = points.reduce((sum, { x, y }) => sum + Math.hypot(x, y), 0) / points.length
  return {
    ...outline,
    corners: 0,
    sideReachMm: reach,
    cornerReachMm: reach,
    bowMm: 0,
    cornerAngleDeg: null,
  }
}

function extentOf(points: readonly FlatPlace[]): number {
  return points.reduce((most, { x, y }) => Math.max(most, Math.abs(x), Math.abs(y)), 0)
}

function closed(points: readonly FlatPlace[], round: boolean) {
  return [...points, ...(round ? points.slice(0, 1) : [])].map(({ x, y }, order) => ({
    x,
    y,
    order,
  }))
}

/** Corners of a regular polygon at the mean reach, turned as the real ones are on average; or a circle. */
function idealOutline(outline: Outline, piece: FlatPiece): FlatPlace[] {
  const k = outline.corners
  if (k < 3 || piece.corners.length < 3) return ringOf(idealPoints, outline.sideReachMm, 0)
  let [c, s] = [0, 0]
  for (const node of piece.corners) {
    const { x, y } = piece.places[node]!
    const angle = k * Math.atan2(y, x)
    c += Math.cos(angle)
    s += Math.sin(angle)
  }
  // The first corner is the one by the first real corner: which of the k it would be else, rounding would decide.
  const turn = Math.atan2(s, c) / k
  const { x, y } = piece.places[piece.corners[0]!]!
  const step = (2 * Math.PI) / k
  return ringOf(
    k,
    outline.cornerReachMm,
    turn + step * Math.round((Math.atan2(y, x) - turn) / step),
  )
}

function ringOf(count: number, radius: number, turn: number): FlatPlace[] {
  return Array.from({ length: count }, (_, k) => {
    const angle = turn + (2 * Math.PI * k) / count
    return { x: radius * Math.cos(angle), y: radius * Math.sin(angle) }
  })
}

function outlineLayer(
  x: SpecValue,
  y: SpecValue,
  values: readonly Readonly<Record<string, SpecValue>>[] | null,
  style: Readonly<Record<string, SpecValue>>,
): ChartLayer {
  return {
    ...(values === null ? {} : { data: { values } }),
    mark: { type: "line", stroke: ink, ...style },
    encoding: { x, y, order: { field: "order", type: "quantitative" } },
  }
}

/** Lines from the centre to a corner and to the middle of a side, with what they measure. */
function measures(piece: FlatPiece, outline: Outline, x: SpecValue, y: SpecValue): ChartLayer[] {
  const { corners, places, unit } = piece
  const round = outline.corners < 3 || corners.length < 3
  const corner = upperRight(corners.map((node) => places[node]!))
  // Widths of one sc are named at the axes, and too long to be said again inside the piece.
  const noted = (length: number) => (unit === "mm" ? lengthWords(length, unit) : tidy(length, 1))
  const side = { x: outline.sideReachMm, y: 0 }
  const spokes = [
    ...(round ? [] : [{ x: 0, y: 0, x2: corner.x, y2: corner.y }]),
    { x: 0, y: 0, x2: side.x, y2: side.y },
  ]
  const cornerText = [
    `corner ${noted(outline.cornerReachMm)}`,
    ...(outline.cornerAngleDeg === null ? [] : [`angle ${tidy(outline.cornerAngleDeg, 0)}\u00b0`]),
  ]
  const sideText = round
    ? [`mean reach ${noted(outline.sideReachMm)}`]
    : [`side ${noted(outline.sideReachMm)}`, bowWords(outline, noted)]
  return [
    {
      data: { values: spokes },
      mark: { type: "rule", stroke: ink, strokeWidth: 1, strokeDash: [1, 3] },
      encoding: { x, y, x2: { field: "x2" }, y2: { field: "y2" } },
    },
    {
      data: { values: [{ x: 0, y: 0 }] },
      mark: { type: "point", shape: "circle", size: 20, fill: ink, stroke: ink, opacity: 1 },
      encoding: { x, y },
    },
    {
      data: { values: round ? [] : corners.map((node) => ({ ...places[node]! })) },
      mark: { type: "point", shape: "diamond", size: 60, fill: ink, stroke: ink, opacity: 1 },
      encoding: { x, y },
    },
    ...(round ? [] : [cornerNote(corner, cornerText, x, y)]),
    note(along(side, 0.22), sideText, x, y, belowSpoke),
  ]
}

/** Inside beside its spoke; but a triangle is too narrow there: beside its tip. */
function cornerNote(
  corner: FlatPlace,
  lines: readonly string[],
  x: SpecValue,
  y: SpecValue,
): ChartLayer {
  const tip = Math.abs(corner.x) < uprightShare * corner.y
  return tip
    ? note(along(corner, 0.92), lines, x, y, besideTip)
    : note(along(corner, 0.62), lines, x, y, aboveSpoke(lines.length))
}

/** A spoke that leans less than this leads to the one upper corner of a triangle. */
const uprightShare = 0.2

function along({ x, y }: FlatPlace, share: number): FlatPlace {
  return { x: share * x, y: share * y }
}

/** The corner nearest to the upper right. */
function upperRight(corners: readonly FlatPlace[]): FlatPlace {
  return corners.reduce((best, one) => (one.x + one.y > best.x + best.y ? one : best), {
    x: Number.NEGATIVE_INFINITY,
    y: 0,
  })
}

interface NotePlace {
  readonly align: "left" | "center" | "right"
  readonly baseline: "top" | "bottom"
  readonly dx: number
  readonly dy: number
}

const noteLinePx = 15
const belowSpoke: NotePlace = { align: "center", baseline: "top", dx: 0, dy: 8 }
/** Clear of a slope of 30 degrees that falls away two lines deep. */
const besideTip: NotePlace = { align: "left", baseline: "top", dx: 30, dy: 0 }

function aboveSpoke(lines: number): NotePlace {
  return { align: "right", baseline: "bottom", dx: -8, dy: -noteLinePx * (lines - 1) - 2 }
}

/** Lines of text beside a spoke. */
function note(
  place: FlatPlace,
  lines: readonly string[],
  x: SpecValue,
  y: SpecValue,
  at: NotePlace,
): ChartLayer {
  return {
    data: { values: [{ ...place, text: [...lines] }] },
    mark: { type: "text", ...at, lineHeight: noteLinePx, limit: 0 },
    encoding: { x, y, text: { field: "text", type: "nominal" } },
  }
}

function bowWords({ bowMm }: Outline, words: (length: number) => string): string {
  if (tidy(Math.abs(bowMm), 1) === "0.0") return "straight"
  return `bow ${words(Math.abs(bowMm))} ${bowMm > 0 ? "out" : "in"}`
}

function idealWords({ corners }: Outline): string {
  if (corners < 3) return "a circle of the same mean reach"
  return `a regular polygon with ${corners} corners as far out`
}

function tellOutline(outline: Outline, unit: string): string {
  const { corners, sideReachMm, cornerReachMm, acrossMm, cornerAngleDeg } = outline
  const across = `${lengthWords(acrossMm, unit)} across`
  if (corners < 3) return `Round, ${lengthWords(sideReachMm, unit)} from centre to edge, ${across}.`
  const angle =
    cornerAngleDeg === null ? "" : `, angle at a corner ${tidy(cornerAngleDeg, 0)} degrees`
  return `${corners} corners, ${across}; centre to the middle of a side ${lengthWords(sideReachMm, unit)}, centre to a corner ${lengthWords(cornerReachMm, unit)}${angle}; sides: ${bowWords(outline, (length) => lengthWords(length, unit))}.`
}
