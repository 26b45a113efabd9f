// The legend under a stitch diagram: the symbols it uses with their names, and the greys of strain.

import type { Motif } from "@roundwright/motif"
import { kindName, type StitchKind, type Terms } from "@roundwright/stitches"
import { strainGreys } from "./diagram-patches.ts"
import { type DiagramView, inPixels, sizeOfLength } from "./diagram-view.ts"
import { type ChartLayer, ink, type SpecValue } from "./spec.ts"
import {
  arrowSymbol,
  chainSymbol,
  dotSymbol,
  picotSymbol,
  type StitchSymbol,
  stitchSymbol,
  togetherSymbol,
} from "./symbols.ts"

export interface DiagramLegend {
  /** Room it takes below the plot, px. */
  readonly heightPx: number
  readonly layers: (symbols: SpecValue) => ChartLayer[]
}

interface Item {
  readonly symbol: StitchSymbol
  readonly name: string
  readonly length: number
  readonly angle: number
  readonly filled: boolean
}

/** A line of the legend, a letter of it, and the room of a symbol and between items, px. */
const line = 26
const letter = 6.9
const symbolRoom = 20
const gap = 16

export function diagramLegend(
  motif: Motif,
  view: DiagramView,
  terms: Terms,
  turned: boolean,
): DiagramLegend {
  const placed: { item: Item; x: number; y: number }[] = []
  let [x, y] = [0, view.heightPx + line]
  for (const item of itemsOf(motif, terms, turned)) {
    const wide = symbolRoom + letter * item.name.length
    if (x > 0 && x + wide > view.widthPx) [x, y] = [0, y + line]
    placed.push({ item, x, y })
    x += wide + gap
  }
  const strainY = y + line + 4
  return {
    heightPx: strainY - view.heightPx + line,
    layers: (symbols) => [
      legendSymbolLayer(placed, symbols, false),
      legendSymbolLayer(placed, symbols, true),
      textLayer(
        placed.map(({ item, x: left, y: at }) => ({
          text: item.name,
          x: left + symbolRoom,
          y: at,
        })),
      ),
      ...strainLegend(strainY, view.widthPx),
    ],
  }
}

/** Every symbol the legend may show. */
export function legendSymbols(motif: Motif): StitchSymbol[] {
  return itemsOf(motif, "US", true).map(({ symbol }) => symbol)
}

function itemsOf(motif: Motif, terms: Terms, turned: boolean): Item[] {
  const items = new Map<string, Item>()
  const add = (item: Item) => {
    if (!items.has(item.symbol.key)) items.set(item.symbol.key, item)
  }
  const upright = (symbol: StitchSymbol, name: string, filled = false): Item => ({
    symbol,
    name,
    length: filled ? 7 : heightPx(symbol),
    angle: 0,
    filled,
  })
  let [chains, picots, joined] = [motif.centre.kind === "chain-ring", false, false]
  for (const round of motif.rounds) {
    joined ||= round.closing === "joined"
    for (const element of round.elements) {
      if (element.type === "chain") chains = true
      else if (element.type === "picot") picots = true
      else if (element.madeOfChains) chains = true
      else
        add(
          upright(
            symbolOf(element.kind, element.anchors.length),
            kindName(element.kind, terms),
            element.kind.basic === "sl st",
          ),
        )
    }
  }
  if (chains) add({ symbol: chainSymbol, name: "chain", length: 13, angle: 90, filled: false })
  if (picots) add({ ...upright(picotSymbol, "picot"), length: 13 })
  if (joined) add(upright(dotSymbol, "join", true))
  if (turned) add({ ...upright(arrowSymbol, "way of work", true), angle: 90 })
  return [...items.values()]
}

/** Tall symbols are told by bars that need room. */
function heightPx({ path }: StitchSymbol): number {
  return path.includes("L") ? 25 : 20
}

function symbolOf(kind: StitchKind, places: number): StitchSymbol {
  return kind.gathered?.how === "together" || (places > 1 && kind.gathered === undefined)
    ? togetherSymbol(kind)
    : stitchSymbol(kind)
}

function legendSymbolLayer(
  placed: readonly { item: Item; x: number; y: number }[],
  symbols: SpecValue,
  filled: boolean,
): ChartLayer {
  return {
    data: {
      values: placed
        .filter(({ item }) => item.filled === filled)
        .map(({ item, x, y }) => ({
          left: x + symbolRoom / 2 - 3,
          top: y,
          symbol: item.symbol.key,
          size: sizeOfLength(item.length),
          angle: item.angle,
        })),
    },
    mark: {
      type: "point",
      stroke: ink,
      strokeWidth: 1.2,
      opacity: 1,
      fill: filled ? ink : "transparent",
    },
    encoding: {
      ...inPixels,
      shape: { field: "symbol", type: "nominal", scale: symbols, legend: null },
      size: { field: "size", type: "quantitative", scale: null, legend: null },
      angle: { field: "angle", type: "quantitative", scale: null },
    },
  }
}

function textLayer(texts: readonly { text: string; x: number; y: number }[]): ChartLayer {
  return {
    data: { values: texts.map(({ text, x, y }) => ({ left: x, top: y, text })) },
    mark: { type: "text", align: "left", baseline: "middle", limit: 0 },
    encoding: { ...inPixels, text: { field: "text", type: "nominal" } },
  }
}

/** Patches of grey, each with the strain from which it is used. */
function strainLegend(y: number, widthPx: number): ChartLayer[] {
  const heading = widthPx < 420 ? "strain >" : "strained by more than"
  const from = letter * heading.length + 8
  const step = Math.min(84, (widthPx - from) / strainGreys.length)
  return [
    {
      data: {
        values: strainGreys.map(({ opacity }, k) => ({
          left: from + k * step + 9,
          top: y,
          grey: opacity,
        })),
      },
      mark: { type: "point", shape: "square", size: 256, fill: ink, strokeWidth: 0, opacity: 1 },
      encoding: {
        ...inPixels,
        fillOpacity: { field: "grey", type: "quantitative", scale: null, legend: null },
      },
    },
    textLayer([
      { text: heading, x: 0, y },
      ...strainGreys.map(({ beyond }, k) => ({
        text: `${Number((100 * beyond).toFixed(beyond < 0.05 ? 1 : 0))} %`,
        x: from + k * step + 22,
        y,
      })),
    ]),
  ]
}
