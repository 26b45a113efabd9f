import { buildDisc } from "@roundwright/motif"
import { fitGauge } from "@roundwright/picture"
import { layOut } from "@roundwright/relaxation"
import { gaugeFrom, sizeOf } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectRelative } from "../../../test/support/close.ts"

const usual = gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 })
const disc = buildDisc({ basic: "dc" }, [12, 24, 36, 48, 60])
const dc = sizeOf({ basic: "dc" }, usual, { turned: false })

describe("the gauge of a real piece", () => {
  const hand = gaugeFrom({
    swatches: [
      {
        kind: { basic: "dc" },
        widthMm: 1.1 * dc.widthMm,
        heightMm: 1.16 * dc.heightMm,
        worked: "rounds",
      },
    ],
  })
  const truth = layOut(disc, hand, { inSpace: false }).acrossAfterRound
  const sizes = [1, 3, 5].map((round) => ({
    round,
    mm: truth[round - 1]!,
    across: "sides" as const,
  }))

  it("meets the sizes of a piece worked in another hand", () => {
    const fit = fitGauge(disc, usual, { sizes })
    fit.sizes.forEach(({ round, mm, errorMm }, i) => {
      expectRelative(mm, truth[i]!, 0.02, `size after round ${round}: measured ones weigh 1.5 %`)
      expect(errorMm).toBeGreaterThan(0)
    })
    for (const { standardErrors } of fit.residuals)
      expect(Math.abs(standardErrors)).toBeLessThan(1.5)
  })

  it("narrows with every measurement", () => {
    const errors = [1, 2, 3].map((count) => {
      const fit = fitGauge(disc, usual, { sizes: sizes.slice(0, count) })
      return fit.stitches[0]!.heightErrorMm
    })
    expect(errors[1]!).toBeLessThan(errors[0]!)
    expect(errors[2]!).toBeLessThan(errors[1]!)
  })

  it("takes swatches too, and says what to measure next", () => {
    const fit = fitGauge(disc, usual, {
      sizes: [sizes[2]!],
      swatches: [{ kind: { basic: "dc" }, widthMm: 1.1 * dc.widthMm, worked: "rounds" }],
    })
    expectRelative(fit.stitches[0]!.widthMm, 1.1 * dc.widthMm, 0.03, "a swatch weighs 3 %")
    const one = fitGauge(disc, usual, { sizes: [sizes[0]!] })
    expect(one.next?.narrowsTo).toBeLessThanOrEqual(0.9)
    expect(one.next?.what).toMatch(/round|swatch/)
  })

  it("refuses nothing at all, rounds that are not there, and sizes that are none", () => {
    expect(() => fitGauge(disc, usual, { sizes: [] })).toThrow(/Nothing/)
    expect(() =>
      fitGauge(disc, usual, { sizes: [{ round: 9, mm: 100, across: "sides" }] }),
    ).toThrow(/round 9/)
    expect(() =>
      fitGauge(disc, usual, { sizes: [{ round: 1, mm: Number.NaN, across: "sides" }] }),
    ).toThrow(/finite/)
  })
})
