// The border of the published result: no number leaves that is none. A round that stands out by nothing, such as one of
// chains alone over stitches, has no growth to measure; then there is no verdict either, and it is said which round it is.

import type { PatternReading, Problem } from "@roundwright/instructions"
import type { CheckResult } from "./result.ts"

/** Whether every number in it, however deep, is one. */
export function allFinite(value: unknown): boolean {
  if (typeof value === "number") return Number.isFinite(value)
  if (typeof value !== "object" || value === null) return true
  return Object.values(value).every(allFinite)
}

/** The result itself where all its numbers are finite; otherwise what was read of the piece, without figures or verdict. */
export function finiteResult(result: CheckResult, reading: PatternReading): CheckResult {
  const broken = result.rounds.find((round) => !allFinite(round)) ?? endWithoutReach(result)
  if (allFinite(result) && broken === null) return result
  return {
    ...result,
    rounds: result.rounds.map((round) => ({
      ...round,
      ...{ edgeMm: null, depthMm: null, radiusMm: null, growthMm: null, flatGrowthMm: null },
      ...{ fullness: null, accumulatedFullness: null, fullnessRange: null, curvatureDeg: null },
      verdict: null,
    })),
    laidOut: null,
    remedies: [],
    ledger: [],
    notes: [],
    problems: [...result.problems, noMeasure(broken?.round ?? null, reading)],
    exitStatus: 2,
  }
}

/** The last round where it reaches no further than the centre: its edge has no flat edge to be held against. */
function endWithoutReach({ rounds, ledger }: CheckResult): CheckResult["rounds"][number] | null {
  const last = ledger.at(-1)
  if (!last || last.radiusMm > 0) return null
  return rounds.find(({ round }) => round === last.round) ?? null
}

function noMeasure(round: number | null, { rounds }: PatternReading): Problem {
  const which = round === null ? "The piece" : `Round ${round}`
  return {
    severity: "error",
    code: "no-measure",
    round,
    line: rounds.find(({ number }) => number === round)?.line ?? 1,
    column: 1,
    length: 1,
    message: `${which} stands out by nothing that can be measured, so its growth is no number and the piece has no verdict.`,
    hint: "Work stitches into the round below, or say into what its chains are joined.",
  }
}
