// `roundwright match FILE --to SIZE`: what brings a piece to the size of its siblings, and whether it is the hook at all.

import { existsSync } from "node:fs"
import { resolve } from "node:path"
import { formatLength } from "@roundwright/assessment"
import {
  type MatchResult,
  matchMeasured,
  matchPiece,
  type PieceNow,
  readMeasured,
  readPieceNow,
  readTarget,
} from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { pieceText } from "./compare-command.ts"
import { gaugeOfHand, type HandOptions } from "./hand.ts"
import { patternOfFile } from "./pattern-of-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface MatchRequest extends HandOptions {
  readonly files: readonly string[]
  readonly to?: string | undefined
  readonly now?: string | undefined
  readonly pattern?: string | undefined
  readonly json: boolean
}

/** @returns 0 where the piece has the size, 1 where something is to be done @throws RoundwrightError for what cannot be used */
export async function runMatch(request: MatchRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined || others.length > 0)
    throw new RoundwrightError("one-file", "Name the one pattern that is to match.", {
      hint: "Such as: match square.txt --to '15.2 cm'.",
    })
  if (request.to === undefined)
    throw new RoundwrightError("no-size", "The size to match is not said.", {
      hint: "Add --to '15.2 cm', --to 'diagonal 21 cm', or --to a file with sizes round by round.",
    })
  const text = await patternOfFile(around.cwd, file, request.pattern)
  around.progress?.("Trying what can be changed, and laying it out ...")
  const piece = pieceOf(text, request)
  const result = matched(piece, text, file, request.to, around.cwd)
  around.progress?.("")
  around.out(request.json ? `${JSON.stringify({ file, ...result }, null, 2)}\n` : printed(result))
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

function matched(
  piece: PieceNow,
  text: string,
  file: string,
  to: string,
  cwd: string,
): MatchResult {
  if (!existsSync(resolve(cwd, to))) return matchPiece(piece, readTarget(to, "--to"))
  const other = pieceText(cwd, to)
  if ("fault" in other) throw new RoundwrightError("no-size", other.fault)
  return matchMeasured(piece, readMeasured(text, file), readMeasured(other.text, to))
}

function printed(result: MatchResult): string {
  const { now, ways, causes, cause, notes } = result
  const sizes = [
    ...(now.sideMm === null ? [] : [`${formatLength(now.sideMm)} along the side`]),
    `${formatLength(now.acrossMm)} across`,
    ...(now.diagonalMm === null ? [] : [`${formatLength(now.diagonalMm)} corner to corner`]),
  ]
  const lines = [wrap(result.text, 80), "", wrap(`Now: ${sizes.join(", ")}.`, 80)]
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
