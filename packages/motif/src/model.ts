// The worked piece as data: the one model that reading, the ledger, the net, the inverse and the
// drawings share. It says what was made and what each thing was worked into, not how it was written.
//
// A motif is a centre and a list of rounds. A round is the list of its elements in working order,
// and every stitch knows its anchors: the places it was worked into. Rounds and elements are named
// by their index from 0; the number a text gives a round is kept in `number`.

import type { StitchKind } from "@roundwright/stitches"

export interface Motif {
  readonly title?: string
  readonly centre: Centre
  readonly rounds: readonly Round[]
}

/** What the first round is worked into. */
export type Centre =
  /** A loop that is drawn shut: no hole. */
  | { readonly kind: "adjustable-ring" }
  /** `chains` chains joined into a ring: a hole whose edge is that many chains long. */
  | { readonly kind: "chain-ring"; readonly chains: number }
  /** All of round 1 worked into one chain (2nd, 4th ... from the hook): no hole. */
  | { readonly kind: "single-chain"; readonly chains: number }
  /** Worked over a cord or a bought ring; the diameter is known only if the text gives it. */
  | { readonly kind: "solid-ring"; readonly diameterMm?: number }

export interface Round {
  /** The number the text gives the round (1 for the first). */
  readonly number: number
  readonly elements: readonly Element[]
  /** True when the work was turned before this round, so that it runs the other way. */
  readonly turned: boolean
  /** How the round ends: slip-stitched to its start, spiralling on, or left open (a row). */
  readonly closing: "joined" | "spiral" | "open"
  /** The chain at its start. One that counts is also the round's first stitch (`madeOfChains`). */
  readonly startChain?: { readonly chains: number; readonly counts: boolean }
}

export type Element = StitchElement | ChainElement | PicotElement

/** One top on the edge of the round: a stitch, or several legs gathered into one top. */
export interface StitchElement {
  readonly type: "stitch"
  readonly kind: StitchKind
  /** Where each leg is worked; one entry for a plain stitch, one per leg for a gathered one. */
  readonly anchors: readonly Anchor[]
  /** Set when a starting chain of that many chains stands for this stitch. */
  readonly madeOfChains?: number
  /** The post passes behind or in front of the rounds between it and its anchor. */
  readonly passes?: "behind" | "front"
  /** Part of a layer that stands free in front of the ground, which goes on behind it: petals. No part of the round's edge. */
  readonly free?: true
}

/** A run of chains between two tops. When later work goes round it, it is a chain space. */
export interface ChainElement {
  readonly type: "chain"
  readonly chains: number
  /** A stitch that stands for the last chains of the round's last space (ch 2 and dc for ch 5). */
  readonly closedWith?: StitchKind
  /** As of a stitch. */
  readonly free?: true
}

/**
 * A small closed loop of chains standing on the top before it. Closed by a slip stitch or an sc it adds nothing to the
 * edge; by a taller stitch the next top begins at the head of that stitch.
 */
export interface PicotElement {
  readonly type: "picot"
  readonly chains: number
  /** The stitch into the first of the chains that closes the loop, where it is taller than an sc. */
  readonly closedWith?: StitchKind
}

/** A place on an earlier round that a leg is worked into. `round` and `element` are indices from 0. */
export type Anchor =
  /** Into the ring or chain at the centre; `chain` (from 0) when worked chain by chain. */
  | { readonly at: "centre"; readonly chain?: number }
  /** Into the top, loop or post of a stitch. */
  | { readonly at: "stitch"; readonly round: number; readonly element: number }
  /** Round a run of chains, under all of it. */
  | { readonly at: "space"; readonly round: number; readonly element: number }
  /** Into one chain of a run, `chain` from 0. */
  | {
      readonly at: "chain"
      readonly round: number
      readonly element: number
      readonly chain: number
    }
  /** Into a picot. */
  | { readonly at: "picot"; readonly round: number; readonly element: number }
  /** Between element `element` and the one after it (cyclically). */
  | { readonly at: "between"; readonly round: number; readonly element: number }
