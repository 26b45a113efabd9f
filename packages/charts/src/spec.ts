// The part of a Vega-Lite 6 specification that our charts use, as plain data, and the frame they
// share: size, padding, type and ink. Charts are drawn in one ink with shape, dash and opacity, so
// that they read the same in black and white, on a dark page and on paper.
// Grammar: Vega-Lite documentation, version 6 (https://vega.github.io/vega-lite/docs/).

import { RoundwrightError, requireFinite } from "@roundwright/numerics"

/** One value of a record of data, a mark's property or an encoding; anything JSON can hold. */
export type SpecValue =
  | string
  | number
  | boolean
  | null
  | readonly SpecValue[]
  | { readonly [key: string]: SpecValue }

export interface ChartLayer {
  readonly transform?: readonly Readonly<Record<string, SpecValue>>[]
  readonly data?: { readonly values: readonly Readonly<Record<string, SpecValue>>[] }
  readonly mark: Readonly<Record<string, SpecValue>>
  readonly encoding?: Readonly<Record<string, SpecValue>>
}

export interface ChartSpec {
  readonly $schema: "https://vega.github.io/schema/vega-lite/v6.json"
  /** The chart in words, every value named: what a reader who cannot see it is told. */
  readonly description: string
  readonly title: Readonly<Record<string, SpecValue>>
  readonly width: number
  readonly height: number
  readonly padding: Readonly<Record<"left" | "top" | "right" | "bottom", number>>
  readonly autosize: { readonly type: "none" }
  readonly data: { readonly values: readonly Readonly<Record<string, SpecValue>>[] }
  readonly layer: readonly ChartLayer[]
  readonly config: Readonly<Record<string, SpecValue>>
}

/** mm, or where no gauge is known the width of the smallest stitch by the name it has in the pattern's terms. */
export type LengthUnit = "mm" | `widths of one ${string}`

export interface ChartOptions {
  /** Whole width of the drawing in pixels; 600 when absent. */
  readonly widthPx?: number
  /** Unit the ledger's lengths are in; `mm` when absent. */
  readonly lengthUnit?: LengthUnit
}

export interface ChartText {
  /** What the chart shows, as a finding. */
  readonly title: string
  /** How to read the marks. */
  readonly key: string
  readonly description: string
}

/** Takes the colour of the text around the drawing: dark on light, light on dark, black on paper. */
export const ink = "currentColor"

/** Fits the reading measure of a page; a phone asks for less. */
const defaultWidthPx = 600

/** Below this no axis, label and bar fit beside each other. */
const leastWidthPx = 240

/** Above this a drawing is no chart any more, and its text gets too small beside it. */
const mostWidthPx = 4000

/** Room around the plot, px: figures of the y axis at the left, the axis of rounds below. */
const room: Readonly<Record<"left" | "bottom" | "title" | "key" | "axisTitle", number>> = {
  left: 54,
  bottom: 44,
  title: 18,
  key: 15,
  axisTitle: 24,
}

/** Text begins this far from the left edge of the drawing, px: level with the text of a page around it. */
const edgePx = 1

/** Widths of a letter of the title and of the key, px: wide enough for the sans of most machines. */
const letter = { title: 8.3, key: 6.7 } as const

/** Room of a chart that is not laid out like the others, px. */
export interface PlotRoom {
  /** Beside the plot, for names. */
  readonly rightPx: number
  /** Left of the plot; that of the figures of a y axis when absent. */
  readonly leftPx?: number
  /** Below the plot; that of a row of figures and the name of the x axis when absent. */
  readonly bottomPx?: number
  readonly heightPx?: number
}

/**
 * Shared outer shape of every chart. The layout is fixed here and not left to the drawing program,
 * which can only guess the width of a text where there is no screen.
 * @param yTitle what the y axis measures, with its unit; stands level above the axis; null for a
 * drawing without axes
 * @throws RoundwrightError `chart-too-narrow`, `not-finite`
 */
export function frameChart(
  text: ChartText,
  yTitle: string | null,
  values: ChartSpec["data"]["values"],
  layer: readonly ChartLayer[],
  options: ChartOptions,
  plot: PlotRoom,
): ChartSpec {
  const width = widthOf(options)
  const left = plot.leftPx ?? room.left
  const title = foldLine(keepUnits(text.title), Math.floor(width / letter.title))
  const subtitle = foldLine(keepUnits(text.key), Math.floor(width / letter.key))
  const above = yTitle === null ? 8 : room.axisTitle
  const top = title.length * room.title + subtitle.length * room.key + above + 22
  const axisTitle: ChartLayer = {
    data: { values: [{ name: yTitle ?? "" }] },
    mark: { type: "text", align: "left", baseline: "bottom", x: edgePx - left, y: -9, limit: 0 },
    encoding: { text: { field: "name", type: "nominal" } },
  }
  return {
    $schema: "https://vega.github.io/schema/vega-lite/v6.json",
    description: text.description,
    title: {
      text: title,
      subtitle,
      anchor: "start",
      frame: "group",
      dx: edgePx - left,
      offset: above,
    },
    width: plotWidth(options, plot.rightPx, left),
    height: plot.heightPx ?? Math.round(Math.min(280, Math.max(210, width * 0.42))),
    padding: { left, top, right: plot.rightPx, bottom: plot.bottomPx ?? room.bottom },
    autosize: { type: "none" },
    data: { values },
    layer: (yTitle === null ? layer : [...layer, axisTitle]).map((one) =>
      withTooltips(one, values),
    ),
    config: chartConfig,
  }
}

/** Marks of data; lines and texts have no one row. */
const telling: ReadonlySet<SpecValue | undefined> = new Set(["point", "bar", "tick", "rule"])

/** Marks whose rows say in words what they show (`told`) say it where they are pointed at. */
function withTooltips(layer: ChartLayer, shared: ChartSpec["data"]["values"]): ChartLayer {
  const rows = layer.data?.values ?? shared
  if (!telling.has(layer.mark.type) || !rows.some(({ told }) => told)) return layer
  const told = { field: "told", type: "nominal" }
  return {
    ...layer,
    mark: { ...layer.mark, aria: true },
    encoding: { ...layer.encoding, description: told, tooltip: told },
  }
}

/** The next whole number of pixels; the last bits of a quotient, which machines may differ in, count for nothing. */
export function wholePx(px: number): number {
  return Math.ceil(px - 1e-6)
}

/** Width of the plot itself, px. */
export function plotWidth(options: ChartOptions, rightPx: number, leftPx = room.left): number {
  return widthOf(options) - leftPx - rightPx
}

export function widthOf(options: ChartOptions): number {
  const width = requireFinite(options.widthPx ?? defaultWidthPx, "The width of a chart")
  if (width >= leastWidthPx && width <= mostWidthPx) return width
  throw new RoundwrightError(
    "chart-too-narrow",
    `A chart of ${width} pixels cannot be drawn legibly.`,
    { hint: `Ask for ${leastWidthPx} to ${mostWidthPx} pixels.`, numbers: { width } },
  )
}

/** Figures stay on one line with their units. */
function keepUnits(sentence: string): string {
  return sentence.replace(/(\d) (mm|widths|%)(?![a-z])/g, "$1\u00a0$2")
}

/** Breaks a sentence into as few lines of at most `most` characters as will hold it, about equally long. */
export function foldLine(text: string, most: number): string[] {
  const lines = fillLines(text, most)
  let shorter = most
  while (
    shorter > text.length / lines.length &&
    fillLines(text, shorter - 1).length <= lines.length
  )
    shorter -= 1
  return fillLines(text, shorter)
}

/** Every line as full as it gets; longer words stand alone. */
function fillLines(text: string, most: number): string[] {
  const lines: string[] = []
  for (const word of text.split(" ")) {
    const last = lines.at(-1)
    if (last !== undefined && last.length + 1 + word.length <= most)
      lines[lines.length - 1] = `${last} ${word}`
    else lines.push(word)
  }
  return lines
}

const sans = "system-ui, sans-serif"

const chartConfig: ChartSpec["config"] = {
  font: sans,
  background: "transparent",
  view: { stroke: null },
  aria: false,
  title: {
    color: ink,
    subtitleColor: ink,
    fontSize: 14,
    fontWeight: 600,
    subtitleFontSize: 12,
    subtitlePadding: 6,
    limit: 0,
    lineHeight: 18,
    subtitleLineHeight: 15,
  },
  axis: {
    labelColor: ink,
    titleColor: ink,
    domainColor: ink,
    tickColor: ink,
    gridColor: ink,
    gridOpacity: 0.14,
    labelFontSize: 12,
    titleFontSize: 12,
    titleFontWeight: 400,
    titlePadding: 6,
    // Text is taken for wider where there is no screen: six figures fit into the room beside the axis.
    labelLimit: 80,
    labelOverlap: true,
  },
  text: { color: ink, fontSize: 12 },
}
