// `roundwright blanket`: pieces for a size or of the pieces at hand, their layout as a drawing, half pieces, colours, yarn.

import { existsSync, readFileSync, writeFileSync } from "node:fs"
import { resolve } from "node:path"
import { writePattern } from "@roundwright/instructions"
import {
  acrossOfMany,
  type BlanketPlan,
  combinationsOf,
  edgeTriangle,
  figuresAlone,
  halfPiece,
  layoutOfCount,
  layoutSvg,
  mainStitchOf,
  type PieceNow,
  type PieceOutline,
  paceText,
  pieceShapes,
  planBlanket,
  projectYarn,
  readBlanketSize,
  readColours,
  readJoin,
  readLarger,
  readLength,
  readPieceTold,
  readSkein,
  readWeighed,
  saysAlong,
  sheetLength,
  triangleLead,
  unitIn,
  type YarnEstimate,
} from "@roundwright/matching"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import { askedFigures, printFigures } from "./figures-out.ts"
import type { HandOptions } from "./hand.ts"
import { pieceOf } from "./match-command.ts"
import { oneOf, quoted, wholeNumber } from "./option-values.ts"
import { patternOfFile } from "./pattern-of-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"
import { readLayout } from "./yarn-command.ts"

export interface BlanketRequest extends Omit<HandOptions, "terms"> {
  readonly files: readonly string[]
  readonly size?: string | undefined
  readonly layout?: string | undefined
  readonly have?: string | undefined
  readonly pieces?: string | undefined
  readonly piece?: string | undefined
  readonly edge?: string | undefined
  readonly along?: string | undefined
  readonly shape?: string | undefined
  readonly pair?: string | undefined
  readonly gap?: string | undefined
  readonly pace?: string | undefined
  readonly around?: string | undefined
  readonly "join-rounds"?: string | undefined
  readonly "chains-each"?: string | undefined
  readonly "colours-each"?: string | undefined
  readonly "corner-to-corner": boolean
  readonly "in-rounds": boolean
  readonly larger?: string | undefined
  readonly border?: string | undefined
  readonly "straight-edges": boolean
  readonly colours?: string | undefined
  readonly seed?: string | undefined
  readonly join?: string | undefined
  readonly skein?: string | undefined
  readonly weighed?: readonly string[] | undefined
  readonly out?: string | undefined
  readonly now?: string | undefined
  readonly pattern?: string | undefined
  readonly json: boolean
}

/** @throws RoundwrightError for what cannot be used */
export async function runBlanket(request: BlanketRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (others.length > 0)
    throw new RoundwrightError("one-file", "A blanket is made of one pattern here.", {
      hint: "Name one, and larger squares with --larger '20 cm: 4'.",
    })
  const figures = figuresAlone("blanket", {
    ...askedFigures(request),
    ...(file === undefined ? {} : { file }),
    ...(request["corner-to-corner"] ? { "corner-to-corner": "yes" } : {}),
    ...(request["in-rounds"] ? { "in-rounds": "yes" } : {}),
  })
  if (figures) return printFigures(figures, request.json, around)
  const { gauge, hook, yarn, now } = request
  const piece =
    file === undefined
      ? null
      : pieceOf(await patternOfFile(around.cwd, file, request.pattern), { gauge, hook, yarn, now })
  const wished = request.size === undefined ? null : readBlanketSize(request.size)
  const counted = countedLayout(request, wished?.mm ?? null)
  const shape = shapeOf(request, piece)
  const told = request.piece === undefined ? null : readPieceTold(request.piece, shape)
  const pieceMm =
    told?.widthMm ??
    (piece === null && wished && request.pieces !== undefined && shape !== "square"
      ? acrossOfMany(wished.mm, wholeNumber(request.pieces, "--pieces"), shape)
      : sizeOfPiece(piece, wished?.mm ?? null, counted))
  const unit = unitIn(/\d/.test(request.size ?? "") ? request.size! : (request.piece ?? ""))
  const border = request.border === undefined ? undefined : readLength(request.border, "--border")
  const weighed = request.weighed?.map((one) => readWeighed(one))
  const each = piece
    ? projectYarn(piece, { pieces: 1, ...(weighed ? { weighed } : {}) }).piece
    : null
  const plan = planBlanket({
    shape,
    pieceMm,
    unit,
    ...(told === null || told.lengthMm === told.widthMm ? {} : { pieceLengthMm: told.lengthMm }),
    ...(request.gap === undefined ? {} : { joinMm: readLength(request.gap, "--gap") }),
    ...(request.pair === undefined ? {} : { pairMm: readLength(request.pair, "--pair") }),
    ...(wished === null ? {} : { wanted: wished.mm, named: wished.named }),
    ...(counted === null ? {} : { layout: counted }),
    ...(request.layout === undefined && counted !== null ? { countTold: true } : {}),
    ...(request.have === undefined ? {} : { have: countOf(request.have) }),
    ...(request.larger === undefined ? {} : { larger: readLarger(request.larger, pieceMm) }),
    ...(border === undefined ? {} : { borderMm: border }),
    ...(request.join === undefined ? {} : { join: readJoin(request.join) }),
    straightEdges: request["straight-edges"],
    ...(request.colours === undefined ? {} : { colours: readColours(request.colours) }),
    ...(request.seed === undefined ? {} : { seed: wholeNumber(request.seed, "--seed") }),
    gramsEach: each?.gramsBand?.[1] ?? null,
  })
  const byPoints =
    shape === "hexagon" &&
    wished !== null &&
    request.piece !== undefined &&
    !saysAlong(request.piece)
      ? [
          `From side to side is taken; were ${request.piece.trim()} from point to point, it would take about ${Math.round((plan.needed + plan.halves / 2) * (4 / 3))}.`,
        ]
      : []
  const yarnOfAll = piece ? yarnFor(piece, plan, request, weighed) : null
  const extra = piece && shape === "hexagon" ? edgePieces(piece, plan) : []
  const svg = layoutSvg(plan.layout, {
    shared: plan.colours,
    borderMm: border ?? 0,
    title: piece?.check.reading.title ?? "Blanket",
  })
  const inEach = request["colours-each"]
  const combined =
    inEach === undefined || request.colours === undefined
      ? null
      : combinationsOf(
          readColours(request.colours).length,
          wholeNumber(inEach, "--colours-each"),
          shape === "hexagon" ? plan.rows * plan.columns : plan.needed,
        ).text
  const pace = request.pace === undefined ? null : paceText(request.pace, Math.max(1, plan.toMake))
  const drawn = request.out === undefined ? null : writeDrawing(around.cwd, request.out, svg)
  around.out(
    request.json
      ? `${JSON.stringify({ file: file ?? null, ...plan, pace, yarn: yarnOfAll, edgePieces: extra, svg }, null, 2)}\n`
      : printed(plan, yarnOfAll, extra, drawn, [pace, combined], byPoints),
  )
  return 0
}

/** The rows and columns that are told, or of so many pieces those that suit the wished size best. */
function countedLayout(
  request: BlanketRequest,
  wanted: readonly [number, number] | null,
): [number, number] | null {
  if (request.layout !== undefined) return readLayout(request.layout)
  // So many of another shape lie as their size lets them.
  const alone = request.shape !== undefined && request.shape.trim().toLowerCase() !== "square"
  if (request.pieces === undefined || (alone && wanted !== null)) return null
  return layoutOfCount(wholeNumber(request.pieces, "--pieces"), wanted ?? [3, 4])
}

function sizeOfPiece(
  piece: PieceNow | null,
  wanted: readonly [number, number] | null,
  counted: readonly [number, number] | null,
): number {
  if (piece) return piece.now.acrossMm
  // Size and number of pieces tell how large each is.
  if (wanted && counted) return Math.min(wanted[0] / counted[1], wanted[1] / counted[0])
  throw new RoundwrightError("no-size", "Nothing tells how large a piece is.", {
    hint: "Name its pattern, give --piece '15 cm', or the blanket's --size with its number of --pieces.",
  })
}

function shapeOf({ shape }: BlanketRequest, piece: PieceNow | null): PieceOutline {
  if (shape !== undefined) return oneOf(shape, pieceShapes, "--shape")
  const corners = piece?.now.corners ?? 4
  if (corners === 6) return "hexagon"
  if (corners === 4) return "square"
  throw new RoundwrightError(
    "no-layout",
    `A piece of ${corners === 0 ? "no" : corners} corners does not fill a blanket by itself.`,
    {
      hint: "Square it first (square --corners 4), or say --shape square for pieces joined in a grid.",
    },
  )
}

function countOf(text: string): number {
  return text.trim() === "0" ? 0 : wholeNumber(text, "--have")
}

/** Halves and triangles are counted by their part of a whole piece. */
function yarnFor(
  piece: PieceNow,
  plan: BlanketPlan,
  request: BlanketRequest,
  weighed: ReturnType<typeof readWeighed>[] | undefined,
): YarnEstimate {
  const pieces = Math.max(1, Math.ceil(plan.toMake + plan.halves / 2 + plan.triangles / 6))
  return projectYarn(piece, {
    pieces,
    layout: [plan.rows, plan.columns],
    join: readJoin(request.join ?? "slip-stitch"),
    ...(request.skein === undefined ? {} : { skein: readSkein(request.skein) }),
    ...(weighed ? { weighed } : {}),
  })
}

/** Half pieces and triangles written out, where the piece can be halved. */
function edgePieces(piece: PieceNow, plan: BlanketPlan): string[] {
  const { motif, gauge, now, check } = piece
  const { terms } = check.reading
  const lines: string[] = []
  if (plan.halves > 0)
    lines.push(
      ...unlessRefused(
        () => {
          const half = halfPiece(motif, gauge)
          const written = writePattern(half.motif, terms)
            .split("\n")
            .filter((line) => /^Row /.test(line))
          return [
            `Half piece, ${half.rows.length} rows, ${half.verdict === "flat" ? "lies flat" : half.verdict}; its sides have ${half.sides.join(", ")} stitches, the whole's ${half.wholeSide}:`,
            ...written,
          ]
        },
        ({ message }) => [`A half piece could not be written: ${message}`],
      ),
    )
  if (plan.triangles > 0 && now.stitchesPerSide !== null) {
    const triangle = edgeTriangle(
      now.stitchesPerSide,
      now.acrossMm / 2,
      mainStitchOf(motif.rounds.at(-1)!),
      gauge,
      terms,
    )
    lines.push(`${triangleLead(triangle)}:`, ...triangle.text)
  }
  return lines
}

/** Marks a drawing of ours, so that no other file is written over. */
const ourDrawing =
  /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="[^"]*" width="[^"]*" height="[^"]*" role="img" font-family="sans-serif"><title>/

function writeDrawing(cwd: string, file: string, svg: string): string {
  const path = resolve(cwd, file)
  try {
    if (existsSync(path) && !ourDrawing.test(readFileSync(path, "utf8")))
      throw new RoundwrightError(
        "not-ours",
        `${file} exists and is not a layout of ours: it is left alone.`,
        { hint: "Name another with --out." },
      )
    writeFileSync(path, svg)
  } catch (error) {
    if (error instanceof RoundwrightError) throw error
    throw new RoundwrightError("not-written", `${quoted(file)} could not be written.`, {
      hint: "Check the folder and its permissions.",
    })
  }
  return file
}

function printed(
  plan: BlanketPlan,
  yarn: YarnEstimate | null,
  extra: readonly string[],
  drawn: string | null,
  told: readonly (string | null)[],
  further: readonly string[],
): string {
  const lines = [
    wrap(plan.text, 80),
    ...told.flatMap((line) => (line === null ? [] : [wrap(line, 80)])),
    wrap(`For a sheet: ${sheetLength(plan.widthMm)} by ${sheetLength(plan.lengthMm)}.`, 80),
  ]
  if (plan.colours) {
    lines.push("", "Colours")
    for (const { name, pieces, grams } of plan.colours.colours)
      lines.push(`  ${name}: ${pieces} pieces${grams === null ? "" : `, of ${grams} g left`}`)
  }
  if (extra.length > 0) lines.push("", ...extra.map((line) => wrap(line, 80, "", "  ")))
  if (yarn) lines.push("", wrap(`Yarn of what is to make: ${yarn.text}`, 80))
  const notes = [...further, ...plan.notes, ...(yarn?.basis.notes ?? [])]
  lines.push("", "To know", ...notes.map((note) => wrap(note, 80, "  - ", "    ")))
  if (drawn) lines.push("", `The layout: ${drawn}`)
  return `${lines.join("\n")}\n`
}
