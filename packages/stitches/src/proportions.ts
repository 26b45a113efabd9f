// Height and width of every stitch in widths of one sc, as published gauges and swatches give them.
//
// Medians and quartiles of height / width over 82 swatches and pattern gauges (counted in
// test/evidence/stitches-gauges.json with the address of each). sc, hdc and dc measure the same
// width per mm of hook (1.44, 1.43, 1.43), so their height in sc widths is their h/w. Taller ones
// are extrapolated: one more yarn-over adds the step from sc to dc. No measured solid swatch of tr
// or taller was found.

import type { Provenance } from "./gauge.ts"
import type { BasicStitch } from "./kinds.ts"

export interface Proportion {
  /** Base to top in sc widths. */
  readonly height: number
  /** Top width in sc widths. */
  readonly width: number
  /** Relative standard deviation of height / width among makers. */
  readonly spread: number
  readonly provenance: Provenance
  readonly note: string
}

/** h/w of sc in turned rows: median of 24 gauges, quartiles 0.873 and 0.980. */
export const scTurned = 0.919
/**
 * h/w of sc in rounds that are not turned: median of 4 gauges (0.83 to 1.0). Five gauges of tapestry work, tight on purpose,
 * have 1.0 to 1.19; that the hook alone makes stitches so tall is not shown by any pair of gauges (of the five, three have
 * 0.70 to 0.78 of the hook their yarn asks for, and so has one of the four), so one hand is taken whatever yarn and hook
 * are named, and the spread covers both kinds.
 */
export const scUnturned = 1
/** h/w of hdc: median of 12 gauges, quartiles 1.273 and 1.389; rows and rounds do not differ. */
export const hdcRatio = 1.317
/** h/w of dc: median of 28 gauges, quartiles 1.813 and 2.000; rows and rounds do not differ. */
export const dcRatio = 2

/** h/w implied by the trade's 6 sc, 8 hdc and 12 dc a round: count / 2 pi. */
export const tradeRuleRatios = {
  sc: 6 / (2 * Math.PI),
  hdc: 8 / (2 * Math.PI),
  dc: 12 / (2 * Math.PI),
} as const

/** Height added by one more yarn-over, in sc widths: the step from sc to dc. */
export const yarnOverStep = dcRatio - scTurned
/**
 * A tr's top against a dc's: between 4 and 7 % wider, own arithmetic on "63 Squares Afghan 4/63",
 * julisjots.blogspot.com (25 tr over 7 in came out 1/4 to 1/2 in too wide). Taller ones: no figure,
 * taken alike.
 */
export const trebleWidth = 1.055

/** Standard deviation from quartiles of a normal spread: (q3 - q1) / 1.349, over the median. */
const scSpread = (0.98 - 0.873) / 1.349 / scTurned
const hdcSpread = (1.389 - 1.273) / 1.349 / hdcRatio
const dcSpread = (2 - 1.813) / 1.349 / dcRatio
/** Rows and tight rounds of unturned sc together, nine gauges: quartiles 1.000 and 1.136. */
const scUnturnedSpread = (1.136 - 1) / 1.349 / 1
/**
 * How much wider an extrapolated proportion is held to be than the measured one beside it. No data
 * checks the extrapolation; half as much again is an assumption.
 */
export const extrapolatedSpreadFactor = 1.5

/** How the stitch is worked: `turned` when each round or row runs back over the one before. */
export interface Working {
  readonly turned: boolean
}

/** The proportion of a basic stitch worked plainly into both loops. */
export function basicProportion(basic: BasicStitch, working: Working): Proportion {
  return basic === "sc" ? singleCrochet(working) : others[basic]
}

function singleCrochet(working: Working): Proportion {
  if (working.turned) {
    return measured(scTurned, scSpread, "sc in turned rows: median of 24 published gauges.")
  }
  const note =
    "sc in rounds that are not turned: median of 4 published gauges; tight work is taller (5 gauges)."
  return measured(scUnturned, scUnturnedSpread, note)
}

function measured(height: number, spread: number, note: string): Proportion {
  return { height, width: 1, spread, provenance: "published median", note }
}

function extrapolated(height: number, width: number, spread: number, note: string): Proportion {
  return {
    height,
    width,
    spread: spread * extrapolatedSpreadFactor,
    provenance: "extrapolated",
    note,
  }
}

const halfTrebleWidth = (1 + trebleWidth) / 2

/** dc plus that many steps. The steps share one error, so it grows with their number. */
function taller(steps: number): Proportion {
  const height = dcRatio + steps * yarnOverStep
  const dcError = dcSpread * dcRatio
  const stepError = Math.hypot(dcError, scSpread * scTurned)
  return extrapolated(
    height,
    steps >= 1 ? trebleWidth : halfTrebleWidth,
    Math.hypot(dcError, steps * stepError) / height,
    `Not measured: the dc plus ${steps} times the step from sc to dc.`,
  )
}

/**
 * A slip stitch lies on the edge it is worked into. No gauge of it in both loops was found; a tenth
 * of a width is an assumption that keeps it a segment. (In the back loop, see stitch-forms.ts.)
 */
const slipStitchHeight = 0.1

const others: Readonly<Record<Exclude<BasicStitch, "sc">, Proportion>> = {
  "sl st": extrapolated(
    slipStitchHeight,
    1,
    0.2,
    "Assumed: a slip stitch adds hardly any height and is as wide as a sc.",
  ),
  esc: extrapolated(1.2, 1, scSpread, "One published gauge of esc with ch 1 between (h/w 1.2)."),
  hdc: measured(hdcRatio, hdcSpread, "Median of 12 published gauges."),
  ehdc: extrapolated(
    (hdcRatio + dcRatio) / 2,
    1,
    hdcSpread,
    "Not measured: half way between hdc and dc.",
  ),
  dc: measured(dcRatio, dcSpread, "Median of 28 published gauges."),
  edc: taller(0.5),
  tr: taller(1),
  etr: taller(1.5),
  dtr: taller(2),
  trtr: taller(3),
  quadtr: taller(4),
  quintr: taller(5),
}
