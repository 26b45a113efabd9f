// One way of having read the rounds so far: what the next round is worked on, and all that was told on the
// way. A state is a value: going on from it leaves it as it was, and one that comes to nothing is dropped whole.

import type { Centre, Round } from "@roundwright/motif"
import type { RoundReading } from "../base/reading.ts"
import type { CountsAs, Step } from "../base/tree.ts"
import type { Locals } from "../grammar/cursor.ts"
import type { Doubt } from "./doubt.ts"
import type { Located, NumberedTree } from "./list-rounds.ts"

export interface State {
  /** Rounds worked or assumed, the ground of the next. */
  readonly rounds: readonly Round[]
  /** Rounds of them that belong to the motif; all while nothing has ended it. */
  readonly motif: number | null
  readonly centre: Centre
  readonly readings: readonly RoundReading[]
  readonly findings: readonly Located[]
  /** Trees with their printed numbers, for rounds worked like them; of a number given twice the later counts. */
  readonly trees: readonly NumberedTree[]
  readonly locals: Locals
  readonly saidCounts: ReadonlyMap<number, CountsAs>
  /** Steps that begin the next round: a ring before the first, or what was told after the join of the one before. */
  readonly carried: readonly Step[]
  readonly turnNext: boolean
  /** No round to go on from. */
  readonly lost: boolean
  readonly doubt: Doubt | null
  /** How much is wrong so far: the sum over its rounds. */
  readonly score: number
}

/** Ways of having read the rounds so far that are carried on. */
export const mostStates = 4
/** A way this much worse than the best is dropped. */
export const stateMargin = 130

/** The best states, of those alike in what the next round is worked on the better one. */
export function bestStates(states: readonly State[]): State[] {
  const sorted = [...states].sort((a, b) => a.score - b.score)
  const kept: State[] = []
  const seen = new Set<string>()
  for (const state of sorted) {
    if (kept.length >= mostStates || (kept[0] && state.score > kept[0].score + stateMargin)) break
    const key = groundKey(state)
    if (seen.has(key)) continue
    seen.add(key)
    kept.push(state)
  }
  return kept
}

/** Equal where the next round stands on the same counts. */
function groundKey({ rounds, lost }: State): string {
  const last = rounds[rounds.length - 1]
  if (!last || lost) return `${rounds.length}:${lost}`
  let key = `${rounds.length}:`
  let run = 0
  let open = ""
  for (const element of last.elements) {
    const name = element.type === "stitch" ? element.kind.basic : `${element.type}${element.chains}`
    if (name === open) {
      run += 1
      continue
    }
    if (run > 0) key += `${run}${open},`
    open = name
    run = 1
  }
  return `${key}${run}${open}`
}
