// The stitch diagram: every stitch as its symbol, drawn where the laid-out piece has it when pressed flat,
// with the strain of its fabric in grey behind it and the number of each round at the round's start.
//
// Drawn in Vega-Lite, like the other charts, as points whose shape is the symbol, whose size is the length of
// the stitch and whose angle is its direction: one path for each kind, one row of data for each stitch. 900
// stitches come to some 80 kB of specification and are drawn in a tenth of a second.

import { countRound, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type LaidOutShape, measureStrain } from "@roundwright/relaxation"
import { kindName, type Terms } from "@roundwright/stitches"
import { postsOf } from "./diagram-geometry.ts"
import { diagramLegend, legendSymbols } from "./diagram-legend.ts"
import { diagramMarks } from "./diagram-marks.ts"
import { numberRounds } from "./diagram-numbers.ts"
import { type StrainShade, strainShades } from "./diagram-patches.ts"
import { startOf } from "./diagram-starts.ts"
import {
  type DiagramView,
  fitView,
  inPixels,
  type Row,
  rowOf,
  symbolEncoding,
} from "./diagram-view.ts"
import { placeFlat } from "./laid-out-piece.ts"
import { largestStrain, strainByRound, strainFinding, strainWords } from "./shape-findings.ts"
import {
  type ChartLayer,
  type ChartOptions,
  type ChartSpec,
  frameChart,
  ink,
  plotWidth,
  type SpecValue,
} from "./spec.ts"
import { arrowSymbol, type StitchSymbol } from "./symbols.ts"

export interface DiagramOptions extends ChartOptions {
  /** Names in the legend; US when absent. */
  readonly terms?: Terms
}

/** Left and right of the piece, px. */
const marginPx = 10

/** More symbols than this are a grey disc at any width, and a drawing of many megabytes. */
const mostMarks = 6000

/**
 * @throws RoundwrightError `too-many-stitches`, `nothing-to-draw`, `not-finite`, `chart-too-narrow`,
 * `shape-of-another-motif`
 */
export function stitchDiagram(
  motif: Motif,
  shape: LaidOutShape,
  options: DiagramOptions = {},
): ChartSpec {
  const piece = placeFlat(motif, shape, options)
  const posts = postsOf(piece)
  const marks = diagramMarks(motif, piece, posts)
  if (marks.length > mostMarks)
    throw new RoundwrightError(
      "too-many-stitches",
      `${marks.length} stitches and chains are too many to be told apart in a drawing.`,
      { hint: "Draw fewer rounds.", numbers: { marks: marks.length, most: mostMarks } },
    )
  const view = fitView(marks, plotWidth(options, marginPx, marginPx))
  const starts = motif.rounds.map((_, round) => startOf(motif, piece, posts, round))
  const numbers = numberRounds(starts, marks, view, motif)
  const terms = options.terms ?? "US"
  const legend = diagramLegend(motif, view, terms, numbers.arrows.length > 0)
  const shades = strainShades(piece, posts, measureStrain(piece.net, shape.flat.xy, 2))
  const symbols = symbolScale([
    ...marks.map(({ symbol }) => symbol),
    ...shades.map((shade) => shadeSymbol(shade, view)),
    ...legendSymbols(motif),
  ])
  const said = motif.rounds.map((_, round) => tellRound(motif, round, terms))
  const rows = marks.map((mark) =>
    rowOf(mark, view, numbers.faded.has(mark), said[mark.round] ?? "Centre"),
  )
  const strains = strainByRound(motif, shape)
  const title = strainFinding(strains, largestStrain(shape))
  return frameChart(
    {
      title,
      key: "Every stitch where it comes to lie, shaded where strained; each round's number at its start.",
      description: `${title}. Stitch diagram, read from the centre outwards. ${said
        .map((words, round) => `${words}; ${tellStrain(strains[round]!)}`)
        .join(". ")}.`,
    },
    null,
    rows.filter((_, k) => !marks[k]!.filled),
    [
      shadeLayer(shades, symbols),
      symbolLayer(view, symbols, false, null),
      symbolLayer(view, symbols, true, [
        ...rows.filter((_, k) => marks[k]!.filled),
        ...numbers.arrows.map((arrow) => ({ ...arrow, symbol: arrowSymbol.key })),
      ]),
      numbers.layer,
      ...legend.layers(symbols),
    ],
    options,
    {
      leftPx: marginPx,
      rightPx: marginPx,
      bottomPx: legend.heightPx,
      heightPx: view.heightPx,
    },
  )
}

function symbolScale(symbols: readonly StitchSymbol[]): SpecValue {
  const paths = new Map(symbols.map(({ key, path }) => [key, path]))
  return { domain: [...paths.keys()], range: [...paths.values()] }
}

function symbolLayer(
  view: DiagramView,
  symbols: SpecValue,
  filled: boolean,
  values: readonly Row[] | null,
): ChartLayer {
  return {
    ...(values === null ? {} : { data: { values } }),
    mark: {
      type: "point",
      stroke: ink,
      strokeWidth: view.strokePx,
      strokeCap: "round",
      strokeJoin: "round",
      fill: filled ? ink : "transparent",
    },
    encoding: symbolEncoding(view, symbols),
  }
}

/** Every shade as one shape: where its patches lie over one another nothing gets darker. */
function shadeSymbol({ beyond, patches }: StrainShade, view: DiagramView): StitchSymbol {
  const tenth = (px: number) => Math.round(10 * px) / 10
  const path = patches
    .map((corners) => corners.map(view.inPx).map(({ x, y }) => `${tenth(x)},${tenth(y)}`))
    .map((places) => `M${places.join("L")}Z`)
    .join("")
  return { key: shadeKey(beyond), path }
}

function shadeKey(beyond: number): string {
  return `strained by more than ${beyond}`
}

function shadeLayer(shades: readonly StrainShade[], symbols: SpecValue): ChartLayer {
  return {
    data: {
      values: shades.map(({ beyond, opacity }) => ({
        ...{ left: 0, top: 0, size: unitBoxPx, opacity: Number(opacity.toFixed(4)) },
        symbol: shadeKey(beyond),
      })),
    },
    mark: { type: "point", fill: ink, strokeWidth: 0 },
    encoding: {
      ...inPixels,
      shape: { field: "symbol", type: "nominal", scale: symbols, legend: null },
      size: { field: "size", type: "quantitative", scale: null, legend: null },
      opacity: { field: "opacity", type: "quantitative", scale: null, legend: null },
    },
  }
}

/** A point of this size, px2, is drawn with a path whose unit is a pixel. */
const unitBoxPx = 4

/** `Round 3, turned: 36 dc, 12 ch-2 spaces`. */
function tellRound(motif: Motif, index: number, terms: Terms): string {
  const round = motif.rounds[index]!
  const { byKind, spacesBySize, picots } = countRound(round)
  const parts = [
    ...byKind.map(({ kind, count }) => `${count} ${kindName(kind, terms)}`),
    ...spacesBySize.map(
      ({ chains, count }) => `${count} ch-${chains} ${count === 1 ? "space" : "spaces"}`,
    ),
    ...(picots > 0 ? [`${picots} ${picots === 1 ? "picot" : "picots"}`] : []),
  ]
  return `Round ${round.number}${round.turned ? ", turned" : ""}: ${parts.join(", ")}`
}

function tellStrain({ tops, posts }: { tops: number; posts: number }): string {
  return `tops ${strainWords(tops)}, posts ${strainWords(posts)}`
}
