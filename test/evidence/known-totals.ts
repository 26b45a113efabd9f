// The totals the facts give for a round, read from the bracket that ends its text by a few plain
// patterns, apart from the reader under test; and what is known to clash in the printed sources.

import type { Counts } from "@roundwright/instructions"
import type { EvidenceCase } from "./cases.ts"

/** What is known of a round: each figure present must be met. */
export interface KnownTotal {
  readonly stitches?: number
  readonly withChains?: number
  readonly spaces?: number
  /** Printed as "sts" only: stitches, or stitches and chains. */
  readonly either?: number
}

/** A bracket with one of these words states no firm total. */
const notFirm = /\b(?:if|about|or|between|divide|needs|then|few|less|not)\b|\+\d/

/** Cases whose counts leave part of the round out, by their notes. */
const sideCountsOnly = new Set(["square-blanket-dc-gauge-31-rounds"])

/**
 * Totals of rounds whose source prints none, worked out stitch by stitch on paper from the words.
 * Key: case id, then round number.
 */
const workedByHand: Readonly<Record<string, Readonly<Record<number, KnownTotal>>>> = {
  // Each side of 16: cluster, 1 sc, 3 in the corner, 1 sc, cluster, 11 sc; a skipped sc behind each cluster.
  // The sc worked before the first repeat is the last of the 11 of the last side: 4 x 18.
  "bw-afghan-motif": { 9: { stitches: 72 } },
  // The sc and the 4 chains on it are one tr; 8 times 7 clusters; a tr in each of the other 15 loops of 7.
  "stardust-doily": { 6: { stitches: 72 } },
}

/** Null when the facts give no firm total for the round. */
export function knownTotal(
  evidence: EvidenceCase,
  round: { n: number; text: string },
): KnownTotal | null {
  const byHand = workedByHand[evidence.id]?.[round.n]
  if (byHand) return byHand
  const bracket = /\(([^()]*)\)\.?\s*$/.exec(round.text)?.[1]
  const count = sideCountsOnly.has(evidence.id) ? undefined : evidence.counts?.[round.n - 1]
  if (bracket === undefined || notFirm.test(bracket))
    return count === undefined ? null : { stitches: count }
  const withChains = numberIn(bracket, /(\d+) sts with chains/)
  const either =
    withChains === undefined
      ? numberIn(bracket.replace(/of \d+ sts/g, ""), /(\d+) sts\b(?! each)/)
      : undefined
  const kinds = [
    ...bracket.matchAll(/(\d+) (?:sl st|sc|hdc|dc|edc|tr|dtr|trtr|dc2tog|popcorns|clusters)\b/g),
  ]
  const spaces = [...bracket.matchAll(/(\d+) ch-\d+\b(?! picots)/g)]
  const known: KnownTotal = {
    ...(kinds.length > 0 ? { stitches: sum(kinds) } : {}),
    ...(withChains === undefined ? {} : { withChains }),
    ...(spaces.length > 0 ? { spaces: sum(spaces) } : {}),
    ...(either === undefined || kinds.length > 0 ? {} : { either }),
  }
  return Object.keys(known).length > 0 ? known : null
}

/** True when our counts meet every figure known. */
export function meets(counted: Counts, known: KnownTotal): boolean {
  if (known.stitches !== undefined && counted.stitches !== known.stitches) return false
  if (known.withChains !== undefined && counted.stitches + counted.chains !== known.withChains)
    return false
  if (known.spaces !== undefined && counted.spaces !== known.spaces) return false
  if (known.either === undefined) return true
  return counted.stitches === known.either || counted.stitches + counted.chains === known.either
}

function numberIn(text: string, pattern: RegExp): number | undefined {
  const found = pattern.exec(text)?.[1]
  return found === undefined ? undefined : Number(found)
}

function sum(matches: readonly RegExpMatchArray[]): number {
  return matches.reduce((total, match) => total + Number(match[1]), 0)
}

/**
 * Rounds whose printed counts clash, by the notes of the facts themselves: the reader must say so.
 * Key: case id, then round number.
 */
export const printedClashes: Readonly<Record<string, readonly number[]>> = {
  // "20 sc do not divide by 3", "105 dc do not divide by 4".
  "beeton-d1-no11-wheel-remainder": [3, 7],
  // "88 sc do not divide by 3"; the round after needs an even number of spaces.
  "beeton-d7-no1-wheel-remainder": [5, 6],
  // "108 stitches do not divide by 8: the printed counts do not agree exactly".
  "dillmont-469-star-wheel": [4, 5],
  // "11 doubled three times is 88, yet 72 is stated after round 6".
  "ladies-workbook-candle-lamp-mat": [6],
  // "totals and round numbers disagree by one round (92 + 8 corner sts would be 100)".
  "cb-solid-square": [7],
  // "Rnd 7 says 13 holes, though 72 dc / 6 = 12 loops".
  "formal-coaster": [7],
  // "The 15 sts of Rnd 1 do not divide by 2 for the 8 popcorns of Rnd 2".
  "popcorn-washcloth": [2],
  // "Rnd 1 has 3 dc on its first side and 2 on the others"; corners of 3 dc do not fit 10 and 14.
  "bevs-solid-granny": [2, 4, 5],
}

/**
 * Rounds that a practised maker could not work from what stands there. The criterion, round by round: given
 * the rounds before it as printed, its words leave open which stitches are made, how many, or where they
 * go; or it rests on such a round whose stated total does not say what is there to work into. A round whose
 * wording is merely old, terse or unusual is not one of these, however hard it is to read. Rounds that
 * state no definite count ("a few more", "if 8 are added") count here too.
 */
export function isSummary(evidence: EvidenceCase, round: { n: number; text: string }): boolean {
  const bracket = /\(([^()]*)\)\.?\s*$/.exec(round.text)?.[1] ?? ""
  const indefinite = /\b(?:if|about|between|few|less|then)\b/.test(bracket)
  return indefinite || summaries[evidence.id]?.includes(round.n) === true
}

const summaries: Readonly<Record<string, readonly number[]>> = {
  // "corners, sides grow by 4 dc each": where along a side the four stand is not said.
  "square-blanket-dc-gauge-31-rounds": Array.from({ length: 31 }, (_, i) => i + 3),
  // Picots "at intervals along each side"; the note: "Placing of the picots is shortened here".
  "dillmont-468-mesh-square": [12],
  // 7: how a Tunisian petal loses stitches and where the next begins; 8: how many sc edge a petal; 9:
  // branched stitches "caught to the petals on both sides". 10 to 12 rest on 9, of which only the number
  // of its stitches and chains together is given, not which are corners.
  "dillmont-481-flower-in-square": [7, 8, 9, 10, 11, 12],
  // 7: "rising by half a yarn-over", "bars of 7 ch with picots"; 10: "picot scallops on the 256 dc".
  "dillmont-482-star16": [7, 10],
  // "edge in sc with 10 short picot bars": how many sc, and what a bar is, is not said.
  "dillmont-485-five-star": [3],
  // 4 to 6: "increasing so that the piece stays flat"; 7 and 8 rest on them.
  "needlecraft-1918-button-cover": [4, 5, 6, 7, 8],
}
