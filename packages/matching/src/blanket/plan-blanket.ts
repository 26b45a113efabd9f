// A blanket of one motif: how many pieces for a wished size or of the pieces at hand, how they lie, what is still to make, its
// colours, half pieces and triangles, and the yarn of it all.

import { RoundwrightError } from "@roundwright/numerics"
import { believable, type LengthUnit, lengthWords } from "../lengths.ts"
import type { JoinKind } from "../yarn/joins.ts"
import { type Colour, type SharedColours, shareColours } from "./colours.ts"
import { haveText, laidAs } from "./counts-alone.ts"
import { joinEffect } from "./join-effect.ts"
import {
  hexagonsOffset,
  type Layout,
  mixedSquares,
  neighboursOf,
  type SizedCount,
  squaresInRows,
} from "./layout.ts"
import { meetingOf, mixedBlocks } from "./mixed-blocks.ts"
import type { NamedSize } from "./named-sizes.ts"
import { circlesInRows, octagonsInRows, squaresOnPoint } from "./other-layouts.ts"
import type { PieceOutline } from "./piece-told.ts"

export interface BlanketRequest {
  readonly shape: PieceOutline
  /** One piece from side to side, mm. */
  readonly pieceMm: number
  /** Of a rectangle: its length down the blanket, mm. */
  readonly pieceLengthMm?: number
  /** Two pieces joined side by side, measured over both, mm. */
  readonly pairMm?: number
  /** Room that a join takes between two pieces, mm, where no pair was measured. */
  readonly joinMm?: number
  /** Width and length wished for, mm. */
  readonly wanted?: readonly [number, number]
  /** Sizes of the name that was asked for, the one taken first. */
  readonly named?: readonly NamedSize[]
  readonly layout?: readonly [rows: number, columns: number]
  /** Whether the layout only follows from a number of pieces. */
  readonly countTold?: boolean
  /** Pieces there are already. */
  readonly have?: number
  /** Make the blanket of what is at hand and nothing more. */
  readonly onlyHave?: boolean
  /** Larger squares, by their size in the smallest. */
  readonly larger?: readonly SizedCount[]
  /** How pieces are joined, where it is told: for what the join does to the size. */
  readonly join?: JoinKind
  readonly borderMm?: number
  readonly straightEdges?: boolean
  readonly halves?: boolean
  readonly colours?: readonly Colour[]
  readonly gramsEach?: number | null
  readonly seed?: number
  /** What lengths are told in; cm where absent. */
  readonly unit?: LengthUnit
}

export interface BlanketPlan {
  readonly rows: number
  readonly columns: number
  readonly layout: Layout
  readonly pitchMm: number
  /** Whether the pitch was measured on a joined pair. */
  readonly pitchFrom: "pair" | "join" | "piece"
  readonly widthMm: number
  readonly lengthMm: number
  readonly wanted: readonly [number, number] | null
  /** Whole pieces needed, those there are, and those to make. */
  readonly needed: number
  readonly have: number
  readonly toMake: number
  readonly left: number
  readonly halves: number
  readonly triangles: number
  /** Small pieces between octagons or circles; quarters in the corners of squares on point. */
  readonly fillers: number
  readonly quarters: number
  readonly colours: SharedColours | null
  readonly notes: readonly string[]
  readonly text: string
}

/** A join draws two pieces together or keeps them apart by no more than this share; beyond it the pair was not of these pieces. */
const oddPair = 0.15
/** A join as wide as a third of its pieces is a strip between them, and no join. */
const oddJoin = 0.34

/** @throws RoundwrightError `no-size`, `too-small`, `odd-pair`, `nothing-wished`, what the layouts throw */
export function planBlanket(request: BlanketRequest): BlanketPlan {
  const { shape, pieceMm, borderMm = 0, have = 0 } = request
  believable(pieceMm, "a piece")
  if (!Number.isInteger(have) || have < 0)
    throw new RoundwrightError("bad-count", `There cannot be ${have} pieces at hand.`, {
      hint: "Give a whole number, 0 for none.",
    })
  const pitch = pitchOf(request)
  const [rows, columns] = gridFor(request, pitch.mm)
  const layout = layOut(request, rows, columns, pitch.mm)
  const count = (one: string) =>
    layout.counts.filter((c) => c.shape === one).reduce((sum, c) => sum + c.count, 0)
  const needed = count(shape === "on-point" ? "square" : shape)
  const halves = count("half-hexagon") + count("half-square")
  const triangles = count("edge-triangle")
  // The outer sides have no join.
  const open = shape === "square" && !request.larger ? pitch.mm - pieceMm : 0
  const [widthMm, lengthMm] = [layout.widthMm, layout.heightMm].map(
    (mm) => mm - open + 2 * borderMm,
  ) as [number, number]
  const shared = request.colours
    ? shareColours(
        layout.pieces.map((piece) => areaShare(piece)),
        neighboursOf(layout.pieces, pitch.mm),
        request.colours,
        request.gramsEach ?? null,
        request.seed,
      )
    : null
  const toMake = Math.max(0, needed - have)
  const plan = {
    rows,
    columns,
    layout,
    pitchMm: pitch.mm,
    pitchFrom: pitch.from,
    widthMm,
    lengthMm,
    wanted: request.wanted ?? null,
    needed,
    have,
    toMake,
    left: Math.max(0, have - needed),
    halves,
    triangles,
    fillers: count("filler"),
    quarters: count("quarter-square"),
    colours: shared,
    notes: notesOf(request, pitch, shared, [rows, columns]),
  } as const
  return { ...plan, text: textOf(plan, request) }
}

/** Rows and columns of exactly so many pieces, as near to the wished shape as its divisors allow; of a prime number a row. */
export function layoutOfCount(
  pieces: number,
  [width, length]: readonly [number, number],
): [rows: number, columns: number] {
  let best: [number, number] = [pieces, 1]
  const off = ([rows, columns]: readonly [number, number]) =>
    Math.abs(Math.log(length / rows / (width / columns)))
  for (let rows = 1; rows <= pieces; rows += 1)
    if (pieces % rows === 0 && off([rows, pieces / rows]) < off(best)) best = [rows, pieces / rows]
  return best
}

interface Pitch {
  readonly mm: number
  readonly from: "pair" | "join" | "piece"
}

/** From one middle to the next: what a joined pair measures beyond a single piece, or a piece's own size. */
function pitchOf({ pieceMm, pairMm, joinMm, unit }: BlanketRequest): Pitch {
  if (joinMm !== undefined && !(Math.abs(joinMm) <= oddJoin * pieceMm))
    throw new RoundwrightError(
      "odd-pair",
      `A join of ${lengthWords(joinMm, unit)} between pieces of ${lengthWords(pieceMm, unit)} is no join.`,
      { hint: "Give the room that one join takes, a few millimetres.", numbers: { joinMm } },
    )
  if (pairMm === undefined && joinMm !== undefined) return { mm: pieceMm + joinMm, from: "join" }
  if (pairMm === undefined) return { mm: pieceMm, from: "piece" }
  believable(pairMm, "a joined pair")
  const mm = pairMm - pieceMm
  if (Math.abs(mm / pieceMm - 1) > oddPair)
    throw new RoundwrightError(
      "odd-pair",
      `A joined pair of ${lengthWords(pairMm, unit)} is not two pieces of ${lengthWords(pieceMm, unit)}.`,
      {
        hint: "Measure over both pieces, from outer side to outer side, and one piece as it lies in the pair.",
        numbers: { pairMm, pieceMm },
      },
    )
  return { mm, from: "pair" }
}

function gridFor(request: BlanketRequest, pitch: number): [number, number] {
  const { wanted, layout, have = 0, shape, borderMm = 0, unit } = request
  if (layout) return [layout[0], layout[1]]
  const step = shape === "on-point" ? pitch * Math.SQRT2 : pitch
  const rowStep = shape === "hexagon" ? (pitch * Math.sqrt(3)) / 2 : rowPitch(request, step)
  const extra = shape === "hexagon" ? (2 * pitch) / Math.sqrt(3) - rowStep : 0
  if (wanted) {
    const [width, length] = wanted.map((mm) => believable(mm, "the blanket") - 2 * borderMm)
    const columns = Math.round(width! / step)
    const rows = Math.round((length! - extra) / rowStep)
    if (width! < pitch * 0.75 || length! < rowStep * 0.75 || columns < 1 || rows < 1)
      throw new RoundwrightError(
        "too-small",
        `A blanket of ${lengthWords(wanted[0], unit)} by ${lengthWords(wanted[1], unit)} is smaller than one piece of ${lengthWords(pitch, unit)}${borderMm > 0 ? " with its border" : ""}.`,
        { hint: "Check the units, or make smaller pieces.", numbers: { pitch } },
      )
    return [rows, columns]
  }
  if (have > 0) return gridOfPieces(have, shape, pitch, rowStep)
  throw new RoundwrightError("nothing-wished", "Neither a size nor a number of pieces is given.", {
    hint: "Give --size '130 x 170 cm', --layout 8x10, or the pieces at hand with --have 40.",
  })
}

/** Down the blanket: of rectangles their own length with the same join. */
function rowPitch({ pieceMm, pieceLengthMm }: BlanketRequest, pitch: number): number {
  return pieceLengthMm === undefined ? pitch : pieceLengthMm + pitch - pieceMm
}

/** A blanket is about four long to three wide; two thirds is as far as one strays. */
const longerBy = 4 / 3

/** Of so many pieces the layout that leaves fewest over and comes nearest to the usual shape. */
function gridOfPieces(
  have: number,
  shape: BlanketRequest["shape"],
  pitch: number,
  rowStep: number,
): [number, number] {
  let best = { rows: 1, columns: 1, cost: Number.POSITIVE_INFINITY }
  for (let columns = 1; columns <= have; columns += 1)
    for (const rows of [Math.floor(have / columns), rowsOfHexagons(have, columns)]) {
      const uses =
        shape === "hexagon"
          ? rows * columns - Math.floor(rows / 2)
          : shape === "on-point"
            ? rows * columns + (rows - 1) * (columns - 1)
            : rows * columns
      if (rows < 1 || uses > have) continue
      const long = (rows * rowStep) / (columns * pitch)
      const cost =
        (have - uses) / have + 0.25 * Math.abs(Math.log(Math.max(long, 1 / long) / longerBy))
      if (cost < best.cost) best = { rows, columns, cost }
    }
  return [best.rows, best.columns]
}

/** Rows of c, c - 1, c ... that so many pieces fill. */
function rowsOfHexagons(have: number, columns: number): number {
  const pair = 2 * columns - 1
  const pairs = Math.floor(have / pair)
  return 2 * pairs + (have - pairs * pair >= columns ? 1 : 0)
}

function layOut(request: BlanketRequest, rows: number, columns: number, pitch: number): Layout {
  const { shape, larger, straightEdges, halves } = request
  if (shape === "hexagon") {
    if (larger && larger.length > 0)
      throw new RoundwrightError("no-mixed-hexagons", "Hexagons of several sizes leave gaps.", {
        hint: "Mix squares, or make all hexagons alike.",
      })
    return hexagonsOffset(rows, columns, pitch, {
      halves: halves ?? true,
      triangles: straightEdges ?? false,
    })
  }
  if (shape === "octagon") return octagonsInRows(rows, columns, pitch)
  if (shape === "circle") return circlesInRows(rows, columns, pitch)
  if (shape === "on-point") return squaresOnPoint(rows, columns, pitch)
  if (!larger || larger.length === 0)
    return squaresInRows(rows, columns, pitch, rowPitch(request, pitch))
  const [first] = larger
  const meeting = Number.isInteger(first!.size) ? null : meetingOf(first!.size)
  return meeting && larger.length === 1
    ? mixedBlocks(rows, columns, pitch, meeting, first!.count)
    : mixedSquares(rows, columns, pitch, larger)
}

const shares: Readonly<Record<string, number>> = {
  square: 1,
  hexagon: 1,
  "half-hexagon": 0.5,
  "edge-triangle": 1 / 6,
  "corner-triangle": 1 / 12,
  octagon: 1,
  circle: 1,
  // Against an octagon, whose area is 0.83 of the square about it.
  filler: 0.21,
  "half-square": 0.5,
  "quarter-square": 0.25,
}

function areaShare({ shape, size }: Layout["pieces"][number]): number {
  return shares[shape]! * size ** 2
}

function notesOf(
  { named, pairMm, joinMm, borderMm, larger, unit, join }: BlanketRequest,
  pitch: Pitch,
  shared: SharedColours | null,
  grid: readonly [rows: number, columns: number],
): string[] {
  const notes: string[] = []
  if (pitch.from === "join")
    notes.push(
      `Each join takes ${lengthWords(joinMm!, unit)}, as told; surer is a joined pair, measured (--pair).`,
    )
  else if (pitch.from === "piece")
    notes.push(
      `No joined pair was measured: pieces are taken to lie edge to edge, and the join to take no room. ${joinEffect(join, unit, grid)} Join two, measure over both, and say so (--pair).`,
    )
  else
    notes.push(
      `By the joined pair of ${lengthWords(pairMm!, unit)} each piece takes ${lengthWords(pitch.mm, unit)}.`,
    )
  if (named && new Set(named.map(({ inches }) => inches.join())).size > 1)
    notes.push(
      `Sources do not agree on the size called ${named[0]!.name}: ${named.map(({ inches, source }) => `${inches.join(" x ")} in (${source})`).join(", ")}; the first is taken.`,
    )
  const [first] = larger ?? []
  const meeting = first && !Number.isInteger(first.size) ? meetingOf(first.size) : null
  if (first && meeting)
    notes.push(
      `${meeting.small} small ones are as long as ${meeting.large} large: ${meeting.small ** 2} of the one go in place of ${meeting.large ** 2} of the other${first.count % meeting.large ** 2 === 0 ? "" : `, so of ${first.count} large ones the whole blocks are laid`}.`,
    )
  if (borderMm) notes.push(`The border is ${lengthWords(borderMm, unit)} all round.`)
  if (shared && shared.missing > 0)
    notes.push(
      `The yarn left does not reach: ${shared.missing} ${shared.missing === 1 ? "piece has" : "pieces have"} no colour.`,
    )
  if (shared && shared.alike > 0)
    notes.push(`${shared.alike} neighbours share a colour; another seed may part them.`)
  return notes
}

const shapeWords: Readonly<Record<PieceOutline, string>> = {
  square: "squares",
  hexagon: "hexagons",
  octagon: "octagons",
  circle: "circles",
  "on-point": "squares",
}

function textOf(plan: Omit<BlanketPlan, "text">, request: BlanketRequest): string {
  const { shape, unit, pieceLengthMm } = request
  const { rows, columns, needed, have, halves, triangles, widthMm, lengthMm } = plan
  const what = pieceLengthMm === undefined ? shapeWords[shape] : "pieces"
  const grid =
    shape === "hexagon"
      ? `${rows} rows of ${columns}${rows > 1 ? ` and ${columns - 1} by turns` : ""}`
      : shape === "on-point"
        ? `${rows} rows of ${columns} on their corners${rows > 1 && columns > 1 ? ` and ${rows - 1} of ${columns - 1} between` : ""}`
        : `${rows} rows of ${columns}`
  const sizes = plan.layout.counts.filter((one) => one.shape === "square")
  const mixed =
    sizes.length > 1
      ? ` (${sizes.map((one) => `${one.count} of ${lengthWords(one.size * plan.pitchMm, unit)}`).join(", ")})`
      : ""
  const steps =
    shape === "hexagon" && rows > 1
      ? ` (as much as ${rows * columns} whole ones, or that many whole with the sides in steps)`
      : ""
  const edge = [
    ...(halves > 0 ? [`${halves} half pieces`] : []),
    ...(plan.quarters > 0 ? [`${plan.quarters} quarters in the corners`] : []),
    ...(triangles > 0 ? [`${triangles} edge triangles`] : []),
    ...(plan.fillers > 0
      ? [
          `${plan.fillers} fillers between them${shape === "octagon" ? ` of ${lengthWords(plan.pitchMm / (1 + Math.SQRT2), unit)} a side` : ""}`,
        ]
      : []),
  ]
  const wished = plan.wanted
    ? `, where ${lengthWords(plan.wanted[0], unit)} by ${lengthWords(plan.wanted[1], unit)} were wished for`
    : ""
  const there = have === 0 ? "" : ` ${haveText(have, needed)}`
  // So many that were told make no better rectangle.
  const thin =
    request.countTold && Math.max(rows, columns) > 2 * Math.min(rows, columns) && shape === "square"
      ? ` ${needed}${laidAs(needed)}.`
      : ""
  const each = plan.wanted ? ` of ${lengthWords(plan.pitchMm, unit)} each` : ""
  return `${needed} ${what}${mixed || each} in ${grid}${edge.length > 0 ? `, with ${edge.join(" and ")}` : ""}${steps}: ${lengthWords(widthMm, unit)} by ${lengthWords(lengthMm, unit)}${wished}.${there}${thin}${otherRows(plan, request)}`
}

/** A wish met by more than this share less is told the other way round too: a row fewer or more. */
const oddRow = 0.02

function otherRows(plan: Omit<BlanketPlan, "text">, request: BlanketRequest): string {
  const { wanted, unit, shape, borderMm = 0 } = request
  if (!wanted || shape !== "square" || request.larger) return ""
  const step = [plan.pitchMm, rowPitch(request, plan.pitchMm)] as const
  const counts = [plan.columns, plan.rows] as const
  const met = [plan.widthMm, plan.lengthMm] as const
  const other = counts.map((many, k) => {
    const off = met[k]! / wanted[k]! - 1
    if (Math.abs(off) <= oddRow) return many
    return Math.max(1, many + (off > 0 ? -1 : 1))
  }) as [number, number]
  if (other[0] === counts[0] && other[1] === counts[1]) return ""
  const mm = other.map((many, k) => many * step[k]! + 2 * borderMm) as [number, number]
  const short = Math.max(0, ...mm.map((one, k) => (wanted[k]! - one) / 2))
  return ` Or ${other[1]} rows of ${other[0]}, ${other[0] * other[1]} in all: ${lengthWords(mm[0], unit)} by ${lengthWords(mm[1], unit)}${short > 0.02 * wanted[0] ? `; a border ${lengthWords(short, unit)} wide makes up what is missing` : ""}.`
}
