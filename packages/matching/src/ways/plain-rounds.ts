// How many stitches the rounds of a plain shape have: k stitches more a round, flat where k is the turn over width of the stitch
// (6, 8, 12 and 18 for sc, hdc, dc and tr in a disc, 8 and 16 for a square of sc and dc: the trade's rule), groups for a granny, and
// an oval, which is a disc cut in two with a straight part between.

import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, sizeOf } from "@roundwright/stitches"
import { rectangleInRounds } from "../blanket/one-piece.ts"
import type { RowStitch } from "../border/foundation.ts"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export const roundShapes = ["circle", "square", "hexagon", "granny", "oval"] as const
export type RoundShape = (typeof roundShapes)[number]

/** Stitches more a round that lie flat. */
const moreEachRound: Readonly<
  Record<Exclude<RoundShape, "granny">, Readonly<Record<RowStitch, number>>>
> = {
  circle: { sc: 6, hdc: 8, dc: 12, tr: 18 },
  oval: { sc: 6, hdc: 8, dc: 12, tr: 18 },
  square: { sc: 8, hdc: 12, dc: 16, tr: 24 },
  hexagon: { sc: 6, hdc: 12, dc: 12, tr: 18 },
}

const mostRounds = 400

export interface PlainRounds {
  readonly counts: readonly number[]
  readonly text: string
  readonly lines: readonly string[]
}

/** @throws RoundwrightError `bad-count` */
export function plainRounds(
  shape: Exclude<RoundShape, "oval">,
  rounds: number,
  stitch: RowStitch,
): PlainRounds {
  if (!Number.isInteger(rounds) || rounds < 1 || rounds > mostRounds)
    throw new RoundwrightError("bad-count", `${rounds} rounds are not told here.`, {
      hint: `Give 1 to ${mostRounds}.`,
    })
  const each = shape === "granny" ? 12 : moreEachRound[shape][stitch]
  const counts = Array.from({ length: rounds }, (_, k) => each * (k + 1))
  const all = (each * rounds * (rounds + 1)) / 2
  const table = [`Round by round: ${shorten(counts)}.`]
  if (shape === "granny")
    return {
      counts,
      text: `A granny square of ${rounds} rounds has ${rounds} groups on each side, corners counted, and ${4 * rounds} groups (${12 * rounds} dc) in its last round; ${2 * rounds * (rounds + 1)} groups (${all} dc) in all. Each round adds one group to each side, 4 in all.`,
      lines: table,
    }
  const corners = { circle: 0, square: 4, hexagon: 6 }[shape]
  const side = corners === 0 ? "" : `, ${each / corners} more a side`
  const how =
    corners === 0
      ? "Round 2 puts 2 into each stitch, round 3 into every 2nd, round 4 into every 3rd, and so on."
      : `They go into the ${corners} corners.`
  return {
    counts,
    text: `A flat ${shape} of ${stitch} grows by ${each} a round${side}: round ${rounds} has ${each * rounds}, all rounds together ${all}. ${how} More than that ruffles, fewer cup; not the hook.`,
    lines: table,
  }
}

function shorten(counts: readonly number[]): string {
  return counts.length <= 14
    ? counts.join(", ")
    : `${counts.slice(0, 8).join(", ")}, ... ${counts.slice(-3).join(", ")}`
}

export interface OvalTold {
  readonly chainMm: number
  readonly rounds: number | null
  readonly text: string
}

/** An oval of a length and a width: the chain it begins with, the rounds, the increases. */
export function ovalOf(
  sides: readonly [number, number],
  stitch: RowStitch,
  gauge: Gauge,
  unit: LengthUnit = "cm",
): OvalTold {
  const tell = (mm: number) => lengthWords(mm, unit)
  const each = moreEachRound.oval[stitch]
  const sizes = gauge.absolute ? sizeOf({ basic: stitch }, gauge, { turned: false }) : null
  const { firstRowMm: chainMm, rounds } = rectangleInRounds(sides, sizes?.heightMm ?? null)
  const chains = sizes === null ? null : Math.max(1, Math.round(chainMm / sizes.widthMm))
  const counts =
    rounds === null || chains === null
      ? " Add the gauge (--gauge '16 sc = 4 in') or yarn and hook for counts."
      : ` That is ${chains} stitches between the ends and ${rounds} rounds; round 1 has ${2 * chains + each}, round ${rounds} ${2 * chains + each * rounds}.`
  return {
    chainMm,
    rounds,
    text: `An oval keeps the difference of its sides: begin with a row of ${tell(chainMm)}, the length less the width, and work round both its edges. The two ends together are a disc: ${each} ${stitch} more in every round, ${each / 2} at each end, none along the straight part.${counts}`,
  }
}
