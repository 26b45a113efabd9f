// Questions answered from figures alone, by kind: the lines or options each may hold, and who answers. Commands and notebooks go
// through the same door.

import { RoundwrightError } from "@roundwright/numerics"
import { blanketFigures } from "./blanket-figures.ts"
import { borderFigures } from "./border-figures.ts"
import { compareFigures } from "./compare-figures.ts"
import { matchFigures } from "./match-figures.ts"
import type { Asked, FiguresAnswer } from "./values.ts"
import { yarnFigures } from "./yarn-figures.ts"

export const figureKinds = ["match", "compare", "yarn", "border", "blanket"] as const
export type FigureKind = (typeof figureKinds)[number]

/** Names that only figures know: where one stands, no pattern is meant. */
export const figureNames: Readonly<Record<FigureKind, readonly string[]>> = {
  match: ["stitches", "rows", "chains", "stitch", "repeat", "from-corner", "around"],
  compare: ["first", "second", "whole", "rows", "sides", "at"],
  yarn: [
    "need",
    "each",
    "done",
    "of",
    "used",
    "all",
    "keep",
    "last-round",
    "rounds",
    "more",
    "row",
    "row-height",
    "ball",
    "balls",
    "per-ball",
    "size",
    "now",
    "to",
    "yarn",
  ],
  border: [
    "stitches",
    "onto",
    "parts",
    "squares",
    "to",
    "every",
    "rows",
    "step",
    "too-many",
    "row",
    "gauge",
    "yarn",
    "hook",
  ],
  blanket: [
    "edge",
    "along",
    "around",
    "corner-to-corner",
    "in-rounds",
    "chains-each",
    "join-rounds",
    "colours-each",
    "piece",
  ],
}

const answers: Readonly<Record<FigureKind, (asked: Asked) => FiguresAnswer | null>> = {
  match: matchFigures,
  compare: (asked) => compareFigures(asked.first ?? "", asked.second ?? "", asked),
  yarn: yarnFigures,
  border: borderFigures,
  blanket: blanketFigures,
}

/** No figure needs more letters, and a text without end is not gone through. */
const mostLetters = 400

/** Null where a pattern is needed. @throws RoundwrightError `too-long`, and for what cannot be used */
export function figuresAlone(kind: FigureKind, asked: Asked): FiguresAnswer | null {
  for (const [name, text] of Object.entries(asked))
    if (text !== undefined && text.length > mostLetters)
      throw new RoundwrightError("too-long", `What is told for ${name} is too long.`, {
        hint: `At most ${mostLetters} characters are read.`,
      })
  return answers[kind](asked)
}
