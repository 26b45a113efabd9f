// A piece as it was counted or measured round by round, from whatever a maker has of it: a written pattern, lines such as
// "Rnd 3: 36 sts, 9 cm", lists ("Counts: 12, 24, 36", "4 cm, 7 cm, 9.5 cm"), or a pattern with its sizes in a heading.

import { examinePattern, sizeAfter } from "@roundwright/assessment"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, type PieceSize, readPieceSizes } from "@roundwright/stitches"
import { lengthAt } from "../lengths.ts"

export interface MeasuredRound {
  readonly round: number
  /** Stitches or groups counted; null where they were not. */
  readonly count: number | null
  /** Across after the round; null where it was not measured. */
  readonly sizeMm: number | null
}

export interface MeasuredPiece {
  readonly name: string
  readonly rounds: readonly MeasuredRound[]
  /** Where the sizes are from; null where there are none. */
  readonly sizes: "measured" | "computed" | null
  readonly across: "sides" | "corners"
  /** The worked piece, where the text is a pattern that can be read. */
  readonly motif: Motif | null
  readonly gauge: Gauge | null
}

const mostRounds = 500

/** @throws RoundwrightError `nothing-measured` */
export function readMeasured(text: string, name: string): MeasuredPiece {
  const lines = ownLines(text)
  const own = lines && { name, ...lines, motif: null, gauge: null }
  if (own) return own
  const pattern = readAsPattern(text, name)
  if (pattern) return pattern
  throw new RoundwrightError(
    "nothing-measured",
    `${name} tells no count and no size of any round.`,
    {
      hint: 'Write a pattern, or a line a round such as "Rnd 3: 36 sts, 9 cm".',
    },
  )
}

/** Computed sizes are there to be set beside measured ones: after every round, pressed flat. */
export function withComputedSizes(piece: MeasuredPiece): MeasuredPiece {
  const { motif, gauge } = piece
  if (piece.sizes !== null || !motif || !gauge?.absolute) return piece
  const rounds = piece.rounds.map((round) => {
    const found = sizeAfter(motif, gauge, { round: round.round, across: piece.across })
    return { ...round, sizeMm: typeof found === "number" ? found : null }
  })
  return { ...piece, rounds, sizes: "computed" }
}

function readAsPattern(text: string, name: string): MeasuredPiece | null {
  const { reading, gauge } = examinePattern(text, { remedies: false })
  if (reading.rounds.length === 0) return null
  const pieces = (reading.gauge.pieces ?? []).filter(({ round }) => round !== "last")
  const last = (reading.gauge.pieces ?? []).find(({ round }) => round === "last")
  const end = reading.rounds.at(-1)!.number
  const sizeOf = (round: number): number | null =>
    pieces.find((one) => one.round === round)?.mm ?? (round === end ? (last?.mm ?? null) : null)
  const rounds = reading.rounds.slice(0, mostRounds).map((round) => ({
    round: round.number,
    count: round.counted?.stitches ?? round.stated,
    sizeMm: sizeOf(round.number),
  }))
  if (rounds.every(({ count, sizeMm }) => count === null && sizeMm === null)) return null
  return {
    name,
    rounds,
    sizes: rounds.some(({ sizeMm }) => sizeMm !== null) ? "measured" : null,
    across: acrossOf(reading.gauge.pieces),
    motif: reading.motif.rounds.length > 0 ? reading.motif : null,
    gauge,
  }
}

function acrossOf(pieces: readonly PieceSize[] | undefined): "sides" | "corners" {
  return pieces?.[0]?.across ?? "sides"
}

interface OwnLines {
  readonly rounds: readonly MeasuredRound[]
  readonly sizes: "measured" | null
  readonly across: "sides" | "corners"
}

const label = /^(?:after\s+)?(?:rnds?|rounds?|rows?|r)\.?\s*#?(\d{1,3})\s*(?:[:.)=,–-]|\s)\s*/i
const listLabel = /^(counts?|stitches|sts|sizes?|size by round|across|groups?)\s*[:=]\s*/i

/** Counts and sizes of lines that hold nothing else; null where any line is written work. */
function ownLines(text: string): OwnLines | null {
  const found = new Map<number, { count: number | null; sizeMm: number | null }>()
  const put = (round: number, part: { count?: number; sizeMm?: number }) => {
    const before = found.get(round) ?? { count: null, sizeMm: null }
    found.set(round, { ...before, ...part })
  }
  let corners = false
  for (const raw of text.split(/\r\n|\r|\n/)) {
    const line = raw.trim()
    if (line === "" || line.startsWith("#")) continue
    corners ||= /\bdiagonal|\b(corner|point|tip)\s*-?to\s*-?(corner|point|tip)/i.test(line)
    const numbered = label.exec(line)
    if (numbered) {
      const values = valuesOf(line.slice(numbered[0].length))
      if (!values || values.counts.length > 1 || values.sizes.length > 2) return null
      const [count] = values.counts
      const [sizeMm] = values.sizes
      if (count === undefined && sizeMm === undefined) return null
      put(Number(numbered[1]), {
        ...(count === undefined ? {} : { count }),
        ...(sizeMm === undefined ? {} : { sizeMm }),
      })
      continue
    }
    if (/^sizes?\s*:/i.test(line) && /rnd|round/i.test(line)) {
      for (const { round, mm } of readPieceSizes(line))
        if (round !== "last") put(round, { sizeMm: mm })
      continue
    }
    const listed = listLabel.exec(line)
    const rest = listed ? line.slice(listed[0].length) : line
    const values = valuesOf(rest)
    if (!values) {
      if (/^[A-Za-z ]{2,20}:/.test(line)) continue
      return null
    }
    if (values.sizes.length + values.counts.length < 2) return null
    const lastUnit = /(mm|cm|in(?:ch(?:es)?)?|["″”])\s*$/i.exec(rest)
    const sizes =
      values.sizes.length === 1 && lastUnit ? allWithUnit(rest, lastUnit[1]!) : values.sizes
    if (sizes.length > 1) for (const [k, sizeMm] of sizes.entries()) put(k + 1, { sizeMm })
    else for (const [k, count] of values.counts.entries()) put(k + 1, { count })
  }
  if (found.size === 0 || found.size > mostRounds) return null
  const rounds = [...found]
    .sort(([a], [b]) => a - b)
    .map(([round, { count, sizeMm }]) => ({ round, count, sizeMm }))
  return {
    rounds,
    sizes: rounds.some(({ sizeMm }) => sizeMm !== null) ? "measured" : null,
    across: corners ? "corners" : "sides",
  }
}

/** "4, 7, 9.5 cm": one unit for the whole list. */
function allWithUnit(rest: string, unit: string): number[] {
  return rest.split(/[,;:]\s+|\s{0,9};\s{0,9}|\s+/).flatMap((part) => {
    const bare = part.replace(/[^\d.,/]/g, "").replace(/,$/, "")
    const read = bare === "" ? null : lengthAt(`${bare} ${unit}`)
    return read ? [read.mm] : []
  })
}

/** Words that may stand beside a count or a size without being work. */
const sideWords =
  /^(?:about|approx(?:imately)?|ca|total|across|wide|diameter|side|sides|to|side-to-side|corner|corners|point|points|diagonal|diagonally|high|square|around|in|all|each|of|the|a|and|is|=|after|has|with|measures|sts?|stitch(?:es)?|groups?|clusters?|petals?|shells?|spaces?|sps?|sc|hdc|dc|tr|htr|dtr|single|double|treble|crochets?|ch-?\d*|\d-?dc|counted|long|blocked|unblocked)$/i

/** Counts and sizes told in a line; null where other words stand in it. */
function valuesOf(text: string): { counts: number[]; sizes: number[] } | null {
  const counts: number[] = []
  const sizes: number[] = []
  let rest = text.trim()
  while (rest !== "") {
    const size = lengthAt(rest)
    if (size) {
      sizes.push(size.mm)
      rest = rest.slice(size.length).trimStart()
      continue
    }
    const number = /^(\d{1,5}(?:\.\d+)?)(?![\d/a-z])/i.exec(rest)
    if (number) {
      const after = rest.slice(number[0].length)
      // "16 groups of 3": the second number tells what stands in a group.
      const ofEach = /(?:of|x|×)\s*$/i.test(text.slice(0, text.length - rest.length))
      if (!ofEach) counts.push(Number(number[1]))
      rest = after.trimStart()
      continue
    }
    const punctuation = /^[,;.()/:–+-]+/.exec(rest)
    if (punctuation) {
      rest = rest.slice(punctuation[0].length).trimStart()
      continue
    }
    const word = /^[^\s,;()]+/.exec(rest)![0]
    if (!sideWords.test(word.replace(/[.:]$/, ""))) return null
    rest = rest.slice(word.length).trimStart()
  }
  return counts.length + sizes.length > 0 ? { counts, sizes } : null
}
