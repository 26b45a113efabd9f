// Whether the piece lies flat, in the words of the check, and what blocking has to do.

import { type Check, formatPercent, oddsSentence, verdictSentence } from "@roundwright/assessment"

export function flatnessOf({ result }: Check): string[] {
  const { laidOut } = result
  if (!laidOut) return []
  const stretch = laidOut.blockingStretch
  const most =
    laidOut.verdict === "flat" || stretch === null || laidOut.blockingRound === null
      ? []
      : [
          `Pinned flat, round ${laidOut.blockingRound} is stretched most, by ${formatPercent(Math.abs(stretch))}.`,
        ]
  return [verdictSentence(result), oddsSentence(laidOut.odds), ...most]
}
