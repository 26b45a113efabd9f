// Draws twisted threads into a grey picture: polylines of a width, laid over one another, softened at the
// edge and shaded along their length as plied yarn is.

import type { GreyPicture, Point } from "@roundwright/picture"

export interface Stroke {
  readonly points: readonly Point[]
  readonly widthPx: number
  /** Length of one turn of the ply. */
  readonly plyPx: number
}

/** Coverage of thread, 0 to 1, times its shade. */
export function drawStrokes(
  width: number,
  height: number,
  strokes: readonly Stroke[],
): GreyPicture {
  const values = new Float32Array(width * height)
  for (const { points, widthPx, plyPx } of strokes) {
    let along = 0
    const half = widthPx / 2
    for (let i = 1; i < points.length; i++) {
      const [a, b] = [points[i - 1]!, points[i]!]
      const [dx, dy] = [b.x - a.x, b.y - a.y]
      const length = Math.hypot(dx, dy)
      if (length < 1e-9) continue
      const reach = half + 1
      const [x0, x1] = [Math.min(a.x, b.x) - reach, Math.max(a.x, b.x) + reach]
      const [y0, y1] = [Math.min(a.y, b.y) - reach, Math.max(a.y, b.y) + reach]
      for (let y = Math.max(0, Math.ceil(y0)); y <= Math.min(height - 1, y1); y++)
        for (let x = Math.max(0, Math.ceil(x0)); x <= Math.min(width - 1, x1); x++) {
          const t = Math.max(0, Math.min(1, ((x - a.x) * dx + (y - a.y) * dy) / (length * length)))
          const off = Math.hypot(x - a.x - t * dx, y - a.y - t * dy)
          const cover = Math.max(0, Math.min(1, half + 0.5 - off))
          if (cover === 0) continue
          const side = (off / half) ** 2
          const ply = 0.86 + 0.14 * Math.cos((2 * Math.PI * (along + t * length)) / plyPx)
          const shade = ply * (1 - 0.3 * Math.min(1, side))
          const at = y * width + x
          values[at] = Math.max(values[at]! * (1 - cover), 0) + cover * shade
        }
      along += length
    }
  }
  return { width, height, values }
}
