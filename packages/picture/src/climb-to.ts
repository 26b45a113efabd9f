// Climbs to the nearest top of a function over the plane, by steps in four directions that get smaller.

import type { Point } from "./grey.ts"

/** Most moves at one size of step: the start is near already. */
const mostMoves = 12

export function climbTo(
  start: Point,
  steps: readonly number[],
  valueAt: (point: Point) => number,
): { readonly point: Point; readonly value: number } {
  let point: Point = { x: start.x, y: start.y }
  let value = valueAt(point)
  for (const step of steps)
    for (let moves = 0; moves < mostMoves; moves++) {
      let better: { point: Point; value: number } | null = null
      for (const [dx, dy] of [
        [step, 0],
        [-step, 0],
        [0, step],
        [0, -step],
      ] as const) {
        const there = { x: point.x + dx, y: point.y + dy }
        const valueThere = valueAt(there)
        if (valueThere > (better?.value ?? value)) better = { point: there, value: valueThere }
      }
      if (!better) break
      point = better.point
      value = better.value
    }
  return { point, value }
}
