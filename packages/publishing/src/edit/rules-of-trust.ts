// Rounds that only their stated total stands for: their words could not be worked to it. A total taken on trust is no total
// checked, so the designer is asked, with the reason where the reader has one.

import type { Problem } from "@roundwright/instructions"
import type { Remark } from "./finding.ts"
import type { Manuscript, ManuscriptRound } from "./manuscript.ts"
import { codeOfReading, isToldOfReading } from "./rules-of-reading.ts"
import { totalPlace } from "./totals.ts"

const passedOver: ReadonlySet<string> = new Set(["words-passed-over", "figure-passed-over"])
/** What shows that the work and the edge below it do not fit, and so that a count is wrong. */
const reasons: ReadonlySet<string> = new Set([
  "needs-more-than-there-is",
  "nothing-left",
  "repeat-does-not-divide",
  "stitches-left-over",
  "spaces-left-over",
  "no-such-place",
])

export function totalsOnTrust(manuscript: Manuscript): Remark[] {
  return manuscript.rounds.flatMap((round): Remark[] => {
    const { stated, assumed } = round.reading
    if (!assumed || stated === null) return []
    const own = manuscript.problems.filter((problem) => problem.round === round.number)
    if (own.some((problem) => isToldOfReading(problem) || problem.code === "stated-total-differs"))
      return []
    const reason = own.find(({ code }) => reasons.has(code))
    const understood = !own.some(({ code }) => passedOver.has(code))
    return [
      reason && understood
        ? askedWithReason(manuscript, round, reason, stated)
        : askedAtTotal(round, stated),
    ]
  })
}

function askedWithReason(
  { lines }: Manuscript,
  round: ManuscriptRound,
  reason: Problem,
  stated: number,
): Remark {
  const start = lines.offset(reason.line, reason.column)
  return {
    severity: "query",
    code: codeOfReading(reason) ?? "total-wrong",
    round: round.number,
    start,
    end: start + reason.length,
    message: `${reason.message} So the words of round ${round.number} do not come to the ${stated} it states: check its repeats and figures against the total.`,
  }
}

function askedAtTotal(round: ManuscriptRound, stated: number): Remark {
  const total = totalPlace(round)
  return {
    severity: "query",
    code: "not-settled",
    round: round.number,
    start: total?.start ?? round.bodyStart,
    end: total?.end ?? round.end,
    message: `The words of round ${round.number} could not be worked to the ${stated} it states, so this total is unchecked. Work the round out on paper, or put it in plainer words.`,
  }
}
