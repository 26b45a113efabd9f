// What a round being worked is made of: where the hook is, what is shared with other rounds, a mark to go back to.

import type { Anchor, Centre, Element, Round } from "@roundwright/motif"
import type { CountsAs } from "../base/tree.ts"
import type { Edge } from "../edge/edge.ts"
import type { Site } from "../edge/site.ts"
import type { OpenRepeat, WholeTimes } from "./repeats-made.ts"

export type Use = "worked" | "skipped" | "slipped"

/** One edge worked into, with where the hook is on it. */
export interface Position {
  readonly edge: Edge
  at: number
  /** Where the walk round it began. */
  base: number
}

/** What all rounds of a text share. */
export interface Shared {
  readonly rounds: readonly Round[]
  readonly centre: Centre | null
  /** Steps left for the whole text, counted down by all readings of it. */
  readonly budget: { stepsLeft: number }
  /** Said once for the whole pattern: whether starting chains count, by their chains (0 for all). */
  readonly startCounts: ReadonlyMap<number, CountsAs>
  /** What earlier rounds said of their own starting chain, by its number of chains. */
  readonly saidCounts: ReadonlyMap<number, CountsAs>
}

/** The chain being worked back along: its element, and the next of its chains, counted from 0 at its foot. */
export interface OwnChain {
  readonly element: number
  next: number
}

/** What steps change besides places and elements; put back whole with a mark. */
export interface Modes {
  readonly currentRound: number | null
  readonly inPlace: readonly Anchor[] | null
  readonly loops: "front" | "back" | "third" | undefined
  readonly passes: "behind" | "front" | undefined
  readonly modeRound: number | undefined
  readonly turned: boolean
  readonly joined: boolean
  readonly joinChain: number | undefined
  readonly startChain: { chains: number; counts: boolean } | undefined
  readonly between: number
  readonly firstSide: number | null
  readonly pendingLeg: { readonly chains: number; readonly anchors: readonly Anchor[] } | null
  readonly picked: boolean
  readonly chainsNamed: boolean
  readonly gapsForSpaces: boolean
  readonly openRepeat: OpenRepeat | null
  readonly wholeTimes: WholeTimes | null
  readonly mainRepeats: number
  readonly madeBeforeRepeat: boolean
  readonly chainsMade: number
}

/** A copy of them. */
export function modesOf(from: Modes): Modes {
  return {
    currentRound: from.currentRound,
    inPlace: from.inPlace,
    loops: from.loops,
    passes: from.passes,
    modeRound: from.modeRound,
    turned: from.turned,
    joined: from.joined,
    joinChain: from.joinChain,
    startChain: from.startChain,
    between: from.between,
    firstSide: from.firstSide,
    pendingLeg: from.pendingLeg,
    picked: from.picked,
    chainsNamed: from.chainsNamed,
    gapsForSpaces: from.gapsForSpaces,
    openRepeat: from.openRepeat,
    wholeTimes: from.wholeTimes,
    mainRepeats: from.mainRepeats,
    madeBeforeRepeat: from.madeBeforeRepeat,
    chainsMade: from.chainsMade,
  }
}

export interface Mark {
  readonly modes: Modes
  readonly at: number
  readonly base: number
  readonly startSite: Site | null
  readonly startPassed: boolean
  readonly skippedFirst: number
  readonly made: number
  readonly used: number
  readonly current: Site | null
  readonly startTaken: boolean
  readonly others: readonly (readonly [number, number])[]
  readonly lastChain: Element | null
  readonly skipsMet: number
  readonly findings: number
  readonly own: OwnChain | null
  readonly overLoops: boolean
}
