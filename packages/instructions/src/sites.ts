// Finding what a noun names on an edge. Positions run on past the end of the edge (they are taken
// round it), so that "next" after the last stitch is the first one again.

import { type Anchor, anchorKey, type Element } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import { cornerRuns, type Edge, type Group, groupsBetweenSpaces, groupsInOnePlace } from "./edge.ts"
import type { Noun, Pick } from "./tree.ts"

/** One place found: the cells it takes, from `from` up to `to`, and its anchor. */
export interface Site {
  readonly from: number
  readonly to: number
  readonly anchor: Anchor
  /** Members of a group, as positions. */
  readonly group?: Group
}

/** What a noun is taken to mean on this edge, when nothing there bears the very name. */
export interface Meaning {
  readonly noun: Noun
  /** Set when the name had to be stretched, with what is there instead. */
  readonly stretched: "size" | "kind" | "gap" | null
  readonly exists: boolean
}

/** Does any place of the edge fit the noun; if not, the nearest meaning that one does. */
export function meaningOf(edge: Edge, noun: Noun): Meaning {
  return edge.keep(nounKey(noun), (): Meaning => {
    if (!noun.small && fits(edge, noun)) return { noun, stretched: null, exists: true }
    if (noun.what === "space" && noun.small) {
      const { small: _small, ...plain } = noun
      const least = Math.min(
        ...edge.elements.map((element) =>
          element.type === "chain" ? element.chains : Number.POSITIVE_INFINITY,
        ),
      )
      const smallest: Noun = fits(edge, { what: "picot" })
        ? { what: "picot" }
        : { ...plain, size: least }
      if (fits(edge, smallest)) return { noun: smallest, stretched: null, exists: true }
    }
    if (noun.what === "space") {
      for (const wider of widerSpaces(noun))
        if (fits(edge, wider))
          return { noun: wider, stretched: sizeChanged(noun, wider) ? "size" : null, exists: true }
      if (noun.size === undefined && fits(edge, { what: "gap" }))
        return { noun: { what: "gap" }, stretched: null, exists: true }
    }
    if (noun.what === "corner") {
      const space: Noun = { what: "space", corner: true }
      if (fits(edge, space)) return { noun: space, stretched: null, exists: true }
    }
    if (noun.what === "stitch" && noun.kind) {
      const { kind: _kind, ...anyStitch } = noun
      const near: Noun = { ...noun, kind: { basic: noun.kind.basic } }
      if (fits(edge, near)) return { noun: near, stretched: null, exists: true }
      if (fits(edge, anyStitch)) return { noun: anyStitch, stretched: "kind", exists: true }
    }
    if (noun.what === "group" && noun.size !== undefined) {
      const { size: _size, ...anyGroup } = noun
      if (fits(edge, anyGroup)) return { noun: anyGroup, stretched: "size", exists: true }
    }
    if (noun.what === "gap" && noun.betweenGroups && fits(edge, { what: "gap" }))
      return { noun: { what: "gap" }, stretched: null, exists: true }
    if (noun.what === "gap" && fits(edge, { what: "space" }))
      return { noun: { what: "space" }, stretched: null, exists: true }
    return { noun, stretched: null, exists: false }
  })
}

function widerSpaces(noun: Noun): Noun[] {
  const { size: _s, middle: _m, ...plain } = noun
  const { corner: _c, ...bare } = plain
  const list: Noun[] = []
  if (noun.middle && noun.size !== undefined) list.push({ ...bare, size: noun.size })
  if (noun.corner && noun.size !== undefined) list.push({ ...bare, size: noun.size })
  list.push(plain, bare)
  return list
}

function sizeChanged(noun: Noun, wider: Noun): boolean {
  return noun.size !== undefined && wider.size === undefined
}

const nounKeys = new WeakMap<Noun, string>()

/** Equal for nouns that mean the same; remembered, as it is asked for at every step. */
function nounKey(noun: Noun): string {
  const known = nounKeys.get(noun)
  if (known !== undefined) return known
  const key = `meaning:${writtenKey(noun)}`
  nounKeys.set(noun, key)
  return key
}

function writtenKey(noun: Noun): string {
  const kind = noun.kind
  return [
    noun.what,
    noun.size ?? "",
    noun.corner ? "c" : "",
    noun.small ? "s" : "",
    noun.middle ? "m" : "",
    noun.unworked ? "u" : "",
    noun.betweenGroups ? "b" : "",
    kind ? `${kind.basic}:${kind.gathered?.how ?? ""}${kind.gathered?.legs ?? ""}` : "",
  ].join("|")
}

function fits(edge: Edge, noun: Noun): boolean {
  return findSite(edge, noun, 0, edge.size, 0, null) !== null
}

/**
 * The first place from `from` on that fits, ending no later than `limit`.
 * @param used cells already worked into, for "unworked" places; null to ask only whether one exists
 */
export function findSite(
  edge: Edge,
  noun: Noun,
  from: number,
  limit: number,
  base: number,
  used: ReadonlySet<number> | null,
): Site | null {
  const size = edge.size
  if (size === 0) return null
  if (noun.what === "group") return findGroup(edge, noun, from, limit, null, null)
  if (noun.what === "stitch" && noun.corner)
    return findGroup(edge, { what: "group", corner: true }, from, limit, "centre", null)
  if (noun.what === "corner") {
    const stitchCorner = edge.keep("has-chain", () =>
      edge.cells.some((cell) => cell.type === "chain"),
    )
      ? null
      : findGroup(edge, { what: "group", corner: true }, from, limit, "centre", null)
    return stitchCorner
  }
  for (let at = from; at < limit; at++) {
    const index = ((at % size) + size) % size
    if (!cellFits(edge, noun, index)) continue
    if (noun.unworked && used?.has(index)) continue
    const whole =
      noun.what === "space" || (noun.what === "any" && edge.cells[index]?.type === "chain")
    const to = at + (whole ? edge.widths[index]! : 1)
    if (to > limit) return null
    void base
    return { from: at, to, anchor: edge.anchorAt(index, whole) }
  }
  return null
}

function cellFits(edge: Edge, noun: Noun, index: number): boolean {
  const cell = edge.cells[index]!
  switch (noun.what) {
    case "stitch": {
      if (cell.type !== "stitch") return false
      return noun.kind === undefined || kindFits(edge.elements[cell.element], noun.kind)
    }
    case "space": {
      const element = edge.elements[cell.element]
      if (cell.type === "picot" && element?.type === "picot")
        return noun.size !== undefined && element.chains === noun.size && noun.size > 5
      if (cell.type !== "chain" || !edge.startsRun(index)) return false
      if (edge.round < 0) return false
      if (element?.type !== "chain") return false
      if (noun.size !== undefined && element.chains !== noun.size) return false
      if (noun.middle && !middleRuns(edge).has(cell.element)) return false
      return !noun.corner || cornerRuns(edge).has(cell.element)
    }
    case "chain":
      return cell.type === "chain"
    case "cell":
      return cell.type === "chain" || cell.type === "stitch"
    case "gap":
      return cell.type === "gap" && (!noun.betweenGroups || partsGroups(edge, index))
    case "picot":
      return cell.type === "picot"
    case "any":
      return cell.type === "stitch" || (cell.type === "chain" && edge.startsRun(index))
    default:
      return false
  }
}

/** Plain names mean plain stitches; gathered names any stitch gathered in that way. */
export function kindFits(element: Element | undefined, kind: StitchKind): boolean {
  if (element?.type !== "stitch") return false
  const made = element.kind
  if (kind.gathered) {
    if (!made.gathered) return false
    const together = (how: string) => how === "together" || how === "cluster"
    return (
      made.gathered.how === kind.gathered.how ||
      (together(made.gathered.how) && together(kind.gathered.how))
    )
  }
  return made.basic === kind.basic && !made.gathered
}

/** Runs of chains in the middle of what was worked in one place. */
function middleRuns(edge: Edge): ReadonlySet<number> {
  return edge.keep("middle-runs", () => {
    const found = new Set<number>()
    for (const group of groupsInOnePlace(edge, false)) {
      const runs = [
        ...new Set(
          group.all
            .map((cell) => edge.cells[(cell + edge.size) % edge.size]!)
            .filter((cell) => cell.type === "chain")
            .map((cell) => cell.element),
        ),
      ]
      const middle = runs[Math.floor((runs.length - 1) / 2)]
      if (middle !== undefined) found.add(middle)
    }
    return found
  })
}

function partsGroups(edge: Edge, index: number): boolean {
  const before = stitchNear(edge, index, -1)
  const after = stitchNear(edge, index, 1)
  if (!before || !after) return false
  const a = before.anchors[before.anchors.length - 1]
  const b = after.anchors[0]
  return !a || !b || anchorKey(a) !== anchorKey(b)
}

function stitchNear(edge: Edge, index: number, step: number) {
  for (let k = 1; k <= 6; k++) {
    const cell = edge.cells[(index + step * k + edge.size * 6) % edge.size]
    const element = cell?.type === "stitch" ? edge.elements[cell.element] : undefined
    if (element?.type === "stitch") return element
  }
  return null
}

/** Groups as the text means them: of that many stitches if said, else the sets worked in one place. */
export function groupsFor(
  edge: Edge,
  size: number | undefined,
  centred: boolean,
): readonly Group[] {
  return edge.keep(`groups:${size ?? ""}:${centred}`, () => {
    const tight = groupsInOnePlace(edge, true)
    const runs = groupsBetweenSpaces(edge)
    const wide = groupsInOnePlace(edge, false)
    if (size !== undefined) {
      for (const list of [tight, runs, wide]) {
        const found = list.filter((group) => group.cells.length === size)
        if (found.length > 0) return found
      }
    }
    const least = centred ? 3 : 2
    const sets = tight.filter((group) => group.cells.length >= least)
    if (sets.length > 1) {
      // Of sets of several sizes the larger ones are the corners, petals or shells.
      const most = Math.max(...sets.map((group) => group.cells.length))
      const larger = sets.filter((group) => group.cells.length === most)
      return larger.length > 1 && centred ? larger : sets
    }
    const wideSets = wide.filter((group) => group.cells.length >= 2)
    if (wideSets.length > 1) return wideSets
    if (runs.length > 1) return runs
    return sets.length > 0 ? sets : []
  })
}

/** The next group, or one stitch of it. */
export function findGroup(
  edge: Edge,
  noun: Noun,
  from: number,
  limit: number,
  pick: Pick | null,
  pickNoun: Noun | null,
): Site | null {
  const groups = groupsFor(edge, noun.size, pick === "centre" || noun.corner === true)
  if (groups.length === 0) return null
  const size = edge.size
  const spots = edge.keep(
    `spots:${noun.size ?? ""}:${pick ?? ""}:${noun.corner ?? ""}:${nounKey(pickNoun ?? { what: "any" })}`,
    () => groupSpots(edge, groups, pick, pickNoun),
  )
  // Spots repeat with every turn round the edge: look in this turn and the next.
  const turn = Math.floor(from / size)
  for (let shift = (turn - 1) * size; shift <= (turn + 1) * size; shift += size) {
    let low = 0
    let high = spots.length
    while (low < high) {
      const middle = (low + high) >> 1
      if (spots[middle]!.start + shift < from) low = middle + 1
      else high = middle
    }
    const spot = spots[low]
    if (!spot) continue
    if (spot.stop + shift > limit) return null
    const index = ((spot.chosen % size) + size) % size
    return {
      from: spot.start + shift,
      to: spot.stop + shift,
      anchor: edge.anchorAt(index, edge.cells[index]?.type === "chain"),
      group: shifted(spot.group, shift),
    }
  }
  return null
}

interface Spot {
  readonly start: number
  readonly stop: number
  readonly chosen: number
  readonly group: Group
}

/** Where each group, or the stitch picked of it, lies; in order. */
function groupSpots(
  edge: Edge,
  groups: readonly Group[],
  pick: Pick | null,
  pickNoun: Noun | null,
): Spot[] {
  const spots: Spot[] = []
  for (const group of groups) {
    const chosen = chosenIn(edge, group, pick, pickNoun)
    if (chosen === null) continue
    const start = pick === null ? group.all[0]! : chosen
    const last = pick === null ? group.all[group.all.length - 1]! : chosen
    spots.push({ start, stop: last + 1, chosen, group })
  }
  return spots.sort((a, b) => a.start - b.start)
}

function chosenIn(
  edge: Edge,
  group: Group,
  pick: Pick | null,
  pickNoun: Noun | null,
): number | null {
  const wanted = pickNoun?.kind
  let members = group.cells
  if (wanted) {
    const named = group.cells.filter((cell) =>
      kindFits(edge.elementAt(((cell % edge.size) + edge.size) % edge.size), wanted),
    )
    if (named.length > 0) members = named
  }
  if (pickNoun?.what === "space" || pickNoun?.what === "chain") {
    const chains = group.all.filter(
      (cell) => edge.cells[((cell % edge.size) + edge.size) % edge.size]?.type === "chain",
    )
    if (chains.length > 0) members = chains
  }
  if (pick === null) return members[0] ?? null
  if (pick === "centre") return members[Math.floor((members.length - 1) / 2)] ?? null
  if (pick === "last") return members[members.length - 1] ?? null
  return members[pick - 1] ?? null
}

function shifted(group: Group, shift: number): Group {
  return shift === 0
    ? group
    : { cells: group.cells.map((cell) => cell + shift), all: group.all.map((cell) => cell + shift) }
}
