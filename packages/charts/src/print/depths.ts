// How much room each symbol takes: along its round and from the round below, mm.

import type { Element } from "@roundwright/motif"
import { isTall, yarnOvers } from "@roundwright/stitches"
import { symbolMm } from "./mark.ts"
import type { RingItem } from "./rings.ts"

/** From what it stands on to its top. A starting chain in its place needs room for its ovals. */
export function depthOf({ item }: RingItem, chains: number): number {
  if (item.type !== "stitch") return 2 * symbolMm.ovalShort + symbolMm.footGap
  const column = chains > 0 ? chains * symbolMm.columnPitch + 0.5 : 0
  const { basic } = item.kind
  if (basic === "sl st") return Math.max(column, 2 * symbolMm.dot + symbolMm.footGap)
  if (basic === "sc" || basic === "esc")
    return Math.max(column, symbolMm.cross + symbolMm.footGap + 0.3)
  const steps = isTall(basic) ? yarnOvers(basic) + 2 : 2
  return Math.max(column, steps * symbolMm.columnPitch + 0.2)
}

/** Half of what it takes along the round. */
export function halfWidth(item: Element): number {
  if (item.type !== "stitch") return symbolMm.chainPitch / 2
  if (item.kind.gathered) return 1.5
  if (item.kind.basic === "sl st") return 0.75
  return symbolMm.pitch / 2
}

/** Half of what its ink takes along the round, with a little air. */
export function coveredHalf(item: Element): number {
  if (item.type !== "stitch") return symbolMm.ovalLong + 0.12
  return item.kind.basic === "sl st" ? symbolMm.dot + 0.15 : symbolMm.head / 2 + 0.15
}

/** How far beyond its place a symbol reaches: a stitch ends there, a chain lies on it, slanted where the edge is. */
export function beyond({ item, facing }: RingItem): number {
  if (item.type === "stitch") return symbolMm.stroke
  const { ovalLong, ovalShort } = symbolMm
  return Math.hypot(ovalShort * facing, ovalLong * Math.sqrt(1 - facing * facing)) + 0.1
}
