// What is asked of the work of a round, and what comes of it.

import type { Round } from "@roundwright/motif"
import type { Comparison } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundTree, Span } from "../base/tree.ts"
import type { ChoiceName, ChoiceValue } from "../work/choices.ts"
import type { Shared } from "../work/round-parts.ts"
import type { Foundation } from "./foundation.ts"

export interface RoundRequest {
  readonly shared: Shared
  readonly index: number
  readonly number: number
  readonly tree: RoundTree
  readonly foundation: Foundation | null
  readonly turned: boolean
  readonly row: boolean
  readonly span: Span
}

export interface RoundResult {
  readonly round: Round | null
  readonly spans: readonly Span[]
  readonly comparison: Comparison
  readonly findings: readonly Finding[]
  /** How much is wrong with it: 0 when all agrees. */
  readonly score: number
  /** What the round is in another reading that fits as well. */
  readonly otherRound?: Round
  /** Chain spaces below are worked into as spaces. */
  readonly worksSpaces: boolean
  /** Share of the stitches of the round before that it neither works into nor skips; 0 where that is no fault. */
  readonly unused: number
  /** Steps it took to work. */
  readonly steps: number
  /** Choices taken against the usual ones, and whether that is told already. */
  readonly forced?: ReadonlyMap<ChoiceName, ChoiceValue>
  readonly told?: true
}
