// Writes a motif as a pattern that reads back to the same motif.

import type { Motif, Round } from "@roundwright/motif"
import type { Terms } from "@roundwright/stitches"
import { readPattern } from "../readings/read-pattern.ts"
import { cannot } from "./part.ts"
import { roundWords, totalWords } from "./write-round.ts"

export interface WriteOptions {
  /** Lines put after the title and terms, such as "Hook: 4 mm". */
  readonly headings?: readonly string[]
  /** Stitch totals at the end of each round; true by default. */
  readonly totals?: boolean
}

/**
 * A motif in words, one line a round, in US or UK terms. What is written reads back to the same
 * rounds; a round for which that does not hold is refused rather than written wrong.
 * @throws RoundwrightError `cannot-be-written` naming the round
 */
export function writePattern(motif: Motif, terms: Terms, options: WriteOptions = {}): string {
  const lines: string[] = []
  if (motif.title !== undefined) lines.push(`# ${motif.title}`)
  lines.push(`Terms: ${terms}`, ...(options.headings ?? []), "")
  motif.rounds.forEach((round, index) => {
    const next = motif.rounds[index + 1]
    const label = round.closing === "open" ? "Row" : "Rnd"
    const work = index === 0 ? firstRound(motif, terms) : roundWords(motif, index, terms)
    const turn = next?.turned ? "; turn" : ""
    const total = options.totals === false ? "" : ` ${totalWords(round, terms)}`
    lines.push(`${label} ${round.number}: ${work}${turn}.${total}`)
  })
  const text = `${lines.join("\n")}\n`
  checkReadsBack(motif, text)
  return text
}

/** Round 1 names how its centre is made. */
function firstRound(motif: Motif, terms: Terms): string {
  const words = roundWords(motif, 0, terms)
  switch (motif.centre.kind) {
    case "adjustable-ring":
      return words.replace(/\bin ring\b/g, "in magic ring")
    case "solid-ring":
      return words.replace(/\bin ring\b/g, `in the ${ringSize(motif.centre)}plastic ring`)
    case "single-chain":
      return words.replace(/\bin ring\b/g, `in ${chainFromHook(motif)} ch from hook`)
    default:
      return words
  }
}

/** "19 mm " where the diameter is known, to 0.1. */
function ringSize({ diameterMm }: { readonly diameterMm?: number }): string {
  return diameterMm === undefined ? "" : `${Number(diameterMm.toFixed(1))} mm `
}

/** Which chain from the hook: one more than are skipped, the 2nd when none are spoken of. */
function chainFromHook(motif: Motif): string {
  const nth = (motif.rounds[0]?.startChain?.chains ?? 1) + 1
  return ["", "1st", "2nd", "3rd"][nth] ?? `${nth}th`
}

function checkReadsBack(motif: Motif, text: string): void {
  const back = readPattern(text).motif
  motif.rounds.forEach((round, index) => {
    const read = back.rounds[index]
    if (!read || !sameRound(round, read)) throw cannot(round, "does not read back as it was")
  })
  if (JSON.stringify(back.centre) !== JSON.stringify(motif.centre))
    throw cannot(motif.rounds[0]!, "has a centre that does not read back as it was")
}

/** Equal in all that a round says, whatever the order of fields. */
export function sameRound(a: Round, b: Round): boolean {
  return canonical(a) === canonical(b)
}

function canonical(value: unknown): string {
  return JSON.stringify(value, (_, inner: unknown) =>
    inner && typeof inner === "object" && !Array.isArray(inner)
      ? Object.fromEntries(Object.entries(inner).sort(([x], [y]) => (x < y ? -1 : 1)))
      : inner,
  )
}
