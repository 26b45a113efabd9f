// Matching: sizes after a change found by laying the piece out anew, the same by closed form, and causes that are not the hook.

import { matchPiece, readPieceNow, readTarget, withRound } from "@roundwright/matching"
import { buildDisc, buildPolygon, countRound } from "@roundwright/motif"
import { layOut } from "@roundwright/relaxation"
import { gaugeFrom, sizeOf } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { expectClose } from "../../../test/support/close.ts"

const square = `# Plain square
Terms: US
Yarn: DK
Hook: 4 mm

Rnd 1: ch 3 (counts as dc), 2 dc in magic ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join. (12 dc)
Rnd 2: sl st in next 2 dc and in ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in next 3 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, dc in next 3 sts; join. (28 dc)
Rnd 3: sl st in next dc and in ch-2 sp, ch 3 (counts as dc), (dc, ch 2, 2 dc) in same sp, *dc in next 7 sts, (2 dc, ch 2, 2 dc) in next ch-2 sp; rep from * 2 more times, dc in next 7 sts; join. (44 dc)
`

describe("ways", () => {
  it("meet the size within what they say, each judged", () => {
    const piece = readPieceNow(square)
    const target = readTarget(`${((piece.now.acrossMm * 1.09) / 10).toFixed(1)} cm`)
    const { ways, cause } = matchPiece(piece, target)
    expect(cause).toBeNull()
    expect(ways.length).toBeGreaterThan(2)
    for (const way of ways) {
      expectClose(way.off, way.sizeMm / target.mm - 1, 1e-9, "the share is of the size itself")
      expect(Math.abs(way.off)).toBeLessThan(0.08)
    }
    // A changed last round undoes less than another hook.
    expect(ways[0]!.kind).not.toBe("hook")
  })

  it("keep the yarn when the hook alone changes, and follow its law", () => {
    const piece = readPieceNow(square)
    const { ways } = matchPiece(piece, readTarget(`${piece.now.acrossMm * 1.06} mm`))
    const hook = ways.find(({ kind }) => kind === "hook")!
    expect(hook.change).toContain("on the same yarn")
    expectClose(
      hook.sizeMm / piece.now.acrossMm,
      Math.sqrt(4.5 / 4),
      1e-6,
      "size goes with the root of the hook on one yarn",
    )
  })

  it("leave a piece that is there", () => {
    const piece = readPieceNow(square)
    const { ways, text } = matchPiece(piece, readTarget(`${piece.now.acrossMm * 1.01} mm`))
    expect(ways[0]!.kind).toBe("leave")
    expect(text).toMatch(/^Leave it/)
  })

  it("scale with the size that is measured", () => {
    const piece = readPieceNow(square, readTarget("14 cm"))
    expectClose(piece.now.acrossMm, 140, 0.5, "the measured size itself, but for the solver's rest")
  })
})

describe("added rounds", () => {
  const gauge = gaugeFrom({ swatches: [] })
  const { heightMm } = sizeOf({ basic: "dc" }, gauge, { turned: false })

  it("widen a disc and a polygon by twice the stitch's height, and lie flat", () => {
    for (const motif of [
      buildDisc({ basic: "dc" }, [12, 24, 36]),
      buildPolygon({ basic: "dc" }, 4, 3, 3, 5),
      buildPolygon({ basic: "dc" }, 6, 3, 2, 3),
    ]) {
      const grown = withRound(motif, "dc", gauge)!
      const [before, after] = [motif, grown].map((one) => layOut(one, gauge, { inSpace: false }))
      expect(after!.verdict).toBe("flat")
      expectClose(
        after!.outline.sideReachMm - before!.outline.sideReachMm,
        heightMm,
        0.15 * heightMm,
        "the fabric gives by up to 6 % and sides bow a little",
      )
      expect(countRound(grown.rounds.at(-1)!).stitches).toBeGreaterThan(
        countRound(motif.rounds.at(-1)!).stitches,
      )
    }
  })
})

describe("not the hook", () => {
  it("the diagonal taken for the side", () => {
    const piece = readPieceNow(square)
    const { cause, text } = matchPiece(piece, readTarget(`${piece.now.diagonalMm} mm`))
    expect(cause).toBe("diagonal")
    expect(text).toMatch(/^Not the hook/)
  })

  it("the other country's terms", () => {
    const own = readPieceNow(square.replace(/Terms: US/, "Terms: UK"))
    const other = readPieceNow(square)
    const { cause } = matchPiece(own, readTarget(`${other.now.acrossMm} mm`))
    expect(cause).toBe("terms")
  })

  it("a round too many", () => {
    const piece = readPieceNow(square)
    const fewer = readPieceNow(square.split("\n").slice(0, -2).join("\n"))
    const { cause } = matchPiece(piece, readTarget(`${fewer.now.acrossMm} mm`))
    expect(cause).toBe("a round too many")
  })
})

describe("what cannot be matched", () => {
  it("is told with a hint", () => {
    expect(() => readTarget("-3 cm")).toThrow(/more than nothing/)
    expect(() => readTarget("big")).toThrow(/tells no length/)
    expect(() => readPieceNow("Rnd 1: 12 dc in magic ring.")).toThrow(/how large the piece is/)
    expect(() => readPieceNow("nothing at all")).toThrow(/could not be read/)
  })
})
