// Gauge: how large a maker's stitches come out. Types only here are the contract; see below for how
// a gauge is made from swatches, yarn weight and hook, and how a size is read from it.

import type { StitchKind } from "./kinds.ts"

export type YarnWeight = 0 | 1 | 2 | 3 | 4 | 5 | 6 | 7

/** What a maker measured: one stitch's width, row height, or both, in mm. */
export interface Swatch {
  readonly kind: StitchKind
  readonly widthMm?: number
  readonly heightMm?: number
  /** Worked to and fro or round and round; absent when the text does not say. */
  readonly worked?: "rows" | "rounds"
}

/** All that is known of the maker's hand; everything may be absent. */
export interface GaugeInput {
  readonly swatches: readonly Swatch[]
  readonly yarnWeight?: YarnWeight
  /** Strands of the yarn worked as one, 2 for "held double"; one when absent. */
  readonly strands?: number
  readonly hookMm?: number
  /**
   * The hook that swatches and pieces were worked with, mm, where `hookMm` is another one: they are then brought to
   * `hookMm` as the yarn asks ("Hook: 4.5 mm instead of 4 mm").
   */
  readonly gaugeHookMm?: number
  /** No yarn is named: the hook, mm, whose usual yarn is meant, where that is not `hookMm`. */
  readonly yarnOfHookMm?: number
  /** Number of the crochet cotton, 10 for "size 10 thread". */
  readonly threadSize?: number
  /** Sizes stated or measured of the piece itself after some of its rounds. */
  readonly pieces?: readonly PieceSize[]
  /**
   * Width of one sc in mm where measured pieces tell it (a shape must be laid out for that, see
   * `gaugeFromPieces` of the package assessment); it goes before swatch, yarn and hook, which then tell proportions.
   */
  readonly scWidthMm?: number
  /**
   * How far the corners of the maker's own piece have turned against its first ones, degrees, positive in the direction
   * of work; measured by the maker.
   */
  readonly skewDeg?: number
  /**
   * How far a top sits to one side of its base, as a share of the stitch's width, between -1 and 1, in rounds that
   * are not turned: positive in the direction of work. Nothing leans where it is absent: it differs by hand and yarn
   * and was nowhere found in print. A shape must be laid out to find it from `skewDeg`, the turn that the maker
   * measured (see `gaugeFromPieces` of the package assessment).
   */
  readonly leanShare?: number
}

/** How large a piece is after some of its rounds. */
export interface PieceSize {
  /** Number of the round after which it was measured; "last" of the finished piece. */
  readonly round: number | "last"
  readonly mm: number
  /** Edge to edge (side to side, or the diameter), or from corner to corner. */
  readonly across: "sides" | "corners"
  /** Where the text says so: offsets in UTF-16 units; absent where no text did. */
  readonly place?: { readonly start: number; readonly end: number }
}

/** A gauge ready to be asked for sizes. Plain data, so it can be stored and shown. */
export interface Gauge {
  readonly source: "piece" | "swatch" | "yarn-and-hook" | "yarn" | "hook" | "none"
  /** False when nothing is known: then lengths are in widths of one sc, not mm. */
  readonly absolute: boolean
  /** Width of one sc in mm (1 when not absolute): the unit all defaults are scaled by. */
  readonly scWidthMm: number
  readonly input: GaugeInput
  /** Sentences for the user: where the sizes come from and what was assumed. */
  readonly notes: readonly string[]
}

export type Provenance = "swatch" | "published median" | "trade rule" | "extrapolated"

export interface StitchSize {
  /** Base to top, mm (or sc widths). */
  readonly heightMm: number
  /** Width of the top along the edge, mm (or sc widths). */
  readonly widthMm: number
  /** Relative standard deviation of height over width among makers, given what is known. */
  readonly ratioSpread: number
  readonly provenance: Provenance
  /** Where the figure is from, one short sentence. */
  readonly note: string
}
