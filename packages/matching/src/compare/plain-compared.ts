// Two figures of one work set side by side: widths at two places, counts of which one ought to be the other, stitches to a place.

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { type LengthUnit, lengthWords } from "../lengths.ts"
import { hookAdvice } from "../ways/hook-advice.ts"

/** Beyond this it is no hook. */
const furthestApart = 1.25

export interface PlainCompared {
  readonly ratio: number
  readonly text: string
}

/** Less is a ruler's doubt on a soft edge. */
const alike = 0.02

/** What blocking keeps of a stretch in plain stitches, as in matching. */
const blocks = 0.05

/** One piece of work that is wider in one place than in another, mm: the hook is the same, so it is the count or the hand. */
export function compareWidths(first: number, second: number, unit: LengthUnit): PlainCompared {
  if (!(first > 0) || !(second > 0))
    throw new RoundwrightError("no-size", "Both widths must be above zero.")
  const ratio = second / first
  const share = formatPercent(Math.abs(ratio - 1))
  const head = `${lengthWords(second, unit)} over ${lengthWords(first, unit)} is ${ratio.toFixed(2)}, ${share} ${ratio > 1 ? "wider" : "narrower"}`
  if (Math.abs(ratio - 1) <= alike)
    return { ratio, text: `${head}: leave it, that is what a soft edge gives.` }
  const one = Math.max(2, Math.round(1 / Math.abs(ratio - 1)))
  return {
    ratio,
    text: `${head} (in area ${(ratio ** 2).toFixed(2)} times; the other way ${(1 / ratio).toFixed(2)} and ${(1 / ratio ** 2).toFixed(2)}). With one hook and yarn it is not the hook: count both places. If there is about one stitch in ${one} ${ratio > 1 ? "more" : "fewer"}, they were ${ratio > 1 ? "won" : "lost"} at the edges; if the counts are the same, ${ratio > 1 ? "the hand has grown looser (or the first rows and their chain are tight)" : "the hand has grown tighter, or the stitch draws in as it goes on"}. For ${lengthWords(first, unit)} of the second it takes ${(1 / ratio).toFixed(2)} times its stitches; ${ratio < 1 ? `stretching it would be ${formatPercent(1 / ratio - 1)}, ${1 / ratio - 1 > blocks ? "more than blocking keeps" : "which blocking may keep"}` : `it would have to lose ${formatPercent(1 - 1 / ratio)}, and blocking makes nothing smaller`}. Measure over several rows, not the first ones.${apart(ratio)}`,
  }
}

/** Two pieces made apart, and not one work, may differ by their hooks. */
function apart(ratio: number): string {
  const advice = hookAdvice(1 / ratio, { swatches: [] })
  if (!advice || Math.abs(Math.log(ratio)) > Math.log(furthestApart)) return ""
  return ` Two pieces made apart may have been made with two hooks: the second would come to the first with the hook ${advice.text}; count the rounds of both first.`
}

/** A count that was made and the one that was meant, with the sides or repeats it is made of. */
export function compareBySides(made: number, meant: number, sides: number): PlainCompared {
  for (const value of [made, meant, sides])
    if (!Number.isInteger(value) || value < 1)
      throw new RoundwrightError("not-whole", "Whole numbers above 0 are set side by side.")
  const by = made - meant
  const ratio = meant / made
  if (by === 0) return { ratio, text: "The counts are the same." }
  const many = `${Math.abs(by)} ${by > 0 ? "more" : "fewer"} than ${meant}`
  if (by % sides === 0) {
    const each = Math.abs(by) / sides
    return {
      ratio,
      text: `${made} are ${many}: ${each} ${by > 0 ? "too many" : "too few"} on each of ${sides} sides. As it is the same on every side it is no slip: the words of the repeat ask for ${meant / sides} where ${made / sides} stand, or an increase of every side is left out or doubled. Work ${each} ${by > 0 ? "fewer" : "more"} a side, or correct the round below; not the hook.`,
    }
  }
  return {
    ratio,
    text: `${made} are ${many}, which ${sides} sides do not share alike: single slips. Count each side, and mend the one that has not ${Number.isInteger(meant / sides) ? meant / sides : "its share"}. It does not work itself out: every later round carries it on, so take back to where it began; not the hook.`,
  }
}

export interface PerPlace {
  readonly stitches: number
  readonly places: number
}

/** "5 in 2", "7 sts into 3": stitches to so many places; null for anything else. */
export function readPerPlace(text: string): PerPlace | null {
  const match =
    /^(\d{1,4})\s*(?:(?:sts?|stitches|sc|hdc|dc|tr)\s*)?(?:in|into|to|per|over|:)\s*(\d{1,4})\s*(?:sts?|stitches|rows?|places?)?$/i.exec(
      text.trim(),
    )
  return match && Number(match[1]) > 0 && Number(match[2]) > 0
    ? { stitches: Number(match[1]), places: Number(match[2]) }
    : null
}

/** More than this to a place ruffles whatever the hook. */
const ruffle = 1.15

export function comparePerPlace(a: PerPlace, b: PerPlace): PlainCompared {
  const [first, second] = [a.stitches / a.places, b.stitches / b.places]
  const ratio = second / first
  const still =
    second > 2
      ? " still a full ruffle; 1.5 (3 in every 2) is a mild one, about 1 lies flat"
      : second > ruffle
        ? " a ruffle; about 1 lies flat"
        : " about flat"
  const by = b.stitches - a.stitches
  const same =
    a.places === b.places && by !== 0
      ? ` On ${a.places} places that is ${Math.abs(by)} ${by > 0 ? "more" : "fewer"}, ${b.stitches} in place of ${a.stitches}: count, not hook.`
      : ""
  return {
    ratio,
    text: `${first.toFixed(2)} to a place in the first and ${second.toFixed(2)} in the second: ${(100 * Math.abs(ratio - 1)).toFixed(1)} % ${ratio > 1 ? "more" : "fewer"} (${ratio.toFixed(2)} times; the other way ${(1 / ratio).toFixed(2)}),${still}.${same}`,
  }
}
