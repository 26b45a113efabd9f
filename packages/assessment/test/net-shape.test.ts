import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { examinePattern, verdictSentence } from "../src/index.ts"

const disc = (perRound: number, rounds: number) => {
  const lines = [`Rnd 1: ${perRound} dc in adjustable ring. (${perRound} dc)`]
  for (let i = 2; i <= rounds; i++) {
    const plain = i === 2 ? "" : `, dc in next ${i - 2} st`
    lines.push(`Rnd ${i}: *2 dc in next st${plain}; rep from * around. (${perRound * i} dc)`)
  }
  return `Terms: US\nGauge: 1 dc = 7 mm wide, 13 mm high\n\n${lines.join("\n")}\n`
}

const laidOutOf = (text: string, shape: "net" | "ledger" = "net") =>
  examinePattern(text, { shape }).result.laidOut!

describe("the result with the shape laid out", () => {
  it("tells what the ledger cannot", () => {
    const laidOut = laidOutOf(disc(15, 5))
    expect(laidOut.by).toBe("net")
    expect(laidOut.verdict).toBe("ruffles")
    expect(laidOut.liftMm).toBeGreaterThan(10)
    expect(laidOut.waves).toBeGreaterThanOrEqual(1)
    expect(laidOut.blockingStretch).toBeGreaterThanOrEqual(laidOut.meanStretch!)
    expect(laidOut.blockingRound).toBeGreaterThan(1)
    expect(laidOut.settled).toBe(true)
    expect(laidOutOf(disc(15, 5), "ledger")).toMatchObject({ by: "ledger", slack: null })
  })

  it("tells the slack of each run of chains by round and place", () => {
    const { slack } = laidOutOf(
      "Terms: US\nHook: 4 mm\nYarn: DK\n\nRnd 1: 12 dc in magic ring. (12 dc)\n" +
        "Rnd 2: *dc in next st, ch 4; rep from * around. (12 dc, 12 ch-4 sps)\n",
    )
    expect(slack).toHaveLength(12)
    expect(slack!.map(({ element }) => element)).toEqual([
      2, 4, 6, 8, 10, 12, 14, 16, 18, 20, 22, 24,
    ])
    for (const one of slack!) {
      expect(one.round).toBe(2)
      expect(one.slack, "four chains between spokes hang slack").toBeGreaterThan(0.1)
    }
  })

  it("names the mean stretch where it says that a piece blocks flat", () => {
    const { result } = examinePattern(disc(14, 5), { shape: "net" })
    expect(result.laidOut!.verdict).toBe("blocks-flat")
    const percent = Math.round(100 * result.laidOut!.meanStretch!)
    expect(verdictSentence(result)).toContain(`a stretch of ${percent} %`)
  })

  it("stops a large ruffle after a bounded work, and says so, with the same bytes each time", () => {
    const text = disc(18, 15)
    const first = examinePattern(text, { shape: "net" }).result
    expect(first.laidOut).toMatchObject({ by: "net", verdict: "ruffles", settled: false })
    expect(first.notes.join(" ")).toContain("not come to rest")
    expect(JSON.stringify(examinePattern(text, { shape: "net" }).result)).toBe(
      JSON.stringify(first),
    )
  })

  it("presses a larger piece flat only, and leaves the largest to the ledger, saying so", () => {
    const flat = examinePattern(disc(12, 27), { shape: "net" }).result
    expect(flat.laidOut).toMatchObject({ by: "net", verdict: "flat", liftMm: 0, waves: 0 })
    const pressed = examinePattern(disc(16, 27), { shape: "net" }).result
    expect(pressed.laidOut).toMatchObject({ by: "net", verdict: "ruffles", liftMm: null })
    expect(pressed.notes.join(" ")).toContain("pressed flat")
    const largest = examinePattern(disc(12, 50), { shape: "net" }).result
    expect(largest.laidOut).toMatchObject({ by: "ledger", verdict: "flat" })
    expect(largest.notes.join(" ")).toContain("too large")
  })

  it("says of no row what the headline does not: the last has the verdict of the piece", () => {
    for (const perRound of [8, 10, 12, 14, 15, 18])
      for (const shape of ["net", "ledger"] as const) {
        const { result } = examinePattern(disc(perRound, 5), { shape })
        expect(result.rounds.at(-1)!.verdict).toBe(result.laidOut!.verdict)
        expect(result.ledger.at(-1)!.verdict).toBe(result.laidOut!.verdict)
      }
  })
})

describe("odds of the laid-out shape", () => {
  it("sum to 1 and lean to the verdict of the piece itself", () => {
    for (const perRound of [9, 10, 11, 12, 13, 14, 15, 16]) {
      const { odds, verdict } = laidOutOf(disc(perRound, 4))
      const { flat, blocksFlat, cups, ruffles } = odds
      expectClose(flat + blocksFlat + cups + ruffles, 1, 1e-12, "rounding")
      const own = { flat, "blocks-flat": blocksFlat, cups, ruffles }[verdict]
      const called = verdict === "blocks-flat" ? own + flat : own
      expect(called, `${perRound} dc: ${verdict} ${JSON.stringify(odds)}`).toBeGreaterThan(0.4)
      expect(Math.min(cups, ruffles), "no hand spreads from a cup to a ruffle").toBeLessThan(0.15)
    }
  })

  it("shift from cups to ruffles as a round gets more stitches", () => {
    const chances = [9, 11, 13, 15].map((perRound) => laidOutOf(disc(perRound, 4)).odds)
    for (let k = 1; k < chances.length; k++) {
      expect(chances[k]!.ruffles).toBeGreaterThanOrEqual(chances[k - 1]!.ruffles)
      expect(chances[k]!.cups).toBeLessThanOrEqual(chances[k - 1]!.cups)
    }
  })
})
