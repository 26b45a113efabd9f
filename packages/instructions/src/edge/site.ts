// A place found on an edge, and whether what stands there is of a kind that is named.

import type { Anchor, Element } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import type { Group } from "./edge.ts"

/** One place found: the cells it takes, from `from` up to `to`, and its anchor. */
export interface Site {
  readonly from: number
  readonly to: number
  readonly anchor: Anchor
  /** Where the hook goes on, when that is past more than the cells taken. */
  readonly past?: number
  /** Members of a group, as positions. */
  readonly group?: Group
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
