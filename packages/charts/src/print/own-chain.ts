// Stitches worked along a chain of their own round, as in a leaf or a point: each is set off its chain by as much as its
// symbol is deep, and stands beside the chain's oval, not on it.

import type { Motif } from "@roundwright/motif"
import { depthOf } from "./depths.ts"
import { type Place, polar, symbolMm } from "./mark.ts"
import type { Ring, RingItem } from "./rings.ts"

/** From the middle of a chain to a foot beside it, however the oval lies, mm. */
export const besideChain = symbolMm.ovalLong + symbolMm.footGap

/** Angles and radii of one repeat with the tops of such stitches moved out of the way of their chains. */
export function offOwnChain(
  motif: Motif,
  index: number,
  ring: Ring,
  { angles, radii }: { readonly angles: number[]; readonly radii: number[] },
  turn: number,
): { angles: number[]; radii: number[] } {
  const moved = { angles: [...angles], radii: [...radii] }
  ring.items.forEach((one, k) => {
    const base = ownChainOf(motif, index, ring, one, angles, radii, turn)
    if (!base) return
    const top = polar(angles[k]!, radii[k]!)
    const way = { x: top.x - base.x, y: top.y - base.y }
    const length = Math.hypot(way.x, way.y)
    const least = depthOf(one, 0) + besideChain
    if (length >= least || length === 0) return
    const [x, y] = [base.x + (way.x * least) / length, base.y + (way.y * least) / length]
    moved.angles[k] = angles[k]! + turned(Math.atan2(y, x) - angles[k]!)
    moved.radii[k] = Math.hypot(x, y)
  })
  return moved
}

/** Where the chain of the same round lies that a stitch is worked into; null for any other stitch. */
function ownChainOf(
  motif: Motif,
  index: number,
  { items, perRepeat, backwards }: Ring,
  { item, element }: RingItem,
  angles: readonly number[],
  radii: readonly number[],
  turn: number,
): Place | null {
  const anchor = item.type === "stitch" ? item.anchors[0] : undefined
  if (anchor?.at !== "chain" || anchor.round !== index) return null
  const run = motif.rounds[index]!.elements[anchor.element]
  if (run?.type !== "chain") return null
  const chain = backwards ? run.chains - 1 - anchor.chain : anchor.chain
  const at = items.findIndex(
    (one) => one.element % perRepeat === anchor.element % perRepeat && one.chain === chain,
  )
  if (at < 0) return null
  // The chain may stand in the repeat before: the repeat is cut somewhere along the leaf.
  const images = Math.floor(anchor.element / perRepeat) - Math.floor(element / perRepeat)
  const own = Math.floor(items[at]!.element / perRepeat) - Math.floor(element / perRepeat)
  return polar(angles[at]! + (images - own) * turn * (backwards ? -1 : 1), radii[at]!)
}

function turned(angle: number): number {
  return angle - 2 * Math.PI * Math.round(angle / (2 * Math.PI))
}
