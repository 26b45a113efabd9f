// A found plan as a proposal: worked onto the motif, laid out, judged, and told in words.

import { keepLedger, type Ledger, type Verdict } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import type { Gauge } from "@roundwright/stitches"
import { feetOf } from "./feet.ts"
import { measureProposal, type ProposalShape } from "./measure-proposal.ts"
import type { Palette } from "./palette.ts"
import { type HalfShape, shapeAfter } from "./plan.ts"
import { easeOf } from "./plan-score.ts"
import { costWords, kindsUsed, notesOn } from "./proposal-words.ts"
import { scoreOf } from "./score.ts"
import type { FoundPlan } from "./search.ts"
import { type Ground, type SidePlan, workRound } from "./work-plan.ts"

export interface Proposal {
  /** The whole piece, the rounds it started from included. */
  readonly motif: Motif
  /** Index of the first added round. */
  readonly from: number
  readonly corners: number
  readonly shape: ProposalShape
  readonly ledger: Ledger
  readonly verdict: Verdict
  /** Names of the stitches the added rounds use, lowest first. */
  readonly stitchKinds: readonly string[]
  /** 0 is perfect; how it is made up stands in score.ts. By the laid-out shape, and by the fast model. */
  readonly score: number
  readonly modelScore: number
  /** How sides of unequal counts are evened out, in words; empty where every side is alike. */
  readonly changes: readonly string[]
  /** The half side that was planned, for the table of side and corner heights. */
  readonly plan: FoundPlan
  /** What the plan was worked onto, the place at which its first side begins, and the sides. */
  readonly onto: {
    readonly base: Motif
    readonly start: number
    readonly sides: readonly SidePlan[]
  }
  /** Stitches the search could use. */
  readonly palette: Palette
  readonly notes: readonly string[]
}

/** The motif with a found plan worked onto it. */
export function workPlan(
  motif: Motif,
  gauge: Gauge,
  plan: FoundPlan,
  start: number,
  sides: readonly SidePlan[],
  palette: Palette,
): Ground {
  let ground: Ground = {
    motif,
    anchors: feetOf(motif, gauge).map((foot) => foot.anchor),
    start,
    corners: [],
  }
  let shape: HalfShape = plan.start.shape
  let around: readonly SidePlan[] = sides
  for (const round of plan.rounds) {
    ground = workRound(ground, shape, round, around, palette)
    shape = shapeAfter(shape, round)
    const feet = ground.anchors.length / sides.length
    around = sides.map(() => ({ feet, evening: "none" }))
  }
  return ground
}

export function propose(
  ground: Ground,
  from: number,
  gauge: Gauge,
  plan: FoundPlan,
  palette: Palette,
  changes: readonly string[],
  onto: Proposal["onto"],
): Proposal {
  const { motif } = ground
  const corners = ground.corners.length
  const shape = measureProposal(motif, gauge, ground.corners, from)
  const ledger = keepLedger(motif, gauge)
  return {
    motif,
    from,
    corners,
    shape,
    ledger,
    verdict: shape.judged.verdict,
    stitchKinds: kindsUsed(plan.rounds, palette),
    score: scoreOf({
      ...easeOf(plan.rounds),
      bow: shape.bowMm / shape.sideMm,
      uneven: shape.unevenMm / shape.sideMm,
      angleOffDeg: shape.cornerAngleDeg - (180 - 360 / corners),
      fullnessOff: shape.fullness - 1,
      strainEnergy: shape.strainEnergy,
    }),
    modelScore: plan.score,
    changes: changes.length === 0 ? [] : [...changes, costWords(shape, corners)],
    plan,
    onto,
    palette,
    notes: notesOn(
      plan.rounds,
      palette,
      { ...motif, rounds: motif.rounds.slice(0, from) },
      corners,
      shape,
      shape.judged.verdict,
    ),
  }
}
