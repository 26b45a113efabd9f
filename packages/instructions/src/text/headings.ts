// Headings: "Yarn: worsted", "Gauge: ...", "Notes:", and what they open.

import type { Span } from "../base/tree.ts"

export interface Heading extends Span {
  readonly name: string
  readonly line: number
  readonly valueStart: number
  /** Takes the whole line, whatever rounds it speaks of. */
  readonly wholeLine: boolean
}

const headingPattern =
  /^[ \t>•*-]*(title|pattern|name|yarns?|threads?|wool|materials?|supplies|hooks?|hook size|needles?|gauge|tension|skew|terms?|terminology|abbreviations?|notes?|pattern notes?|special stitch(?:es)?|stitch(?:es)? used|sizes?|finished size|measurements?|level|skill(?: level)?|difficulty|design(?:ed|er)?(?: by)?|by|source|colou?rs?|instructions|pattern|motif|square|granny|hexagon|circle|(?:(?:base|foundation|centre|center|starting|beginning)\s+)?(?:ring|chain|loop)|base|foundation|centre|center|(?:to\s+)?(?:start|begin)|assembly|finishing|edging|border|tips?|hints?|helpful hints?|important|designer'?s? notes?|(?:photos?|pics?|pictures?|images?|fig(?:ure)?|videos?|links?)\s{0,9}\d{0,9})\s{0,9}:/i

/** Headings that take the whole line. */
const wholeLine =
  /^(gauge|tension|skew|yarns?|threads?|wool|materials?|supplies|hooks?|hook size|needles?|terms?|terminology|abbreviations?|notes?|pattern notes?|sizes?|finished size|measurements?|level|skill( level)?|difficulty|colou?rs?)$/

/** Headings whose text says how the piece begins. */
export const ringHeadings =
  /^(?:.*\s)?(?:ring|chain|loop|base|foundation|centre|center|start|begin)$/

const blockHeadings =
  /^(notes?|pattern notes?|materials?|supplies|abbreviations?|special stitch(es)?|stitch(es)? used|assembly|finishing)$/

/** Longest stretch looked at for a heading's name. */
const longestName = 60

export function headingAt(clean: string, start: number, end: number, line: number): Heading | null {
  const found = headingPattern.exec(clean.slice(start, Math.min(end, start + longestName)))
  if (!found) return null
  const name = (found[1] ?? "").toLowerCase()
  return {
    name,
    line,
    start,
    end,
    valueStart: start + found[0].length,
    wholeLine: wholeLine.test(name),
  }
}

/** True for headings whose following lines belong to them. */
export function opensBlock(name: string): boolean {
  return blockHeadings.test(name)
}
