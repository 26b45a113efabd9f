// Outlines to aim at: a rounded polygon with its sides at distance a and sharpness s is the polygon of
// apothem s a with a margin of (1 - s) a around it, so over half a side it is a straight piece of
// length s a tan(pi / k) and an arc of radius (1 - s) a. s = 0 is a circle, s = 1 the sharp polygon.
// Source: outer parallel body of a convex body, Steiner 1840 (from memory).

export interface Aim {
  readonly apothemMm: number
  /** 0 round to 1 sharp. */
  readonly sharpness: number
}

/** Length of half a side of the outline, mm. */
export function aimLength(aim: Aim, half: number): number {
  return aim.apothemMm * (aim.sharpness * Math.tan(half) + (1 - aim.sharpness) * half)
}

/** The point at a distance along half a side from its middle; written to `point` as x, y. */
export function aimPoint(aim: Aim, half: number, along: number, point: Float64Array): void {
  const { apothemMm: a, sharpness: s } = aim
  const straight = s * a * Math.tan(half)
  if (along <= straight || s >= 1) {
    point[0] = a
    point[1] = along
    return
  }
  const radius = (1 - s) * a
  const angle = (along - straight) / radius
  point[0] = s * a + radius * Math.cos(angle)
  point[1] = straight + radius * Math.sin(angle)
}
