// L-BFGS: a minimiser that needs first derivatives only and builds a picture of the second from its last
// steps. Slower than Newton on stiff problems; here as the second route and for problems without a matrix.
// Source: J. Nocedal, S. J. Wright, "Numerical Optimization" (2nd ed., 2006), algorithm 7.4 and 7.5.

import {
  type DifferentiableFunction,
  dot,
  largestComponent,
  type MinimiserEnd,
  type Minimum,
  searchAlong,
} from "./minimise.ts"

export interface LbfgsOptions {
  /** Largest component of the gradient at which to stop. */
  readonly gradientTolerance: number
  readonly iterations?: number
  /** Steps remembered; 3 to 20 are usual (Nocedal and Wright, 7.2). */
  readonly memory?: number
  /** No component moves further than this in one step. */
  readonly longestMove?: number
}

interface Pair {
  readonly step: Float64Array
  readonly change: Float64Array
  readonly product: number
}

/** Cosine between step and change of gradient below which a pair carries no information. */
const leastCosine = 1e-10

export function minimiseByLbfgs(
  f: DifferentiableFunction,
  start: Float64Array,
  options: LbfgsOptions,
): Minimum {
  const memory = options.memory ?? 10
  const limit = options.iterations ?? 1000
  let x = Float64Array.from(start)
  let trial = new Float64Array(f.size)
  let gradient = new Float64Array(f.size)
  let nextGradient = new Float64Array(f.size)
  let pairs: Pair[] = []
  let [iterations, evaluations] = [0, 1]
  let value = f.gradient(x, gradient)
  const finish = (ended: MinimiserEnd): Minimum => ({
    x,
    value,
    gradientSize: largestComponent(gradient),
    iterations,
    evaluations,
    ended,
  })
  if (!Number.isFinite(value)) return finish("not-finite")
  for (; ; iterations++) {
    const size = largestComponent(gradient)
    if (!Number.isFinite(size)) return finish("not-finite")
    if (size <= options.gradientTolerance) return finish("gradient-small")
    if (iterations >= limit) return finish("iterations")
    const direction = downhill(gradient, pairs)
    let slope = dot(direction, gradient)
    if (!(slope < 0)) {
      pairs = []
      direction.set(gradient.map((g) => -g))
      slope = dot(direction, gradient)
    }
    const far = largestComponent(direction)
    const first = pairs.length === 0 ? Math.min(1, 1 / size) : 1
    const longest = Math.min(first, (options.longestMove ?? Infinity) / far)
    const step = searchAlong(f, x, value, direction, slope, longest, trial, () => {
      evaluations++
    })
    if (step === null) {
      if (pairs.length === 0) return finish("cannot-improve")
      pairs = []
      continue
    }
    value = f.gradient(trial, nextGradient)
    evaluations++
    const moved = trial.map((t, k) => t - x[k]!)
    const change = nextGradient.map((g, k) => g - gradient[k]!)
    const product = dot(moved, change)
    if (product > leastCosine * Math.sqrt(dot(moved, moved) * dot(change, change)))
      pairs = [...pairs, { step: moved, change, product }].slice(-memory)
    ;[x, trial] = [trial, x]
    ;[gradient, nextGradient] = [nextGradient, gradient]
  }
}

/** Minus the inverse second derivatives, as far as known, times the gradient (two-loop recursion). */
function downhill(gradient: Float64Array, pairs: readonly Pair[]): Float64Array {
  const q = gradient.map((g) => -g)
  const weights: number[] = []
  for (let k = pairs.length - 1; k >= 0; k--) {
    const { step, change, product } = pairs[k]!
    const weight = dot(step, q) / product
    weights[k] = weight
    for (let i = 0; i < q.length; i++) q[i]! -= weight * change[i]!
  }
  const last = pairs.at(-1)
  if (last !== undefined) {
    const scale = last.product / dot(last.change, last.change)
    for (let i = 0; i < q.length; i++) q[i]! *= scale
  }
  pairs.forEach(({ step, change, product }, k) => {
    const weight = weights[k]! - dot(change, q) / product
    for (let i = 0; i < q.length; i++) q[i]! += weight * step[i]!
  })
  return q
}
