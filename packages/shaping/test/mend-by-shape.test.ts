// Pieces whose counts look right to the growth of rounds and whose laid-out shape is not.

import { keepLedger, severityOf } from "@roundwright/flatness"
import { readPattern } from "@roundwright/instructions"
import { layOut } from "@roundwright/relaxation"
import { gaugeFrom } from "@roundwright/stitches"
import { describe, expect, it } from "vitest"
import { findMends } from "../src/index.ts"

const { motif, gauge: input } = readPattern(`Terms: US
Yarn: DK
Hook: 4 mm

Rnd 1: 12 dc in magic ring; join. (12 dc)
Rnd 2: *dc in next dc, ch 1; rep from * around; join. (12 dc, 12 ch-1 sps)
Rnd 3: *3 dc in next ch-1 sp; rep from * around; join. (36 dc)
Rnd 4: *(2 tr, ch 2, 2 tr) in next st, dc in next 3 sts, sc in next 2 sts, dc in next 3 sts; rep from * around; join.
`)
const gauge = gaugeFrom(input)

describe("a square that lies flat by its counts and blocks flat by its shape", () => {
  const shape = layOut(motif, gauge)
  const mends = findMends(motif, gauge, { judge: "net", shape })

  it("has an even ledger: alone it sees nothing to mend", () => {
    expect(keepLedger(motif, gauge).verdict).toBe("flat")
    expect(findMends(motif, gauge)).toEqual([])
    expect(shape.verdict).toBe("blocks-flat")
  })

  it("may be blocked, or gets changes that lie flat when laid out", () => {
    expect(mends[0]).toMatchObject({ kind: "block", verdictAfter: "blocks-flat" })
    const changes = mends.slice(1)
    expect(changes.length).toBeGreaterThan(0)
    for (const mend of changes) {
      expect(mend.judgedBy).toBe("net")
      const after = layOut(mend.motif!, gauge)
      expect(after.verdict).toBe(mend.verdictAfter)
      expect(severityOf(after.verdict)).toBeLessThan(severityOf(shape.verdict))
      expect(after.meanStretch).toBeLessThan(shape.meanStretch)
    }
  })

  it("tells a change of a round of several stitches in stitches", () => {
    expect(
      mends
        .slice(1)
        .map(({ change }) => change)
        .join(" "),
    ).toMatch(/Work \d+ stitches in round 4/)
  })
})
