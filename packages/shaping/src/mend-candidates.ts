// The small changes that are tried on a piece, round by round, as data.

import { type ElementChange, type Ledger, planBand } from "@roundwright/flatness"
import { countRound, findCorners, type Motif, type Round, repeatsOf } from "@roundwright/motif"
import { type Gauge, hooks, type StitchKind } from "@roundwright/stitches"
import { solidFrom } from "./count-changes.ts"
import { groupSizes } from "./mend-groups.ts"
import type { RoundFacts } from "./mend-summary.ts"

export interface Candidate {
  /** Index of the round that is changed first. */
  readonly index: number
  readonly change: ElementChange
}

/**
 * A count may be three times as large or small, as a second round with its increases forgotten or doubled is; beyond it the
 * pattern is another one.
 */
const furthestFactor = 3
/** Multiples of the repeat tried on either side. */
const mostSteps = 4
/** Stitches a maker exchanges for one another, lowest first, and how far along the list. */
const ladder: readonly StitchKind["basic"][] = ["sc", "hdc", "dc", "tr", "dtr"]
const ladderReach = 2
/** Stitches more or fewer in one place. */
const groupReach = 2
/** Chains added to or taken from a run. */
const chainReach = 3
/** Another hook is worth trying within one millimetre; further off the fabric changes its character. */
const furthestHookMm = 1
/** Plans of up to twice this many stitches a round are looked at even where the pattern adds none. */
const fewestPlanned = 12

export function candidatesFor(
  motif: Motif,
  facts: readonly RoundFacts[],
  ledger: Ledger,
  gauge: Gauge,
): Candidate[] {
  const solid = solidFrom(motif)
  const corners = findCorners(motif).map(({ count }) => count)
  const repeats = motif.rounds.map((_, round) => repeatsOf(motif, round))
  const last = motif.rounds.length - 1
  const rounds = motif.rounds.flatMap((round, index): Candidate[] => {
    const own = facts[index]!
    const off = Math.abs(ledger.rows[index]!.fullness - 1) > planBand
    const counts =
      index >= solid && own.stitches > 0
        ? countSteps(
            own.stitches,
            new Set([corners[index]!, corners[last]!]),
            repeats.slice(Math.max(0, index - 1), index + 2),
          )
        : []
    const changes: ElementChange[] = [
      ...counts.map((by) => ({ kind: "count" as const, stitches: own.stitches + by })),
      ...(index < last ? counts : []).map((by) => ({
        kind: "count" as const,
        stitches: own.stitches + by,
        keeps: true as const,
      })),
      ...otherStitches(own, round),
      ...otherChains(round.elements),
      ...otherGroups(round),
      ...(off ? otherHooks(gauge) : []),
      { kind: "drop-round" },
      { kind: "add-round" },
    ]
    return changes.map((change) => ({ index, change }))
  })
  const whole = ([-1, 1] as const).map((by) => ({
    index: 0,
    change: { kind: "terms", by } as const,
  }))
  return [...whole, ...rounds, ...plansOfIncreases(facts, ledger, corners[last]!, repeats, solid)]
}

/** Differences that bring the count to whole repeats of its own round or one beside it, or to its corners, or the piece's, alike. */
function countSteps(
  count: number,
  corners: ReadonlySet<number>,
  beside: readonly number[],
): number[] {
  const atCorners = new Set([...corners].filter((own) => own > 0).map((own) => 2 * own))
  const found = new Set<number>()
  for (const own of new Set([...beside, ...atCorners])) {
    const rest = atCorners.has(own) ? 0 : count % own
    for (let k = -mostSteps; k <= mostSteps; k++) {
      const by = k * own - rest
      const factor = (count + by) / count
      if (by !== 0 && factor <= furthestFactor && factor >= 1 / furthestFactor) found.add(by)
    }
  }
  return [...found].sort((a, b) => Math.abs(a) - Math.abs(b) || a - b)
}

function otherStitches({ uniform, kind }: RoundFacts, round: Round): ElementChange[] {
  if (!uniform) return partsInOtherStitches(round)
  return along(kind).map((to) => ({ kind: "stitch", to }))
}

/** Of a round of several stitches each in another. */
function partsInOtherStitches(round: Round): ElementChange[] {
  return countRound(round).byKind.flatMap(({ kind: from }) =>
    along(from).map((to): ElementChange => ({ kind: "stitch", from, to })),
  )
}

function along({ basic: own }: StitchKind): StitchKind[] {
  const place = ladder.indexOf(own)
  if (place < 0) return []
  return ladder.flatMap((basic, other) =>
    other !== place && Math.abs(other - place) <= ladderReach ? [{ basic }] : [],
  )
}

function otherGroups(round: Round): ElementChange[] {
  return [...groupSizes(round).keys()].flatMap((from) =>
    Array.from({ length: 2 * groupReach + 1 }, (_, i) => from + i - groupReach)
      .filter((to) => to !== from && to >= 1)
      .map((to): ElementChange => ({ kind: "group", from, to })),
  )
}

function otherChains(elements: Motif["rounds"][number]["elements"]): ElementChange[] {
  const sizes = new Set(
    elements.flatMap((element) => (element.type === "chain" ? [element.chains] : [])),
  )
  return [...sizes].flatMap((from) =>
    Array.from({ length: 2 * chainReach + 1 }, (_, i) => from + i - chainReach)
      .filter((to) => to !== from && to >= 1)
      .map((to): ElementChange => ({ kind: "chains", from, to })),
  )
}

function otherHooks(gauge: Gauge): ElementChange[] {
  const { hookMm } = gauge.input
  if (hookMm === undefined) return []
  return hooks
    .filter(({ mm }) => mm !== hookMm && Math.abs(mm - hookMm) <= furthestHookMm)
    .map(({ mm }) => ({ kind: "hook", toMm: mm }))
}

/**
 * The same number of stitches added each round from the first that is off, in steps that keep its corners alike, and
 * the repeats of the round before it or half of them; any number from the first round on.
 */
function plansOfIncreases(
  facts: readonly RoundFacts[],
  ledger: Ledger,
  corners: number,
  repeats: readonly number[],
  solid: number,
): Candidate[] {
  const index = ledger.rows.findIndex((row) => row.round === ledger.fromRound)
  if (index < solid || index < 0) return []
  const growths = facts
    .slice(index)
    .map(({ stitches }, i) => stitches - (facts[index + i - 1]?.stitches ?? 0))
  if (growths.length < 2) return []
  const before = repeats[index - 1] ?? 1
  const step = corners > 0 ? corners : before % 2 === 0 ? before / 2 : before
  const most = Math.max(...growths, fewestPlanned) * 2
  return Array.from({ length: Math.floor(most / step) }, (_, i) => ({
    index,
    change: { kind: "increase", perRound: (i + 1) * step },
  }))
}

/** Changes to the round that is off first, then to its neighbours: of a large piece only so many can be looked at. */
export function nearestFirst(
  candidates: readonly Candidate[],
  motif: Motif,
  rounds: readonly (number | null | undefined)[],
): readonly Candidate[] {
  const at = rounds.flatMap((round) => {
    const index = motif.rounds.findIndex(({ number }) => number === round)
    return index < 0 ? [] : [index]
  })[0]
  const from = at ?? 0
  return [...candidates].sort((a, b) => Math.abs(a.index - from) - Math.abs(b.index - from))
}
