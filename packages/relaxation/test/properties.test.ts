import { buildDisc, buildPolygon, findCorners, type Motif } from "@roundwright/motif"
import { minimiseByLbfgs, minimiseByNewton } from "@roundwright/numerics"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import {
  buildNet,
  cornersOfFabric,
  idealMaterial,
  layOut,
  layOutFlat,
  layOutInSpace,
  measureLift,
  measureOutline,
  NetEnergy,
  usualBending,
  usualMaterial,
  wavesAlong,
} from "../src/index.ts"
import { begunLater, grannySquare, laceSquare, mirrored } from "./support/motifs.ts"

const dc = kind("dc")
const gauge = gaugeFrom({ swatches: [{ kind: dc, widthMm: 7, heightMm: 13 }] })
const multiples = (k: number, rounds: number) =>
  Array.from({ length: rounds }, (_, n) => k * (n + 1))

function flatSizes(motif: Motif): number[] {
  const net = buildNet(motif, gauge)
  const flat = layOutFlat(net)
  const corners = findCorners(motif)
  return net.edges.flatMap((_, round) => {
    const outline = measureOutline(net, flat.xy, 2, round, corners[round])
    return [outline.sideReachMm, outline.cornerReachMm]
  })
}

const pieces: readonly (readonly [string, Motif])[] = [
  ["disc", buildDisc(dc, multiples(12, 5))],
  ["square", buildPolygon(kind("sc"), 4, 6, 2, 3)],
  ["granny square", grannySquare(4)],
  ["lace square", laceSquare(7)],
]

describe("the flat shape", () => {
  it.each(pieces)("of a %s does not depend on where rounds begin or on the hand", (_, motif) => {
    const sizes = flatSizes(motif)
    for (const other of [begunLater(motif, 1), begunLater(motif, 5), mirrored(motif)])
      flatSizes(other).forEach((size, k) => {
        expectClose(size, sizes[k]!, 1e-6 * sizes.at(-1)!, "asked for: 1e-6 of the size")
      })
  })

  it.each(pieces)("of a %s is the same from the start turned by any angle", (_, motif) => {
    const net = buildNet(motif, gauge)
    const turn = 1.234
    const start = net.start.map((_, k) =>
      k % 2 === 0
        ? Math.cos(turn) * net.start[k]! - Math.sin(turn) * net.start[k + 1]!
        : Math.sin(turn) * net.start[k - 1]! + Math.cos(turn) * net.start[k]!,
    )
    const reach = [net, { ...net, start }].map((one) => {
      const flat = layOutFlat(one)
      return measureOutline(one, flat.xy, 2, motif.rounds.length - 1, undefined).sideReachMm
    })
    expectRelative(reach[1]!, reach[0]!, 1e-6, "asked for: 1e-6 of the size")
  })

  it("grows with the gauge", () => {
    const larger = gaugeFrom({ swatches: [{ kind: dc, widthMm: 14, heightMm: 26 }] })
    const motif = grannySquare(3)
    const ideal = { ...idealMaterial, bending: 0 }
    const [small, large] = [gauge, larger].map((one) => {
      const net = buildNet(motif, one)
      return measureOutline(
        net,
        layOutFlat(net, { material: ideal, pull: 0.01 }).xy,
        2,
        2,
        findCorners(motif)[2],
      )
    })
    // The hold on the centre is a force per mm and does not scale; a symmetric piece does not feel it.
    expectRelative(
      large!.sideReachMm,
      2 * small!.sideReachMm,
      1e-6,
      "all lengths doubled, bending off",
    )
  })

  it("is the one that L-BFGS comes to on the same energy", () => {
    const net = buildNet(buildDisc(dc, multiples(11, 4)), gauge)
    const energy = new NetEnergy(net, {
      dimensions: 2,
      material: { ...usualMaterial, give: 0, leanShare: 1 },
      table: false,
      pull: 0.002,
      corners: cornersOfFabric(net, net.start),
    })
    const options = { gradientTolerance: 1e-7, longestMove: 5, iterations: 20_000 }
    const [newton, second] = [minimiseByNewton, minimiseByLbfgs].map((minimise) =>
      minimise(energy, net.start, options),
    )
    expect(newton!.ended).toBe("gradient-small")
    expect(second!.ended).toBe("gradient-small")
    expectRelative(
      second!.value,
      newton!.value,
      1e-9,
      "gradients of 1e-7 N, second order in the energy",
    )
    expect(newton!.iterations * 5).toBeLessThan(second!.iterations)
  })
})

describe("the shape in space", () => {
  it("of a cup has no waves, and lies rim down or up, whichever is lower", () => {
    const shape = layOut(buildDisc(dc, multiples(8, 6)), gauge)
    expect(shape.verdict).toBe("cups")
    expect(shape.lift!.waves).toBe(0)
    expect(shape.space!.how.settled).toBe(true)
    expect(shape.space!.how.unstable).toBe(0)
  })

  it.each([14, 16])(
    "of a disc of %i dc a round does not change when more starts are added",
    (k) => {
      const net = buildNet(buildDisc(dc, multiples(k, 6)), gauge)
      const flat = layOutFlat(net)
      const few = layOutInSpace(net, flat.xy)
      const more = layOutInSpace(net, flat.xy, { waves: [2, 3, 4, 5, 6, 7, 8, 9, 10, 12] })
      const [a, b] = [few, more].map((shape) => measureLift(net, shape.xyz))
      expect(few.how.settled).toBe(true)
      expectRelative(more.energy, few.energy, 1e-6, "the same shape, both at rest")
      expectRelative(b!.liftMm, a!.liftMm, 1e-3, "the same shape, turned or not")
      expect(b!.waves).toBe(a!.waves)
    },
  )

  it("keeps the lowest of what was tried, and says from which start", () => {
    const net = buildNet(buildDisc(dc, multiples(15, 4)), gauge)
    const shape = layOutInSpace(net, layOutFlat(net).xy)
    const lowest = Math.min(...shape.tried.map(({ energy }) => energy))
    expectClose(shape.energy, lowest, 0, "the very same number")
    expect(shape.tried.map(({ name }) => name)).toContain(shape.from)
    expect(shape.tried.length).toBeGreaterThanOrEqual(8)
    expect(shape.tried.filter(({ followed }) => followed).length).toBe(3)
  })

  it("waves more and finer towards the edge when rounds double", () => {
    const net = buildNet(buildDisc(dc, [6, 12, 24, 48, 96], { staggered: true }), gauge)
    const material = { ...idealMaterial, bending: 0.1 * usualBending }
    const shape = layOutInSpace(net, layOutFlat(net, { material }).xy, { material, table: false })
    expect(wavesAlong(net, shape.xyz, 4)).toBeGreaterThan(wavesAlong(net, shape.xyz, 1))
    expect(wavesAlong(net, shape.xyz, 4)).toBeGreaterThanOrEqual(3)
  })

  it("never sinks into the table", () => {
    for (const k of [9, 12, 15]) {
      const net = buildNet(buildDisc(dc, multiples(k, 5)), gauge)
      const shape = layOutInSpace(net, layOutFlat(net).xy)
      const lowest = shape.xyz.reduce((low, z, i) => (i % 3 === 2 ? Math.min(low, z) : low), 0)
      expect(lowest).toBeGreaterThan(-1)
    }
  })

  it("is the same, to the byte, for the same input", () => {
    const net = buildNet(grannySquare(3), gauge)
    const [a, b] = [0, 1].map(() => layOutInSpace(net, layOutFlat(net).xy))
    expect(a!.xyz).toEqual(b!.xyz)
  })
})
