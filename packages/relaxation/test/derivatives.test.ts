import { seededRandom } from "@roundwright/numerics"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  buildNet,
  cornersOfFabric,
  type EnergyOptions,
  NetEnergy,
  usualMaterial,
} from "../src/index.ts"
import { randomMotif } from "./support/motifs.ts"

const gauge = gaugeFrom({ swatches: [{ kind: kind("dc"), widthMm: 7.3, heightMm: 14 }] })
/** Heavy bending and a strong pull, so that no term drowns in the others. */
const material = { ...usualMaterial, bending: 5, weight: 1e-3 }

function disturbed(seed: number, dimensions: 2 | 3) {
  const net = buildNet(randomMotif(seed), gauge)
  const options: EnergyOptions = { dimensions, material, table: true, pull: 0.05 }
  const random = seededRandom(seed + 1000)
  const x = new Float64Array(dimensions * net.nodes.length)
  net.nodes.forEach((_, node) => {
    for (let k = 0; k < dimensions; k++)
      x[dimensions * node + k] =
        (k < 2 ? net.start[2 * node + k]! : 2) + (dimensions === 2 ? 0.05 : 2) * random.normal()
  })
  // Corners that the disturbance has all but closed would hold differences of any step to be wrong.
  const xy = Float64Array.from(net.start, (_, k) => x[dimensions * (k >> 1) + (k % 2)]!)
  const energy = new NetEnergy(net, { ...options, corners: cornersOfFabric(net, xy) })
  const direction = x.map(() => random.normal())
  return { energy, x, direction }
}

const step = 1e-5
/** Of gradients a smaller one: all but closed corners have large third derivatives, and gradients less to round. */
const smallStep = 3e-6
const reason =
  "central differences: step 1e-5 mm, rounding 1e-11 of the energy over the step, kinks of the ramp"

describe("the energy of random motifs", () => {
  it.each([2, 3] as const)(
    "has the gradient of its differences in %i dimensions, 200 seeds",
    (dimensions) => {
      for (let seed = 0; seed < 200; seed++) {
        const { energy, x, direction } = disturbed(seed, dimensions)
        const gradient = new Float64Array(energy.size)
        const value = energy.gradient(x, gradient)
        expectClose(energy.value(x), value, 1e-12 * Math.abs(value), "the same sum")
        const at = (by: number) => energy.value(x.map((v, i) => v + by * direction[i]!))
        const slope = gradient.reduce((sum, g, i) => sum + g * direction[i]!, 0)
        const size = Math.hypot(...gradient)
        expectClose(
          (at(step) - at(-step)) / (2 * step),
          slope,
          1e-6 * size,
          `${reason}, seed ${seed}`,
        )
      }
    },
  )

  it.each([2, 3] as const)(
    "has the second derivatives of its gradient in %i dimensions, 200 seeds",
    (dimensions) => {
      for (let seed = 0; seed < 200; seed++) {
        const { energy, x, direction } = disturbed(seed, dimensions)
        const values = new Float64Array(energy.pattern.row.length)
        energy.hessian(x, values, false)
        const product = multiply(energy, values, direction)
        const [up, down] = [1, -1].map((sign) => {
          const gradient = new Float64Array(energy.size)
          energy.gradient(
            x.map((v, i) => v + sign * smallStep * direction[i]!),
            gradient,
          )
          return gradient
        })
        const differences = up!.map((g, i) => (g - down![i]!) / (2 * smallStep))
        const off = Math.hypot(...differences.map((d, i) => d - product[i]!))
        expectClose(off / Math.hypot(...differences), 0, 1e-6, `${reason}, seed ${seed}`)
      }
    },
  )

  it("has a convex neighbour that is never negative", () => {
    for (let seed = 0; seed < 30; seed++) {
      const { energy, x, direction } = disturbed(seed, 3)
      const values = new Float64Array(energy.pattern.row.length)
      energy.hessian(x, values, true)
      const product = multiply(energy, values, direction)
      const curvature = product.reduce((sum, p, i) => sum + p * direction[i]!, 0)
      expect(curvature).toBeGreaterThanOrEqual(0)
    }
  })
})

function multiply(energy: NetEnergy, values: Float64Array, x: Float64Array): Float64Array {
  const { columnStart, row } = energy.pattern
  const out = new Float64Array(energy.size)
  for (let j = 0; j < energy.size; j++)
    for (let p = columnStart[j]!; p < columnStart[j + 1]!; p++) {
      const i = row[p]!
      out[i]! += values[p]! * x[j]!
      if (i !== j) out[j]! += values[p]! * x[i]!
    }
  return out
}
