// Count of one ring, three ways that fail apart: the comb of its orders (right for even spacing, however
// faint), the turns of phase (right where spacing is uneven), and peaks of thread one by one (right where the
// join leaves a gap). Where they differ by one or two the middle of the three is taken.

import { akin, type CountFound, combs, countOf, mostAt } from "./comb.ts"
import { pooledPower, withoutLowOrders } from "./fourier.ts"
import { countByPeaks, type PeakVote } from "./peak-count.ts"
import { countByPhase, type PhaseVote } from "./phase-count.ts"
import type { Row } from "./rows.ts"
import { type SurenessSigns, surenessOf } from "./sureness.ts"

export interface Counted {
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
}

interface Way {
  readonly comb: Float64Array
  readonly samples: readonly Float64Array[]
}

/** The same ring about a centre of its own, where it is clearer there; null where it is not. */
export type ReCentre = (rows: readonly Row[], way: Way) => Way | null

/** Rows at both ends of a ring left out of its count: the line itself is no post. */
const trimShare = 0.12
/** The comb is trusted above this clarity; below it the phase counts. */
const weakComb = 0.12
const nearlyAgree = 2
/** Share of the rows that must vote for a count by phase, or show so many peaks. */
const [leastVote, leastPeakShare] = [0.4, 0.4]
/** Peaks so sure overrule comb and phase. */
const surePeaks = 0.7
/** Fewer repeats than this are too broad to be counted by their peaks. */
const leastForPeaks = 7
/** Twice the count is told beside it when its comb holds this share; half when its comb is this much larger. */
const [twiceDoubt, halfDoubt] = [0.6, 1.15]
/** Strands within the repeats of a polygon are told when their own comb is this clear. */
const leastFineComb = 0.15
/** They are looked for above this multiple of its corners. */
const fineFrom = 2.2

/** @param corners of the piece's outline, 0 for a round one */
export function countRing(all: readonly Row[], corners: number, reCentre?: ReCentre): Counted {
  const trim = Math.floor(trimShare * all.length)
  const rows = all.length > 6 ? all.slice(trim, all.length - trim) : all
  const radius = rows[rows.length >> 1]!.radius
  const most = mostAt(radius)
  const ways = waysOf(rows, most, all.at(-1)!.along)
  const clearest = clearestOf(ways)
  const found = countWay(reCentre?.(rows, clearest) ?? clearest, most, clearest.samples)
  // A hexagon repeats six times round, though every second side may look a little like its neighbour.
  const coarse =
    found !== null && found.repeats < corners && corners % found.repeats === 0
      ? { ...found, repeats: corners }
      : found
  if (coarse === null) return nothing
  const bent = rows.some((row) => row.byLength !== row.byAngle)
  const fine =
    bent && coarse.repeats <= 2 * corners
      ? countWay(clearestOf(ways.map((way) => withoutLow(way, fineFrom * corners, most))), most)
      : null
  const posts = fine && fine.signs.comb >= leastFineComb ? fine : null
  const strands =
    posts?.repeats ??
    (coarse.voted !== null && coarse.voted % coarse.repeats === 0 ? coarse.voted : coarse.repeats)
  const signs: SurenessSigns = {
    ...(posts ?? coarse).signs,
    pxPerRepeat: (2 * Math.PI * radius) / strands,
    rows: all.length,
  }
  const others = [strands, ...(posts?.others ?? []), ...coarse.others]
  return {
    repeats: coarse.repeats,
    strands,
    sureness: surenessOf(signs),
    nextBest: others.find((n) => n >= 3 && n !== coarse.repeats) ?? null,
    halfOrTwice: coarse.halfOrTwice || strands === 2 * coarse.repeats,
    signs,
  }
}

/** @param edge angles at even steps along the line the ring ends on */
function waysOf(rows: readonly Row[], most: number, edge: Float64Array): Way[] {
  const way = (samples: Float64Array[]): Way => ({
    comb: combs(pooledPower(samples), most),
    samples,
  })
  const byAngle = way(rows.map((row) => row.byAngle))
  if (rows.every((row) => row.byLength === row.byAngle)) return [byAngle]
  // Stitches stand evenly along the edge they end on, and under it at the same angles.
  const ways = [
    byAngle,
    way(rows.map((row) => row.byLength)),
    way(rows.map((row) => resampled(row.byAngle, edge))),
  ]
  // Along its own contour a solid square shows no corners any more: along a circle they are what repeats.
  return Math.max(...ways.map(topComb)) < weakComb
    ? [...ways, way(rows.map((row) => row.onCircle))]
    : ways
}

/** A row of even steps of angle at other angles. */
function resampled(row: Float64Array, angles: Float64Array): Float64Array {
  const size = row.length
  return angles.map((angle) => {
    const at = (angle / (2 * Math.PI)) * size
    const before = Math.floor(at)
    const share = at - before
    return row[before % size]! * (1 - share) + row[(before + 1) % size]! * share
  })
}

const topComb = ({ comb }: Way) => Math.max(...comb)

function clearestOf(ways: readonly Way[]): Way {
  return ways.reduce((a, b) => (topComb(b) > topComb(a) ? b : a))
}

/** The same rows without orders below `lowest`. */
function withoutLow(way: Way, lowest: number, most: number): Way {
  const samples = way.samples.map((row) => withoutLowOrders(row, lowest))
  const comb = combs(pooledPower(samples), most)
  comb.fill(0, 0, Math.ceil(lowest))
  return { comb, samples }
}

interface WayCount {
  readonly repeats: number
  readonly voted: number | null
  readonly halfOrTwice: boolean
  readonly others: readonly number[]
  readonly signs: Omit<SurenessSigns, "pxPerRepeat" | "rows">
}

/** @param asSeen rows about the piece's own centre: about one of the ring's own a gap may look like a missing post */
function countWay(
  { comb, samples }: Way,
  most: number,
  asSeen: readonly Float64Array[] = samples,
): WayCount | null {
  const found = countOf(comb)
  const vote = countByPhase(samples, most)
  const peaks = found && found.count >= leastForPeaks ? countByPeaks(asSeen, found.count) : null
  const decided = decide(found, vote, peaks)
  if (decided === null) return null
  const { repeats, byPhase } = decided
  const voted = vote && vote.share >= leastVote ? vote.count : null
  const byComb = found !== null && repeats === found.count
  const twice = byComb && found.twiceComb >= twiceDoubt * found.comb
  const half = byComb && found.halfComb >= halfDoubt * found.comb
  return {
    repeats,
    voted,
    halfOrTwice: twice || half,
    others: [
      twice ? 2 * repeats : 0,
      half ? repeats / 2 : 0,
      voted ?? 0,
      found && found.count !== repeats ? found.count : 0,
      found?.rival ?? 0,
    ].filter((n) => n >= 3 && n !== repeats),
    signs: {
      comb: found?.comb ?? 0,
      rival: found?.rivalComb ?? 0,
      vote: vote ? (vote.count % repeats === 0 ? vote.share : -vote.share) : 0,
      peaks: peaks ? (peaks.count === repeats ? peaks.share : -peaks.share) : 0,
      byPhase,
    },
  }
}

function decide(
  found: CountFound | null,
  vote: PhaseVote | null,
  peaks: PeakVote | null,
): { repeats: number; byPhase: boolean } | null {
  const voted = vote && vote.share >= leastVote ? vote.count : null
  if (found === null) return voted === null ? null : { repeats: voted, byPhase: true }
  const { count, comb } = found
  const near = (n: number) => Math.abs(n - count) <= nearlyAgree
  const peaked = peaks && peaks.share >= leastPeakShare && near(peaks.count) ? peaks.count : null
  const phased = voted !== null && near(voted) ? voted : null
  // Posts seen one by one in most rows are counted; a join's wide gap misleads both other ways.
  if (peaked !== null && peaks!.share >= surePeaks) return { repeats: peaked, byPhase: false }
  if (peaked !== null && phased !== null) {
    const [, middle] = [count, phased, peaked].sort((a, b) => a - b)
    return { repeats: middle!, byPhase: false }
  }
  if (peaked !== null) return { repeats: count, byPhase: false }
  if (voted === null || voted === count) return { repeats: count, byPhase: false }
  const usePhase = !akin(voted, count) && (comb < weakComb || phased !== null)
  return usePhase ? { repeats: voted, byPhase: true } : { repeats: count, byPhase: false }
}

const nothing: Counted = {
  repeats: null,
  strands: null,
  sureness: 0,
  nextBest: null,
  halfOrTwice: false,
  signs: null,
}
