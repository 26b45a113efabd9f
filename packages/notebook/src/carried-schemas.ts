// The form of what goes along with a page: whoever reads it back leaves out what has another, since a figure that is none
// would stop the page that shows it.

import type { CheckResult, LaidOut } from "@roundwright/assessment"
import * as v from "valibot"
import type { CirclePlan } from "./circle.ts"
import type { FinishingAnswer } from "./finishing/types.ts"
import type { ShapeFound } from "./laid-out-pattern.ts"
import type { SquaringResult } from "./squaring.ts"
import type { TransitionsResult } from "./transitions.ts"

const number = v.pipe(v.number(), v.finite())
const texts = v.array(v.string())
const numbers = v.array(number)
const verdict = v.picklist(["flat", "blocks-flat", "cups", "ruffles"])

/** What was asked, and what was found. */
const pair = <T>(found: v.GenericSchema<T>) => v.tuple([v.string(), found])

const proposal = v.looseObject({
  idea: v.string(),
  fabric: v.picklist(["lace", "mesh", "groups", "shells", "solid"]),
  price: v.string(),
  rounds: texts,
  text: v.string(),
  bowMm: number,
  sideMm: number,
  cornerAngleDeg: number,
  verdict,
  stitchKinds: texts,
  unevenMm: number,
  blockingStretch: v.nullable(number),
  blockingRound: v.nullable(number),
  fullness: number,
  score: number,
  changes: texts,
  notes: texts,
})

const heightRow = v.looseObject({
  round: number,
  place: number,
  written: v.string(),
  stitch: v.string(),
  angleDeg: number,
  fromMm: number,
  toMm: number,
  mustMm: number,
  movesMm: number,
  leftMm: number,
})

const squaring: v.GenericSchema<SquaringResult> = v.union([
  v.looseObject({
    proposals: v.array(proposal),
    heights: v.array(heightRow),
    stitches: texts,
    straighten: v.nullable(v.string()),
    toKnow: texts,
  }),
  v.looseObject({ fault: v.string(), hint: v.string() }),
])

const transitions: v.GenericSchema<TransitionsResult> = v.looseObject({
  transitions: v.array(
    v.looseObject({
      count: number,
      rounds: numbers,
      stitchKinds: texts,
      bow: number,
      bowMm: number,
      sideMm: number,
      cornerAngleDeg: number,
      verdict,
    }),
  ),
  unsolved: v.array(v.looseObject({ count: number, why: v.string() })),
})

/** A drawing is markup: only one as this writes them is taken, which holds shapes and escaped text alone. */
const drawing = v.pipe(
  v.string(),
  v.regex(
    /^<svg xmlns="http:\/\/www\.w3\.org\/2000\/svg" viewBox="[\d. -]+" width="[\d.]+mm" height="[\d.]+mm" role="img" font-family="sans-serif">(?:<\/?(?:title|desc|text|polygon|rect|svg)(?: (?:points|fill|stroke|stroke-width|x|y|width|height|font-size|text-anchor|dominant-baseline)="[\w#. ,-]*")*\/?>|[^<>])*$/,
  ),
)

const finishing: v.GenericSchema<FinishingAnswer> = v.looseObject({
  lead: v.string(),
  items: v.array(v.looseObject({ text: v.string(), rounds: texts })),
  table: v.nullable(v.looseObject({ label: v.string(), head: texts, rows: v.array(texts) })),
  notes: texts,
  drawing: v.nullable(drawing),
})

const planned = {
  counts: v.pipe(numbers, v.minLength(1)),
  text: v.string(),
  verdict,
  flatCounts: numbers,
  added: numbers,
  words: texts,
}

const plan: v.GenericSchema<CirclePlan> = v.union([
  v.looseObject({ ...planned, repeats: number, acrossMm: v.nullable(number) }),
  v.looseObject({
    ...planned,
    chains: number,
    lengthMm: v.nullable(number),
    widthMm: v.nullable(number),
  }),
])

const laidOut: v.GenericSchema<LaidOut> = v.looseObject({
  by: v.picklist(["ledger", "net"]),
  verdict,
  odds: v.looseObject({ flat: number, blocksFlat: number, cups: number, ruffles: number }),
  fromRound: v.nullable(number),
  liftMm: v.nullable(number),
  waves: v.nullable(number),
  sideReachMm: v.nullable(number),
  cornerReachMm: v.nullable(number),
  acrossMm: v.nullable(number),
  sideMm: v.exactOptional(v.nullable(number)),
  corners: v.exactOptional(number),
  bowMm: v.nullable(number),
  cornerAngleDeg: v.nullable(number),
  skewDeg: v.nullable(number),
  blockingStretch: v.nullable(number),
  blockingRound: v.nullable(number),
  meanStretch: v.nullable(number),
  acrossAfterRoundMm: v.array(v.nullable(number)),
  slack: v.nullable(v.array(v.looseObject({ round: number, element: number, slack: number }))),
  settled: v.nullable(v.boolean()),
})

const remedy: v.GenericSchema<CheckResult["remedies"][number]> = v.looseObject({
  round: number,
  change: v.string(),
  fullnessAfter: number,
  verdictAfter: verdict,
})

const figure = v.nullable(number)
const range = v.tuple([number, number])

const checkedRound: v.GenericSchema<CheckResult["rounds"][number]> = v.looseObject({
  round: number,
  counted: v.nullable(v.looseObject({ stitches: number, chains: number, spaces: number })),
  stated: figure,
  agrees: v.nullable(v.boolean()),
  assumed: v.exactOptional(v.literal(true)),
  edgeMm: figure,
  depthMm: figure,
  radiusMm: figure,
  growthMm: figure,
  flatGrowthMm: figure,
  fullness: figure,
  accumulatedFullness: figure,
  fullnessRange: v.exactOptional(v.nullable(range)),
  curvatureDeg: figure,
  verdict: v.nullable(verdict),
})

const ledgerRow: v.GenericSchema<CheckResult["ledger"][number]> = v.looseObject({
  round: number,
  edgeMm: number,
  gatheredEdgeMm: number,
  depthMm: number,
  radiusMm: number,
  cornerReachMm: number,
  growthMm: number,
  flatGrowthMm: number,
  fullness: number,
  accumulatedFullness: number,
  fullnessRange: range,
  heldFullness: number,
  curvatureDeg: number,
  outline: v.looseObject({ corners: number, sharpness: number }),
  slackMm: number,
  verdict,
})

const shape: v.GenericSchema<ShapeFound> = v.looseObject({
  laidOut: v.nullable(laidOut),
  rounds: v.array(checkedRound),
  ledger: v.array(ledgerRow),
  notes: texts,
  remedies: v.array(remedy),
  exitStatus: v.picklist([0, 1, 2]),
})

/** One entry of each list that a page carries. */
export const carriedSchemas = {
  searches: pair(squaring),
  transitions: pair(transitions),
  finishing: pair(finishing),
  plans: pair(plan),
  shapes: pair(shape),
} as const
