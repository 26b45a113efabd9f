// The growth ledger itself: rounds folded from the centre out.
//
// Edge. A round's edge is its top widths plus its chains. A run of chains is a string: it can hang
// slack until its feet stand one chain apart, and cannot be longer than its chains. So the edge is
// an interval, and a solid round's interval is a point. Fans (fans.ts) can stand shorter than their edge.
// Flat edge. At apothem a, an outline of k corners can have any perimeter between the circle's and
// that of the sharpest corners its corner stitches reach (outline.ts). Where the two intervals meet
// the round lies flat; where the whole edge is too short it cups, too long it ruffles.
// Growth. Flat growth is 2 pi d for a circle and 2 k tan(pi / k) d for k mitred corners; fullness is
// growth over it, and by Gauss-Bonnet the curvature inside is 2 pi (1 - fullness).
// Depth. A stitch stands its height above the edge it is worked into; worked round a run of chains it
// draws the run out into an arch first and stands on that.

import { clamp, cornerReachOf, cornerStretch, perimeterOf, sharpnessFor } from "./outline.ts"
import type { LedgerRow } from "./result.ts"
import { type PieceSummary, type RoundSummary, type StandingPart, shortestLoop } from "./summary.ts"
import { verdictOf } from "./verdict.ts"

/**
 * Feet of a slack loop stand at least this many chains apart: its two strands then lie side by side, and
 * a chain is about twice as long as its yarn is thick (assumed).
 */
export const slackFeetChains = 0.5

/**
 * Bases crowd in a loop: a foot needs about half a chain. Source: a joined ring of four chains holds eight
 * stitches easily, The Crochet Answer Book, chapter 6.
 */
const footShare = 0.5

/** Below this share of the edge a flat growth is no growth to judge (a surface round has no depth). */
const noGrowthShare = 1e-9

interface Edge {
  readonly apothem: number
  readonly corner: number
  readonly edge: number
  readonly perimeter: number
  /** The flat edge at this apothem as a circle, and with the sharpest corners that are reached. */
  readonly roundest: number
  readonly widest: number
  readonly sharpness: number
  readonly corners: number
  /** Share of each run's spare length that hangs slack, 0..1. */
  readonly slackShare: number
  readonly chainMm: number
}

/**
 * Ledger rows of a piece, from the centre out.
 * @param heightFactor multiplies every height against every width: 1 for the gauge as it is
 */
export function foldLedger(piece: PieceSummary, heightFactor = 1): LedgerRow[] {
  const centre: Edge = {
    apothem: piece.holeMm,
    corner: piece.holeMm,
    edge: 2 * Math.PI * piece.holeMm,
    perimeter: 2 * Math.PI * piece.holeMm,
    roundest: 2 * Math.PI * piece.holeMm,
    widest: 2 * Math.PI * piece.holeMm,
    sharpness: 0,
    corners: 0,
    slackShare: 0,
    chainMm: 0,
  }
  const edges: Edge[] = []
  const at = (index: number): Edge => edges[index] ?? centre
  return piece.rounds.map((round) => {
    const edge = layEdge(round, at, heightFactor)
    edges.push(edge)
    return rowOf(round, edge, at(round.base))
  })
}

function layEdge(round: RoundSummary, at: (index: number) => Edge, heightFactor: number): Edge {
  const { longest, shortest } = edgeInterval(round)
  const apothem = reach(round.side, at, heightFactor, (edge) => edge.apothem)
  const stretch = cornerStretch(round.corners)
  const cornerLimit = reach(round.corner, at, heightFactor, (edge) => edge.corner, stretch)
  const fullCorner = apothem * stretch
  const sharpest =
    fullCorner > apothem ? clamp((cornerLimit - apothem) / (fullCorner - apothem), 0, 1) : 0
  const roundest = perimeterOf(apothem, round.corners, 0)
  const widest = perimeterOf(apothem, round.corners, sharpest)
  const edge =
    longest < roundest ? longest : shortest > widest ? shortest : Math.min(longest, widest)
  const perimeter = clamp(edge, roundest, widest)
  const sharpness = sharpnessFor(perimeter, apothem, round.corners)
  return {
    apothem,
    corner: cornerReachOf(apothem, round.corners, sharpness),
    edge,
    perimeter,
    roundest,
    widest,
    sharpness,
    corners: round.corners,
    slackShare: longest > shortest ? (longest - edge) / (longest - shortest) : 0,
    chainMm: round.chainMm,
  }
}

function edgeInterval(round: RoundSummary): { longest: number; shortest: number } {
  let longest = round.solidMm
  let shortest = Math.max(0, round.solidMm - round.fanSlackMm)
  for (const { chains, count } of round.runs) {
    longest += chains * count * round.chainMm
    shortest += Math.min(chains, slackFeetChains) * count * round.chainMm
  }
  return { longest, shortest }
}

/** Where the round's tops come to lie: base, arch and height, weighed by the edge they carry. */
function reach(
  parts: readonly StandingPart[],
  at: (index: number) => Edge,
  heightFactor: number,
  baseReach: (edge: Edge) => number,
  stretch = 1,
): number {
  let total = 0
  for (const part of parts) {
    const base = at(part.base)
    const arch = part.run ? archHeight(part.run, base) : 0
    total += part.share * (baseReach(base) + arch + part.heightMm * heightFactor * stretch)
  }
  return total
}

/**
 * How far a run of chains is drawn out by the stitches round it: a flat top as wide as their feet
 * need between two straight legs. Chain length l, feet b apart, top t: sqrt(((l - t) / 2)^2 - ((b - t) / 2)^2).
 */
function archHeight(run: { chains: number; tops: number }, base: Edge): number {
  if (run.chains < shortestLoop) return 0
  const length = run.chains * base.chainMm
  const feet = Math.min(run.chains, slackFeetChains) * base.chainMm
  const span = length - base.slackShare * (length - feet)
  const top = Math.min(span, (run.tops - 1) * footShare * base.chainMm)
  return Math.sqrt(Math.max(0, ((length - top) / 2) ** 2 - ((span - top) / 2) ** 2))
}

function rowOf(round: RoundSummary, edge: Edge, below: Edge): LedgerRow {
  const { longest, shortest } = edgeInterval(round)
  const depth = edge.apothem - below.apothem
  const accumulated = ratioOf(edge.edge, edge.perimeter)
  const growth = edge.edge - below.edge
  const flatGrowth = clampGrowth(
    growth,
    2 * Math.PI * depth,
    widestGrowth(round, edge, below, depth),
  )
  const fullness =
    Math.abs(flatGrowth) > noGrowthShare * edge.perimeter
      ? growth / flatGrowth
      : edge.edge / Math.max(below.edge, noGrowthShare * edge.perimeter)
  return {
    round: round.number,
    edgeMm: longest,
    gatheredEdgeMm: shortest,
    depthMm: depth,
    radiusMm: edge.apothem,
    cornerReachMm: edge.corner,
    growthMm: growth,
    flatGrowthMm: flatGrowth,
    fullness,
    accumulatedFullness: accumulated,
    fullnessRange: [ratioOf(shortest, edge.widest), ratioOf(longest, edge.roundest)],
    heldFullness: Math.max(accumulated, heldFullness(round, shortest, edge)),
    curvatureDeg: 360 * (1 - fullness),
    outline: { corners: edge.corners, sharpness: edge.sharpness },
    slackMm: longest - edge.edge,
    verdict: verdictOf(accumulated),
    ...(round.ground ? {} : { inFront: true as const }),
  }
}

/** More than any piece can be full; also what an edge is over an outline of nothing. */
const mostFullness = 1e3

function ratioOf(edge: number, flat: number): number {
  return edge >= mostFullness * flat ? mostFullness : edge / flat
}

/** The fullness of a round whose scallops are held down; 0 where that is not too full. */
function heldFullness({ fanSlackMm }: RoundSummary, shortest: number, { widest }: Edge): number {
  const held = ratioOf(shortest + fanSlackMm, widest)
  return fanSlackMm > 0 && held > 1 ? held : 0
}

/** Growth with the corners as sharp as the round can make them, against the edge below laid flat. */
function widestGrowth(round: RoundSummary, edge: Edge, below: Edge, depth: number): number {
  const sharpest =
    edge.edge > edge.perimeter ? edge.sharpness : Math.max(edge.sharpness, below.sharpness)
  return Math.max(
    2 * Math.PI * depth,
    perimeterOf(edge.apothem, round.corners, sharpest) - below.perimeter,
  )
}

function clampGrowth(growth: number, low: number, high: number): number {
  return clamp(growth, Math.min(low, high), Math.max(low, high))
}
