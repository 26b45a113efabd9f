import fc from "fast-check"
import { EigenvalueDecomposition, Matrix, solve } from "ml-matrix"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  Factorisation,
  factorSymmetric,
  minimumDegreeOrder,
  multiplySymmetric,
  patternFromPairs,
  planElimination,
  RoundwrightError,
  type SparseSymmetric,
  seededRandom,
  solveByConjugateGradients,
  symmetricFromTriplets,
  toDense,
} from "../src/index.ts"

const rounding = "rounding of doubles in a small system"

/** A sparse symmetric matrix with `perRow` random entries a row and the diagonal given. */
function randomMatrix(
  size: number,
  perRow: number,
  diagonal: number,
  seed: number,
): SparseSymmetric {
  const random = seededRandom(seed)
  const [rows, columns, entries]: number[][] = [[], [], []]
  const add = (i: number, j: number, x: number) => {
    rows!.push(i)
    columns!.push(j)
    entries!.push(x)
  }
  for (let i = 0; i < size; i++) {
    add(i, i, diagonal * (0.5 + random.uniform()))
    for (let k = 0; k < perRow; k++) {
      const j = random.integer() % size
      if (j !== i) add(i, j, random.normal())
    }
  }
  return symmetricFromTriplets(size, rows!, columns!, entries!)
}

/** Second differences on a line, ends held: eigenvalues 2 - 2 cos(k pi / (n + 1)). */
function secondDifferences(n: number): SparseSymmetric {
  const [rows, columns, entries]: number[][] = [[], [], []]
  for (let i = 0; i < n; i++) {
    rows!.push(i)
    columns!.push(i)
    entries!.push(2)
    if (i > 0) {
      rows!.push(i)
      columns!.push(i - 1)
      entries!.push(-1)
    }
  }
  return symmetricFromTriplets(n, rows!, columns!, entries!)
}

describe("sparse symmetric matrices", () => {
  it("sums triplets of either triangle into one entry and multiplies like the dense matrix", () => {
    const matrix = symmetricFromTriplets(3, [0, 1, 0, 2], [0, 0, 1, 2], [4, 1, 2, 5])
    expect(toDense(matrix)).toEqual([
      [4, 3, 0],
      [3, 0, 0],
      [0, 0, 5],
    ])
    expect([...multiplySymmetric(matrix, Float64Array.of(1, 2, 3))]).toEqual([10, 3, 15])
  })

  it("refuses an index outside the matrix", () => {
    expect(() => patternFromPairs(3, [3], [0])).toThrow(RoundwrightError)
    expect(() => patternFromPairs(3, [0], [-1])).toThrow(/does not fit/)
  })
})

describe("order of elimination", () => {
  it("is a permutation for any pattern", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 60 }),
        fc.integer({ min: 0, max: 5 }),
        fc.nat(),
        (n, k, s) => {
          const order = minimumDegreeOrder(randomMatrix(n, k, 1, s).pattern)
          expect([...order].sort((a, b) => a - b)).toEqual(Array.from({ length: n }, (_, i) => i))
        },
      ),
      { seed: 1, numRuns: 100 },
    )
  })

  it("eliminates a tree without fill (minimum degree is exact on trees)", () => {
    const random = seededRandom(7)
    const n = 200
    const child = Array.from({ length: n - 1 }, (_, i) => i + 1)
    const parent = child.map((i) => random.integer() % i)
    const { pattern } = patternFromPairs(n, child, parent)
    const plan = planElimination(pattern)
    // Columns are stored as dense fronts, so count what elimination itself would need.
    expect(eliminationEntries(pattern, plan.order)).toBe(n + n - 1)
  })

  it("needs far less room than the order of a grid's rows", () => {
    const side = 24
    const [rows, columns]: number[][] = [[], []]
    for (let i = 0; i < side * side; i++) {
      if (i % side > 0) {
        rows!.push(i)
        columns!.push(i - 1)
      }
      if (i >= side) {
        rows!.push(i)
        columns!.push(i - side)
      }
    }
    const { pattern } = patternFromPairs(side * side, rows!, columns!)
    const natural = Int32Array.from({ length: side * side }, (_, i) => i)
    const ordered = eliminationEntries(pattern, minimumDegreeOrder(pattern))
    expect(ordered).toBeLessThan(0.6 * eliminationEntries(pattern, natural))
  })
})

/** Entries of the factor by playing elimination on sets: the second route to the plan's counts. */
function eliminationEntries(
  pattern: { size: number; columnStart: Int32Array; row: Int32Array },
  order: Int32Array,
) {
  const sets = Array.from({ length: pattern.size }, () => new Set<number>())
  for (let j = 0; j < pattern.size; j++)
    for (let p = pattern.columnStart[j]! + 1; p < pattern.columnStart[j + 1]!; p++) {
      sets[j]!.add(pattern.row[p]!)
      sets[pattern.row[p]!]!.add(j)
    }
  let entries = 0
  for (const i of order) {
    entries += 1 + sets[i]!.size
    for (const a of sets[i]!) {
      sets[a]!.delete(i)
      for (const b of sets[i]!) if (a !== b) sets[a]!.add(b)
    }
  }
  return entries
}

describe("factorisation", () => {
  it("solves second differences: the answer to a constant load is a parabola", () => {
    const n = 99
    const x = factorSymmetric(secondDifferences(n)).solve(new Float64Array(n).fill(1))
    for (let i = 0; i < n; i++)
      expectClose(x[i]!, ((i + 1) * (n - i)) / 2, 1e-9, "condition number about 4000")
  })

  it("has the inertia that the known eigenvalues of second differences give, shifted", () => {
    const n = 40
    const matrix = secondDifferences(n)
    const factorisation = new Factorisation(planElimination(matrix.pattern))
    for (const shift of [0, -0.1, -1.23, -2.01, -3.9, -5]) {
      const below = Array.from(
        { length: n },
        (_, k) => 2 - 2 * Math.cos(((k + 1) * Math.PI) / (n + 1)),
      )
      const negative = below.filter((value) => value + shift < 0).length
      expect(factorisation.factor(matrix.values, shift)).toEqual({
        positive: n - negative,
        negative,
        zero: 0,
      })
    }
  })

  it("agrees with ml-matrix in solution and inertia on random indefinite matrices", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 0, max: 4 }),
        fc.nat(),
        (n, k, s) => {
          const matrix = randomMatrix(n, k, s % 2 === 0 ? 12 : -12, s)
          const random = seededRandom(s + 1)
          const b = Float64Array.from({ length: n }, () => random.normal())
          const factorisation = factorSymmetric(matrix)
          const x = factorisation.solve(b)
          const dense = new Matrix(toDense(matrix))
          const expected = solve(dense, Matrix.columnVector([...b])).to1DArray()
          for (let i = 0; i < n; i++) expectClose(x[i]!, expected[i]!, 1e-8, rounding)
          const eigenvalues = new EigenvalueDecomposition(dense, { assumeSymmetric: true })
            .realEigenvalues
          expect(factorisation.inertia.negative).toBe(eigenvalues.filter((v) => v < 0).length)
        },
      ),
      { seed: 2, numRuns: 150 },
    )
  })

  it("gives a direction of negative curvature, exactly as curved as it says", () => {
    const matrix = secondDifferences(30)
    const factorisation = factorSymmetric(matrix, -0.5)
    const found = factorisation.negativeCurvature()!
    const product = multiplySymmetric(matrix, found.direction)
    const curvature = product.reduce(
      (sum, value, i) => sum + (value - 0.5 * found.direction[i]!) * found.direction[i]!,
      0,
    )
    expectClose(curvature, found.curvature, 1e-12, rounding)
    expect(found.curvature).toBeLessThan(0)
    expect(factorSymmetric(matrix).negativeCurvature()).toBeNull()
  })

  it("solves a larger system to rounding, and conjugate gradients come to the same answer", () => {
    const n = 1500
    const matrix = randomMatrix(n, 3, 20, 5)
    const random = seededRandom(6)
    const b = Float64Array.from({ length: n }, () => random.normal())
    const x = factorSymmetric(matrix).solve(b)
    const residual = multiplySymmetric(matrix, x).map((value, i) => value - b[i]!)
    expectClose(
      Math.max(...residual.map(Math.abs)),
      0,
      1e-11,
      "backward stable for definite matrices",
    )
    const second = solveByConjugateGradients(matrix, b, { tolerance: 1e-13 })
    expect(second.ended).toBe("residual-small")
    for (let i = 0; i < n; i++)
      expectClose(second.x[i]!, x[i]!, 1e-10, "condition number below 100")
  })

  it("counts a zero eigenvalue and does not divide by it", () => {
    const matrix = symmetricFromTriplets(2, [0, 1, 1], [0, 0, 1], [1, 1, 1])
    expect(factorSymmetric(matrix).inertia).toEqual({ positive: 1, negative: 0, zero: 1 })
  })
})

describe("conjugate gradients", () => {
  it("end after as many steps as there are different eigenvalues", () => {
    const n = 50
    const index = Array.from({ length: n }, (_, i) => i)
    const matrix = symmetricFromTriplets(
      n,
      index,
      index,
      index.map((i) => [1, 4, 9][i % 3]!),
    )
    const plain = (r: Float64Array, out: Float64Array) => out.set(r)
    const solution = solveByConjugateGradients(matrix, new Float64Array(n).fill(1), {
      precondition: plain,
    })
    expect(solution.iterations).toBe(3)
  })

  it("say so when the matrix is not positive, and when stopped early", () => {
    const matrix = symmetricFromTriplets(2, [0, 1], [0, 1], [1, -1])
    expect(solveByConjugateGradients(matrix, Float64Array.of(0, 1)).ended).toBe("not-positive")
    const early = solveByConjugateGradients(secondDifferences(50), new Float64Array(50).fill(1), {
      iterations: 3,
    })
    expect(early.ended).toBe("iterations")
  })
})
