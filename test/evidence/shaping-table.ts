// Squaring any circle: flat discs of N stitches in dc and in sc at the default gauge, given 4, 6 and 8 corners in
// two or three rounds; the first proposal of each, none other, as the net lays it out. Nothing is fitted on these.

import { layOut } from "@roundwright/relaxation"
import { discEndingAt, type Proposal, squareCircle } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"

export interface SquaringRow {
  readonly stitch: "dc" | "sc"
  readonly count: number
  readonly corners: number
  readonly rounds: number
  /** Shares of the side. */
  readonly bow: number
  readonly uneven: number
  readonly angleOffDeg: number
  readonly fullness: number
  readonly verdict: string
  readonly stitchKinds: readonly string[]
  readonly meets: boolean
}

/** What a proposal has to meet: bow under 2 % of the side, corners within 3 degrees, flat or blocks flat. */
export const squaringTarget = { bow: 0.02, angleDeg: 3 } as const

export interface SquaringChoice {
  readonly stitches?: readonly ("dc" | "sc")[]
  readonly from?: number
  readonly to?: number
  readonly step?: number
  readonly corners?: readonly number[]
  /** Judge the best proposal in space too, on a table: ten times slower. */
  readonly inSpace?: boolean
}

/** Rows for every count; two rounds first, three where two do not meet the target. */
export function squaringTable(choice: SquaringChoice = {}): SquaringRow[] {
  const rows: SquaringRow[] = []
  for (const stitch of choice.stitches ?? (["dc", "sc"] as const))
    for (let count = choice.from ?? 8; count <= (choice.to ?? 60); count += choice.step ?? 1)
      for (const corners of choice.corners ?? [4, 6, 8])
        rows.push(bestSquaring(stitch, count, corners, choice.inSpace === true))
  return rows
}

function bestSquaring(
  stitch: "dc" | "sc",
  count: number,
  corners: number,
  inSpace: boolean,
): SquaringRow {
  const gauge = gaugeFrom({ swatches: [] })
  const motif = discEndingAt({ basic: stitch }, count, gauge)
  const tried = [2, 3].map((rounds) => () => {
    const [first] = squareCircle(motif, gauge, { corners, rounds })
    const row = rowOf(stitch, count, rounds, first!)
    if (!inSpace) return row
    const { verdict } = layOut(first!.motif, gauge)
    return { ...row, verdict, meets: row.meets && liesOrBlocks(verdict) }
  })
  const two = tried[0]!()
  if (two.meets) return two
  const three = tried[1]!()
  return three.meets || Math.abs(three.bow) < Math.abs(two.bow) ? three : two
}

function rowOf(
  stitch: "dc" | "sc",
  count: number,
  rounds: number,
  proposal: Proposal,
): SquaringRow {
  const { shape, corners, verdict } = proposal
  const bow = shape.bowMm / shape.sideMm
  const angleOffDeg = shape.cornerAngleDeg - (180 - 360 / corners)
  return {
    stitch,
    count,
    corners,
    rounds,
    bow,
    uneven: shape.unevenMm / shape.sideMm,
    angleOffDeg,
    fullness: shape.fullness,
    verdict,
    stitchKinds: proposal.stitchKinds,
    meets:
      Math.abs(bow) < squaringTarget.bow &&
      Math.abs(angleOffDeg) <= squaringTarget.angleDeg &&
      liesOrBlocks(verdict),
  }
}

function liesOrBlocks(verdict: string): boolean {
  return verdict === "flat" || verdict === "blocks-flat"
}
