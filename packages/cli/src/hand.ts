// A maker's own hand as given by options: swatch lines, yarn, hook.

import { RoundwrightError } from "@roundwright/numerics"
import {
  type Gauge,
  gaugeFrom,
  readGaugeLine,
  readHook,
  readYarnWeight,
  type Terms,
} from "@roundwright/stitches"

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
  const hookMm = hook === undefined ? undefined : readHook(hook)
  const yarnWeight = yarn === undefined ? undefined : readYarnWeight(yarn)?.weight
  if (hook !== undefined && hookMm === undefined)
    throw new RoundwrightError("unknown-hook", `"${hook}" is no hook size known here.`, {
      hint: "Write it in mm, such as: --hook '4 mm'.",
    })
  if (yarn !== undefined && yarnWeight === undefined)
    throw new RoundwrightError("unknown-yarn", `"${yarn}" names no yarn weight.`, {
      hint: "Write it as a weight from 0 to 7 or a trade name, such as: --yarn DK.",
    })
  return gaugeFrom({
    swatches,
    ...(hookMm === undefined ? {} : { hookMm }),
    ...(yarnWeight === undefined ? {} : { yarnWeight }),
  })
}

function swatchesOf(line: string, terms: Terms) {
  const { swatches, problems } = readGaugeLine(line, terms)
  const [problem] = problems
  if (swatches.length === 0)
    throw new RoundwrightError("unknown-gauge", problem?.message ?? `"${line}" is no gauge.`, {
      hint: problem?.hint ?? "Write it such as: --gauge '14 sc x 16 rows = 10 cm'.",
    })
  return swatches
}
