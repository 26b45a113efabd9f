// How much yarn each stitch takes, in the yarn of one sc. A stitch is made of loops drawn through (1 each) and of
// yarn-overs laid round the hook (0.86 each); an sc is two loops, so ch 0.5, hdc 1.43, dc 1.93, tr 2.86 of an sc.
//
// The 0.86 was fitted on one maker's single rows of sc, hdc and dc in worsted (windchilde.com, bluedepth: 10.6, 15.7 and 20.4
// in of yarn an inch); the weighed swatches and the equal-yarn squares of other makers judge it (test/evidence/yarn.ts).

import type { Motif, Round } from "@roundwright/motif"
import { type BasicStitch, type StitchKind, yarnOvers } from "@roundwright/stitches"

/** Yarn of a yarn-over against that of a loop drawn through. */
export const yarnOverShare = 0.86
/** Loops in an sc: all is told in its yarn. */
const loopsOfSc = 2

/** Loops drawn through in one leg worked to its end: pulled up once, then off the hook two by two. */
const loopsOf: Readonly<Record<BasicStitch, number>> = {
  "sl st": 1,
  sc: 2,
  esc: 3,
  hdc: 2,
  ehdc: 3,
  dc: 3,
  edc: 4,
  tr: 4,
  etr: 5,
  dtr: 5,
  trtr: 6,
  quadtr: 7,
  quintr: 8,
}

/** Yarn of one stitch in sc. Gathered legs are each worked but for their last loop, which they share. */
export function yarnOfStitch(kind: StitchKind): number {
  const leg = yarnOvers(kind.basic) * yarnOverShare + loopsOf[kind.basic]
  const { gathered } = kind
  if (!gathered) return leg / loopsOfSc
  if (gathered.how === "popcorn") return (gathered.legs * leg + 1) / loopsOfSc
  // A puff's legs are pulled up and not worked off at all.
  const open = gathered.how === "puff" ? yarnOvers(kind.basic) * yarnOverShare + 1 : leg - 1
  return (gathered.legs * open + 1) / loopsOfSc
}

/** Yarn of one chain, in sc. */
export const yarnOfChain = 1 / loopsOfSc
/** A join is a slip stitch. */
const yarnOfJoin = 1 / loopsOfSc

/** Yarn of one round, in sc: its stitches, chains, picots, starting chain and join. */
export function yarnOfRound(round: Round): number {
  let sum = round.closing === "joined" ? yarnOfJoin : 0
  for (const element of round.elements) {
    if (element.type === "stitch")
      sum +=
        element.madeOfChains === undefined
          ? yarnOfStitch(element.kind)
          : element.madeOfChains * yarnOfChain
    else {
      // The loop of a picot is closed with a slip stitch; a run of chains may end in a stitch that stands for some of them.
      const closed = element.closedWith ? yarnOfStitch(element.closedWith) : 0
      sum +=
        element.chains * yarnOfChain + (element.type === "picot" ? closed || yarnOfJoin : closed)
    }
  }
  const { startChain } = round
  if (startChain && !startChain.counts) sum += startChain.chains * yarnOfChain
  return sum
}

/** Yarn of the centre: a ring of chains and its join. */
export function yarnOfCentre({ centre }: Motif): number {
  if (centre.kind === "chain-ring") return centre.chains * yarnOfChain + yarnOfJoin
  return centre.kind === "adjustable-ring" ? 1 : yarnOfChain
}

/** Yarn of every round, in sc; the centre with the first. */
export function yarnByRound(motif: Motif): number[] {
  return motif.rounds.map(
    (round, index) => yarnOfRound(round) + (index === 0 ? yarnOfCentre(motif) : 0),
  )
}
