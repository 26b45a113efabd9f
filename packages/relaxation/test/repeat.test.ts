// One repeat stands for the whole: found where there is one, and only there; its energy is the whole's, shared out.

import { buildDisc, buildPolygon, type Motif } from "@roundwright/motif"
import { minimiseByNewton, seededRandom } from "@roundwright/numerics"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { findRepeat } from "../src/find-repeat.ts"
import {
  buildNet,
  cornersOfFabric,
  type EnergyOptions,
  layOutFlat,
  layOutInSpace,
  NetEnergy,
  usualMaterial,
  usualPull,
} from "../src/index.ts"
import { foldTogether, mostRepeats, repeatOf, unfold } from "../src/repeat.ts"
import { grannySquare, laceSquare } from "./support/motifs.ts"

const dc = kind("dc")
const gauge = gaugeFrom({ swatches: [{ kind: dc, widthMm: 7, heightMm: 13 }] })
const multiples = (k: number, rounds: number) =>
  Array.from({ length: rounds }, (_, n) => k * (n + 1))

const pieces: readonly (readonly [string, Motif, number])[] = [
  ["disc of 12", buildDisc(dc, multiples(12, 4), { staggered: true }), 12],
  ["hexagon", buildPolygon(kind("sc"), 6, 4, 2, 3), 6],
  ["granny square", grannySquare(3), 4],
  ["lace square", laceSquare(6), 4],
]

const optionsOf = (dimensions: 2 | 3, net: ReturnType<typeof buildNet>): EnergyOptions => ({
  dimensions,
  material: { ...usualMaterial, bending: 5, weight: 1e-3 },
  table: true,
  pull: 0.05,
  corners: cornersOfFabric(net, net.start),
})

/** The start, each repeat moved alike. */
function movedAlike(net: ReturnType<typeof buildNet>, order: number, d: 2 | 3) {
  const repeat = repeatOf(net, order)
  const random = seededRandom(7)
  const start = Float64Array.from({ length: d * net.nodes.length }, (_, k) =>
    k % d === 2 ? 3 : net.start[2 * Math.floor(k / d) + (k % d)]!,
  )
  const x = foldTogether(repeat, start, d).map((value, k) => {
    const node = Math.floor(k / d)
    return node === repeat.axis && k % d < 2 ? value : value + 0.2 * random.normal()
  })
  return { repeat, x }
}

describe("a repeat", () => {
  it.each(pieces)("of a %s is found", (_, motif, order) => {
    expect(layOutFlat(buildNet(motif, gauge)).repeat?.order).toBe(order)
  })

  /** One stitch of the second round is lower and no wider, as a join may be. */
  const broken = (rounds: number): Motif => {
    const motif = buildDisc(dc, multiples(12, rounds))
    const [first, second, ...others] = motif.rounds
    const elements = second!.elements.map((element, k) =>
      k === 5 && element.type === "stitch" ? { ...element, kind: kind("hdc") } : element,
    )
    return { ...motif, rounds: [first!, { ...second!, elements }, ...others] }
  }

  it("is not found where one stitch differs", () => {
    expect(mostRepeats(buildNet(broken(3), gauge))).toBe(12)
    expect(layOutFlat(buildNet(broken(3), gauge)).repeat).toBe(null)
  })

  it("where one stitch differs is where the whole begins, which then comes to rest as it does by itself", () => {
    const net = buildNet(broken(7), gauge)
    const options = {
      dimensions: 2,
      material: { ...usualMaterial, leanShare: 1 },
      table: false,
      pull: usualPull,
      corners: cornersOfFabric(net, net.start),
    } as const
    const whole = new NetEnergy(net, options)
    const near = findRepeat(net, whole, 10)
    expect(near?.exact).toBe(false)
    expect(near?.repeat.order).toBe(12)
    const flat = layOutFlat(net)
    expect(flat.how.settled).toBe(true)
    const alone = minimiseByNewton(whole, net.start, {
      gradientTolerance: 1e-9,
      longestMove: 10,
      leaveSaddles: false,
    })
    expectRelative(flat.energy, alone.value, 1e-6, "both at rest")
  })

  it.each(
    pieces.flatMap(([name, motif, order]) => [
      [name, 2, motif, order] as const,
      [name, 3, motif, order] as const,
    ]),
  )("of a %s in %i dimensions has its share of the energy and its slopes", (_, d, motif, order) => {
    const net = buildNet(motif, gauge)
    const { repeat, x } = movedAlike(net, order, d)
    const options = optionsOf(d, net)
    const [part, whole] = [new NetEnergy(net, options, repeat), new NetEnergy(net, options)]
    const gradient = new Float64Array(part.size)
    const value = part.gradient(x, gradient)
    expectRelative(
      order * value,
      whole.value(unfold(repeat, x, d)),
      1e-9,
      "the same sum in another order",
    )
    const random = seededRandom(8)
    const direction = x.map((_, k) =>
      Math.floor(k / d) === repeat.axis && k % d < 2 ? 0 : random.normal(),
    )
    const step = 1e-5
    const at = (by: number) => x.map((v, k) => v + by * direction[k]!)
    const slope = gradient.reduce((sum, g, k) => sum + g * direction[k]!, 0)
    expectClose(
      (part.value(at(step)) - part.value(at(-step))) / (2 * step),
      slope,
      1e-6 * Math.hypot(...gradient),
      "central differences",
    )
    const values = new Float64Array(part.pattern.row.length)
    part.hessian(x, values, false)
    const product = new Float64Array(part.size)
    for (let j = 0; j < part.size; j++)
      for (let p = part.pattern.columnStart[j]!; p < part.pattern.columnStart[j + 1]!; p++) {
        const i = part.pattern.row[p]!
        product[i]! += values[p]! * direction[j]!
        if (i !== j) product[j]! += values[p]! * direction[i]!
      }
    const [up, down] = [1, -1].map((sign) => {
      const slopes = new Float64Array(part.size)
      part.gradient(at(sign * step), slopes)
      return slopes
    })
    const off = product.map((value, k) => value - (up![k]! - down![k]!) / (2 * step))
    expectClose(Math.hypot(...off) / Math.hypot(...product), 0, 1e-6, "central differences")
  })

  it("gives the shape that the whole comes to by itself", () => {
    const net = buildNet(buildDisc(dc, multiples(9, 6)), gauge)
    const flat = layOutFlat(net)
    expect(flat.repeat?.order).toBe(9)
    const [by, alone] = [flat.repeat, null].map((repeat) => layOutInSpace(net, flat.xy, { repeat }))
    expectRelative(by!.energy, alone!.energy, 1e-6, "both at rest")
    expect(by!.how.unstable).toBe(0)
  })
})
