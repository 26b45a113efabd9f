// What a maker can do to bring a piece to a size: each as a changed piece or gauge, still unmeasured, with the work it undoes.

import type { Motif } from "@roundwright/motif"
import { applyToMotif } from "@roundwright/shaping"
import {
  type BasicStitch,
  basicName,
  chainSize,
  type Gauge,
  sizeOf,
  type Terms,
} from "@roundwright/stitches"
import { withRound } from "./added-round.ts"
import { extended, inExtended, inStitch, ladder, mainStitch, mixedHeights } from "./last-round.ts"
import type { WayKind } from "./result.ts"

export interface Candidate {
  readonly kind: WayKind
  readonly change: string
  readonly motif: Motif
  /** What it does to the size across, by a rule of thumb: candidates far from the target are not laid out. */
  readonly estimateMm: number
  /** How much is made again: 0 nothing, 1 a round, 5 all of it. */
  readonly work: number
  /** Index of the first round that differs. */
  readonly from: number
}

/** Parts of a side that may be lower than its ends. */
const middles = [
  [1 / 3, "third"],
  [2 / 3, "two thirds"],
] as const

/** Two different rounds added. */
const pairs = [
  ["hdc", "sc"],
  ["dc", "sc"],
  ["dc", "hdc"],
  ["tr", "sc"],
] as const

/** All of it made again: another start, another hook. */
export const wholeWork = 6.5

/** More rounds than these make another piece of it. */
const mostAdded = 8
const mostLeftOut = 8

/** Changed pieces, without those that only another hook or the pins make. */
export function candidatesOf(
  motif: Motif,
  gauge: Gauge,
  acrossMm: number,
  missingMm: number,
  terms: Terms,
): Candidate[] {
  const name = (basic: BasicStitch) => basicName(basic, terms)
  const height = (basic: BasicStitch) => sizeOf({ basic }, gauge, { turned: false }).heightMm
  const last = motif.rounds.length - 1
  const lastNumber = motif.rounds[last]!.number
  const main = mainStitch(motif.rounds[last]!)
  const found: Candidate[] = []
  const add = (one: Omit<Candidate, "motif"> & { motif: Motif | null }) => {
    if (one.motif) found.push(one as Candidate)
  }
  if (main !== null && last > 0)
    for (const to of ladder.filter((basic) => basic !== main))
      add({
        kind: "last-round",
        change: `Work round ${lastNumber} in ${name(to)} in place of ${name(main)}`,
        motif: inStitch(motif, last, to),
        estimateMm: acrossMm + 2 * (height(to) - height(main)),
        work: 1,
        from: last,
      })
  const taller = main === null ? undefined : extended[main]
  if (main !== null && taller && last > 0)
    add({
      kind: "last-round",
      change: `Work round ${lastNumber} in ${name(taller)} (one more pull-through in each stitch) in place of ${name(main)}`,
      motif: inExtended(motif, last),
      estimateMm: acrossMm + 2 * (height(taller) - height(main)),
      work: 1,
      from: last,
    })
  for (const [middle, outer] of [
    ["sc", "hdc"],
    ["hdc", "dc"],
    ["dc", "tr"],
  ] as const)
    for (const [share, words] of middles)
      if (last > 0)
        add({
          kind: "last-round",
          change: `Work round ${lastNumber} in mixed heights: ${name(outer)} towards the corners, ${name(middle)} in the middle ${words} of each side`,
          motif: mixedHeights(motif, middle, outer, share),
          estimateMm:
            acrossMm +
            2 * (share * height(middle) + (1 - share) * height(outer) - height(main ?? middle)),
          work: 1.5,
          from: last,
        })
  for (const basic of ["sc", "hdc", "dc", "tr"] as const) {
    const each = 2 * height(basic)
    const most = missingMm > 0 ? Math.min(mostAdded, Math.max(1, Math.round(missingMm / each))) : 1
    let grown: Motif | null = motif
    for (let many = 1; many <= most && grown; many += 1) {
      grown = withRound(grown, basic, gauge)
      // Of several rounds the number that is nearest, and one fewer.
      if (many < most - 1) continue
      add({
        kind: "round-added",
        change: `Add ${many === 1 ? "a round" : `${many} rounds`} of ${name(basic)}`,
        motif: grown,
        estimateMm: acrossMm + many * each,
        work: many,
        from: last + 1,
      })
    }
  }
  for (const pair of pairs) {
    const [first, second] = pair.map(height) as [number, number]
    // Only where two rounds are about what is missing.
    if (missingMm < first + second) continue
    const once = withRound(motif, pair[0], gauge)
    add({
      kind: "round-added",
      change: `Add a round of ${name(pair[0])} and one of ${name(pair[1])}`,
      motif: once && withRound(once, pair[1], gauge),
      estimateMm: acrossMm + 2 * (first + second),
      work: 2,
      from: last + 1,
    })
  }
  for (let many = 1; many <= Math.min(mostLeftOut, last); many += 1) {
    const out = motif.rounds.slice(last + 1 - many)
    const numbers = out.map(({ number }) => number)
    const left =
      many === 1
        ? applyToMotif(motif, last, { kind: "drop-round" })
        : { ...motif, rounds: motif.rounds.slice(0, last + 1 - many) }
    add({
      kind: "round-left-out",
      change: `Leave ${roundsWords(numbers)} out`,
      motif: left,
      estimateMm:
        acrossMm - 2 * out.reduce((sum, round) => sum + height(mainStitch(round) ?? "dc"), 0),
      work: 0.5 * many,
      from: last + 1 - many,
    })
  }
  found.push(...starts(motif, gauge, acrossMm, name))
  return found
}

/** The centre with a larger or smaller ring, and the first round a step taller or lower. */
function starts(
  motif: Motif,
  gauge: Gauge,
  acrossMm: number,
  name: (basic: BasicStitch) => string,
): Candidate[] {
  const chainMm = chainSize(gauge).lengthMm
  const { centre } = motif
  const found: Candidate[] = []
  const own = centre.kind === "chain-ring" ? centre.chains : 0
  if (centre.kind === "chain-ring" || centre.kind === "adjustable-ring")
    for (const chains of [4, 5, 6, 8, 10])
      if (chains !== own && Math.abs(chains - own) <= 6)
        found.push({
          kind: "start",
          change: `Begin with ${chains} chains joined into a ring in place of ${own === 0 ? "a magic ring" : `${own}`}`,
          motif: { ...motif, centre: { kind: "chain-ring", chains } },
          estimateMm: acrossMm + ((chains - own) * chainMm) / Math.PI,
          work: wholeWork,
          from: 0,
        })
  const first = motif.rounds[0] && mainStitch(motif.rounds[0])
  if (first != null && motif.rounds.length > 1)
    for (const to of ladder) {
      const steps = ladder.indexOf(to) - ladder.indexOf(first)
      if (Math.abs(steps) !== 1) continue
      const changed = inStitch(motif, 0, to)
      const size = (basic: BasicStitch) => sizeOf({ basic }, gauge, { turned: false }).heightMm
      if (changed)
        found.push({
          kind: "start",
          change: `Work round ${motif.rounds[0]!.number} in ${name(to)} in place of ${name(first)}`,
          motif: changed,
          estimateMm: acrossMm + 2 * (size(to) - size(first)),
          work: wholeWork,
          from: 0,
        })
    }
  return found
}

/** "round 6", "rounds 5 and 6", "rounds 4 to 6". */
function roundsWords(numbers: readonly number[]): string {
  const [first, last] = [numbers[0]!, numbers.at(-1)!]
  if (numbers.length === 1) return `round ${first}`
  return `rounds ${first} ${numbers.length === 2 ? "and" : "to"} ${last}`
}
