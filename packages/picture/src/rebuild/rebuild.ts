// From the rings of a picture to rounds: the likeliest ways are laid out by the net and judged by their
// radii; where the first two differ, the one question is asked that parts them.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError, requirePositive, unlessRefused } from "@roundwright/numerics"
import { layOut } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { chanceOf, type FilterOptions, likelySequences, type Sequence } from "./filter.ts"
import { rebuiltMotif } from "./rebuilt-motif.ts"
import type { RoundChoice, SeenRing } from "./seen-ring.ts"

export interface RebuildOptions {
  readonly gauge: Gauge
  /** A length of the piece itself is known, or the stitch's width from close up: the scale is surer. */
  readonly scaleKnown?: boolean
  /** Radius of the hole in the middle, mm. */
  readonly holeMm?: number
}

export interface RebuiltCandidate {
  /** Stitch of the ring's rounds from inside, joined by "+" where there are two; "" where it belongs to the next ring. */
  readonly stitch: string
  readonly count: number
  readonly chains: number
  /** Chance, 0 to 1; those of one ring add up to 1 before the least are left out. */
  readonly score: number
}

export interface RebuiltRing {
  readonly ring: number
  readonly candidates: readonly RebuiltCandidate[]
  /** What the first way rests on, in words. */
  readonly restsOn: string
  /** Chains between posts: a round of lace, whose depth is told less surely. */
  readonly lace: boolean
}

export interface RebuildQuestion {
  readonly ring: number
  readonly about: "count" | "stitch"
  readonly text: string
}

export interface Rebuilt {
  readonly rounds: readonly RebuiltRing[]
  /** Null when one way stands out in every ring. */
  readonly question: RebuildQuestion | null
  readonly motif: Motif
  /** Radius after each ring of the motif as laid out, mm; null where the net refuses it. */
  readonly laidOutMm: readonly number[] | null
}

/** Spread of the scale with a gauge alone (hands differ), and with a length or a stitch of the piece measured. */
const scaleSpread = { gauge: 0.04, piece: 0.01 } as const
/** Single radii read from a picture scatter by this share. */
const radiusSpread = 0.012
/** Sequences that are laid out: each takes the net a tenth of a second. */
const laidOut = 10
/** A way below this chance is not told. */
const leastTold = 0.02
/** A ring whose first way is as sure as this needs no question. */
const settled = 0.9
const mostRings = 24

/** @throws RoundwrightError `no-rings`, `too-many-rings`, `no-scale`, `rings-not-outward` */
export function rebuildRounds(rings: readonly SeenRing[], options: RebuildOptions): Rebuilt {
  checkRings(rings, options)
  const filter: FilterOptions = {
    gauge: options.gauge,
    scaleSpread: options.scaleKnown === true ? scaleSpread.piece : scaleSpread.gauge,
    radiusSpread,
    repeats: commonCount(rings),
    holeMm: options.holeMm ?? 0,
  }
  const sequences = likelySequences(rings, filter)
  if (sequences.length === 0)
    throw new RoundwrightError("no-rounds", "No rounds fit the rings.", {
      hint: "Look at the counts of the picture: one of them may be far off.",
    })
  const judged = judgeByNet(sequences, rings, filter)
  const top = Math.max(...judged.map(({ logChance }) => logChance))
  const weights = judged.map(({ logChance }) => Math.exp(logChance - top))
  const total = weights.reduce((sum, weight) => sum + weight, 0)
  const rounds = rings.map((ring, i) => {
    const chances = new Map<string, { choice: RoundChoice; score: number }>()
    judged.forEach(({ choices }, k) => {
      const choice = choices[i]!
      const key = `${choice.kinds.join("+")} ${choice.count} ${choice.chains}`
      const score = (chances.get(key)?.score ?? 0) + weights[k]! / total
      chances.set(key, { choice, score })
    })
    const sorted = [...chances.values()].sort((a, b) => b.score - a.score)
    return {
      ring: ring.ring,
      restsOn: restsOn(ring, rings[i - 1]?.outerMm ?? filter.holeMm, sorted[0]!.choice),
      lace: sorted[0]!.choice.chains > 0,
      candidates: sorted
        .filter(({ score }, k) => k === 0 || score >= leastTold)
        .slice(0, 6)
        .map(({ choice, score }) => ({
          stitch: choice.kinds.join("+"),
          count: choice.count,
          chains: choice.chains,
          score,
        })),
    }
  })
  const best = judged.reduce((a, b) => (b.logChance > a.logChance ? b : a))
  const { motif } = rebuiltMotif(best.choices, filter.holeMm)
  return {
    rounds,
    question: questionOf(rounds),
    motif,
    laidOutMm: radiiByNet(best.choices, filter),
  }
}

function restsOn(ring: SeenRing, innerMm: number, choice: RoundChoice): string {
  const stitch =
    ring.stitch !== undefined
      ? "stitch told"
      : `${(ring.outerMm - innerMm).toFixed(1)} mm deep, ${choice.depthMm.toFixed(1)} expected`
  return `${ring.counts.length === 0 ? "count by the width of stitches" : "count seen"}; ${stitch}`
}

function checkRings(rings: readonly SeenRing[], { gauge, holeMm = 0 }: RebuildOptions): void {
  if (rings.length === 0)
    throw new RoundwrightError("no-rings", "There is no ring to rebuild a round from.", {
      hint: "Measure a picture first; its rings are lines such as: Ring 1: to 12 mm; 12 repeats.",
    })
  if (rings.length > mostRings)
    throw new RoundwrightError("too-many-rings", `More than ${mostRings} rings cannot be rebuilt.`)
  if (!gauge.absolute)
    throw new RoundwrightError("no-scale", "Nothing tells how large a stitch is.", {
      hint: "Give Gauge:, or Yarn: and Hook:, above the rings.",
    })
  rings.forEach((ring, i) => {
    requirePositive(ring.outerMm, `The radius of ring ${ring.ring}`)
    if (ring.outerMm <= (rings[i - 1]?.outerMm ?? holeMm))
      throw new RoundwrightError(
        "rings-not-outward",
        `Ring ${ring.ring} does not reach farther out than the ring before it.`,
        { hint: "Rings are told from the inside." },
      )
  })
}

function commonCount(rings: readonly SeenRing[]): number {
  const counts = rings.flatMap(({ counts }) => (counts[0] ? [counts[0].count] : []))
  return counts.length === 0 ? 6 : Math.min(...counts)
}

/** The likeliest sequences laid out by the net in place of the short reckoning; the rest keep theirs, moved by the same. */
function judgeByNet(
  sequences: readonly Sequence[],
  rings: readonly SeenRing[],
  filter: FilterOptions,
): Sequence[] {
  const first = sequences.slice(0, laidOut).map((one) => {
    const radii = radiiByNet(one.choices, filter)
    return {
      choices: one.choices,
      before: one.logChance,
      logChance: radii === null ? one.logChance : chanceOf(one.choices, radii, rings, filter),
    }
  })
  const shift =
    first.reduce((sum, one) => sum + one.logChance - one.before, 0) / Math.max(1, first.length)
  const rest = sequences
    .slice(laidOut)
    .map(({ choices, logChance }) => ({ choices, logChance: logChance + Math.min(0, shift) }))
  return [...first, ...rest]
}

/** Radius after each ring, pressed flat by the net. */
function radiiByNet(
  choices: readonly RoundChoice[],
  { gauge, holeMm }: FilterOptions,
): number[] | null {
  const { motif, lastRoundOf } = rebuiltMotif(choices, holeMm)
  return unlessRefused(
    () => {
      const { acrossAfterRound } = layOut(motif, gauge, { inSpace: false })
      return lastRoundOf.map((round) => (round < 0 ? 0 : acrossAfterRound[round]! / 2))
    },
    () => null,
  )
}

/** The ring whose first two ways are nearest to each other decides; within it, what they differ in. */
function questionOf(rounds: readonly RebuiltRing[]): RebuildQuestion | null {
  const open = rounds
    .filter(({ candidates }) => candidates.length > 1 && candidates[0]!.score < settled)
    .sort((a, b) => a.candidates[0]!.score - b.candidates[0]!.score)[0]
  if (!open) return null
  const [one, two] = open.candidates as [RebuiltCandidate, RebuiltCandidate]
  const ring = open.ring
  if (one.count !== two.count)
    return {
      ring,
      about: "count",
      text: `Count the posts of ring ${ring} between two places that look alike: are there ${one.count} or ${two.count} in all?`,
    }
  const words = (stitch: string) => stitch.replace("+", " and ")
  return {
    ring,
    about: "stitch",
    text:
      one.stitch === two.stitch
        ? `Count the chains between two posts of ring ${ring}: ${one.chains} or ${two.chains}?`
        : `Look closely at one post of ring ${ring}: is it ${words(one.stitch)} or ${words(two.stitch)}? An sc is about as tall as wide, an hdc a third taller, a dc twice and a tr three times as tall; a dc shows one strand slanting across it, a tr two.`,
  }
}
