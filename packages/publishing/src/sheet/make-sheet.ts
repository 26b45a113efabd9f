// Makes the sheet of a written pattern: what its designer says, what its motif is, and what the check finds of size and
// flatness, each where it belongs.

import { type Check, examinePattern } from "@roundwright/assessment"
import { printChart } from "@roundwright/charts"
import { stitchesAndChains } from "@roundwright/motif"
import { RoundwrightError, unlessRefused } from "@roundwright/numerics"
import type { Terms } from "@roundwright/stitches"
import { abbreviationsIn } from "../abbreviations.ts"
import { type Manuscript, readManuscript } from "../edit/manuscript.ts"
import { careFor, cautionsFor } from "./care.ts"
import { flatnessOf } from "./flatness.ts"
import { levelOf } from "./level.ts"
import { materialsOf } from "./materials.ts"
import { missingOf } from "./missing.ts"
import { notesOf } from "./notes.ts"
import { roundsOf } from "./rounds.ts"
import type { Sheet } from "./sheet.ts"
import { gaugeLines, sizeLines } from "./sizes.ts"
import { specialStitchesOf } from "./special-stitches.ts"
import { linesOfDesigner, notesOfDesigner, specialOfDesigner } from "./words-of-designer.ts"

export interface SheetOptions {
  /** Terms of the sheet; the pattern's own when absent. */
  readonly terms?: Terms
  /** Who finds the sizes: the laid-out shape (the default) or, in milliseconds, the growth of the rounds. */
  readonly shape?: "net" | "ledger"
  /** The check of this same text, where it was made already, as by a page. */
  readonly check?: Check
  /** False: the sheet has no chart, for editions that show none. */
  readonly chart?: boolean
}

/**
 * The sheet of a pattern whose every round could be read.
 * @throws RoundwrightError `sheet-not-whole` for one that could not; `cannot-be-written` for a round that has no wording in
 * the terms asked for
 */
export function makeSheet(text: string, options: SheetOptions = {}): Sheet {
  const manuscript = readManuscript(text)
  requireWhole(manuscript)
  const check =
    options.check ?? examinePattern(text, { shape: options.shape ?? "net", remedies: false })
  const terms = options.terms ?? manuscript.reading.terms
  const rounds = roundsOf(manuscript, check, terms)
  const { motif } = manuscript.reading
  const words = rounds.map(({ work, total }) => `${work} ${total}`).join("\n")
  const abbreviations = new Map(
    abbreviationsIn(`${words}\n${rounds.map(({ label }) => label).join(" ")}`, terms).map(
      ({ key, long }) => [key, long],
    ),
  )
  return {
    title: manuscript.reading.title ?? "Untitled motif",
    own: linesOfDesigner(manuscript),
    terms,
    level: levelOf(motif),
    materials: materialsOf(manuscript, check),
    gauge: gaugeLines(manuscript, check, terms),
    size: sizeLines(check),
    abbreviations: [...abbreviations]
      .map(([short, long]) => ({ short, long }))
      .sort((a, b) => (a.short.toLowerCase() < b.short.toLowerCase() ? -1 : 1)),
    special: [
      ...specialOfDesigner(manuscript, terms),
      ...specialStitchesOf(motif, terms, manuscript),
    ],
    notes: [...notesOf(motif, terms), ...notesOfDesigner(manuscript, terms)],
    rounds,
    ending: "Fasten off and weave in ends.",
    flatness: flatnessOf(check),
    care: careFor(manuscript, check),
    cautions: cautionsFor(manuscript, motif),
    missing: missingOf(manuscript, check),
    chart: options.chart === false ? null : chartOf(check, terms),
  }
}

/** Null for a piece that was not laid out or is a tangle, or has more symbols than can be told apart. */
function chartOf({ shape, reading }: Check, terms: Terms): string | null {
  if (!shape || stitchesAndChains(reading.motif) > mostSymbols) return null
  return unlessRefused(
    () => printChart(reading.motif, shape, { terms }),
    () => null,
  )
}

/** More symbols than this are a grey disc on a page. */
const mostSymbols = 3000

/** A sheet with a round that nobody can follow is none. */
function requireWhole({ reading, rounds }: Manuscript): void {
  if (rounds.length === 0)
    throw new RoundwrightError("sheet-not-whole", "There is no round in the text.", {
      hint: 'Give every round its label, such as "Rnd 1:".',
    })
  const broken = rounds.filter((round) => round.reading.counted === null || round.reading.assumed)
  if (broken.length === 0 && reading.motif.rounds.length === rounds.length) return
  const numbers = (broken.length > 0 ? broken : rounds.slice(reading.motif.rounds.length)).map(
    ({ number }) => number,
  )
  const several = numbers.length > 1
  throw new RoundwrightError(
    "sheet-not-whole",
    `${several ? "Rounds" : "Round"} ${numbers.slice(0, 6).join(", ")}${numbers.length > 6 ? " ..." : ""} could not be read, so no sheet can be made of the pattern.`,
    { hint: "'roundwright edit' tells what is wrong with each.", numbers: { round: numbers[0]! } },
  )
}
