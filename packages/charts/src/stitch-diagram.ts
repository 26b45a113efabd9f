// The stitch diagram: every stitch as its symbol, drawn where the laid-out piece has it when pressed flat,
// with the strain of its fabric in grey behind it and the number of each round at the round's start.
//
// Drawn in Vega-Lite, like the other charts, as points whose shape is the symbol, whose size is the length of
// the stitch and whose angle is its direction: one path for each kind, one row of data for each stitch. 900
// stitches come to some 80 kB of specification and are drawn in a tenth of a second.

import { countRound, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { blockableStretch, type LaidOutShape, usualMaterial } from "@roundwright/relaxation"
import { kindName, type Terms } from "@roundwright/stitches"
import { diagramLegend, legendSymbols } from "./diagram-legend.ts"
import { type DiagramMark, type DiagramMarks, diagramMarks } from "./diagram-marks.ts"
import { numberRounds } from "./diagram-numbers.ts"
import { placeFlat } from "./laid-out-piece.ts"
import { strainByRound, strainFinding, strainWords } from "./shape-findings.ts"
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

/** A piece higher than wide is drawn this much higher than wide at most. */
const mostHeightShare = 1.25

/** Greys for strains beyond each bound: what yarn gives, twice that, as far as blocking helps, and between. */
export const strainGreys: readonly { readonly beyond: number; readonly opacity: number }[] = [
  { beyond: usualMaterial.give, opacity: 0.12 },
  { beyond: 2 * usualMaterial.give, opacity: 0.22 },
  { beyond: usualMaterial.give + blockableStretch / 2, opacity: 0.34 },
  { beyond: blockableStretch, opacity: 0.48 },
]

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
  const drawn = diagramMarks(motif, shape, piece)
  if (drawn.marks.length > mostMarks)
    throw new RoundwrightError(
      "too-many-stitches",
      `${drawn.marks.length} stitches and chains are too many to be told apart in a drawing.`,
      { hint: "Draw fewer rounds.", numbers: { marks: drawn.marks.length, most: mostMarks } },
    )
  const view = fitView(drawn, plotWidth(options, marginPx, marginPx))
  const numbers = numberRounds(drawn, view, motif)
  const terms = options.terms ?? "US"
  const legend = diagramLegend(motif, view, strainGreys, terms, numbers.arrows.length > 0)
  const patches = shadedPatches(drawn)
  const symbols = symbolScale([
    ...drawn.marks.map(({ symbol }) => symbol),
    ...patches.map(({ mark }) => mark.symbol),
    ...legendSymbols(motif),
  ])
  const rows = drawn.marks.map((mark) => rowOf(mark, view, numbers.faded.has(mark)))
  const strains = strainByRound(motif, shape)
  const title = strainFinding(strains)
  return frameChart(
    {
      title,
      key: "Every stitch where it comes to lie, darker where strained; each round's number at its start.",
      description: `${title}. Stitch diagram, read from the centre outwards. ${motif.rounds
        .map((_, round) => `${tellRound(motif, round, terms)}; ${tellStrain(strains[round]!)}`)
        .join(". ")}.`,
    },
    null,
    rows.filter((_, k) => !drawn.marks[k]!.filled),
    [
      patchLayer(patches, view, symbols),
      symbolLayer(view, symbols, false, null),
      symbolLayer(view, symbols, true, [
        ...rows.filter((_, k) => drawn.marks[k]!.filled),
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

/** How the piece is placed in the plot. */
export interface DiagramView {
  readonly widthPx: number
  readonly heightPx: number
  readonly pxPerUnit: number
  readonly x: Readonly<Record<string, SpecValue>>
  readonly y: Readonly<Record<string, SpecValue>>
  /** Rounds a coordinate to a hundredth of a pixel or so, to keep the data short. */
  readonly tidy: (value: number) => number
  readonly strokePx: number
}

function fitView(drawn: DiagramMarks, widthPx: number): DiagramView {
  let [left, right, low, high] = [0, 0, 0, 0]
  for (const { x, y, length } of drawn.marks) {
    left = Math.min(left, x - length / 2)
    right = Math.max(right, x + length / 2)
    low = Math.min(low, y - length / 2)
    high = Math.max(high, y + length / 2)
  }
  const pxPerUnit = Math.min(widthPx / (right - left), (mostHeightShare * widthPx) / (high - low))
  const heightPx = Math.max(leastHeightPx, Math.ceil((high - low) * pxPerUnit))
  const digits = Math.min(12, Math.max(0, Math.ceil(Math.log10(100 * pxPerUnit))))
  const axis = (from: number, to: number, px: number) => {
    const middle = (from + to) / 2
    const half = px / pxPerUnit / 2
    return {
      type: "quantitative",
      axis: null,
      scale: { domain: [middle - half, middle + half], nice: false, zero: false },
    }
  }
  const typical = median(drawn.marks.map(({ length }) => length)) * pxPerUnit
  return {
    widthPx,
    heightPx,
    pxPerUnit,
    x: axis(left, right, widthPx),
    y: axis(low, high, heightPx),
    tidy: (value) => Number(value.toFixed(digits)),
    strokePx: Math.min(1.4, Math.max(0.65, 0.055 * typical)),
  }
}

/** A flat strip still gets room for its numbers. */
const leastHeightPx = 60

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  return sorted[Math.floor(sorted.length / 2)] ?? 0
}

type Row = Readonly<Record<string, SpecValue>>

function rowOf(mark: DiagramMark, view: DiagramView, faded: boolean): Row {
  return {
    x: view.tidy(mark.x),
    y: view.tidy(mark.y),
    symbol: mark.symbol.key,
    size: sizeOfLength(mark.length * view.pxPerUnit),
    angle: Math.round(mark.angle),
    opacity: faded ? fadedOpacity : 1,
  }
}

/** Symbols under a number step back so that it can be read. */
const fadedOpacity = 0.22

/** The size of a point, px2, whose box is that long; lengths to a quarter of a pixel, to keep the drawing short. */
export function sizeOfLength(px: number): number {
  return (Math.round(4 * px) / 4) ** 2
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

function symbolEncoding(view: DiagramView, symbols: SpecValue): Row {
  const plain = (field: string): SpecValue => ({
    field,
    type: "quantitative",
    scale: null,
    legend: null,
  })
  return {
    x: { ...view.x, field: "x" },
    y: { ...view.y, field: "y" },
    shape: { field: "symbol", type: "nominal", scale: symbols, legend: null },
    size: plain("size"),
    angle: { field: "angle", type: "quantitative", scale: null },
    opacity: plain("opacity"),
  }
}

interface ShadedPatch {
  readonly mark: DiagramMark
  readonly opacity: number
}

function shadedPatches({ patches }: DiagramMarks): ShadedPatch[] {
  return patches.flatMap(({ mark, strain }) => {
    const grey = strainGreys.findLast(({ beyond }) => Math.abs(strain) > beyond)
    return grey === undefined ? [] : [{ mark, opacity: grey.opacity }]
  })
}

function patchLayer(
  patches: readonly ShadedPatch[],
  view: DiagramView,
  symbols: SpecValue,
): ChartLayer {
  return {
    data: {
      values: patches.map(({ mark, opacity }) => ({ ...rowOf(mark, view, false), opacity })),
    },
    mark: { type: "point", fill: ink, strokeWidth: 0 },
    encoding: symbolEncoding(view, symbols),
  }
}

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
