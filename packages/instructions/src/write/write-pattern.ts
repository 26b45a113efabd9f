// Writes a motif as a pattern that reads back to the same motif. The one writer of the project: patterns, proposals,
// plans and mends are all told by it.
//
// Every round is told in the fullest wording that reads back, on the rounds before it, to the very same round
// without a doubt; where the whole text read together would be taken otherwise, it is told more barely.

import type { Motif, RoundCorners } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Terms } from "@roundwright/stitches"
import { readPattern } from "../readings/read-pattern.ts"
import { readRoundOn } from "../readings/read-round-on.ts"
import { cornersOf } from "./corner-places.ts"
import { defaultStyle, type HouseStyle, Voice } from "./house-style.ts"
import { cannot, type Wording, wordings } from "./part.ts"
import { sameRound } from "./same-round.ts"
import { roundWords } from "./write-round.ts"
import { totalWords } from "./write-totals.ts"

export interface RoundsOptions {
  /** How the house sets its patterns; `defaultStyle` for what is left out. */
  readonly style?: Partial<HouseStyle>
  /** Stitch totals at the end of each round; true by default. */
  readonly totals?: boolean
  /** "Fasten off." at the end of the last round; true by default. */
  readonly fastenOff?: boolean
}

export interface WriteOptions extends RoundsOptions {
  /** Lines put after the title and terms, such as "Hook: 4 mm". */
  readonly headings?: readonly string[]
}

/**
 * A motif in words, one line a round, in US or UK terms. What is written reads back to the same
 * rounds; a round for which that does not hold is refused rather than written wrong.
 * @throws RoundwrightError `cannot-be-written` naming the round
 */
export function writePattern(motif: Motif, terms: Terms, options: WriteOptions = {}): string {
  const head: string[] = []
  if (motif.title !== undefined) head.push(`# ${motif.title}`)
  head.push(`Terms: ${terms}`, ...(options.headings ?? []), "")
  const writer = new RoundWriter(motif, terms, options)
  let told = motif.rounds.map((_, index) => writer.told(index, 0))
  for (let bare = false; ; ) {
    const text = `${[...head, ...told.map(({ line }) => line)].join("\n")}\n`
    const back = readPattern(text).motif
    const wrong = motif.rounds.findIndex((round, index) => {
      const read = back.rounds[index]
      return !read || !sameRound(round, read)
    })
    if (wrong < 0 && JSON.stringify(back.centre) === JSON.stringify(motif.centre)) return text
    const round = motif.rounds[Math.max(0, wrong)]!
    if (wrong < 0) throw cannot(round, "has a centre that does not read back as it was")
    const next = (told[wrong]?.wording ?? 0) + 1
    const other = next < wordings.length ? writer.toldAnew(wrong, next) : null
    if (other) told[wrong] = other
    else if (bare) throw cannot(round, "does not read back as it was")
    else {
      // What a later round says can turn the reading of an earlier one: all of them at their barest.
      bare = true
      told = told.map((one, index) => writer.toldAnew(index, wordings.length - 1) ?? one)
    }
  }
}

/**
 * The rounds from index `from` on as lines, each on the rounds before it. A round that no wording carries exactly is told
 * in the barest one: for pieces made by computing, whose first rounds may stand for a total alone.
 * @throws RoundwrightError `cannot-be-written` for a round without any wording
 */
export function writeRounds(
  motif: Motif,
  from = 0,
  terms: Terms = "US",
  options: RoundsOptions = {},
): string[] {
  const writer = new RoundWriter(motif, terms, { fastenOff: false, ...options })
  return motif.rounds.slice(from).map((_, i) => writer.bestOf(from + i))
}

/** The wording that leaves out whatever may be left out, but not the repeats. */
const plainest = wordings.length - 2

interface Told {
  readonly line: string
  /** Which of the wordings. */
  readonly wording: number
}

class RoundWriter {
  readonly #corners: readonly RoundCorners[]
  readonly #voice: Voice

  constructor(
    readonly motif: Motif,
    terms: Terms,
    readonly options: RoundsOptions,
  ) {
    this.#corners = cornersOf(motif)
    this.#voice = new Voice(terms, { ...defaultStyle, ...options.style })
  }

  /** The first wording from `at` on that reads back on the rounds before. @throws RoundwrightError `cannot-be-written` */
  told(index: number, at: number): Told {
    let doubted: Told | null = null
    let refused: unknown = null
    let before: string | null = null
    for (let wording = at; wording < wordings.length; wording++) {
      const line = this.#tryLine(index, wordings[wording]!)
      if (typeof line !== "string") {
        refused = line
        continue
      }
      if (line === before) continue
      before = line
      const back = this.#readBack(index, line)
      if (back === "clean") return { line, wording }
      if (back !== "doubted") continue
      // What is doubted in two wordings is the round itself.
      if (doubted) return doubted
      doubted = { line, wording }
      wording = Math.max(wording, plainest - 1)
    }
    if (doubted) return doubted
    throw refused ?? cannot(this.motif.rounds[index]!, "does not read back as it was")
  }

  /** The same; null where none does. */
  toldAnew(index: number, at: number): Told | null {
    try {
      return this.told(index, at)
    } catch (error) {
      if (error instanceof RoundwrightError) return null
      throw error
    }
  }

  /** The line, or the error that says why this wording has none. */
  #tryLine(index: number, wording: Wording): string | RoundwrightError {
    try {
      return this.#line(index, wording)
    } catch (error) {
      if (error instanceof RoundwrightError) return error
      throw error
    }
  }

  bestOf(index: number): string {
    try {
      return this.told(index, 0).line
    } catch (error) {
      if (!(error instanceof RoundwrightError)) throw error
      return this.#line(index, wordings[plainest]!)
    }
  }

  #line(index: number, wording: Wording): string {
    const { motif, options } = this
    const voice = this.#voice
    const round = motif.rounds[index]!
    const next = motif.rounds[index + 1]
    const words = roundWords(motif, index, this.#corners, voice, wording)
    const work = index === 0 ? this.#withCentre(words) : words
    const label = round.closing === "open" ? "Row" : "Rnd"
    const turn = next?.turned ? "; turn" : ""
    const off = next === undefined && options.fastenOff !== false ? " Fasten off." : ""
    const total = options.totals === false ? "" : ` ${totalWords(round, voice, wording.totals)}`
    return voice.spelled(`${label} ${round.number}: ${work}${turn}.${off}${total}`)
  }

  #readBack(index: number, line: string): "clean" | "doubted" | "otherwise" {
    const { motif } = this
    const round = motif.rounds[index]!
    const below = { ...motif, rounds: motif.rounds.slice(0, index) }
    const back = readRoundOn(below, line, this.#voice.terms, round.turned)
    if (!back.round || !sameRound(round, back.round)) return "otherwise"
    return back.doubted ? "doubted" : "clean"
  }

  /** Round 1 names how its centre is made. */
  #withCentre(words: string): string {
    const { centre, rounds } = this.motif
    switch (centre.kind) {
      case "adjustable-ring":
        return words.replace(/\bin ring\b/g, "in magic ring")
      case "solid-ring":
        return words.replace(/\bin ring\b/g, `in the ${ringSize(centre)}plastic ring`)
      case "single-chain":
        return words.replace(
          /\bin ring\b/g,
          `in ${chainFromHook(rounds[0]?.startChain)} ch from hook`,
        )
      default:
        return words
    }
  }
}

/** "19 mm " where the diameter is known, to 0.1. */
function ringSize({ diameterMm }: { readonly diameterMm?: number }): string {
  return diameterMm === undefined ? "" : `${Number(diameterMm.toFixed(1))} mm `
}

/** Which chain from the hook: one more than are skipped, the 2nd when none are spoken of. */
function chainFromHook(start: { readonly chains: number } | undefined): string {
  const nth = (start?.chains ?? 1) + 1
  return ["", "1st", "2nd", "3rd"][nth] ?? `${nth}th`
}
