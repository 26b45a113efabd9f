import {
  fitEllipse,
  type GreyPicture,
  measurePicture,
  project,
  publishMeasurement,
  readKnownLength,
} from "@roundwright/picture"
import { beforeAll, describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import { drawMotif, tunedKinds } from "../../../test/support/drawn-motif.ts"
import { roundView, squeezed } from "../src/round-view.ts"

describe("a known length in words", () => {
  it("is of the side, across, a ruler, a coin or a stitch", () => {
    expect(readKnownLength("side 15.2 cm")).toEqual({ of: "side", mm: 152 })
    expect(readKnownLength(" across 9cm ")).toEqual({ of: "across", mm: 90 })
    expect(readKnownLength("ruler 120,400 820,410 = 10 cm")).toEqual({
      of: "ruler",
      from: { x: 120, y: 400 },
      to: { x: 820, y: 410 },
      mm: 100,
    })
    expect(readKnownLength("coin 1,2 3,4 5,6 7,8 9,10 = 23.2 mm")).toMatchObject({
      of: "coin",
      mm: 23.2,
      edge: [1, 3, 5, 7, 9].map((x) => ({ x, y: x + 1 })),
    })
    expect(readKnownLength("stitch 4.5 mm in ring 3")).toEqual({ of: "stitch", ring: 3, mm: 4.5 })
    expect(readKnownLength("side 5 in")).toEqual({ of: "side", mm: 127 })
  })

  it("is refused in words where it tells none", () => {
    for (const [text, message] of [
      ["long", /does not say how long/],
      ["9 cm", /has to say what it is of/],
      ["ruler 1,2 = 3 cm", /takes two points/],
      ["coin 1,2 3,4 = 23 mm", /five points/],
      ["stitch 4 mm", /of which ring/],
      ["side 0 mm", /cannot be 0 mm/],
      [`side ${"9".repeat(4000)} mm`, /does not say how long/],
    ] as const)
      expect(() => readKnownLength(text)).toThrow(message)
  })
})

describe("millimetres a pixel", () => {
  const drawn = drawMotif(9, { kinds: tunedKinds, tiltDeg: [0, 3], side: 360 })
  let measured: ReturnType<typeof measurePicture>
  beforeAll(() => {
    measured = measurePicture(drawn.picture, { asItIs: true })
  })
  const scaleBy = (known: string, scale = 1) =>
    publishMeasurement(measured, {
      widthPx: 360 / scale,
      heightPx: 360 / scale,
      scale,
      known: readKnownLength(known),
    }).mmPerPx!

  it("is the same by every length that says the same, in pixels of the picture as it is looked at", () => {
    const perPx = 0.5
    const across = 2 * measured.outline.sidePx * perPx
    expectRelative(scaleBy(`across ${across.toFixed(4)} mm`), perPx, 1e-5, "four digits written")
    expectRelative(scaleBy("ruler 100,100 160,180 = 50 mm"), perPx, 1e-12, "a 3-4-5 triangle")
    const coin = [0, 1, 2, 3, 4, 5, 6].map((i) => {
      const angle = (2 * Math.PI * i) / 7
      return `${(300 + 20 * Math.cos(angle)).toFixed(4)},${(40 + 20 * Math.sin(angle)).toFixed(4)}`
    })
    expectRelative(scaleBy(`coin ${coin.join(" ")} = 20 mm`), perPx, 1e-5, "four digits written")
    // Half the picture's pixels a pixel looked at: twice as many of them lie between the same marks.
    expectRelative(
      scaleBy("ruler 200,200 320,360 = 50 mm", 0.5),
      perPx / 2,
      1e-12,
      "the same marks",
    )
  })

  it("is told by the stitches of a ring that was counted", () => {
    const ring = measured.rings.findIndex(({ strands }) => strands === 24)
    const row = Math.min(measured.rings[ring]!.toRow, measured.rows.length - 1)
    const round = 2 * Math.PI * measured.rows[row]!.radius
    expectRelative(
      scaleBy(`stitch 5 mm in ring ${ring + 1}`),
      (24 * 5) / round,
      1e-12,
      "closed form",
    )
    expect(() => scaleBy("stitch 5 mm in ring 77")).toThrow(/Ring 77 has no count/)
    expect(() => scaleBy("side 5 cm")).toThrow(/round/)
    expect(() => scaleBy("ruler 5,5 5,5 = 10 mm")).toThrow(/are one/)
  })
})

describe("a view by the edge of a round piece", () => {
  it("squeezes a circle to the ellipse of those axes", () => {
    const [angle, flat] = [0.7, 0.62]
    const view = squeezed({ x: 120, y: 90 }, angle, flat)
    const points = Array.from({ length: 24 }, (_, i) =>
      project(view, {
        x: 120 + 50 * Math.cos((2 * Math.PI * i) / 24),
        y: 90 + 50 * Math.sin((2 * Math.PI * i) / 24),
      }),
    )
    const { centre, longPx, shortPx, angle: found } = fitEllipse(points)
    for (const [value, exact] of [
      [centre.x, 120],
      [centre.y, 90],
      [longPx, 50],
      [shortPx, 50 * flat],
      [found, angle],
    ] as const)
      expectClose(value, exact, 1e-9, "closed form")
  })

  it("makes a disc seen at a slant round again, frayed edge and all", () => {
    const [angle, flat] = [0.4, 0.7]
    const picture = slanted(angle, flat)
    const { flattened, picture: straight } = roundView(picture)
    expectClose(flattened!, flat, 0.015, "an edge frayed by 3 % in 12 places, 360 directions")
    const { longPx, shortPx } = fitEllipse(edgeOf(straight))
    expectRelative(shortPx, longPx, 0.02, "the same")
    expect(() => roundView(slanted(0, 0.2))).toThrow(/too much from the side/)
  })

  /** A bright disc of scalloped edge on a dark ground, light falling off. */
  function slanted(angle: number, flat: number): GreyPicture {
    const size = 220
    const values = Float32Array.from({ length: size * size }, (_, i) => {
      const [x, y] = [(i % size) - size / 2, Math.floor(i / size) - size / 2]
      const u = x * Math.cos(angle) + y * Math.sin(angle)
      const v = (-x * Math.sin(angle) + y * Math.cos(angle)) / flat
      const reach = 80 * (1 + 0.03 * Math.cos(12 * Math.atan2(v, u)))
      return (Math.hypot(u, v) < reach ? 0.8 : 0.2) * (1 - (0.3 * (i % size)) / size)
    })
    return { width: size, height: size, values }
  }

  function edgeOf({ width, height, values }: GreyPicture) {
    const points = []
    for (let k = 0; k < 90; k++) {
      const angle = (2 * Math.PI * k) / 90
      let r = 0
      const at = (radius: number) =>
        values[
          Math.round(height / 2 + radius * Math.sin(angle)) * width +
            Math.round(width / 2 + radius * Math.cos(angle))
        ]!
      while (r < width / 2 - 2 && at(r) > 0.4) r += 0.5
      points.push({ x: width / 2 + r * Math.cos(angle), y: height / 2 + r * Math.sin(angle) })
    }
    return points
  }
})
