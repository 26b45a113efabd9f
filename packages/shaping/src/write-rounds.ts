// A motif's rounds as lines of a written pattern, in either terms, for the plain structures that the inverse
// proposes: stitches into stitches and chain spaces of the round below, groups, skips, chains.
//
// Why beside the general writer of instructions: a proposal is made of whole sides, and is to be read so. This one
// keeps the whole round's repeat from the first stitch ("*...; rep from * 3 more times"), where the general writer
// joins stitches that are alike across the repeat first and then needs words before and after it; and it
// says every place passed over, also at the end of a round. Where a round does not repeat whole, the general
// writer's line is taken if it is shorter and leaves no doubt. A test reads every line back.

import { readPattern, writePattern } from "@roundwright/instructions"
import {
  type Anchor,
  anchorKey,
  countRound,
  kindKey,
  type Motif,
  type Round,
} from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { kindName, type Terms } from "@roundwright/stitches"

/** Lines of the rounds from index `from` on. */
export function writeRounds(motif: Motif, from = 0, terms: Terms = "US"): string[] {
  return motif.rounds.slice(from).map((round, i) => {
    const index = from + i
    const phrases = index === 0 ? firstRound(motif, round, terms) : laterRound(motif, index, terms)
    const line = `Rnd ${round.number}: ${phrases.join(", ")}; join. (${totalWords(round, terms)})`
    return phrases.length === 1 ? line : shorter(line, inPartRepeats(motif, index, terms))
  })
}

function shorter(line: string, other: string | null): string {
  return other !== null && other.length < line.length ? other : line
}

/**
 * The round as the general writer has it, which also finds repeats in a part of a round; null where it will not
 * write the piece, or writes it so that a reader would ask what became of a stitch.
 */
function inPartRepeats(motif: Motif, index: number, terms: Terms): string | null {
  try {
    const text = writePattern({ ...motif, rounds: motif.rounds.slice(0, index + 1) }, terms)
    const { number } = motif.rounds[index]!
    const doubtful = readPattern(text).problems.some(
      (problem) => problem.round === number && problem.severity !== "note",
    )
    if (doubtful) return null
    return text.trimEnd().split("\n").at(-1)?.replace(" sts + ", " sts, ") ?? null
  } catch (error) {
    if (error instanceof RoundwrightError) return null
    throw error
  }
}

/** Everything worked into one place, or the places passed over. */
interface Step {
  readonly text: string
  /** The same stitch once into one place: runs of it are told together. */
  readonly single: string | null
  /** What is worked into one place; null for places passed over or taken together, and for chains. */
  readonly work: string | null
  readonly place: string
  readonly skipped: number
}

function firstRound(motif: Motif, round: Round, terms: Terms): string[] {
  const { centre } = motif
  const into = centre.kind === "single-chain" ? "first ch" : "ring"
  const opening =
    centre.kind === "chain-ring"
      ? [`ch ${centre.chains}, join to form a ring`]
      : centre.kind === "single-chain"
        ? [`ch ${centre.chains}`]
        : []
  const work: string[] = []
  for (const element of round.elements) {
    const text =
      element.type === "stitch" ? `${kindName(element.kind, terms)} in ${into}` : chainText(element)
    work.push(text)
  }
  const merged = mergeCounts(work)
  const alone = merged.length === 1 && centre.kind === "adjustable-ring"
  return [
    ...opening,
    ...(alone ? merged.map((text) => text.replace(/ in ring$/, " in magic ring")) : merged),
  ]
}

function chainText(element: { readonly chains: number; readonly type: string }): string {
  return element.type === "picot" ? `picot of ch ${element.chains}` : `ch ${element.chains}`
}

/** "dc in ring" twelve times -> "12 dc in ring". */
function mergeCounts(texts: readonly string[]): string[] {
  const out: { text: string; count: number }[] = []
  for (const text of texts) {
    const last = out.at(-1)
    if (last?.text === text) last.count++
    else out.push({ text, count: 1 })
  }
  return out.map(({ text, count }) => (count > 1 ? `${count} ${text}` : text))
}

function laterRound(motif: Motif, index: number, terms: Terms): string[] {
  const steps = stepsOf(motif, index, terms)
  const period = smallestPeriod(steps.map((step) => `${step.text}|${step.place}|${step.skipped}`))
  const times = steps.length / period
  const only = steps[0]!
  if (period === 1 && only.work !== null) return [`${only.work} in each ${only.place} around`]
  const phrases = mergeRuns(steps.slice(0, period))
  if (times === 1) return phrases
  return [`*${phrases.join(", ")}; rep from * ${times - 1} more time${times === 2 ? "" : "s"}`]
}

/** One step for each place worked, in working order, with the places passed over between them. */
function stepsOf(motif: Motif, index: number, terms: Terms): Step[] {
  const round = motif.rounds[index]!
  const below = motif.rounds[index - 1]!
  const places = below.elements.flatMap((element, e) => (element.type === "picot" ? [] : [e]))
  const rank = new Map(places.map((element, r) => [element, r]))
  const groups = groupByPlace(round)
  const steps: Step[] = []
  let next = 0
  for (const group of groups) {
    const first = rankOf(group.anchors[0], rank)
    const last = rankOf(group.anchors.at(-1), rank)
    const gap = (first - next + places.length) % places.length
    if (gap > 0) steps.push(skipStep(gap, below, places, next, terms))
    steps.push(workStep(motif, group, terms))
    for (const element of group.after)
      if (element.type !== "stitch")
        steps.push({ text: chainText(element), single: null, work: null, place: "", skipped: 0 })
    next = (last + 1) % places.length
  }
  const tail = (places.length - next) % places.length
  if (tail > 0) steps.push(skipStep(tail, below, places, next, terms))
  return steps
}

function rankOf(anchor: Anchor | undefined, rank: ReadonlyMap<number, number>): number {
  return anchor && anchor.at !== "centre" ? (rank.get(anchor.element) ?? 0) : 0
}

interface Group {
  readonly anchors: readonly Anchor[]
  /** Stitches and chains in the place; chains after the last stitch stand in `after`. */
  readonly inside: Round["elements"][number][]
  readonly after: Round["elements"][number][]
}

function groupByPlace(round: Round): Group[] {
  const groups: {
    anchors: Anchor[]
    key: string
    inside: Group["inside"]
    after: Group["after"]
  }[] = []
  for (const element of round.elements) {
    const last = groups.at(-1)
    if (element.type !== "stitch") {
      if (last) last.after.push(element)
      continue
    }
    const key = element.anchors.map(anchorKey).join()
    if (last?.key === key) {
      last.inside.push(...last.after, element)
      last.after.length = 0
    } else groups.push({ anchors: [...element.anchors], key, inside: [element], after: [] })
  }
  return groups
}

function workStep(motif: Motif, group: Group, terms: Terms): Step {
  const first = group.anchors[0]!
  const target =
    first.at === "centre" ? undefined : motif.rounds[first.round]?.elements[first.element]
  const place = target?.type === "chain" ? `ch-${target.chains} sp` : "st"
  const inside = mergeCounts(
    group.inside.map((element) =>
      element.type === "stitch" ? kindName(element.kind, terms) : chainText(element),
    ),
  )
  const only = group.inside[0]!
  const together = only.type === "stitch" && only.kind.gathered?.how === "together"
  const into = together ? `next ${group.anchors.length} sts` : `next ${place}`
  const what = inside.length > 1 ? `(${inside.join(", ")})` : inside[0]!
  const single =
    !together && group.inside.length === 1 && only.type === "stitch"
      ? kindName(only.kind, terms)
      : null
  const link = together ? " over " : " in "
  return { text: `${what}${link}${into}`, single, work: together ? null : what, place, skipped: 0 }
}

function skipStep(
  gap: number,
  below: Round,
  places: readonly number[],
  from: number,
  terms: Terms,
): Step {
  const skip = terms === "UK" ? "miss" : "skip"
  const kinds = Array.from({ length: gap }, (_, i) => {
    const element = below.elements[places[(from + i) % places.length]!]!
    return element.type === "chain" ? `ch-${element.chains} sp` : "st"
  })
  const text = mergeCounts(kinds)
    .map((kind) => (/^\d/.test(kind) ? `${skip} next ${kind}s` : `${skip} next ${kind}`))
    .join(", ")
  return { text, single: null, work: null, place: "", skipped: gap }
}

/** The same in each of several places: "dc in next 5 sts", "2 dc in each of next 3 sts". */
function mergeRuns(steps: readonly Step[]): string[] {
  const out: string[] = []
  for (let i = 0; i < steps.length; ) {
    const { single, work, place, text } = steps[i]!
    let run = 1
    while (work !== null && steps[i + run]?.work === work && steps[i + run]!.place === place) run++
    const each = single === null ? `in each of next ${run} ${place}s` : `in next ${run} ${place}s`
    out.push(run > 1 ? `${work} ${each}` : text)
    i += run
  }
  return out
}

function totalWords(round: Round, terms: Terms): string {
  const count = countRound(round)
  const stitches =
    count.byKind.length === 1 &&
    kindKey(count.byKind[0]!.kind) === `${count.byKind[0]!.kind.basic}|||`
      ? `${count.stitches} ${kindName(count.byKind[0]!.kind, terms)}`
      : `${count.stitches} sts`
  const spaces = count.spacesBySize.map(
    ({ chains, count: many }) => `${many} ch-${chains} sp${many === 1 ? "" : "s"}`,
  )
  return [stitches, ...spaces].join(", ")
}

/** Smallest p dividing the length with s[i] = s[i mod p]. */
function smallestPeriod(s: readonly string[]): number {
  for (let p = 1; p < s.length; p++)
    if (s.length % p === 0 && s.every((text, i) => text === s[i % p])) return p
  return s.length
}
