import { buildDisc } from "@roundwright/motif"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import {
  handsOf,
  judgePiece,
  keepLedger,
  oddsOf,
  openRange,
  ownFullness,
  rhythmBreaks,
  rhythmSentence,
  summarisePiece,
} from "../src/index.ts"

const none = gaugeFrom({ swatches: [] })
const dc = { basic: "dc" } as const

describe("a round out of the piece's rhythm", () => {
  const counts = [12, 24, 36, 48, 60, 72, 84, 96, 120, 132]

  it("is told with the count that is probably meant", () => {
    const [found, ...others] = rhythmBreaks(buildDisc(dc, counts))
    expect(others).toEqual([])
    expect(found).toEqual({ round: 9, adds: 24, usual: 12, probably: 108 })
    expect(rhythmSentence(found!)).toBe(
      "Round 9 adds 24, the others 12: probably 108 stitches are meant.",
    )
  })

  it("is none where all rounds grow alike, or too few to tell, or a round is worked even on purpose", () => {
    expect(rhythmBreaks(buildDisc(dc, [12, 24, 36, 48, 60]))).toEqual([])
    expect(rhythmBreaks(buildDisc(dc, [12, 24, 48]))).toEqual([])
    expect(rhythmBreaks(buildDisc(dc, [12, 24, 36, 48, 60, 60]))).toEqual([])
  })

  it("is told with another that follows it, counted from what was meant", () => {
    const found = rhythmBreaks(buildDisc(dc, [12, 24, 36, 48, 60, 72, 84, 96, 144, 216]))
    expect(found.map(({ round, probably }) => [round, probably])).toEqual([
      [9, 108],
      [10, 120],
    ])
  })

  it("is told even where the whole piece lies flat", () => {
    const motif = buildDisc(dc, [12, 24, 36, 48, 60, 72, 84, 96, 108, 126, 138])
    expect(keepLedger(motif, none).verdict).toBe("flat")
    expect(rhythmBreaks(motif).map(({ round }) => round)).toEqual([10])
  })
})

/** A hand of which nothing else is to be said. */
const hand = (spread: number) => ({ spread, unturned: 0 })

describe("odds", () => {
  it("sum to one, lean to the verdict and mirror the fullness they come from", () => {
    for (const fullness of [0.5, 0.8, 0.87, 0.95, 1, 1.05, 1.13, 1.2, 1.5]) {
      const { flat, blocksFlat, cups, ruffles } = oddsOf(fullness, hand(0.08))
      expectClose(flat + blocksFlat + cups + ruffles, 1, 1e-12, "rounding")
      expect(Math.min(flat, blocksFlat, cups, ruffles)).toBeGreaterThan(0)
      if (fullness < 1) expect(cups).toBeGreaterThan(ruffles - 0.03)
    }
    expect(oddsOf(1, hand(0.08)).flat).toBeGreaterThan(0.9)
    expect(oddsOf(1.5, hand(0.08)).ruffles).toBeGreaterThan(0.85)
    expect(oddsOf(0.5, hand(0.08)).cups).toBeGreaterThan(0.85)
  })

  it("know that some work sc in unturned rounds tighter: discs of 6 a round lie flat, and so may discs of 8", () => {
    const unturned = { spread: 0.1, unturned: 1 }
    const [six, eight] = [0.955, 1.273].map((fullness) => oddsOf(fullness, unturned))
    expect(six!.flat).toBeGreaterThan(0.6)
    expect(eight!.flat).toBeGreaterThan(oddsOf(1.273, hand(0.1)).flat + 0.1)
    for (const { flat, blocksFlat, cups, ruffles } of [six!, eight!])
      expectClose(flat + blocksFlat + cups + ruffles, 1, 1e-12, "rounding")
    const motif = (turned: boolean) => {
      const disc = buildDisc({ basic: "sc" }, [6, 12, 18])
      return { ...disc, rounds: disc.rounds.map((round) => ({ ...round, turned })) }
    }
    expect(handsOf(summarisePiece(motif(false), none)).unturned).toBe(1)
    expect(handsOf(summarisePiece(motif(true), none)).unturned).toBe(0)
    expect(handsOf(summarisePiece(buildDisc(dc, [12, 24]), none)).unturned).toBe(0)
  })

  it("are surer for a hand that is known", () => {
    expect(oddsOf(1.08, hand(0.03)).flat).toBeGreaterThan(oddsOf(1.08, hand(0.12)).flat)
  })
})

describe("what is told of a row", () => {
  it("is a figure where it means something", () => {
    const { rows } = keepLedger(buildDisc(dc, [12, 24, 36]), none)
    expectClose(ownFullness(rows[2]!)!, rows[2]!.fullness, 0, "the same figure")
    expect(openRange(rows[2]!)).toBeNull()
  })

  it("is no figure where a round draws in", () => {
    const { rows } = keepLedger(buildDisc(dc, [12, 36, 20]), none)
    expect(rows[2]!.fullness).toBeLessThan(0)
    expect(ownFullness(rows[2]!)).toBeNull()
  })
})

describe("the judge", () => {
  it("gives the last round the verdict of the piece", () => {
    for (const each of [8, 10, 12, 14, 16]) {
      const motif = buildDisc(
        dc,
        [1, 2, 3, 4, 5].map((k) => k * each),
      )
      const { rows, verdict, fullness } = keepLedger(motif, none)
      expect(rows.at(-1)!.verdict).toBe(verdict)
      expectClose(rows.at(-1)!.accumulatedFullness, fullness, 0, "one figure")
      const again = judgePiece(rows, summarisePiece(motif, none))
      expect(again.verdict).toBe(verdict)
    }
  })
})
