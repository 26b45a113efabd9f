// The lines of a measurement read back from anywhere in a text. What stands without a bracket was set by hand.

import type { CountByHand } from "./published.ts"

/** A line of ours without blanks at its ends; the number of a ring is its second group, the value its third. */
const lineLabels =
  /^(picture|box|tap|corners|piece|view|known length|centre|center|ring\s+(\d{1,3}))\s*:\s*(\S.*)?$/i

/** The bracket of a value that was found, with its chance where it has one. */
export const foundBracket = /\(\s*found(?:\s*,\s*(\d{1,3})\s*%)?[^)]{0,80}\)/i

/** What comes after so many characters of a line is not read. */
const longestLine = 400

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
  readonly tap: readonly number[] | null
  readonly corners: readonly number[] | null
  readonly centre: readonly number[] | null
  readonly known: string | null
  /** How the view is to be taken; null where it is to be found. */
  readonly view: "as it is" | "round edge" | null
  /** The piece's shape word, such as square. */
  readonly shape: string | null
  readonly rings: readonly RingLine[]
  /** Lines that begin like one of ours and could not be read. */
  readonly problems: readonly { readonly line: number; readonly message: string }[]
}

/** The label of a line of ours, "ring 3", the number of its ring and its value, which may be empty; null for others. */
export function partsOfLine(
  line: string,
): { readonly label: string; readonly ringNumber?: string; readonly value: string } | null {
  const match = lineLabels.exec(line.slice(0, longestLine).trim())
  if (!match) return null
  const [, label, ringNumber, value = ""] = match
  return { label: label!, ...(ringNumber === undefined ? {} : { ringNumber }), value }
}

export function isMeasurementLine(line: string): boolean {
  return partsOfLine(line) !== null
}

/** Reads the lines of a measurement anywhere in a text; other lines are left alone. */
export function readLines(text: string): MeasurementLines {
  const out = {
    picture: null as string | null,
    box: null as number[] | null,
    tap: null as number[] | null,
    corners: null as number[] | null,
    centre: null as number[] | null,
    known: null as string | null,
    shape: null as string | null,
    view: null as MeasurementLines["view"],
  }
  const rings: RingLine[] = []
  const problems: { line: number; message: string }[] = []
  text.split(/\r?\n/).forEach((raw, index) => {
    const parts = partsOfLine(raw)
    if (!parts) return
    const { label, ringNumber, value } = parts
    const name = label.toLowerCase()
    const numbers = (count: number, what: string) => {
      const list = (value.replace(foundBracket, "").match(/-?\d+\.?\d*/g) ?? []).map(Number)
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
    else if (name === "tap") out.tap = numbers(2, "A tap")
    else if (name === "corners") out.corners = numbers(8, "Corners")
    else if (name === "known length") out.known = value
    else if (name === "piece") out.shape = /^[a-z]+/i.exec(value)?.[0]?.toLowerCase() ?? null
    else if (name === "view") {
      if (foundBracket.test(value)) return
      out.view = viewNamed(value)
      if (out.view === null)
        problems.push({
          line: index + 1,
          message:
            'The view can be "as it is" or "by its round edge"; without the line it is found.',
        })
    }
    // A centre that was found is found anew; one set by hand stays.
    else if (!foundBracket.test(value)) out.centre = numbers(2, "The centre")
  })
  return { ...out, rings, problems }
}

function readRing(
  number: number,
  value: string,
  line: number,
  problems: { line: number; message: string }[],
): RingLine {
  const bracket = foundBracket.exec(value)
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
    sureness: bracket ? Number(bracket[1] ?? 0) / 100 : null,
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

function viewNamed(value: string): MeasurementLines["view"] {
  if (/^as it is$/i.test(value)) return "as it is"
  return /^(?:by )?(?:its )?round edge$/i.test(value) ? "round edge" : null
}

/** Counts that the reader set, by the number of the ring. */
export function countsByHand({ rings }: MeasurementLines): Map<number, CountByHand> {
  return new Map(
    rings.flatMap(({ number, repeats, strands, between, sureness }) =>
      repeats === null || repeats < 1 || sureness !== null
        ? []
        : [
            [
              number,
              {
                repeats,
                strands: strands ?? (between === null ? undefined : repeats * (between + 1)),
              },
            ] as const,
          ],
    ),
  )
}
