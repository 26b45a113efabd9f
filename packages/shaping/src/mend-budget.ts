// How much a search for mends may do. Work is counted, not timed, so that the same piece always gets the same answer:
// a change weighed on the piece summed up costs its rounds, one made to the piece itself its stitches and chains.

import type { ElementChange } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"

/** For weighing, and as much for making: a second or two each. A doily of 7,000 stitches in 50 rounds stays within it. */
const mostWork = 3_000_000
/** An element of the piece, or a round of it summed up, is changed, counted, measured and judged: a microsecond a unit. */
const elementWork = 4
const roundWork = 4

export class Work {
  #left: number
  #refused = false

  constructor(most: number) {
    this.#left = most
  }

  /** Takes the work off what is left. @returns false from the first piece of work on for which too little is left */
  spend(work: number): boolean {
    if (work > this.#left) this.#refused = true
    else this.#left -= work
    return !this.#refused
  }

  /** Whether something was left undone. */
  get refused(): boolean {
    return this.#refused
  }
}

export class MendBudget {
  readonly weighing: Work
  readonly making: Work

  constructor(most = mostWork) {
    this.weighing = new Work(most)
    this.making = new Work(most)
  }

  get refused(): boolean {
    return this.weighing.refused || this.making.refused
  }
}

/** What it costs to weigh a change: rounds, groups and terms are changed in the piece itself. */
export function weighingWork(motif: Motif, change: ElementChange): number {
  const whole =
    change.kind === "drop-round" ||
    change.kind === "add-round" ||
    change.kind === "group" ||
    change.kind === "terms"
  return whole ? piecewise(motif) : roundWork * motif.rounds.length
}

/** What it costs to make a change to the piece and judge it whole. */
export function makingWork(motif: Motif, index: number, change: ElementChange): number {
  if (change.kind !== "increase") return piecewise(motif)
  // Made round by round, each time with all that follows, which grows by as much in every round.
  const rounds = motif.rounds.length - index
  return rounds * (piecewise(motif) + (elementWork * change.perRound * rounds ** 2) / 2)
}

function piecewise(motif: Motif): number {
  return motif.rounds.reduce(
    (sum, { elements }) => sum + elementWork * elements.length + roundWork,
    0,
  )
}
