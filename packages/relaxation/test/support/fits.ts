// Rings and spheres through the nodes of a shape.

import { factorSymmetric, symmetricFromTriplets } from "@roundwright/numerics"
import type { Net } from "../../src/index.ts"

/** Mean distance of a round's nodes from their middle, and the height of that middle. */
export function meanRing(
  net: Net,
  xyz: Float64Array,
  round: number,
): { radius: number; height: number } {
  const { nodes } = net.edges[round]!
  const middle = [0, 1, 2].map(
    (k) => nodes.reduce((sum, node) => sum + xyz[3 * node + k]!, 0) / nodes.length,
  )
  const radius =
    nodes.reduce(
      (sum, node) => sum + Math.hypot(...middle.map((m, k) => xyz[3 * node + k]! - m)),
      0,
    ) / nodes.length
  return { radius, height: middle[2]! }
}

/** Radius of the sphere that fits best in the sense |p|^2 = 2 c.p + d, a linear problem. */
export function fitSphere(xyz: Float64Array): number {
  const normal = Array.from({ length: 4 }, () => new Float64Array(4))
  const right = new Float64Array(4)
  for (let i = 0; i < xyz.length; i += 3) {
    const row = [xyz[i]!, xyz[i + 1]!, xyz[i + 2]!, 1]
    const value = row[0]! ** 2 + row[1]! ** 2 + row[2]! ** 2
    for (let a = 0; a < 4; a++) {
      right[a]! += row[a]! * value
      for (let b = 0; b < 4; b++) normal[a]![b]! += row[a]! * row[b]!
    }
  }
  const [rows, columns, entries]: number[][] = [[], [], []]
  for (let a = 0; a < 4; a++)
    for (let b = 0; b <= a; b++) {
      rows!.push(a)
      columns!.push(b)
      entries!.push(normal[a]![b]!)
    }
  const s = factorSymmetric(symmetricFromTriplets(4, rows!, columns!, entries!)).solve(right)
  return Math.sqrt(s[3]! + (s[0]! ** 2 + s[1]! ** 2 + s[2]! ** 2) / 4)
}
