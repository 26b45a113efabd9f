// Where a text can be taken in two ways, both fit the round before, and no total decides: both are told.

import { countRound } from "@roundwright/motif"
import { sameCounts } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import { plural } from "../base/wording.ts"
import type { ChoiceName, Choices, ChoiceValue } from "../work/choices.ts"
import type { RoundResult } from "./round-result.ts"
import { choiceWords } from "./told-choices.ts"

/** Choices that leave the text open where nothing in it decides: each reading fits, with other counts. */
const openChoices: ReadonlySet<ChoiceName> = new Set(["over-earlier", "chains-are-stitches"])

/**
 * A reading that fits, with a warning where another fits as well and no total decides.
 * @param readAs the round read with some choices forced
 * @param span where the warning points
 * @param groupsMeet every repeat takes whole groups between two spaces below, which speaks against working into chains
 */
export function withDoubt(
  usual: RoundResult & { readonly choices: Choices },
  readAs: (forced: ReadonlyMap<ChoiceName, ChoiceValue>) => RoundResult,
  span: Span,
  groupsMeet: boolean,
): RoundResult {
  const { comparison, round } = usual
  if (!round || comparison.agrees === true || comparison.inRange === true) return usual
  for (const [name, { taken, others }] of usual.choices.asked) {
    // Where chains are named in the text ("in each st and ch"), they are meant.
    if (!openChoices.has(name)) continue
    // So they are told apart where spaces are worked into as such.
    if (name === "chains-are-stitches" && (taken === "yes" || usual.worksSpaces || groupsMeet))
      continue
    for (const value of others) {
      const other = readAs(new Map([[name, value]]))
      if (other.score > 0 || !other.round || sameCounts(round, other.round)) continue
      const counts = countRound(round)
      const otherCounts = countRound(other.round)
      const finding: Finding = {
        severity: "warning",
        code: "two-readings",
        ...span,
        message: `This round comes to ${countsWords(counts)}; if ${choiceWords(name, value)}, it comes to ${countsWords(otherCounts)}. The text fits both.`,
        hint: "State the round's total, or say which is meant.",
      }
      return { ...usual, findings: [...usual.findings, finding], otherRound: other.round }
    }
  }
  return usual
}

function countsWords(counts: { stitches: number; chains: number }): string {
  const stitches = plural(counts.stitches, "stitch", "stitches")
  return counts.chains === 0
    ? stitches
    : `${stitches} and ${plural(counts.chains, "chain", "chains")}`
}
