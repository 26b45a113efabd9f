// A bought ring the first round is worked over, with its size: "a 3/4 in plastic ring", "bone rings of 20 mm".

import { millimetresIn, numberPattern, readNumber } from "@roundwright/stitches"

export interface BoughtRing {
  /** The text with the size of the ring blanked out, every other character in its place. */
  readonly clean: string
  /** Whether the text speaks of such a ring. */
  readonly named: boolean
  /** Diameter; the first one given, undefined when the text names no such ring or no size of it. */
  readonly diameterMm?: number
}

const named = String.raw`(?:plastic|bone|metal|brass|wooden|curtain|cabone)[ \t]+rings?\b`
const length = String.raw`(${numberPattern})[ \t]{0,9}-?[ \t]{0,9}(mm|cm|in(?:ch(?:es)?)?\b\.?|["”″])`
const across = String.raw`(?:[ \t,-]*(?:in[ \t]+)?(?:diameter|diam\.?|across|wide)\b)?`
const before = new RegExp(String.raw`${length}${across}[ \t-]{0,9}(?=${named})`, "gi")
const after = new RegExp(
  String.raw`(${named})([ \t,(]{0,9}(?:of|about|measuring|with[ \t]+a[ \t]+diameter[ \t]+of)?[ \t]{0,9}${length}${across}\)?)`,
  "gi",
)
const someRing = new RegExp(String.raw`\b${named}`, "i")
/** Wider rings are hoops, which nothing is worked round from the middle; smaller ones cannot be worked into. */
const [leastMm, mostMm] = [3, 300]

/** Never throws; sizes outside 3 to 300 mm are left in the text. */
export function findBoughtRing(clean: string): BoughtRing {
  if (!someRing.test(clean)) return { clean, named: false }
  const found: { at: number; mm: number }[] = []
  const blank = (at: number, text: string, number: string, unit: string): string => {
    const mm = (readNumber(number) ?? 0) * millimetresIn(unit)
    if (mm < leastMm || mm > mostMm) return text
    found.push({ at, mm })
    return " ".repeat(text.length)
  }
  const one = clean.replace(before, (text, number: string, unit: string, at: number) =>
    blank(at, text, number, unit),
  )
  const both = one.replace(
    after,
    (_, ring: string, size: string, number: string, unit: string, at: number) =>
      ring + blank(at, size, number, unit),
  )
  const first = found.sort((a, b) => a.at - b.at)[0]
  return first === undefined
    ? { clean, named: true }
    : { clean: both, named: true, diameterMm: first.mm }
}
