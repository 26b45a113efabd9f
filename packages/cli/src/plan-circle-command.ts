// `roundwright plan-circle`: counts per round of a flat disc of a given stitch and size.

import { capitalised, verdictWord } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { circlePlan, readStitchList } from "@roundwright/shaping"
import { gaugeFrom, readGaugeLine, readHook, readYarnWeight } from "@roundwright/stitches"
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
        `${capitalised(verdictWord(plan.verdict))}: ${plan.counts.length} rounds.`,
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
  const swatches = request.gauge === undefined ? [] : swatchesOf(request.gauge)
  const hookMm = request.hook === undefined ? undefined : readHook(request.hook)
  const yarnWeight = request.yarn === undefined ? undefined : readYarnWeight(request.yarn)?.weight
  if (request.hook !== undefined && hookMm === undefined)
    throw new RoundwrightError("unknown-hook", `"${request.hook}" is no hook size known here.`, {
      hint: "Write it in mm, such as: --hook '4 mm'.",
    })
  if (request.yarn !== undefined && yarnWeight === undefined)
    throw new RoundwrightError("unknown-yarn", `"${request.yarn}" names no yarn weight.`, {
      hint: "Write it as a weight from 0 to 7 or a trade name, such as: --yarn DK.",
    })
  const nothingKnown = swatches.length === 0 && hookMm === undefined && yarnWeight === undefined
  if (nothingKnown && request.rounds === undefined)
    return {
      gauge: gaugeFrom({ swatches, yarnWeight: usualYarn.weight, hookMm: usualYarn.hookMm }),
      assumed: `No gauge is given: worsted yarn (weight ${usualYarn.weight}) and a ${usualYarn.hookMm} mm hook are assumed. Give --gauge, or --yarn and --hook.`,
    }
  return {
    gauge: gaugeFrom({
      swatches,
      ...(hookMm === undefined ? {} : { hookMm }),
      ...(yarnWeight === undefined ? {} : { yarnWeight }),
    }),
    assumed: null,
  }
}

function swatchesOf(line: string) {
  const { swatches, problems } = readGaugeLine(line, "US")
  const [problem] = problems
  if (swatches.length === 0)
    throw new RoundwrightError("unknown-gauge", problem?.message ?? `"${line}" is no gauge.`, {
      hint: problem?.hint ?? "Write it such as: --gauge '14 sc x 16 rows = 10 cm'.",
    })
  return swatches
}
