// Why a squaring works: half a side unrolled by its angle, every added stitch as a stick from the place it
// stands on to its top, and the line the finished side asks for. Tall sticks stand where the outline
// has far to go, and the last tops come to lie along the line.

import { RoundwrightError, requireFinite } from "@roundwright/numerics"
import { lengthWords, tidy } from "./findings.ts"
import { type ChartLayer, type ChartOptions, type ChartSpec, frameChart, ink } from "./spec.ts"

/** One added stitch over half a side. */
export interface StitchReach {
  readonly round: number
  readonly stitch: string
  /** Off the middle of the side, degrees. */
  readonly angleDeg: number
  /** From the centre to the place below, and to the top. */
  readonly fromMm: number
  readonly toMm: number
  /** What is left from the top to the finished side. */
  readonly leftMm: number
}

/** Points the line of the finished side is drawn through. */
const linePoints = 31

/** Stitch names stand beside their sticks where they have this much room, px. */
const nameRoomPx = 13

const rightPx = 74

/**
 * @param rows round after round, each from the middle of the side to the corner
 * @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow`
 */
export function sideAndCornerChart(
  rows: readonly StitchReach[],
  options: ChartOptions = {},
): ChartSpec {
  const lastRow = rows.at(-1)
  if (!lastRow)
    throw new RoundwrightError("nothing-to-draw", "There is no stitch to draw.", {
      hint: "A proposal has at least one added round.",
    })
  for (const row of rows)
    for (const [name, value] of Object.entries(row))
      if (typeof value === "number") requireFinite(value, `${name} of round ${row.round}`)
  const unit = options.lengthUnit ?? "mm"
  const half = Math.max(...rows.map(({ angleDeg }) => angleDeg))
  const side = (lastRow.toMm + lastRow.leftMm) * Math.cos(radians(lastRow.angleDeg))
  const line = Array.from({ length: linePoints }, (_, i) => {
    const angle = (half * i) / (linePoints - 1)
    return { angle, reach: side / Math.cos(radians(angle)) }
  })
  const rounds = [...new Set(rows.map(({ round }) => round))]
  const least = Math.min(...rows.map(({ fromMm }) => fromMm))
  const most = Math.max(...rows.map(({ toMm }) => toMm), line.at(-1)!.reach)
  const room = 0.06 * (most - least)
  const scale = { domain: [least - room, most + room], nice: false, zero: false }
  const across = { domain: [-0.03 * half, half * 1.03], nice: false, zero: false }
  const x = {
    field: "angle",
    type: "quantitative",
    scale: across,
    axis: { title: "degrees off the middle of the side", grid: false, tickCount: 6 },
  }
  const y = (field: string) => ({
    field,
    type: "quantitative",
    scale,
    title: null,
    axis: { tickCount: 6 },
  })
  const values = rows.map(({ round, stitch, angleDeg, fromMm, toMm }) => ({
    round,
    told: `Round ${round}, ${tidy(angleDeg, 0)} degrees off the middle: ${stitch}, from ${lengthWords(fromMm, unit)} to ${lengthWords(toMm, unit)}`,
    stitch,
    angle: angleDeg,
    from: fromMm,
    to: toMm,
    middle: (fromMm + toMm) / 2,
  }))
  const left = rows.filter(({ round }) => round === lastRow.round).map(({ leftMm }) => leftMm)
  const furthest = left.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a))
  const title = `The tops of round ${lastRow.round} come to lie within ${lengthWords(Math.abs(furthest), unit)} of a straight side`
  const width = (options.widthPx ?? 600) - 54 - rightPx
  const perRound = Math.max(
    ...rounds.map((round) => rows.filter((row) => row.round === round).length),
  )
  return frameChart(
    {
      title,
      key: "From the middle of a side (left) to its corner: each stitch from its place to its top. Dashed: the finished side.",
      description: `${title}. Distance from the centre in ${unit}, from the middle of a side to its corner. ${rounds.map((round) => tellRound(rows, round)).join(" ")}`,
    },
    `distance from the centre, ${unit}`,
    values,
    [
      {
        data: { values: line },
        mark: { type: "line", stroke: ink, strokeWidth: 1.2, strokeDash: [5, 4] },
        encoding: { x, y: y("reach") },
      },
      {
        mark: { type: "rule", stroke: ink, strokeWidth: 1.6, opacity: 0.55 },
        encoding: { x, y: y("from"), y2: { field: "to" } },
      },
      ...rounds.flatMap((round, index) => topsOf(values, round, index, x, y("to"))),
      ...(width / perRound >= nameRoomPx ? [names(x, y("middle"))] : []),
      ...rounds.map((round) => nameOf(values, round, y("to"))),
    ],
    options,
    { rightPx, heightPx: 300 },
  )
}

function topsOf(
  values: readonly { readonly round: number; readonly [key: string]: string | number }[],
  round: number,
  index: number,
  x: NonNullable<ChartLayer["encoding"]>[string],
  y: NonNullable<ChartLayer["encoding"]>[string],
): ChartLayer[] {
  const data = { values: values.filter((value) => value.round === round) }
  return [
    {
      data,
      mark: { type: "line", stroke: ink, strokeWidth: 1 },
      encoding: { x, y },
    },
    {
      data,
      mark: {
        type: "point",
        shape: index % 2 === 0 ? "circle" : "square",
        size: 34,
        strokeWidth: 1.4,
        stroke: ink,
        fill: index % 2 === 0 ? ink : "transparent",
        opacity: 1,
      },
      encoding: { x, y },
    },
  ]
}

function names(
  x: NonNullable<ChartLayer["encoding"]>[string],
  y: NonNullable<ChartLayer["encoding"]>[string],
): ChartLayer {
  return {
    mark: { type: "text", angle: 270, dx: 0, dy: -6, fontSize: 11, limit: 0 },
    encoding: { x, y, text: { field: "stitch", type: "nominal" } },
  }
}

/** `round 5` beside the plot, level with the corner end of its tops: further in, it would stand across the next round. */
function nameOf(
  values: readonly { readonly round: number; readonly [key: string]: string | number }[],
  round: number,
  y: NonNullable<ChartLayer["encoding"]>[string],
): ChartLayer {
  const last = values.findLast((value) => value.round === round)!
  return {
    data: { values: [{ ...last, name: `round ${round}` }] },
    mark: { type: "text", align: "left", baseline: "middle", dx: 10, limit: 0, x: "width" },
    encoding: { y, text: { field: "name", type: "nominal" } },
  }
}

function tellRound(rows: readonly StitchReach[], round: number): string {
  const own = rows.filter((row) => row.round === round)
  const told = own.map(
    ({ stitch, angleDeg, fromMm, toMm, leftMm }) =>
      `${stitch} at ${tidy(angleDeg, 0)} degrees from ${tidy(fromMm, 1)} to ${tidy(toMm, 1)}, left ${tidy(leftMm, 1)}`,
  )
  return `Round ${round}: ${told.join("; ")}.`
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180
}
