// Groups of stitches in one place made larger or smaller throughout a round: corners, shells, the clusters of a granny.

import { anchorKey, kindKey, type Motif, type Round } from "@roundwright/motif"
import { insertColumns, removeColumns } from "./columns.ts"

/** Stitches side by side in one place, all of one kind: indices in working order. */
export interface StitchGroup {
  readonly elements: readonly number[]
  readonly kind: string
}

/** Every run of plain stitches that stand side by side in one place. */
export function groupsOf({ elements }: Round): StitchGroup[] {
  const groups: { elements: number[]; kind: string; place: string }[] = []
  elements.forEach((element, e) => {
    if (element.type !== "stitch" || element.anchors.length !== 1) return
    const place = anchorKey(element.anchors[0]!)
    const kind = kindKey(element.kind)
    const last = groups.at(-1)
    const beside = last && last.elements.at(-1) === e - 1
    if (beside && last.place === place && last.kind === kind) last.elements.push(e)
    else groups.push({ elements: [e], kind, place })
  })
  return groups
}

/** Sizes of groups that a round has, of two stitches and more, and how many of each. */
export function groupSizes(round: Round): Map<number, number> {
  const sizes = new Map<number, number>()
  for (const { elements } of groupsOf(round))
    if (elements.length > 1) sizes.set(elements.length, (sizes.get(elements.length) ?? 0) + 1)
  return sizes
}

/** The round with `to` stitches in every place that has `from` side by side; later rounds follow along. */
export function regrouped(motif: Motif, index: number, from: number, to: number): Motif | null {
  const groups = groupsOf(motif.rounds[index]!).filter(({ elements }) => elements.length === from)
  if (groups.length === 0 || to < 1 || to === from) return null
  return to > from
    ? insertColumns(
        motif,
        index,
        groups.flatMap(({ elements }) => Array.from({ length: to - from }, () => elements.at(-1)!)),
      )
    : removeColumns(
        motif,
        index,
        groups.flatMap(({ elements }) => elements.slice(to - from)),
      )
}
