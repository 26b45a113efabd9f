// `roundwright match FILE --to SIZE`: what brings a piece to the size of its siblings, and whether it is the hook at all.

import { existsSync } from "node:fs"
import { resolve } from "node:path"
import {
  factsTold,
  figuresAlone,
  lengthWords,
  type MatchResult,
  matchMeasured,
  matchPiece,
  type PieceNow,
  readBlanketSize,
  readMeasured,
  readPieceNow,
  readTarget,
  standInNow,
  standInShapes,
  wholeAt,
} from "@roundwright/matching"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import { pieceText } from "./compare-command.ts"
import { askedFigures, printFigures } from "./figures-out.ts"
import { gaugeOfHand, type HandOptions } from "./hand.ts"
import { holdsPatterns } from "./notebook-patterns.ts"
import { oneOf, wholeNumber } from "./option-values.ts"
import { patternOfFile } from "./pattern-of-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface MatchRequest extends HandOptions {
  readonly files: readonly string[]
  readonly to?: string | undefined
  readonly now?: string | undefined
  readonly pattern?: string | undefined
  readonly rounds?: string | undefined
  readonly shape?: string | undefined
  readonly changed?: string | undefined
  readonly fabric?: string | undefined
  readonly tried?: string | undefined
  readonly stitches?: string | undefined
  readonly repeat?: string | undefined
  readonly rows?: string | undefined
  readonly chains?: string | undefined
  readonly stitch?: string | undefined
  readonly whole?: string | undefined
  readonly "meant-hook"?: string | undefined
  readonly "from-corner": boolean
  readonly around?: string | undefined
  readonly json: boolean
}

/** @returns 0 where the piece has the size, 1 where something is to be done @throws RoundwrightError for what cannot be used */
export async function runMatch(request: MatchRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined) {
    const figures = figuresAlone("match", {
      ...askedFigures(request),
      ...(request["from-corner"] ? { "from-corner": "yes" } : {}),
    })
    if (figures) return printFigures(figures, request.json, around)
  }
  if (others.length > 0 || (file === undefined && request.now === undefined))
    throw new RoundwrightError(
      "one-file",
      "Name the one pattern that is to match, or say what the piece measures.",
      {
        hint: "Such as: match square.txt --to '15.2 cm', or: match --now '7 in' --to '8 in'.",
      },
    )
  if (request.to === undefined)
    throw new RoundwrightError("no-size", "The size to match is not said.", {
      hint: "Add --to '15.2 cm', --to 'diagonal 21 cm', or --to a file with sizes round by round.",
    })
  const text = file === undefined ? null : await patternOfFile(around.cwd, file, request.pattern)
  around.progress?.("Trying what can be changed, and laying it out ...")
  const own = text === null ? null : measuredAlone(text, file!)
  const piece =
    text === null
      ? plainPiece(request)
      : own
        ? plainPiece({ ...request, ...own })
        : pieceOf(text, handAndNow(request))
  const result = matched(piece, file ?? "The piece", request, around.cwd)
  around.progress?.("")
  const whole =
    request.whole === undefined
      ? null
      : wholeAt(result.factor, readBlanketSize(request.whole).mm, result.target.unit)
  around.out(
    request.json
      ? `${JSON.stringify({ file: file ?? null, ...result, whole }, null, 2)}\n`
      : printed(result, whole?.text ?? null),
  )
  return result.ways[0]?.kind === "leave" ? 0 : 1
}

/** The piece as it is in the maker's hand. */
export function pieceOf(
  text: string,
  { now, ...hand }: HandOptions & { readonly now?: string | undefined },
): PieceNow {
  return readPieceNow(
    text,
    now === undefined ? undefined : readTarget(now, "--now"),
    ({ reading }) => gaugeOfHand({ ...hand, terms: reading.terms }, reading.gauge),
  )
}

function handAndNow({ gauge, hook, yarn, now }: MatchRequest) {
  return { gauge, hook, yarn, now }
}

/** A file of sizes or counts round by round is a piece without its pattern: its last size, and how many rounds it has. */
function measuredAlone(text: string, file: string): { now: string; rounds: string } | null {
  if (holdsPatterns(text)) return null
  const found = unlessRefused(
    () => readMeasured(text, file),
    () => null,
  )
  const last = found?.motif === null ? found.rounds.findLast(({ sizeMm }) => sizeMm !== null) : null
  if (!found || !last?.sizeMm) return null
  const along = found.across === "corners" ? "diagonal " : ""
  return { now: `${along}${last.sizeMm} mm`, rounds: String(last.round) }
}

/** Where sizes alone are told. */
function plainPiece(request: MatchRequest): PieceNow {
  const { rounds, shape } = request
  return standInNow(
    readTarget(request.now!, "--now"),
    {
      ...(rounds === undefined ? {} : { rounds: wholeNumber(rounds, "--rounds") }),
      ...(shape === undefined ? {} : { shape: oneOf(shape, standInShapes, "--shape") }),
    },
    ({ reading }) => gaugeOfHand({ ...handAndNow(request), terms: reading.terms }, reading.gauge),
  )
}

function matched(piece: PieceNow, file: string, request: MatchRequest, cwd: string): MatchResult {
  const to = request.to!
  if (!existsSync(resolve(cwd, to)))
    return matchPiece(piece, readTarget(to, "--to"), factsTold(askedFigures(request)))
  const other = pieceText(cwd, to)
  if ("fault" in other) throw new RoundwrightError("no-size", other.fault)
  return matchMeasured(piece, readMeasured(piece.text, file), readMeasured(other.text, to))
}

function printed(result: MatchResult, whole: string | null): string {
  const { now, ways, causes, cause, notes } = result
  const tell = (mm: number) => lengthWords(mm, result.target.unit)
  const sizes = [
    ...(now.sideMm === null ? [] : [`${tell(now.sideMm)} along the side`]),
    `${tell(now.acrossMm)} across`,
    ...(now.diagonalMm === null ? [] : [`${tell(now.diagonalMm)} corner to corner`]),
  ]
  const lines = [
    wrap(result.text, 80),
    ...(whole === null ? [] : [wrap(whole, 80)]),
    "",
    wrap(`Now: ${sizes.join(", ")}.`, 80),
  ]
  ways.forEach(({ text, rounds }, index) => {
    lines.push("", wrap(`${index + 1}. ${text}`, 80, "", "   "))
    for (const round of rounds) lines.push(wrap(round, 80, "   ", "     "))
  })
  if (cause !== null && causes.length > 0)
    lines.push(
      "",
      "Tested in place of the hook",
      ...causes.map(({ text, fits }) => wrap(`${fits ? "fits: " : ""}${text}`, 80, "  - ", "    ")),
    )
  if (notes.length > 0)
    lines.push("", "To know", ...notes.map((note) => wrap(note, 80, "  - ", "    ")))
  return `${lines.join("\n")}\n`
}
