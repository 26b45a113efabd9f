// How the writer tells the rounds of every data set: what a magazine's editor would strike out, counted on the text
// itself, and whether it reads back.

import { readdirSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { readPattern, sameRound, writePattern } from "@roundwright/instructions"
import { countRound, findCorners, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { caseText, loadCases } from "./cases.ts"
import { countByLetter } from "./letter-count.ts"

export interface WritingMeasure {
  /** Motifs read without a warning, and those of them that cannot be written in both terms. */
  readonly motifs: number
  readonly refused: readonly string[]
  readonly rounds: number
  /** Text after a repeat that is neither the join nor a part of the repeat. */
  readonly tails: number
  /** Runs of phrases that come three times or more and are not folded; the same within one place. */
  readonly unfoldedRuns: number
  readonly unfoldedPlaces: number
  readonly oneTime: number
  /** Rounds over 200 characters, and those whose work alone is. */
  readonly long: number
  readonly longWork: number
  /** Rounds with groups in the corners of a polygon, and those that speak of them. */
  readonly cornered: number
  readonly cornersNamed: number
  readonly unnamed: readonly string[]
  /** Rounds a reader by the letter can count, and those it counts alike. */
  readonly byLetter: number
  readonly rightByLetter: number
  readonly wrongByLetter: readonly string[]
}

const longest = 200

/** The texts of the data sets of this folder. */
export function textsOfSets(): { id: string; text: string }[] {
  return (["handbook-motifs", "measured-motifs"] as const).flatMap((name) =>
    loadCases(name).map((one) => ({ id: one.id, text: caseText(one) })),
  )
}

/** Texts saved in a folder as ID.txt. */
export function savedTexts(folder: string): { id: string; text: string }[] {
  return readdirSync(folder)
    .filter((name) => name.endsWith(".txt"))
    .sort()
    .map((name) => ({ id: name.slice(0, -4), text: readFileSync(join(folder, name), "utf8") }))
}

export function measureWriting(
  texts: readonly { readonly id: string; readonly text: string }[],
): WritingMeasure {
  const sums = {
    motifs: 0,
    rounds: 0,
    tails: 0,
    unfoldedRuns: 0,
    unfoldedPlaces: 0,
    oneTime: 0,
    long: 0,
    longWork: 0,
    cornered: 0,
    cornersNamed: 0,
    byLetter: 0,
    rightByLetter: 0,
  }
  const refused: string[] = []
  const wrongByLetter: string[] = []
  const unnamed: string[] = []
  for (const { id, text } of texts) {
    const { motif, rounds, problems } = readPattern(text)
    const doubted = problems.some(({ severity }) => severity !== "note")
    if (motif.rounds.length === 0 || doubted || rounds.some(({ assumed }) => assumed)) continue
    sums.motifs += 1
    const lines = writtenLines(motif, id, refused)
    if (!lines) continue
    const corners = findCorners(motif)
    lines.forEach((line, index) => {
      const round = motif.rounds[index]!
      sums.rounds += 1
      sums.tails += /rep from \* (?:around|once more|twice more|\d+ more times), (?!ending)/.test(
        line,
      )
        ? 1
        : 0
      sums.oneTime += / 1 time/.test(line) ? 1 : 0
      sums.long += line.length > longest ? 1 : 0
      sums.longWork += workOf(line).length > longest ? 1 : 0
      sums.unfoldedRuns += hasRun(workOf(line)) ? 1 : 0
      sums.unfoldedPlaces += groupsOf(line).some(hasRun) ? 1 : 0
      // A loop that a later round makes a corner of is none yet.
      if (index > 0 && corners[index]!.groups.some(({ first, last }) => first !== last)) {
        sums.cornered += 1
        if (/corner/.test(line)) sums.cornersNamed += 1
        else unnamed.push(`${id} ${line}`)
      }
      const counted = countByLetter(line, motif, index)
      if (counted === null) return
      sums.byLetter += 1
      if (counted === countRound(round).stitches) sums.rightByLetter += 1
      else wrongByLetter.push(`${id} ${line} (${counted})`)
    })
  }
  return { ...sums, refused, unnamed, wrongByLetter }
}

/** The rounds in US terms; null, told in `refused`, where they cannot be written or do not read back in both terms. */
function writtenLines(motif: Motif, id: string, refused: string[]): string[] | null {
  try {
    const [us] = (["US", "UK"] as const).map((terms) => {
      const text = writePattern(motif, terms)
      const back = readPattern(text).motif.rounds
      if (!motif.rounds.every((round, i) => back[i] && sameRound(round, back[i])))
        throw new RoundwrightError("cannot-be-written", "Does not read back.")
      return text
    })
    return us!.split("\n").filter((line) => /^(?:Rnd|Row) \d/.test(line))
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    refused.push(`${id}: ${error.message}`)
    return null
  }
}

/** The round without its label, its end and its total. */
function workOf(line: string): string {
  return line
    .replace(/^(?:Rnd|Row) \d+: /, "")
    .replace(/ \([^()]*\)$/, "")
    .replace(/ Fasten off\.$/, "")
}

/** What stands in round brackets, where something is worked into one place. */
function groupsOf(line: string): string[] {
  return [...workOf(line).matchAll(/\(([^()]*)\) in /g)].map(([, inside]) => inside!)
}

/** A sequence of phrases three times over, of which at least one says work. */
function hasRun(text: string): boolean {
  const phrases = text
    .replace(/\([^()]*\)/g, (group) => group.replaceAll(", ", ","))
    .replace(/\[[^[\]]*\]/g, (group) => group.replaceAll(", ", ","))
    .split(/[,;] /)
    .map((phrase) => phrase.replace(/^\*|\*\*$/g, ""))
  for (let length = 1; length <= phrases.length / 3; length++)
    for (let at = 0; at + 3 * length <= phrases.length; at++) {
      let same = true
      for (let i = at; same && i < at + 2 * length; i++) same = phrases[i] === phrases[i + length]
      if (same) return true
    }
  return false
}
