// Newton's method for a minimum, with exact second derivatives and a sparse factorisation. The inertia of
// the factorisation tells whether the matrix is positive definite: if so the plain Newton step is taken,
// else one from the convex neighbour of the matrix. Where the gradient vanishes at a saddle, the method
// leaves it along a direction of negative curvature instead of stopping.
// Source: J. Nocedal, S. J. Wright, "Numerical Optimization" (2nd ed., 2006), ch. 3.4 and 6.

import { planElimination } from "./elimination.ts"
import { Factorisation } from "./factorisation.ts"
import {
  dot,
  largestComponent,
  type MinimiserEnd,
  type Minimum,
  moveAlong,
  searchAlong,
  type TwiceDifferentiableFunction,
} from "./minimise.ts"

export interface NewtonOptions {
  /** Largest component of the gradient at which to stop. */
  readonly gradientTolerance: number
  readonly iterations?: number
  /** No component moves further than this in one step; none by default. */
  readonly longestMove?: number
  /** How far to move off a saddle, largest component; a small share of the problem's size. */
  readonly saddleMove?: number
  /** False: a saddle is an end like any other. True by default. */
  readonly leaveSaddles?: boolean
  /**
   * Draws a trial point back to where it may be, given the point it started from: a step that would run far into a stiff
   * wall is bent along the wall instead of being shortened. Source: Nocedal and Wright, 16.7 (gradient projection).
   */
  readonly project?: (trial: Float64Array, from: Float64Array) => void
  /** Reuse between runs on functions of the same pattern. */
  readonly factorisation?: Factorisation
  /** Called after each iteration; returning true stops the run with `iterations`. */
  readonly watch?: (iteration: number, value: number, gradientSize: number) => boolean
}

export interface NewtonMinimum extends Minimum {
  /** Negative eigenvalues of the second derivatives where it ended; null when not asked. */
  readonly negativeEigenvalues: number | null
  readonly factorisations: number
}

/**
 * Added to the diagonal, as a share of its mean, so that directions in which the function does not
 * change at all (rigid motions) can be divided by; too small to be felt elsewhere.
 */
const diagonalShare = 1e-10
/**
 * A step that promises less than this share of the value while the function falls off elsewhere is not worth
 * taking: the saddle is left at once instead of being found to many digits first.
 */
const idleShare = 1e-4
/** After a matrix that was not definite the next ones hardly are: so many steps use the convex one unasked. */
const convexSteps = 2
/** A way down from a saddle must lower the value by more than rounding. */
const smallestGain = 1e-13
/** Saddles left in one run; more than a handful means that the function falls off on all sides. */
const mostSaddles = 40

export function minimiseByNewton(
  f: TwiceDifferentiableFunction,
  start: Float64Array,
  options: NewtonOptions,
): NewtonMinimum {
  const factorisation = options.factorisation ?? new Factorisation(planElimination(f.pattern))
  const values = new Float64Array(f.pattern.row.length)
  let x = Float64Array.from(start)
  let trial = new Float64Array(f.size)
  const gradient = new Float64Array(f.size)
  const direction = new Float64Array(f.size)
  let [iterations, evaluations, factorisations, saddles, unasked] = [0, 1, 0, 0, 0]
  let value = f.gradient(x, gradient)
  let gradientSize = largestComponent(gradient)
  let negativeEigenvalues: number | null = null
  const count = (): void => {
    evaluations++
  }
  const accept = (): void => {
    ;[x, trial] = [trial, x]
    value = f.gradient(x, gradient)
    gradientSize = largestComponent(gradient)
    evaluations++
  }
  const factor = (convex: boolean): number => {
    f.hessian(x, values, convex)
    factorisations++
    return factorisation.factor(values, diagonalShare * meanDiagonal(f, values)).negative
  }
  const finish = (ended: MinimiserEnd): NewtonMinimum => ({
    x,
    value,
    gradientSize,
    iterations,
    evaluations,
    ended,
    negativeEigenvalues,
    factorisations,
  })
  if (!Number.isFinite(value) || !Number.isFinite(gradientSize)) return finish("not-finite")

  const { project } = options
  const bend = project && {
    project: (point: Float64Array) => project(point, x),
    slopeTo: (point: Float64Array) => {
      let sum = 0
      for (let k = 0; k < point.length; k++) sum += gradient[k]! * (point[k]! - x[k]!)
      return sum
    },
  }
  const limit = options.iterations ?? 200
  for (; ; iterations++) {
    const level = gradientSize <= options.gradientTolerance
    const asked = level || unasked <= 0
    negativeEigenvalues = asked ? factor(false) : null
    unasked = asked && negativeEigenvalues !== 0 ? convexSteps : unasked - 1
    if (level && negativeEigenvalues === 0) return finish("gradient-small")
    if (iterations >= limit) return finish(level ? "saddle" : "iterations")
    if (options.watch?.(iterations, value, gradientSize) === true) return finish("iterations")
    if (level) {
      if (options.leaveSaddles === false || !leaveSaddle(factorisation.negativeCurvature()))
        return finish("saddle")
      continue
    }
    const indefinite = negativeEigenvalues !== 0
    const down = indefinite && asked ? factorisation.negativeCurvature() : null
    if (indefinite) factor(true)
    factorisation.solve(gradient, direction)
    for (let k = 0; k < direction.length; k++) direction[k] = -direction[k]!
    let slope = dot(direction, gradient)
    if (!(slope < 0)) {
      for (let k = 0; k < direction.length; k++) direction[k] = -gradient[k]!
      slope = dot(direction, gradient)
    }
    const idle = -slope < idleShare * Math.abs(value)
    if (idle && down !== null && options.leaveSaddles !== false && leaveSaddle(down)) continue
    const far = largestComponent(direction)
    const longest = Math.min(1, (options.longestMove ?? Infinity) / far)
    const step = searchAlong(f, x, value, direction, slope, longest, trial, count, bend)
    if (step === null) return finish("cannot-improve")
    if (indefinite && step.length === longest) stretch(step.length, step.value, far)
    accept()
  }

  /** The convex matrix is too stiff where the true one is not: go on while it pays. */
  function stretch(length: number, reached: number, far: number): void {
    let best = reached
    let bestLength = length
    for (let next = 2 * length; next * far <= (options.longestMove ?? Infinity); next *= 2) {
      moveAlong(x, direction, next, trial)
      project?.(trial, x)
      const tried = f.value(trial)
      count()
      if (!(tried < best)) break
      best = tried
      bestLength = next
    }
    moveAlong(x, direction, bestLength, trial)
    project?.(trial, x)
  }

  function leaveSaddle(found: { direction: Float64Array } | null): boolean {
    if (found === null || ++saddles > mostSaddles) return false
    const { direction: away } = found
    const far = largestComponent(away)
    const tryMove = (length: number): number => {
      moveAlong(x, away, length, trial)
      project?.(trial, x)
      count()
      return f.value(trial)
    }
    for (
      let move = (options.saddleMove ?? 1e-3 * Math.max(1, largestComponent(x))) / far;
      move * far > 1e-9;
      move /= 4
    ) {
      for (const sign of [1, -1]) {
        const reached = tryMove(sign * move)
        if (!(reached < value - smallestGain * Math.abs(value))) continue
        const best = furtherDown(tryMove, sign * move, reached, far)
        tryMove(best)
        accept()
        return true
      }
    }
    return false
  }

  /** Near a saddle the way down only begins: goes twice as far while that leads lower. */
  function furtherDown(
    tryMove: (length: number) => number,
    move: number,
    reached: number,
    far: number,
  ): number {
    let [best, lowest] = [move, reached]
    for (let next = 2 * move; Math.abs(next) * far <= (options.longestMove ?? 0); next *= 2) {
      const value = tryMove(next)
      if (!(value < lowest)) break
      ;[best, lowest] = [next, value]
    }
    return best
  }
}

function meanDiagonal(f: TwiceDifferentiableFunction, values: Float64Array): number {
  let sum = 0
  for (let j = 0; j < f.size; j++) sum += Math.abs(values[f.pattern.columnStart[j]!]!)
  return f.size === 0 ? 0 : sum / f.size
}
