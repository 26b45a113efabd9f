// Whether a round closes as its repeats follow one another: the gap between its last place and its first
// is one that lies between two repeats, or the end of a repeat where something stands before the first.

import type { Edge } from "../edge/edge.ts"
import type { RoundWork } from "../work/round-work.ts"

export interface UnlikeGap {
  /** Between one repeat and the next, and between the last and the start of the round. */
  readonly usual: Gap
  readonly closing: Gap
}

/**
 * The gap a round closes with, when no two repeats have such a gap between them; null otherwise, and when
 * that cannot be told. Of repeats worked by a number the last may well end short of what it skips, but
 * leave no more than they do.
 */
export function gapUnlikeRepeats(work: RoundWork): UnlikeGap | null {
  const times = work.wholeTimes
  if (!times || times.starts.length === 0) return null
  const { edge } = work.main
  const start = times.starts[0]!
  const before = stretch(work, 0, start)
  const parts = times.starts.map((from, i) => stretch(work, from, times.starts[i + 1] ?? times.end))
  const after = stretch(work, times.end, work.used.length)
  if (after.worked || before.onGap || parts.some((part) => !part.worked || part.onGap)) return null
  const last = parts[parts.length - 1]!
  // The last time round comes back to the place the round began in.
  if (parts.length > 1 && last.from < parts[parts.length - 2]!.from) return null
  const usual: Gap[] = []
  for (let i = 1; i < parts.length; i++) usual.push(gapFrom(edge, parts[i - 1]!.to, parts[i]!.from))
  if (before.worked) usual.push(gapFrom(edge, last.to, times.at))
  if (usual.length === 0) return null
  const first = Math.min(before.from, ...parts.map((part) => part.from))
  const end = Math.max(before.to, ...parts.map((part) => part.to))
  const closing = gapFrom(edge, end, first + edge.size)
  const fits = (gap: Gap) =>
    times.counted
      ? closing.stitches <= gap.stitches
      : closing.stitches === gap.stitches && closing.spaces === gap.spaces
  return usual.some(fits) ? null : { usual: usual[0]!, closing }
}

/** Where the edge below is worked into by a run of uses. */
function stretch(work: RoundWork, start: number, end: number) {
  const { edge } = work.main
  let from = Number.POSITIVE_INFINITY
  let to = Number.NEGATIVE_INFINITY
  let onGap = false
  for (let i = start; i < end; i++) {
    const use = work.used[i]!
    if (use.edge !== edge || use.use !== "worked") continue
    from = Math.min(from, use.from)
    to = Math.max(to, use.to)
    onGap ||= isGap(edge, use.from)
  }
  return { from, to, onGap, worked: from < to }
}

export interface Gap {
  readonly stitches: number
  readonly spaces: number
}

/** Stitches and whole runs of chains between two positions; fewer than none where they overlap. */
function gapFrom(edge: Edge, from: number, to: number): Gap {
  let stitches = 0
  let spaces = 0
  const stop = Math.max(from, to)
  for (let at = Math.min(from, to); at < stop; at++) {
    const index = ((at % edge.size) + edge.size) % edge.size
    if (edge.cells[index]?.type === "stitch") stitches += 1
    else if (edge.startsRun(index) && at + edge.widths[index]! <= stop) spaces += 1
  }
  return to < from ? { stitches: -stitches, spaces: -spaces } : { stitches, spaces }
}

/** Gaps between stitches and picots have no width of their own on the round. */
function isGap(edge: Edge, at: number): boolean {
  const type = edge.cells[((at % edge.size) + edge.size) % edge.size]?.type
  return type === "gap" || type === "picot"
}
