// A plane seen in perspective: the homography between points of the plane and points of the picture, by the
// direct linear transform on normalised points (singular value decomposition), refined to least squares of
// picture distances where more than four points are given, with its covariance.
// Source: R. Hartley, A. Zisserman, "Multiple View Geometry in Computer Vision" (2003), algorithms 4.2 and 4.3, 5.2.

import { fitLeastSquares, RoundwrightError, requireFinite } from "@roundwright/numerics"
import { inverse, Matrix, SVD } from "ml-matrix"
import type { Point } from "./grey.ts"

/** Rows after one another; the last entry is 1. A plane point (x, y) goes to (ax + by + c, dx + ey + f) / (gx + hy + 1). */
export type Homography = readonly [
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
  number,
]

export interface HomographyFit {
  readonly matrix: Homography
  /** Distance in the picture between each point and where the plane's point comes to lie. */
  readonly residualsPx: readonly number[]
  /** Covariance of the first eight entries for an error of 1 px in each coordinate of the picture's points. */
  readonly covariance: readonly (readonly number[])[]
}

/** A singular value below this share of the largest: the points lie on a line or on one another. */
const degenerate = 1e-9

/** @throws RoundwrightError `too-few-points`, `points-in-line`, `not-finite` */
export function fitHomography(plane: readonly Point[], picture: readonly Point[]): HomographyFit {
  if (plane.length < 4 || plane.length !== picture.length)
    throw new RoundwrightError(
      "too-few-points",
      `A view is made straight by four points or more, not ${Math.min(plane.length, picture.length)}.`,
      { hint: "Give the four corners of something square." },
    )
  for (const { x, y } of [...plane, ...picture]) {
    requireFinite(x, "A corner's x")
    requireFinite(y, "A corner's y")
  }
  const [from, to] = [normalised(plane), normalised(picture)]
  const rows = plane.flatMap((_, i) => {
    const [x, y] = [from.points[i]!.x, from.points[i]!.y]
    const [u, v] = [to.points[i]!.x, to.points[i]!.y]
    return [
      [x, y, 1, 0, 0, 0, -u * x, -u * y, -u],
      [0, 0, 0, x, y, 1, -v * x, -v * y, -v],
    ]
  })
  while (rows.length < 9) rows.push(new Array<number>(9).fill(0))
  const svd = new SVD(new Matrix(rows), { autoTranspose: true })
  const values = svd.diagonal
  if (!(values[7]! > degenerate * values[0]!)) throw inLine()
  const h = svd.rightSingularVectors.getColumn(8)
  const middle = new Matrix([h.slice(0, 3), h.slice(3, 6), h.slice(6, 9)])
  const whole = to.back.mmul(middle).mmul(from.matrix)
  const last = whole.get(2, 2)
  if (!(Math.abs(last) > degenerate * whole.norm())) throw inLine()
  let matrix = whole.div(last).to1DArray() as unknown as Homography
  if (plane.length > 4) matrix = refine(matrix, plane, picture)
  const jacobian = jacobianOf(matrix, plane)
  const information = jacobian.transpose().mmul(jacobian)
  return {
    matrix,
    residualsPx: plane.map((point, i) => {
      const seen = project(matrix, point)
      return Math.hypot(seen.x - picture[i]!.x, seen.y - picture[i]!.y)
    }),
    covariance: scaledInverse(information),
  }
}

/** Where a point of the plane comes to lie in the picture. */
export function project(h: Homography, { x, y }: Point): Point {
  const w = h[6] * x + h[7] * y + h[8]
  return { x: (h[0] * x + h[1] * y + h[2]) / w, y: (h[3] * x + h[4] * y + h[5]) / w }
}

/** The way back, from the picture to the plane. @throws RoundwrightError `points-in-line` */
export function invert(h: Homography): Homography {
  const m = new Matrix([
    [h[0], h[1], h[2]],
    [h[3], h[4], h[5]],
    [h[6], h[7], h[8]],
  ])
  const back = inverse(m, true)
  const last = back.get(2, 2)
  if (!Number.isFinite(last) || Math.abs(last) < degenerate * back.norm()) throw inLine()
  return back.div(last).to1DArray() as unknown as Homography
}

/** Covariance of a projected point, px^2, for an error of `sigmaPx` in each coordinate of the fitted points. */
export function projectedCovariance(
  fit: HomographyFit,
  point: Point,
  sigmaPx: number,
): [[number, number], [number, number]] {
  const j = jacobianOf(fit.matrix, [point])
  const c = j
    .mmul(new Matrix(fit.covariance.map((row) => [...row])))
    .mmul(j.transpose())
    .mul(sigmaPx ** 2)
  return [
    [c.get(0, 0), c.get(0, 1)],
    [c.get(1, 0), c.get(1, 1)],
  ]
}

function jacobianOf(h: Homography, points: readonly Point[]): Matrix {
  return new Matrix(
    points.flatMap(({ x, y }) => {
      const w = h[6] * x + h[7] * y + h[8]
      const { x: u, y: v } = project(h, { x, y })
      return [
        [x / w, y / w, 1 / w, 0, 0, 0, (-u * x) / w, (-u * y) / w],
        [0, 0, 0, x / w, y / w, 1 / w, (-v * x) / w, (-v * y) / w],
      ]
    }),
  )
}

function refine(start: Homography, plane: readonly Point[], picture: readonly Point[]): Homography {
  const matrixOf = (p: readonly number[]) => [...p, 1] as unknown as Homography
  const fit = fitLeastSquares(
    {
      residuals: (p) =>
        plane.flatMap((point, i) => {
          const seen = project(matrixOf(p), point)
          return [seen.x - picture[i]!.x, seen.y - picture[i]!.y]
        }),
      jacobian: (p) => jacobianOf(matrixOf(p), plane).to2DArray(),
    },
    start.slice(0, 8),
  )
  return matrixOf(fit.parameters)
}

/** Inverse of a symmetric matrix whose rows differ much in size. */
function scaledInverse(information: Matrix): number[][] {
  const scale = information.diagonal().map((value) => Math.sqrt(value) || 1)
  const scaled = Matrix.zeros(scale.length, scale.length)
  for (let i = 0; i < scale.length; i++)
    for (let k = 0; k < scale.length; k++)
      scaled.set(i, k, information.get(i, k) / (scale[i]! * scale[k]!))
  return inverse(scaled, true)
    .to2DArray()
    .map((row, i) => row.map((value, k) => value / (scale[i]! * scale[k]!)))
}

/** Points moved to their middle and scaled to a mean distance of root 2, which keeps the system well conditioned. */
function normalised(points: readonly Point[]) {
  const n = points.length
  const [mx, my] = [
    points.reduce((s, p) => s + p.x, 0) / n,
    points.reduce((s, p) => s + p.y, 0) / n,
  ]
  const mean = points.reduce((s, p) => s + Math.hypot(p.x - mx, p.y - my), 0) / n
  if (!(mean > 0)) throw inLine()
  const s = Math.SQRT2 / mean
  return {
    points: points.map((p) => ({ x: s * (p.x - mx), y: s * (p.y - my) })),
    matrix: new Matrix([
      [s, 0, -s * mx],
      [0, s, -s * my],
      [0, 0, 1],
    ]),
    back: new Matrix([
      [1 / s, 0, mx],
      [0, 1 / s, my],
      [0, 0, 1],
    ]),
  }
}

function inLine(): RoundwrightError {
  return new RoundwrightError(
    "points-in-line",
    "The corners do not span a square: three of them lie on one line, or two on one another.",
    { hint: "Give them in order round the piece." },
  )
}
