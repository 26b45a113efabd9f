// How far a piece is from one that was meant: departures from flat, beside how unevenly it grows. And whether what
// is off works itself out.

import { type LedgerRow, planBand } from "@roundwright/flatness"

/** What is needed of a piece, changed or not, to tell how much is wrong with it. */
export interface Grown {
  readonly rows: readonly LedgerRow[]
  /** Stitches and chains of each round. */
  readonly counts: readonly number[]
  /** All of one kind of stitch. */
  readonly uniform: boolean
}

/** Weight of uneven growth against misfit. */
const unevenWeight = 0.5
/** A second kind of stitch brought in counts like one round's growth missed by the give of the yarn. */
const mixedKinds = planBand
/** Departures within the give of the yarn are no fault, but nearer to flat is nearer: they count by this share. */
const withinGive = 1 / 4

/**
 * A plan that grows evenly is likelier to be meant than one that does not, at the same misfit: half the mean
 * change of the increase from round to round, as a share of the mean count. Where stitches of several
 * heights follow one another, even growth means nothing.
 */
export function faultOf(piece: Grown): number {
  const { counts, rows, uniform } = piece
  if (!uniform) return misfitOf(rows) + mixedKinds
  let turns = 0
  let sum = 0
  counts.forEach((count, i) => {
    sum += count
    if (i > 0 && i + 1 < counts.length)
      turns += Math.abs(counts[i + 1]! - 2 * count + counts[i - 1]!)
  })
  return misfitOf(rows) + (sum > 0 ? (unevenWeight * turns) / sum : 0)
}

/**
 * Root mean square of the edge against the flat edge and of each round's growth against its own: the first tells
 * where a piece is off, the second where it went wrong. What the yarn gives is no fault of either.
 */
export function misfitOf(rows: readonly LedgerRow[]): number {
  let edge = 0
  let growth = 0
  for (const row of rows) {
    edge += beyondGive(Math.log(Math.max(row.accumulatedFullness, 1e-3))) ** 2
    growth += beyondGive((row.growthMm - row.flatGrowthMm) / Math.max(row.edgeMm, 1e-9)) ** 2
  }
  return Math.sqrt(edge / rows.length) + Math.sqrt(growth / rows.length)
}

function beyondGive(off: number): number {
  const size = Math.abs(off)
  return size <= planBand ? size * withinGive : size - (1 - withinGive) * planBand
}

/**
 * The round off worst and the round by which the edge has come back to flat for good; null when it never
 * leaves flat or never comes back. Round 1 is passed over: a few stitches round a hole.
 */
export function worksOutBy(all: readonly LedgerRow[]): { from: number; by: number } | null {
  const rows = all.slice(1)
  const lastOff = rows.findLastIndex((row) => row.verdict !== "flat")
  if (lastOff < 0 || lastOff === rows.length - 1) return null
  const worst = rows.reduce((a, b) => (offBy(b) > offBy(a) ? b : a))
  return { from: worst.round, by: rows[lastOff + 1]!.round }
}

function offBy(row: LedgerRow): number {
  return Math.abs(Math.log(Math.max(row.accumulatedFullness, 1e-3)))
}
