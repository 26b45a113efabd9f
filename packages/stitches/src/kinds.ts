// What a stitch is, apart from its size: the basic stitch that carries the height, the loops or the
// post it is worked round, and whether several legs are gathered into one top. US names throughout.

/** Basic stitches, lowest first. `esc`, `ehdc`, `edc`, `etr` are the extended forms (one more pull-through). */
export const basicStitches = [
  "sl st",
  "sc",
  "esc",
  "hdc",
  "ehdc",
  "dc",
  "edc",
  "tr",
  "etr",
  "dtr",
  "trtr",
  "quadtr",
  "quintr",
] as const

export type BasicStitch = (typeof basicStitches)[number]

/** How several legs come to share one top. `together` spans several places (a decrease). */
export type Gathering = "together" | "cluster" | "puff" | "bobble" | "popcorn"

export interface StitchKind {
  readonly basic: BasicStitch
  /** Worked into one loop only; absent means both. `third` is the bar behind a hdc. */
  readonly loops?: "front" | "back" | "third"
  /** Worked round the post of the stitch below; absent means into its top. */
  readonly post?: "front" | "back"
  /** Several legs closed into one top; absent means a single leg. */
  readonly gathered?: { readonly how: Gathering; readonly legs: number }
}

/** Which set of names a text uses. A US dc is a UK tr. */
export type Terms = "US" | "UK"
