// What a noun means on an edge that has nothing of that very name: the nearest that is there.

import type { Noun } from "../base/tree.ts"
import { type Edge, groupsInOnePlace } from "./edge.ts"
import { nounKey } from "./noun-key.ts"
import { findSite } from "./sites.ts"

/** What a noun is taken to mean on this edge, when nothing there bears the very name. */
export interface Meaning {
  readonly noun: Noun
  /** Set when the name had to be stretched, with what is there instead. */
  readonly stretched: "size" | "kind" | "gap" | null
  readonly exists: boolean
}

/** Does any place of the edge fit the noun; if not, the nearest meaning that one does. */
export function meaningOf(edge: Edge, noun: Noun): Meaning {
  return edge.keep(nounKey(noun), () => nearestMeaning(edge, noun))
}

function nearestMeaning(edge: Edge, noun: Noun): Meaning {
  if (noun.what === "unit") {
    const units: Noun[] = [{ what: "space" }, { what: "group" }, { what: "stitch" }]
    const unit = units.find((one) => fits(edge, one))
    return { noun: unit ?? noun, stretched: null, exists: unit !== undefined }
  }
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
    if (noun.size === undefined && allInGroups(edge))
      return { noun: { what: "gap", betweenGroups: true }, stretched: null, exists: true }
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
  if (noun.what === "gap" && noun.sides) {
    const { sides: _sides, ...anyGap } = noun
    return meaningOf(edge, anyGap)
  }
  // Where no two groups stand side by side their chains part them.
  if (noun.what === "gap" && noun.betweenGroups && fits(edge, { what: "space" }))
    return { noun: { what: "space" }, stretched: null, exists: true }
  if (noun.what === "gap" && noun.betweenGroups && fits(edge, { what: "gap" }))
    return { noun: { what: "gap" }, stretched: null, exists: true }
  if (noun.what === "gap" && fits(edge, { what: "space" }))
    return { noun: { what: "space" }, stretched: null, exists: true }
  return { noun, stretched: null, exists: false }
}

/** Fewest stitches of a group whose neighbours it is parted from by spaces. */
const fewestInGroup = 3

/** No chains, and every stitch one of several in its place: the only spaces are those between groups. */
function allInGroups(edge: Edge): boolean {
  if (edge.round < 0 || edge.cells.some((cell) => cell.type === "chain")) return false
  const groups = groupsInOnePlace(edge, true)
  return (
    groups.length > 1 &&
    groups.every((group) => group.cells.length >= fewestInGroup) &&
    fits(edge, { what: "gap", betweenGroups: true })
  )
}

function widerSpaces(noun: Noun): Noun[] {
  const { size: _s, middle: _m, side: _side, ...plain } = noun
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

export function fits(edge: Edge, noun: Noun): boolean {
  return findSite(edge, noun, 0, edge.size, 0, null) !== null
}
