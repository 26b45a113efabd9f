import { keepLedger } from "@roundwright/flatness"
import { findCorners } from "@roundwright/motif"
import { cornerNodes, usualMaterial } from "@roundwright/relaxation"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { grannySquare } from "../../relaxation/test/support/motifs.ts"
import {
  asksForShape,
  type ChartSpec,
  chartByName,
  heightsByRound,
  type LaidOutPiece,
  laidOutReachChart,
  outlineChart,
  profileChart,
  stitchDiagram,
  strainByRound,
  strainChart,
  strainGreys,
} from "../src/index.ts"
import { codeOf, disc, gauge, laidOut, moved, type Piece, sampler, square } from "./shapes.ts"

const title = (spec: ChartSpec) => (spec.title.text as string[]).join(" ").replaceAll("\u00a0", " ")
const domain = (spec: ChartSpec, layer: number, axis: "x" | "y") =>
  (spec.layer[layer]!.encoding![axis] as { scale: { domain: [number, number] } }).scale.domain
const span = ([from, to]: [number, number]) => to - from
/** The shades of a stitch diagram, light to dark, and how many patches each has. */
const shadesOf = (spec: ChartSpec) => {
  const { data, encoding } = spec.layer[0]!
  const { scale } = encoding!.shape as { scale: Record<"domain" | "range", string[]> }
  return data!.values.map(({ symbol, opacity }) => ({
    opacity: Number(opacity),
    patches: scale.range[scale.domain.indexOf(String(symbol))]!.split("M").length - 1,
  }))
}
const flat = laidOut(disc(12, 4), true)
const cup = laidOut(disc(8, 4), true)
const ruffle = laidOut(disc(18, 4), true)
const squared = laidOut(square(), true)

describe("the stitch diagram", () => {
  const draw = (piece: Piece, widthPx = 640) => stitchDiagram(piece.motif, piece.shape, { widthPx })

  it("says what is strained most", () => {
    expect(title(draw(flat))).toBe("Pressed flat, no stitch is strained beyond what yarn gives")
    expect(title(draw(cup))).toMatch(/^Pressed flat, round 1 is strained most: posts squeezed by/)
    expect(title(draw(ruffle))).toMatch(/^Pressed flat, round 1 is strained most: posts stretched/)
  })

  it("names single stitches where rounds are at ease on average", () => {
    // One top of the last round slides by 3 mm along the edge: as much as one side is drawn out the other is pushed together.
    const { net, flat: plane } = flat.shape
    const node = net.edges.at(-1)!.nodes[5]!
    const xy = Float64Array.from(plane.xy)
    const [x, y] = [xy[2 * node]!, xy[2 * node + 1]!]
    xy[2 * node] = x - (3 * y) / Math.hypot(x, y)
    xy[2 * node + 1] = y + (3 * x) / Math.hypot(x, y)
    const slid = moved(flat, xy)
    expect(title(draw(slid))).toMatch(
      /^Pressed flat, every round is at ease on average, single stitches are strained by up to \d\d %$/,
    )
    expect(title(strainChart(slid.motif, slid.shape))).toBe(title(draw(slid)))
  })

  it("draws every stitch and join once, at the middle of its post and as long as it", () => {
    const spec = draw(flat)
    const rows = spec.data.values
    expect(rows.filter((row) => row.symbol === "dc")).toHaveLength(12 + 24 + 36 + 48)
    const joins = spec.layer[2]!.data!.values
    expect(joins.filter((row) => row.symbol === "sl st")).toHaveLength(4)
    const pxPerMm = spec.width / span(domain(spec, 1, "x"))
    for (const row of rows.filter(({ symbol }) => symbol === "dc").slice(0, 12)) {
      const away = Math.hypot(Number(row.x), Number(row.y))
      const long = Math.sqrt(Number(row.size)) / pxPerMm
      expectClose(long, 2 * away, 0.3, "round 1 starts at the centre; lengths to a quarter px")
    }
  })

  it("draws starting chains, gathered and joined legs, picots and the way of turned rounds", () => {
    const spec = draw(laidOut(sampler()))
    const count = (symbol: string) => spec.data.values.filter((row) => row.symbol === symbol).length
    expect(count("chain"), "3 of the start, 2 of the space, 6 of the ring").toBe(11)
    expect(count("leg sc")).toBe(2)
    expect(count("closing sc")).toBe(1)
    expect(count("picot")).toBe(1)
    expect(count("dc, front post")).toBe(1)
    expect(count("popcorn 6 dc")).toBe(1)
    const arrows = spec.layer[2]!.data!.values.filter((row) => row.symbol === "turned")
    expect(arrows).toHaveLength(2)
    const [out, back] = arrows.map((row) => Number(row.angle))
    const turn = Math.abs(((out! - back! + 540) % 360) - 180)
    expect(turn, "round 2 runs against round 1").toBeGreaterThan(120)
    expect(spec.description).toContain("Round 2, turned:")
    expect(JSON.stringify(draw(flat))).not.toContain("way of work")
  })

  it("names the stitches of its legend in the terms asked for", () => {
    const names = (terms: "US" | "UK") =>
      JSON.stringify(stitchDiagram(flat.motif, flat.shape, { terms }).layer)
    expect(names("US")).toContain('"text":"dc"')
    expect(names("UK")).toContain('"text":"tr"')
  })

  it("has one scale for both axes", () => {
    for (const piece of [flat, squared, laidOut(sampler())]) {
      const spec = draw(piece, 400)
      const [x, y] = [domain(spec, 1, "x"), domain(spec, 1, "y")]
      expectClose((span(x) / spec.width) * (spec.height / span(y)), 1, 1e-9, "doubles")
    }
  })

  it("stands a polygon on its side, however the net lies", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 7, noNaN: true }),
        fc.double({ min: -1e3, max: 1e3, noNaN: true }),
        (turn, shift) => {
          const turned = moved(squared, turnedBy(squared.shape.flat.xy, turn, shift))
          const spec = outlineChart(turned.motif, turned.shape)
          const reach = spec.data.values.map(({ x, y }) => Math.hypot(Number(x), Number(y)))
          const corner = spec.data.values[reach.indexOf(Math.max(...reach))]!
          const angle = (Math.atan2(Number(corner.y), Number(corner.x)) * 180) / Math.PI
          const off = ((angle % 90) + 90) % 90
          expectClose(off, 45, 3, "the farthest of four corners, one stitch being 4 degrees wide")
        },
      ),
      { seed: 21, numRuns: 30 },
    )
  })

  it.each([640, 328])("numbers twelve rounds legibly at %i px", (widthPx) => {
    const piece = laidOut(disc(12, 12))
    const spec = draw(piece, widthPx)
    expect(spec.data.values.length).toBeGreaterThan(900)
    const layer = spec.layer.find(({ mark }) => mark.fontWeight === 700)!
    const numbers = layer.data!.values
    expect(numbers.at(-1)!.number).toBe("12")
    expect(numbers.length).toBeGreaterThanOrEqual(6)
    expect(Number(layer.mark.fontSize)).toBeGreaterThanOrEqual(8.5)
    const pxPerMm = spec.width / span(domain(spec, 1, "x"))
    numbers.forEach((a, k) => {
      for (const b of numbers.slice(k + 1)) {
        const apart = [Number(a.x) - Number(b.x), Number(a.y) - Number(b.y)].map(
          (d) => Math.abs(d) * pxPerMm,
        )
        expect(Math.max(apart[0]! / 5, apart[1]! / 6.5)).toBeGreaterThan(1)
      }
    })
  })

  it("shades what is strained beyond the give, and nothing else", () => {
    const shades = (piece: Piece) => shadesOf(draw(piece))
    expect(Math.max(0, ...shades(flat).map(({ patches }) => patches))).toBeLessThan(30)
    const ofCup = shades(cup)
    expect(ofCup[0]!.patches).toBeGreaterThan(60)
    // Whatever is strained beyond a bound is strained beyond every lower one.
    const counts = ofCup.map(({ patches }) => patches)
    expect(counts).toEqual([...counts].sort((a, b) => b - a))
  })

  it("lays shades over one another to the greys of the legend", () => {
    let light = 1
    shadesOf(draw(cup)).forEach(({ opacity }, k) => {
      light *= 1 - opacity
      expectClose(1 - light, strainGreys[k]!.opacity, 1e-3, "opacities are given to four digits")
    })
    expect(shadesOf(draw(cup))).toHaveLength(strainGreys.length)
  })
})

describe("the profile", () => {
  it("says how the piece lies on the table", () => {
    const say = ({ motif, shape }: Piece) => title(profileChart(motif, shape))
    expect(say(flat)).toMatch(/^On the table it (lies flat|rises 0\.\d mm at most)$/)
    expect(say(cup)).toMatch(/^On the table it cups, [\d.]+ mm high$/)
    expect(say(ruffle)).toMatch(/^On the table its edge makes \d waves? and rises [\d.]+ mm$/)
  })

  it("measures a cone as the cone it is", () => {
    const { shape, motif } = flat
    const xyz = new Float64Array(3 * shape.net.nodes.length)
    shape.net.nodes.forEach(({ round, element }, node) => {
      const [r, angle] = [3 * (round + 1), element * 0.7]
      // 45 degrees, apex up, one unit above an arbitrary table.
      xyz.set([r * Math.cos(angle) + 5, r * Math.sin(angle) - 2, 13 - r], 3 * node)
    })
    const centre = shape.net.centre[0]!
    xyz.set([5, -2, 13], 3 * centre)
    const heights = heightsByRound(motif, moved(flat, shape.flat.xy, xyz).shape)
    heights.forEach(({ distance, mean, lowest, highest }, k) => {
      for (const [value, wanted] of [
        [distance, 3 * k],
        [mean, 12 - 3 * k],
        [lowest, 12 - 3 * k],
        [highest, 12 - 3 * k],
      ] as const)
        expectClose(value, wanted, 1e-9, "sums of doubles")
    })
  })

  it("draws heights a whole number of times as tall as they are, and says so", () => {
    for (const piece of [flat, cup, ruffle, squared])
      for (const widthPx of [240, 328, 640]) {
        const spec = profileChart(piece.motif, piece.shape, { widthPx })
        const stretch =
          (spec.height / span(domain(spec, 0, "y"))) * (span(domain(spec, 0, "x")) / spec.width)
        const key = (spec.title.subtitle as string[]).join(" ")
        const said = /drawn (\d+) times/.exec(key)?.[1] ?? (/to scale/.test(key) ? "1" : "none")
        expectClose(stretch, Number(said), 1e-6, "quotients of doubles")
        const top = Math.max(...spec.data.values.map(({ highest }) => Number(highest)))
        expect(top).toBeLessThanOrEqual(domain(spec, 0, "y")[1])
      }
  })

  it("needs the shape in space, but of a piece that lies flat", () => {
    const full = laidOut(disc(18, 3))
    expect(codeOf(() => profileChart(full.motif, full.shape))).toBe("needs-shape")
    const even = laidOut(disc(12, 2))
    for (const { highest } of heightsByRound(even.motif, even.shape))
      expectClose(highest, 0, 0, "it lies on the table")
    expect(JSON.stringify(profileChart(even.motif, even.shape).title)).toContain("lies flat")
  })
})

describe("numbers of rounds", () => {
  it("stand apart in a profile, the last of them always there", () => {
    const many = laidOut(disc(12, 16), true)
    const spec = profileChart(many.motif, many.shape, { widthPx: 328 })
    const told = spec.data.values.filter(({ label }) => label !== "")
    expect(told.at(-1)!.label).toBe("16")
    const axis = spec.layer[1]!.encoding!.x as { scale: { domain: [number, number] } }
    const px = spec.width / axis.scale.domain[1]
    told.slice(1).forEach((value, k) => {
      const apart = px * (Number(value.distance) - Number(told[k]!.distance))
      expect(apart).toBeGreaterThan(7 * String(value.label).length)
    })
  })
})

describe("the outline", () => {
  const granny = laidOut(grannySquare(4))

  it("says whether sides are straight", () => {
    const say = ({ motif, shape }: Piece) => title(outlineChart(motif, shape))
    expect(say(flat)).toMatch(/^The edge is round, [\d.]+ mm across$/)
    expect(say(squared)).toMatch(/^The outline has 4 corners and /)
    const bow = (bowMm: number) => {
      const outline = { ...granny.shape.outline, bowMm }
      return say({ ...granny, shape: { ...granny.shape, outline } })
    }
    expect(bow(0.1)).toBe("The outline has 4 corners and straight sides")
    expect(bow(3)).toBe("The outline has 4 corners and sides that bow outwards by 3.0 mm")
    expect(bow(-3)).toBe("The outline has 4 corners and sides that bow inwards by 3.0 mm")
  })

  it("is round where no corner stands out, however many are counted", () => {
    const outline = { ...granny.shape.outline, corners: 12, bowMm: -1.3 }
    const sideReachMm = outline.cornerReachMm / 1.05
    const doily = { ...granny.shape, outline: { ...outline, sideReachMm } }
    const spec = outlineChart(granny.motif, doily)
    expect(title(spec)).toMatch(/^The edge is round, /)
    expect(JSON.stringify(spec)).not.toMatch(/corners|bow /)
    const star = { ...granny.shape, outline: { ...outline, sideReachMm: sideReachMm / 1.1 } }
    expect(title(outlineChart(granny.motif, star))).toMatch(/^The outline has 12 corners/)
  })

  it("lays a polygon behind it whose corners are as far out on average", () => {
    const { motif, shape } = granny
    const behind = outlineChart(motif, shape).layer[0]!.data!.values
    expect(behind).toHaveLength(5)
    for (const { x, y } of behind)
      expectClose(Math.hypot(Number(x), Number(y)), shape.outline.cornerReachMm, 1e-9, "doubles")
    // A square on its side: two corners at the height of each other.
    expectClose(Number(behind[0]!.y) ** 2, Number(behind[1]!.y) ** 2, 1e-6, "turned by their mean")
  })

  it("marks the corners the measures are taken at, and has one scale for both axes", () => {
    const { motif, shape } = granny
    const spec = outlineChart(motif, shape, { widthPx: 500 })
    const marked = spec.layer.find(({ mark }) => mark.shape === "diamond")!.data!.values
    const last = shape.net.edges.length - 1
    const nodes = shape.net.edges[last]!.nodes
    const reach = nodes.map((node) =>
      Math.hypot(...[...shape.flat.xy.slice(2 * node, 2 * node + 2)]),
    )
    const wanted = cornerNodes(shape.net, last, findCorners(motif)[last]!, reach)
    expect(marked).toHaveLength(wanted.length)
    const mean = marked.reduce((sum, { x, y }) => sum + Math.hypot(Number(x), Number(y)) / 4, 0)
    expectClose(mean, shape.outline.cornerReachMm, 0.01, "mean of the same corners")
    expectClose(spec.height, spec.width, 1e-9, "square")
    expect(domain(spec, 0, "x")).toEqual(domain(spec, 0, "y"))
  })
})

describe("the reach by the shape", () => {
  const drawn = (piece: Piece) => laidOutReachChart(piece.motif, piece.shape).data.values

  it("ends where the outline has its sides and corners, and round edges at half of what they measure across", () => {
    const cornered = laidOut(square(5))
    const { sideReachMm, cornerReachMm } = cornered.shape.outline
    const last = drawn(cornered).at(-1)!
    expectClose(Number(last.side), sideReachMm, 1e-9, "the same measure, taken twice")
    expectClose(Number(last.corner), cornerReachMm, 1e-9, "the same measure, taken twice")
    const round = laidOut(disc(12, 4))
    drawn(round).forEach(({ side }, k) => {
      const half = round.shape.acrossAfterRound[k]! / 2
      expectClose(Number(side), half, 1e-9, "the same measure, taken twice")
    })
  })

  it("takes the place of the ledger's wherever there is a shape, and says which it is", () => {
    const { motif, shape } = laidOut(disc(12, 3))
    const ledger = [...keepLedger(motif, gauge).rows]
    const result = { ledger, gauge: { source: "swatch" as const, absolute: true, notes: [] } }
    const key = (piece?: LaidOutPiece) =>
      String(chartByName("reach", result, {}, piece).description)
    expect(key({ motif, shape })).toContain("As it lies flat")
    expect(key({ motif, shape: null })).toContain("By the growth of the rounds")
    expect(key()).toContain("By the growth of the rounds")
    expect(asksForShape("reach") && asksForShape("diagram") && !asksForShape("growth")).toBe(true)
  })
})

describe("strain by round", () => {
  it("is that of the springs: a shape drawn out to (1 + e) strains by e more", () => {
    const e = 0.2
    const wide = moved(
      squared,
      squared.shape.flat.xy.map((value) => (1 + e) * value),
    )
    const before = strainByRound(squared.motif, squared.shape)
    strainByRound(wide.motif, wide.shape).forEach(({ tops, posts }, k) => {
      expectClose(
        1 + tops,
        (1 + e) * (1 + before[k]!.tops),
        1e-9,
        "lengths are linear in the scale",
      )
      expectClose(
        1 + posts,
        (1 + e) * (1 + before[k]!.posts),
        1e-9,
        "lengths are linear in the scale",
      )
    })
  })

  it("shows too few stitches as tops stretched, too many as tops squeezed", () => {
    const last = (piece: Piece) => strainChart(piece.motif, piece.shape).data.values.at(-1)!
    expect(Number(last(cup).tops)).toBeGreaterThan(100 * usualMaterial.give)
    expect(Number(last(ruffle).tops)).toBeLessThan(0)
  })

  it("tells every round in words", () => {
    const { description } = strainChart(cup.motif, cup.shape)
    expect(description).toMatch(/round 4: tops stretched [\d.]+ %, posts squeezed [\d.]+ %/)
  })
})

function turnedBy(xy: Float64Array, turn: number, shift: number): Float64Array {
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  return xy.map((_, k) => {
    const [x, y] = [xy[k - (k % 2)]!, xy[k - (k % 2) + 1]!]
    return shift + (k % 2 === 0 ? c * x - s * y : s * x + c * y)
  })
}
