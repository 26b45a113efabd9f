import {
  type Anchor,
  buildDisc,
  buildPolygon,
  type Element,
  findCorners,
  type Motif,
} from "@roundwright/motif"
import { gaugeFrom, kind } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose, expectRelative } from "../../../test/support/close.ts"
import {
  buildNet,
  layOut,
  measureSlack,
  netToJson,
  usualMaterial,
  wavesAlong,
} from "../src/index.ts"
import { chain, grannySquare, laceSquare, mirrored, round, stitch } from "./support/motifs.ts"

const dc = kind("dc")
const gauge = gaugeFrom({ swatches: [{ kind: dc, widthMm: 7, heightMm: 13 }] })
const multiples = (k: number, rounds: number) =>
  Array.from({ length: rounds }, (_, n) => k * (n + 1))

describe("laying out", () => {
  // 2 pi 13 / 7 = 11.7 dc a round are flat; 8 are a third too few, 18 half as many again.
  it.each([
    [8, "cups"],
    [11, "flat"],
    [12, "flat"],
    [18, "ruffles"],
  ] as const)("finds that %i dc a round: %s", (k, verdict) => {
    const shape = layOut(buildDisc(dc, multiples(k, 5)), gauge)
    expect(shape.verdict).toBe(verdict)
    expect(shape.fromRound === null).toBe(verdict === "flat")
    expect(shape.space!.how.settled).toBe(true)
  })

  it("gives the size after each round: even steps for an even disc", () => {
    const { acrossAfterRound } = layOut(buildDisc(dc, multiples(12, 6)), gauge, { inSpace: false })
    acrossAfterRound.forEach((across, k) => {
      expectRelative(
        across,
        26 * (k + 1),
        0.04,
        "12 instead of 11.7 dc: rounds are 2.6 % too long at most",
      )
    })
  })

  it("gives lengths in widths of one sc when the gauge knows no size", () => {
    const motif = buildPolygon(kind("sc"), 4, 5, 2, 3)
    const without = layOut(motif, gaugeFrom({ swatches: [] }), { inSpace: false })
    expect(without.mmPerUnit).toBeGreaterThan(1)
    expectRelative(
      without.outline.acrossMm,
      10,
      0.05,
      "five rounds of sc about as high as wide, both sides",
    )
  })

  it("a small granny square is flat and square", () => {
    const shape = layOut(grannySquare(4), gauge)
    expect(shape.verdict).toBe("flat")
    expect(shape.outline.corners).toBe(4)
    expectClose(shape.outline.cornerAngleDeg!, 90, 0.5, "symmetry")
    expectClose(shape.skewDeg!, 0, 0.1, "nothing leans when no skew is given")
  })

  it("lace becomes a square with straight sides", () => {
    const { outline } = layOut(laceSquare(8), gauge, { inSpace: false })
    expectRelative(
      outline.cornerReachMm / outline.sideReachMm,
      Math.SQRT2,
      0.03,
      "corners are loops of two chains",
    )
    expectClose(outline.bowMm, 0, 0.02 * outline.sideReachMm, "straight to the eye")
  })

  it("a granny hexagon of three is too full by its lengths alone, one of two is not", () => {
    const [two, three] = [2, 3].map((group) => {
      const motif = grannySquare(4, 6, group)
      return layOut(motif, gauge, { inSpace: false }).fullness
    })
    expect(three).toBeGreaterThan(1.2)
    expect(two).toBeLessThan(1.1)
  })
})

describe("the verdict", () => {
  const every = (motif: Motif, per: (top: Anchor) => Element[]): Element[] => {
    const round = motif.rounds.length - 1
    return motif.rounds[round]!.elements.flatMap((_, element) =>
      per({ at: "stitch", round, element }),
    )
  }

  it("lets an edge of shells stand in scallops, and holds three in every stitch to be too many", () => {
    const disc = buildDisc(dc, [12, 24, 36])
    const shells = every(disc, (top) => {
      const place = top.at === "stitch" ? top.element % 4 : 0
      if (place === 0) return [stitch(kind("sc"), top)]
      return place === 2 ? Array.from({ length: 5 }, () => stitch(dc, top)) : []
    })
    const crowded = every(disc, (top) => Array.from({ length: 3 }, () => stitch(dc, top)))
    const verdict = (elements: Element[]) => {
      const motif = { ...disc, rounds: [...disc.rounds, round(4, elements)] }
      return layOut(motif, gauge, { inSpace: false }).verdict
    }
    expect(verdict(shells)).toBe("flat")
    expect(verdict(crowded)).toBe("ruffles")
  })

  it("lets no edging of shells hide that what it is worked on ruffles", () => {
    for (const [perRound, verdict] of [
      [18, "ruffles"],
      [12, "flat"],
    ] as const) {
      const disc = buildDisc(dc, multiples(perRound, 4))
      const edging = every(disc, (top) => {
        const place = top.at === "stitch" ? top.element % 4 : 0
        if (place === 0) return [stitch(kind("sc"), top)]
        return place === 2 ? Array.from({ length: 5 }, () => stitch(dc, top)) : []
      })
      const motif = { ...disc, rounds: [...disc.rounds, round(5, edging)] }
      expect(layOut(motif, gauge, { inSpace: false }).verdict).toBe(verdict)
    }
  })

  it("lets a full round 2 work itself out by twelve rounds, not by three", () => {
    const counts = (rounds: number): number[] =>
      Array.from({ length: rounds }, (_, k) => (k === 1 ? 36 : 12 * (k + 1)))
    const [small, large] = [2, 12].map((rounds) =>
      layOut(buildDisc(dc, counts(rounds)), gauge, { inSpace: false }),
    )
    expect(small!.verdict).toBe("ruffles")
    expect(large!.verdict).toBe("flat")
    expect(large!.blockingRound).toBe(2)
    expect(large!.blockingStretch).toBeGreaterThan(large!.meanStretch)
  })
})

describe("skew", () => {
  it("is none where corners are set over the middles of the sides below on purpose", () => {
    const base = grannySquare(2)
    const below = base.rounds[1]!.elements
    const group = (element: number): Element[] =>
      Array.from({ length: 3 }, () => stitch(dc, { at: "space", round: 1, element }))
    // The groups of round 3 stand in the spaces of one chain, midway between the corners of round 2.
    const elements = below.flatMap((element, k) =>
      element.type === "chain" && element.chains === 1
        ? [...group(k), chain(3), ...group(k), chain(1)]
        : [],
    )
    const motif = { ...base, rounds: [...base.rounds, round(3, elements)] }
    expect(
      findCorners(motif)
        .map(({ count }) => count)
        .slice(1),
    ).toEqual([4, 4])
    expectClose(
      layOut(motif, gauge, { inSpace: false }).skewDeg!,
      0,
      3,
      "half a side would be 45 degrees",
    )
  })

  const leaning = (leanShare: number) => gaugeFrom({ ...gauge.input, leanShare })
  const flat = (motif: Motif, leanShare: number) =>
    layOut(motif, leaning(leanShare), { inSpace: false })

  it("turns the corners in the direction of work, and none when rounds are turned", () => {
    const motif = grannySquare(5)
    const skew = flat(motif, 0.2).skewDeg!
    expect(skew).toBeGreaterThan(1)
    expect(Math.abs(flat(turnedEachRound(motif), 0.2).skewDeg!)).toBeLessThan(skew / 5)
    expectClose(flat(motif, -0.2).skewDeg!, -skew, 1e-6, "a symmetric piece, mirrored")
  })

  it("needs a lean: none is the same net to the byte, and so is any where every round is turned", () => {
    const json = (motif: Motif, leanShare: number) =>
      netToJson(buildNet(motif, leaning(leanShare)), usualMaterial)
    const pieces = [buildDisc(dc, multiples(11, 4)), grannySquare(4), laceSquare(6)]
    for (const motif of pieces) {
      expect(json(motif, 0)).toBe(netToJson(buildNet(motif, gauge), usualMaterial))
      expect(json(motif, 0.1)).not.toBe(json(motif, 0))
      const turned = turnedEachRound(motif)
      expect(json(turned, 0.1)).toBe(json(turned, 0))
    }
  })

  it("of the mirrored piece leaning the other way is the mirrored one", () => {
    // Counts that differ from corner to corner: nothing of the piece itself is symmetric.
    const motif = grannySquare(4)
    const last = motif.rounds.at(-1)!
    const uneven = {
      ...motif,
      rounds: [...motif.rounds.slice(0, -1), { ...last, elements: [...last.elements, chain(2)] }],
    }
    const [one, other] = [flat(uneven, 0.1), flat(mirrored(uneven), -0.1)]
    expectClose(other.outline.acrossMm, one.outline.acrossMm, 1e-6, "the same piece from behind")
    expectClose(other.skewDeg!, -one.skewDeg!, 1e-6, "turned the other way")
  })

  it("leaves a disc as it is: each round turns on the one below", () => {
    // 12 dc increases a round lie nearly flat; increases are spread, so stitches lean to both sides already.
    const disc = buildDisc(dc, multiples(12, 6), { staggered: true })
    const [none, ...all] = [0, 0.05, 0.2, -0.2].map((share) => flat(disc, share))
    for (const shape of all) {
      expectRelative(
        shape.outline.acrossMm,
        none!.outline.acrossMm,
        1e-3,
        "rows keep their height, tops their width",
      )
      expectClose(
        shape.meanStretch,
        none!.meanStretch,
        2e-3,
        "nothing is stretched by it; legs that lean more and less than at ease cancel to the second order",
      )
    }
  })

  it("turns each round of a disc by the lean over its distance from the centre", () => {
    const disc = buildDisc(dc, multiples(12, 6))
    const [none, some] = [0, 0.1].map((share) => flat(disc, share))
    const turned = (round: number): number => {
      let [c, s] = [0, 0]
      for (const node of none!.net.edges[round]!.nodes) {
        const [a, b] = [none!, some!].map(({ flat: { xy } }) =>
          Math.atan2(xy[2 * node + 1]!, xy[2 * node]!),
        )
        c += Math.cos(b! - a!)
        s += Math.sin(b! - a!)
      }
      return Math.atan2(s, c)
    }
    const radii = none!.acrossAfterRound.map((across) => across / 2)
    const [low, high] = [radii[4]!, radii[5]!]
    expectRelative(
      turned(5) - turned(4),
      (0.1 * 7) / Math.sqrt(low * high),
      0.05,
      "0.7 mm along a circle between both rounds; yarn gives by 3.5 %",
    )
  })

  it("of a square lies between what its sides and what its corners ask for", () => {
    // A shift d along every row is a turn of d / r by the distance r of a side, and of d / (r sqrt 2) by that of its tips.
    const share = 0.02
    const sc = gaugeFrom({
      swatches: [{ kind: kind("sc"), widthMm: 6, heightMm: 6 }],
      leanShare: share,
    })
    const motif = buildPolygon(kind("sc"), 4, 6, 2, 3)
    const { skewDeg, acrossAfterRound } = layOut(motif, sc, { inSpace: false })
    const first = findCorners(motif).findIndex(({ groups }) => groups.length === 4)
    const turn = acrossAfterRound
      .slice(first + 1)
      .reduce(
        (sum, across, k) =>
          sum + (share * 6) / (Math.sqrt(across * acrossAfterRound[first + k]!) / 2),
        0,
      )
    const bySides = (turn * 180) / Math.PI
    expect(skewDeg!).toBeGreaterThan(bySides / Math.SQRT2)
    expect(skewDeg!).toBeLessThan(bySides)
  })
})

describe("slack", () => {
  it("is what a loop has beyond the way between its ends", () => {
    // Three dc a third of a turn apart, joined by loops of 12 chains: far longer than their chords.
    const elements = [0, 1, 2].flatMap(() => [stitch(dc, { at: "centre" }), chain(12)])
    const motif = { centre: { kind: "adjustable-ring" }, rounds: [round(1, elements)] } as const
    const shape = layOut(motif, gauge, { inSpace: false })
    expect(shape.slack.length).toBe(3)
    for (const { slack } of shape.slack) expect(slack).toBeGreaterThan(1)
  })

  it("is zero of chains that lie straight", () => {
    const net = buildNet(buildDisc(dc, [12]), gauge)
    expect(measureSlack(net, net.start, 2)).toEqual([])
  })
})

describe("waves", () => {
  it("are counted on a known wave, tilt or not", () => {
    const net = buildNet(buildDisc(dc, multiples(12, 3)), gauge)
    const xyz = new Float64Array(3 * net.nodes.length)
    for (const m of [2, 3, 5]) {
      net.nodes.forEach((_, k) => {
        const [x, y] = [net.start[2 * k]!, net.start[2 * k + 1]!]
        xyz.set([x, y, 4 * Math.cos(m * Math.atan2(y, x) + 0.3) + 0.3 * x], 3 * k)
      })
      expect(wavesAlong(net, xyz, 2)).toBe(m)
    }
  })
})

describe("the net as JSON", () => {
  it("holds every term with its numbers", () => {
    const net = buildNet(grannySquare(2), gauge)
    const read = JSON.parse(netToJson(net, usualMaterial))
    expect(read.start.length).toBe(3 * net.nodes.length)
    expect(read.springs.length).toBe(net.springs.length)
    expect(read.hinges.length).toBe(net.hinges.length)
    expect(read.material.stiffness).toBe(usualMaterial.stiffness)
  })
})

describe("long stitches", () => {
  it("worked into a round further down do not draw the piece together", () => {
    const plain = buildDisc(dc, multiples(12, 5))
    const last = plain.rounds[4]!
    const elements = last.elements.map((element, k) =>
      k % 5 === 0
        ? stitch(dc, { at: "stitch", round: 2, element: Math.floor((k * 36) / 60) })
        : element,
    )
    const long = { ...plain, rounds: [...plain.rounds.slice(0, 4), { ...last, elements }] }
    const [a, b] = [plain, long].map(
      (motif) => layOut(motif, gauge, { inSpace: false }).outline.acrossMm,
    )
    expectRelative(
      b!,
      a!,
      0.05,
      "drawn in by dc 13 mm long it would lose a fifth; where no leg pulls, tops settle a little further out",
    )
  })
})

/** The same piece with the work turned before every round: each then meets the one below from its other end. */
function turnedEachRound(motif: Motif): Motif {
  const mirrored = motif.rounds.map(({ elements }) => {
    const n = elements.length
    const alike = (a: number, b: number): boolean =>
      JSON.stringify({ ...elements[a]!, anchors: 0 }) ===
      JSON.stringify({ ...elements[b]!, anchors: 0 })
    const axis = elements.findIndex((_, s) => elements.every((_, k) => alike(k, (s - k + n) % n)))
    return (k: number): number => (axis - k + n) % n
  })
  return {
    ...motif,
    rounds: motif.rounds.map((round, r) => ({
      ...round,
      turned: r > 0,
      elements: round.elements.map((element) =>
        element.type !== "stitch"
          ? element
          : {
              ...element,
              anchors: element.anchors.map((anchor) =>
                anchor.at === "centre"
                  ? anchor
                  : { ...anchor, element: mirrored[anchor.round]!(anchor.element) },
              ),
            },
      ),
    })),
  }
}
