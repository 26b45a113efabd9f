// Odds of the four verdicts from how full a piece is and how surely that is known.
//
// The logarithm of the fullness is taken as normal about what was found: hands differ in height over width, and counts and
// sizes are known only so well. A share of pieces is not what its text and gauge say at all (read, worked or measured
// otherwise); of those most lie flat, as patterns are published to.

import { normalBelow } from "@roundwright/numerics"
import type { Odds } from "./result.ts"
import type { PieceSummary } from "./summary.ts"
import { bands } from "./verdict.ts"

/** Standard deviation of the log fullness beside that of the hand: counts, sizes, the way it is worked out (fitted, see `bands`). */
const ownSpread = 0.04
/** Share of the hands' spread in height over width that counts: makers choose their counts by their own hand (fitted). */
const handShare = 0.5
/** Pieces that are not what text and gauge say, and how they then lie (fitted on the same pieces as the bands). */
const otherwise = { share: 0.1, flat: 0.8, blocksFlat: 0.08, cups: 0.05, ruffles: 0.07 } as const

/** Of pieces in the band that pins take up makers call this share flat as they lie (fitted: 4 of 5, one of them doubtful). */
const calledFlat = 0.6

/** @param spread relative spread of height over width among the hands that may have worked it, see `pieceSpread` */
export function oddsOf(fullness: number, spread: number): Odds {
  const middle = Math.log(Math.max(fullness, Number.MIN_VALUE))
  const deviation = Math.hypot(ownSpread, handShare * spread)
  const below = (limit: number) => normalBelow((Math.log(limit) - middle) / deviation)
  const cups = below(1 - bands.blocksLean)
  const flatFrom = below(1 - bands.flat)
  const flatTo = below(1 + bands.flat)
  const ruffles = 1 - below(1 + bands.blocksFull)
  const mixed = (chance: number, other: number) =>
    (1 - otherwise.share) * chance + otherwise.share * other
  const between = flatFrom - cups + 1 - ruffles - flatTo
  const flat = mixed(flatTo - flatFrom + calledFlat * between, otherwise.flat)
  const odds = {
    flat,
    cups: mixed(cups, otherwise.cups),
    ruffles: mixed(ruffles, otherwise.ruffles),
  }
  return {
    flat,
    blocksFlat: 1 - flat - odds.cups - odds.ruffles,
    cups: odds.cups,
    ruffles: odds.ruffles,
  }
}

/** Spread of the piece's height over width: its rounds' spreads weighed by their edges. */
export function pieceSpread(piece: PieceSummary): number {
  let edge = 0
  let spread = 0
  for (const round of piece.rounds) {
    edge += round.solidMm
    spread += round.solidMm * round.ratioSpread
  }
  return edge > 0 ? spread / edge : 0
}
