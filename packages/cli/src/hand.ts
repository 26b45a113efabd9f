// A maker's own hand as given by options: swatch lines, yarn, hook.

import { inTerms } from "@roundwright/assessment"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import {
  type Gauge,
  type GaugeInput,
  gaugeFrom,
  inHand,
  readGaugeLine,
  readHeading,
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
 * The gauge the options make; null when none is given. A hook alone keeps the pattern's yarn and what was measured.
 * @param own what the pattern itself tells; nothing where there is none
 * @throws RoundwrightError `unknown-gauge`, `unknown-hook`, `unknown-yarn`
 */
export function gaugeOfHand(options: HandOptions, own?: GaugeInput): Gauge | null {
  const { gauge, hook, yarn } = options
  if (gauge === undefined && hook === undefined && yarn === undefined) return null
  const hand: GaugeInput = {
    ...(gauge === undefined
      ? { swatches: [] }
      : measuredBy(gauge, options.terms ?? "US", own !== undefined)),
    ...(hook === undefined ? {} : hookOf(hook)),
    ...(yarn === undefined ? {} : yarnOf(yarn)),
  }
  return unlessRefused(
    () => gaugeFrom(inHand(own ?? { swatches: [] }, hand)),
    ({ code, message, hint }) => {
      throw new RoundwrightError(code, inTerms(message, options.terms ?? "US"), { hint })
    },
  )
}

function hookOf(hook: string): Pick<GaugeInput, "hookMm"> {
  const { hookMm } = readHeading("hook", hook, "US")
  if (hookMm !== undefined) return { hookMm: hookMm.value }
  throw new RoundwrightError("unknown-hook", `${quoted(hook)} is no hook size known here.`, {
    hint: "Write it in mm, such as: --hook '4 mm'.",
  })
}

function yarnOf(yarn: string): Pick<GaugeInput, "yarnWeight" | "threadSize" | "strands"> {
  const { yarnWeight, threadSize, strands } = readHeading("yarn", asWeight(yarn), "US")
  if (yarnWeight === undefined && strands === undefined)
    throw new RoundwrightError("unknown-yarn", `${quoted(yarn)} names no yarn weight.`, {
      hint: "Write it as a weight from 0 to 7 or a trade name, such as: --yarn DK.",
    })
  return {
    ...(yarnWeight === undefined ? {} : { yarnWeight: yarnWeight.value }),
    ...(threadSize === undefined ? {} : { threadSize: threadSize.value }),
    ...(strands === undefined ? {} : { strands: strands.value }),
  }
}

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

/** Swatches, or sizes of the piece after some rounds where there is a piece. */
function measuredBy(
  line: string,
  terms: Terms,
  ofPiece: boolean,
): Pick<GaugeInput, "swatches" | "pieces"> {
  const { swatches, pieces, problems } = readGaugeLine(line, terms)
  refuseBelowZero(line)
  const [problem] = problems
  if (swatches.length === 0 && !(ofPiece && pieces.length > 0))
    throw new RoundwrightError(
      "unknown-gauge",
      problem?.message ?? `${quoted(line)} is no gauge.`,
      {
        hint: problem?.hint ?? "Write it such as: --gauge '14 sc x 16 rows = 10 cm'.",
      },
    )
  return { swatches, ...(pieces.length === 0 ? {} : { pieces }) }
}
