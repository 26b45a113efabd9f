// A cell of figures reckoned through one another: each line a statement, as the command takes them, and `Repeat: 15 + 3` where it is told.

import { reckon } from "@roundwright/matching"
import type { FinishingAnswer } from "./types.ts"
import { wordsAlone } from "./words-alone.ts"

const repeatLine = /^\s{0,9}repeat\s{0,9}:\s{0,9}(\S.{0,60})$/i

/** @throws RoundwrightError for what is no statement of figures */
export function reckonAnswer(text: string): FinishingAnswer {
  const lines = text
    .split(/\r\n|\r|\n/)
    .map((line) => line.trim())
    .filter((line) => line !== "")
  const repeat = lines.map((line) => repeatLine.exec(line)?.[1]).find((one) => one !== undefined)
  return wordsAlone(
    reckon(
      lines.filter((line) => !repeatLine.test(line)),
      repeat,
    ),
  )
}
