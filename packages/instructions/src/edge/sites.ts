// Finding what a noun names on an edge. Positions run on past the end of the edge (they are taken
// round it), so that "next" after the last stitch is the first one again.

import { anchorKey } from "@roundwright/motif"
import type { Noun } from "../base/tree.ts"
import { cornerRuns, type Edge, groupsInOnePlace } from "./edge.ts"
import { findGroup } from "./groups.ts"
import { kindFits, type Site } from "./site.ts"

/**
 * The first place from `from` on that fits, ending no later than `limit`.
 * @param used cells already worked into, for "unworked" places; null to ask only whether one exists
 */
export function findSite(
  edge: Edge,
  noun: Noun,
  from: number,
  limit: number,
  _base: number,
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
      if (noun.side && cornerRuns(edge).has(cell.element)) return false
      return !noun.corner || cornerRuns(edge).has(cell.element)
    }
    case "chain":
      return cell.type === "chain"
    case "cell":
      return cell.type === "chain" || cell.type === "stitch"
    case "gap":
      return (
        cell.type === "gap" &&
        (!noun.betweenGroups || partsGroups(edge, index)) &&
        (!noun.sides || hasSides(edge, index, noun.sides))
      )
    case "picot":
      return cell.type === "picot"
    case "any":
      return cell.type === "stitch" || (cell.type === "chain" && edge.startsRun(index))
    default:
      return false
  }
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

/** Whether the stitches on either side of a gap stand in different places. */
export function partsGroups(edge: Edge, index: number): boolean {
  const before = stitchNear(edge, index, -1)
  const after = stitchNear(edge, index, 1)
  if (!before || !after) return false
  const a = before.anchors[before.anchors.length - 1]
  const b = after.anchors[0]
  return !a || !b || anchorKey(a) !== anchorKey(b)
}

/** The stitches beside a gap are of the kinds named, in the order the round meets them. */
function hasSides(edge: Edge, index: number, sides: NonNullable<Noun["sides"]>): boolean {
  const before = stitchNear(edge, index, -1)
  const after = stitchNear(edge, index, 1)
  return before?.kind.basic === sides[0].basic && after?.kind.basic === sides[1].basic
}

function stitchNear(edge: Edge, index: number, step: number) {
  for (let k = 1; k <= 6; k++) {
    const cell = edge.cells[(index + step * k + edge.size * 6) % edge.size]
    const element = cell?.type === "stitch" ? edge.elements[cell.element] : undefined
    if (element?.type === "stitch") return element
  }
  return null
}
