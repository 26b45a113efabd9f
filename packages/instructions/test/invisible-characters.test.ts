// Characters that nobody sees change nothing: a text copied with them inside its words is read as without, and what is
// told points at the whole word where it stands.

import { describe, expect, it } from "vitest"
import { type PatternReading, readPattern } from "../src/index.ts"
import { pointedAt } from "./help.ts"
import { soundPatterns } from "./mutate.ts"
import { patterns as ukPatterns } from "./varied-uk.ts"

/** A soft hyphen, a space of no width, joiners, marks of direction, the mark at the beginning of a file. */
const characters = ["\u00ad", "\u200b", "\u200c", "\u200d", "\u2060", "\u200e", "\u202d", "\ufeff"]
const texts = [...soundPatterns, ...ukPatterns.slice(0, 4).map(({ text }) => text)]

const read = ({ motif, rounds, problems }: PatternReading) => ({
  motif,
  counted: rounds.map(({ counted, stated }) => [counted, stated]),
  told: problems.map(({ code, message }) => `${code}: ${message}`),
})

describe("characters that nobody sees", () => {
  it.each(characters)("between all that stands together change nothing: %j", (character) => {
    for (const text of texts) {
      const strewn = text.replace(/(?<=\S)(?=\S)/g, character)
      expect(strewn.length).toBeGreaterThan(text.length)
      expect(read(readPattern(strewn))).toEqual(read(readPattern(text)))
    }
  })

  it("written by name or by number, as saved pages have them, change nothing either", () => {
    const text = "Rnd 1: 6 sc in magic ring. (6 sc)\nRnd 2: 2 sc in each st around. (12 sc)"
    for (const name of ["&shy;", "&#8203;", "&zwnj;", "&#xfeff;"]) {
      const strewn = text.replace("magic", `ma${name}gic`).replace("12", `1${name}2`)
      expect(read(readPattern(strewn))).toEqual(read(readPattern(text)))
    }
  })

  it("leave what is told at its own words", () => {
    const text =
      "Rnd 1: 6 s\u200bc in ma\u00adgic ring.\nRnd 2: 2 sc\u2060 in each wib\u200bb\u00adle st."
    const problem = readPattern(text).problems.find(({ code }) => code === "words-passed-over")!
    expect(problem.message).toContain('"wibble"')
    expect(pointedAt(text, problem)).toBe("wib\u200bb\u00adle")
    expect(text.slice(readPattern(text).rounds[0]!.start)).toMatch(/^Rnd 1: /)
    expect(text.slice(0, readPattern(text).rounds[0]!.end)).toMatch(/ring\.$/)
    const headed = "Ho\u00adok: 900\u200b m\u00adm\nRnd 1: 6 sc in magic ring."
    const hook = readPattern(headed).problems.find(({ code }) => code === "hook-impossible")!
    expect(pointedAt(headed, hook)).toBe("900\u200b m\u00adm")
  })
})
