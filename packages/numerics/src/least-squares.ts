// Levenberg-Marquardt for nonlinear least squares: minimises the sum of squared residuals, each step by
// QR of the Jacobian stacked on the damping, so that J'J is never formed. Damping scales with the
// parameters, and follows the gain of the last step. With the fit comes its covariance.
// Sources: J. J. Moré, "The Levenberg-Marquardt algorithm: implementation and theory" (1978), for the
// scaling; H. B. Nielsen, "Damping parameter in Marquardt's method", IMM-REP-1999-05, for the damping.

import { inverse, Matrix, QrDecomposition } from "ml-matrix"
import { RoundwrightError, requireFinite } from "./error.ts"

export interface LeastSquaresProblem {
  /** Residuals at the parameters; always the same number of them. */
  readonly residuals: (parameters: readonly number[]) => readonly number[]
  /** Rows: residuals, columns: parameters. Central differences when left out. */
  readonly jacobian?: (parameters: readonly number[]) => readonly (readonly number[])[]
}

export interface LeastSquaresOptions {
  readonly iterations?: number
  /** Relative change of a parameter, and relative decrease of the sum, that count as none. */
  readonly tolerance?: number
}

/**
 * `exact`: no residual left. `gradient-small`, `step-small`: a minimum. `cannot-improve`: no damping gives a
 * decrease. `iterations`: stopped before its end.
 */
export type LeastSquaresEnd =
  | "exact"
  | "gradient-small"
  | "step-small"
  | "cannot-improve"
  | "iterations"

export interface LeastSquaresFit {
  readonly parameters: readonly number[]
  readonly residuals: readonly number[]
  readonly sumOfSquares: number
  /**
   * Covariance of the parameters from the scatter of the residuals; null when the parameters are not
   * determined (`rank` below their number) or no residual is left over to tell the scatter.
   */
  readonly covariance: readonly (readonly number[])[] | null
  readonly rank: number
  readonly iterations: number
  readonly ended: LeastSquaresEnd
}

/** Default tolerance: central differences are no better than about 1e-10, so less would not be honest. */
const usualTolerance = 1e-10
/** Cube root of the rounding unit: the step of central differences that balances both its errors. */
const differenceStep = 6e-6
/** A diagonal entry of R below this share of the largest means a direction that no residual sees. */
const rankTolerance = 1e-9
/** First damping against the squared column size of J (Nielsen: 1e-3 when the start is fair). */
const firstDamping = 1e-3
/** Damping beyond which a step is too small to change anything. */
const mostDamping = 1e16

/** @throws RoundwrightError `not-finite` at the start, `too-few-residuals` when there are none */
export function fitLeastSquares(
  problem: LeastSquaresProblem,
  start: readonly number[],
  options: LeastSquaresOptions = {},
): LeastSquaresFit {
  const tolerance = options.tolerance ?? usualTolerance
  const limit = options.iterations ?? 100
  let p = start.map((value, k) => requireFinite(value, `Parameter ${k}`))
  let r = problem.residuals(p)
  if (r.length === 0 || p.length === 0)
    throw new RoundwrightError("too-few-residuals", "There is nothing to fit.")
  for (const value of r) requireFinite(value, "A residual at the start")
  let sum = sumOfSquares(r)
  let [damping, growth] = [firstDamping, 2]
  let scale = p.map(() => 0)
  const jacobian = problem.jacobian ?? ((at) => centralDifferences(problem.residuals, at))
  const finish = (ended: LeastSquaresEnd, iterations: number): LeastSquaresFit => ({
    parameters: p,
    residuals: r,
    sumOfSquares: sum,
    ...covarianceOf(jacobian(p), sum),
    iterations,
    ended,
  })
  for (let iteration = 0; iteration < limit; iteration++) {
    if (sum === 0) return finish("exact", iteration)
    const J = jacobian(p)
    const columns = p.map((_, k) => Math.hypot(...J.map((row) => row[k]!)))
    scale = scale.map((s, k) => Math.max(s, columns[k]!) || 1)
    const slopes = p.map((_, k) => J.reduce((total, row, i) => total + row[k]! * r[i]!, 0))
    const steepest = Math.max(
      ...slopes.map((g, k) => (columns[k]! > 0 ? Math.abs(g) / columns[k]! : 0)),
    )
    if (steepest <= tolerance * Math.sqrt(sum)) return finish("gradient-small", iteration)
    for (;;) {
      const step = dampedStep(J, r, scale, damping)
      const next = p.map((value, k) => value + step[k]!)
      const small = step.every((s, k) => Math.abs(s) <= tolerance * (Math.abs(p[k]!) + tolerance))
      const reached = problem.residuals(next)
      const nextSum = sumOfSquares(reached)
      if (nextSum < sum) {
        const promised = step.reduce(
          (total, s, k) => total + s * (damping * scale[k]! ** 2 * s - slopes[k]!),
          0,
        )
        const gain = (sum - nextSum) / promised
        damping *= Math.max(1 / 3, 1 - (2 * gain - 1) ** 3)
        growth = 2
        ;[p, r, sum] = [next, reached, nextSum]
        if (small) return finish("step-small", iteration + 1)
        break
      }
      if (small) return finish("step-small", iteration)
      damping *= growth
      growth *= 2
      if (!(damping < mostDamping)) return finish("cannot-improve", iteration)
    }
  }
  return finish("iterations", limit)
}

function dampedStep(
  J: readonly (readonly number[])[],
  r: readonly number[],
  scale: readonly number[],
  damping: number,
): number[] {
  const rows = J.map((row) => [...row])
  scale.forEach((s, k) => {
    rows.push(scale.map((_, column) => (column === k ? Math.sqrt(damping) * s : 0)))
  })
  const right = [...r.map((value) => [-value]), ...scale.map(() => [0])]
  return new QrDecomposition(new Matrix(rows)).solve(new Matrix(right)).to1DArray()
}

/** (J'J)^-1 s^2 with s^2 the scatter per degree of freedom, from R of J scaled by its columns. */
function covarianceOf(
  J: readonly (readonly number[])[],
  sum: number,
): { covariance: number[][] | null; rank: number } {
  const parameters = J[0]!.length
  const free = J.length - parameters
  const columns = J[0]!.map((_, k) => Math.hypot(...J.map((row) => row[k]!)) || 1)
  const rows = J.map((row) => row.map((value, k) => value / columns[k]!))
  while (rows.length < parameters) rows.push(new Array<number>(parameters).fill(0))
  const R = new QrDecomposition(new Matrix(rows)).upperTriangularMatrix
  const diagonal = columns.map((_, k) => Math.abs(R.get(k, k)))
  const largest = Math.max(...diagonal)
  const rank = diagonal.filter((d) => d > rankTolerance * largest).length
  if (rank < parameters || free <= 0) return { covariance: null, rank }
  const half = inverse(R.subMatrix(0, parameters - 1, 0, parameters - 1))
  const covariance = half.mmul(half.transpose()).mul(sum / free)
  return {
    covariance: covariance
      .to2DArray()
      .map((row, i) => row.map((value, k) => value / (columns[i]! * columns[k]!))),
    rank,
  }
}

function centralDifferences(
  residuals: LeastSquaresProblem["residuals"],
  at: readonly number[],
): number[][] {
  const columns = at.map((value, k) => {
    const step = differenceStep * Math.max(Math.abs(value), 1e-3)
    const shifted = (by: number): readonly number[] =>
      residuals(at.map((x, i) => (i === k ? x + by : x)))
    const [up, down] = [shifted(step), shifted(-step)]
    return up.map((u, i) => (u - down[i]!) / (2 * step))
  })
  return columns[0]!.map((_, i) => columns.map((column) => column[i]!))
}

function sumOfSquares(values: readonly number[]): number {
  return values.reduce((total, value) => total + value * value, 0)
}
