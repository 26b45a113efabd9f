// Ovals: a foundation of chains worked round both ways. The two long sides stay straight and carry one stitch over
// another; only the two ends grow, together by as much as a circle does, so the edge at depth r is
//   2 L + 2 pi r   (L: length of the straight middle)
// and each end takes half of 2 pi h / w stitches more a round.
// Source: perimeter of a segment's outer parallel line, Steiner 1840 (from memory).

import { type Verdict, verdictOf } from "@roundwright/flatness"
import { ordinal, withStarts, writeRounds } from "@roundwright/instructions"
import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import {
  type Gauge,
  kindName,
  type StitchKind,
  sizeOf,
  type Terms,
  turningChains,
} from "@roundwright/stitches"
import { flatIncrease } from "./flat-count.ts"
import { gaugeHeadings } from "./gauge-headings.ts"
import { checkStitches } from "./palette.ts"

export interface OvalOptions {
  readonly stitch: StitchKind
  readonly gauge: Gauge
  readonly rounds: number
  /** Foundation chains, the turning chain not counted; or the length less the width of the finished oval. */
  readonly chains?: number
  readonly longerByMm?: number
  /** Terms of the text; US when absent. */
  readonly terms?: Terms
}

export interface OvalPlan {
  /** Round 1 is worked into the chain: `single-chain` with a place in each chain. */
  readonly motif: Motif
  readonly counts: readonly number[]
  readonly flatCounts: readonly number[]
  readonly chains: number
  /** Repeats of either end, which most rounds keep; 1 where there are none to keep. */
  readonly repeats: number
  readonly text: string
  /** By this file's own formula: a ledger that knows only circles and polygons would call the long middle too full. */
  readonly verdict: Verdict
  readonly fullness: readonly number[]
  readonly lengthMm: number
  readonly widthMm: number
}

const fewestChains = 3
/** Some four metres in worsted yarn: longer than a rug or a runner. */
const mostChains = 1000
const mostRounds = 60

/** @throws RoundwrightError `no-stitches`, `slip-stitch`, `decrease-in-list`, `bad-rounds`, `bad-oval`, `no-gauge` */
export function planOval(options: OvalOptions): OvalPlan {
  const { stitch, gauge, rounds, terms = "US" } = options
  checkStitches([stitch], terms)
  const { heightMm, widthMm } = sizeOf(stitch, gauge, { turned: false })
  // A foundation chain that is worked into takes the width of its stitches.
  const chains = chainsFor(options, widthMm)
  if (!Number.isInteger(rounds) || rounds < 1 || rounds > mostRounds)
    throw new RoundwrightError("bad-rounds", `${rounds} rounds cannot be planned.`, {
      hint: `Give a whole number from 1 to ${mostRounds}.`,
      numbers: { rounds },
    })
  // The first and the last chain are the ends' own centres; those between carry the straight sides.
  const straight = chains - 2
  const flatCounts = Array.from(
    { length: rounds },
    (_, i) => 2 * straight + ((i + 1) * 2 * Math.PI * heightMm) / widthMm,
  )
  const each = flatIncrease(stitch, gauge) / 2
  const repeats = repeatsOfEnd(each)
  const ends = flatCounts.map(
    (_, i) => repeats * Math.max(1, Math.round(((i + 1) * each) / repeats)),
  )
  let motif: Motif = { centre: { kind: "single-chain", chains }, rounds: [] }
  ends.forEach((end, i) => {
    const round =
      i === 0
        ? firstRound(stitch, chains, end)
        : laterRound(motif, stitch, straight, ends[i - 1]!, end)
    motif = { ...motif, rounds: [...motif.rounds, round] }
  })
  const counts = ends.map((end) => 2 * (straight + end))
  const fullness = counts.map((count, i) => count / flatCounts[i]!)
  return {
    motif,
    counts,
    flatCounts,
    chains,
    repeats,
    text: `${[...gaugeHeadings(gauge, terms), "", firstLine(stitch, chains, ends[0]!, terms), ...writeRounds(withStarts(motif, 1), 1, terms, { fastenOff: true })].join("\n")}\n`,
    verdict: verdictOf(fullness.at(-1)!),
    fullness,
    lengthMm: straight * widthMm + 2 * rounds * heightMm,
    widthMm: 2 * rounds * heightMm,
  }
}

function chainsFor({ chains, longerByMm, gauge }: OvalOptions, widthMm: number): number {
  if (longerByMm !== undefined && !gauge.absolute)
    throw new RoundwrightError("no-gauge", "A length in mm needs a gauge: swatch, yarn or hook.", {
      hint: "Give the yarn weight and the hook, or a swatch; or the number of chains.",
    })
  const wanted = chains ?? (longerByMm === undefined ? Number.NaN : longerByMm / widthMm + 2)
  const whole = chains === undefined ? Math.round(wanted) : chains
  if (!Number.isInteger(whole) || whole < fewestChains)
    throw new RoundwrightError("bad-oval", "An oval needs a foundation of three chains or more.", {
      hint: "Give the number of chains, or by how much it is to be longer than wide.",
    })
  if (whole > mostChains)
    throw new RoundwrightError("bad-oval", `${whole} foundation chains cannot be planned.`, {
      hint: `Give at most ${mostChains} chains${gauge.absolute ? `, which makes it ${(((mostChains - 2) * widthMm) / 1000).toFixed(1)} m longer than wide` : ""}.`,
      numbers: { chains: whole },
    })
  return whole
}

/** A whole number of increases within this share of the flat ones is kept to: at most one round in twenty departs. */
const nearEnough = 0.05

/**
 * Stitches that an end grows by in its usual round, in as many repeats; a single one where no whole number is near enough to
 * be kept to. Either way each end is right to half of it.
 */
function repeatsOfEnd(each: number): number {
  const whole = Math.max(1, Math.round(each))
  return Math.abs(whole - each) <= nearEnough * each ? whole : 1
}

/** Along one side of the chain, an end's stitches into its last chain, back along the other side. */
function firstRound(kind: StitchKind, chains: number, end: number): Round {
  const elements: Element[] = []
  const into = (chain: number, many: number) => {
    const anchors: Anchor[] = [{ at: "centre", chain }]
    for (let k = 0; k < many; k++) elements.push({ type: "stitch", kind, anchors })
  }
  for (let chain = 1; chain < chains - 1; chain++) into(chain, 1)
  into(chains - 1, end)
  for (let chain = chains - 2; chain > 0; chain--) into(chain, 1)
  into(0, end)
  return { number: 1, elements, turned: false, closing: "joined" }
}

function laterRound(
  motif: Motif,
  kind: StitchKind,
  straight: number,
  before: number,
  end: number,
): Round {
  const round = motif.rounds.length
  const elements: Element[] = []
  const into = (element: number, many: number) => {
    const anchors: Anchor[] = [{ at: "stitch", round: round - 1, element }]
    for (let k = 0; k < many; k++) elements.push({ type: "stitch", kind, anchors })
  }
  for (let side = 0; side < 2; side++) {
    const first = side * (straight + before)
    for (let k = 0; k < straight; k++) into(first + k, 1)
    for (let k = 0; k < before; k++) {
      // Increases spread evenly over the end: a repeat begins with one, in every other round it has one in its middle.
      const share = (end - before) / before
      const grown = (places: number): number =>
        round % 2 === 1 ? Math.ceil(places * share) : Math.floor(places * share + 0.5)
      into(first + straight + k, 1 + grown(k + 1) - grown(k))
    }
  }
  return { number: round + 1, elements, turned: false, closing: "joined" }
}

function firstLine(kind: StitchKind, chains: number, end: number, terms: Terms): string {
  const name = kindName(kind, terms)
  const turning = turningChains(kind.basic)
  const straight = chains - 2
  return `Rnd 1: ch ${chains + turning}; ${end} ${name} in ${ordinal(turning + 1)} ch from hook, ${name} in next ${straight} ch, ${end} ${name} in last ch, working along the other side of the chain, ${name} in next ${straight} ch; join. (${2 * (straight + end)} ${name})`
}
