// A stand-in for a round that could not be worked, from its stated total, so that reading can go on.

import type { Element, Round } from "@roundwright/motif"
import type { RoundTree, StatedItem } from "./tree.ts"

/** Stitches of a stand-in group whose size is not known: the fewest that have a middle. */
const standInGroup = 3

/** "(16 points)": so many groups, each of a few stitches in a place of its own. */
function groupsAlone(item: StatedItem | undefined, number: number, index: number): Round | null {
  if (!item || item.count < 1 || item.count > 1000) return null
  const elements = Array.from(
    { length: standInGroup * item.count },
    (_, i): Element => ({
      type: "stitch",
      kind: { basic: "sc" },
      anchors: [
        { at: "between", round: Math.max(0, index - 1), element: Math.floor(i / standInGroup) },
      ],
    }),
  )
  return { number, elements, turned: false, closing: "joined" }
}

/** A stand-in for a round that could not be worked, from its stated total, so that reading can go on. */
export function standIn(tree: RoundTree, number: number, index: number): Round | null {
  const firm = tree.totals.find((total) => total.firm)
  if (!firm) return null
  const stitches = firm.items.filter((item) => item.unit === "kind" || item.unit === "stitches")
  const spaces = firm.items.filter((item) => item.unit === "space" && item.size !== undefined)
  const picked = stitches.filter((item) => item.unit === "kind")
  const list = picked.length > 0 ? picked : stitches.slice(0, 1)
  const loose = list.length === 0 && spaces.length > 0
  const count = loose
    ? spaces.reduce((sum, item) => sum + item.count, 0)
    : list.reduce((sum, item) => sum + item.count, 0)
  const runs = spaces.reduce((sum, item) => sum + item.count, 0)
  if (count === 0)
    return groupsAlone(
      firm.items.find((item) => item.unit === "groups"),
      number,
      index,
    )
  if (count < 1 || count + runs > 10_000) return null
  const elements: Element[] = []
  const kinds = loose
    ? Array.from({ length: count }, () => ({ basic: "sc" as const }))
    : list.flatMap((item) =>
        Array.from(
          { length: Math.min(item.count, 10_000) },
          () => item.kind ?? { basic: "sc" as const },
        ),
      )
  const sizes = spaces.flatMap((item) =>
    Array.from({ length: Math.min(item.count, 10_000) }, () => item.size!),
  )
  let placed = 0
  kinds.forEach((kind, i) => {
    elements.push({
      type: "stitch",
      kind,
      anchors: [index > 0 ? { at: "between", round: index - 1, element: 0 } : { at: "centre" }],
    })
    const upTo = Math.floor(((i + 1) * sizes.length) / kinds.length)
    for (; placed < upTo; placed++) elements.push({ type: "chain", chains: sizes[placed]! })
  })
  return { number, elements, turned: false, closing: "joined" }
}
