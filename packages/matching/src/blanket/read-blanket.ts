// What is wished of a blanket, in a maker's words: "130 x 170 cm", "baby", "20 cm: 4".

import { RoundwrightError } from "@roundwright/numerics"
import { believable, lengthAt, readLength } from "../lengths.ts"
import type { SizedCount } from "./layout.ts"
import { meetingOf } from "./mixed-blocks.ts"
import { type NamedSize, sizesNamed } from "./named-sizes.ts"
import { rectangleIn } from "./piece-told.ts"

export interface WishedSize {
  /** Width and length, mm. */
  readonly mm: readonly [number, number]
  /** All sizes of the name, where one was given. */
  readonly named: readonly NamedSize[]
}

/** "130 x 170 cm", "4 ft by 5 ft", "1.2 m", a name such as "baby". @throws RoundwrightError `no-size`, `unknown-size` */
export function readBlanketSize(text: string): WishedSize {
  if (!/\d/.test(text.replace(/\d-\d{1,3} years|\d{1,3} years/i, ""))) {
    const named = sizesNamed(text)
    const [width, length] = named[0]!.inches
    return { mm: [width * 25.4, length * 25.4], named }
  }
  const sides = rectangleIn(text)
  if (sides)
    return {
      mm: [believable(sides[0], "the blanket"), believable(sides[1], "the blanket")],
      named: [],
    }
  const mm = readLength(text, "the blanket")
  return { mm: [mm, mm], named: [] }
}

/** How far a larger square may be from a whole number of the smallest: what a join takes up. */
const offWhole = 0.08

/** "20 cm: 4; 30 cm: 1" beside pieces of `pieceMm`. @throws RoundwrightError `no-size`, `odd-size` */
export function readLarger(text: string, pieceMm: number): SizedCount[] {
  return text
    .split(/[;,\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .map((part) => {
      const length = lengthAt(part)
      const count = length
        ? /^\s{0,9}[:=x×]?\s{0,9}(\d{1,4})\b/.exec(part.slice(length.length))
        : null
      if (!length || !count || Number(count[1]) < 1)
        throw new RoundwrightError(
          "no-size",
          `"${part.slice(0, 40)}" is no size with its number of pieces.`,
          {
            hint: "Write them such as: 20 cm: 4.",
          },
        )
      const exact = believable(length.mm, "a larger piece") / pieceMm
      const size = Math.round(exact)
      const meeting = meetingOf(exact)
      // 9 in beside 6 in: two of them along three.
      if (size < 2 || Math.abs(exact - size) > offWhole * size)
        if (meeting) return { size: meeting.small / meeting.large, count: Number(count[1]) }
      if (size < 2 || Math.abs(exact - size) > offWhole * size)
        throw new RoundwrightError(
          "odd-size",
          `A piece of ${Number((length.mm / 10).toFixed(1))} cm is not a whole number of pieces of ${Number((pieceMm / 10).toFixed(1))} cm.`,
          {
            hint: "Add or leave out a round until it is (match), or put a border round it.",
            numbers: { exact },
          },
        )
      return { size, count: Number(count[1]) }
    })
}
