// A round that stands for the total it states: its words could not be worked to it, but the total, and what
// the next round needs, fix its count. Its stitches are spread evenly over the round below.

import type { Anchor, Element, Round } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import type { RoundTree, StatedItem, StatedTotal } from "../base/tree.ts"
import { firstBasic } from "../work/main-stitch.ts"

/** Stitches of a group whose size is not told: the fewest that have a middle. */
const usualGroup = 3
/** A total of fewer is a figure said in passing. */
const fewestStitches = 3
/** A round of fewer is no round of a motif once it has grown. */
const fewestOfRound = 6
/** Most stitches and spaces of such a round. */
const mostElements = 10_000

/** Where such a round stands. */
export interface Ground {
  readonly number: number
  readonly index: number
  readonly below: Round | undefined
}

/** Null where the text states no firm total of stitches or spaces. */
export function assumedRound(tree: RoundTree, ground: Ground): Round | null {
  const firm = tree.totals.find((total) => total.firm)
  return firm ? fromTotal(firm, tree, ground) : null
}

/** The round with so many plain stitches, where only the next round tells how many. */
export function roundOf(count: number, tree: RoundTree, ground: Ground): Round {
  const kind: StitchKind = { basic: firstBasic(tree.steps) ?? "sc" }
  return madeOf(
    Array.from({ length: count }, () => kind),
    [],
    ground,
  )
}

function fromTotal(firm: StatedTotal, tree: RoundTree, ground: Ground): Round | null {
  const named = firm.items.filter((item) => item.unit === "kind")
  const plain = firm.items.filter((item) => item.unit === "stitches" || item.unit === "with-chains")
  const spaces = firm.items.filter((item) => item.unit === "space" && item.count > 0)
  const list = named.length > 0 ? named : plain.slice(0, 1)
  const basic = firstBasic(tree.steps) ?? "sc"
  const kinds =
    list.length > 0
      ? list.flatMap((item) => repeated(item.kind ?? { basic }, item.count))
      : spaces.length > 0
        ? repeated({ basic }, sum(spaces))
        : groups(firm.items, basic)
  const sizes = spaces.flatMap((item) =>
    Array.from({ length: Math.min(item.count, mostElements) }, () => item.size ?? 3),
  )
  if (kinds.length < fewestStitches || kinds.length + sizes.length > mostElements) return null
  if (isFigureInPassing(firm, kinds.length, ground)) return null
  return madeOf(kinds, sizes, ground)
}

/** One figure of stitches far below what the round before has is said of a part ("ending with the second 3 dc"). */
function isFigureInPassing(firm: StatedTotal, stitches: number, { below }: Ground): boolean {
  if (!below || firm.items.length > 1 || firm.items[0]?.unit === "groups") return false
  const there = below.elements.filter(({ type }) => type === "stitch").length
  return stitches < fewestOfRound && stitches * 3 < there
}

/** "(16 points)": so many groups of a few stitches. */
function groups(items: readonly StatedItem[], basic: StitchKind["basic"]): StitchKind[] {
  const item = items.find(({ unit }) => unit === "groups")
  if (!item || item.count < 1 || item.count > 1000) return []
  return repeated({ basic }, usualGroup * item.count)
}

function repeated(kind: StitchKind, count: number): StitchKind[] {
  return Array.from({ length: Math.min(count, mostElements + 1) }, () => kind)
}

function sum(items: readonly StatedItem[]): number {
  return items.reduce((total, item) => total + item.count, 0)
}

function madeOf(kinds: readonly StitchKind[], sizes: readonly number[], ground: Ground): Round {
  const places = placesBelow(ground)
  const elements: Element[] = []
  let placed = 0
  kinds.forEach((kind, i) => {
    const anchor = places[Math.floor((i * places.length) / kinds.length)]!
    elements.push({ type: "stitch", kind, anchors: [anchor] })
    const upTo = Math.floor(((i + 1) * sizes.length) / kinds.length)
    for (; placed < upTo; placed++) elements.push({ type: "chain", chains: sizes[placed]! })
  })
  return { number: ground.number, elements, turned: false, closing: "joined" }
}

/** Every stitch, or where there are none every space, of the round below. */
function placesBelow({ index, below }: Ground): Anchor[] {
  if (!below || index === 0) return [{ at: "centre" }]
  const found: Anchor[] = []
  below.elements.forEach((element, k) => {
    if (element.type === "stitch") found.push({ at: "stitch", round: index - 1, element: k })
  })
  if (found.length > 0) return found
  below.elements.forEach((element, k) => {
    if (element.type === "chain") found.push({ at: "space", round: index - 1, element: k })
  })
  return found.length > 0 ? found : [{ at: "centre" }]
}
