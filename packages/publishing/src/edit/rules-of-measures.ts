// Measures given twice, in two systems, that are not the same length or weight: inches and centimetres, yards and metres,
// ounces and grams.

import { readNumber } from "@roundwright/stitches"
import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"

interface Pair {
  readonly names: readonly [string, string]
  readonly units: readonly [string, string]
  /** How many of the second make one of the first. */
  readonly factor: number
  /** Allowed besides 4 %, in the second unit: both are rounded by custom. */
  readonly rounding: number
}

const pairs: readonly Pair[] = [
  {
    names: ["inches", "cm"],
    units: [String.raw`(?:inch(?:es)?|ins?\b\.?|["”″])`, String.raw`cms?\b`],
    factor: 2.54,
    rounding: 0.4,
  },
  {
    names: ["yards", "metres"],
    units: [String.raw`(?:yards?|yds?\b\.?)`, String.raw`(?:metres?|meters?|mtrs?|m)\b`],
    factor: 0.9144,
    rounding: 2,
  },
  {
    names: ["ounces", "grams"],
    units: [String.raw`(?:ounces?|ozs?\b\.?)`, String.raw`(?:grams?|gms?|grs?|g)\b`],
    factor: 28.35,
    rounding: 2,
  },
]

const figure = String.raw`(\d{1,4}(?:[.,]\d{1,2})?(?:\s?[-\s]\s?\d{1,2}\/\d{1,2}|\s?[¼½¾⅛⅜⅝⅞])?|\d{1,2}\/\d{1,2}|[¼½¾])`
const between = String.raw`\s?[/(,=|]{1,2}\s?(?:or |about |approx\.? |~)?`

export function measuresInTwo(manuscript: Manuscript): Remark[] {
  const { front } = manuscript
  return pairs.flatMap((pair) =>
    [false, true].flatMap((turned) => {
      const [first, second] = turned ? [pair.units[1], pair.units[0]] : pair.units
      const both = new RegExp(
        String.raw`(?<![\d/x×-]\s?|\d[.,])${figure}(\s?-?${first})${between}${figure}\s?-?${second}`,
        "gi",
      )
      return [...front.matchAll(both)].flatMap((match) => remarkOf(pair, turned, match))
    }),
  )
}

function remarkOf(pair: Pair, turned: boolean, match: RegExpExecArray): Remark[] {
  const [one, other] = [lengthOf(match[1]!), lengthOf(match[3]!)]
  if (one === undefined || other === undefined) return []
  const [large, small] = turned ? [other, one] : [one, other]
  const is = large * pair.factor
  if (!(small > 0) || Math.abs(is - small) <= pair.rounding + 0.04 * is) return []
  const round = (value: number) => Number(value.toFixed(value < 20 ? 1 : 0))
  return [
    {
      severity: "query",
      code: "measures-differ",
      round: null,
      start: match.index,
      end: match.index + match[0].length,
      message: `${round(large)} ${pair.names[0]} are ${round(is)} ${pair.names[1]}, not ${round(small)}. Which of the two is right?`,
    },
  ]
}

/** "4 1/4", "4 - 1/4", "4¼", "4,5". */
function lengthOf(words: string): number | undefined {
  return readNumber(words.replace(/[-\s]{1,3}/, " "))
}
