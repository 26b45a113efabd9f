// The sides of one piece that have unlike counts, brought to one count a side with least change, in whole repeats where there are some.

import { RoundwrightError } from "@roundwright/numerics"
import { easeOnto } from "./ease.ts"

export interface UnlikeSides {
  readonly to: number
  readonly changes: readonly number[]
  readonly text: string
  readonly lines: readonly string[]
}

/** @throws RoundwrightError `no-sides` */
export function evenSides(
  counts: readonly number[],
  repeat: { readonly of: number; readonly plus: number } | null,
): UnlikeSides {
  if (counts.length < 3 || counts.length > 12 || counts.some((one) => !(one >= 1)))
    throw new RoundwrightError("no-sides", "Three to twelve sides are told here.", {
      hint: "Such as --stitches '31, 33, 32, 32'.",
    })
  const [least, most] = [Math.min(...counts), Math.max(...counts)]
  const room = repeat === null ? 0 : repeat.of
  const choices = Array.from({ length: most - least + 1 + 2 * room }, (_, k) => least - room + k)
    .filter((one) => one >= 1)
    .filter(
      (one) => repeat === null || (one > repeat.plus && (one - repeat.plus) % repeat.of === 0),
    )
  const cost = (to: number) => counts.reduce((sum, one) => sum + Math.abs(one - to), 0)
  const to = choices.reduce((best, one) => (cost(one) < cost(best) ? one : best), choices[0]!)
  const sides = counts.map((one) => easeOnto(to, one))
  return {
    to,
    changes: counts.map((one) => to - one),
    text: `${counts.join(", ")} are ${counts.reduce((a, b) => a + b, 0)} in all, ${most - least} apart: bring each to ${to}${repeat === null ? "" : ` (${(to - repeat.plus) / repeat.of} repeats)`}, ${to * counts.length} in all, with ${cost(to)} stitches changed.`,
    lines: sides.flatMap((one, k) => (counts[k] === to ? [] : [`Side ${k + 1}: ${one.text}.`])),
  }
}
