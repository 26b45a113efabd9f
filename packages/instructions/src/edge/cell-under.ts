// Where on an earlier round the hook stands, by following what its last place was worked into.

import type { Anchor, Element, Round } from "@roundwright/motif"
import type { Edge } from "./edge.ts"

/** Where on an earlier round the hook stands: just past what the last place used was worked into. */
export function cellUnder(
  rounds: readonly Round[],
  edge: Edge,
  current: Anchor | undefined,
): number {
  let anchor = current
  for (
    let guard = 0;
    anchor && anchor.at !== "centre" && anchor.round > edge.round && guard < 1000;
    guard++
  ) {
    const elements: readonly Element[] = rounds[anchor.round]?.elements ?? []
    let element: Element | undefined = elements[anchor.element]
    for (let back: number = anchor.element; element?.type !== "stitch" && back >= 0; back--)
      element = elements[back]
    anchor = element?.type === "stitch" ? element.anchors[element.anchors.length - 1] : undefined
  }
  if (!anchor || anchor.at === "centre" || anchor.round !== edge.round) return 0
  const target = anchor
  const index = edge.cells.findIndex((cell) => cell.element === target.element)
  return index < 0 ? 0 : index + edge.widths[index]!
}
