// What is left of the edge below at the end of a round, and whether that goes without saying.

import { fewestOfLoop } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import { plural } from "../base/wording.ts"
import type { Edge } from "../edge/edge.ts"
import type { RoundWork } from "../work/round-work.ts"
import { passedInLace, type SkipRuns, type Usage } from "./usage.ts"

export interface Left {
  readonly used: number
  readonly there: number
  readonly left: number
  /** Left in the middle rather than at the end. */
  readonly inside: boolean
  readonly name: string
}

/** Stitches of the kinds worked one by one that nothing was worked into. */
export function stitchesLeft(edge: Edge, state: Usage): Left | null {
  const kinds = new Map<string, { worked: number; skipped: number; tail: number; inside: number }>()
  const lace = passedInLace(edge, state)
  state.walk.forEach((index, k) => {
    const element = edge.elementAt(index)
    if (edge.cells[index]?.type !== "stitch" || element?.type !== "stitch" || lace.has(index))
      return
    const { basic, gathered } = element.kind
    const key = gathered ? `${basic}|${gathered.how}${gathered.legs}` : basic
    const entry = kinds.get(key) ?? { worked: 0, skipped: 0, tail: 0, inside: 0 }
    const mark = state.marks[index]
    if (mark === 1) entry.worked += 1
    else if (mark === 2) entry.skipped += 1
    else if (k >= state.tailFrom) entry.tail += 1
    else entry.inside += 1
    kinds.set(key, entry)
  })
  let used = 0
  let tail = 0
  let inside = 0
  for (const entry of kinds.values()) {
    if (entry.worked <= 1) continue
    // Said to be skipped on one side of a repeat only, and as many passed over on the other.
    const mirrored = entry.inside > 0 && entry.inside === entry.skipped && entry.tail === 0
    used += entry.worked + entry.skipped
    tail += entry.tail
    if (!mirrored) inside += entry.inside
  }
  const left = tail + inside
  if (left === 0 || used <= 1) return null
  return { used, there: used + left, left, inside: inside > 0, name: "stitch" }
}

/** "*dc in next st, ch 2, sk next st; ... ch 2; join": the skip before the join goes without saying. */
export function isImpliedSkip(state: Usage, left: Left, runs: SkipRuns): boolean {
  if (left.inside || state.endsSkipped) return false
  return runs.lengths.includes(left.left) || runs.lengths.includes(runs.closing)
}

/** Fewest places that make a steady skip between them a rule. */
const fewestForRule = 4

/** Every two places stand the same number of stitches apart, but not the last and the first. */
export function unevenClose(work: RoundWork, runs: SkipRuns, span: Span): Finding | null {
  const first = runs.lengths[0]
  if (first === undefined || first < 1 || runs.places < fewestForRule) return null
  if (runs.lengths.some((length) => length !== first) || runs.closing >= first) return null
  if (work.used.some((use) => use.edge === work.main.edge && use.use === "slipped")) return null
  const there = work.main.edge.cells.filter((cell) => cell.type === "stitch").length
  const wanted = there + first - runs.closing
  return {
    severity: "warning",
    code: "uneven-at-join",
    ...span,
    message: `Everywhere ${plural(first, "stitch is", "stitches are")} skipped, but ${runs.closing === 0 ? "none" : runs.closing} before the join: the round before has ${there} stitches, and ${wanted} would come out even.`,
    hint: `Let the round before have ${wanted}, or say how the round ends.`,
  }
}

/**
 * Spaces of the sizes worked into that were left. Stitches with no place of their own do not step over one loop where
 * others like it are filled (`overLoops`).
 */
export function spacesLeft(edge: Edge, state: Usage, overLoops: boolean): Left | null {
  const runs = new Map<number, { size: number; used: boolean; skipped: boolean; tail: boolean }>()
  state.walk.forEach((index, k) => {
    const cell = edge.cells[index]
    const element = edge.elementAt(index)
    if (cell?.type !== "chain" || element?.type !== "chain") return
    const entry = runs.get(cell.element) ?? {
      size: element.chains,
      used: false,
      skipped: false,
      tail: k >= state.tailFrom,
    }
    if (state.marks[index] !== 0) entry.used = true
    if (state.marks[index] === 2) entry.skipped = true
    runs.set(cell.element, entry)
  })
  const sizes = new Map<
    number,
    { worked: number; tail: number; inside: number; skips: Set<number>; skipped: number }
  >()
  for (const run of runs.values()) {
    const entry = sizes.get(run.size) ?? {
      worked: 0,
      tail: 0,
      inside: 0,
      skips: new Set<number>(),
      skipped: 0,
    }
    if (run.skipped) entry.skipped += 1
    else if (run.used && entry.worked > 0) {
      entry.skips.add(entry.skipped)
      entry.skipped = 0
    }
    if (run.used) entry.worked += 1
    else if (run.tail) entry.tail += 1
    else entry.inside += 1
    sizes.set(run.size, entry)
  }
  for (const [size, entry] of sizes) {
    if (overLoops && size >= fewestOfLoop && entry.worked > 0 && entry.inside > 0) {
      const left = entry.inside + entry.tail
      const there = entry.worked + left
      return { used: entry.worked, there, left, inside: true, name: `ch-${size} space` }
    }
    if (entry.worked < 2 || entry.tail === 0 || entry.inside > 0) continue
    // "*ch 12, skip next loop, sc in next loop; ... ch 12; join": the last skip goes without saying.
    if (entry.skips.size === 1 && entry.skips.has(entry.tail) && entry.skipped === 0) continue
    const there = entry.worked + entry.tail
    return { used: entry.worked, there, left: entry.tail, inside: false, name: `ch-${size} space` }
  }
  return null
}
