// The ellipse through points: direct least squares of the conic that is always an ellipse, then refined to
// least squares of distances, with its covariance.
// Sources: R. Halir, J. Flusser, "Numerically stable direct least squares fitting of ellipses", WSCG (1998);
// P. D. Sampson, "Fitting conic sections to very scattered data", CGIP 18 (1982), for the distance.

import { fitLeastSquares, RoundwrightError, requireFinite } from "@roundwright/numerics"
import { EVD, inverse, Matrix } from "ml-matrix"
import type { Point } from "./grey.ts"

export interface Ellipse {
  readonly centre: Point
  /** Half axes, the longer first, pixels. */
  readonly longPx: number
  readonly shortPx: number
  /** Direction of the longer axis, from x towards y, in (-pi/2, pi/2]. */
  readonly angle: number
}

export interface EllipseFit extends Ellipse {
  /** Distance of each point from the ellipse, positive outside, pixels (first order). */
  readonly residualsPx: readonly number[]
  /** Covariance of x, y, long, short, angle for points that are off by 1 px. */
  readonly covariance: readonly (readonly number[])[]
}

/** Flatter than this it is a line. */
const flattest = 1e-4

/** @throws RoundwrightError `too-few-points` below five, `no-ellipse` where the points lie on no ellipse */
export function fitEllipse(points: readonly Point[]): EllipseFit {
  if (points.length < 5)
    throw new RoundwrightError(
      "too-few-points",
      `An ellipse takes five points or more, not ${points.length}.`,
    )
  for (const { x, y } of points) {
    requireFinite(x, "A point's x")
    requireFinite(y, "A point's y")
  }
  const start = directFit(points)
  const residuals = (p: readonly number[]) => points.map((point) => sampson(p, point))
  const fit = fitLeastSquares({ residuals }, start, { tolerance: 1e-14 })
  const p = fit.parameters
  const [longer, shorter] = [Math.max(p[2]!, p[3]!), Math.min(p[2]!, p[3]!)]
  if (!p.every(Number.isFinite) || !(shorter > flattest * longer)) throw noEllipse()
  const jacobian = new Matrix(differences(residuals, p))
  const covariance = inverse(jacobian.transpose().mmul(jacobian), true).to2DArray()
  const swap = p[3]! > p[2]!
  const order = swap ? [0, 1, 3, 2, 4] : [0, 1, 2, 3, 4]
  const turned = swap ? p[4]! + Math.PI / 2 : p[4]!
  return {
    centre: { x: p[0]!, y: p[1]! },
    longPx: Math.max(p[2]!, p[3]!),
    shortPx: Math.min(p[2]!, p[3]!),
    angle: turned - Math.PI * Math.ceil(turned / Math.PI - 0.5),
    residualsPx: fit.residuals,
    covariance: order.map((i) => order.map((k) => covariance[i]![k]!)),
  }
}

/** First-order distance of a point from the ellipse with parameters x, y, half axes, angle. */
function sampson([cx, cy, a, b, angle]: readonly number[], { x, y }: Point): number {
  const [c, s] = [Math.cos(angle!), Math.sin(angle!)]
  const u = (c * (x - cx!) + s * (y - cy!)) / a!
  const v = (-s * (x - cx!) + c * (y - cy!)) / b!
  const r = Math.hypot(u, v)
  if (r === 0) return -Math.min(Math.abs(a!), Math.abs(b!))
  // Radial in the circle's frame: exact on the ellipse, and of second order off it.
  return (r - 1) / (Math.hypot(u / a!, v / b!) / r)
}

function directFit(points: readonly Point[]): number[] {
  const n = points.length
  const mx = points.reduce((s, p) => s + p.x, 0) / n
  const my = points.reduce((s, p) => s + p.y, 0) / n
  const scale = points.reduce((s, p) => s + Math.hypot(p.x - mx, p.y - my), 0) / n
  if (!(scale > 0)) throw noEllipse()
  const local = points.map((p) => [(p.x - mx) / scale, (p.y - my) / scale] as const)
  const quadratic = new Matrix(local.map(([x, y]) => [x * x, x * y, y * y]))
  const linear = new Matrix(local.map(([x, y]) => [x, y, 1]))
  const s1 = quadratic.transpose().mmul(quadratic)
  const s2 = quadratic.transpose().mmul(linear)
  const s3 = linear.transpose().mmul(linear)
  const toLinear = inverse(s3, true).mmul(s2.transpose()).mul(-1)
  const reduced = s1.add(s2.mmul(toLinear))
  const constrained = new Matrix([
    reduced.getRow(2).map((value) => value / 2),
    reduced.getRow(1).map((value) => -value),
    reduced.getRow(0).map((value) => value / 2),
  ])
  const vectors = new EVD(constrained).eigenvectorMatrix
  for (let k = 0; k < 3; k++) {
    const [A, B, C] = vectors.getColumn(k)
    if (!(4 * A! * C! - B! * B! > 0)) continue
    const [D, E, F] = toLinear.mmul(new Matrix([[A!], [B!], [C!]])).getColumn(0)
    const geometric = conicToAxes(A!, B!, C!, D!, E!, F!)
    if (!geometric) continue
    const [x, y, a, b, angle] = geometric
    return [mx + scale * x, my + scale * y, scale * a, scale * b, angle]
  }
  throw noEllipse()
}

function conicToAxes(
  A: number,
  B: number,
  C: number,
  D: number,
  E: number,
  F: number,
): [number, number, number, number, number] | null {
  const det = 4 * A * C - B * B
  const x = (B * E - 2 * C * D) / det
  const y = (B * D - 2 * A * E) / det
  const atCentre = F + (D * x + E * y) / 2
  const angle = 0.5 * Math.atan2(B, A - C)
  const [c, s] = [Math.cos(angle), Math.sin(angle)]
  const along = A * c * c + B * c * s + C * s * s
  const across = A * s * s - B * c * s + C * c * c
  const [a2, b2] = [-atCentre / along, -atCentre / across]
  return a2 > 0 && b2 > 0 ? [x, y, Math.sqrt(a2), Math.sqrt(b2), angle] : null
}

function differences(
  residuals: (p: readonly number[]) => readonly number[],
  at: readonly number[],
): number[][] {
  const columns = at.map((value, k) => {
    const step = 1e-6 * Math.max(1, Math.abs(value))
    const up = residuals(at.map((x, i) => (i === k ? x + step : x)))
    const down = residuals(at.map((x, i) => (i === k ? x - step : x)))
    return up.map((u, i) => (u - down[i]!) / (2 * step))
  })
  return columns[0]!.map((_, i) => columns.map((column) => column[i]!))
}

function noEllipse(): RoundwrightError {
  return new RoundwrightError("no-ellipse", "The points lie on no ellipse.", {
    hint: "Give points all round the edge of a round piece.",
  })
}
