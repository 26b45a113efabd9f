// What is answered from figures alone, printed: a sentence, further lines, or everything as JSON.

import type { FiguresAnswer } from "@roundwright/matching"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

/** @returns 1 where there is something to do, else 0 */
export function printFigures(answer: FiguresAnswer, json: boolean, around: Surroundings): number {
  const { todo = false, ...told } = answer
  const lines = [answer.text, ...(answer.lines ?? []).map((line) => line)]
  around.out(
    json
      ? `${JSON.stringify(told, null, 2)}\n`
      : `${lines.map((line, k) => wrap(line, 80, "", k === 0 ? "" : "  ")).join("\n")}\n`,
  )
  return todo ? 1 : 0
}

/** Options as they were typed, without those that are no text. */
export function askedFigures(request: object): Record<string, string | undefined> {
  return Object.fromEntries(
    Object.entries(request).filter(
      (entry): entry is [string, string] => typeof entry[1] === "string",
    ),
  )
}
