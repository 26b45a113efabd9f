// A part of a round as it is written, how freely it is worded, and what has no plain wording.

import type { PicotElement, Round } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { ordinal } from "../base/wording.ts"
import type { Voice } from "./house-style.ts"

export interface Part {
  readonly text: string
  /** "dc in next st": several alike become "dc in next 3 sts". */
  readonly each?: { readonly work: string; readonly several: string; readonly many: boolean }
}

/** How a round may be told. The first that reads back to the same round is taken; each next one says less. */
export interface Wording {
  /** "dc in each st around, working ... in each corner sp" for sides and corners that are all alike. */
  readonly sides: boolean
  /** "rep from * around" rather than how often. */
  readonly around: boolean
  /** "next corner ch-2 sp", "next st (corner)", or no word of it. */
  readonly corners: "named" | "aside" | "none"
  readonly totals: "by-kind" | "together"
  /** Where the round starts is said: "same st as join". */
  readonly start: boolean
  /** What the join goes into. */
  readonly joinInto: boolean
  /** Repeats; without them every place is told by itself. */
  readonly repeats: boolean
}

const full: Wording = {
  sides: false,
  around: true,
  corners: "named",
  totals: "by-kind",
  start: true,
  joinInto: true,
  repeats: true,
}

/** From the fullest wording to the barest. */
export const wordings: readonly Wording[] = [
  { ...full, sides: true },
  full,
  { ...full, corners: "aside" },
  { ...full, totals: "together" },
  { ...full, around: false },
  { ...full, around: false, corners: "aside" },
  { ...full, corners: "none" },
  { ...full, around: false, corners: "none", totals: "together" },
  { ...full, around: false, corners: "none", totals: "together", joinInto: false },
  { ...full, around: false, corners: "none", totals: "together", start: false },
  { ...full, around: false, corners: "none", totals: "together", start: false, joinInto: false },
  {
    ...full,
    around: false,
    corners: "none",
    totals: "together",
    start: false,
    joinInto: false,
    repeats: false,
  },
]

/** "picot of ch 3"; "ch 5, dc in 5th ch from hook" for a loop closed by a taller stitch. */
export function picotText({ chains, closedWith }: PicotElement, voice: Voice): string {
  if (closedWith === undefined) return `picot of ch ${chains}`
  return `ch ${chains}, ${voice.name(closedWith)} in ${ordinal(chains)} ch from hook`
}

export function cannot(round: Round, why: string): RoundwrightError {
  return new RoundwrightError(
    "cannot-be-written",
    `Round ${round.number} ${why}, which has no plain wording.`,
    { hint: "Write this round by hand.", numbers: { round: round.number } },
  )
}
