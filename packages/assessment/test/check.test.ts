import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  checkPattern,
  cornersSeen,
  examinePattern,
  factsSentence,
  formatLength,
  formatPercent,
  inTerms,
  verdictSentence,
} from "../src/index.ts"

const disc = (perRound: number, rounds: number, headings = "") => {
  const lines = [`Rnd 1: ${perRound} dc in adjustable ring. (${perRound} dc)`]
  for (let i = 2; i <= rounds; i++) {
    const plain = i === 2 ? "" : `, dc in next ${i - 2} st`
    lines.push(`Rnd ${i}: *2 dc in next st${plain}; rep from * around. (${perRound * i} dc)`)
  }
  return `Terms: US\n${headings}\n${lines.join("\n")}\n`
}

const swatch = "Gauge: 1 dc = 7.3 mm wide, 14 mm high"

describe("the published result", () => {
  it("keeps its keys, present even when nothing could be read", () => {
    const keys = ["file", "motif", "terms", "gauge", "rounds", "laidOut", "remedies", "problems"]
    for (const text of [disc(12, 5, swatch), "", "nothing of the kind"])
      expect(Object.keys(checkPattern(text))).toEqual(expect.arrayContaining(keys))
  })

  it("keeps the keys of rounds, laid-out shape, remedies and problems", () => {
    const result = checkPattern(disc(18, 6, swatch).replace("(54 dc)", "(55 dc)"), { file: "x" })
    expect(result.file).toBe("x")
    expect(Object.keys(result.rounds[0]!)).toEqual([
      "round",
      "counted",
      "stated",
      "agrees",
      "edgeMm",
      "depthMm",
      "radiusMm",
      "growthMm",
      "flatGrowthMm",
      "fullness",
      "accumulatedFullness",
      "curvatureDeg",
      "verdict",
    ])
    expect(Object.keys(result.laidOut!)).toEqual(
      expect.arrayContaining(["verdict", "odds", "fromRound", "liftMm", "waves", "sideReachMm"]),
    )
    expect(Object.keys(result.remedies[0]!)).toEqual([
      "round",
      "change",
      "fullnessAfter",
      "verdictAfter",
    ])
    const problem = result.problems.find((candidate) => candidate.code === "stated-total-differs")!
    expect(problem).toMatchObject({ severity: "warning", round: 3, line: 5 })
    expect(result.rounds[2]).toMatchObject({ stated: 55, agrees: false })
  })

  it("survives being written and read as JSON without a value lost", () => {
    const result = checkPattern(disc(12, 6, swatch))
    expect(JSON.parse(JSON.stringify(result))).toEqual(result)
  })

  it("marks rounds that stand for their stated total, and the verdict tells how many", () => {
    const whole = checkPattern(disc(12, 5, swatch))
    expect(whole.rounds.every((round) => !("assumed" in round))).toBe(true)
    const damaged = disc(12, 5, swatch).replace(/Rnd 3: [^(]*/, "Rnd 3: frobble the zonk. ")
    const result = checkPattern(damaged)
    expect(result.rounds.map(({ assumed }) => assumed)).toEqual([
      undefined,
      undefined,
      true,
      undefined,
      undefined,
    ])
    expect(result.rounds.map(({ counted }) => counted?.stitches)).toEqual([12, 24, 36, 48, 60])
    expect(result.motif?.rounds).toBe(5)
    expect(verdictSentence(whole)).not.toContain("assumed")
    expect(verdictSentence(result)).toBe(
      verdictSentence(whole).replace(/\.$/, "; 1 of its 5 rounds is assumed."),
    )
    const two = checkPattern(damaged.replace(/Rnd 4: [^(]*/, "Rnd 4: frobble the zonk. "))
    expect(verdictSentence(two)).toContain("; 2 of its 5 rounds are assumed.")
  })
})

describe("exit status", () => {
  it.each([
    ["a flat disc", disc(12, 6, "Gauge: 1 dc = 7.3 mm wide, 14 mm high"), 0],
    ["a disc that ruffles", disc(20, 6, swatch), 1],
    ["a flat disc with a wrong total", disc(12, 6, swatch).replace("(36 dc)", "(35 dc)"), 1],
    [
      "a flat disc whose last round cannot be read",
      disc(12, 5, swatch).replace(/\*2 dc in next st, dc in next 3 st/, "*frobble"),
      1,
    ],
    ["no pattern", "Dear diary, today it rained.", 2],
    ["nothing", "", 2],
  ] as const)("%s", (_, text, status) => {
    expect(checkPattern(text).exitStatus).toBe(status)
  })
})

describe("gauge", () => {
  it("gives lengths in mm with a swatch", () => {
    const { rounds, laidOut } = checkPattern(disc(12, 6, swatch))
    expectClose(rounds[5]!.edgeMm!, 72 * 7.3, 1e-9, "72 stitches of the swatch's width")
    expectClose(rounds[5]!.radiusMm!, 6 * 14, 1e-9, "six rounds of the swatch's height")
    expectClose(laidOut!.acrossMm!, 2 * 6 * 14, 1e-9, "twice the radius")
  })

  it("gives no mm when nothing is known, and says so", () => {
    const result = checkPattern(disc(12, 4))
    expect(result.gauge.absolute).toBe(false)
    expect(result.rounds.every((round) => round.edgeMm === null)).toBe(true)
    expect(result.rounds.every((round) => round.fullness !== null)).toBe(true)
    expect(result.gauge.notes.join(" ")).toMatch(/not mm/)
  })

  it("tells a gauge that cannot be as a problem instead of using it", () => {
    const result = checkPattern(disc(12, 4, "Gauge: 1 dc = 7.3 mm wide, 70 mm high"))
    const [problem] = result.problems.filter((candidate) => candidate.severity !== "note")
    expect(problem).toMatchObject({ line: 2, round: null })
    expect(result.gauge.absolute).toBe(false)
    expect(result.exitStatus).toBe(1)
  })
})

describe("the shape as the ledger tells it", () => {
  it("lifts a cone by its slant's cosine, the give of the fabric taken off", () => {
    // Cone of k stitches a round: rise = slant * sqrt(1 - (k / k flat)^2); geometry, own derivation.
    const { laidOut, ledger } = checkPattern(disc(8, 6, swatch))
    const slope = ledger[3]!.fullness + 0.07
    const lift = 6 * 14 * Math.sqrt(1 - slope * slope)
    expect(laidOut!.by).toBe("ledger")
    expectClose(laidOut!.liftMm!, lift, 1e-6, "the same closed form by hand")
  })

  it("has no lift for a flat piece and none to tell for a ruffled one", () => {
    expect(checkPattern(disc(12, 6, swatch)).laidOut!.liftMm).toBe(0)
    expect(checkPattern(disc(20, 6, swatch)).laidOut!.liftMm).toBeNull()
  })
})

describe("terms", () => {
  it("gives the same piece in UK terms when they are declared", () => {
    const us = examinePattern(disc(12, 5, swatch))
    const uk = examinePattern(
      disc(12, 5, swatch)
        .replace("Terms: US", "Terms: UK")
        .replace(/\bdc\b/g, "tr"),
    )
    expect(uk.result.rounds).toEqual(us.result.rounds)
    expect(uk.result.terms).toBe("UK")
  })
})

describe("words", () => {
  it("say the verdict as a sentence", () => {
    expect(verdictSentence(checkPattern(disc(12, 5, swatch)))).toBe("Lies flat.")
    expect(verdictSentence(checkPattern(disc(20, 5, swatch)))).toBe("Ruffles from round 1.")
    expect(verdictSentence(checkPattern(""))).toBe("No verdict: no round could be read.")
  })

  it("say of a piece that stands up that it is measured pressed flat, and of no other", () => {
    for (const shape of ["ledger", "net"] as const) {
      expect(factsSentence(checkPattern(disc(12, 5, swatch), { shape }))).not.toMatch(/pressed/)
      for (const [perRound, verdict] of [
        [8, "cups"],
        [20, "ruffles"],
      ] as const) {
        const result = checkPattern(disc(perRound, 6, swatch), { shape })
        expect(result.laidOut!.verdict).toBe(verdict)
        expect(factsSentence(result)).toMatch(/cm across, pressed flat; US terms\.$/)
      }
    }
    // Without a size there is nothing to press flat.
    expect(factsSentence(checkPattern(disc(20, 5)))).toBe("Untitled: 5 rounds; US terms.")
  })

  it("tell the sizes of stitches in the pattern's own terms", () => {
    const notes = (text: string) => checkPattern(text).gauge.notes.join(" ")
    const us = disc(12, 4, "Yarn: DK")
    const uk = us.replace("Terms: US", "Terms: UK").replace(/\bdc\b/g, "tr")
    expect(notes(us)).toMatch(/one sc is taken 5\.5 mm wide.*16 sc x 18 rows/)
    expect(notes(uk)).toMatch(/one dc is taken 5\.5 mm wide.*16 dc x 18 rows/)
    expect(notes(`${uk}\nGauge: 14 tr = 10 cm\n`)).toMatch(/the swatch of tr\b/)
    expect(inTerms("FPdc, dc3tog and BLO sc; scant, dcx", "UK")).toBe(
      "FPtr, tr3tog and BLO dc; scant, dcx",
    )
    expect(inTerms("hdc, dc and tr", "US")).toBe("hdc, dc and tr")
  })

  it("give sensible digits", () => {
    expect([formatLength(7.26), formatLength(127.6), formatPercent(0.183)]).toEqual([
      "7 mm",
      "12.8 cm",
      "18 %",
    ])
  })
})

describe("corners", () => {
  it("of regular polygons are seen up to eight, those of rounder outlines are not", () => {
    // The reach of a regular polygon's corner over that of its side: 1 / cos(pi / k).
    const polygon = (corners: number, sharpness = 1) => ({
      corners,
      sideReachMm: 50,
      cornerReachMm: 50 * (1 + sharpness * (1 / Math.cos(Math.PI / corners) - 1)),
    })
    for (let k = 3; k <= 8; k++) expect(cornersSeen(polygon(k)), `${k} corners`).toBe(k)
    for (let k = 9; k <= 24; k++) expect(cornersSeen(polygon(k)), `${k} corners`).toBe(0)
    for (const k of [4, 6, 8]) expect(cornersSeen(polygon(k, 0))).toBe(0)
    // Scallops that lie inside of the middles between them.
    expect(cornersSeen({ corners: 12, sideReachMm: 42, cornerReachMm: 40 })).toBe(0)
    // A star shows as many points as it has.
    expect(cornersSeen({ corners: 16, sideReachMm: 40, cornerReachMm: 50 })).toBe(16)
  })

  it("that a short edge rounds are told by the growth of rounds as they are counted, and why", () => {
    const each = (before: number) => `*sc in next ${before} sts, 3 sc in next st`
    const lean = `Terms: US
Gauge: 1 sc = 6 mm wide, 7.5 mm high

Rnd 1: 8 sc in magic ring. (8 sc)
Rnd 2: ${each(1)}; rep from * around. (16 sc)
Rnd 3: sc in next st, ${each(3)}; rep from * 2 more times, sc in next 2 sts, 3 sc in next st. (24 sc)
`
    const { laidOut, motif, notes } = checkPattern(lean)
    expect(motif!.corners).toBe(4)
    expect(laidOut!.corners).toBe(4)
    expect(notes.join(" ")).toMatch(/too short for sharp corners .* to a square\)/)
  })

  it("are told of a square, and not of a doily with twelve scallops", () => {
    const doily = `Terms: US
Yarn: size 10 crochet cotton
Hook: 1.5 mm

Rnd 1: Ch 8, join with sl st to form a ring, ch 3, 23 dc in ring, join to top of ch-3. (24 dc)
Rnd 2: Ch 5 (counts as dc, ch 2), skip next dc, *dc in next dc, ch 2, skip next dc; rep from * around, join to 3rd ch of beg ch-5.
Rnd 3: Sl st in first ch-2 sp, ch 3, 2 dc in same sp, ch 3, *3 dc in next ch-2 sp, ch 3; rep from * around, join.
Rnd 4: Ch 1, sc in same st, ch 5, skip 2 dc, *sc in next ch-3 sp, ch 5; rep from * around, join.
`
    const square = `Terms: US
Yarn: worsted
Hook: 5 mm

Rnd 1: *3 dc, ch 2; rep from * 3 more times in magic ring; join.
Rnd 2: *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * around; join.
Rnd 3: *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * around; join.
`
    for (const shape of ["ledger", "net"] as const) {
      const round = checkPattern(doily, { shape })
      expect(round.laidOut!.corners, shape).toBe(0)
      expect(factsSentence(round)).not.toMatch(/corner/)
      const cornered = checkPattern(square, { shape })
      expect(cornered.laidOut!.corners, shape).toBe(4)
      expect(factsSentence(cornered)).toMatch(/4 corners, about .* across, .* corner to corner/)
    }
  })
})
