// The measurement as plain lines of a notebook, and back. A value that was found carries its chance in
// brackets; with the bracket deleted it is the reader's own and stays as it is.

import type { PublishedMeasurement, PublishedRing } from "./published.ts"
import { leastRead } from "./published.ts"

export interface LineOptions {
  /** Name of the picture as the notebook is to say it. */
  readonly picture: string
  /** The known length as it was given, such as "side 15.2 cm". */
  readonly known?: string | undefined
  /** Corners and box as given, in pixels. */
  readonly corners?: string | undefined
  readonly box?: string | undefined
}

const outlineNames: Readonly<Record<number, string>> = {
  3: "triangle",
  4: "square",
  5: "pentagon",
  6: "hexagon",
  8: "octagon",
}

const percent = (share: number) => `${Math.min(99, Math.round(100 * share))} %`

export function writeLines(published: PublishedMeasurement, options: LineOptions): string[] {
  const { outline } = published
  const length = lengthIn(published)
  const shape =
    outline.kind === "round"
      ? "round"
      : (outlineNames[outline.corners] ?? `${outline.corners} sides`)
  const reach =
    outline.kind === "round"
      ? `reach ${length(outline.sideReachPx)}`
      : `side ${length(outline.sideReachPx)}, corner ${length(outline.cornerReachPx)} from the centre`
  const [x, y] = published.centrePx
  return [
    `Picture: ${options.picture}`,
    ...(options.box === undefined ? [] : [`Box: ${options.box}`]),
    ...(options.corners === undefined ? [] : [`Corners: ${options.corners}`]),
    `Piece: ${shape}, ${published.lightOnDark ? "light on dark" : "dark on light"}; ${reach}`,
    ...(options.known === undefined ? [] : [`Known length: ${options.known}`]),
    `Centre: ${Math.round(x)} ${Math.round(y)}${published.centreSureness === 1 ? "" : ` (found, ${percent(published.centreSureness)})`}`,
    ...published.rings.map((ring, i) => ringLine(ring, i + 1, length)),
  ]
}

/** Lengths in millimetres where one is known, else in hundredths of the reach to a side. */
function lengthIn(published: PublishedMeasurement): (px: number) => string {
  const { mmPerPx, outline } = published
  if (mmPerPx !== null) return (px) => `${rounded(px * mmPerPx)} mm`
  return (px) => `${rounded((100 * px) / outline.sideReachPx)} of 100`
}

function rounded(value: number): string {
  return value < 20 ? String(Math.round(10 * value) / 10) : String(Math.round(value))
}

function ringLine(ring: PublishedRing, number: number, length: (px: number) => string): string {
  const to = `Ring ${number}: to ${length(ring.outerPx)}`
  if (ring.repeats === null || ring.sureness < leastRead) return `${to}; not read`
  const strands =
    ring.strands !== null && ring.strands !== ring.repeats ? `, ${ring.strands} strands` : ""
  const other =
    ring.nextBest !== null && (ring.halfOrTwice || ring.sureness < tellOther)
      ? `; or ${ring.nextBest} repeats`
      : ""
  const found = ring.by === "hand" ? "" : ` (found, ${percent(ring.sureness)}${other})`
  return `${to}; ${ring.repeats} repeats${strands}${found}`
}

/** Below this chance the next best is told too. */
const tellOther = 0.95

export interface RingLine {
  readonly number: number
  /** Outer radius in mm, or null when it is a share or absent. */
  readonly toMm: number | null
  /** Outer radius in hundredths of the side's reach. */
  readonly toShare: number | null
  readonly repeats: number | null
  readonly strands: number | null
  /** The chance in the bracket; null for a line set by hand. */
  readonly sureness: number | null
  /** The next best in the bracket. */
  readonly nextBest: number | null
  /** Posts between two spokes, where the reader counted them. */
  readonly between: number | null
  /** Stitch named on the line, in the words used. */
  readonly stitch: string | null
}

export interface MeasurementLines {
  readonly picture: string | null
  readonly box: readonly number[] | null
  readonly corners: readonly number[] | null
  readonly centre: readonly number[] | null
  readonly known: string | null
  /** The piece's shape word, such as square. */
  readonly shape: string | null
  readonly rings: readonly RingLine[]
  /** Lines that begin like one of ours and could not be read. */
  readonly problems: readonly { readonly line: number; readonly message: string }[]
}

const labels =
  /^\s*(picture|box|corners|piece|known length|centre|center|ring\s+(\d{1,3}))\s*:(.*)$/i
const found = /\(\s*found\s*,\s*(\d{1,3})\s*%[^)]{0,80}\)/i

/** Reads the lines of a measurement anywhere in a text; other lines are left alone. */
export function readLines(text: string): MeasurementLines {
  const out = {
    picture: null as string | null,
    box: null as number[] | null,
    corners: null as number[] | null,
    centre: null as number[] | null,
    known: null as string | null,
    shape: null as string | null,
  }
  const rings: RingLine[] = []
  const problems: { line: number; message: string }[] = []
  text.split(/\r?\n/).forEach((raw, index) => {
    const match = labels.exec(raw.slice(0, 400))
    if (!match) return
    const [, label, ringNumber, rest] = match
    const value = rest!.trim()
    const name = label!.toLowerCase()
    const numbers = (count: number, what: string) => {
      const list = (value.replace(found, "").match(/-?\d{1,30}(?:\.\d+)?/g) ?? []).map(Number)
      if (list.length === count) return list
      problems.push({
        line: index + 1,
        message: `${what} takes ${count} numbers, not ${list.length}.`,
      })
      return null
    }
    if (ringNumber !== undefined)
      rings.push(readRing(Number(ringNumber), value, index + 1, problems))
    else if (name === "picture") out.picture = value
    else if (name === "box") out.box = numbers(4, "A box")
    else if (name === "corners") out.corners = numbers(8, "Corners")
    else if (name === "known length") out.known = value
    else if (name === "piece") out.shape = /^[a-z]+/i.exec(value)?.[0]?.toLowerCase() ?? null
    // A centre that was found is found anew; one set by hand stays.
    else if (!found.test(value)) out.centre = numbers(2, "The centre")
  })
  return { ...out, rings, problems }
}

function readRing(
  number: number,
  value: string,
  line: number,
  problems: { line: number; message: string }[],
): RingLine {
  const bracket = found.exec(value)
  const own = value.replace(/\([^)]{0,200}\)/g, " ")
  const count = (pattern: RegExp) => {
    const match = pattern.exec(own)
    return match ? Number(match[1]) : null
  }
  const mm = /\bto\s+(\d+(?:\.\d+)?)\s*(mm|cm)\b/i.exec(own)
  const ring: RingLine = {
    number,
    toMm: mm ? Number(mm[1]) * (mm[2]!.toLowerCase() === "cm" ? 10 : 1) : null,
    toShare: count(/\bto\s+(\d+(?:\.\d+)?)\s+of\s+100\b/i),
    repeats: count(/\b(\d{1,4})\s+repeats?\b/i),
    strands: count(/\b(\d{1,4})\s+strands?\b/i),
    sureness: bracket ? Number(bracket[1]) / 100 : null,
    nextBest: nextBestIn(bracket?.[0]),
    between: count(/\b(\d{1,3})\s+posts?\s+between\b/i),
    stitch: /;\s*(sl st|sc|hdc|dc|tr|dtr|trtr)\s*(?:;|$)/i.exec(own)?.[1]?.toLowerCase() ?? null,
  }
  if (ring.toMm === null && ring.toShare === null)
    problems.push({ line, message: `Ring ${number} does not say how far it reaches ("to 25 mm").` })
  return ring
}

function nextBestIn(bracket: string | undefined): number | null {
  const match = /\bor\s+(\d{1,4})\s+repeats?\b/i.exec(bracket ?? "")
  return match ? Number(match[1]) : null
}

/**
 * Brings new lines into a text that may hold some already: lines whose value was found are replaced, lines
 * set by hand stay as they are, what is missing is added after the last of them. Nothing else is touched.
 */
export function mergeLines(text: string, fresh: readonly string[]): string {
  const labelOf = (line: string) =>
    labels.exec(line.slice(0, 400))?.[1]?.toLowerCase().replace(/\s+/g, " ")
  const byLabel = new Map(fresh.map((line) => [labelOf(line), line]))
  const lines = text === "" ? [] : text.split("\n")
  let last = -1
  const kept = lines.map((line, i) => {
    const label = labelOf(line)
    if (label === undefined) return line
    last = i
    const replacement = byLabel.get(label)
    byLabel.delete(label)
    const wasFound = found.test(line) || /;\s*not read\s*$/i.test(line)
    return replacement !== undefined && wasFound ? replacement : line
  })
  const missing = fresh.filter((line) => byLabel.get(labelOf(line)) === line)
  kept.splice(last + 1, 0, ...missing)
  return kept.join("\n")
}
