// Groups of stitches on an edge (petals, corners, shells) and single stitches picked out of them.

import type { Noun, Pick } from "../base/tree.ts"
import { type Edge, type Group, groupsBetweenSpaces, groupsInOnePlace } from "./edge.ts"
import { nounKey } from "./noun-key.ts"
import { kindFits, type Site } from "./site.ts"

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
        const plain = found.filter((group) => !holdsPicot(edge, group))
        if (found.length > 0) return plain.length > 0 ? plain : found
      }
    }
    const leaves = leavesOf(edge)
    if (leaves.length > 0) return leaves
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

/** The chain of its own round that a stitch of the edge stands on; -1 for any other cell. */
function leafUnder(edge: Edge, index: number): number {
  const element = edge.elements[edge.cells[index]?.element ?? -1]
  const anchor = element?.type === "stitch" ? element.anchors[0] : undefined
  return anchor?.at === "chain" && anchor.round === edge.round ? anchor.element : -1
}

/** Chains worked back along, each a group whose one member is its tip. */
export function leavesOf(edge: Edge): readonly Group[] {
  return edge.keep("leaves", () => {
    const leaves = new Map<number, number[]>()
    edge.cells.forEach((cell, index) => {
      const leaf = cell.type === "stitch" ? leafUnder(edge, index) : -1
      if (leaf >= 0) leaves.set(leaf, [...(leaves.get(leaf) ?? []), index])
    })
    const groups: Group[] = []
    for (const [leaf, stitches] of leaves) {
      const tip = edge.cells.findIndex((cell) => cell.type === "chain" && cell.element === leaf)
      const first = edge.reversed ? stitches[stitches.length - 1]! : stitches[0]!
      const all = tip < 0 ? stitches : [...stitches, tip].sort((a, b) => a - b)
      groups.push({ cells: [tip < 0 ? first : tip], all })
    }
    return groups
  })
}

/** A chain left over at the tip of a leaf. */
function isTip(edge: Edge, index: number): boolean {
  return leavesOf(edge).some((leaf) => leaf.cells[0] === index)
}

/** First cell of the run of chains in the middle of a group; null for a group without chains. */
function middleRun(edge: Edge, group: Group): number | null {
  const runs = group.all.filter((cell) =>
    edge.startsRun(((cell % edge.size) + edge.size) % edge.size),
  )
  return runs[Math.floor((runs.length - 1) / 2)] ?? null
}

/** A picot stands between the first and the last stitch of a group. */
function holdsPicot(edge: Edge, group: Group): boolean {
  const first = group.cells[0] ?? 0
  const last = group.cells[group.cells.length - 1] ?? 0
  for (let at = first; at < last; at++)
    if (edge.cells[((at % edge.size) + edge.size) % edge.size]?.type === "picot") return true
  return false
}

/** Whether some group of that many stitches is there. */
export function hasGroupOf(edge: Edge, size: number): boolean {
  return [
    groupsInOnePlace(edge, true),
    groupsInOnePlace(edge, false),
    groupsBetweenSpaces(edge),
  ].some((groups) => groups.some(({ cells }) => cells.length === size))
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
    const inner =
      (pick === null || (pick === "centre" && pickNoun === null)) && noun.middle
        ? middleRun(edge, spot.group)
        : null
    if (inner !== null) {
      const cell = ((inner % size) + size) % size
      return {
        from: inner + shift,
        to: inner + shift + edge.widths[cell]!,
        past: spot.stop + shift,
        anchor: edge.anchorAt(cell, true),
      }
    }
    return {
      from: spot.start + shift,
      to: spot.stop + shift,
      anchor: edge.anchorAt(index, edge.cells[index]?.type === "chain" && !isTip(edge, index)),
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
  return pick === "dip" ? null : (members[pick - 1] ?? null)
}

function shifted(group: Group, shift: number): Group {
  return shift === 0
    ? group
    : { cells: group.cells.map((cell) => cell + shift), all: group.all.map((cell) => cell + shift) }
}
