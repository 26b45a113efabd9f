// The published result of matching a piece to a size: stable keys, for other programs (`match --json`).

import type { Verdict } from "@roundwright/flatness"
import type { LengthUnit } from "../lengths.ts"
import type { HookAdvice } from "./hook-advice.ts"
import type { TriedHook } from "./tried-hooks.ts"

export type WayKind =
  | "leave"
  | "blocked"
  | "last-round"
  | "round-added"
  | "round-left-out"
  | "start"
  | "hook"

export interface Way {
  readonly kind: WayKind
  /** What to do, as an order. */
  readonly change: string
  /** What was asked for (side, across or diagonal), after it. */
  readonly sizeMm: number
  readonly verdict: Verdict
  /** Null for a round outline. */
  readonly bowMm: number | null
  readonly stitchesPerSide: number | null
  /** Yarn against that of the piece as it is: 0.08 = 8 % more. */
  readonly yarnChange: number
  /** Off the size asked for, as a share. */
  readonly off: number
  /** The rounds that differ, written out, where they can be. */
  readonly rounds: readonly string[]
  /** A sentence with all of it. */
  readonly text: string
}

/** What is to blame where the hook cannot be. */
export type Cause =
  | "terms"
  | "yarn"
  | "a round too many"
  | "a round too few"
  | "diagonal"
  | "the pattern"
  | "unknown"

/** What a maker knows beside the sizes. */
export interface KnownFacts {
  /** What differs between this piece and those it is to match: another yarn on the same hook, another pattern or way of working, nothing. */
  readonly changed?: "yarn" | "pattern" | "hook" | "nothing"
  /** The hook that was meant, mm, where another was in hand. */
  readonly meantHookMm?: number
  /** How the fabric comes out, or how one has to work to reach the size. */
  readonly fabric?: "tight" | "loose"
  /** Sizes that other hooks gave, measured alike. */
  readonly tried?: readonly TriedHook[]
}

export interface TestedCause {
  readonly cause: Exclude<Cause, "unknown" | "the pattern">
  /** What the size would be of what was asked for, if that were the cause. */
  readonly wouldBe: number
  /** How far that lies from the size to match, as a share. */
  readonly off: number
  readonly fits: boolean
  readonly text: string
}

export interface MatchResult {
  readonly target: {
    readonly mm: number
    readonly along: "side" | "across" | "diagonal"
    /** What lengths are told in. */
    readonly unit: LengthUnit
  }
  readonly now: {
    readonly sideMm: number | null
    readonly acrossMm: number
    readonly diagonalMm: number | null
    readonly verdict: Verdict
    readonly bowMm: number | null
    readonly stitchesPerSide: number | null
  }
  readonly ways: readonly Way[]
  /** Set where it is not the hook; null where a hook could do it. */
  readonly cause: Cause | null
  readonly causes: readonly TestedCause[]
  /** Size wished for over size now, and what is missing on each side of the middle, mm. */
  readonly factor: number
  readonly perSideMm: number
  /** Which hook to take if it is made anew; null where none is to be taken. */
  readonly hookAdvice: HookAdvice | null
  /** What the hook would have to be, mm; null where no hook is known. */
  readonly hookWantedMm: number | null
  /** The answer in a few sentences. */
  readonly text: string
  readonly notes: readonly string[]
}
