// The chart for print as SVG: marks, round numbers outside the work, key. Sizes in mm; black on white, or on wish one
// repeat dark and the rest light, or two inks by round.

import { countRound, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { LaidOutShape } from "@roundwright/relaxation"
import { kindName, type Terms } from "@roundwright/stitches"
import { chartKey, keyColumn } from "./chart-key.ts"
import { namedBy } from "./chart-text.ts"
import { type ChartLayout, layOutChart } from "./lay-out-chart.ts"
import { type Oval, type Place, type PrintMark, type Stroke, symbolMm } from "./mark.ts"
import { faultsOf, nudge } from "./nudge.ts"
import { roundNumbers } from "./numbers.ts"
import { crossingsOf } from "./overlaps.ts"

export interface PrintChartOptions {
  readonly terms?: Terms
  /** Whole width of the drawing, mm; when absent as large as its symbols are easily read, at most 170, which fits A4 and Letter. */
  readonly widthMm?: number
  /** `repeat`: one repeat dark, the rest light. `rounds`: two inks by round. */
  readonly emphasis?: "none" | "repeat" | "rounds"
}

/** Inside the margins of A4 and Letter. */
const mostWidthMm = 170
/** Symbols somewhat larger than they are laid out: a T of 2.5 mm. */
const easilyRead = 1.3

/** Stretches tried until no symbol lies on another. */
const stretches = [1, 1.12, 1.25, 1.4, 1.6, 1.85, 2.15]

/** A layout with so many faults for each of its repeats needs more room, and no touch. */
const touchedBelow = 8

/** The layout with the smallest stretch at which nothing lies on anything; the best of all where there is none. */
export function roomyLayout(motif: Motif, shape: LaidOutShape): ChartLayout {
  let best: { layout: ChartLayout; faults: number } | null = null
  for (const stretch of stretches) {
    const layout = layOutChart(motif, shape, stretch)
    const faults = faultsOf(inked(layout.marks))
    if (best === null || faults < best.faults) best = { layout, faults }
    if (faults > 0 && faults <= touchedBelow * layout.repeats) {
      const touched = touchedUp(motif, layout)
      const left = faultsOf(inked(touched.marks))
      if (left < best.faults) best = { layout: touched, faults: left }
    }
    if (best.faults === 0) break
  }
  return best!.layout
}

function touchedUp(motif: Motif, layout: ChartLayout): ChartLayout {
  const moved = nudge(
    inked(layout.marks),
    (round) => (motif.rounds[round]?.elements.length ?? 0) / layout.repeats,
  )
  return { ...layout, marks: layout.marks.map((mark) => moved.get(mark) ?? mark) }
}

/** The centre lies under what is worked into it. */
export function inked(marks: readonly PrintMark[]): PrintMark[] {
  return marks.filter(({ kind }) => kind !== "ring" && kind !== "yarn-on")
}

/** @throws RoundwrightError `chart-tangled`, and what `placeFlat` throws */
export function printChart(
  motif: Motif,
  shape: LaidOutShape,
  options: PrintChartOptions = {},
): string {
  const { terms = "US", emphasis = "none" } = options
  const layout = roomyLayout(motif, shape)
  requireUntangled(layout)
  const numbers = roundNumbers(motif, layout)
  const box = boxOf(layout.marks, numbers.places)
  const width = Math.max(leastWidth, box.right - box.left, 4 + keyColumn(motif, terms))
  const key = chartKey(motif, terms, width)
  const tall = box.top - box.bottom
  const height = tall + key.height
  const middle = (width - (box.right - box.left)) / 2 - box.left
  const widthMm = options.widthMm ?? Math.min(mostWidthMm, easilyRead * width)
  const title = `${motif.title ?? "Motif"}: chart`
  const body = [
    `<g stroke="#000" stroke-width="${symbolMm.stroke}" stroke-linecap="round" stroke-linejoin="round" fill="none" transform="translate(${tell(middle)} ${tell(box.top)})">`,
    ...numbers.parts,
    ...byRound(motif, layout.marks, emphasis),
    "</g>",
    `<g transform="translate(0 ${tell(tall)})">${key.svg}</g>`,
  ]
  return `<svg xmlns="http://www.w3.org/2000/svg" role="img" width="${tell(widthMm)}mm" height="${tell((widthMm * height) / width)}mm" viewBox="0 0 ${tell(width)} ${tell(height)}" font-family="Helvetica, Arial, 'Liberation Sans', sans-serif">
<title>${escaped(title)}</title>
<desc>${escaped(description(motif, terms))}</desc>
${body.join("\n")}
</svg>`
}

/** Where more than this share of the marks cross the piece is a tangle that no chart can show. */
const tangledShare = 0.05

function requireUntangled({ marks }: ChartLayout): void {
  const crossings = crossingsOf(marks).length
  if (crossings <= tangledShare * marks.length) return
  throw new RoundwrightError(
    "chart-tangled",
    "Its rounds lie across one another, and a chart would mislead.",
    {
      hint: "'roundwright check' tells which round does not go round the one before.",
      numbers: { crossings, marks: marks.length },
    },
  )
}

/** Room for the key of a small piece, mm. */
const leastWidth = 52

function boxOf(marks: readonly PrintMark[], figures: readonly Place[]) {
  const points = [
    ...marks.flatMap(({ strokes, ovals }) => [
      ...strokes.flatMap(({ from, to }) => [from, to]),
      ...ovals.flatMap(({ x, y, long }) => [
        { x: x - long, y: y - long },
        { x: x + long, y: y + long },
      ]),
    ]),
    ...figures.flatMap(({ x, y }) => [
      { x: x - 2, y: y - 2 },
      { x: x + 2, y: y + 2 },
    ]),
  ]
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)]
  const over = (values: readonly number[], pick: (a: number, b: number) => number) =>
    values.reduce((best, value) => pick(best, value), values[0] ?? 0)
  return {
    left: over(xs, Math.min) - 1,
    right: over(xs, Math.max) + 1,
    bottom: over(ys, Math.min) - 1,
    top: over(ys, Math.max) + 1,
  }
}

/** The chart in words, for those who cannot see it. */
function description(motif: Motif, terms: Terms): string {
  const rounds = motif.rounds.map((round) => {
    const { byKind, spacesBySize } = countRound(round)
    const parts = [
      ...byKind.map(({ kind, count }) => `${count} ${kindName(kind, terms)}`),
      ...spacesBySize.map(
        ({ chains, count }) => `${count} ch-${chains} ${count === 1 ? "space" : "spaces"}`,
      ),
    ]
    return `Round ${round.number}${round.turned ? ", turned" : ""}: ${parts.join(", ")}`
  })
  return `Stitch chart, read from the centre outwards, counterclockwise for a right-handed maker. ${rounds.join(". ")}.`
}

/** Marks of one round after another, each round in a group that names it (`chart-text.ts` reads it back). */
function byRound(
  motif: Motif,
  marks: readonly PrintMark[],
  emphasis: PrintChartOptions["emphasis"],
): string[] {
  const rounds = new Map<number, string[]>()
  for (const mark of marks) {
    const own = rounds.get(mark.round) ?? []
    rounds.set(mark.round, own)
    own.push(drawn(mark, emphasis, namedBy(motif, mark)))
  }
  return [...rounds].map(([round, parts]) => {
    const number = motif.rounds[round]?.number
    return number === undefined
      ? parts.join("\n")
      : `<g data-round="${number}">\n${parts.join("\n")}\n</g>`
  })
}

/** @param name the stitch it stands for */
function drawn(
  mark: PrintMark,
  emphasis: PrintChartOptions["emphasis"],
  name: string | null,
): string {
  const light = emphasis === "repeat" && mark.repeat > 0 && mark.round >= 0
  const second = emphasis === "rounds" && mark.round % 2 === 1
  const style = light
    ? ' opacity="0.32"'
    : second
      ? ' stroke="#0b5a8f" stroke-dasharray="none"'
      : ""
  const fill = second ? "#0b5a8f" : "#000"
  const leaders = mark.leaders.map((one) =>
    line(one, ' stroke-width="0.1" stroke-dasharray="0.5 0.5"'),
  )
  const parts = [
    ...leaders,
    strokesOf(mark.strokes),
    ...mark.ovals.map((oval) => ellipse(oval, fill)),
  ]
  const told = name === null ? "" : ` data-st="${escaped(name)}"`
  return `<g${told}${style}>${parts.join("")}</g>`
}

function strokesOf(strokes: readonly Stroke[]): string {
  if (strokes.length === 0) return ""
  const path = strokes.map(
    ({ from, to }) => `M${tell(from.x)} ${tell(-from.y)}L${tell(to.x)} ${tell(-to.y)}`,
  )
  return `<path d="${path.join("")}"/>`
}

function line({ from, to }: Stroke, more: string): string {
  return `<path d="M${tell(from.x)} ${tell(-from.y)}L${tell(to.x)} ${tell(-to.y)}"${more}/>`
}

function ellipse({ x, y, long, short, angle, filled }: Oval, fill: string): string {
  const turn =
    long === short
      ? ""
      : ` transform="rotate(${tell((-angle * 180) / Math.PI)} ${tell(x)} ${tell(-y)})"`
  return `<ellipse cx="${tell(x)}" cy="${tell(-y)}" rx="${tell(long)}" ry="${tell(short)}"${filled ? ` fill="${fill}"` : ""}${turn}/>`
}

/** Hundredths of a mm are finer than any printer. */
export function tell(value: number): string {
  return String(Math.round(value * 100) / 100 || 0)
}

export function escaped(text: string): string {
  return text
    .replaceAll("&", "&amp;")
    .replaceAll("<", "&lt;")
    .replaceAll(">", "&gt;")
    .replaceAll('"', "&quot;")
}
