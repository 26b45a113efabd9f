// What parts and counts rings, each against a picture or a row whose answer is known by how it was made.

import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { drawMotif, tunedKinds } from "../../../test/support/drawn-motif.ts"
import { climbTo } from "../src/climb-to.ts"
import { concentricity } from "../src/concentric.ts"
import type { Counted } from "../src/count-ring.ts"
import type { GreyPicture } from "../src/index.ts"
import { withKin } from "../src/kin-counts.ts"
import { likenessOf } from "../src/likeness.ts"
import { countByPeaks } from "../src/peak-count.ts"
import type { Row } from "../src/rows.ts"
import { boxAtTap } from "../src/tapped.ts"

describe("closed lines round a centre", () => {
  const centre = { x: 103.4, y: 96.7 }
  const rings: GreyPicture = {
    width: 200,
    height: 200,
    values: Float32Array.from({ length: 40_000 }, (_, i) =>
      Math.cos(Math.hypot((i % 200) - centre.x, Math.floor(i / 200) - centre.y) / 2.5),
    ),
  }

  it("carry all of the variance about it, and little of it beside it", () => {
    expectClose(
      concentricity(rings, centre, 90),
      1,
      0.05,
      "all but the mean of 64 circles, a few percent, and what is lost between pixels",
    )
    expect(concentricity(rings, { x: centre.x + 6, y: centre.y }, 90)).toBeLessThan(0.5)
  })

  it("place it to a fifth of a pixel", () => {
    const { point } = climbTo({ x: 101, y: 98 }, [1, 0.5, 0.25, 0.125], (at) =>
      concentricity(rings, at, 90),
    )
    expectClose(point.x, centre.x, 0.2, "the last step is an eighth of a pixel")
    expectClose(point.y, centre.y, 0.2, "the last step is an eighth of a pixel")
  })
})

describe("a round joined with a gap half a place wide", () => {
  it("has as many posts as were worked", () => {
    for (const posts of [14, 16, 24, 32]) {
      const place = 1024 / (posts + 0.5)
      const row = Float64Array.from({ length: 1024 }, (_, i) =>
        Array.from({ length: posts }, (_, k) =>
          Math.exp(-(((i - (k + 0.5) * place) / (0.15 * place)) ** 2)),
        ).reduce((a, b) => a + b, 0),
      )
      expect(countByPeaks([row, row, row], posts)?.count).toBe(posts)
    }
  })
})

describe("counts of one motif", () => {
  const ring = (count: number, peaks = 0): Counted => ({
    repeats: count,
    strands: count,
    sureness: 0.95,
    nextBest: null,
    halfOrTwice: false,
    signs: { comb: 0.4, rival: 0.1, vote: 0.5, peaks, byPhase: false, pxPerRepeat: 20, rows: 20 },
  })

  it("are set right by one where the others share a measure, and told less surely", () => {
    const [, , third] = withKin([ring(8), ring(16), ring(25), ring(72)])
    expect(third).toMatchObject({ repeats: 24, strands: 24, nextBest: 25 })
    expect(third!.sureness).toBeLessThan(0.9)
  })

  it("stay where every post was seen, where nothing is shared, and where they are farther off", () => {
    expect(withKin([ring(8), ring(16), ring(25, 1), ring(72)])[2]).toMatchObject({ repeats: 25 })
    expect(withKin([ring(10), ring(11), ring(22), ring(13)]).map(({ repeats }) => repeats)).toEqual(
      [10, 11, 22, 13],
    )
    expect(withKin([ring(8), ring(16), ring(28), ring(72)])[2]).toMatchObject({ repeats: 28 })
  })
})

describe("rows of the unrolled piece", () => {
  it("are alike within a round and unlike where the next begins", () => {
    const rows = Array.from({ length: 80 }, (_, r) => {
      const [count, turn] = r < 40 ? [12, 0] : [18, 0.7]
      return {
        byAngle: Float64Array.from({ length: 1024 }, (_, i) =>
          Math.cos((2 * Math.PI * count * i) / 1024 + turn),
        ),
      } as unknown as Row
    })
    const likeness = likenessOf(rows)
    expectClose(likeness[20]!, 1, 1e-9, "the same row above and below")
    expectClose(likeness[40]!, 0, 1e-9, "other orders are orthogonal")
  })
})

describe("a tap", () => {
  const drawn = drawMotif(702, { kinds: tunedKinds, tiltDeg: [0, 3], side: 240 })
  const [width, height] = [520, 260]
  const two: GreyPicture = {
    width,
    height,
    values: new Float32Array(width * height).fill(drawn.picture.values[0]!),
  }
  for (const left of [5, 270])
    for (let y = 0; y < 240; y++)
      two.values.set(drawn.picture.values.subarray(y * 240, (y + 1) * 240), (y + 10) * width + left)

  it("takes the motif it lies on", () => {
    const box = boxAtTap(two, { x: 270 + drawn.centrePx.x + 10, y: 10 + drawn.centrePx.y - 8 })
    expect(box.x).toBeGreaterThan(255)
    expect(box.x).toBeLessThan(270 + drawn.centrePx.x - drawn.sidePx)
    expect(box.x + box.width).toBeGreaterThan(270 + drawn.centrePx.x + drawn.sidePx)
  })

  it("is refused in words beside every motif and outside the picture", () => {
    expect(() => boxAtTap(two, { x: 258, y: 4 })).toThrow(/no motif where/)
    expect(() => boxAtTap(two, { x: 900, y: 4 })).toThrow(/outside the picture/)
  })
})
