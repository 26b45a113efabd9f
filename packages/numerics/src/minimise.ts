// What the minimisers share: the function they are given, how they end, and the backtracking search
// along a descent direction with the condition of Armijo.
// Source: J. Nocedal, S. J. Wright, "Numerical Optimization" (2nd ed., 2006), ch. 3.

import type { SymmetricPattern } from "./sparse.ts"

export interface DifferentiableFunction {
  readonly size: number
  value(x: Float64Array): number
  /** Writes the gradient and returns the value. */
  gradient(x: Float64Array, gradient: Float64Array): number
}

export interface TwiceDifferentiableFunction extends DifferentiableFunction {
  readonly pattern: SymmetricPattern
  /**
   * Writes the second derivatives into the pattern's values. With `convex`, writes instead a positive
   * semidefinite matrix close to them (negative parts of single terms left out).
   */
  hessian(x: Float64Array, values: Float64Array, convex: boolean): void
}

/**
 * How a minimiser ended. `gradient-small`: a minimum within the tolerance. `cannot-improve`: no step
 * lowers the value any more, rounding rules. `iterations`: stopped before its end. `saddle`: level, but a
 * direction leads down that could not be used. `not-finite`: the function gave no number at the start.
 */
export type MinimiserEnd =
  | "gradient-small"
  | "cannot-improve"
  | "iterations"
  | "saddle"
  | "not-finite"

export interface Minimum {
  readonly x: Float64Array
  readonly value: number
  /** Largest component of the gradient. */
  readonly gradientSize: number
  readonly iterations: number
  readonly evaluations: number
  readonly ended: MinimiserEnd
}

/** Part of the promised decrease that must be had: any small number will do (Nocedal and Wright, 3.1). */
const requiredDecrease = 1e-4
/** Halving this often shrinks a step to 1e-9: further on only rounding is compared. */
const mostHalvings = 30

/** Steps that are bent, and what the gradient promises of where they lead. */
export interface BentStep {
  project(trial: Float64Array): void
  slopeTo(trial: Float64Array): number
}

export interface Step {
  readonly length: number
  readonly value: number
}

/**
 * Looks for a step along `direction` that lowers the value enough; `trial` receives the point.
 * @param slope directional derivative at x, below zero
 * @param longest first step tried
 * @returns null when none is found
 */
export function searchAlong(
  f: DifferentiableFunction,
  x: Float64Array,
  value: number,
  direction: Float64Array,
  slope: number,
  longest: number,
  trial: Float64Array,
  count: () => void,
  bend?: BentStep,
): Step | null {
  let length = longest
  // Near the minimum the decrease drowns in rounding: allow that much.
  const rounding = 4 * Number.EPSILON * Math.abs(value)
  for (let k = 0; k < mostHalvings; k++) {
    moveAlong(x, direction, length, trial)
    bend?.project(trial)
    const reached = f.value(trial)
    count()
    const promised = bend === undefined ? length * slope : Math.min(0, bend.slopeTo(trial))
    if (reached <= value + requiredDecrease * promised + rounding) return { length, value: reached }
    // Minimum of the parabola through value, slope and the value reached, kept within [0.1, 0.5].
    const parabola = (-slope * length) / (2 * ((reached - value) / length - slope))
    length = Number.isFinite(parabola)
      ? Math.min(0.5 * length, Math.max(0.1 * length, parabola))
      : 0.1 * length
  }
  return null
}

export function moveAlong(
  x: Float64Array,
  direction: Float64Array,
  length: number,
  out: Float64Array,
): void {
  for (let k = 0; k < x.length; k++) out[k] = x[k]! + length * direction[k]!
}

export function largestComponent(v: Float64Array): number {
  let largest = 0
  for (const x of v) {
    const size = Math.abs(x)
    if (!(size <= largest)) largest = size // NaN stays visible
  }
  return largest
}

export function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0
  for (let k = 0; k < a.length; k++) sum += a[k]! * b[k]!
  return sum
}
