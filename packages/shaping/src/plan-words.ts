// A plan of a circle or polygon in words: the increase, the rounds that depart from it, how near the last count is to
// flat, and how the size asked for was met.

import { polygonFactor } from "@roundwright/flatness"
import { listed, ordinal } from "@roundwright/instructions"
import { findCorners, type Motif } from "@roundwright/motif"
import { assumedScWidthMm } from "@roundwright/relaxation"
import { type Gauge, kindName, type StitchKind, sizeOf, type Terms } from "@roundwright/stitches"
import { flatIncrease } from "./flat-count.ts"
import type { Increases } from "./spread.ts"

export interface PlannedCircle {
  readonly stitches: readonly StitchKind[]
  readonly gauge: Gauge
  readonly terms: Terms
  readonly corners: number
  readonly increases: Increases
  readonly acrossMm: number | undefined
  readonly motif: Motif
  readonly counts: readonly number[]
  readonly added: readonly number[]
  readonly flatCounts: readonly number[]
  /** Radius of the last round, in the gauge's unit. */
  readonly radiusMm: number
  /** mm in one unit of the gauge's lengths. */
  readonly unitMm: number
}

/** Sentences, the most telling first. */
export function planWords(plan: PlannedCircle): string[] {
  return [
    ...sizeWords(plan),
    ...increaseWords(plan),
    ...(plan.stitches.length === 1 ? departures(plan.added) : []),
    lastRoundWords(plan),
    ...staggeredWords(plan),
    ...stackedWords(plan),
    ...guessedWords(plan),
  ]
}

/** Sizes nearer to what was asked for than this share need no remark. */
const sizeMet = 0.02

function sizeWords({
  acrossMm,
  gauge,
  unitMm,
  radiusMm,
  counts,
  ...plan
}: PlannedCircle): string[] {
  if (acrossMm === undefined) return []
  const words: string[] = []
  if (!gauge.absolute)
    words.push(
      `No yarn, hook or swatch is known: one ${kindName({ basic: "sc" }, plan.terms)} is taken ${assumedScWidthMm} mm wide, as in worsted yarn. Give them for a size to rely on.`,
    )
  const across = 2 * radiusMm * unitMm
  if (Math.abs(across / acrossMm - 1) <= sizeMet) return words
  const last = plan.stitches[(counts.length - 1) % plan.stitches.length]!
  const depth = 2 * sizeOf(last, gauge, { turned: false }).heightMm * unitMm
  const rounds = counts.length === 1 ? "One round comes" : `${counts.length} rounds come`
  const other =
    across < acrossMm
      ? `, one more would make it ${cm(across + depth)}`
      : counts.length > 1
        ? `, one fewer would make it ${cm(across - depth)}`
        : ""
  words.push(
    `${rounds} nearest to the ${cm(acrossMm)} asked for: about ${cm(across)}${other}. A last round of a lower or taller stitch, or another hook, closes the gap.`,
  )
  return words
}

function cm(mm: number): string {
  return `${(mm / 10).toFixed(1)} cm`
}

function increaseWords({ stitches, gauge, terms, corners, added }: PlannedCircle): string[] {
  const [first] = stitches
  if (stitches.length === 1) {
    const rate = flatIncrease(first!, gauge, corners)
    return [
      `Exactly flat would be ${rate.toFixed(2)} ${kindName(first!, terms)} more in each round; the plan adds ${usualOf(added)}.`,
    ]
  }
  const names = [...new Set(stitches.map((kind) => kindName(kind, terms)))]
  const ratios = names.map((name) => {
    const kind = stitches.find((one) => kindName(one, terms) === name)!
    return `${flatIncrease(kind, gauge, corners).toFixed(2)} in a disc of ${name} alone`
  })
  return [
    `A mix: how many more a round needs depends on its own stitch and on the one below it; exactly flat would be ${listed(ratios)}.`,
  ]
}

/** What most rounds after the first add. */
function usualOf(added: readonly number[]): number {
  const later = added.length > 1 ? added.slice(1) : added
  const counts = new Map<number, number>()
  for (const value of later) counts.set(value, (counts.get(value) ?? 0) + 1)
  return [...counts].reduce((best, entry) => (entry[1] > best[1] ? entry : best))[0]
}

/** More different increases than this have no usual one to depart from: the counts tell. */
const mostDepartures = 2

/** Which rounds of a plan in one stitch add something else: "every 3rd round from round 4 adds 12", or the rounds by number. */
function departures(added: readonly number[]): string[] {
  const usual = usualOf(added)
  const rounds = new Map<number, number[]>()
  added.forEach((count, i) => {
    if (i > 0 && count !== usual) rounds.set(count, [...(rounds.get(count) ?? []), i + 1])
  })
  if (rounds.size === 0 || rounds.size > mostDepartures) return []
  const parts = [...rounds].map(([count, at]) => {
    const does = count === 0 ? "no increase" : String(count)
    const step = at.length > 2 ? at[1]! - at[0]! : 0
    const regular = step > 1 && at.every((round, i) => i === 0 || round - at[i - 1]! === step)
    if (regular) return `every ${ordinal(step)} round from round ${at[0]} adds ${does}`
    return at.length === 1
      ? `round ${at[0]} adds ${does}`
      : `rounds ${listed(at.map(String))} add ${does}`
  })
  const sentence = `${parts.join("; ")} instead, so that the difference never adds up.`
  return [sentence.charAt(0).toUpperCase() + sentence.slice(1)]
}

function lastRoundWords({ corners, counts, flatCounts, motif }: PlannedCircle): string {
  const spaces = motif.rounds.at(-1)!.elements.filter(({ type }) => type === "chain").length
  const [count, flat] = [counts.at(-1)!, flatCounts.at(-1)!]
  if (corners > 0 && spaces > 0)
    return `The last round has ${count} stitches and ${spaces} chain corners; without the chains sharp corners would take ${flat.toFixed(1)}.`
  if (corners > 0) {
    const round = (flat * 2 * Math.PI) / polygonFactor(corners)
    return `The last round has ${count}; sharp corners would take ${flat.toFixed(1)}, a circle as far across ${round.toFixed(1)}, and what lies between lies flat with corners that much rounded.`
  }
  return lastCountWords(count, flat)
}

/** How near the last count is to flat. */
export function lastCountWords(count: number, flat: number): string {
  const off = 100 * (count / flat - 1)
  return `The last round has ${count} where ${flat.toFixed(1)} would be exactly flat (${off >= 0 ? "+" : ""}${off.toFixed(1)} %).`
}

/** The rule by which increases keep out of line, where there are rounds enough for it. */
function staggeredWords({ corners, increases, counts, stitches }: PlannedCircle): string[] {
  if (corners > 0 || increases === "stacked" || counts.length < 3 || stitches.length > 1) return []
  return ["Odd rounds begin with half a repeat, so that no increase stands over the one below."]
}

/** Sizes that nobody measured are said to be guesses. */
function guessedWords({ stitches, gauge, terms }: PlannedCircle): string[] {
  const guessed = stitches.filter(
    (kind) => sizeOf(kind, gauge, { turned: false }).provenance === "extrapolated",
  )
  const names = [...new Set(guessed.map((kind) => kindName(kind, terms)))]
  if (names.length === 0) return []
  return [
    `The size of ${listed(names)} is extrapolated, not measured: work three rounds and see, or give a swatch of it.`,
  ]
}

/** Increases in line through fewer rounds than this draw no corner yet. */
const fewestStacked = 3
/** With more corners than this an outline reads as a circle. */
const mostSeen = 10

function stackedWords({ corners, increases, motif }: PlannedCircle): string[] {
  if (corners > 0) return []
  const found = findCorners(motif).at(-1)
  if (!found || found.stacked < fewestStacked) return []
  const lines =
    increases === "stacked" ? "stand over one another" : "come to stand over one another"
  const each = motif.rounds.length > 1 ? increasesOf(motif) : 0
  if (each > mostSeen) return []
  return [`The increases ${lines}: the outline will show ${each} soft corners.`]
}

/** Places of the last round but one that take more than one stitch. */
function increasesOf(motif: Motif): number {
  const into = new Map<string, number>()
  for (const element of motif.rounds.at(-1)!.elements)
    if (element.type === "stitch") {
      const key = JSON.stringify(element.anchors)
      into.set(key, (into.get(key) ?? 0) + 1)
    }
  return [...into.values()].filter((count) => count > 1).length
}
