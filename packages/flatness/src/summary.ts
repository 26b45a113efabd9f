// A round in the few numbers the ledger needs: what its edge is made of and how far it stands out
// from which earlier edge, in the middle of a side and at a corner. Summarising once makes folding
// the ledger (for odds, for remedies) cost a few operations a round.

import {
  chainsBeside,
  findCorners,
  groundRounds,
  isFree,
  type Motif,
  type Round,
  type RoundCorners,
  scallopSlack,
  validateMotif,
  type WorkedTops,
  workedTops,
} from "@roundwright/motif"
import {
  type BasicStitch,
  chainSize,
  chainThickness,
  type Gauge,
  type StitchSize,
  sizeOf,
  widthBesideChains,
} from "@roundwright/stitches"

/** A share of a round's stitches that stand alike: same base edge, same height, same kind of place. */
export interface StandingPart {
  /** Index of the round they stand on, -1 for the centre. */
  readonly base: number
  /** Share of the edge they carry, 0..1; the parts of a side sum to 1. */
  share: number
  readonly heightMm: number
  /** Set when they are worked round a run of chains: its length and how many tops share it. */
  readonly run: { readonly chains: number; readonly tops: number } | null
}

export interface RoundSummary {
  /** The round's printed number. */
  readonly number: number
  /** Sum of the top widths. */
  readonly solidMm: number
  /** With every run of chains drawn out. */
  readonly edgeMm: number
  /** Share of the edge that hangs in loops of chains, where the stitches between stand on such loops too; 0 elsewhere. */
  readonly netShare: number
  /** Chain runs of the edge by length. */
  readonly runs: readonly { readonly chains: number; readonly count: number }[]
  readonly chainMm: number
  /** How much shorter its fans can stand than their edge. */
  readonly fanSlackMm: number
  /** The round most of its stitches stand on: what its growth is counted from. */
  readonly base: number
  readonly side: readonly StandingPart[]
  readonly corner: readonly StandingPart[]
  readonly corners: number
  readonly stacked: number
  /** Relative spread of height over width among makers, weighed by edge. */
  readonly ratioSpread: number
  /** Share of its edge in sc that is not turned and of which no swatch tells: some hands work it much tighter. */
  readonly unturnedShare: number
  /** Stitches whose size is extrapolated. */
  readonly extrapolated: ReadonlySet<BasicStitch>
  /** A later round is worked into this one, or it is the last: part of the ground. */
  readonly ground: boolean
}

/** A run of one or two chains is a gap between tops and not a loop: too short to be drawn out (assumed). */
export const shortestLoop = 3

export interface PieceSummary {
  /** Radius of the hole in the middle, mm. */
  readonly holeMm: number
  readonly rounds: readonly RoundSummary[]
}

/** @throws RoundwrightError `broken-motif` when the motif does not hold together */
export function summarisePiece(motif: Motif, gauge: Gauge): PieceSummary {
  validateMotif(motif)
  const corners = findCorners(motif)
  const chainMm = chainSize(gauge).lengthMm
  const ground = groundRounds(motif)
  const worked = workedTops(motif)
  const rounds = motif.rounds.map((_, index) =>
    summariseRound(motif, index, worked, corners[index]!, gauge, chainMm, ground[index]!),
  )
  return { holeMm: holeRadius(motif, chainMm), rounds }
}

/**
 * Radius of the hole. Stitches are worked round a ring of chains and enclose it, so their base lies
 * half a chain's thickness (taken as half its length) inside the ring's middle line.
 */
function holeRadius(motif: Motif, chainMm: number): number {
  const centre = motif.centre
  if (centre.kind === "solid-ring") return (centre.diameterMm ?? 0) / 2
  if (centre.kind !== "chain-ring") return 0
  return Math.max(0, (centre.chains * chainMm) / (2 * Math.PI) - chainMm / 2)
}

function summariseRound(
  motif: Motif,
  place: number,
  worked: WorkedTops,
  corners: RoundCorners,
  gauge: Gauge,
  chainMm: number,
  ground: boolean,
): RoundSummary {
  const round = motif.rounds[place]!
  const sizes = new Map<string, StitchSize>()
  const runs = new Map<number, number>()
  const extrapolated = new Set<BasicStitch>()
  const standing: (Standing | null)[] = []
  const tops = topsPerRun(round)
  let solidMm = 0
  let spread = 0
  let unturnedMm = 0
  const beside = chainsBeside(round)
  const widths = round.elements.map((element, index) => {
    if (isFree(element) && ground) {
      standing.push(null)
      return 0
    }
    if (element.type === "chain") {
      runs.set(element.chains, (runs.get(element.chains) ?? 0) + 1)
      standing.push(null)
      return element.chains * chainMm
    }
    if (element.type === "picot") {
      standing.push(null)
      if (element.closedWith === undefined) return 0
      // The stitch that closes a loop lies along the edge like a run of chains as long as it is tall.
      const { heightMm } = sizeOf(element.closedWith, gauge, { turned: round.turned })
      const chains = Math.max(1, Math.round(heightMm / chainMm))
      runs.set(chains, (runs.get(chains) ?? 0) + 1)
      return chains * chainMm
    }
    const key = JSON.stringify(element.kind)
    let size = sizes.get(key)
    if (!size) {
      size = sizeOf(element.kind, gauge, { turned: round.turned })
      sizes.set(key, size)
      if (size.provenance === "extrapolated") extrapolated.add(element.kind.basic)
    }
    const widthMm = widthBesideChains(size.widthMm, beside[index]!)
    solidMm += widthMm
    spread += widthMm * size.ratioSpread
    const plain = element.kind.basic === "sc" && !round.turned
    if (plain && size.provenance === "published median") unturnedMm += widthMm
    standing.push(standingOf(motif, element.anchors, size.heightMm, tops, chainThickness(chainMm)))
    return widthMm
  })
  const heights = standing.map((part) => part?.heightMm ?? 0)
  const { slackMm: fanSlackMm, fans } = scallopSlack(motif, place, worked, widths, heights, chainMm)
  const turning = fans > 0 ? noCorners : corners
  const { side, corner } = sideAndCorner(round, turning, widths, standing)
  const lengths = [...runs].map(([chains, count]) => ({ chains, count }))
  const edgeMm = solidMm + chainMm * lengths.reduce((sum, run) => sum + run.chains * run.count, 0)
  return {
    number: round.number,
    solidMm,
    edgeMm,
    netShare: netShare(lengths, side, edgeMm, chainMm),
    runs: lengths,
    chainMm,
    fanSlackMm,
    base: mainBase(standing),
    side,
    corner: corner.length > 0 ? corner : side,
    corners: turning.count,
    stacked: turning.stacked,
    ratioSpread: solidMm > 0 ? spread / solidMm : 0,
    unturnedShare: solidMm > 0 ? unturnedMm / solidMm : 0,
    extrapolated,
    ground,
  }
}

function netShare(
  runs: RoundSummary["runs"],
  side: readonly StandingPart[],
  edgeMm: number,
  chainMm: number,
): number {
  const onLoops = side.reduce(
    (sum, { run, share }) => sum + (run !== null && run.chains >= shortestLoop ? share : 0),
    0,
  )
  const loops = runs.reduce(
    (sum, { chains, count }) => sum + (chains >= shortestLoop ? chains * count : 0),
    0,
  )
  return onLoops > 0.5 && edgeMm > 0 ? (loops * chainMm) / edgeMm : 0
}

/** An edge of fans is scalloped, not cornered. */
const noCorners: RoundCorners = { count: 0, groups: [], stacked: 0 }

interface Standing {
  readonly base: number
  readonly heightMm: number
  readonly run: { readonly chains: number; readonly tops: number } | null
}

type Anchors = Extract<Round["elements"][number], { type: "stitch" }>["anchors"]

function topsPerRun(round: Round): Map<string, number> {
  const tops = new Map<string, number>()
  for (const element of round.elements)
    if (element.type === "stitch")
      for (const anchor of element.anchors)
        if (anchor.at === "space" || anchor.at === "chain") {
          const key = `${anchor.round}:${anchor.element}`
          tops.set(key, (tops.get(key) ?? 0) + 1)
        }
  return tops
}

function standingOf(
  motif: Motif,
  anchors: Anchors,
  heightMm: number,
  tops: ReadonlyMap<string, number>,
  thicknessMm: number,
): Standing {
  const anchor = anchors[0]!
  if (anchor.at === "centre") return { base: -1, heightMm, run: null }
  const target = motif.rounds[anchor.round]?.elements[anchor.element]
  const run =
    target?.type === "chain"
      ? { chains: target.chains, tops: tops.get(`${anchor.round}:${anchor.element}`) ?? 1 }
      : null
  return { base: anchor.round, heightMm: run ? Math.max(heightMm, thicknessMm) : heightMm, run }
}

function mainBase(standing: readonly (Standing | null)[]): number {
  const votes = new Map<number, number>()
  for (const part of standing) if (part) votes.set(part.base, (votes.get(part.base) ?? 0) + 1)
  return [...votes].reduce((best, vote) => (vote[1] > best[1] ? vote : best), [-1, 0])[0]
}

/** The middle of a side is the half of it furthest from its corners. */
const middleShare = 0.5

/** Splits a round's stitches into those in the middle of a side and those of a corner group. */
function sideAndCorner(
  round: Round,
  corners: RoundCorners,
  widths: readonly number[],
  standing: readonly (Standing | null)[],
): { side: StandingPart[]; corner: StandingPart[] } {
  const n = round.elements.length
  if (corners.groups.length === 0) return { side: merge(standing, widths, () => true), corner: [] }
  const middles: number[] = []
  let along = 0
  for (const width of widths) {
    middles.push(along + width / 2)
    along += width
  }
  const inCorner = new Uint8Array(n)
  const centres = corners.groups.map(({ first, last }) => {
    for (let i = first; ; i = (i + 1) % n) {
      inCorner[i] = 1
      if (i === last) break
    }
    const span = (middles[last]! - middles[first]! + along) % along
    return (middles[first]! + span / 2) % along
  })
  const half = along / centres.length / 2
  const isMiddle = (i: number) =>
    Math.min(...centres.map((centre) => cyclicDistance(middles[i]!, centre, along))) >=
    (1 - middleShare) * half
  const side = merge(standing, widths, (i) => inCorner[i] === 0 && isMiddle(i))
  return {
    side: side.length > 0 ? side : merge(standing, widths, () => true),
    corner: merge(standing, widths, (i) => inCorner[i] === 1),
  }
}

function cyclicDistance(a: number, b: number, length: number): number {
  const d = Math.abs(a - b) % length
  return Math.min(d, length - d)
}

function merge(
  standing: readonly (Standing | null)[],
  widths: readonly number[],
  take: (index: number) => boolean,
): StandingPart[] {
  const parts = new Map<string, StandingPart>()
  let total = 0
  standing.forEach((part, index) => {
    const width = widths[index]!
    if (!part || width <= 0 || !take(index)) return
    total += width
    const key = `${part.base}|${part.heightMm}|${part.run?.chains ?? 0}|${part.run?.tops ?? 0}`
    const merged = parts.get(key)
    if (merged) merged.share += width
    else parts.set(key, { ...part, share: width })
  })
  for (const part of parts.values()) part.share /= total
  return [...parts.values()]
}
