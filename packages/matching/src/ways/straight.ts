// Straight work matched by its count: width goes with the stitches, so the count does it and no hook; in whole repeats where
// there is one.

import { formatLength } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { fitRepeat } from "../border/fit-repeat.ts"

export interface StraightMatch {
  readonly factor: number
  readonly stitches: number
  readonly more: number
  /** Nearest whole repeats below and above, with the width each gives. */
  readonly fitting: readonly {
    readonly repeats: number
    readonly stitches: number
    readonly mm: number
  }[]
  readonly text: string
}

/** @throws RoundwrightError `bad-count`, `not-positive` */
export function matchStraight(
  stitches: number,
  nowMm: number,
  toMm: number,
  repeat?: { readonly of: number; readonly plus: number },
): StraightMatch {
  if (!Number.isInteger(stitches) || stitches < 1 || !(nowMm > 0) || !(toMm > 0))
    throw new RoundwrightError("bad-count", "The stitches and both widths must be above zero.", {
      numbers: { stitches, nowMm, toMm },
    })
  const factor = toMm / nowMm
  const exact = stitches * factor
  const wanted = Math.round(exact)
  const each = nowMm / stitches
  const fitting = repeat ? fits(exact, repeat, each) : []
  const told = fitting.map(
    ({ repeats, stitches: count, mm }) =>
      `${repeats} repeats, ${count} stitches, ${formatLength(mm)}`,
  )
  const more = wanted - stitches
  const text = [
    `Width goes with the count: ${stitches} stitches are ${formatLength(nowMm)}, so ${formatLength(toMm)} takes ${wanted}, ${Math.abs(more)} ${more < 0 ? "fewer" : "more"}`,
    ...(told.length > 0 ? [`in whole repeats ${told.join(", or ")}`] : []),
    `for the same length it takes ${factor.toFixed(2)} times the yarn`,
  ].join("; ")
  return { factor, stitches: wanted, more, fitting, text: `${text}.` }
}

function fits(exact: number, { of, plus }: { of: number; plus: number }, each: number) {
  const low = Math.floor((exact - plus) / of)
  return [low, low + 1]
    .filter((repeats) => repeats >= 1)
    .map((repeats) => {
      const { count } = fitRepeat(Math.max(1, Math.round(exact)), of, plus, repeats)
      return { repeats, stitches: count, mm: count * each }
    })
}
