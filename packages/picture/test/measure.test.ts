import { seededRandom } from "@roundwright/numerics"
import {
  cutOut,
  type GreyPicture,
  measurePicture,
  publishMeasurement,
  stripOf,
  ticksOf,
} from "@roundwright/picture"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { drawMotif, tunedKinds } from "../../../test/support/drawn-motif.ts"

const drawn = drawMotif(9, { kinds: tunedKinds, tiltDeg: [0, 3], side: 360 })
const publish = (picture: GreyPicture, options = {}) =>
  publishMeasurement(measurePicture(picture, options), {
    widthPx: picture.width,
    heightPx: picture.height,
    scale: 1,
  })
const countsOf = (picture: GreyPicture, options = {}) =>
  publish(picture, options).rings.flatMap(({ repeats }) => (repeats === null ? [] : [repeats]))

describe("a drawn motif", () => {
  const measured = measurePicture(drawn.picture)
  const published = publishMeasurement(measured, { widthPx: 360, heightPx: 360, scale: 1 })

  it("has its centre, its outline and most of its counts", () => {
    expectClose(published.centrePx[0], drawn.centrePx.x, 0.015 * drawn.sidePx, "1.5 % of its reach")
    expectClose(published.centrePx[1], drawn.centrePx.y, 0.015 * drawn.sidePx, "1.5 % of its reach")
    expect(published.outline.kind).toBe("round")
    const found = new Set(published.rings.flatMap(({ repeats, strands }) => [repeats, strands]))
    const right = drawn.rounds.filter(({ count }) => found.has(count)).length
    expect(right).toBeGreaterThanOrEqual(drawn.rounds.length - 1)
  })

  it("is the same to the last bit when measured again", () => {
    expect(publish(drawn.picture)).toEqual(published)
  })

  it("has the same counts light on dark and dark on light", () => {
    const inverted = { ...drawn.picture, values: drawn.picture.values.map((v) => 1 - v) }
    const other = publish(inverted)
    expect(other.lightOnDark).toBe(!published.lightOnDark)
    expect(countsOf(inverted)).toEqual(countsOf(drawn.picture))
  })

  it("has the same counts turned by a quarter", () => {
    const { width, values } = drawn.picture
    const turned = {
      ...drawn.picture,
      values: values.map(
        (_, i) => values[(i % width) * width + (width - 1 - Math.floor(i / width))]!,
      ),
    }
    const there = publish(turned)
    expectClose(there.centrePx[1], 359 - published.centrePx[0], 2, "x becomes y, from below")
    const main = (counts: number[]) => [...new Set(counts)].sort((a, b) => a - b).join(" ")
    expect(main(countsOf(turned))).toBe(main(countsOf(drawn.picture)))
  })

  it("takes what is set by hand: centre, counts, view", () => {
    const centred = measurePicture(drawn.picture, { centre: drawn.centrePx, asItIs: true })
    expectClose(centred.centreGiven.x, drawn.centrePx.x, 1e-9, "set by hand")
    const counted = publishMeasurement(measured, {
      widthPx: 360,
      heightPx: 360,
      scale: 1,
      counts: new Map([[2, { repeats: 7 }]]),
    })
    expect(counted.rings[1]).toMatchObject({ repeats: 7, sureness: 1, by: "hand", nextBest: null })
    expect(() =>
      publishMeasurement(measured, {
        widthPx: 360,
        heightPx: 360,
        scale: 1,
        counts: new Map([[99, { repeats: 7 }]]),
      }),
    ).toThrow(/no ring 99/)
  })

  it("is in millimetres when one length is known", () => {
    const known = publishMeasurement(measured, {
      widthPx: 360,
      heightPx: 360,
      scale: 1,
      known: { of: "across", mm: 120 },
    })
    expectClose(known.mmPerPx! * known.outline.sideReachPx, 60, 1e-9, "half of what is across")
    expect(() =>
      publishMeasurement(measured, {
        widthPx: 360,
        heightPx: 360,
        scale: 1,
        known: { of: "side", mm: 120 },
      }),
    ).toThrow(/round/)
  })

  it("has as many ticks as were counted, in order, and a strip as wide as its rows", () => {
    for (const ring of measured.rings) {
      const count = ring.strands ?? 0
      const ticks = ticksOf(measured, ring, count)
      expect(ticks).toHaveLength(count)
      for (let i = 1; i < ticks.length; i++) expect(ticks[i]!).toBeGreaterThan(ticks[i - 1]!)
    }
    const strip = stripOf(measured)
    expect(strip.height).toBe(measured.rows.length)
    expect(strip.values.every(Number.isFinite)).toBe(true)
  })
})

describe("four corners", () => {
  it("make a tilted view straight", () => {
    const tilted = drawMotif(11, { kinds: tunedKinds, tiltDeg: [28, 30], side: 360, squared: 0 })
    const straight = measurePicture(tilted.picture, { corners: tilted.framePx })
    expect(straight.view.by).toBe("corners")
    expectClose(straight.centreGiven.x, tilted.centrePx.x, 0.02 * tilted.sidePx, "2 % of its reach")
    expectClose(straight.centreGiven.y, tilted.centrePx.y, 0.02 * tilted.sidePx, "2 % of its reach")
    const counts = straight.rings.flatMap(({ repeats, strands }) => [repeats, strands])
    const right = tilted.rounds.filter(({ count }) => counts.includes(count)).length
    expect(right).toBeGreaterThanOrEqual(tilted.rounds.length - 1)
  })
})

describe("a piece seen at a tilt", () => {
  it("is made straight by its own regularity, without a click", () => {
    const tilted = drawMotif(11, { kinds: tunedKinds, tiltDeg: [24, 26], side: 360, squared: 0 })
    const straight = measurePicture(tilted.picture)
    expect(straight.view.by).toBe("regularity")
    // A square seen at 25 degrees is foreshortened to cos 25 degrees.
    expectClose(straight.view.regular!.foreshortening, 0.906, 0.04, "4 % of the view's stretch")
    expectClose(straight.centreGiven.x, tilted.centrePx.x, 0.03 * tilted.sidePx, "3 % of its reach")
    expectClose(straight.centreGiven.y, tilted.centrePx.y, 0.03 * tilted.sidePx, "3 % of its reach")
    const counts = straight.rings.flatMap(({ repeats, strands }) => [repeats, strands])
    const right = tilted.rounds.filter(({ count }) => counts.includes(count)).length
    expect(right).toBeGreaterThanOrEqual(tilted.rounds.length - 1)
  })
})

describe("pictures without a motif", () => {
  const of = (value: (x: number, y: number) => number): GreyPicture => ({
    width: 200,
    height: 160,
    values: Float32Array.from({ length: 32_000 }, (_, i) => value(i % 200, Math.floor(i / 200))),
  })

  it("are refused in words", () => {
    const random = seededRandom(3)
    for (const picture of [
      of(() => 0.5),
      of(() => random.uniform()),
      of((x, y) => (Math.hypot(x - 100, y - 80) < 50 ? 1 : 0)),
      of((x) => x / 200),
      of((x) => (x % 9 < 4 ? 1 : 0)),
    ])
      expect(() => measurePicture(picture)).toThrow(/Nothing in the picture|No ring/)
  })

  it("are refused when the box leaves nothing", () => {
    expect(() => cutOut(drawn.picture, { x: 1e6, y: 0, width: 100, height: 100 })).toThrow(/box/)
    expect(() =>
      measurePicture(drawn.picture, { box: { x: 0, y: 0, width: 3, height: 3 } }),
    ).toThrow(/box/)
  })
})
