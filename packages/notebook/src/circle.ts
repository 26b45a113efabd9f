// Planning a flat circle, a polygon with stacked increases or an oval: what a circle cell asks for, and the plan as a
// pattern.

import {
  circlePlan,
  type Increases,
  ovalPlan,
  type PlannedStitches,
  type PublishedOval,
  readPlannedStitches,
} from "@roundwright/shaping"
import {
  chainSize,
  type Gauge,
  gaugeFrom,
  kindName,
  readGaugeLine,
  readHeading,
  type Terms,
} from "@roundwright/stitches"
import type { Report } from "./problems.ts"
import { type ErrorPlaces, type RequestLines, readRequestLines } from "./request-lines.ts"
import { bothTerms } from "./squaring-request.ts"
import type { WrittenCell } from "./written-cell.ts"

/** A plan with its words; an oval has a length and a width where a circle or a polygon has a size across. */
export type CirclePlan = ReturnType<typeof circlePlan> | PublishedOval

const usualStitch = { basic: "dc" } as const
const usualRounds = 8
const increaseWords: readonly Increases[] = ["staggered", "stacked"]

/** A dinner plate's worth of rounds and more; a cell stays quick to compute. */
const bounds = {
  rounds: { least: 1, most: 60 },
  corners: { least: 3, most: 12 },
  repeats: { least: 1, most: 60 },
  oval: { least: 3, most: 300 },
} as const

/** Without yarn, hook or swatch a size in mm means nothing yet: the commonest pair is taken, and said. */
const assumedYarn = { yarnWeight: 4, hookMm: 5 } as const
const assumedWords = `No gauge is given: worsted yarn (weight ${assumedYarn.yarnWeight}) and a ${assumedYarn.hookMm} mm hook are assumed. Give Gauge:, or Yarn: and Hook:.`

/** Plans by the lines they were asked for with; planning takes a second where the shape decides. */
export interface PlanMemory {
  get(lines: string): CirclePlan | undefined
  set(lines: string, plan: CirclePlan): unknown
}

/** Plans what the cell asks for. @returns null when that cannot be done, reported at its line */
export function planCell(
  cell: WrittenCell,
  report: Report,
  plans: PlanMemory = new Map(),
): CirclePlan | null {
  const key = planKey(cell.text)
  // Only what could be planned is remembered.
  const known = plans.get(key)
  if (known) return known
  const plan = newPlan(cell, report)
  if (plan) plans.set(key, plan)
  return plan
}

/** Tells one plan from another. @param text the lines of the cell */
export function planKey(text: string): string {
  return text.replace(/\r\n?/g, "\n").trim()
}

function newPlan(cell: WrittenCell, report: Report): CirclePlan | null {
  const lines = readRequestLines(
    cell,
    [
      ...["stitch", "across", "rounds", "corners", "increases", "repeats", "oval", "longer by"],
      ...["terms", "yarn", "hook", "gauge"],
    ],
    "Stitch: dc, Across: 20 cm or Rounds: 8, Corners: 6, Increases: stacked, Repeats: 6, Oval: 20, Longer by: 8 cm, Terms: UK, and Yarn:, Hook: or Gauge:",
    report,
  )
  const terms = lines.oneOf("terms", bothTerms) ?? "US"
  const stitch = lines.value("stitch") ?? kindName(usualStitch, terms)
  const planned = lines.attempt("stitch", () =>
    readPlannedStitches(stitch, lines.value("gauge") ?? undefined, terms),
  )
  if (!planned) return null
  const own = readGauge(lines, planned.gauge, terms)
  const oval = lines.value("oval") !== null || lines.value("longer by") !== null
  const sized = lines.value("across") !== null || lines.value("longer by") !== null
  const assumed = own === null && sized
  const gauge = own ?? gaugeFrom({ swatches: [], ...(assumed ? assumedYarn : {}) })
  const plan = oval
    ? planOval(lines, planned, gauge, terms)
    : planCircle(lines, planned, gauge, terms)
  if (!plan) return null
  const words = [...planned.words, ...plan.words, ...(assumed ? [assumedWords] : [])]
  return { ...plan, words }
}

function planCircle(
  lines: RequestLines,
  { stitches }: PlannedStitches,
  gauge: Gauge,
  terms: Terms,
): CirclePlan | null {
  const acrossMm = lines.lengthMm("across")
  const rounds = lines.whole("rounds", bounds.rounds, "number of rounds")
  const corners = lines.whole("corners", bounds.corners, "number of corners")
  const repeats = lines.whole("repeats", bounds.repeats, "number of repeats")
  const increases = lines.oneOf("increases", increaseWords)
  if (acrossMm !== null && rounds !== null)
    lines.fault("across", "Both a size and a number of rounds are given.", "Leave one of them out.")
  if (corners !== null && increases !== null)
    lines.fault(
      "increases",
      "A polygon's increases stand at its corners.",
      "Leave out Increases: or Corners:.",
    )
  if (!lines.sound) return null
  return lines.attempt(placesIn(lines), () =>
    circlePlan({
      stitches,
      gauge,
      terms,
      ...(acrossMm === null ? { rounds: rounds ?? usualRounds } : { acrossMm }),
      ...(corners === null ? {} : { corners }),
      ...(repeats === null ? {} : { repeats }),
      ...(increases === null ? {} : { increases }),
    }),
  )
}

function planOval(
  lines: RequestLines,
  { stitches }: PlannedStitches,
  gauge: Gauge,
  terms: Terms,
): CirclePlan | null {
  const chains = lines.whole("oval", bounds.oval, "number of chains")
  const longerByMm = lines.lengthMm("longer by")
  const rounds = lines.whole("rounds", bounds.rounds, "number of rounds") ?? usualRounds
  for (const name of ["across", "corners", "increases", "repeats"])
    if (lines.value(name) !== null)
      lines.fault(
        name,
        "This says nothing about an oval.",
        "Give Rounds:, and Oval: 20 (foundation chains) or Longer by: 8 cm.",
      )
  if (chains !== null && longerByMm !== null)
    lines.fault(
      "longer by",
      "Both the chains and the length of an oval are given.",
      "Leave out Oval: or Longer by:.",
    )
  if (stitches.length > 1)
    lines.fault("stitch", "An oval is planned in one stitch.", "Name a single stitch.")
  const wanted = longerByMm === null ? 0 : longerByMm / chainSize(gauge).lengthMm
  if (gauge.absolute && wanted > bounds.oval.most)
    lines.fault(
      "longer by",
      `That takes ${Math.round(wanted)} chains, more than ${bounds.oval.most}.`,
      "Plan a shorter piece.",
    )
  if (!lines.sound) return null
  return lines.attempt(placesIn(lines), () =>
    ovalPlan({
      stitch: stitches[0]!,
      gauge,
      terms,
      rounds,
      ...(chains === null ? {} : { chains }),
      ...(longerByMm === null ? {} : { longerByMm }),
    }),
  )
}

/** The line an error of planning is about. */
function placesIn(lines: RequestLines): ErrorPlaces {
  return (code) => {
    if (code === "bad-repeats") return "repeats"
    const sizes = ["across", "oval", "longer by", "rounds"]
    const size = sizes.find((name) => lines.value(name) !== null)
    return aboutSize.has(code) && size !== undefined ? size : "stitch"
  }
}

const aboutSize = new Set(["no-size", "bad-rounds", "bad-oval", "no-gauge"])

/** The gauge the cell gives; null when it gives none. Faults are told at their line. */
function readGauge(lines: RequestLines, swatch: string | undefined, terms: Terms): Gauge | null {
  const [hook, yarn] = [lines.value("hook"), lines.value("yarn")]
  if (swatch === undefined && hook === null && yarn === null) return null
  const { hookMm } = hook === null ? {} : readHeading("hook", hook, terms)
  if (hook !== null && hookMm === undefined)
    lines.fault("hook", `"${hook.slice(0, 40)}" is no hook size known here.`, "Such as Hook: 4 mm.")
  const named = yarn === null ? null : readHeading("yarn", yarn, terms)
  if (yarn !== null && named?.yarnWeight === undefined)
    lines.fault(
      "yarn",
      `"${yarn.slice(0, 40)}" names no yarn weight.`,
      "Write a weight from 0 to 7 or a trade name, such as Yarn: DK.",
    )
  const { swatches, problems } =
    swatch === undefined ? { swatches: [], problems: [] } : readGaugeLine(swatch, terms)
  if (swatch !== undefined && swatches.length === 0)
    lines.fault(
      "gauge",
      problems[0]?.message ?? `"${swatch.slice(0, 40)}" is no gauge.`,
      problems[0]?.hint ?? "Such as Gauge: 14 sc x 16 rows = 10 cm.",
    )
  const place = swatch !== undefined ? "gauge" : hook !== null ? "hook" : "yarn"
  return lines.attempt(place, () =>
    gaugeFrom({
      swatches,
      ...(hookMm && { hookMm: hookMm.value }),
      ...(named?.yarnWeight && { yarnWeight: named.yarnWeight.value }),
      ...(named?.threadSize && { threadSize: named.threadSize.value }),
      ...(named?.strands && { strands: named.strands.value }),
    }),
  )
}
