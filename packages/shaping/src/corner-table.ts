// Side against corner: for every stitch of the added rounds, how far the outline must still move out at its
// angle to reach the finished polygon, how far the stitch moves it, and what is left for the rounds after it.
//
// At angle t off the middle of a side the finished side stands a / cos t from the centre (a its distance), so
//   must = a / cos t - reach of the place below,  moves = reach of the top - reach of the place,
//   left = must - moves.
// Reaches are those of the laid-out shape, the mean of all 2k images of half a side.

import { ordinal } from "@roundwright/instructions"
import type { Element } from "@roundwright/motif"
import type { Gauge } from "@roundwright/stitches"
import { kindName } from "@roundwright/stitches"
import { feetOf } from "./feet.ts"
import type { HalfEdge } from "./half-edge.ts"
import { halfFromShape } from "./laid-half.ts"
import { type HalfPlan, type HalfShape, shapeAfter } from "./plan.ts"
import { type Proposal, workPlan } from "./proposal.ts"

export interface HeightRow {
  /** The round's printed number. */
  readonly round: number
  /** Place below, from the middle of the side (0) to the corner. */
  readonly place: number
  readonly stitch: string
  /** Which stitch of the written round it is, counted from its start: "4th st"; "ch after 4th st" for the chains of a corner. */
  readonly written: string
  /** Degrees off the middle of the side, 0 to 180 / k. */
  readonly angleDeg: number
  /** Centre to the place below and to the top, in the gauge's unit. */
  readonly fromMm: number
  readonly toMm: number
  readonly mustMm: number
  readonly movesMm: number
  readonly leftMm: number
}

/** One row for each stitch over half a side, and one for the chains of a corner, round after round, from the middle of the side to the corner. */
export function cornerTable(proposal: Proposal, gauge: Gauge): HeightRow[] {
  const { plan, shape, corners, palette } = proposal
  const line = shape.sideReachMm
  const rows: HeightRow[] = []
  let before: HalfEdge = plan.start
  let mirrored: HalfShape = plan.start.shape
  plan.rounds.forEach((round, index) => {
    const worked = workedUpTo(proposal, gauge, index + 1)
    const number = worked.motif.rounds.at(-1)!.number
    mirrored = shapeAfter(mirrored, round)
    const after = halfFromShape(
      {
        net: shape.net,
        xy: shape.xy,
        round: worked.motif.rounds.length - 1,
        places: feetOf(worked.motif, gauge),
        start: worked.start,
      },
      mirrored,
      corners,
    )
    const made = worked.motif.rounds.at(-1)!.elements
    const feet = feetOf(worked.motif, gauge)
    const tops = placesOfTops(round, before.shape)
    // The chains of a corner stand on the corner line, after the last stitch of the half.
    const chains = round.cornerChains > 0 ? [before.feet.length - 1] : []
    const all = [...tops, ...chains]
    all.forEach((place, top) => {
      const [from, to] = [before.feet[place]!, after.feet[top]!]
      const element = feet[(worked.start + top) % feet.length]!.element
      const angle = Math.atan2(to.y, to.x)
      const fromMm = Math.hypot(from.x, from.y)
      const toMm = Math.hypot(to.x, to.y)
      const mustMm = line / Math.cos(angle) - fromMm
      rows.push({
        round: number,
        place,
        stitch:
          top < tops.length
            ? kindName(palette.kinds[round.heights[top]!]!, palette.terms)
            : `ch ${round.cornerChains}`,
        written: placeInRound(made, element),
        angleDeg: (angle * 180) / Math.PI,
        fromMm,
        toMm,
        mustMm,
        movesMm: toMm - fromMm,
        leftMm: mustMm - (toMm - fromMm),
      })
    })
    before = after
  })
  return rows
}

/** "4th st", counted as the text counts; "ch after 4th st". */
function placeInRound(elements: readonly Element[], element: number): string {
  const before = elements.slice(0, element + 1).filter(({ type }) => type === "stitch").length
  const nth = `${ordinal(before)} st`
  return elements[element]?.type === "chain" ? `ch after ${nth}` : nth
}

function workedUpTo(proposal: Proposal, gauge: Gauge, rounds: number) {
  const { onto, plan, palette } = proposal
  const part = { ...plan, rounds: plan.rounds.slice(0, rounds) }
  return workPlan(onto.base, gauge, part, onto.start, onto.sides, palette)
}

/** The place below each top of the half. */
function placesOfTops(plan: HalfPlan, shape: HalfShape): number[] {
  const last = plan.tops.length - 1
  return plan.tops.flatMap((whole, i) => {
    const shared = (i === 0 && shape.midOn) || (i === last && shape.cornerOn)
    return Array.from({ length: shared ? (whole + 1) >> 1 : whole }, () => i)
  })
}
