import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  minimiseByLbfgs,
  minimiseByNewton,
  patternFromPairs,
  seededRandom,
  type TwiceDifferentiableFunction,
} from "../src/index.ts"

/** Each of n unknowns beside the next one. */
function neighbours(n: number): ReturnType<typeof patternFromPairs> {
  const rows = Array.from({ length: n - 1 }, (_, i) => i + 1)
  return patternFromPairs(
    n,
    rows,
    rows.map((i) => i - 1),
  )
}

/** Rosenbrock's valley in n dimensions: minimum 0 at (1, ..., 1). H. H. Rosenbrock, Computer Journal 3 (1960). */
function rosenbrock(n: number): TwiceDifferentiableFunction {
  const { pattern, slots } = neighbours(n)
  const value = (x: Float64Array) => {
    let sum = 0
    for (let i = 0; i + 1 < n; i++) sum += 100 * (x[i + 1]! - x[i]! ** 2) ** 2 + (1 - x[i]!) ** 2
    return sum
  }
  return {
    size: n,
    pattern,
    value,
    gradient: (x, g) => {
      g.fill(0)
      for (let i = 0; i + 1 < n; i++) {
        const off = x[i + 1]! - x[i]! ** 2
        g[i]! += -400 * off * x[i]! - 2 * (1 - x[i]!)
        g[i + 1]! += 200 * off
      }
      return value(x)
    },
    hessian: (x, values, convex) => {
      values.fill(0)
      for (let i = 0; i + 1 < n; i++) {
        const off = x[i + 1]! - x[i]! ** 2
        values[pattern.columnStart[i]!]! += 800 * x[i]! ** 2 + 2 - (convex ? 0 : 400 * off)
        values[pattern.columnStart[i + 1]!]! += 200
        values[slots[i]!]! += -400 * x[i]!
      }
    },
  }
}

/** (x^2 - 1)^2 + y^2: minima at x = 1 and -1, a saddle at the origin. */
const doubleWell: TwiceDifferentiableFunction = {
  size: 2,
  pattern: patternFromPairs(2, [], []).pattern,
  value: (x) => (x[0]! ** 2 - 1) ** 2 + x[1]! ** 2,
  gradient: (x, g) => {
    g[0] = 4 * x[0]! * (x[0]! ** 2 - 1)
    g[1] = 2 * x[1]!
    return doubleWell.value(x)
  },
  hessian: (x, values, convex) => {
    values[0] = convex ? 12 * x[0]! ** 2 : 12 * x[0]! ** 2 - 4
    values[1] = 2
  },
}

describe.each([
  ["Newton", minimiseByNewton],
  ["L-BFGS", minimiseByLbfgs],
] as const)("%s", (name, minimise) => {
  it("finds the bottom of Rosenbrock's valley from the usual start", () => {
    const f = rosenbrock(2)
    const found = minimise(f, Float64Array.of(-1.2, 1), { gradientTolerance: 1e-9 })
    expect(found.ended).toBe("gradient-small")
    for (const x of found.x) expectClose(x, 1, 1e-8, "gradient 1e-9 over least curvature 0.4")
  })

  it("minimises a random convex quadratic exactly", () => {
    const n = 30
    const random = seededRandom(3)
    const centre = Float64Array.from({ length: n }, () => random.normal())
    const stiffness = Float64Array.from({ length: n }, () => 0.1 + random.uniform())
    const f: TwiceDifferentiableFunction = {
      size: n,
      pattern: patternFromPairs(n, [], []).pattern,
      value: (x) => x.reduce((s, v, i) => s + 0.5 * stiffness[i]! * (v - centre[i]!) ** 2, 0),
      gradient: (x, g) => {
        for (let i = 0; i < n; i++) g[i] = stiffness[i]! * (x[i]! - centre[i]!)
        return f.value(x)
      },
      hessian: (_, values) => values.set(stiffness),
    }
    const found = minimise(f, new Float64Array(n), { gradientTolerance: 1e-10 })
    found.x.forEach((x, i) => {
      expectClose(x, centre[i]!, 2e-9, "gradient 1e-10 over least stiffness 0.1")
    })
    if (name === "Newton") expect(found.iterations).toBeLessThanOrEqual(2)
  })

  it("stops honestly: no iterations left, no number at the start", () => {
    const f = rosenbrock(10)
    expect(
      minimise(f, new Float64Array(10), { gradientTolerance: 1e-9, iterations: 2 }).ended,
    ).toBe("iterations")
    expect(
      minimise(f, new Float64Array(10).fill(Number.NaN), { gradientTolerance: 1e-9 }).ended,
    ).toBe("not-finite")
  })

  it("never moves further than told", () => {
    const visited: number[] = []
    const watched = {
      ...doubleWell,
      gradient: (x: Float64Array, g: Float64Array) => {
        visited.push(x[0]!)
        return doubleWell.gradient(x, g)
      },
    }
    minimise(watched, Float64Array.of(8, 3), { gradientTolerance: 1e-9, longestMove: 0.5 })
    for (let k = 1; k < visited.length; k++)
      expect(Math.abs(visited[k]! - visited[k - 1]!)).toBeLessThanOrEqual(0.5 + 1e-12)
  })
})

/**
 * A string of n beads pulled down onto a stiff floor by unlike weights, each bead tied to the next; the floor begins to
 * push at height 0.
 */
function stringOnFloor(n: number): TwiceDifferentiableFunction {
  const [tie, floor] = [50, 1e6]
  const weight = (i: number) => 1 + Math.sin(2 * i)
  const { pattern, slots } = neighbours(n)
  const value = (x: Float64Array) => {
    let sum = 0
    for (let i = 0; i < n; i++) sum += weight(i) * x[i]! + (floor / 2) * Math.min(0, x[i]!) ** 2
    for (let i = 0; i + 1 < n; i++) sum += (tie / 2) * (x[i + 1]! - x[i]!) ** 2
    return sum
  }
  return {
    size: n,
    pattern,
    value,
    gradient: (x, g) => {
      for (let i = 0; i < n; i++) g[i] = weight(i) + floor * Math.min(0, x[i]!)
      for (let i = 0; i + 1 < n; i++) {
        const pull = tie * (x[i + 1]! - x[i]!)
        g[i]! -= pull
        g[i + 1]! += pull
      }
      return value(x)
    },
    hessian: (x, values) => {
      values.fill(0)
      for (let i = 0; i < n; i++) {
        const ties = i === 0 || i === n - 1 ? tie : 2 * tie
        values[pattern.columnStart[i]!]! += ties + (x[i]! < 0 ? floor : 0)
      }
      for (const slot of slots) values[slot]! -= tie
    },
  }
}

describe("Newton", () => {
  it("bent along a stiff wall takes fewer steps to the same minimum", () => {
    const f = stringOnFloor(60)
    const start = Float64Array.from({ length: f.size }, (_, i) => 1 + 0.5 * Math.cos(i))
    const options = { gradientTolerance: 1e-9, iterations: 500 }
    const straight = minimiseByNewton(f, start, options)
    const bent = minimiseByNewton(f, start, {
      ...options,
      project: (trial, from) => {
        for (let i = 0; i < trial.length; i++)
          trial[i] = Math.max(trial[i]!, Math.min(0, from[i]!) - 1e-4)
      },
    })
    expect(bent.ended).toBe("gradient-small")
    expectClose(bent.value, straight.value, 1e-9 * Math.abs(straight.value), "the same minimum")
    expect(bent.iterations).toBeLessThan(straight.iterations)
  })

  it("leaves a saddle for a true minimum", () => {
    const found = minimiseByNewton(doubleWell, Float64Array.of(0, 0.5), {
      gradientTolerance: 1e-10,
    })
    expect(found.ended).toBe("gradient-small")
    expectClose(Math.abs(found.x[0]!), 1, 1e-10, "curvature there is 8")
    expect(found.negativeEigenvalues).toBe(0)
  })

  it("needs far fewer steps than L-BFGS on a long valley and ends at the same place", () => {
    const start = new Float64Array(40).map((_, i) => (i % 2 === 0 ? -1.2 : 1))
    const newton = minimiseByNewton(rosenbrock(40), start, { gradientTolerance: 1e-8 })
    const second = minimiseByLbfgs(rosenbrock(40), start, {
      gradientTolerance: 1e-8,
      iterations: 5000,
    })
    expect(newton.ended).toBe("gradient-small")
    expect(second.ended).toBe("gradient-small")
    expect(newton.iterations).toBeLessThan(second.iterations)
  })
})
