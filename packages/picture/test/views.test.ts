import { seededRandom } from "@roundwright/numerics"
import {
  fitEllipse,
  fitHomography,
  invert,
  project,
  projectedCovariance,
} from "@roundwright/picture"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

const square = [
  { x: -1, y: -1 },
  { x: 1, y: -1 },
  { x: 1, y: 1 },
  { x: -1, y: 1 },
]
const truth = [310, 25, 400, -18, 290, 380, 0.11, -0.07, 1] as const

describe("a homography", () => {
  it("through four corners is the one they were made with", () => {
    const { matrix, residualsPx } = fitHomography(
      square,
      square.map((p) => project(truth, p)),
    )
    truth.forEach((value, i) => {
      expectClose(matrix[i]! / value, 1, 1e-9, "four exact points have one homography")
    })
    for (const residual of residualsPx) expectClose(residual, 0, 1e-9, "exact points")
  })

  it("goes there and back", () => {
    const point = { x: 0.3, y: -0.6 }
    const back = project(invert(truth), project(truth, point))
    expectClose(back.x, point.x, 1e-12, "inverse")
    expectClose(back.y, point.y, 1e-12, "inverse")
  })

  it("scatters as its covariance says when the corners are off by 1 px", () => {
    const random = seededRandom(1701)
    const exact = square.map((p) => project(truth, p))
    const clean = fitHomography(square, exact)
    const at = { x: 0.1, y: 0.2 }
    const centre = project(truth, at)
    const [[xx, xy], [, yy]] = projectedCovariance(clean, at, 1)
    const det = xx * yy - xy * xy
    const seeds = 500
    let [sum, inside] = [0, 0]
    for (let seed = 0; seed < seeds; seed++) {
      const off = exact.map((p) => ({ x: p.x + random.normal(), y: p.y + random.normal() }))
      const seen = project(fitHomography(square, off).matrix, at)
      const [dx, dy] = [seen.x - centre.x, seen.y - centre.y]
      const distance = (yy * dx * dx - 2 * xy * dx * dy + xx * dy * dy) / det
      sum += distance
      if (distance <= 5.991) inside += 1
    }
    // Chi-square with two degrees of freedom: mean 2, variance 4; 95 % below 5.991.
    expectClose(
      sum / seeds,
      2,
      3.3 * Math.sqrt(4 / seeds),
      "mean of chi-square, 3.3 standard errors",
    )
    expectClose(inside / seeds, 0.95, 3.3 * Math.sqrt(0.0475 / seeds), "95 % point of chi-square")
  })

  it("takes the eight entries' scatter from more than four points too", () => {
    const random = seededRandom(99)
    const grid = [-1, 0, 1].flatMap((x) => [-1, 0, 1].map((y) => ({ x, y })))
    const exact = grid.map((p) => project(truth, p))
    const seeds = 500
    let sum = 0
    for (let seed = 0; seed < seeds; seed++) {
      const off = exact.map((p) => ({ x: p.x + random.normal(), y: p.y + random.normal() }))
      const { residualsPx } = fitHomography(grid, off)
      sum += residualsPx.reduce((s, r) => s + r * r, 0)
    }
    // 18 coordinates less 8 parameters leave 10 degrees of freedom.
    expectClose(sum / seeds, 10, 3.3 * Math.sqrt(20 / seeds), "chi-square of the residuals")
  })

  it("refuses corners on a line, too few and not finite", () => {
    const line = [0, 1, 2, 3].map((k) => ({ x: k, y: 2 * k }))
    expect(() => fitHomography(square, line)).toThrow(/line/)
    expect(() => fitHomography(square.slice(1), square.slice(1))).toThrow(/four points/)
    expect(() =>
      fitHomography(
        square,
        square.map(() => ({ x: Number.NaN, y: 0 })),
      ),
    ).toThrow(/finite/)
  })
})

describe("an ellipse", () => {
  const shape = { x: 412, y: 305, long: 210, short: 150, angle: 0.7 }
  const pointsOn = (count: number) =>
    Array.from({ length: count }, (_, i) => {
      const t = (2 * Math.PI * i) / count
      const [u, v] = [shape.long * Math.cos(t), shape.short * Math.sin(t)]
      const [c, s] = [Math.cos(shape.angle), Math.sin(shape.angle)]
      return { x: shape.x + c * u - s * v, y: shape.y + s * u + c * v }
    })

  it("through its own points is the one they were made with", () => {
    for (const count of [5, 7, 40]) {
      const found = fitEllipse(pointsOn(count))
      expectClose(found.centre.x / shape.x, 1, 1e-9, "closed form")
      expectClose(found.centre.y / shape.y, 1, 1e-9, "closed form")
      expectClose(found.longPx / shape.long, 1, 1e-9, "closed form")
      expectClose(found.shortPx / shape.short, 1, 1e-9, "closed form")
      expectClose(found.angle, shape.angle, 1e-9, "closed form")
    }
  })

  it("scatters as its covariance says when its points are off by 1 px", () => {
    const random = seededRandom(5)
    const exact = pointsOn(60)
    const clean = fitEllipse(exact)
    const seeds = 500
    const sums = [0, 0, 0, 0, 0]
    for (let seed = 0; seed < seeds; seed++) {
      const found = fitEllipse(
        exact.map((p) => ({ x: p.x + random.normal(), y: p.y + random.normal() })),
      )
      const off = [
        found.centre.x - shape.x,
        found.centre.y - shape.y,
        found.longPx - shape.long,
        found.shortPx - shape.short,
        found.angle - shape.angle,
      ]
      off.forEach((value, i) => {
        sums[i]! += value ** 2 / clean.covariance[i]![i]! / seeds
      })
    }
    for (const sum of sums)
      expectClose(
        sum,
        1,
        3.3 * Math.sqrt(2 / seeds) + 0.02,
        "chi-square, 3.3 standard errors, 2 % for the second order",
      )
  })

  it("refuses too few points and points on a line", () => {
    expect(() => fitEllipse(pointsOn(4))).toThrow(/five/)
    expect(() => fitEllipse([0, 1, 2, 3, 4, 5].map((k) => ({ x: k, y: k })))).toThrow(/ellipse/)
  })
})
