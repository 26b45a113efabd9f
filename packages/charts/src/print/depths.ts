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

/** How far beyond its place a symbol reaches: a chain lies on it, a stitch ends there. */
export function beyond(item: Element): number {
  return item.type === "stitch" ? symbolMm.stroke : symbolMm.ovalShort + 0.1
}
