// Solid fabric as the ground of another: a unit in every second or third stitch.

import type { Fabric } from "./fabric-of.ts"

/**
 * As many units as the corners can share and about one in `each` stitches; null where the stitches are too few.
 */
export function thinned(fabric: Fabric, corners: number, each: number): Fabric | null {
  const { units } = fabric
  const n = units.length
  const whole = n % each === 0 && (n / each) % corners === 0
  const count = whole ? n / each : corners * Math.round(n / each / corners)
  if (count < corners || count > n) return null
  const at = Array.from({ length: count }, (_, i) => Math.floor((i * n) / count))
  return {
    name: fabric.name,
    units: at.map((u) => units[u]!),
    joints: at.map((u, i) => {
      const next = i + 1 < count ? at[i + 1]! : n
      const middle = (u + next) / 2
      return Number.isInteger(middle) ? units[middle % n]! : null
    }),
  }
}
