// Outlines between a circle and a polygon, by two closed forms.
//
// A rounded polygon with k sides at distance a (the apothem) and corners rounded by arcs of radius
// (1 - s) a has, with half-angle phi = pi / k,
//   perimeter    P(a, s) = 2 k tan(phi) a s + 2 pi a (1 - s)
//   corner reach c(a, s) = a + s a (1 / cos(phi) - 1)
// s = 0 is the circle (2 pi a), s = 1 the sharp polygon (8 a for a square). Both are linear in s.
// Source: perimeter of a convex body's offset, Steiner 1840 (from memory); polygon: elementary.

/** Perimeter of the outline with `corners` corners (0 = round), apothem and sharpness 0..1. */
export function perimeterOf(apothem: number, corners: number, sharpness: number): number {
  const round = 2 * Math.PI * apothem
  return corners < 3 ? round : round + sharpness * (polygonFactor(corners) * apothem - round)
}

/** Sharp perimeter over apothem, 2 k tan(pi / k): 8 for a square, 6.93 for a hexagon; 2 pi for a circle. */
export function polygonFactor(corners: number): number {
  return corners < 3 ? 2 * Math.PI : 2 * corners * Math.tan(Math.PI / corners)
}

/** Centre to corner of the outline; equals the apothem for a circle. */
export function cornerReachOf(apothem: number, corners: number, sharpness: number): number {
  return corners < 3 ? apothem : apothem * (1 + sharpness * (cornerStretch(corners) - 1))
}

/** Corner reach over apothem of a sharp polygon, 1 / cos(pi / k): 1.414 for a square; 1 for a circle. */
export function cornerStretch(corners: number): number {
  return corners < 3 ? 1 : 1 / Math.cos(Math.PI / corners)
}

/** Sharpness 0..1 at which the outline has this perimeter; 0 for a circle. */
export function sharpnessFor(perimeter: number, apothem: number, corners: number): number {
  const round = 2 * Math.PI * apothem
  const range = polygonFactor(corners) * apothem - round
  return range > 0 ? clamp((perimeter - round) / range, 0, 1) : 0
}

export function clamp(value: number, low: number, high: number): number {
  return Math.min(high, Math.max(low, value))
}
