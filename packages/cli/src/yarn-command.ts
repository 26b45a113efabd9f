// `roundwright yarn FILE`: the yarn of a piece and of the whole project, with its error.

import { formatPercent } from "@roundwright/assessment"
import {
  figuresAlone,
  gramsIn,
  projectYarn,
  readColourRounds,
  readJoin,
  readSkein,
  readWeighed,
  type YarnAmount,
  type YarnEstimate,
} from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { readStitchList } from "@roundwright/shaping"
import { alignColumns } from "./align.ts"
import { askedFigures, printFigures } from "./figures-out.ts"
import type { HandOptions } from "./hand.ts"
import { pieceOf } from "./match-command.ts"
import { quoted, wholeNumber } from "./option-values.ts"
import { patternOfFile } from "./pattern-of-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface YarnRequest extends HandOptions {
  readonly files: readonly string[]
  readonly pieces?: string | undefined
  readonly now?: string | undefined
  readonly left?: string | undefined
  readonly step?: string | undefined
  readonly layout?: string | undefined
  readonly weighed?: readonly string[] | undefined
  readonly skein?: string | undefined
  readonly colours?: string | undefined
  readonly join?: string | undefined
  readonly border?: string | undefined
  readonly reserve?: string | undefined
  readonly pattern?: string | undefined
  readonly json: boolean
}

/** @throws RoundwrightError for what cannot be used */
export async function runYarn(request: YarnRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined) {
    const figures = figuresAlone("yarn", askedFigures(request))
    if (figures) return printFigures(figures, request.json, around)
  }
  if (file === undefined || others.length > 0)
    throw new RoundwrightError("one-file", "Name the one pattern whose yarn is wanted.", {
      hint: "Such as: yarn square.txt --pieces 32.",
    })
  const text = await patternOfFile(around.cwd, file, request.pattern)
  const piece = pieceOf(text, request)
  const { terms } = piece.check.reading
  const { pieces, layout, weighed, step, skein, colours, join, border, left, reserve } = request
  const estimate = projectYarn(piece, {
    ...(pieces === undefined ? {} : { pieces: wholeNumber(pieces, "--pieces") }),
    ...(layout === undefined ? {} : { layout: readLayout(layout) }),
    ...(weighed === undefined ? {} : { weighed: weighed.map((one) => readWeighed(one, step)) }),
    ...(skein === undefined ? {} : { skein: readSkein(skein) }),
    ...(colours === undefined ? {} : { colours: readColourRounds(colours) }),
    ...(join === undefined ? {} : { join: readJoin(join) }),
    ...(border === undefined ? {} : { border: readStitchList(border, terms) }),
    ...(left === undefined ? {} : { leftGrams: leftGrams(left) }),
    ...(reserve === undefined ? {} : { reserve: readShare(reserve, "--reserve") }),
  })
  around.out(
    request.json ? `${JSON.stringify({ file, ...estimate }, null, 2)}\n` : printed(estimate),
  )
  return 0
}

/** "4 x 8", rows by columns. @throws RoundwrightError `bad-layout` */
export function readLayout(text: string): [number, number] {
  const match = /^\s*(\d{1,3})\s*(?:x|×|\*|by)\s*(\d{1,3})\s*$/i.exec(text)
  const [rows, columns] = [Number(match?.[1]), Number(match?.[2])]
  if (match && rows > 0 && columns > 0) return [rows, columns]
  throw new RoundwrightError("bad-layout", `${quoted(text)} is no layout.`, {
    hint: "Write rows by columns, such as: --layout 4x8.",
  })
}

function leftGrams(text: string): number {
  const grams = gramsIn(text)
  if (grams !== null) return grams
  throw new RoundwrightError("bad-weight", `${quoted(text)} tells no weight.`, {
    hint: "Weigh what is left, such as: --left '23 g'.",
  })
}

function readShare(text: string, option: string): number {
  const match = /^\s*(\d{1,3}(?:\.\d+)?)(?:\s*%)?\s{0,9}$/.exec(text)
  if (match && Number(match[1]) <= 100) return Number(match[1]) / 100
  throw new RoundwrightError(
    "bad-share",
    `${option} takes a share such as 10 %, not ${quoted(text)}.`,
  )
}

function printed(estimate: YarnEstimate): string {
  const { rounds, colours, piece, pieces, join, border, tails, total, basis } = estimate
  const rows = [
    ...rounds,
    piece,
    ...(pieces.count > 1 ? [pieces] : []),
    ...[join, border, tails].filter((one) => one !== null),
    ...(pieces.count > 1 || join || border || tails ? [total] : []),
  ]
  const lines = [
    wrap(estimate.text, 80),
    "",
    ...alignColumns([["in sc", "metres", "grams", "+/-", "for"], ...rows.map(row)]),
  ]
  if (colours.length > 0)
    lines.push(
      "",
      ...alignColumns([
        ["skeins", "metres", "grams", "+/-", "colour"],
        ...colours.map((one) => [
          one.skeins === null ? "-" : String(one.skeins),
          ...row(one).slice(1),
        ]),
      ]),
    )
  lines.push("", "To know", ...basis.notes.map((note) => wrap(note, 80, "  - ", "    ")))
  return `${lines.join("\n")}\n`
}

function row(one: YarnAmount): string[] {
  const figure = (value: number | null) =>
    value === null ? "-" : value < 100 ? value.toFixed(1) : String(Math.round(value))
  return [
    Math.round(one.sc).toString(),
    figure(one.metres),
    figure(one.grams),
    formatPercent(one.errorShare),
    one.what,
  ]
}
