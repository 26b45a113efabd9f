// What a squaring is asked to reach: sides that bow by less than 2 % of their length, corners within 3 degrees of the
// polygon's, and a piece that lies or blocks flat. Two judges look: the proposal's own measure, which knows
// where its corners stand and tells the worst side and corner; and the outline as a check of the finished piece reads
// it, corners and all. A proposal on which both agree with the target comes first.

import { severityOf } from "@roundwright/flatness"
import type { Proposal } from "./proposal.ts"
import { sideSpread, squaringTarget } from "./squaring-target.ts"

/** Beyond `blocks-flat` no pinning out makes a piece of it. */
const blocksFlat = 1

/** 0 = both judges find the target met, 1 = the proposal's own measure does, 2 = it lies or blocks flat at least, 3 = it does not. */
export function distanceFromTarget(proposal: Proposal): 0 | 1 | 2 | 3 {
  const { shape, verdict } = proposal
  if (severityOf(verdict) > blocksFlat) return 3
  if (!meets(proposal, shape.bowMm / shape.sideMm, shape.cornerAngleDeg)) return 2
  if (sideSpread(shape.sides) > squaringTarget.sideSpread) return 2
  const { asChecked } = shape
  const agreed =
    asChecked.corners === proposal.corners &&
    asChecked.cornerAngleDeg !== null &&
    meets(proposal, asChecked.bow, asChecked.cornerAngleDeg) &&
    severityOf(proposal.ledger.verdict) <= blocksFlat &&
    proposal.ledger.rows.at(-1)?.outline.corners === proposal.corners
  return agreed ? 0 : 1
}

function meets({ corners }: Proposal, bow: number, cornerAngleDeg: number): boolean {
  return (
    Math.abs(bow) < squaringTarget.bow &&
    Math.abs(cornerAngleDeg - (180 - 360 / corners)) <= squaringTarget.angleDeg
  )
}
