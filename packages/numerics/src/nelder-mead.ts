// Nelder and Mead's simplex: minimises a function of a few parameters that has no usable gradient, such as
// one with peaks and plateaus, by reflecting, stretching and shrinking a simplex of its values.
// Source: J. C. Lagarias et al., "Convergence properties of the Nelder-Mead simplex method in low
// dimensions", SIAM J. Optim. 9 (1998), for the steps and their factors.

import { requireFinite } from "./error.ts"

export interface SimplexOptions {
  /** First step of each parameter. */
  readonly steps: readonly number[]
  /** Most values of the function. */
  readonly evaluations?: number
  /** Spread of the values over the simplex below which it has settled. */
  readonly tolerance?: number
}

export interface SimplexMinimum {
  readonly parameters: readonly number[]
  readonly value: number
  readonly evaluations: number
  readonly ended: "settled" | "evaluations"
}

interface Corner {
  readonly at: readonly number[]
  readonly value: number
}

/** Values of the function that are not finite count as infinitely large. @throws RoundwrightError `not-finite` at the start */
export function minimiseBySimplex(
  valueAt: (parameters: readonly number[]) => number,
  start: readonly number[],
  options: SimplexOptions,
): SimplexMinimum {
  const most = options.evaluations ?? 200 * start.length
  const tolerance = options.tolerance ?? 1e-10
  let evaluations = 0
  const corner = (at: readonly number[]): Corner => {
    evaluations += 1
    const value = valueAt(at)
    return { at, value: Number.isFinite(value) ? value : Number.POSITIVE_INFINITY }
  }
  const first = corner(start.map((value, k) => requireFinite(value, `Parameter ${k}`)))
  requireFinite(first.value, "The function at the start")
  let simplex = [
    first,
    ...start.map((_, k) => corner(start.map((v, i) => (i === k ? v + options.steps[k]! : v)))),
  ]
  const ordered = () => {
    simplex = [...simplex].sort((a, b) => a.value - b.value)
  }
  ordered()
  while (evaluations < most) {
    const [best, worst] = [simplex[0]!, simplex.at(-1)!]
    if (worst.value - best.value <= tolerance * (Math.abs(best.value) + tolerance)) break
    const others = simplex.slice(0, -1)
    const middle = start.map((_, k) => others.reduce((s, c) => s + c.at[k]!, 0) / others.length)
    const along = (share: number) => corner(middle.map((m, k) => m + share * (m - worst.at[k]!)))
    const reflected = along(1)
    let next: Corner | null = reflected
    if (reflected.value < best.value) {
      const stretched = along(2)
      if (stretched.value < reflected.value) next = stretched
    } else if (reflected.value >= others.at(-1)!.value) {
      const outside = reflected.value < worst.value
      const drawnIn = along(outside ? 0.5 : -0.5)
      next = drawnIn.value < Math.min(reflected.value, worst.value) ? drawnIn : null
    }
    simplex = next
      ? [...others, next]
      : [best, ...simplex.slice(1).map(({ at }) => corner(at.map((v, k) => (v + best.at[k]!) / 2)))]
    ordered()
  }
  const { at, value } = simplex[0]!
  const ended = evaluations >= most ? "evaluations" : "settled"
  return { parameters: at, value, evaluations, ended }
}
