// The key of the chart: every symbol it has, with its short and its long name in either terms.

import { kindKey, type Motif, type StitchElement } from "@roundwright/motif"
import { fullKindName, kindName, type Terms } from "@roundwright/stitches"
import { chainOval, dot, drawPicot, drawStitch, isCross } from "./draw-stitch.ts"
import { type Oval, type Stroke, symbolMm } from "./mark.ts"

interface Entry {
  readonly strokes: readonly Stroke[]
  readonly ovals: readonly Oval[]
  readonly name: string
}

const rowMm = 5.6
const textMm = 2.3
/** Letters of the wider of the usual fonts are about so wide against their height. */
const letterShare = 0.57

/** What the longest entry takes with its symbol, mm. */
export function keyColumn(motif: Motif, terms: Terms): number {
  return columnOf(entriesOf(motif, terms))
}

function columnOf(entries: readonly Entry[]): number {
  return 9 + Math.max(...entries.map(({ name }) => name.length)) * textMm * letterShare
}

export function chartKey(
  motif: Motif,
  terms: Terms,
  width: number,
): { svg: string; height: number } {
  const entries = entriesOf(motif, terms)
  const column = columnOf(entries)
  const columns = Math.max(1, Math.min(entries.length, Math.floor((width - 4) / column)))
  const rows = Math.ceil(entries.length / columns)
  const each = (width - 4) / columns
  const parts = entries.map(({ strokes, ovals, name }, k) => {
    const x = 4 + (k % columns) * each
    const y = 4 + Math.floor(k / columns) * rowMm
    const path = strokes
      .map(({ from, to }) => `M${two(from.x)} ${two(-from.y)}L${two(to.x)} ${two(-to.y)}`)
      .join("")
    const rings = ovals.map(
      (oval) =>
        `<ellipse cx="${two(oval.x)}" cy="${two(-oval.y)}" rx="${two(oval.long)}" ry="${two(oval.short)}"${oval.filled ? ' fill="#000"' : ""} transform="rotate(${two((-oval.angle * 180) / Math.PI)} ${two(oval.x)} ${two(-oval.y)})"/>`,
    )
    const text = `<text x="${two(x + 3.4)}" y="${two(y + 1)}" font-size="${textMm}" fill="#000">${name}</text>`
    return `<g transform="translate(${two(x)} ${two(y)})" stroke="#000" stroke-width="${symbolMm.stroke}" stroke-linecap="round" fill="none">${path === "" ? "" : `<path d="${path}"/>`}${rings.join("")}</g>${text}`
  })
  return { svg: parts.join("\n"), height: 4 + rows * rowMm }
}

function entriesOf(motif: Motif, terms: Terms): Entry[] {
  const kinds = new Map<string, StitchElement>()
  let [chains, picots, joins] = [false, 0, false]
  for (const { elements, closing, startChain } of motif.rounds) {
    joins ||= closing === "joined"
    chains ||= startChain !== undefined
    for (const element of elements) {
      if (element.type === "chain") chains = true
      else if (element.type === "picot") picots ||= element.chains
      else if (!kinds.has(kindKey(element.kind))) kinds.set(kindKey(element.kind), element)
    }
  }
  const upright = { x: 0, y: 1 }
  const entries: Entry[] = []
  if (chains || motif.centre.kind === "chain-ring")
    entries.push({
      strokes: [],
      ovals: [chainOval({ x: 0, y: 0 }, { x: 1, y: 0 })],
      name: "ch: chain",
    })
  if (joins) {
    const slip = { basic: "sl st" } as const
    entries.push({
      strokes: [],
      ovals: [dot({ x: 0, y: 0 }, upright)],
      name: `${kindName(slip, terms)}: slip stitch, join`,
    })
  }
  for (const { kind } of kinds.values()) {
    if (kind.basic === "sl st" && joins) continue
    const stitch: StitchElement = { type: "stitch", kind, anchors: [] }
    // A cross has no stem but where it reaches far down.
    const half = isCross(stitch) ? symbolMm.cross / 2 : 2
    const sides = kind.gathered?.how === "together" ? [-1.2, 1.2] : [0]
    const drawn = drawStitch(
      stitch,
      sides.map((x) => ({ x, y: -half })),
      { x: 0, y: half },
    )
    entries.push({ ...drawn, name: `${kindName(kind, terms)}: ${fullKindName(kind, terms)}` })
  }
  if (picots > 0)
    entries.push({
      strokes: [],
      ovals: drawPicot({ x: 0, y: -2 }, upright, picots),
      name: `picot of ${picots} ch`,
    })
  entries.push({ strokes: openTriangle, ovals: [], name: "yarn on (filled: yarn off)" })
  return entries
}

const openTriangle: readonly Stroke[] = [
  { from: { x: 0, y: 0.7 }, to: { x: -0.6, y: -0.5 } },
  { from: { x: -0.6, y: -0.5 }, to: { x: 0.6, y: -0.5 } },
  { from: { x: 0.6, y: -0.5 }, to: { x: 0, y: 0.7 } },
]

function two(value: number): string {
  return String(Math.round(value * 100) / 100 || 0)
}
