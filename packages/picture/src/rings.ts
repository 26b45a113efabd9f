// Rings of the unrolled piece: rows of one count between closed lines of thread, each with its count by
// the comb (repeats) and by the phase (strands), and what else it might be.

import { type Counted, countRing, type ReCentre } from "./count-ring.ts"
import { withKin } from "./kin-counts.ts"
import { likenessOf } from "./likeness.ts"
import { type ClosedLine, closedLines } from "./lines-round.ts"
import type { Row } from "./rows.ts"
import { runsOf } from "./runs.ts"

export interface RingFound extends Counted {
  /** Rows of the unrolled piece, first and last. */
  readonly fromRow: number
  readonly toRow: number
  /** Ends on a closed line of thread. */
  readonly closedOutside: boolean
}

/** Rings thinner than this share of the piece, or than these pixels, belong to their neighbour. */
const thinnest = { share: 0.025, px: 4 } as const
/** A change of count within this share of the piece from a closed line is that line. */
const snapShare = 0.03
/** A line inside rows of one count parts two rings when it stands out this much. */
const partingProminence = 0.3
/** Or this little, where the rows below and above it are no more alike than this: the tops of open loops. */
const partingLikeness = 0.55

export function findRings(rows: readonly Row[], corners: number, reCentre?: ReCentre): RingFound[] {
  const lines = closedLines(rows.map((row) => row.closed))
  const better = rows.map((row) =>
    row.lengthCombs === row.angleCombs
      ? row.angleCombs
      : row.angleCombs.map((value, n) => Math.max(value, row.lengthCombs[n]!)),
  )
  const runs = runsOf(better)
  const snap = snapShare * rows.length
  const cuts = new Set<number>([0, rows.length])
  for (const run of runs.slice(1)) cuts.add(nearestLine(lines, run.from, snap) ?? run.from)
  const likeness = likenessOf(rows)
  const parts = ({ row, prominence }: ClosedLine) =>
    prominence >= partingProminence || likeness[row]! <= partingLikeness
  for (const line of lines) if (parts(line)) cuts.add(line.row)
  const edges = withoutThin(
    [...cuts].sort((a, b) => a - b),
    Math.max(thinnest.px, thinnest.share * rows.length),
    lines,
  )
  const rings = edges.slice(1).map((to, i) => {
    const from = edges[i]!
    return {
      fromRow: from,
      toRow: to - 1,
      ...countRing(rows.slice(from, to), corners, reCentre),
      closedOutside: lines.some((line) => Math.abs(line.row - to) <= snap),
    }
  })
  return withoutRim(withKin(rings), rows.length)
}

/** What lies outside the last line of thread is half its thickness and frayed: no ring of its own. */
function withoutRim(rings: readonly RingFound[], rows: number): RingFound[] {
  const [before, last] = rings.slice(-2)
  const thin = last !== undefined && last.toRow + 1 - last.fromRow < rimShare * rows
  return before && last && thin && last.sureness < rimSure && before.sureness > last.sureness
    ? rings.slice(0, -1)
    : [...rings]
}

/** A rim is thinner than this share of the piece, and its count less sure than this. */
const [rimShare, rimSure] = [0.07, 0.8]

function nearestLine(lines: readonly ClosedLine[], row: number, reach: number): number | null {
  let best: number | null = null
  for (const line of lines)
    if (
      Math.abs(line.row - row) <= reach &&
      (best === null || Math.abs(line.row - row) < Math.abs(best - row))
    )
      best = line.row
  return best
}

/** Drops edges until no ring is thinner than `least`; edges that lie on a closed line stay longest. */
function withoutThin(edges: number[], least: number, lines: readonly ClosedLine[]): number[] {
  const out = [...edges]
  const weight = (edge: number) => lines.find((line) => line.row === edge)?.prominence ?? 0
  for (;;) {
    const thin = out.findIndex((edge, i) => i > 0 && edge - out[i - 1]! < least)
    if (thin < 0 || out.length <= 2) return out
    const [low, high] = [thin - 1, thin]
    const dropLow = low > 0 && (high === out.length - 1 || weight(out[low]!) <= weight(out[high]!))
    out.splice(dropLow ? low : high, 1)
  }
}
