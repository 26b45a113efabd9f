import { seededRandom } from "@roundwright/numerics"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { blur } from "../src/blur.ts"
import { combs, countOf } from "../src/comb.ts"
import { powerSpectrum } from "../src/fourier.ts"
import { brightnessAt, cutOut, greyOfRgba, greyPicture, shrink } from "../src/grey.ts"
import { closeGaps, fillHoles, largestPart, squaredDistance } from "../src/mask.ts"
import { polygonContour } from "../src/outline.ts"
import { countByPeaks } from "../src/peak-count.ts"
import { countByPhase } from "../src/phase-count.ts"
import { otsu } from "../src/silhouette.ts"
import { anglesAlong, evenAngles } from "../src/unroll.ts"

const random = seededRandom(7)
const noise = (width: number, height: number) => ({
  width,
  height,
  values: Float32Array.from({ length: width * height }, () => random.uniform()),
})

describe("a picture as numbers", () => {
  it("is shrunk to the mean of what each pixel covers", () => {
    const picture = noise(90, 60)
    const small = shrink(picture, 30)
    expect([small.picture.width, small.picture.height]).toEqual([30, 20])
    for (const [x, y] of [
      [0, 0],
      [13, 7],
      [29, 19],
    ] as const) {
      let sum = 0
      for (let j = 0; j < 3; j++)
        for (let i = 0; i < 3; i++) sum += picture.values[(3 * y + j) * 90 + 3 * x + i]!
      expectClose(
        small.picture.values[y * 30 + x]!,
        sum / 9,
        1e-6,
        "mean of nine pixels, single precision",
      )
    }
  })

  it("is interpolated exactly where brightness is linear", () => {
    const ramp = greyPicture(
      30,
      30,
      Float32Array.from({ length: 900 }, (_, i) => (i % 30) / 64 + Math.floor(i / 30) / 128),
    )
    expectClose(
      brightnessAt(ramp, 10.25, 7.5),
      10.25 / 64 + 7.5 / 128,
      1e-6,
      "bilinear is exact on a plane",
    )
  })

  it("counts what is clear as white, and refuses what is too small or outside", () => {
    const bytes = new Uint8ClampedArray(4 * 24 * 24)
    expectClose(greyOfRgba(24, 24, bytes).values[5]!, 1, 1e-6, "opacity 0")
    expect(() => greyPicture(1, 1, new Float32Array(1))).toThrow(/too small/)
    expect(() => cutOut(noise(50, 50), { x: 100, y: 0, width: 30, height: 30 })).toThrow(/box/)
    expect(() => greyPicture(24, 24, new Float32Array(24 * 24).fill(Number.NaN))).toThrow(/finite/)
  })
})

describe("the blur", () => {
  it("keeps the mean of a spot and spreads it by sigma", () => {
    for (const sigma of [1.5, 4, 9.3]) {
      const size = 129
      const values = new Float32Array(size * size)
      values[64 * size + 64] = 1
      const soft = blur({ width: size, height: size, values }, sigma).values
      let [sum, spread] = [0, 0]
      soft.forEach((value, i) => {
        sum += value
        spread += value * ((i % size) - 64) ** 2
      })
      expectClose(sum, 1, 1e-4, "nothing is lost, single precision")
      expectClose(Math.sqrt(spread / sum), sigma, 0.06 * sigma + 0.1, "boxes have whole widths")
    }
  })
})

describe("masks", () => {
  it("know the distance to the nearest pixel exactly", () => {
    const [width, height] = [23, 17]
    const mask = Uint8Array.from({ length: width * height }, () =>
      random.uniform() < 0.05 ? 1 : 0,
    )
    mask[40] = 1
    const fast = squaredDistance(mask, width, height)
    for (let i = 0; i < mask.length; i++) {
      let nearest = Number.POSITIVE_INFINITY
      mask.forEach((value, k) => {
        if (value === 0) return
        const dx = (i % width) - (k % width)
        const dy = Math.floor(i / width) - Math.floor(k / width)
        nearest = Math.min(nearest, dx * dx + dy * dy)
      })
      expect(fast[i]).toBe(nearest)
    }
  })

  it("are closed, filled and parted", () => {
    const width = 40
    const ring = Uint8Array.from({ length: 1600 }, (_, i) => {
      const r = Math.hypot((i % width) - 20, Math.floor(i / width) - 20)
      return r > 10 && r < 13 && (i % width !== 20 || i > 800) ? 1 : 0
    })
    const closed = fillHoles(closeGaps(ring, width, 40, 2), width, 40)
    expect(closed[20 * width + 20]).toBe(1)
    expect(closed[0]).toBe(0)
    const two = Uint8Array.from({ length: 100 }, (_, i) => (i % 10 < 2 || i % 10 > 5 ? 1 : 0))
    expect(largestPart(two, 10, 10).reduce((sum, value) => sum + value, 0)).toBe(40)
  })

  it("take Otsu's threshold between two groups", () => {
    const values = [...Array(60).fill(0.2), ...Array(40).fill(0.9)] as number[]
    const threshold = otsu(values)
    expect(threshold).toBeGreaterThanOrEqual(0.2)
    expect(threshold).toBeLessThan(0.9)
  })
})

/** Bumps of thread at given places of a row. */
function bumps(places: readonly number[], width: number, size = 1024): Float64Array {
  return Float64Array.from({ length: size }, (_, i) =>
    places.reduce((sum, at) => {
      const d = Math.abs(((i / size - at + 1.5) % 1) - 0.5)
      return sum + Math.exp(-0.5 * (d / width) ** 2)
    }, 0),
  )
}

describe("counts of a row", () => {
  it("by the comb are the fundamental, not half and not twice", () => {
    for (const n of [5, 8, 12, 17, 36, 60]) {
      const row = bumps(
        Array.from({ length: n }, (_, i) => i / n),
        0.15 / n,
      )
      expect(countOf(combs(powerSpectrum(row), 100))?.count).toBe(n)
    }
  })

  it("by the comb are 1 where one repeat is all there is to see", () => {
    // Strong enough that the power of a blank row does not count beside it.
    const row = bumps(
      Array.from({ length: 12 }, (_, i) => i / 12),
      0.015,
    ).map((value) => 10 * value)
    const comb = combs(powerSpectrum(row), 100)
    expectClose(comb[12]!, 1, 0.02, "nearly all power above order 3 lies on the teeth of 12")
    expect(countOf(new Float64Array(171))).toBeNull()
  })

  it("by peaks and by phase do not mind a gap at the join", () => {
    // 24 posts on all but half a place: the gap is one and a half wide.
    const places = Array.from({ length: 24 }, (_, i) => (i * (1 - 0.5 / 24)) / 24)
    const rows = [bumps(places, 0.006), bumps(places, 0.007)]
    expect(countByPeaks(rows, 24)?.count).toBe(24)
    expect([24, 25]).toContain(countByPhase(rows, 80)?.count)
  })

  it("by peaks put back a strand that merged with its neighbour", () => {
    const places = Array.from({ length: 20 }, (_, i) => i / 20)
    places.splice(7, 1)
    expect(countByPeaks([bumps(places, 0.008)], 20)?.count).toBe(20)
  })

  it("by phase are right for uneven spacing", () => {
    const places = Array.from({ length: 16 }, (_, i) => i / 16 + 0.006 * Math.sin(i))
    expect(countByPhase([bumps(places, 0.01)], 80)?.count).toBe(16)
  })
})

describe("contours", () => {
  it("of straight sides are those of the polygon", () => {
    const square = polygonContour(4, Math.PI / 4, 1)
    expectClose(square(0), 1, 1e-12, "middle of a side")
    expectClose(square(Math.PI / 4), Math.SQRT2, 1e-12, "corner of a square")
    expectClose(square(0.3), 1 / Math.cos(0.3), 1e-12, "distance to a straight side")
  })

  it("are stepped along evenly", () => {
    const square = polygonContour(4, Math.PI / 4, 1)
    const angles = anglesAlong(square)
    const points = [...angles].map(
      (a) => [square(a) * Math.cos(a), square(a) * Math.sin(a)] as const,
    )
    const steps = points.map(([x, y], i) => {
      const [u, v] = points[(i + 1) % points.length]!
      return Math.hypot(u - x, v - y)
    })
    // Steps across a corner are cut short by the diagonal.
    for (const step of steps.slice(1, -1))
      expectClose(step, 8 / 1024, 0.0025, "the square's edge is 8 long; corners are cut")
    expect(evenAngles).toHaveLength(1024)
  })
})
