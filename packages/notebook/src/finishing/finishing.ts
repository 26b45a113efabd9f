// The cells that match pieces and finish a blanket: what is asked in their lines, answered by the package matching, as data
// for a page: a first sentence, items with their rounds, a table, notes, a drawing.

import { unlessRefused } from "@roundwright/numerics"
import { blanketAnswer } from "./blanket-answer.ts"
import { borderAnswer } from "./border-answer.ts"
import { figuresAnswer } from "./figures-answer.ts"
import { handAnswer } from "./hand-answer.ts"
import { compareAnswer, matchAnswer } from "./match-answer.ts"
import { reckonAnswer } from "./reckon-answer.ts"
import type { Asked, FinishingAnswer, FinishingKind, FinishingResult } from "./types.ts"
import { yarnAnswer } from "./yarn-answer.ts"

const answers: Readonly<Record<FinishingKind, (asked: Asked) => FinishingAnswer>> = {
  match: matchAnswer,
  compare: compareAnswer,
  hand: handAnswer,
  reckon: ({ text }) => reckonAnswer(text),
  yarn: yarnAnswer,
  border: borderAnswer,
  blanket: blanketAnswer,
}

export function finishingKey(kind: FinishingKind, pattern: string | null, lines: string): string {
  return JSON.stringify([kind, pattern, lines])
}

/** @param pattern as it is read; null where the lines stand alone @param text the lines of the cell. Never throws on anything a text can hold. */
export function finish(kind: FinishingKind, pattern: string | null, text: string): FinishingResult {
  return unlessRefused<FinishingResult, FinishingResult>(
    () =>
      pattern === null && kind !== "hand" && kind !== "reckon"
        ? figuresAnswer(kind, text)
        : answers[kind]({ pattern: pattern ?? "", text }),
    ({ message, hint }) => ({ fault: message, hint }),
  )
}
