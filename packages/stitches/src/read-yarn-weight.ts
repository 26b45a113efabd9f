// Reads a yarn weight out of a line such as "DK cotton, 100 g", "CYC 4" or "weight 3 (light)".
//
// Numbers of the standard come first; then names, longest first; then British and Australian plies
// (2 or 3 ply = 0, 4 = 1, 5 = 2, 8 = 3, 10 = 4, 12 = 5; tables of colourspun and melodys-makings).
// Names that two weights share (baby) are not read, and a line naming two weights is not decided.

import type { YarnWeight } from "./gauge.ts"

export interface YarnWeightReading {
  readonly weight: YarnWeight
  /** Where in the text it stands: offset and length in UTF-16 units. */
  readonly place: { readonly start: number; readonly length: number }
}

/** The weight a text names, or undefined when it names none or more than one. */
export function readYarnWeight(text: string): YarnWeightReading | undefined {
  if (text.length > longestLine) return undefined
  for (const patterns of [numbers, names, plies, wordsAlone]) {
    const found = findAll(text, patterns)
    const first = found[0]
    if (first === undefined) continue
    return found.every((one) => one.weight === first.weight) ? first : undefined
  }
  return undefined
}

/** A heading line is far shorter; longer text is not a yarn's name. */
const longestLine = 2000

type Pattern = readonly [RegExp, (match: RegExpExecArray) => YarnWeight]

const asNumber = (match: RegExpExecArray): YarnWeight => Number(match[1]) as YarnWeight
const always =
  (weight: YarnWeight) =>
  (_: RegExpExecArray): YarnWeight =>
    weight

const numbers: readonly Pattern[] = [
  [
    /\b(?:cyca?|craft yarn council|yarn weight|weight|category|wt\.?)\s{0,9}[:#-]?\s{0,9}\(?([0-7])\b(?![.,]\d|\s*(?:g|oz|mm|cm|ply)\b)/gi,
    asNumber,
  ],
  [
    /#\s?([0-7])\b(?=\s*(?:$|[,;()]|lace|super|fine|light|medium|bulky|jumbo|dk|worsted|yarn|weight))/gi,
    asNumber,
  ],
  [/[([]\s*#?([0-7])\s*[)\]]/g, asNumber],
  [
    /\b([0-7])\s{0,9}[-:(]?\s{0,9}(?=(?:lace|super[ -]?fine|fine|light|medium|bulky|super[ -]?bulky|jumbo)\b)/gi,
    asNumber,
  ],
]

const names: readonly Pattern[] = [
  [/\b(?:super|extra)[ -]?(?:bulky|chunky)\b/gi, always(6)],
  [/\bjumbo\b/gi, always(7)],
  [/\broving\b/gi, always(6)],
  [/(?<!(?:super|extra)[ -]?)\b(?:bulky|chunky|rug[ -](?:yarn|wool))\b/gi, always(5)],
  [/(?<!light[ -])\b(?:worsted|aran|afghan)\b/gi, always(4)],
  [/\b(?:dk|d\.k\.|double[ -]?knit(?:ting)?|light[ -]worsted)(?![\w])/gi, always(3)],
  [/\bsport(?:[ -]?weight)?\b/gi, always(2)],
  [/\b(?:sock|fingering|super[ -]?fine)\b/gi, always(1)],
  [/\b(?:lace[ -]?weight|cobweb)\b/gi, always(0)],
  [
    /\b(?:size|no\.?)\s?(?:10|20|30|40|50|60|70|80|100)\b(?=[^.;]*\b(?:thread|cotton|cord)\b)/gi,
    always(0),
  ],
]

const plyWeights: Readonly<Record<string, YarnWeight>> = {
  "2": 0,
  "3": 0,
  "4": 1,
  "5": 2,
  "8": 3,
  "10": 4,
  "12": 5,
}
const plies: readonly Pattern[] = [
  [/\b(2|3|4|5|8|10|12)[ -]?ply\b/gi, (match) => plyWeights[match[1]!]!],
]

/** Everyday words that name a weight only with "weight" or "yarn" after them, or alone on the line. */
const wordsAlone: readonly Pattern[] = [
  [/^\s*lace\s*$|\blace(?=[ -](?:yarn|thread)\b)/gi, always(0)],
  [/^\s*fine\s*$|\bfine(?=[ -](?:weight|yarn)\b)/gi, always(2)],
  [/^\s*light\s*$|\blight(?=[ -](?:weight|yarn)\b)/gi, always(3)],
  [/^\s*medium\s*$|\bmedium(?=[ -](?:weight|yarn)\b)/gi, always(4)],
]

function findAll(text: string, patterns: readonly Pattern[]): YarnWeightReading[] {
  const found: YarnWeightReading[] = []
  for (const [pattern, weigh] of patterns) {
    for (const match of text.matchAll(pattern)) {
      const place = { start: match.index, length: match[0].length }
      found.push({ weight: weigh(match), place })
    }
  }
  return found.sort((a, b) => a.place.start - b.place.start)
}
