// What a round has used of the edge below: worked, skipped, passed over.

import type { Edge } from "../edge/edge.ts"
import type { RoundWork } from "../work/round-work.ts"

export interface Usage {
  readonly any: boolean
  /** Every stitch and chain below is worked into. */
  readonly complete: boolean
  /** By cell: 1 worked, 2 skipped; 0 neither. */
  readonly marks: Uint8Array
  /** Cells in the order walked from the round's start. */
  readonly walk: readonly number[]
  /** First index of `walk` after everything used. */
  readonly tailFrom: number
  /** The last thing used was skipped rather than worked. */
  readonly endsSkipped: boolean
}

export function usage(work: RoundWork): Usage {
  const { edge, base } = work.main
  const { size } = edge
  const marks = new Uint8Array(size)
  let last = base
  let any = false
  let endsSkipped = false
  for (const use of work.used) {
    if (use.edge !== edge || use.use === "slipped") continue
    for (let at = use.from; at < use.to; at++) {
      const index = at >= 0 && at < size ? at : ((at % size) + size) % size
      if (use.use === "worked") marks[index] = 1
      else if (marks[index] === 0) marks[index] = 2
    }
    if (use.use === "worked") any = true
    if (use.to >= last) {
      last = use.to
      endsSkipped = use.use === "skipped"
    }
  }
  let complete = true
  for (let index = 0; index < edge.size && complete; index++) {
    const type = edge.cells[index]!.type
    complete = marks[index] === 1 || type === "gap" || type === "picot"
  }
  const walk: number[] = []
  if (!complete) {
    const start = ((base % edge.size) + edge.size) % edge.size
    for (let index = start; index < edge.size; index++) walk.push(index)
    for (let index = 0; index < start; index++) walk.push(index)
  }
  return {
    any,
    complete,
    marks,
    walk,
    tailFrom: Math.min(edge.size, Math.max(0, last - base)),
    endsSkipped,
  }
}

/** Share of the stitches below that the round neither works into nor skips. */
export function unusedShare(work: RoundWork): number {
  const { marks } = usage(work)
  const stitches = work.main.edge.cells.flatMap(({ type }, index) =>
    type === "stitch" ? [index] : [],
  )
  return stitches.filter((index) => marks[index] === 0).length / Math.max(1, stitches.length)
}

export interface SkipRuns {
  /** Lengths, in stitches, of the runs skipped between one place worked into and the next. */
  readonly lengths: readonly number[]
  /** Stitches without work between the last place and the first again. */
  readonly closing: number
  /** Places worked into. */
  readonly places: number
}

/** Runs of stitches without work between the places worked into. */
export function skipRuns(edge: Edge, state: Usage): SkipRuns {
  const lengths: number[] = []
  let places = 0
  let run = 0
  let lead = 0
  for (const index of state.walk) {
    const type = edge.cells[index]?.type
    const worked = state.marks[index] === 1
    if (!worked) {
      if (type === "stitch") run += 1
      continue
    }
    if (type === "gap" || type === "picot") continue
    if (places === 0) lead = run
    else lengths.push(run)
    places += 1
    run = 0
  }
  return { lengths, closing: run + lead, places }
}

/** Stitches passed on the way from one space to another: lace does that everywhere. */
export function passedInLace(edge: Edge, state: Usage): Set<number> {
  const passed = new Set<number>()
  let run: number[] = []
  let fromSpace = state.walk.length > 0 && edge.cells[lastUsedCell(edge, state)]?.type === "chain"
  for (const index of state.walk) {
    const type = edge.cells[index]?.type
    if (state.marks[index] !== 0) {
      if (fromSpace && type === "chain") for (const cell of run) passed.add(cell)
      if (type === "stitch" || type === "chain") fromSpace = type === "chain"
      run = []
    } else if (type === "stitch") run.push(index)
  }
  const first = state.walk.find((index) => state.marks[index] !== 0)
  if (fromSpace && first !== undefined && edge.cells[first]?.type === "chain")
    for (const cell of run) passed.add(cell)
  return passed
}

function lastUsedCell(edge: Edge, state: Usage): number {
  for (let k = state.walk.length - 1; k >= 0; k--) {
    const index = state.walk[k]!
    if (state.marks[index] !== 0 && edge.cells[index]?.type !== "gap") return index
  }
  return -1
}
