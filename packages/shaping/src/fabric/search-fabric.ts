// Rounds in a fabric of units, searched with the laid-out shape: each round is fitted to the polygon by lengths, the best
// fits are laid out as a net, the best of those carried on; the last round is then changed one thing at a time.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { buildNet, layOutFlat } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { measureProposal, type ProposalShape } from "../measure-proposal.ts"
import { scoreOf } from "../score.ts"
import { sideSpread, squaringTarget } from "../squaring-target.ts"
import type { Fabric } from "./fabric-of.ts"
import { type FabricRound, kindsOf, type Seating } from "./fabric-plan.ts"
import type { FabricWish } from "./fabric-wish.ts"
import { fitFabric } from "./fit-fabric.ts"
import { layUnits, standOfCorners } from "./laid-units.ts"
import { neighboursOfFabric } from "./neighbours-of-fabric.ts"
import { seatingsOf } from "./seatings.ts"
import { wordsOfRound } from "./words-of-round.ts"
import { workFabric } from "./work-fabric.ts"

/** A piece with rounds added, laid out. */
export interface FabricPiece {
  readonly motif: Motif
  readonly from: number
  readonly rounds: readonly FabricRound[]
  readonly corners: readonly (readonly number[])[]
  /** What its first round was built on. */
  readonly firstSeating: Seating
  readonly shape: ProposalShape
  readonly seating: Seating
  /** 0 is perfect: of the shape alone, and with what makes its rounds hard to keep in one's head. */
  readonly shapeScore: number
  readonly score: number
  /** The piece before its last round, to change that. */
  readonly before: Ground
}

interface Ground {
  readonly motif: Motif
  readonly seating: Seating
  readonly net: ProposalShape["net"]
  readonly xy: Float64Array
  readonly rounds: readonly FabricRound[]
  /** What the first added round was built on; null before there is one. */
  readonly firstSeating: Seating | null
  /** How far its corners are from standing evenly, radians. */
  readonly askew: number
}

const mostSeatings = 6
/** Rounds carried on to the next. */
const mostCarried = 2
/** Heights of the side's lowest stitch are tried a little off: the yarn gives this much. */
const giveSteps = [0.94, 1, 1.06] as const

/** Best first; empty where nothing fits. */
export function searchFabric(
  motif: Motif,
  gauge: Gauge,
  fabric: Fabric,
  corners: number,
  wish: FabricWish,
  from: number = motif.rounds.length,
): FabricPiece[] {
  const net = buildNet(motif, gauge)
  const { xy, how } = layOutFlat(net)
  // A base that does not come to rest is read or worked wrongly: each try on it takes long and tells little.
  const budget = how.settled ? wish.budget : Math.min(wish.budget, fewestTries)
  const seats = bestSeatings(fabric, corners, net, xy)
  let grounds: Ground[] = seats.map((seat) => ({
    ...seat,
    motif,
    net,
    xy,
    rounds: [],
    firstSeating: null,
  }))
  const share = Math.max(2, Math.floor((budget * shareOfFits) / wish.rounds))
  let found: FabricPiece[] = []
  for (let r = 0; r < wish.rounds; r++) {
    const last = r === wish.rounds - 1
    const fits = grounds
      .flatMap((ground) => fitsOn(ground, wish).map((fit) => ({ ...fit, ground })))
      .sort((a, b) => a.cost - b.cost)
    found = varied(fits, share).flatMap(({ ground, plan }) => {
      const piece = layPiece(ground, plan, gauge, from, wish, last)
      return piece === null ? [] : [piece]
    })
    found.sort((a, b) => a.score - b.score)
    grounds = found
      .slice(0, mostCarried)
      .map(({ motif, seating, shape, rounds, firstSeating }) => ({
        askew: 0,
        firstSeating,
        motif,
        seating,
        net: shape.net,
        xy: shape.xy,
        rounds,
      }))
  }
  return improve(found, gauge, from, { ...wish, budget })
}

const fewestTries = 5

/** Of a budget of layouts what goes into fitting rounds; the rest improves the best. */
const shareOfFits = 0.6

/** The seatings that stand most evenly and reach furthest, each manner once. */
function bestSeatings(
  fabric: Fabric,
  corners: number,
  net: Ground["net"],
  xy: Float64Array,
): { seating: Seating; askew: number }[] {
  const turns = Math.ceil(fabric.units.length / corners)
  const seen = new Set<string>()
  return seatingsOf(fabric, corners, turns)
    .map((seating) => ({ seating, ...standOfCorners(net, xy, seating) }))
    .sort((a, b) => rankOf(a) - rankOf(b) || firstPlace(a.seating) - firstPlace(b.seating))
    .filter(({ seating, askew, reach }) => {
      const sides = seating.sides.map(({ length }) => length).sort((a, b) => a - b)
      const seats = seating.corners.map((corner) => corner.class).sort()
      const key = `${askew.toFixed(2)} ${reach.toFixed(2)} ${sides} ${seats}`
      return seen.has(key) ? false : seen.add(key)
    })
    .slice(0, mostSeatings)
}

/** A round that begins in a corner is told without a tail: the corner nearest to the join decides. */
function firstPlace({ corners }: Seating): number {
  return Math.min(...corners.map(({ spot }) => spot.element))
}

function rankOf({ askew, reach }: { askew: number; reach: number }): number {
  const near = (value: number, step: number) => step * Math.round(value / step)
  return (near(askew, sameAskew) / muchAskew) ** 2 - near(reach, sameReach) / 1000
}

/** Seatings nearer to one another than this stand alike: the net's own tolerance, radians and widths of a stitch. */
const sameAskew = 0.02
const sameReach = 0.1

/** Corners off their places by so much, radians, are what a maker would remark on. */
const muchAskew = 0.1

interface Fit {
  readonly plan: FabricRound
  readonly cost: number
  readonly key: string
}

function fitsOn(ground: Ground, wish: FabricWish): Fit[] {
  const laid = layUnits(ground.net, ground.xy, ground.seating)
  const { palette, kinds } = wish
  const graded = ground.rounds.filter(isGraded).length
  const sets = [
    ...(graded < wish.gradedRounds && kinds.length > 1 ? [kinds] : []),
    ...kinds.map((kind) => [kind]),
  ]
  const sidesNow = [...laid.sides.values()].flatMap((units) => units[units.length >> 1] ?? [])
  const side =
    sidesNow.length > 0
      ? sidesNow.reduce((sum, unit) => sum + unit.out, 0) / sidesNow.length
      : (laid.cornerReach.get("on") ?? laid.cornerReach.get("between"))! * Math.cos(laid.half)
  const askew = (ground.askew / muchAskew) ** 2
  const found = new Map<string, Fit>()
  for (const [f, filling] of wish.fillings.entries())
    for (const set of sets)
      for (const low of set)
        for (const give of giveSteps)
          for (const corner of wish.corners)
            for (const evenGaps of [true, false]) {
              const apothem = side + palette.heightMm[low]! * give
              const fit = fitFabric(
                laid,
                { filling, corner, apothem, kinds: set, evenGaps },
                palette,
              )
              if (fit === null) continue
              const key = keyOf(fit.plan)
              const cost = fit.misfit + ease(fit.plan) + f * perUnusual + askew
              const before = found.get(key)
              if (before === undefined || cost < before.cost)
                found.set(key, {
                  plan: fit.plan,
                  cost,
                  key: `${f}|${corner.chains}|${set.length > 1}`,
                })
            }
  return [...found.values()]
}

/** A filling further down the list of usual ones is worth this much straightness. */
const perUnusual = 0.04

/** The best of each manner in turn, so that what is laid out differs. */
function varied<T extends { readonly key: string; readonly cost: number }>(
  fits: readonly T[],
  most: number,
): T[] {
  const alike = new Map<string, number>()
  const kept: { fit: T; rank: number }[] = []
  for (const fit of fits) {
    const rank = alike.get(fit.key) ?? 0
    alike.set(fit.key, rank + 1)
    if (rank < mostAlike) kept.push({ fit, rank })
  }
  return kept
    .sort((a, b) => a.fit.cost + a.rank * perRank - (b.fit.cost + b.rank * perRank))
    .slice(0, most)
    .map(({ fit }) => fit)
}

const mostAlike = 3
const perRank = 0.3

export function keyOf(plan: FabricRound): string {
  return JSON.stringify([[...plan.corners], [...plan.sides], plan.next])
}

export function isGraded(plan: FabricRound): boolean {
  return kindsOf(plan).size > 1
}

/** What makes a round hard to keep in one's head: the words it takes, and kinds beyond the first. */
export function ease(plan: FabricRound): number {
  return perKind * (kindsOf(plan).size - 1) + perWord * wordsOfRound(plan)
}

/** Ten words more are as bad as a fifth of what a maker would remark on in the shape. */
const perKind = 0.1
const perWord = 0.02

function layPiece(
  before: Ground,
  plan: FabricRound,
  gauge: Gauge,
  from: number,
  wish: FabricWish,
  last: boolean,
): FabricPiece | null {
  const worked = workFabric(before.motif, before.seating, plan, wish.palette)
  const rounds = [...before.rounds, plan]
  try {
    const shape = measureProposal(worked.motif, gauge, worked.corners, from)
    const shapeScore = scorePiece(shape, worked.corners.length, last)
    if (!Number.isFinite(shapeScore)) return null
    const score = shapeScore + rounds.reduce((sum, round) => sum + ease(round), 0)
    const { motif, corners, seating } = worked
    const firstSeating = before.firstSeating ?? before.seating
    return { motif, from, rounds, corners, firstSeating, shape, shapeScore, seating, score, before }
  } catch (error) {
    if (error instanceof RoundwrightError) return null
    throw error
  }
}

/** Loops and shells stand out between the stitches that hold them: unevenness counts that much less than in solid fabric. */
const unevenOfFabric = 0.4

function scorePiece(shape: ProposalShape, corners: number, last: boolean): number {
  const parts = scoreOf({
    bow: shape.bowMm / shape.sideMm,
    uneven: (unevenOfFabric * shape.unevenMm) / shape.sideMm,
    angleOffDeg: last ? shape.cornerAngleDeg - (180 - 360 / corners) : 0,
    fullnessOff: shape.judged.verdict === "flat" ? 0 : shape.judged.blockingStretch,
    strainEnergy: shape.strainEnergy / lessStrain,
    kinds: 1,
    reversals: 0,
    skips: 0,
    runs: 0,
  })
  const spread = (sideSpread(shape.sides) / muchSpread) ** 2
  return (last && isTrue(shape, corners) ? ofTrue : 1) * (parts + spread)
}

/** Among sides that are straight and corners that are true the easier round is the better one: what is left counts so much. */
const ofTrue = 0.25

function isTrue({ bowMm, sideMm, cornerAngleDeg, judged }: ProposalShape, corners: number) {
  return (
    Math.abs(bowMm / sideMm) < squaringTarget.bow &&
    Math.abs(cornerAngleDeg - (180 - 360 / corners)) <= squaringTarget.angleDeg &&
    judged.verdict === "flat"
  )
}

/** Sides that differ by so much of their length are seen to differ. */
const muchSpread = 0.05

/** Chains take up what strains solid fabric: strain counts this much less. */
const lessStrain = 2

function improve(
  found: FabricPiece[],
  gauge: Gauge,
  from: number,
  wish: FabricWish,
): FabricPiece[] {
  const [first] = found
  const done =
    first === undefined || (wish.brief === true && isTrue(first.shape, first.corners.length))
  let left = done || first.shapeScore < goodEnough ? 0 : Math.ceil(wish.budget * (1 - shareOfFits))
  const seen = new Set(found.map(({ rounds }) => keyOf(rounds.at(-1)!)))
  let pool = [...found]
  const climbed = new Set<FabricPiece>()
  while (left > 0) {
    const best = pool.find((piece) => !climbed.has(piece))
    if (best === undefined || climbed.size >= mostClimbed) break
    climbed.add(best)
    for (const plan of neighboursOfFabric(best.rounds.at(-1)!, wish)) {
      if (left <= 0) break
      const key = keyOf(plan)
      if (seen.has(key)) continue
      seen.add(key)
      left--
      const piece = layPiece(best.before, plan, gauge, from, wish, true)
      if (piece !== null) pool.push(piece)
    }
    pool = pool.sort((a, b) => a.score - b.score)
  }
  return pool
}

const mostClimbed = 3
/** A score at which nothing is left that a maker would remark on. */
const goodEnough = 0.5
