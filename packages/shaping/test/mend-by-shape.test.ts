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

describe("a square that lies flat by its counts and by its shape", () => {
  it("is left alone, whoever judges", () => {
    expect(keepLedger(motif, gauge).verdict).toBe("flat")
    expect(layOut(motif, gauge, { inSpace: false }).verdict).toBe("flat")
    expect(findMends(motif, gauge)).toEqual([])
    expect(findMends(motif, gauge, { judge: "net" })).toEqual([])
  })
})

describe("a square that is too full by its shape", () => {
  const full = readPattern(
    `Terms: US\nYarn: DK\nHook: 4 mm\n\nRnd 1: 12 dc in magic ring; join. (12 dc)\nRnd 2: *dc in next dc, ch 1; rep from * around; join. (12 dc, 12 ch-1 sps)\nRnd 3: *4 dc in next ch-1 sp; rep from * around; join. (48 dc)\nRnd 4: *(2 dc, ch 2, 2 dc) in next st, dc in next 11 sts; rep from * around; join.\n`,
  )
  const own = gaugeFrom(full.gauge)
  const shape = layOut(full.motif, own, { inSpace: false })
  const mends = findMends(full.motif, own, { judge: "net", shape })

  it("gets changes that take the edge one way only, each judged as a check would judge it", () => {
    expect(severityOf(shape.verdict)).toBeGreaterThan(0)
    const changes = mends.filter(({ kind }) => kind !== "block" && kind !== "leave")
    expect(changes.length).toBeGreaterThan(0)
    const before = keepLedger(full.motif, own).fullness
    for (const mend of changes) {
      expect(mend.fullnessAfter).toBeLessThanOrEqual(before)
      if (mend.motif)
        expect(layOut(mend.motif, own, { inSpace: false }).verdict).toBe(mend.verdictAfter)
    }
  })
})
