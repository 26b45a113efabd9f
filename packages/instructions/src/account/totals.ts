// Our counts of a round against those its text states.

import { countRound, type Element, type Round, type RoundCount } from "@roundwright/motif"
import { kindName, type StitchKind } from "@roundwright/stitches"
import type { Finding } from "../base/problem-list.ts"
import type { StatedItem, StatedTotal } from "../base/tree.ts"
import { groupsBetweenSpaces, groupsInOnePlace, roundEdge } from "../edge/edge.ts"
import { kindFits } from "../edge/site.ts"

const counted = new WeakMap<Round, RoundCount>()

/** A round's counts, worked out once: every figure of a total asks for them. */
export function countsOf(round: Round): RoundCount {
  const known = counted.get(round)
  if (known) return known
  const counts = countRound(round)
  counted.set(round, counts)
  return counts
}

export function sameCounts(a: Round, b: Round): boolean {
  const [first, second] = [countsOf(a), countsOf(b)]
  return first.stitches === second.stitches && first.chains === second.chains
}

/** How often the main repeat was worked, and whether something was worked before it. */
export interface Repeats {
  readonly count: number
  readonly after: boolean
}

export interface Comparison {
  /** The main figure the text states, null when it states none that is firm. */
  readonly stated: number | null
  readonly agrees: boolean | null
  /** Ours lies in a range that is stated ("14 or 15", "between 96 and 104"). */
  readonly inRange?: boolean
  readonly differing: readonly {
    readonly item: StatedItem
    readonly stated: number
    readonly ours: number
  }[]
  readonly findings: readonly Finding[]
}

export function compareTotals(
  round: Round,
  mainRepeats: Repeats,
  totals: readonly StatedTotal[],
  before?: Round,
): Comparison {
  const firm = totals.filter((total) => total.firm)
  if (firm.length === 0) {
    const soft = totals[0]
    if (soft?.more && before) return compareGrowth(round, before, soft)
    const outside = soft?.range ? outsideRange(round, mainRepeats, soft) : null
    if (outside) return { stated: null, agrees: false, differing: [outside], findings: [] }
    const findings: Finding[] = soft
      ? [
          {
            severity: "note",
            code: "total-not-firm",
            start: soft.start,
            end: soft.end,
            message: "This total is not stated outright, so ours is not compared with it.",
            hint: "State one number if it is meant.",
          },
        ]
      : []
    return {
      stated: null,
      agrees: null,
      inRange: soft?.range !== undefined,
      differing: [],
      findings,
    }
  }
  const items = firm.flatMap((total) => total.items)
  const differing: { item: StatedItem; stated: number; ours: number }[] = []
  const findings: Finding[] = []
  const done = new Set<string>()
  for (const item of items) {
    if (items.length > 1) {
      const key = `${item.unit}:${item.size ?? ""}:${item.kind ? kindName(item.kind) : item.word}`
      if (done.has(key)) continue
      done.add(key)
    }
    const alike =
      items.length === 1
        ? items
        : items.filter(
            (other) =>
              other.unit === item.unit && other.size === item.size && sameWord(other, item),
          )
    const sum = alike.reduce((total, other) => total + other.count, 0)
    // Said twice, it must be the same figure; else all of them together are the total.
    const sameFigure = alike.every(({ count }) => count === item.count)
    let stated = item.unit === "space" ? sum : item.count
    let ours = ourCount(round, mainRepeats, item, stated, items)
    if (!ours.agrees && alike.length > 1) {
      // "72 sc on the points + 6 sc": parts of one total.
      stated = item.unit === "space" ? item.count : sum
      const other = ourCount(round, mainRepeats, item, stated, items)
      if (other.agrees && (stated === sum || sameFigure)) ours = other
    } else if (ours.agrees && stated !== sum && !sameFigure)
      ours = { agrees: false, count: ours.count }
    if (ours.agrees) {
      if (ours.note)
        findings.push({
          severity: "note",
          code: "total-includes-chains",
          start: item.start,
          end: item.end,
          message: ours.note,
          hint: "",
        })
    } else differing.push({ item, stated, ours: ours.count })
    const each = item.unit === "groups" ? item.each : legsOfGroups(round, item)
    if (each !== undefined && !holdsEach(round, item.count, each))
      differing.push({
        item: { ...item, word: `stitches in each of the ${item.word}` },
        stated: each,
        ours: Math.round(countsOf(round).stitches / item.count),
      })
  }
  return { stated: mainFigure(items), agrees: differing.length === 0, differing, findings }
}

/** "(+12 dc)": the round against the one before. */
function compareGrowth(round: Round, before: Round, total: StatedTotal): Comparison {
  const item = total.items[0]!
  const below = countsOf(before).stitches
  const wanted = below + item.count
  const ours = countsOf(round).stitches
  if (ours === wanted) return { stated: wanted, agrees: true, differing: [], findings: [] }
  return {
    stated: wanted,
    agrees: false,
    differing: [{ item, stated: wanted, ours }],
    findings: [],
  }
}

/** Our count, when it is neither of two figures nor between them. */
function outsideRange(
  round: Round,
  mainRepeats: Repeats,
  total: StatedTotal,
): Comparison["differing"][number] | null {
  const [low, high] = total.items
  if (!low || !high) return null
  const named = { ...low, ...high, count: low.count }
  const ours = (stated: number) => ourCount(round, mainRepeats, named, stated, [named])
  const count = ours(low.count).count
  const fits =
    ours(low.count).agrees ||
    ours(high.count).agrees ||
    (total.range === "between" && count > low.count && count < high.count)
  return fits ? null : { item: high, stated: high.count, ours: count }
}

function sameWord(a: StatedItem, b: StatedItem): boolean {
  if (a.unit === "space") return true
  if (a.kind && b.kind) return kindName(a.kind) === kindName(b.kind)
  return a.word === b.word
}

/** The stitches stated, added up by kind; else the first figure. */
function mainFigure(items: readonly StatedItem[]): number | null {
  const kinds = items.filter((item) => item.unit === "kind")
  if (kinds.length > 0) return kinds.reduce((sum, item) => sum + item.count, 0)
  const stitches =
    items.find((item) => item.unit === "stitches") ??
    items.find((item) => item.unit === "with-chains") ??
    items[0]
  return stitches?.count ?? null
}

interface Ours {
  readonly agrees: boolean
  readonly count: number
  readonly note?: string
}

function ourCount(
  round: Round,
  mainRepeats: Repeats,
  item: StatedItem,
  stated: number,
  items: readonly StatedItem[],
): Ours {
  const counts = countsOf(round)
  const plain = (count: number): Ours => ({ agrees: count === stated, count })
  switch (item.unit) {
    case "stitches": {
      if (counts.stitches === stated) return { agrees: true, count: stated }
      const slips = round.elements.filter(
        (element) => element.type === "stitch" && element.kind.basic === "sl st",
      ).length
      if (slips > 0 && counts.stitches - slips === stated) return { agrees: true, count: stated }
      if (counts.stitches + counts.chains === stated && counts.chains > 0)
        return {
          agrees: true,
          count: stated,
          note: `The total of ${stated} fits when chains are counted too: ${counts.stitches} stitches and ${counts.chains} chains.`,
        }
      return plain(counts.stitches)
    }
    case "with-chains":
      return plain(counts.stitches + counts.chains)
    case "kind": {
      const found = round.elements.filter(
        (element) => kindFits(element, item.kind!) && postFits(element, item.kind!, items),
      ).length
      if (found === stated) return { agrees: true, count: found }
      const only = items.filter((other) => other.unit === "kind").length === 1
      if (only && counts.stitches === stated && mostlyOf(round.elements, item.kind!))
        return { agrees: true, count: stated }
      if (
        only &&
        item.kind!.gathered &&
        /cluster/.test(item.word) &&
        gatheredCount(round.elements) === 0
      )
        // "4 clusters of 3 dc": groups, where nothing is gathered.
        return groupCount(round, mainRepeats, stated, true)
      if (only && item.kind!.gathered)
        return {
          agrees: gatheredCount(round.elements) === stated,
          count: gatheredCount(round.elements),
        }
      return plain(
        only && found > 0 && !hasOthers(round.elements, item.kind!) ? counts.stitches : found,
      )
    }
    case "space": {
      const found =
        item.size === undefined
          ? counts.spaces
          : (counts.spacesBySize.find((entry) => entry.chains === item.size)?.count ?? 0)
      if (found === stated) return { agrees: true, count: found }
      if (item.size === undefined && /small/.test(item.word) && counts.picots === stated)
        return { agrees: true, count: stated }
      if (item.size === undefined && counts.spaces === 0) {
        // "3 sc in each loop (8 loops)": the loops are those filled.
        const filled = /^(?:loops?|lps?|arch(?:es)?)$/.test(item.word)
        const there = filled ? filledPlaces(round) : gapCount(round)
        if (there === stated) return { agrees: true, count: stated }
      }
      if (item.size !== undefined && loops(round.elements, item.size) === stated)
        return { agrees: true, count: stated }
      return plain(found)
    }
    case "chains":
      return plain(counts.chains)
    case "picots":
      if (item.size !== undefined) {
        const alone = counts.spacesBySize.find((entry) => entry.chains === item.size)?.count
        if (loops(round.elements, item.size) === stated || alone === stated)
          return { agrees: true, count: stated }
      }
      return plain(counts.picots)
    case "repeats":
      return plain(mainRepeats.count)
    default:
      return groupCount(round, mainRepeats, stated, /^(?:group|set|grp|gp)/.test(item.word))
  }
}

/** "16 dc, 8 fpdc": where stitches round the post are told by themselves, the plain ones are those without. */
function postFits(element: Element, kind: StitchKind, items: readonly StatedItem[]): boolean {
  if (element.type !== "stitch") return false
  if (kind.post !== undefined) return element.kind.post === kind.post
  return element.kind.post === undefined || !items.some((item) => item.kind?.post !== undefined)
}

function gatheredCount(elements: readonly Element[]): number {
  return elements.filter((element) => element.type === "stitch" && element.kind.gathered).length
}

function mostlyOf(elements: readonly Element[], kind: StitchKind): boolean {
  return elements.some((element) => element.type === "stitch" && element.kind.basic === kind.basic)
}

function hasOthers(elements: readonly Element[], kind: StitchKind): boolean {
  return elements.some((element) => element.type === "stitch" && !kindFits(element, kind))
}

function loops(elements: readonly Element[], size: number): number {
  return elements.filter((element) => element.type !== "stitch" && element.chains === size).length
}

function gapCount(round: Round): number {
  return roundEdge(round, 0, false).cells.filter((cell) => cell.type === "gap").length
}

/** Spaces of the round below that stitches stand in. */
function filledPlaces({ elements }: Round): number {
  const places = new Set<number>()
  for (const element of elements)
    if (element.type === "stitch")
      for (const anchor of element.anchors) if (anchor.at === "space") places.add(anchor.element)
  return places.size
}

/** "4 clusters of 3 dc" in a round that gathers nothing: groups of so many. */
function legsOfGroups(round: Round, { unit, kind, word }: StatedItem): number | undefined {
  const groups =
    unit === "kind" &&
    /cluster/.test(word) &&
    /\d/.test(word) &&
    gatheredCount(round.elements) === 0
  return groups ? kind?.gathered?.legs : undefined
}

/** "6 petals of 7 sts": all stitches, those of a kind, or so many groups come to that. */
function holdsEach(round: Round, groups: number, each: number): boolean {
  const { stitches, byKind } = countsOf(round)
  const edge = roundEdge(round, 0, false)
  return (
    [stitches, ...byKind.map(({ count }) => count)].includes(groups * each) ||
    [groupsInOnePlace(edge, true), groupsInOnePlace(edge, false), groupsBetweenSpaces(edge)].some(
      (list) => list.filter(({ cells }) => cells.length === each).length === groups,
    )
  )
}

/**
 * Petals, shells, scallops, points: as many as the round repeats itself, or as it has stitches in one place. Only where it
 * has neither, as many as there are spaces, runs between them, or stitches of a kind.
 */
function groupCount(
  round: Round,
  mainRepeats: Repeats,
  stated: number,
  halvesCount: boolean,
): Ours {
  const edge = roundEdge(round, 0, false)
  const several = (tight: boolean) =>
    groupsInOnePlace(edge, tight).filter((group) => group.cells.length > 1).length
  const [tight, wide, gathered] = [several(true), several(false), gatheredCount(round.elements)]
  const runs = groupsBetweenSpaces(edge).length
  const counts = countsOf(round)
  const single = [
    counts.spaces,
    runs,
    counts.picots,
    ...counts.spacesBySize.map((entry) => entry.count),
    ...counts.byKind.map((entry) => entry.count),
  ]
  // The halves of a shell with chains in its middle are no shells, but groups they are.
  const halves = !halvesCount && wide > 1 && tight > wide && tight % wide === 0
  const placed = [halves ? 0 : tight, wide, gathered].filter((count) => count > 0)
  const repeats = repeatsMade(mainRepeats, [...placed, ...single])
  const natural = [...repeats, ...placed]
  const candidates = natural.some((count) => count > 1) ? natural : [...natural, ...single]
  if (candidates.includes(stated)) return { agrees: true, count: stated }
  return { agrees: false, count: repeats[0] ?? (wide || runs) }
}

/** How often the repeat was worked; once more where something like it was worked before it, which the counts tell. */
function repeatsMade({ count, after }: Repeats, counts: readonly number[]): readonly number[] {
  if (count === 0) return []
  if (!after) return [count]
  const fits = (times: number) => counts.filter((made) => made > 0 && made % times === 0).length
  const [whole, more] = [fits(count), fits(count + 1)]
  return whole === more ? [count, count + 1] : whole > more ? [count] : [count + 1]
}
