// Reads what a line says of the yarn: its weight 0 to 7 ("DK cotton, 100 g", "CYC 4", "worsted (4)"), the number of a crochet
// cotton ("size 10 thread"), and in how many strands it is held ("held double").
//
// Weights: numbers of the standard come first; then names, longest first; then British and Australian plies (2 or 3 ply = 0,
// 4 = 1, 5 = 2, 8 = 3, 10 = 4, 12 = 5; tables of colourspun and melodys-makings); then everyday words that name a weight only
// beside "weight" or "yarn" or alone. Names that two weights share (baby) are not read, and a line naming two weights is
// not decided.

import type { YarnWeight } from "./gauge.ts"
import {
  behindPhrase,
  cutHeading,
  type HeadingToken,
  isSign,
  isWord,
  type Spot,
} from "./heading-tokens.ts"
import { findThreadSize } from "./thread-size.ts"

export interface YarnWeightReading {
  readonly weight: YarnWeight
  /** Where in the text it stands: offset and length in UTF-16 units. */
  readonly place: { readonly start: number; readonly length: number }
}

/** The weight a text names, or undefined when it names none or more than one. */
export function readYarnWeight(text: string): YarnWeightReading | undefined {
  const found = findYarnWeight(cutHeading(text))
  if (found === undefined || found === "several") return undefined
  const { weight, start, end } = found
  return { weight, place: { start, length: end - start } }
}

export type WeightFound = Spot & { readonly weight: YarnWeight }

/** @param named only by name: where a bare number is more likely a hook's or a count */
export function findYarnWeight(
  tokens: readonly HeadingToken[],
  named = false,
): WeightFound | "several" | undefined {
  for (const weigh of named ? byName : [weightByNumber, ...byName, weightByPlainWord]) {
    const found = allBy(weigh, tokens)
    const first = found[0]
    if (first === undefined) continue
    return found.every((one) => one.weight === first.weight) ? first : "several"
  }
  return undefined
}

/** Every place that names that weight, by whichever way. */
export function mentionsOf(weight: YarnWeight, tokens: readonly HeadingToken[]): Spot[] {
  const ways = [weightByNumber, ...byName, weightByPlainWord]
  const all = ways.flatMap((weigh) => allBy(weigh, tokens))
  return all.filter((one) => one.weight === weight)
}

function allBy(
  weigh: (tokens: readonly HeadingToken[], at: number) => Weighed,
  tokens: readonly HeadingToken[],
): WeightFound[] {
  const found: WeightFound[] = []
  for (let at = 0; at < tokens.length; ) {
    const one = weigh(tokens, at)
    if (one !== undefined)
      found.push({ weight: one.weight, start: tokens[at]!.start, end: tokens[one.next - 1]!.end })
    at = one?.next ?? at + 1
  }
  return found
}

type Weighed = { readonly weight: YarnWeight; readonly next: number } | undefined

const classWords = ["lace", "super", "superfine", "fine", "light", "medium", "bulky", "jumbo"]

function standardNumber(token: HeadingToken | undefined): YarnWeight | undefined {
  return token?.type === "number" && /^[0-7]$/.test(token.text)
    ? (token.value as YarnWeight)
    : undefined
}

/** `CYC 4`, `weight: 4`, `category #4`, `(4)`, `#4`, `4 medium`, `4 weight`, `size 4 yarn`. */
function weightByNumber(tokens: readonly HeadingToken[], at: number): Weighed {
  const lead = behindLead(tokens, at)
  if (lead !== undefined) {
    let next = lead
    while (isSign(tokens[next], ":", "#", "-", "=", "(")) next++
    const weight = standardNumber(tokens[next])
    if (weight !== undefined && !isMeasured(tokens, next)) return { weight, next: next + 1 }
  }
  if (isSign(tokens[at], "(", "[")) {
    const next = isSign(tokens[at + 1], "#") ? at + 2 : at + 1
    const weight = standardNumber(tokens[next])
    if (weight !== undefined && isSign(tokens[next + 1], ")", "]"))
      return { weight, next: next + 2 }
  }
  if (isSign(tokens[at], "#")) {
    const weight = standardNumber(tokens[at + 1])
    const after = tokens[at + 2]
    const ends = after === undefined || isSign(after, ",", ";", "(", ")", ".", "/")
    const named = isWord(after, ...classWords, "dk", "worsted", "aran", "yarn", "weight")
    if (weight !== undefined && (ends || named)) return { weight, next: at + 2 }
  }
  const weight = standardNumber(tokens[at])
  if (weight === undefined || tokens[at - 1]?.type === "number") return undefined
  let next = at + 1
  while (isSign(tokens[next], "-", ":", "(", "/", "=")) next++
  if (isWord(tokens[next], ...classWords)) return { weight, next: at + 1 }
  const sized = isWord(tokens[at - 1], "size") && isWord(tokens[next], "yarn", "yarns")
  return sized || isWord(tokens[next], "weight") ? { weight, next: next + 1 } : undefined
}

function behindLead(tokens: readonly HeadingToken[], at: number): number | undefined {
  const council = behindPhrase(tokens, at, ["craft", "yarn", "council"])
  if (council > 0) return council
  if (isWord(tokens[at], "cyc", "cyca", "category", "weight")) return at + 1
  // "Med. size 4".
  const named = isSign(tokens[at + 1], ".") ? at + 2 : at + 1
  if (isWord(tokens[at], "med", "medium") && isWord(tokens[named], "size")) return named + 1
  if (isWord(tokens[at], "wt")) return isSign(tokens[at + 1], ".") ? at + 2 : at + 1
  return undefined
}

/** "weight 4 oz" is a weight on the scales. */
function isMeasured(tokens: readonly HeadingToken[], at: number): boolean {
  return isWord(
    tokens[at + 1],
    "g",
    "gr",
    "gram",
    "grams",
    "oz",
    "ounce",
    "ounces",
    "mm",
    "cm",
    "ply",
  )
}

/** Names of the trade, longer ones before those they hold. */
const names: readonly (readonly [readonly string[], YarnWeight])[] = [
  [["super", "bulky"], 6],
  [["super", "chunky"], 6],
  [["extra", "bulky"], 6],
  [["extra", "chunky"], 6],
  [["superbulky"], 6],
  [["roving"], 6],
  [["jumbo"], 7],
  [["bulky"], 5],
  [["chunky"], 5],
  [["rug", "yarn"], 5],
  [["rug", "wool"], 5],
  [["light", "worsted"], 3],
  [["double", "knitting"], 3],
  [["double", "knit"], 3],
  [["dk"], 3],
  [["worsted"], 4],
  // Worsted weight, as American makers shorten it.
  [["ww"], 4],
  [["aran"], 4],
  [["afghan"], 4],
  [["sport", "weight"], 2],
  [["sportweight"], 2],
  [["sport"], 2],
  [["super", "fine"], 1],
  [["superfine"], 1],
  [["fingering"], 1],
  [["sock"], 1],
  [["lace", "weight"], 0],
  [["laceweight"], 0],
  [["cobweb"], 0],
]

function weightByName(tokens: readonly HeadingToken[], at: number): Weighed {
  for (const [phrase, weight] of names) {
    const next = behindPhrase(tokens, at, phrase)
    if (next > 0) return { weight, next }
  }
  // "D.K."
  if (isWord(tokens[at], "d") && isSign(tokens[at + 1], ".") && isWord(tokens[at + 2], "k"))
    return { weight: 3, next: at + 3 }
  const plain = besideSlash(tokens, at)
  if (plain !== undefined) return { weight: plain, next: at + 1 }
  const thread = findThreadSize(tokens, at)
  return thread === undefined ? undefined : { weight: thread.weight, next: thread.next }
}

/** "DK/medium": an everyday word that a slash sets beside another name is one as well. */
function besideSlash(tokens: readonly HeadingToken[], at: number): YarnWeight | undefined {
  const slashed = isSign(tokens[at - 1], "/") || isSign(tokens[at + 1], "/")
  return slashed && tokens[at]!.type === "word" ? plainWords[tokens[at]!.text] : undefined
}

const byName = [weightByName, weightByPly]

const plyWeights: Readonly<Record<string, YarnWeight>> = {
  "2": 0,
  "3": 0,
  "4": 1,
  "5": 2,
  "8": 3,
  "10": 4,
  "12": 5,
}

function weightByPly(tokens: readonly HeadingToken[], at: number): Weighed {
  const weight = tokens[at]!.type === "number" ? plyWeights[tokens[at]!.text] : undefined
  const next = isSign(tokens[at + 1], "-") ? at + 2 : at + 1
  return weight !== undefined && isWord(tokens[next], "ply")
    ? { weight, next: next + 1 }
    : undefined
}

const plainWords: Readonly<Record<string, YarnWeight>> = { lace: 0, fine: 2, light: 3, medium: 4 }

/** Everyday words that name a weight only with "weight" or "yarn" after them, or alone on the line. */
function weightByPlainWord(tokens: readonly HeadingToken[], at: number): Weighed {
  const token = tokens[at]!
  const weight = token.type === "word" ? plainWords[token.text] : undefined
  if (weight === undefined) return undefined
  const next = isSign(tokens[at + 1], "-") ? at + 2 : at + 1
  if (isWord(tokens[next], "weight", "yarn", "thread")) return { weight, next: at + 1 }
  return tokens.length === 1 ? { weight, next: at + 1 } : undefined
}

const counts: Readonly<Record<string, number>> = {
  one: 1,
  single: 1,
  two: 2,
  double: 2,
  three: 3,
  triple: 3,
  treble: 3,
  four: 4,
  quadruple: 4,
  five: 5,
  six: 6,
}
const strandWords = ["strand", "strands", "stranded", "ends", "thickness", "thicknesses"]

const holdingWords =
  "held used worked using holding work hold use yarn thread cotton wool it".split(" ")
/** Words that may stand between a count and its strands: "2 or more" may not. */
const mostBetween = 2

/** In how many strands the yarn is worked as one: "held double", "2 strands", "double stranded", "two strands held together". */
export function findStrands(
  tokens: readonly HeadingToken[],
): (Spot & { readonly strands: number }) | undefined {
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!
    const strands = token.type === "number" ? token.value : counts[token.text]
    if (strands !== undefined && Number.isInteger(strands) && strands >= 1 && strands <= 12) {
      let next = at + 1
      while (next - at <= mostBetween && isSign(tokens[next], "-")) next++
      if (isWord(tokens[next], ...strandWords))
        return { strands, start: token.start, end: tokens[next]!.end }
    }
    if (isWord(token, ...holdingWords)) {
      const next = at + 1
      const held = tokens[next]
      if (isWord(held, "double", "doubled", "triple", "tripled") && !isKnit(tokens[next + 1]))
        return {
          strands: isWord(held, "double", "doubled") ? 2 : 3,
          start: token.start,
          end: held!.end,
        }
      if (isWord(token, "held") && isWord(held, "together"))
        return { strands: 2, start: token.start, end: held!.end }
    }
    if (isWord(token, "doubled")) return { strands: 2, start: token.start, end: token.end }
  }
  return undefined
}

function isKnit(token: HeadingToken | undefined): boolean {
  return isWord(token, "knit", "knitting", "crochet", "crochets", "treble", "trebles")
}

/** The same of a text. */
export function readStrands(text: string): number | undefined {
  return findStrands(cutHeading(text))?.strands
}
