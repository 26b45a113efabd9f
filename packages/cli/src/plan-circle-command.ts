// `roundwright plan-circle`: counts per round of a flat disc, polygon or oval of a given stitch and size.

import { capitalised, formatLength, verdictWord } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import {
  circlePlan,
  type Increases,
  ovalPlan,
  type PlannedStitches,
  readPlannedStitches,
} from "@roundwright/shaping"
import { type Gauge, gaugeFrom, kindName, type Terms } from "@roundwright/stitches"
import { gaugeOfHand, refuseBelowZero } from "./hand.ts"
import { oneOf, readLengthMm, wholeNumber } from "./option-values.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface PlanRequest {
  /** US dc when absent, whatever the terms. */
  readonly stitch?: string | undefined
  readonly across?: string | undefined
  readonly rounds?: string | undefined
  readonly corners?: string | undefined
  /** Of a polygon: chains or stitches. */
  readonly "corner-style"?: string | undefined
  readonly increases?: string | undefined
  readonly repeats?: string | undefined
  /** Chains of an oval's foundation. */
  readonly oval?: string | undefined
  /** Length of an oval less its width. */
  readonly "longer-by"?: string | undefined
  readonly terms?: string | undefined
  readonly gauge?: string | undefined
  readonly hook?: string | undefined
  readonly yarn?: string | undefined
  readonly json: boolean
}

/** Without yarn, hook or swatch a size in mm means nothing yet: the commonest pair is taken, and said. */
const usualYarn = { weight: 4, hookMm: 5 } as const

/** @throws RoundwrightError for options that make no sense; the caller prints it */
export function runPlanCircle(request: PlanRequest, around: Surroundings): number {
  const terms = oneOf(request.terms ?? "US", ["US", "UK"] as const, "--terms")
  if (request.gauge !== undefined) refuseBelowZero(request.gauge)
  const stitches = readPlannedStitches(
    request.stitch ?? kindName({ basic: "dc" }, terms),
    request.gauge,
    terms,
  )
  const { gauge, assumed } = gaugeOf({ ...request, gauge: stitches.gauge, terms })
  const oval = request.oval !== undefined || request["longer-by"] !== undefined
  const plan = oval
    ? planOfOval(request, stitches, gauge, terms)
    : planOfCircle(request, stitches, gauge, terms)
  const words = [...stitches.words, ...plan.result.words, ...(assumed ? [assumed] : [])]
  if (request.json) around.out(`${JSON.stringify({ ...plan.result, words }, null, 2)}\n`)
  else
    around.out(
      [
        plan.summary,
        wrap(`Stitches in each round: ${plan.result.counts.join(", ")}.`, 80, "", "  "),
        ...words.map((sentence) => wrap(sentence, 80)),
        "",
        ...plan.result.text
          .trimEnd()
          .split("\n")
          .map((line) => wrap(line, 80, "", "  ")),
        "",
        wrap(beginning, 80),
        "",
      ].join("\n"),
    )
  return plan.result.verdict === "flat" ? 0 : 1
}

const beginning =
  "Begin each round with a standing stitch, or with chains as high as its first stitch, which then stand for it."

function planOfCircle(
  request: PlanRequest,
  { stitches }: PlannedStitches,
  gauge: Gauge,
  terms: Terms,
) {
  const { across, rounds, corners, increases, repeats } = request
  const style = request["corner-style"]
  if (increases !== undefined && corners !== undefined)
    throw new RoundwrightError("two-plans", "A polygon's increases stand at its corners.", {
      hint: "Leave out --increases, or --corners.",
    })
  const result = circlePlan({
    stitches,
    gauge,
    terms,
    ...(across === undefined ? {} : { acrossMm: readLengthMm(across) }),
    ...(rounds === undefined ? {} : { rounds: wholeNumber(rounds, "--rounds") }),
    ...(corners === undefined ? {} : { corners: wholeNumber(corners, "--corners") }),
    ...(style === undefined
      ? {}
      : { cornerStyle: oneOf(style, ["chains", "stitches"] as const, "--corner-style") }),
    ...(repeats === undefined ? {} : { repeats: wholeNumber(repeats, "--repeats") }),
    ...(increases === undefined ? {} : { increases: increasesOf(increases) }),
  })
  const size = result.acrossMm === null ? "" : `, about ${formatLength(result.acrossMm)} across`
  return { result, summary: `${headOf(result)}${size}.` }
}

function increasesOf(text: string): Increases {
  return oneOf(text, ["staggered", "stacked"] as const, "--increases")
}

function planOfOval(
  request: PlanRequest,
  { stitches }: PlannedStitches,
  gauge: Gauge,
  terms: Terms,
) {
  const { oval, rounds } = request
  const longerBy = request["longer-by"]
  for (const name of ["across", "corners", "corner-style", "increases", "repeats"] as const)
    if (request[name] !== undefined)
      throw new RoundwrightError("no-oval", `--${name} says nothing about an oval.`, {
        hint: "Give --rounds, and --oval 20 (foundation chains) or --longer-by 80mm.",
      })
  if (oval !== undefined && longerBy !== undefined)
    throw new RoundwrightError(
      "two-sizes",
      "Both the chains and the length of an oval are given.",
      {
        hint: "Leave out --oval or --longer-by.",
      },
    )
  if (stitches.length > 1)
    throw new RoundwrightError("no-oval", "An oval is planned in one stitch.", {
      hint: "Name a single stitch.",
    })
  if (rounds === undefined)
    throw new RoundwrightError("no-size", "The number of rounds of the oval is not given.", {
      hint: "Such as: --oval 20 --rounds 6.",
    })
  const result = ovalPlan({
    stitch: stitches[0]!,
    gauge,
    terms,
    rounds: wholeNumber(rounds, "--rounds"),
    ...(oval === undefined ? {} : { chains: wholeNumber(oval, "--oval") }),
    ...(longerBy === undefined ? {} : { longerByMm: readLengthMm(longerBy) }),
  })
  const { lengthMm, widthMm } = result
  const size =
    lengthMm === null || widthMm === null
      ? ""
      : `, about ${formatLength(lengthMm)} long and ${formatLength(widthMm)} wide`
  return { result, summary: `${headOf(result)}${size}.` }
}

/** What a maker wants to know first: how it lies and how many rounds that is. */
function headOf({
  verdict,
  counts,
}: {
  verdict: Parameters<typeof verdictWord>[0]
  counts: readonly number[]
}): string {
  const rounds = counts.length === 1 ? "1 round" : `${counts.length} rounds`
  return `${capitalised(verdictWord(verdict))}: ${rounds}`
}

function gaugeOf(request: Omit<PlanRequest, "terms"> & { readonly terms: Terms }) {
  const { gauge, hook, yarn, terms } = request
  const own = gaugeOfHand({ gauge, hook, yarn, terms })
  if (own) return { gauge: own, assumed: null }
  if (request.across === undefined && request["longer-by"] === undefined)
    return { gauge: gaugeFrom({ swatches: [] }), assumed: null }
  return {
    gauge: gaugeFrom({ swatches: [], yarnWeight: usualYarn.weight, hookMm: usualYarn.hookMm }),
    assumed: `No gauge is given: worsted yarn (weight ${usualYarn.weight}) and a ${usualYarn.hookMm} mm hook are assumed. Give --gauge, or --yarn and --hook.`,
  }
}
