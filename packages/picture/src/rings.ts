// Rings of the unrolled piece: rows of one count between closed lines of thread, each with its count by
// the comb (repeats) and by the phase (strands), and what else it might be.

import { akin, combs, countOf, mostAt } from "./comb.ts"
import { pooledPower } from "./fourier.ts"
import { type ClosedLine, closedLines } from "./lines-round.ts"
import { countByPhase, type PhaseVote } from "./phase-count.ts"
import type { Row } from "./rows.ts"
import { runsOf } from "./runs.ts"
import { type SurenessSigns, surenessOf } from "./sureness.ts"

export interface RingFound {
  /** Rows of the unrolled piece, first and last. */
  readonly fromRow: number
  readonly toRow: number
  /** Times the ring repeats once round; null when nothing repeats. */
  readonly repeats: number | null
  /** Strands of thread once round: the same, or a whole number a repeat. */
  readonly strands: number | null
  /** Chance that `repeats` or `strands` is right, 0 to 1. */
  readonly sureness: number
  readonly nextBest: number | null
  /** Half or twice the count fits as well: the eye has to say. */
  readonly halfOrTwice: boolean
  readonly signs: SurenessSigns | null
  /** Ends on a closed line of thread. */
  readonly closedOutside: boolean
}

/** Rings thinner than this share of the piece, or than these pixels, belong to their neighbour. */
const thinnest = { share: 0.025, px: 4 } as const
/** A change of count within this share of the piece from a closed line is that line. */
const snapShare = 0.03
/** A line inside rows of one count parts two rings when it stands out this much. */
const partingProminence = 0.3
/** Rows at both ends of a ring left out of its count: the line itself is no post. */
const trimShare = 0.12

export function findRings(rows: readonly Row[], reCentre?: ReCentre): RingFound[] {
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
  for (const line of lines) if (line.prominence >= partingProminence) cuts.add(line.row)
  const edges = withoutThin(
    [...cuts].sort((a, b) => a - b),
    Math.max(thinnest.px, thinnest.share * rows.length),
    lines,
  )
  return edges.slice(1).map((to, i) => {
    const from = edges[i]!
    return {
      fromRow: from,
      toRow: to - 1,
      ...countRing(rows.slice(from, to), reCentre),
      closedOutside: lines.some((line) => Math.abs(line.row - to) <= snap),
    }
  })
}

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

type Counted = Omit<RingFound, "fromRow" | "toRow" | "closedOutside">

/** The comb is trusted above this clarity; below it, or where both nearly agree, the phase counts. */
const weakComb = 0.12
const nearlyAgree = 2
/** Share of the rows that must vote for a count by phase. */
const leastVote = 0.4

interface Way {
  readonly comb: Float64Array
  readonly samples: readonly Float64Array[]
}

/** The same ring about a centre of its own, where it is clearer there; null where it is not. */
export type ReCentre = (rows: readonly Row[], way: Way) => Way | null

/** Count of the rows of one ring. */
export function countRing(all: readonly Row[], reCentre?: ReCentre): Counted {
  const trim = Math.floor(trimShare * all.length)
  const rows = all.length > 6 ? all.slice(trim, all.length - trim) : all
  const most = mostAt(rows[rows.length >> 1]!.radius)
  const byAngle = combs(pooledPower(rows.map((row) => row.byAngle)), most)
  const bent = rows.some((row) => row.byLength !== row.byAngle)
  const byLength = bent ? combs(pooledPower(rows.map((row) => row.byLength)), most) : byAngle
  const ways: Way[] = [{ comb: byAngle, samples: rows.map((row) => row.byAngle) }]
  if (bent) {
    ways.push({ comb: byLength, samples: rows.map((row) => row.byLength) })
    const onCircle = rows.map((row) => row.onCircle)
    const circleComb = combs(pooledPower(onCircle), most)
    if (Math.max(...ways.map(({ comb }) => Math.max(...comb))) < weakComb)
      ways.push({ comb: circleComb, samples: onCircle })
  }
  const clearest = ways.reduce((a, b) => (Math.max(...b.comb) > Math.max(...a.comb) ? b : a))
  const better = reCentre?.(rows, clearest) ?? null
  const { comb: chosenComb, samples } = better ?? clearest
  const found = countOf(chosenComb)
  const vote = countByPhase(samples, most)
  if (!found && !vote) return nothing
  const comb = found?.comb ?? 0
  const voted = vote && vote.share >= leastVote ? vote : null
  const usePhase =
    voted !== null &&
    (found === null ||
      (voted.count !== found.count &&
        (comb < weakComb || Math.abs(voted.count - found.count) <= nearlyAgree) &&
        !akin(voted.count, found.count)))
  const repeats = usePhase ? voted.count : found?.count
  if (repeats === undefined) return nothing
  const strands = voted && voted.count % repeats === 0 ? voted.count : repeats
  const signs: SurenessSigns = {
    comb,
    rival: found ? found.rivalComb : 0,
    vote: voteFor(vote, repeats),
    byPhase: usePhase,
    pxPerRepeat: (2 * Math.PI * rows[rows.length >> 1]!.radius) / Math.max(repeats, strands),
    rows: all.length,
  }
  const kinClose = found !== null && !usePhase && found.kinComb >= kinDoubt * comb && found.kin > 0
  const twice = found !== null && (found.kin === 2 * repeats || 2 * found.kin === repeats)
  const others = usePhase
    ? [found?.count ?? 0, found?.rival ?? 0]
    : [
        strands !== repeats ? strands : 0,
        voted && voted.count !== repeats ? voted.count : 0,
        kinClose ? found.kin : 0,
        found?.rival ?? 0,
      ]
  return {
    repeats,
    strands,
    sureness: surenessOf(signs),
    nextBest: others.find((n) => n >= 3 && n !== repeats) ?? null,
    halfOrTwice: (kinClose && twice) || strands === 2 * repeats,
    signs,
  }
}

/** A multiple or part whose comb holds this share of the chosen one's is told beside it. */
const kinDoubt = 0.6

const nothing: Counted = {
  repeats: null,
  strands: null,
  sureness: 0,
  nextBest: null,
  halfOrTwice: false,
  signs: null,
}

function voteFor(vote: PhaseVote | null, repeats: number): number {
  if (!vote) return 0
  return vote.count % repeats === 0 ? vote.share : -vote.share
}
