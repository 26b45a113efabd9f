// A part of a round as it is written, and what has no plain wording.

import type { PicotElement, Round } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { kindName, type Terms } from "@roundwright/stitches"
import { ordinal } from "../base/wording.ts"

export interface Part {
  readonly text: string
  /** "dc in next st": several alike become "dc in next 3 sts". */
  readonly each?: { readonly work: string; readonly several: string; readonly many: boolean }
}

/** "picot of ch 3"; "ch 5, dc in 5th ch from hook" for a loop closed by a taller stitch. */
export function picotText({ chains, closedWith }: PicotElement, terms: Terms): string {
  if (closedWith === undefined) return `picot of ch ${chains}`
  return `ch ${chains}, ${kindName(closedWith, terms)} in ${ordinal(chains)} ch from hook`
}

export function cannot(round: Round, why: string): RoundwrightError {
  return new RoundwrightError(
    "cannot-be-written",
    `Round ${round.number} ${why}, which has no plain wording.`,
    { hint: "Write this round by hand.", numbers: { round: round.number } },
  )
}
