// Squaring one circle after another: for each count of a range, a flat disc that ends with it and the best
// rounds that give it straight sides, with what is left of bow. Each takes about a second.

import type { Verdict } from "@roundwright/flatness"
import { countRound } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { discEndingAt, readStitchList, squareCircle } from "@roundwright/shaping"
import { gaugeFrom, kindName, type Terms } from "@roundwright/stitches"
import type { Report } from "./problems.ts"
import { readRequestLines } from "./request-lines.ts"
import { optionsFor, type SquaringWishes } from "./squaring.ts"
import { bothTerms, readWishes, wishExample, wishLines } from "./squaring-request.ts"
import type { WrittenCell } from "./written-cell.ts"

export interface TransitionsRequest extends SquaringWishes {
  /** Counts of the circles. */
  readonly counts: readonly number[]
  /** What the circles are worked in. */
  readonly circle: string
  /** In which stitches are named and told of. */
  readonly terms: Terms
}

/** The best transition of one circle. */
export interface Transition {
  readonly count: number
  /** Stitches of each added round. */
  readonly rounds: readonly number[]
  readonly stitchKinds: readonly string[]
  /** Share of the side; above 0 the side bows outwards. */
  readonly bow: number
  readonly bowMm: number
  readonly sideMm: number
  readonly cornerAngleDeg: number
  readonly verdict: Verdict
}

export interface TransitionsResult {
  readonly transitions: readonly Transition[]
  /** Circles for which nothing was found, and why. */
  readonly unsolved: readonly { readonly count: number; readonly why: string }[]
}

/** Yarn and hook of the circles: bow as a share of the side hardly depends on them. */
const yarn = { yarnWeight: 3, hookMm: 4 } as const

/** A side bowed by less than this share of its length passes for straight. */
export const straightBow = 0.02

const usualCounts = { from: 12, to: 40, every: 4 } as const
const usualCircle = { basic: "dc" } as const
const countBounds = { least: 6, most: 60 } as const
/** With more, thirty circles would take minutes. */
const roundBounds = { least: 1, most: 3 } as const
const stepBounds = { least: 1, most: 20 } as const
/** More would take minutes. */
const mostCircles = 30

/** Reads the cell. @returns null when something said cannot be used, reported */
export function readTransitions(cell: WrittenCell, report: Report): TransitionsRequest | null {
  const lines = readRequestLines(
    cell,
    ["from", "to", "every", "circle", ...wishLines, "terms"],
    `From: 12, To: 40, Every: 4, Circle: dc, ${wishExample}, or Terms: UK`,
    report,
  )
  const terms = lines.oneOf("terms", bothTerms) ?? "US"
  const from = lines.whole("from", countBounds, "first count") ?? usualCounts.from
  const to = lines.whole("to", countBounds, "last count") ?? usualCounts.to
  const every = lines.whole("every", stepBounds, "step from count to count") ?? usualCounts.every
  const circle = lines.oneStitch("circle", terms) ?? kindName(usualCircle, terms)
  const wishes = readWishes(lines, terms, roundBounds)
  if (lines.sound && to < from)
    lines.fault("to", "The last count is below the first.", "Give the smaller one first.")
  const counts: number[] = []
  for (let count = from; count <= to; count += every) counts.push(count)
  if (lines.sound && counts.length > mostCircles)
    lines.fault(
      "to",
      `That is ${counts.length} circles, more than ${mostCircles}.`,
      "Take a shorter range, or a larger step with Every: 2.",
    )
  return lines.sound ? { ...wishes, counts, circle, terms } : null
}

export function transitionsKey(request: TransitionsRequest): string {
  return JSON.stringify(request)
}

/** Squares every circle. Never throws on a request that was read. */
export function squareCircles(request: TransitionsRequest): TransitionsResult {
  const gauge = gaugeFrom({ swatches: [], ...yarn })
  const { terms } = request
  const kind = readStitchList(request.circle, terms)[0]!
  const options = { ...optionsFor(request, terms), terms, proposals: 1 }
  const transitions: Transition[] = []
  const unsolved: { count: number; why: string }[] = []
  for (const count of request.counts) {
    try {
      const disc = discEndingAt(kind, count, gauge)
      const best = squareCircle(disc, gauge, options)[0]
      if (!best) continue
      const { bowMm, sideMm, cornerAngleDeg } = best.shape
      transitions.push({
        count,
        rounds: best.motif.rounds.slice(best.from).map((round) => countRound(round).stitches),
        stitchKinds: best.stitchKinds,
        bow: bowMm / sideMm,
        bowMm,
        sideMm,
        cornerAngleDeg,
        verdict: best.verdict,
      })
    } catch (error) {
      if (!(error instanceof RoundwrightError)) throw error
      unsolved.push({ count, why: error.message })
    }
  }
  return { transitions, unsolved }
}
