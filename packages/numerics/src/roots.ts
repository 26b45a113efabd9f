// The root of a function between two points where it has opposite signs: Brent's method, which takes
// the step of the secant or of inverse quadratic interpolation when it helps and halves otherwise.
// Source: R. P. Brent, "Algorithms for Minimization without Derivatives" (1973), ch. 4.

import { RoundwrightError, requireFinite } from "./error.ts"

export interface Root {
  readonly x: number
  readonly value: number
  readonly evaluations: number
  readonly ended: "bracket-small" | "exact" | "iterations"
}

/** Halving alone needs about 60 steps to reach rounding; Brent's bound is its square, never met in practice. */
const mostSteps = 300

/**
 * @param tolerance half-width of the final bracket; rounding of x is added
 * @throws RoundwrightError `no-bracket` when the values at both ends have the same sign, `not-finite`
 */
export function findRoot(
  f: (x: number) => number,
  from: number,
  to: number,
  tolerance = 1e-12,
): Root {
  let [a, b] = [requireFinite(from, "The lower end"), requireFinite(to, "The upper end")]
  const call = (x: number): number => requireFinite(f(x), `The function at ${x}`)
  let [fa, fb] = [call(a), call(b)]
  let evaluations = 2
  if (fa !== 0 && fb !== 0 && Math.sign(fa) === Math.sign(fb))
    throw new RoundwrightError("no-bracket", "The function has the same sign at both ends.", {
      hint: "Give two points between which the function changes its sign.",
      numbers: { from, to, valueFrom: fa, valueTo: fb },
    })
  // b is the best point, c the other end of the bracket, a the point before.
  let [c, fc] = [a, fa]
  let step = b - a
  let before = step
  for (let k = 0; k < mostSteps; k++) {
    if (Math.sign(fb) === Math.sign(fc)) {
      ;[c, fc] = [a, fa]
      step = b - a
      before = step
    }
    if (Math.abs(fc) < Math.abs(fb)) {
      ;[a, b, c] = [b, c, b]
      ;[fa, fb, fc] = [fb, fc, fb]
    }
    if (fb === 0) return { x: b, value: 0, evaluations, ended: "exact" }
    const near = 2 * Number.EPSILON * Math.abs(b) + tolerance
    const middle = (c - b) / 2
    if (Math.abs(middle) <= near) return { x: b, value: fb, evaluations, ended: "bracket-small" }
    const inner = interpolated(a, b, c, fa, fb, fc)
    if (
      Math.abs(before) >= near &&
      Math.abs(fa) > Math.abs(fb) &&
      inner * Math.sign(middle) > 0 &&
      Math.abs(inner) < Math.min(1.5 * Math.abs(middle) - near / 2, Math.abs(before / 2))
    ) {
      before = step
      step = inner
    } else {
      step = middle
      before = middle
    }
    ;[a, fa] = [b, fb]
    b += Math.abs(step) > near ? step : Math.sign(middle) * near
    fb = call(b)
    evaluations++
  }
  return { x: b, value: fb, evaluations, ended: "iterations" }
}

/** Step from b to the root of the secant (two points) or of the inverse parabola (three points). */
function interpolated(a: number, b: number, c: number, fa: number, fb: number, fc: number): number {
  const s = fb / fa
  if (a === c) return ((c - b) * s) / (1 - s)
  const q = fa / fc
  const r = fb / fc
  const p = s * ((c - b) * q * (q - r) - (b - a) * (r - 1))
  return -p / ((q - 1) * (r - 1) * (s - 1))
}
