// Sizes of the piece after some of its rounds, as gauge lines of motifs give them: "Rnds 1-3 = 3 1/2 in", "First 2 rnds =
// 9 cm across", "9 cm after Rnd 3", "Rnd 3: 7 cm, Rnd 5: 12 cm corner to corner".

import type { PieceSize } from "./gauge.ts"
import { millimetresIn } from "./length-unit.ts"
import { numberPattern, readNumber } from "./read-number.ts"

/** One for each round the text gives a size with; of sizes of one round the first, cm before inches. Never throws. */
export function readPieceSizes(text: string): PieceSize[] {
  if (text.length > longestLine) return []
  const rounds = [...text.matchAll(roundsNamed)].map((match) => ({
    round: Number(match[1] ?? match[2] ?? match[3]),
    at: match.index,
    end: match.index + match[0].length,
  }))
  const sizes = [...text.matchAll(sizeGiven)].flatMap((match) => {
    const value = readNumber(match[1]!)
    if (value === undefined || value <= 0) return []
    const unit = match[2]!
    return [{ mm: value * millimetresIn(unit), metric: metricUnit.test(unit), at: match.index }]
  })
  const found: PieceSize[] = []
  // Sizes all stand behind their rounds ("Rnd 3: 7 cm") or all in front ("7 cm after Rnd 3").
  const inFront = rounds.length > 0 && sizes.length > 0 && sizes[0]!.at < rounds[0]!.at
  rounds.forEach(({ round, at, end }, k) => {
    const from = inFront ? (rounds[k - 1]?.end ?? 0) : end
    const until = inFront ? at : (rounds[k + 1]?.at ?? text.length)
    const own = sizes.filter((size) => size.at >= from && size.at < until)
    const size = own.find((one) => one.metric) ?? own[0]
    if (size === undefined || round < 1 || found.some((one) => one.round === round)) return
    const across = corners.test(text.slice(from, until)) ? "corners" : "sides"
    found.push({ round, mm: size.mm, across })
  })
  return found
}

const longestLine = 2000
const metricUnit = /^(?:cm|mm)/i
/** "Rnds 1-3", "Rnd 3", "first 3 rnds", "first round" is left alone: no number. */
const roundsNamed =
  /\b(?:rnds?|rounds?)\.?\s*(?:\d{1,2}\s?(?:-|–|to|through|and)\s?(\d{1,3})|(\d{1,3}))\b|\bfirst\s+(\d{1,2})\s+(?:rnds?|rounds?)\b/gi
const sizeGiven = new RegExp(
  String.raw`(${numberPattern})\s*-?\s*(cm|mm|in\b|inch(?:es)?\b|["”″])`,
  "gi",
)
const corners = /\bcorner to corner\b|\b(?:point|tip) to (?:point|tip)\b|\bdiagonal/i
