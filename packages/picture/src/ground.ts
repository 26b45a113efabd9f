// The ground a piece lies on: a plane of brightness through the border of the picture, light falling off and all.

import { median } from "./even.ts"
import type { GreyPicture } from "./grey.ts"

export interface Ground {
  /** Brightness at a place of the picture, or beside it. */
  at(x: number, y: number): number
  /** Spread of the border about it. */
  readonly scatter: number
}

/** Width of the border taken for ground, of the longer side. */
const borderShare = 0.02

/** Plane through border pixels by repeated least squares, far pixels left out by their median distance. */
export function groundPlane({ width, height, values }: GreyPicture): Ground {
  const border = Math.max(2, Math.round(borderShare * Math.max(width, height)))
  const points: [number, number, number][] = []
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const inside = x >= border && y >= border && x < width - border && y < height - border
      if (!inside) points.push([x / width - 0.5, y / height - 0.5, values[y * width + x]!])
    }
  let plane: [number, number, number] = [0, 0, median(points.map(([, , v]) => v))]
  let scatter = 0
  for (let turn = 0; turn < 6; turn++) {
    const off = points.map(([x, y, v]) => Math.abs(v - plane[0] * x - plane[1] * y - plane[2]))
    scatter = 1.4826 * median(off)
    const limit = Math.max(2.5 * scatter, 0.02)
    const kept = points.filter((_, i) => off[i]! <= limit)
    if (kept.length < 12) break
    plane = leastSquaresPlane(kept)
  }
  return {
    scatter,
    at: (x: number, y: number) =>
      plane[0] * (x / width - 0.5) + plane[1] * (y / height - 0.5) + plane[2],
  }
}

function leastSquaresPlane(points: readonly [number, number, number][]): [number, number, number] {
  const n = points.length
  const [mx, my, mv] = [0, 1, 2].map((k) => points.reduce((s, p) => s + p[k]!, 0) / n) as [
    number,
    number,
    number,
  ]
  let [xx, xy, yy, xv, yv] = [1e-9, 0, 1e-9, 0, 0]
  for (const [x, y, v] of points) {
    xx += (x - mx) ** 2
    xy += (x - mx) * (y - my)
    yy += (y - my) ** 2
    xv += (x - mx) * (v - mv)
    yv += (y - my) * (v - mv)
  }
  const det = xx * yy - xy * xy
  const a = (xv * yy - yv * xy) / det
  const b = (yv * xx - xv * xy) / det
  return [a, b, mv - a * mx - b * my]
}
