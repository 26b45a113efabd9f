import { buildPolygon, type Motif } from "@roundwright/motif"
import { layOut, layOutBounded } from "@roundwright/relaxation"
import { findMends, squareCircle } from "@roundwright/shaping"
import { type Gauge, gaugeFrom, kind } from "@roundwright/stitches"
import fc from "fast-check"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"
import { laceSquare } from "../../relaxation/test/support/motifs.ts"
import {
  type Check,
  examinePattern,
  gaugeFromPieces,
  laidOutFromNet,
  layOutMotif,
} from "../src/index.ts"

const square = (heading: string, turn = "", rounds = 5) => `Terms: US
Yarn: DK
Hook: 4 mm
${heading}

Rnd 1: 8 sc in magic ring; join${turn}. (8 sc)
Rnd 2: *3 sc in next st, sc in next st; rep from * around; join${turn}. (16 sc)
${Array.from({ length: rounds - 2 }, (_, k) => {
  const before = k === 0 ? "sc in next st" : `sc in next ${k + 1} sts`
  return `Rnd ${k + 3}: *${before}, 3 sc in next st, sc in next ${k + 2} sts; rep from * around; join${turn}. (${8 * (k + 3)} sc)`
}).join("\n")}
`

/** A granny square of four rounds; the groups of its last corners are of so many dc before and after the chains. */
const granny = (heading: string, before = 3, after = 3) => `Terms: US
Yarn: worsted
Hook: 5 mm
${heading}

Ch 4, join with sl st to form a ring.
Rnd 1: *3 dc in ring, ch 2; rep from * 3 more times; join.
Rnd 2: *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 3 more times; join.
Rnd 3: *(3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1, 3 dc in next ch-1 sp, ch 1; rep from * 3 more times; join.
Rnd 4: *(${before} dc, ch 2, ${after} dc) in next ch-2 sp, ch 1, (3 dc in next ch-1 sp, ch 1) twice; rep from * 3 more times; join.
`

const examine = (text: string): Check => examinePattern(text, { shape: "net" })
const check = (heading: string, turn = "") => examine(square(heading, turn)).result
const without = ({ input }: Gauge): Gauge => {
  const { leanShare: _, skewDeg: __, ...rest } = input
  return gaugeFrom(rest)
}

describe("a skew told in a heading", () => {
  it.each([7, -5])("of %d degrees is the skew of the laid-out shape", (degrees) => {
    const result = check(`Skew: ${degrees} degrees`)
    expectClose(result.laidOut!.skewDeg!, degrees, 0.05, "found to 0.05 degrees")
    const notes = result.notes.join(" ")
    expect(notes).toContain(
      degrees > 0 ? "in the direction of work" : "against the direction of work",
    )
    expect(notes).toContain("Work turned after every round would keep the corners in their place.")
    expect(notes).toMatch(
      degrees > 0
        ? /one stitch fewer on the side before each/
        : /one stitch fewer on the side after each/,
    )
  })

  it("asks for uneven corners the more often the more the corners turn", () => {
    const notes = (degrees: number) =>
      examine(square(`Skew: ${degrees} degrees`, "", 12)).result.notes.join(" ")
    const every = (degrees: number) =>
      Number(/about every (\d+) rounds/.exec(notes(degrees))?.[1] ?? 1)
    expect(every(8)).toBeGreaterThan(every(25))
    expect(notes(1.5)).toContain("would take back too much")
  })

  it("is less with uneven corners made as the advice says", () => {
    const { gauge, result } = examine(granny("Skew: 12 degrees"))
    expect(result.notes.join(" ")).toContain(
      "one stitch fewer before the chains, one more after them",
    )
    const skewOf = (before: number, after: number) =>
      layOut(examinePattern(granny("", before, after)).reading.motif, gauge!, { inSpace: false })
        .skewDeg!
    const [even, uneven, wrong] = [skewOf(3, 3), skewOf(2, 4), skewOf(4, 2)]
    expectClose(even, 12, 0.05, "the piece the skew was told of")
    expect(uneven).toBeLessThan(even - 2)
    expect(wrong).toBeGreaterThan(even + 2)
  })

  it("is seen where the work is turned only once, and gone where it is turned always", () => {
    // The last round is worked back over the third: the side groups first, then the corner.
    const back =
      "Rnd 4: *3 dc in next ch-1 sp, ch 1, 3 dc in next ch-1 sp, ch 1, (3 dc, ch 2, 3 dc) in next ch-2 sp, ch 1; rep from * 3 more times; join."
    const text = granny("Skew: 7 degrees").replace(/^Rnd 4.*$/m, back)
    const once = text.replace(/^(Rnd 3.*)join\.$/m, "$1join, turn.")
    const { result } = examine(once)
    expectClose(result.laidOut!.skewDeg!, 7, 0.05, "rounds 2 and 3 lean")
    expect(result.notes.join(" ")).toContain(
      "Work turned after every round would keep the corners in their place.",
    )
    const always = examine(text.replace(/join\.$/gm, "join, turn."))
    expectClose(always.result.laidOut!.skewDeg!, 0, 0.5, "nothing leans")
  })

  it("is none by default", () => {
    const { result, gauge } = examine(square(""))
    expectClose(result.laidOut!.skewDeg!, 0, 1, "sides of one more stitch after each corner")
    expect(gauge!.input.leanShare).toBeUndefined()
  })

  it.each([
    ["the work is turned", square("Skew: 7 degrees", "; turn")],
    ["each stitch would sit beyond the next one", square("Skew: 170 degrees")],
    [
      "it needs corners",
      "Skew: 7 degrees\n\nRnd 1: 12 dc in ring.\nRnd 2: 2 dc in each st around.",
    ],
  ])("is not used, and why is told: %s", (why, text) => {
    const { result, gauge, gaugeNotes } = examine(text)
    expect(gaugeNotes.join(" ")).toContain(why)
    expect(result.notes).toEqual(expect.arrayContaining([...gaugeNotes]))
    expect(gauge!.input.leanShare).toBeUndefined()
    expect(result.exitStatus).toBeLessThan(2)
  })

  it.each([
    ["6 degrees", 6],
    ["6.5\u00b0", 6.5],
    ["-6,5 deg.", -6.5],
    ["\u2212 4 degrees", -4],
    ["4 degrees in the direction of work", 4],
    ["4 degrees against the direction of work", -4],
  ])("is read from '%s'", (told, degrees) => {
    expect(examinePattern(square(`Skew: ${told}`)).reading.gauge.skewDeg).toBe(degrees)
  })

  it.each([
    ["a lot", /not understood/],
    ["0.1 rad", /not understood/],
    ["6", /not understood/],
    ["6 \u00b0C", /not understood/],
    // Which way that is depends on the hand and on the side one looks at.
    ["6 degrees clockwise", /not understood/],
    ["-6 degrees against the direction of work", /not understood/],
    ["400 degrees", /more than half a turn/],
  ])("that cannot be meant is told with its place: '%s'", (told, why) => {
    const { reading, result } = examinePattern(square(`Skew: ${told}`))
    expect(reading.gauge.skewDeg).toBeUndefined()
    const problem = result.problems.find(({ code }) => code === "skew-not-read")!
    expect(problem).toMatchObject({ severity: "note", line: 4, column: 7, length: told.length })
    expect(problem.message).toMatch(why)
    expect(result.exitStatus).toBe(0)
  })
})

describe("a symmetric piece of lace", () => {
  // Its tight loops fold over to one side when it is pressed flat, which turned it by up to 3 degrees.
  const lace = laceSquare(7)
  const gauge = gaugeFrom({ swatches: [{ kind: kind("dc"), widthMm: 7, heightMm: 13 }] })

  it("has no skew where nothing leans", () => {
    const shape = layOutMotif(lace, gauge)
    if ("fault" in shape) throw new Error(shape.fault)
    const { skewDeg } = laidOutFromNet(shape, lace, gauge)
    // Midway between two leans that mirror each other.
    expectClose(skewDeg!, 0, 0.05, "mirrored it is the same piece")
  })

  it.each([0, 4, -4])("told to have turned by %d degrees leans that way", (skewDeg) => {
    const { gauge: found, notes } = gaugeFromPieces(lace, gaugeFrom({ ...gauge.input, skewDeg }))
    expect(notes).toEqual([])
    expect(Math.sign(found.input.leanShare!)).toBe(Math.sign(skewDeg))
  })
})

describe("the lean in the gauge", () => {
  it("is found again from the skew it makes, either way", () => {
    const motif = buildPolygon(kind("sc"), 4, 5, 2, 3)
    const gauge = gaugeFrom({ swatches: [], yarnWeight: 4 })
    const skewAt = (leanShare: number) =>
      layOut(motif, gaugeFrom({ ...gauge.input, leanShare }), { inSpace: false }).skewDeg!
    fc.assert(
      fc.property(fc.double({ min: -0.4, max: 0.4, noNaN: true }), (leanShare) => {
        const told = gaugeFrom({ ...gauge.input, skewDeg: skewAt(leanShare) })
        const { gauge: found, notes } = gaugeFromPieces(motif, told)
        expect(notes).toEqual([])
        expectClose(found.input.leanShare!, leanShare, 2e-3, "0.05 degrees of 50 a width")
      }),
      { seed: 7, numRuns: 12 },
    )
  })

  it("is the same whatever the size, and stays beside a size of the piece", () => {
    const { reading } = examinePattern(square(""))
    const share = (input: Partial<Gauge["input"]>) =>
      gaugeFromPieces(reading.motif, gaugeFrom({ swatches: [], skewDeg: 5, ...input })).gauge.input
    const [small, large] = [share({ yarnWeight: 2 }), share({ yarnWeight: 6 })]
    expectClose(small.leanShare!, large.leanShare!, 1e-6, "a share of the width")
    const sized = share({ yarnWeight: 4, pieces: [{ round: 5, mm: 90, across: "sides" }] })
    expectClose(sized.leanShare!, small.leanShare!, 1e-6, "sizes only scale")
    const shape = layOut(reading.motif, gaugeFrom(sized), { inSpace: false })
    expectClose(shape.outline.acrossMm, 90, 0.01, "the size told, of the leaning piece")
  })

  it("goes into the remedies: what each promises is what a check of that leaning piece says", () => {
    // In dc eight more a round are too few for a square: it cups.
    const { gauge, reading, result } = examine(square("Skew: 16 degrees").replaceAll("sc", "dc"))
    expect(result.laidOut!.verdict).toBe("cups")
    expectClose(result.laidOut!.skewDeg!, 16, 0.05, "as told")
    const made = findMends(reading.motif, gauge!, { judge: "net" }).filter(
      ({ motif, judgedBy }) => motif && judgedBy === "net" && motif !== reading.motif,
    )
    expect(made.length).toBeGreaterThan(0)
    for (const { change, motif, verdictAfter } of made) {
      expect(result.remedies.map((remedy) => remedy.change)).toContain(change)
      expect(layOutBounded(motif!, gauge!).verdict).toBe(verdictAfter)
    }
  })

  it("is what a squaring starts from", () => {
    const text = square("Skew: 12 degrees")
    const { gauge, reading } = examinePattern(text, { lean: true })
    expect(gauge!.input.leanShare).toBeGreaterThan(0.1)
    expect(examinePattern(text).gauge!.input.leanShare).toBeUndefined()
    const laid = (motif: Motif, own: Gauge) =>
      squareCircle(motif, own, { corners: 4, rounds: 1, stitches: [kind("sc")], proposals: 1 })[0]!
    const skewOf = (own: Gauge) => laid(reading.motif, own).shape.net
    const [leaning, upright] = [skewOf(gauge!), skewOf(without(gauge!))]
    expect(leaning.leans.map(({ restMm }) => restMm)).not.toEqual(
      upright.leans.map(({ restMm }) => restMm),
    )
  })
})
