// The published results of squaring and of planning a circle: stable keys, for other programs.

import type { Verdict } from "@roundwright/flatness"
import {
  type PatternReading,
  readPattern,
  withStarts,
  writePattern,
  writeRounds,
} from "@roundwright/instructions"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { assumedScWidthMm } from "@roundwright/relaxation"
import {
  type Gauge,
  kindName,
  readStitchName,
  type StitchKind,
  type Terms,
} from "@roundwright/stitches"
import { baseWords } from "./base-words.ts"
import type { FabricName } from "./fabric/fabric-of.ts"
import { gaugeHeadings } from "./gauge-headings.ts"
import { layOutAsChecked } from "./lay-out-as-checked.ts"
import { type CircleOptions, planCircle } from "./plan-circle.ts"
import type { Proposal } from "./proposal.ts"
import { publishedDigits, rounded } from "./published-digits.ts"
import { squareCircle } from "./square-circle.ts"
import type { SquareOptions } from "./square-options.ts"

export interface PublishedProposal {
  /** What tells it from the others: "In lace", "In solid fabric", "Softest corner", "Quickest". */
  readonly idea: string
  /** What the added rounds are made of, and what that costs to work. */
  readonly fabric: FabricName
  readonly price: string
  /** Text of each added round. */
  readonly rounds: readonly string[]
  /** The whole pattern, the added rounds included. */
  readonly text: string
  /** mm; where the gauge knows none, of worsted yarn, and the notes say so. */
  readonly bowMm: number
  readonly sideMm: number
  readonly cornerAngleDeg: number
  readonly verdict: Verdict
  readonly stitchKinds: readonly string[]
  readonly unevenMm: number
  /** What pinning out flat asks of the yarn, as a share, and the round that asks it; null where nothing does. */
  readonly blockingStretch: number | null
  readonly blockingRound: number | null
  readonly fullness: number
  readonly score: number
  readonly changes: readonly string[]
  readonly notes: readonly string[]
}

/**
 * Proposals for the motif read from a text, best first.
 * @param text the pattern the motif was read from; "" writes the whole piece anew
 */
export function squareProposals(
  motif: Motif,
  gauge: Gauge,
  text: string,
  options: SquareOptions,
): { proposals: PublishedProposal[]; base: string | null } {
  const terms = options.terms ?? (text.trim() === "" ? "US" : readPattern(text).terms)
  const proposals = squareCircle(motif, gauge, { ...options, terms })
  return {
    proposals: proposals.map((proposal) => publishProposal(proposal, text, gauge, terms)),
    base: baseWords(motif, gauge),
  }
}

/**
 * One proposal as published.
 * @param text the pattern its motif was read from; "" writes the whole piece anew
 * @param asked terms of the rounds; the pattern's own when absent. Where they differ the whole piece is written anew.
 * @throws RoundwrightError `cannot-write` for a piece that the asked terms' words do not reach
 */
export function publishProposal(
  proposal: Proposal,
  text: string,
  gauge: Gauge,
  asked?: Terms,
): PublishedProposal {
  const mmPerUnit = gauge.absolute ? 1 : assumedScWidthMm / gauge.scWidthMm
  const { motif, from, shape } = proposal
  const reading = text.trim() === "" ? null : readPattern(text)
  const terms: Terms = asked ?? reading?.terms ?? "US"
  const whole = withStarts(motif, from)
  const rounds = writeRounds(whole, from, terms, { fastenOff: true })
  return {
    idea: proposal.idea,
    fabric: proposal.fabric,
    price: proposal.price,
    rounds,
    text:
      reading === null
        ? `${[`Terms: ${terms}`, "", ...writeRounds(whole, 0, terms, { fastenOff: true })].join("\n")}\n`
        : reading.terms !== terms
          ? writtenAnew(proposal, text, gauge, terms, rounds)
          : insertRounds(text, endOfWorked(reading, motif.rounds[from - 1]!.number), rounds),
    bowMm: rounded(shape.bowMm * mmPerUnit, publishedDigits.mm),
    sideMm: rounded(shape.sideMm * mmPerUnit, publishedDigits.mm),
    cornerAngleDeg: rounded(shape.cornerAngleDeg, publishedDigits.degrees),
    verdict: proposal.verdict,
    stitchKinds: proposal.stitchKinds,
    blockingStretch:
      shape.judged.blockingStretch === null
        ? null
        : rounded(shape.judged.blockingStretch, publishedDigits.share),
    blockingRound: shape.judged.blockingRound,
    unevenMm: rounded(shape.unevenMm * mmPerUnit, publishedDigits.mm),
    fullness: rounded(shape.fullness, publishedDigits.share),
    score: rounded(proposal.score, publishedDigits.score),
    changes: proposal.changes,
    notes: [
      ...proposal.notes,
      beginNote,
      ...(gauge.absolute ? [] : [assumedNote(terms)]),
      ...unreadNotes(reading, motif.rounds[from - 1]!.number),
    ],
  }
}

/** The piece in other terms than its text: title, headings and the pattern's rounds written anew, then the added ones. */
function writtenAnew(
  { motif, from }: Proposal,
  text: string,
  gauge: Gauge,
  terms: Terms,
  added: readonly string[],
): string {
  const title = /^#\s+\S.*$/m.exec(text)?.[0]
  const base = writePattern({ ...motif, rounds: motif.rounds.slice(0, from) }, terms, {
    fastenOff: false,
  })
  const rounds = base.split("\n").filter((line) => line.startsWith("Rnd "))
  const head = [...(title === undefined ? [] : [title]), ...gaugeHeadings(gauge, terms)]
  return `${[...head, "", ...rounds, ...added].join("\n")}\n`
}

function assumedNote(terms: Terms): string {
  return `No yarn, hook or swatch is known: lengths are for ${kindName({ basic: "sc" }, terms)} ${assumedScWidthMm} mm wide, as in worsted yarn.`
}

/** How a maker begins is hers to choose. */
const beginNote = "A standing stitch may take the place of the chains that a round begins with."

function unreadNotes(reading: PatternReading | null, number: number): string[] {
  if (!reading?.rounds.some((round) => round.number > number)) return []
  return [
    `The pattern could be worked to round ${number} only: the added rounds begin there, before the rounds that could not be read.`,
  ]
}

/**
 * Where the text of the last round that could be worked ends: what follows it and could not be worked stays
 * behind the added rounds.
 */
function endOfWorked(reading: PatternReading, number: number): number {
  const last = reading.rounds.findLast((round) => round.number === number)
  return (last ?? reading.rounds.at(-1))?.end ?? 0
}

/** After the last round, before whatever follows it. */
function insertRounds(text: string, end: number, rounds: readonly string[]): string {
  const before = text.slice(0, end).trimEnd()
  const after = text.slice(end).trim()
  return `${before}\n${rounds.join("\n")}\n${after === "" ? "" : `\n${after}\n`}`
}

/** Plan of a circle as published: counts, text, verdict, and what else a reader may want. */
export function circlePlan(options: CircleOptions): {
  counts: readonly number[]
  text: string
  verdict: Verdict
  flatCounts: readonly number[]
  added: readonly number[]
  repeats: number
  words: readonly string[]
  /** Side to side; null where the gauge knows no mm. */
  acrossMm: number | null
} {
  const { counts, text, added, repeats, words, ledger, ...plan } = planCircle(options)
  // Judged as a check of the text judges it: by the laid-out shape, by the ledger where that is too large.
  const verdict = layOutAsChecked(plan.motif, options.gauge)?.verdict ?? plan.verdict
  const { radiusMm } = ledger.rows.at(-1)!
  const flatCounts = plan.flatCounts.map((count) => rounded(count, publishedDigits.count))
  const acrossMm = options.gauge.absolute ? rounded(2 * radiusMm, publishedDigits.mm) : null
  return { counts, text, verdict, flatCounts, added, repeats, words, acrossMm }
}

/**
 * A list of stitches as a user types it: `sc,hdc,dc,tr`. A list with names that only the other terms have is read in
 * those: `sc` is no UK stitch.
 * @throws RoundwrightError `unknown-stitch`
 */
export function readStitchList(list: string, terms: Terms = "US"): StitchKind[] {
  const own = termsOfStitchList(list, terms)
  return wordsOf(list).map((word) => {
    const kind = readStitchName(word, own)
    if (kind) return kind
    throw new RoundwrightError(
      "unknown-stitch",
      `"${word.slice(0, 40)}" is no stitch known here.`,
      {
        hint: `Use trade names such as ${own === "UK" ? "dc, htr, tr, dtr" : "sc, hdc, dc, tr"}, separated by commas.`,
      },
    )
  })
}

/** The terms a list of stitches is in: those given, unless only the other ones have all its names. */
export function termsOfStitchList(list: string, terms: Terms): Terms {
  const fits = (own: Terms) => wordsOf(list).every((word) => readStitchName(word, own))
  const other: Terms = terms === "US" ? "UK" : "US"
  return !fits(terms) && fits(other) ? other : terms
}

function wordsOf(list: string): string[] {
  return list
    .split(",")
    .map((word) => word.trim())
    .filter((word) => word !== "")
}
