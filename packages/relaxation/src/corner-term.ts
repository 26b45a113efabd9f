// Stitches do not pass through each other: the corner between two vectors must not close. With c the share of its
// area at ease that is left, the energy is zero above `open` and rises without bound as c goes to zero:
//   E = -stiffness (c - open)^2 ln(c / open).
// In the plane c has a sign, so that a corner cannot turn over; in space the squared area is used.
// Form of the barrier: M. Li and others, "Incremental potential contact", ACM Trans. Graph. 39 (2020).

import type { Term } from "./terms.ts"

/** Plane: c = (u1 x u2) / area. */
export function planeCornerTerm(area: number, stiffness: number, open: number): Term {
  const share = (u: Float64Array): number => (u[0]! * u[4]! - u[1]! * u[3]!) / area
  const g = new Float64Array(6)
  const fill = (u: Float64Array): void => {
    g[0] = u[4]! / area
    g[1] = -u[3]! / area
    g[3] = -u[1]! / area
    g[4] = u[0]! / area
  }
  return barrierTerm(share, fill, g, stiffness, open, (_, matrix, force) => {
    const k = force / area
    matrix[4]! += k
    matrix[24]! += k
    matrix[9]! -= k
    matrix[19]! -= k
  })
}

/** Space: c = |u1 x u2|^2 / area^2. */
export function spaceCornerTerm(area: number, stiffness: number, open: number): Term {
  const scale = 1 / (area * area)
  const g = new Float64Array(6)
  const products = (u: Float64Array): [number, number, number] => [
    u[0]! ** 2 + u[1]! ** 2 + u[2]! ** 2,
    u[3]! ** 2 + u[4]! ** 2 + u[5]! ** 2,
    u[0]! * u[3]! + u[1]! * u[4]! + u[2]! * u[5]!,
  ]
  const share = (u: Float64Array): number => {
    const [aa, bb, ab] = products(u)
    return scale * (aa * bb - ab * ab)
  }
  const fill = (u: Float64Array): void => {
    const [aa, bb, ab] = products(u)
    for (let k = 0; k < 3; k++) {
      g[k] = 2 * scale * (bb * u[k]! - ab * u[3 + k]!)
      g[3 + k] = 2 * scale * (aa * u[3 + k]! - ab * u[k]!)
    }
  }
  return barrierTerm(share, fill, g, stiffness, open * open, (u, matrix, force) => {
    const [aa, bb, ab] = products(u)
    const k = 2 * scale * force
    for (let i = 0; i < 3; i++)
      for (let j = 0; j < 3; j++) {
        const one = i === j ? 1 : 0
        const [ai, bi, aj, bj] = [u[i]!, u[3 + i]!, u[j]!, u[3 + j]!]
        matrix[6 * i + j]! += k * (bb * one - bi * bj)
        matrix[6 * (3 + i) + 3 + j]! += k * (aa * one - ai * aj)
        const mixed = k * (2 * ai * bj - bi * aj - ab * one)
        matrix[6 * i + 3 + j]! += mixed
        matrix[6 * (3 + j) + i]! += mixed
      }
  })
}

function barrierTerm(
  share: (u: Float64Array) => number,
  fillGradient: (u: Float64Array) => void,
  g: Float64Array,
  stiffness: number,
  open: number,
  addSecond: (u: Float64Array, matrix: Float64Array, force: number) => void,
): Term {
  const energy = (c: number): number => {
    if (c >= open) return 0
    return c > 0 ? -stiffness * (c - open) ** 2 * Math.log(c / open) : Number.POSITIVE_INFINITY
  }
  const first = (c: number): number =>
    -stiffness * (2 * (c - open) * Math.log(c / open) + (c - open) ** 2 / c)
  const second = (c: number): number =>
    -stiffness * (2 * Math.log(c / open) + (4 * (c - open)) / c - (c - open) ** 2 / (c * c))
  return {
    vectors: 2,
    value: (u) => energy(share(u)),
    slope: (u, gradient) => {
      const c = share(u)
      if (c >= open) {
        gradient.fill(0, 0, 6)
        return 0
      }
      fillGradient(u)
      const force = first(c)
      for (let k = 0; k < 6; k++) gradient[k] = force * g[k]!
      return energy(c)
    },
    curvature: (u, matrix, convex) => {
      const c = share(u)
      if (c >= open) return false
      fillGradient(u)
      const k = second(c)
      for (let i = 0; i < 6; i++) for (let j = 0; j < 6; j++) matrix[6 * i + j] = k * g[i]! * g[j]!
      if (!convex) addSecond(u, matrix, first(c))
      return true
    },
  }
}
