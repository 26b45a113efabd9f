// A maker's own hand as given by options: swatch lines, yarn, hook.

import { inTerms } from "@roundwright/assessment"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import {
  type Gauge,
  gaugeFrom,
  readGaugeLine,
  readHook,
  readYarnWeight,
  type Terms,
} from "@roundwright/stitches"
import { quoted } from "./option-values.ts"

export interface HandOptions {
  readonly gauge: string | undefined
  readonly hook: string | undefined
  readonly yarn: string | undefined
  /** Terms of the stitches in the gauge; US when absent. */
  readonly terms?: Terms
}

/**
 * The gauge the options make; null when none is given.
 * @throws RoundwrightError `unknown-gauge`, `unknown-hook`, `unknown-yarn`
 */
export function gaugeOfHand(options: HandOptions): Gauge | null {
  const { gauge, hook, yarn } = options
  if (gauge === undefined && hook === undefined && yarn === undefined) return null
  const swatches = gauge === undefined ? [] : swatchesOf(gauge, options.terms ?? "US")
  const hookMm = hook === undefined || noPlainSize.test(hook) ? undefined : readHook(hook)
  const yarnWeight = yarn === undefined ? undefined : readYarnWeight(asWeight(yarn))?.weight
  if (hook !== undefined && hookMm === undefined)
    throw new RoundwrightError("unknown-hook", `${quoted(hook)} is no hook size known here.`, {
      hint: "Write it in mm, such as: --hook '4 mm'.",
    })
  if (yarn !== undefined && yarnWeight === undefined)
    throw new RoundwrightError("unknown-yarn", `${quoted(yarn)} names no yarn weight.`, {
      hint: "Write it as a weight from 0 to 7 or a trade name, such as: --yarn DK.",
    })
  return unlessRefused(
    () =>
      gaugeFrom({
        swatches,
        ...(hookMm === undefined ? {} : { hookMm }),
        ...(yarnWeight === undefined ? {} : { yarnWeight }),
      }),
    ({ code, message, hint }) => {
      throw new RoundwrightError(code, inTerms(message, options.terms ?? "US"), { hint })
    },
  )
}

/** `1e9mm`, `-4mm`: no hook is written so, and the digits at the end are no size. */
const noPlainSize = /\de[+-]?\d|^\s*-/i

/** A count or a length below zero. */
const belowZero = /(?:^|[=x×,])\s*-\s*\.?\d/i

/** A number by itself is the weight: `--yarn 4`. */
function asWeight(yarn: string): string {
  return /^\s*\d\s*$/.test(yarn) ? `weight ${yarn.trim()}` : yarn
}

/** A minus before a number is no dash between two. @throws RoundwrightError `unknown-gauge` */
export function refuseBelowZero(line: string): void {
  if (belowZero.test(line))
    throw new RoundwrightError(
      "unknown-gauge",
      `A gauge is not below zero, as in ${quoted(line)}.`,
      {
        hint: "Write it such as: --gauge '14 sc x 16 rows = 10 cm'.",
      },
    )
}

function swatchesOf(line: string, terms: Terms) {
  const { swatches, problems } = readGaugeLine(line, terms)
  refuseBelowZero(line)
  const [problem] = problems
  if (swatches.length === 0)
    throw new RoundwrightError(
      "unknown-gauge",
      problem?.message ?? `${quoted(line)} is no gauge.`,
      {
        hint: problem?.hint ?? "Write it such as: --gauge '14 sc x 16 rows = 10 cm'.",
      },
    )
  return swatches
}
