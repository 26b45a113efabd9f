// Colours by letter or number: a round that uses one the materials do not have.

import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"

const used = /\b(?:colou?r|yarn|shade)\s+([A-H]|[1-9])\b(?!\s?(?:more|times|sts?)\b)/g
const listed =
  /\b(?:[Cc]olou?rs?|[Yy]arns?|[Ss]hades?)\s+([A-H1-9])\b|(?<![A-Za-z\d])\(?([A-H])\)?\s?[:=)–-]/g

/** Where the materials list two colours or more by sign. */
export function coloursNotListed({ rounds, front }: Manuscript): Remark[] {
  const known = new Set([...front.matchAll(listed)].map((match) => match[1] ?? match[2]!))
  if (known.size < 2) return []
  const seen = new Set<string>()
  return rounds.flatMap((round) =>
    [...round.body.matchAll(used)].flatMap((match): Remark[] => {
      const sign = match[1]!
      if (known.has(sign) || seen.has(sign)) return []
      seen.add(sign)
      const start = round.bodyStart + match.index
      return [
        {
          severity: "query",
          code: "colour-not-listed",
          round: round.number,
          start,
          end: start + match[0].length,
          message: `"${match[0]}" is used in round ${round.number} and is not among the colours listed: ${[...known].sort().join(", ")}.`,
        },
      ]
    }),
  )
}
