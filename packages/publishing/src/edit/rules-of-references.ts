// Rounds and places that the words of a round point to and that are not there: a round the text does not have, the round
// itself, the loop on the hook for a chain.

import type { Remark } from "./finding.ts"
import type { Manuscript, ManuscriptRound } from "./manuscript.ts"

const reference =
  /\b(rep(?:eat(?:ing)?)?\s+)?(?:rnds?|rounds?|rows?)\.?\s+(\d{1,2})\b(?!\s?(?:more\b|times?\b|sts?\b|sc\b|hdc\b|dc\b|tr\b|cm\b|mm\b|in\b|inch|["”″]|:))/gi
/** Labels anywhere, of rounds that the reader may have taken for talk. */
const label =
  /(?:^|\n)[\s>•*_#-]{0,12}(?:(?:rnds?|rounds?|rows?|r)\b\.?\s{0,3})?(\d{1,2})(?:\s{0,2}(?:[-–&]|to|and|through)\s{0,2}(?:rnd |round |row )?(\d{1,2}))?\b/gi

export function namedRounds(manuscript: Manuscript): Remark[] {
  const { text, rounds } = manuscript
  const there = new Set(rounds.map(({ number }) => number))
  for (const [, from, to] of text.matchAll(label))
    for (let number = Number(from); number <= Number(to ?? from); number++) there.add(number)
  return rounds.flatMap((round): Remark[] => {
    const found = [...round.body.matchAll(reference)].find((match) => {
      const named = Number(match[2])
      return named > round.number
        ? !there.has(named)
        : named === round.number && match[1] !== undefined && isWholeWork(round, match.index)
    })
    if (!found) return []
    const named = Number(found[2])
    const start = round.bodyStart + found.index
    return [
      {
        severity: "query",
        code: "round-named-not-there",
        round: round.number,
        start,
        end: start + found[0].length,
        message:
          named === round.number
            ? `Round ${round.number} is told to repeat itself. Which round is meant?`
            : `Round ${round.number} names round ${named}, which the text does not have. Which round is meant?`,
      },
    ]
  })
}

/** "Repeat round 3" as all that a round says: behind work of its own it may tell how to go on. */
function isWholeWork({ body }: ManuscriptRound, at: number): boolean {
  return body.slice(0, at).trim() === ""
}

const firstFromHook = /\b(?:1st|first)\s+ch(?:ain)?\b(?=\s+from\s+(?:the\s+|your\s+)?hook)/i

/** The first chain from the hook is the loop that the hook is in: the second is the first to be worked into. */
export function firstChainFromHook({ rounds }: Manuscript): Remark[] {
  return rounds.flatMap((round): Remark[] => {
    const found = firstFromHook.exec(round.body)
    if (!found) return []
    const start = round.bodyStart + found.index
    return [
      {
        severity: "query",
        code: "place-not-there",
        round: round.number,
        start,
        end: start + found[0].length,
        message:
          "The first chain from the hook can hardly be worked into: makers count from the one beside it, so the second is likely meant.",
        wording: found[0].replace(/^(?:1st|first)/i, (word) => (word === "1st" ? "2nd" : "second")),
      },
    ]
  })
}
