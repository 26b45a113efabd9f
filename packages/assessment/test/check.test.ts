import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  checkPattern,
  examinePattern,
  formatLength,
  formatPercent,
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

  it("give sensible digits", () => {
    expect([formatLength(7.26), formatLength(127.6), formatPercent(0.183)]).toEqual([
      "7 mm",
      "12.8 cm",
      "18 %",
    ])
  })
})
