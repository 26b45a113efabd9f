// Flat discs and polygons planned from the centre: whole counts for each round, in repeats, as near to flat as
// whole repeats come.
//
// The count of a round is the multiple of the repeat nearest to the flat count at its radius, so the
// error never adds up: where the flat increase is fractional, some rounds take a repeat more or none
// ("every n-th round"). A steady plan takes the same increase every round, where one lies flat.

import { keepLedger, type Ledger, planBand, type Verdict } from "@roundwright/flatness"
import { withStarts, writeRounds } from "@roundwright/instructions"
import { type Centre, countRound, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { assumedScWidthMm } from "@roundwright/relaxation"
import { chainSize, type Gauge, type StitchKind, sizeOf, type Terms } from "@roundwright/stitches"
import { chainPolygon } from "./chain-polygon.ts"
import { flatCount, flatIncrease } from "./flat-count.ts"
import { gaugeHeadings } from "./gauge-headings.ts"
import { checkStitches } from "./palette.ts"
import { flattestPolygon, type PlanBuilder } from "./plan-polygon.ts"
import { planWords } from "./plan-words.ts"
import { type Increases, spreadRound } from "./spread.ts"

export interface CircleOptions {
  /** One stitch, or a mix: one for each round, from the centre, begun again when it ends. */
  readonly stitches: readonly StitchKind[]
  readonly gauge: Gauge
  /** Either the size across (side to side); a gauge without mm is taken for worsted yarn then ... */
  readonly acrossMm?: number
  /** ... or the number of rounds. */
  readonly rounds?: number
  readonly increases?: Increases
  /** Stacked increases at that many sharp corners: a polygon. */
  readonly corners?: number
  /** A chain space at every corner, as is usual, or a group of stitches; chains when absent. */
  readonly cornerStyle?: "chains" | "stitches"
  /** Repeats every round keeps; chosen when absent. */
  readonly repeats?: number
  readonly centre?: Centre
  /** Terms of the text and the words; US when absent. */
  readonly terms?: Terms
}

export interface CirclePlan {
  readonly motif: Motif
  readonly counts: readonly number[]
  /** Stitches more than in the round before; the first is the first round's count. */
  readonly added: readonly number[]
  /** What lies flat, exactly. */
  readonly flatCounts: readonly number[]
  readonly repeats: number
  readonly text: string
  readonly ledger: Ledger
  readonly verdict: Verdict
  /** The plan in words: the increase and the rounds that depart from it. */
  readonly words: readonly string[]
}

/** More rounds than this are no plan a maker works from. */
const mostRounds = 120
/** Repeats a maker counts along easily. */
const easyRepeats = [6, 8, 12, 10, 9, 7, 5, 11, 13, 14, 16, 4, 15, 18, 20] as const

/**
 * @throws RoundwrightError `no-stitches`, `slip-stitch`, `decrease-in-list`, `no-size`, `two-sizes`, `bad-rounds`,
 *   `bad-corners`, `bad-repeats`
 */
export function planCircle(options: CircleOptions): CirclePlan {
  const { gauge, stitches, terms = "US", increases = "staggered" } = options
  const corners = options.corners ?? 0
  checkOptions(options)
  const centre = options.centre ?? { kind: "adjustable-ring" }
  const kinds = kindsOfRounds(options, holeOf(centre, gauge))
  const radii: number[] = []
  kinds.reduce(
    (radius, kind) => {
      radii.push(radius + sizeOf(kind, gauge, { turned: false }).heightMm)
      return radii.at(-1)!
    },
    holeOf(centre, gauge),
  )
  const flatCounts = kinds.map((kind, i) => flatCount(kind, gauge, radii[i]!, corners))
  const repeats =
    corners > 0 ? corners : (options.repeats ?? chooseRepeats(flatCounts, stitches, gauge))
  const build: PlanBuilder = (next) => {
    let made: Motif = { centre, rounds: [] }
    kinds.forEach((kind, i) => {
      made = { ...made, rounds: [...made.rounds, next(made, kind, flatCounts[i]!)] }
    })
    return made
  }
  const chained =
    corners > 0 && stitches.length === 1 && (options.cornerStyle ?? "chains") === "chains"
      ? chainPolygon(gauge, corners, flatCounts, stitches[0]!, build)
      : null
  const motif =
    corners > 0
      ? (chained ?? flattestPolygon(stitches, gauge, corners, flatCounts, build))
      : build((below, kind, flat) => {
          const before = below.rounds.at(-1)?.elements.length ?? 0
          const steady = stitches.length === 1 ? kind : null
          const count = countFor(flat, repeats, before, steady, gauge)
          return spreadRound(below, kind, count, repeats, increases)
        })
  const counts = motif.rounds.map((round) => countRound(round).stitches)
  const added = counts.map((count, i) => count - (counts[i - 1] ?? 0))
  const ledger = keepLedger(motif, gauge)
  return {
    motif,
    counts,
    added,
    flatCounts,
    repeats,
    text: `${[...gaugeHeadings(gauge, terms), "", ...writeRounds(withStarts(motif), 0, terms, { fastenOff: true })].join("\n")}\n`,
    ledger,
    verdict: ledger.verdict,
    words: planWords({
      stitches,
      gauge,
      terms,
      corners,
      increases,
      acrossMm: options.acrossMm,
      motif,
      counts,
      added,
      flatCounts,
      radiusMm: radii.at(-1)!,
      unitMm: unitMm(gauge),
    }),
  }
}

/** More repeats than this are no rhythm to count along. */
const mostRepeats = 60

function checkOptions({
  stitches,
  acrossMm,
  rounds,
  corners,
  repeats,
  terms,
}: CircleOptions): void {
  checkStitches(stitches, terms)
  if (acrossMm === undefined && rounds === undefined)
    throw new RoundwrightError("no-size", "Neither the size across nor the rounds are given.", {
      hint: "Say how wide it shall be, such as 200 mm across, or how many rounds it shall have.",
    })
  if (acrossMm !== undefined && rounds !== undefined)
    throw new RoundwrightError(
      "two-sizes",
      "Both a size across and a number of rounds are given.",
      {
        hint: "The one follows from the other: leave one of them out.",
      },
    )
  if (
    repeats !== undefined &&
    !(Number.isInteger(repeats) && repeats > 0 && repeats <= mostRepeats)
  )
    throw new RoundwrightError("bad-repeats", `A round cannot be planned in ${repeats} repeats.`, {
      hint: `Give a whole number from 1 to ${mostRepeats}.`,
      numbers: { repeats },
    })
  if (repeats !== undefined && (corners ?? 0) > 0 && repeats !== corners)
    throw new RoundwrightError("bad-repeats", "A polygon has as many repeats as corners.", {
      hint: "Leave the repeats out.",
      numbers: { repeats, corners: corners ?? 0 },
    })
  if (rounds !== undefined && (!Number.isInteger(rounds) || rounds < 1 || rounds > mostRounds))
    throw new RoundwrightError("bad-rounds", `${rounds} rounds cannot be planned.`, {
      hint: `Give a whole number from 1 to ${mostRounds}.`,
      numbers: { rounds },
    })
  if (acrossMm !== undefined && !(Number.isFinite(acrossMm) && acrossMm > 0))
    throw new RoundwrightError("no-size", `A piece cannot be ${acrossMm} mm across.`, {
      hint: "Give a length above zero.",
      numbers: { acrossMm },
    })
  if (
    corners !== undefined &&
    (!Number.isInteger(corners) || (corners !== 0 && (corners < 3 || corners > 12)))
  )
    throw new RoundwrightError(
      "bad-corners",
      `A piece cannot be given ${corners} ${corners === 1 ? "corner" : "corners"}.`,
      {
        hint: "Ask for 3 to 12 corners, or for none.",
        numbers: { corners },
      },
    )
}

/** mm in one unit of the gauge's lengths: an assumed width of sc where it knows no mm. */
function unitMm(gauge: Gauge): number {
  return gauge.absolute ? 1 : assumedScWidthMm / gauge.scWidthMm
}

/** Radius of the hole, as the ledger takes it: half a chain inside the ring's middle line. */
function holeOf(centre: Centre, gauge: Gauge): number {
  const chainMm = chainSize(gauge).lengthMm
  if (centre.kind === "solid-ring") return (centre.diameterMm ?? 0) / 2
  if (centre.kind !== "chain-ring") return 0
  return Math.max(0, (centre.chains * chainMm) / (2 * Math.PI) - chainMm / 2)
}

/** Rounds until the radius comes nearest to the half of what is asked for. */
function kindsOfRounds(options: CircleOptions, holeMm: number): StitchKind[] {
  const { stitches, rounds, acrossMm, gauge } = options
  const kindAt = (i: number) => stitches[i % stitches.length]!
  if (rounds !== undefined) return Array.from({ length: rounds }, (_, i) => kindAt(i))
  const kinds: StitchKind[] = []
  let radius = holeMm
  while (kinds.length < mostRounds) {
    const next = kindAt(kinds.length)
    const depth = sizeOf(next, gauge, { turned: false }).heightMm
    if (kinds.length > 0 && radius + depth / 2 > acrossMm! / unitMm(gauge) / 2) return kinds
    kinds.push(next)
    radius += depth
  }
  throw new RoundwrightError("bad-rounds", `That takes more than ${mostRounds} rounds.`, {
    hint: "Plan a smaller piece or a taller stitch.",
    numbers: { acrossMm: acrossMm! },
  })
}

/** The number of repeats nearest to the flat increase: the trade's 6 for sc, 8 for hdc, 12 for dc. */
function chooseRepeats(
  flatCounts: readonly number[],
  stitches: readonly StitchKind[],
  gauge: Gauge,
): number {
  const target = stitches.length === 1 ? flatIncrease(stitches[0]!, gauge) : flatCounts[0]!
  const near = easyRepeats.filter((repeats) => Math.abs(repeats / target - 1) <= planBand)
  if (near.length > 0) return near[0]!
  return Math.max(1, Math.round(target))
}

/**
 * The same increase every round where that lies flat (within the give of the yarn); else the multiple
 * of the repeat nearest to the flat count, never fewer than the round before.
 */
function countFor(
  flat: number,
  repeats: number,
  before: number,
  steadyKind: StitchKind | null,
  gauge: Gauge,
): number {
  const steady = before + repeats
  if (steadyKind && Math.abs(repeats / flatIncrease(steadyKind, gauge) - 1) <= planBand) {
    if (Math.abs(steady / flat - 1) <= planBand) return steady
  }
  return Math.max(before, repeats * Math.max(1, Math.round(flat / repeats)))
}
