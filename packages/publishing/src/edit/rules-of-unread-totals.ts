// Totals that the reader did not take for such, because nothing in the round comes to them: "(6 clusters)" behind seven.

import { countRound, type Round, repeatsOf } from "@roundwright/motif"
import type { Remark } from "./finding.ts"
import type { Manuscript, ManuscriptRound } from "./manuscript.ts"

const bracketed =
  /[([]\s*(\d{1,4})\s+([a-z][a-z0-9 -]{1,30}?)(?:\s+in\s+(?:the\s+)?(?:ring|total|all|round))?\s*[)\]][\s.*]*$/i
/** "(62 sts, counting ch 3 as first)": a total with a remark behind it, wherever it stands in the line. */
const remarked =
  /[([]\s*(?:(?:there|you) (?:should|will) (?:be|have) )?(\d{1,4})\s+(sts?|stitches|s\.?c|hdc|htr|dc|tr|dtr)\b\.?\s*,\s*(?:[a-z]{4,}|\d{1,4}\s+ch)[^()[\]\n]{3,90}[)\]]/i
/** "(6 shells or 36 dc)": what a group has is not said, but the stitches are. */
const either =
  /[([]\s*\d{1,4}\s+[a-z]{3,12}\s+or\s+(\d{1,4})\s+(sts?|stitches|s\.?c|hdc|htr|dc|tr|dtr)\s*[)\]]/i
/** "St count: 18 sc", on a line of its own. */
const lineOfCount =
  /^[\s>•*_-]{0,8}(?:(?:st(?:itch)?|sts|stitches)\.?\s{1,3}count|total(?:\s{1,3}st(?:itche)?s)?)\s{0,3}[:=]\s{0,3}(\d{1,4})(?:\s{1,3}(sts?|stitches|s\.?c|hdc|htr|dc|tr|dtr)\b)?\s{0,9}$/i
/** Brackets of work rather than of a total. */
const isWork = /\b(?:times?|more|in|each|counts?|mm|cm|inch(?:es)?)\b/i

/** The total in brackets at the end of a round that states none by the reader; null where there is none. */
export function unreadTotal({ body, bodyStart, reading }: ManuscriptRound): {
  readonly figure: number
  readonly start: number
  readonly end: number
} | null {
  if (reading.stated !== null) return null
  let from = 0
  for (const line of body.split(/(?<=\n)/)) {
    const found =
      bracketed.exec(line.trimEnd()) ??
      either.exec(line) ??
      remarked.exec(line) ??
      lineOfCount.exec(line)
    if (found && !isWork.test(found[2] ?? "")) {
      const start = bodyStart + from + found.index
      return { figure: Number(found[1]), start, end: start + found[0].trimEnd().length }
    }
    from += line.length
  }
  return null
}

export function unmetTotals({ rounds, text }: Manuscript): Remark[] {
  return rounds.flatMap((round): Remark[] => {
    const total = unreadTotal(round)
    if (!total || round.round === null || round.reading.assumed) return []
    if (figuresOf(round.round).has(total.figure)) return []
    const { stitches, spaces } = round.reading.counted ?? { stitches: 0, spaces: 0 }
    return [
      {
        severity: "query",
        code: "total-wrong",
        round: round.number,
        start: total.start,
        end: total.end,
        message: `${text.slice(total.start, total.end).trim()} is met by nothing in round ${round.number}: worked as written it comes to ${stitches} stitches${spaces > 0 ? ` and ${spaces} spaces` : ""}. Check the number of its repeats.`,
      },
    ]
  })
}

/** Units of more than one stitch: what makes one is not said, so a figure that something in the round comes to is let stand. */
export const groupUnits =
  /\b(?:petals?|shells?|points?|groups?|pairs?|fans?|clusters?|sets?|scallops?|repeats?|corners?|v-?sts?)\b/i

/** All that a round can be said to have so many of. */
export function figuresOf(round: Round): Set<number> {
  const { stitches, chains, spaces, picots, byKind, spacesBySize } = countRound(round)
  const alone = { centre: { kind: "adjustable-ring" }, rounds: [round] } as const
  return new Set([
    ...[stitches, chains, spaces, picots, stitches + chains, repeatsOf(alone, 0)],
    ...byKind.map(({ count }) => count),
    ...spacesBySize.map(({ count }) => count),
  ])
}
