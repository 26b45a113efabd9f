// One small change of a piece, as the changed piece and in words.

import { countRound, type Motif, type Round } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"

export type MendKind = "count" | "stitch" | "chains" | "drop-round" | "add-round"

export interface MendChange {
  readonly kind: MendKind
  /** Index of the round that is changed first. */
  readonly round: number
  readonly words: string
  readonly motif: Motif
  /** Stitches made otherwise than before; those that only follow along are not counted. */
  readonly altered: number
  /** For counts: stitches of the round after the change, and whether later rounds keep theirs. */
  readonly count: number | null
  readonly keeps: boolean
}

/** The stitch most of a round is made of; sc for a round of chains alone. */
export function mainKind(round: Round): StitchKind {
  const { byKind } = countRound(round)
  const main = byKind.reduce<{ kind: StitchKind; count: number }>(
    (best, entry) => (entry.count > best.count ? entry : best),
    { kind: { basic: "sc" }, count: 0 },
  )
  return main.kind
}
