// Straight work matched by its count: its size goes with stitches, rows or blocks, so the count does it and no hook; in whole
// repeats where there is one. The other way round too: how large so many are.

import { RoundwrightError } from "@roundwright/numerics"
import { fitRepeat } from "../border/fit-repeat.ts"
import {
  believable,
  type LengthUnit,
  lengthAt,
  lengthWords,
  stitchLengthWords,
  unitIn,
} from "../lengths.ts"

export interface Counted {
  readonly count: number
  /** What is counted, in the plural: "stitches", "rows", "blocks". */
  readonly noun: string
}

export interface StraightRequest extends Counted {
  /** Length of so many now, mm. */
  readonly nowMm: number
  /** The length wished for, mm, or a count whose length is asked. */
  readonly to: number | Counted
  readonly repeat?: { readonly of: number; readonly plus: number }
  readonly unit?: LengthUnit
}

export interface StraightMatch {
  readonly factor: number
  readonly eachMm: number
  /** How many it takes, and their length. */
  readonly stitches: number
  readonly mm: number
  readonly more: number
  /** Nearest whole repeats below and above, with the width each gives. */
  readonly fitting: readonly {
    readonly repeats: number
    readonly stitches: number
    readonly mm: number
  }[]
  readonly text: string
}

/** "60", "5 blocks", "84 rows"; null for anything else. */
export function readCounted(text: string, noun = "stitches"): Counted | null {
  const match = /^(\d{1,6})\s*([a-z][a-z -]{0,20}[a-z])?$/i.exec(text.trim())
  if (!match || Number(match[1]) < 1) return null
  // "50 in" is a length.
  if (lengthAt(text)) return null
  return { count: Number(match[1]), noun: match[2] === undefined ? noun : plural(match[2]) }
}

/** A length or a count. @throws RoundwrightError `no-size` */
export function readLengthOrCount(
  text: string,
  noun: string,
): { readonly to: number | Counted; readonly unit: LengthUnit } {
  const counted = readCounted(text, noun)
  if (counted) return { to: counted, unit: "cm" }
  const found = lengthAt(text)
  if (!found)
    throw new RoundwrightError("no-size", `"${text.slice(0, 40)}" is no length and no count.`, {
      hint: `Write it such as 120 cm, or 50 ${noun}.`,
    })
  return { to: believable(found.mm, "the size to match"), unit: unitIn(text) }
}

/** @throws RoundwrightError `bad-count`, `not-positive` */
export function matchStraight(request: StraightRequest): StraightMatch {
  const { count, noun, nowMm, to, repeat, unit } = request
  const asked = typeof to === "number" ? to : to.count
  if (!Number.isInteger(count) || count < 1 || !(nowMm > 0) || !(asked > 0))
    throw new RoundwrightError("bad-count", "The count and both sizes must be above zero.", {
      numbers: { count, nowMm, asked },
    })
  const eachMm = nowMm / count
  const tell = (mm: number) => lengthWords(mm, unit)
  const head = `${count} ${noun} are ${tell(nowMm)}, ${stitchLengthWords(eachMm, unit)} each`
  if (typeof to !== "number") {
    const mm = to.count * eachMm
    return {
      factor: to.count / count,
      eachMm,
      stitches: to.count,
      mm,
      more: to.count - count,
      fitting: [],
      text: `${head}: ${to.count} are ${tell(mm)}.`,
    }
  }
  const factor = to / nowMm
  const exact = count * factor
  const wanted = Math.max(1, Math.round(exact))
  const fitting = repeat ? fits(exact, repeat, eachMm) : []
  const more = wanted - count
  const way = noun === "stitches" ? "Width" : noun === "rows" ? "Length" : "Size"
  const otherWay = noun === "stitches" ? "length" : noun === "rows" ? "width" : null
  const parts = [
    `${way} goes with the count: ${head}, so ${tell(to)} takes ${wanted}, ${Math.abs(more)} ${more < 0 ? "fewer" : "more"}`,
    ...(fitting.length > 0
      ? [
          `in whole repeats ${fitting.map((one) => `${one.repeats} repeats, ${one.stitches} ${noun}, ${tell(one.mm)}`).join(", or ")}`,
        ]
      : []),
    // A swatch is no piece to be gone on with.
    ...(more !== 0 && factor > 0.3 && factor < 3 && otherWay !== null
      ? [`at the same ${otherWay} it takes ${factor.toFixed(2)} times the yarn`]
      : []),
  ]
  return {
    factor,
    eachMm,
    stitches: wanted,
    mm: wanted * eachMm,
    more,
    fitting,
    text: `${parts.join("; ")}.`,
  }
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

function plural(noun: string): string {
  const word = noun.toLowerCase()
  if (/^sts?$|^stitch(?:es)?$/.test(word)) return "stitches"
  return word.endsWith("s") ? word : `${word}s`
}
