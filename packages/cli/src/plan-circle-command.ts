// `roundwright plan-circle`: counts per round of a flat disc of a given stitch and size.

import { capitalised, formatLength, verdictWord } from "@roundwright/assessment"
import { circlePlan, readStitchList } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import { gaugeOfHand } from "./hand.ts"
import { readLengthMm, wholeNumber } from "./option-values.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface PlanRequest {
  readonly stitch: string
  readonly across: string | undefined
  readonly rounds: string | undefined
  readonly gauge: string | undefined
  readonly hook: string | undefined
  readonly yarn: string | undefined
  readonly json: boolean
}

/** Without yarn, hook or swatch a size in mm means nothing yet: the commonest pair is taken, and said. */
const usualYarn = { weight: 4, hookMm: 5 } as const

/** @throws RoundwrightError for options that make no sense; the caller prints it */
export function runPlanCircle(request: PlanRequest, around: Surroundings): number {
  const { gauge, assumed } = gaugeOf(request)
  const size =
    request.rounds === undefined
      ? { acrossMm: readLengthMm(request.across ?? "") }
      : { rounds: wholeNumber(request.rounds, "--rounds") }
  const plan = circlePlan({ stitches: readStitchList(request.stitch), gauge, ...size })
  if (request.json) around.out(`${JSON.stringify(plan, null, 2)}\n`)
  else
    around.out(
      [
        ...summary(plan),
        ...plan.words.map((sentence) => wrap(sentence, 80)),
        ...(assumed ? [wrap(assumed, 80)] : []),
        "",
        ...plan.text
          .trimEnd()
          .split("\n")
          .map((line) => wrap(line, 80, "", "  ")),
        "",
      ].join("\n"),
    )
  return plan.verdict === "flat" ? 0 : 1
}

function gaugeOf(request: PlanRequest) {
  const own = gaugeOfHand(request)
  if (own) return { gauge: own, assumed: null }
  if (request.rounds !== undefined) return { gauge: gaugeFrom({ swatches: [] }), assumed: null }
  return {
    gauge: gaugeFrom({ swatches: [], yarnWeight: usualYarn.weight, hookMm: usualYarn.hookMm }),
    assumed: `No gauge is given: worsted yarn (weight ${usualYarn.weight}) and a ${usualYarn.hookMm} mm hook are assumed. Give --gauge, or --yarn and --hook.`,
  }
}

/** What a maker wants to know first: how it lies, how large it comes out, how many stitches in each round. */
function summary({ verdict, counts, acrossMm }: ReturnType<typeof circlePlan>): string[] {
  const rounds = counts.length === 1 ? "1 round" : `${counts.length} rounds`
  const size = acrossMm === null ? "" : `, about ${formatLength(acrossMm)} across`
  return [
    `${capitalised(verdictWord(verdict))}: ${rounds}${size}.`,
    wrap(`Stitches in each round: ${counts.join(", ")}.`, 80, "", "  "),
  ]
}
