// A found plan as a proposal: worked onto the motif, laid out, judged, and told in words.

import { keepLedger, type Ledger, type Verdict } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import type { Gauge } from "@roundwright/stitches"
import type { FabricName } from "./fabric/fabric-of.ts"
import { feetOf } from "./feet.ts"
import { measureProposal, type ProposalShape } from "./measure-proposal.ts"
import type { Palette } from "./palette.ts"
import { type HalfShape, shapeAfter } from "./plan.ts"
import type { Ease } from "./plan-score.ts"
import { costWords, kindsUsed, notesOn, priceWords } from "./proposal-words.ts"
import { scoreOf } from "./score.ts"
import type { FoundPlan } from "./search.ts"
import { type Ground, type SidePlan, workRound } from "./work-plan.ts"

export interface Proposal {
  /** The whole piece, the rounds it started from included. */
  readonly motif: Motif
  /** Index of the first added round. */
  readonly from: number
  readonly corners: number
  /** Elements of the last round that stand on each corner. */
  readonly cornerElements: readonly (readonly number[])[]
  /** What tells it from the other proposals, in a few words: "In lace", "Softest corner". */
  readonly idea: string
  readonly fabric: FabricName
  /** What it costs to work, in words. */
  readonly price: string
  readonly shape: ProposalShape
  readonly ledger: Ledger
  readonly verdict: Verdict
  /** Names of the stitches the added rounds use, lowest first. */
  readonly stitchKinds: readonly string[]
  /** 0 is perfect; how it is made up stands in score.ts. By the laid-out shape. */
  readonly score: number
  /** How sides of unequal counts are evened out, in words; empty where every side is alike. */
  readonly changes: readonly string[]
  /** For rounds of single stitches: the half side that was planned and the places it was worked onto. */
  readonly plan?: FoundPlan
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

/** What a proposal is made of before it is judged. */
export interface Draft {
  readonly motif: Motif
  readonly from: number
  /** Elements of the last round that stand on each corner. */
  readonly corners: readonly (readonly number[])[]
  readonly idea: string
  readonly fabric: FabricName
  readonly palette: Palette
  readonly changes: readonly string[]
  readonly plan?: FoundPlan
  /** The whole piece, where the motif stands in for it. */
  readonly restore: (worked: Motif) => Motif
}

/** @param ease what makes it easy to follow, for its score */
export function propose(
  draft: Draft,
  gauge: Gauge,
  ease: Ease & { readonly kinds: number },
  laid?: ProposalShape,
): Proposal {
  const { motif, from, palette, changes, plan } = draft
  const corners = draft.corners.length
  const shape = laid ?? measureProposal(motif, gauge, draft.corners, from)
  return {
    motif,
    from,
    corners,
    cornerElements: draft.corners,
    idea: draft.idea,
    fabric: draft.fabric,
    price: priceWords(motif, from, draft.fabric, draft.corners),
    shape,
    ledger: keepLedger(draft.restore(motif), gauge),
    verdict: shape.judged.verdict,
    stitchKinds: kindsUsed(motif, from, palette),
    score: scoreOf({
      ...ease,
      bow: shape.bowMm / shape.sideMm,
      uneven: draft.fabric === "solid" ? shape.unevenMm / shape.sideMm : 0,
      angleOffDeg: shape.cornerAngleDeg - (180 - 360 / corners),
      fullnessOff: shape.fullness - 1,
      strainEnergy: shape.strainEnergy,
    }),
    changes: changes.length === 0 ? [] : [...changes, costWords(shape, corners)],
    ...(plan === undefined ? {} : { plan }),
    palette,
    notes: notesOn(motif, from, palette, corners, shape, shape.judged.verdict),
  }
}
