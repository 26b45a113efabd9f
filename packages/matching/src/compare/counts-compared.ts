// Two counts of one thing set side by side, made and meant: what is missing or over, what later rounds or rows make of it, how much
// is to be undone.

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import type { Counted } from "../ways/straight.ts"

export interface CountsCompared {
  /** Second over first. */
  readonly ratio: number
  readonly difference: number
  readonly undo: number | null
  readonly text: string
}

/** Where the counts part, of how many rows or rounds in all. */
export interface At {
  readonly part: number
  readonly of: number
  readonly noun: "rows" | "rounds"
}

/** "5 of 30", "row 5 of 30". @throws RoundwrightError `not-whole` */
export function readAt(text: string): At {
  const match =
    /^\s{0,9}(?:(rows?|rounds?|rnds?)\s{1,9})?(\d{1,4})\s{0,9}(?:of|from|\/)\s{0,9}(\d{1,4})\s{0,9}(rows?|rounds?|rnds?)?\s{0,9}$/i.exec(
      text,
    )
  const [part, of] = [Number(match?.[2]), Number(match?.[3])]
  if (match && part > 0 && part <= of)
    return { part, of, noun: /^row/i.test(match[1] ?? match[4] ?? "round") ? "rows" : "rounds" }
  throw new RoundwrightError("not-whole", `"${text.slice(0, 40)}" tells no place of a piece.`, {
    hint: "Write where the counts part, of how many in all: --at 'row 5 of 30'.",
  })
}

/** @param a what was made @param b what is meant, or another piece's @throws RoundwrightError `nothing-to-compare` */
export function compareCounts(a: Counted, b: Counted, at: At | null): CountsCompared {
  if (a.noun !== b.noun)
    throw new RoundwrightError(
      "nothing-to-compare",
      `${a.noun} and ${b.noun} cannot be set side by side.`,
      { hint: "Count the same in both, or say what stands for what: 'roundwright help reckon'." },
    )
  const difference = b.count - a.count
  const ratio = b.count / a.count
  const undo = at === null ? null : at.of - at.part + 1
  const undone =
    at === null
      ? ""
      : ` It parts in ${at.noun.slice(0, -1)} ${at.part} of ${at.of}: ${undo} ${at.noun} to undo, from there on.`
  if (difference === 0)
    return {
      ratio,
      difference,
      undo: at === null ? null : 0,
      text: `${a.count} ${a.noun} both times: the counts agree. If the sizes differ all the same, it is the hand, the hook or the yarn.`,
    }
  const many = Math.abs(difference)
  const noun = many === 1 ? a.noun.replace(/s$/, "") : a.noun
  const multiple = Number.isInteger(ratio) ? `, ${ratio} for each` : ""
  return {
    ratio,
    difference,
    undo,
    text: `${a.count} over ${b.count} ${a.noun} is ${(1 / ratio).toFixed(2)} (the other way ${ratio.toFixed(2)}${multiple}): the first has ${many} ${noun} ${difference > 0 ? "fewer" : "more"}, ${formatPercent(many / b.count)} of ${b.count}. Not the hook, the yarn or the tension, which change no count. Every later round or row carries it on: there the piece has ${(1 / ratio).toFixed(2)} times its stitches and, at the same gauge, width; a hook for that would have to be ${ratio.toFixed(2)} times as thick. Take back to where the counts part.${undone}`,
  }
}
