// Odds of the four verdicts from how full a piece is and how surely that is known.
//
// The logarithm of the fullness is taken as normal about what was found: hands differ in height over width, and counts and
// sizes are known only so well. A share of pieces is not what its text and gauge say at all (read, worked or measured
// otherwise); of those most lie flat, as patterns are published to.

import { normalBelow } from "@roundwright/numerics"
import type { Odds, Verdict } from "./result.ts"
import type { PieceSummary } from "./summary.ts"
import { bands, verdictOf } from "./verdict.ts"

/** Standard deviation of the log fullness beside that of the hand: counts, sizes, the way it is worked out (fitted, see `bands`). */
const ownSpread = 0.04
/** Share of the hands' spread in height over width that counts: makers choose their counts by their own hand (fitted). */
const handShare = 0.5
/** Pieces that are not what text and gauge say, and how they then lie (fitted on the same pieces as the bands). */
const otherwise = { share: 0.1, flat: 0.8, blocksFlat: 0.08, cups: 0.05, ruffles: 0.07 } as const

/** Of pieces in the band that pins take up makers call this share flat as they lie (fitted: 4 of 5, one of them doubtful). */
const calledFlat = 0.6

/**
 * Hands are of two kinds where sc is worked round and round without turning: most work it about as high as wide, others much
 * tighter and taller, as five of nine published gauges have it (1.0 to 1.19, their middle 1.14). So makers call discs of 6 sc a
 * round flat, and discs of 8. Half of all hands are tight before a piece is seen (fitted; five of nine gauges, tapestry
 * among them); a maker works the counts that lie flat in her hand, so each kind weighs by the odds that the piece lies flat in it.
 */
export const tightHand = { taller: 1.14, share: 0.5 } as const

/** The hands that may have worked a piece. */
export interface Hands {
  /** Relative spread of height over width among them. */
  readonly spread: number
  /** Share of all edges in sc that is not turned and of which no swatch tells, 0..1. */
  readonly unturned: number
}

export function oddsOf(fullness: number, { spread, unturned }: Hands): Odds {
  const usual = oddsInHand(fullness, spread)
  if (unturned === 0) return usual
  const tight = oddsInHand(fullness * tightHand.taller ** -unturned, spread)
  const likely = tightHand.share * tight.flat
  const share = likely / (likely + (1 - tightHand.share) * usual.flat)
  const mixed = (one: number, other: number) => (1 - share) * one + share * other
  return {
    flat: mixed(usual.flat, tight.flat),
    blocksFlat: mixed(usual.blocksFlat, tight.blocksFlat),
    cups: mixed(usual.cups, tight.cups),
    ruffles: mixed(usual.ruffles, tight.ruffles),
  }
}

function oddsInHand(fullness: number, spread: number): Odds {
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

/**
 * The verdict on one fullness, in the hands that may have worked it: cups or ruffles is told only where that is likelier than
 * lying flat. What lies flat in one kind of hand and not in the other is between them.
 */
export function verdictInHands(fullness: number, hands: Hands): Verdict {
  const verdict = verdictOf(fullness)
  if (verdict === "flat" || verdict === "blocks-flat") return verdict
  const odds = oddsOf(fullness, hands)
  return odds.flat > odds[verdict] ? "blocks-flat" : verdict
}

/** The hands of a piece: what its rounds say of them, weighed by their edges. */
export function handsOf(piece: PieceSummary): Hands {
  let [edge, solid, spread, unturned] = [0, 0, 0, 0]
  for (const { edgeMm, solidMm, ratioSpread, unturnedShare } of piece.rounds) {
    edge += edgeMm
    solid += solidMm
    spread += solidMm * ratioSpread
    unturned += solidMm * unturnedShare
  }
  return solid > 0
    ? { spread: spread / solid, unturned: unturned / edge }
    : { spread: 0, unturned: 0 }
}
