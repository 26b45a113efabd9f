// Sheets of every motif of the data sets that reads whole and is written, in both terms, in the editions that are read
// again: the motif is the same, whatever stands around its rounds.

import { readPattern, sameRound, writePattern } from "@roundwright/instructions"
import { editPattern, makeSheet, sheetFormats } from "@roundwright/publishing"
import { describe, expect, it } from "vitest"
import { caseText, loadCases } from "./cases.ts"

const sets = ["handbook-motifs", "measured-motifs", "flatness-outcomes"] as const

const whole = sets.flatMap((set) =>
  loadCases(set).flatMap((one) => {
    const text = caseText(one)
    const { motif, rounds } = readPattern(text)
    const all = motif.rounds.length === rounds.length && rounds.length > 0
    if (!all || rounds.some(({ counted, assumed }) => counted === null || assumed)) return []
    try {
      // A round that the writer refuses in one set of terms has no sheet in them.
      for (const terms of ["US", "UK"] as const) writePattern(motif, terms)
      return [{ id: one.id, text, motif }]
    } catch {
      return []
    }
  }),
)

describe("sheets", () => {
  it("are made of most motifs", () => {
    expect(whole.length).toBeGreaterThan(80)
  })

  it.each(whole)("$id reads back to the same motif", ({ text, motif }) => {
    for (const terms of ["US", "UK"] as const) {
      const sheet = makeSheet(text, { terms, shape: "ledger" })
      for (const format of ["md", "txt"] as const) {
        const written = sheetFormats[format](sheet)
        const back = readPattern(written)
        expect(back.terms).toBe(terms)
        expect(back.motif.centre, written).toEqual(motif.centre)
        expect(back.motif.rounds.length, written).toBe(motif.rounds.length)
        motif.rounds.forEach((round, k) => {
          expect(
            sameRound(round, back.motif.rounds[k]!),
            `${format} ${terms} ${round.number}\n${written}`,
          ).toBe(true)
        })
      }
    }
  })

  it("have nothing that must be mended", () => {
    const faulty = whole.flatMap(({ id, text }) => {
      const { findings } = editPattern(sheetFormats.md(makeSheet(text, { shape: "ledger" })))
      return findings
        .filter(({ severity }) => severity === "must-mend")
        .map(({ code, round }) => `${id}: ${code} ${round}`)
    })
    expect(faulty).toEqual([])
  })
})
