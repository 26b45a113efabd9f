// A finishing cell without a pattern: answered from its lines alone, by the same door as the commands.

import {
  type FigureKind,
  figureNames,
  figuresAlone,
  readTarget,
  standInNow,
  standInShapes,
} from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { gaugeFrom, readHeading } from "@roundwright/stitches"
import { headingName } from "../headings.ts"
import { blanketOfPieces } from "./blanket-answer.ts"
import { linesOf } from "./lines.ts"
import { matchedAnswer } from "./match-answer.ts"
import type { FinishingAnswer } from "./types.ts"
import { wordsAlone } from "./words-alone.ts"

/** Whether the lines ask for figures alone: one of their names stands there. */
export function asksFigures(kind: FigureKind, text: string): boolean {
  const names = new Set(text.split(/\r\n|\r|\n/).map(headingName))
  return figureNames[kind].some((name) => names.has(name.replace(/-/g, " ")))
}

/** @throws RoundwrightError `needs-pattern` and what the answers throw */
export function figuresAnswer(kind: FigureKind, text: string): FinishingAnswer {
  const asked = Object.fromEntries(
    text
      .split(/\r\n|\r|\n/)
      .filter((line) => headingName(line) !== "")
      .map((line) => [
        headingName(line).replace(/ /g, "-"),
        line.slice(line.indexOf(":") + 1).trim(),
      ]),
  )
  const found = figuresAlone(kind, asked)
  if (found) return wordsAlone(found)
  if (kind === "match" && asked.now !== undefined && asked.to !== undefined) return sizesAlone(text)
  if (kind === "blanket" && asked.piece !== undefined) return blanketOfPieces(text)
  throw new RoundwrightError("needs-pattern", "These lines do not say enough by themselves.", {
    hint: `Name a pattern (${kind} of=NAME), or say more.`,
  })
}

/** Two sizes: a plain piece stands in. */
function sizesAlone(text: string): FinishingAnswer {
  const lines = linesOf(text)
  const [rounds, hook] = [lines.whole("rounds"), lines.text("hook")]
  const shape = standInShapes.find((one) => one === lines.text("shape")?.toLowerCase())
  const hookMm = hook === undefined ? undefined : readHeading("hook", hook, "US").hookMm?.value
  const piece = standInNow(
    readTarget(lines.text("now")!, "Now"),
    { ...(rounds === undefined ? {} : { rounds }), ...(shape === undefined ? {} : { shape }) },
    () => (hookMm === undefined ? null : gaugeFrom({ swatches: [], hookMm })),
  )
  return matchedAnswer(piece, readTarget(lines.text("to")!, "To"), text)
}
