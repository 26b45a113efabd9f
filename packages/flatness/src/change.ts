// A change to a round that a remedy proposes, as data, so that it can be applied and judged again.

import type { StitchKind } from "@roundwright/stitches"

export type ElementChange =
  /** Work the round with another count, spread over its repeats; later rounds follow along, or keep their own counts. */
  | { readonly kind: "count"; readonly stitches: number; readonly keeps?: true }
  /** From this round on every round has so many stitches more than the one before it. */
  | { readonly kind: "increase"; readonly perRound: number }
  /** Work the round in another stitch, or what of it is worked in `from`. */
  | { readonly kind: "stitch"; readonly to: StitchKind; readonly from?: StitchKind }
  /** Work `to` stitches where the round has `from` of a kind side by side in one place; later rounds follow along. */
  | { readonly kind: "group"; readonly from: number; readonly to: number }
  /** Every stitch of the piece one step taller (1) or shorter (-1), as where terms were mistaken for the other ones. */
  | { readonly kind: "terms"; readonly by: 1 | -1 }
  /** Make every chain run of `from` chains `to` chains long. */
  | { readonly kind: "chains"; readonly from: number; readonly to: number }
  /** Use another hook from this round on. */
  | { readonly kind: "hook"; readonly toMm: number }
  /** Leave the round out; the rounds after it close up. */
  | { readonly kind: "drop-round" }
  /** Work one more round over this one, a stitch in each stitch and chain. */
  | { readonly kind: "add-round" }
  /** Change nothing: what is off has worked itself out by this round. */
  | { readonly kind: "leave" }
  /** Change nothing: with stitches so many times as tall for their width, by another hand, hook or yarn, it is flat. */
  | { readonly kind: "hand"; readonly taller: number }
  /** Change nothing and pin it out. */
  | { readonly kind: "block" }
