// A pattern's text up to one of its rounds: to go on from any round, not only the last.

import { readPattern } from "@roundwright/instructions"
import { RoundwrightError } from "@roundwright/numerics"

/**
 * The text up to the end of a round, headings included; what follows it is left out.
 * @throws RoundwrightError `no-such-round` when the pattern has none of that number, or tells it together with later ones
 */
export function patternUpTo(text: string, number: number): string {
  const { rounds } = readPattern(text)
  const last = rounds.findLast((round) => round.number === number)
  if (!last)
    throw new RoundwrightError("no-such-round", `The pattern has no round ${number}.`, {
      hint:
        rounds.length === 0
          ? "No round was found in it."
          : `Its rounds go from ${rounds[0]!.number} to ${rounds.at(-1)!.number}.`,
      numbers: { round: number },
    })
  const cut = text.slice(0, last.end)
  const end = readPattern(cut).rounds.at(-1)?.number
  if (end !== number)
    throw new RoundwrightError(
      "no-such-round",
      `Round ${number} is told together with others, up to round ${end ?? "?"}.`,
      {
        hint: "Write it on a line of its own, or begin at the last of them.",
        numbers: { round: number },
      },
    )
  return cut.trimEnd().concat("\n")
}
