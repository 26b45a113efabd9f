// What is seen of a ring when rounds are rebuilt from it.

import type { BasicStitch } from "@roundwright/stitches"

export interface SeenCount {
  readonly count: number
  /** Chance that this is the number of posts, before anything else is known. */
  readonly chance: number
}

export interface SeenRing {
  /** Number of the ring, from 1 at the centre. */
  readonly ring: number
  /** Radius to the middle of a side, mm. */
  readonly outerMm: number
  /** What the picture says of the count; empty where the ring could not be read. */
  readonly counts: readonly SeenCount[]
  /** The stitch, where a close look told it. */
  readonly stitch?: BasicStitch | undefined
}

/** Stitches that a round of a ring may be of. */
export const rebuildKinds = ["sc", "hdc", "dc", "tr", "dtr"] as const
export type RebuildKind = (typeof rebuildKinds)[number]

/** One way to work a ring. */
export interface RoundChoice {
  /** Kinds of its rounds from inside: one, two where the ring holds two rounds, none where it is a part of the next. */
  readonly kinds: readonly RebuildKind[]
  readonly count: number
  /** Chains between one post and the next; 0 in solid rounds. */
  readonly chains: number
  /** Natural logarithm of how likely it is by itself, before the radius is looked at. */
  readonly prior: number
  /** Depth that its posts (and arches) have when nothing pulls at them, mm. */
  readonly depthMm: number
}
