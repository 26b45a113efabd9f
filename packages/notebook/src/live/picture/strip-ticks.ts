// Ticks of the strip taken away and added by a tap: the ring is then counted by hand.

/// <reference lib="dom" />

import { stripRoom } from "../../picture/picture-svg.ts"

/** A tap nearer to a tick than this share of the mean spacing means that tick. */
const nearTick = 0.3

export interface TappedRing {
  readonly from: number
  readonly to: number
  readonly ticks: readonly number[]
}

/** @param rings as the strip shows them @param tapped the ring's number from 1 and its ticks as they are then */
export function onTap(
  drawing: SVGSVGElement,
  rings: () => readonly TappedRing[],
  tapped: (ring: number, ticks: readonly number[]) => void,
): void {
  drawing.addEventListener("click", ({ clientX, clientY }) => {
    const matrix = drawing.getScreenCTM()
    if (!matrix) return
    const at = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse())
    const turns = (at.x - stripRoom.left) / stripRoom.width
    const share = 1 - at.y / stripRoom.height
    const index = rings().findIndex(({ from, to }) => share >= from && share < to)
    const ring = rings()[index]
    if (!ring || turns < 0 || turns >= 1) return
    tapped(index + 1, toggled(ring.ticks, turns))
  })
}

/** Ticks without the one that is meant, or with one more. @param at turns, 0 to 1 */
export function toggled(ticks: readonly number[], at: number): number[] {
  const off = (tick: number) => Math.min(Math.abs(tick - at), 1 - Math.abs(tick - at))
  const nearest = ticks.reduce((best, tick, i) => (off(tick) < off(ticks[best]!) ? i : best), 0)
  const spacing = 1 / Math.max(1, ticks.length)
  if (ticks.length > 0 && off(ticks[nearest]!) < nearTick * spacing)
    return ticks.filter((_, i) => i !== nearest)
  return [...ticks, at].sort((a, b) => a - b)
}
