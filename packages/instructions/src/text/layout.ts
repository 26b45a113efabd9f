// The parts of a written pattern: headings, rounds with their labels, and everything else. The labels are
// found first, over the whole text; then its lines are shared out among headings, rounds and prose.

import type { Span } from "../base/tree.ts"
import { type BoughtRing, findBoughtRing } from "./bought-ring.ts"
import { findLabels, withSequels } from "./find-labels.ts"
import { takeFirstRound } from "./first-round.ts"
import { type Heading, headingAt, ringHeadings } from "./headings.ts"
import type { RoundLabel } from "./labels.ts"
import { blankMarkup } from "./markup.ts"
import { roundsByParagraph } from "./round-by-paragraph.ts"
import { endOfLine, lineAt, type SourceText } from "./source-text.ts"
import {
  endMatterIn,
  endsPattern,
  isSubtitle,
  isTalkLine,
  looksLikeWork,
  makesSomething,
} from "./talk.ts"

export type { Heading } from "./headings.ts"
export { opensBlock } from "./headings.ts"

export interface RoundText extends Span {
  readonly label: RoundLabel
  readonly line: number
  readonly bodyStart: number
}

export interface PatternText {
  /** The text with Markdown marks and the size of a bought ring blanked. */
  readonly clean: string
  /** The bought ring the text speaks of, if it does. */
  readonly boughtRing?: Pick<BoughtRing, "diameterMm">
  readonly title: string | null
  readonly headings: readonly Heading[]
  readonly rounds: readonly RoundText[]
  /** Lines outside headings and rounds. */
  readonly prose: readonly (Span & { readonly line: number })[]
  /** Talk between the lines of rounds, and names of rounds behind their labels: no work. */
  readonly asides: readonly Span[]
}

interface Open {
  label: RoundLabel
  line: number
  start: number
  bodyStart: number
  end: number
}

export function layOut(source: SourceText): PatternText {
  const { clean, named, ...size } = findBoughtRing(blankMarkup(source))
  const bought = named ? { boughtRing: size } : {}
  return { ...shareOut(source, clean), ...bought }
}

function shareOut(source: SourceText, text: string): PatternText {
  let clean = text
  const told = withoutSpokenOf(source, clean, findLabels(clean))
  // One label somewhere in the middle labels nothing.
  const paragraphs = told.length > 1 || told[0]?.from === 1 ? [] : roundsByParagraph(source, clean)
  const labels = paragraphs.length > told.length + 1 ? paragraphs : withSequels(clean, told)
  const headings: Heading[] = []
  const rounds: Open[] = []
  const prose: (Span & { line: number })[] = []
  const asides: Span[] = []
  let title: string | null = null
  let open: Open | null = null
  let blankSince = false
  let next = 0
  for (let line = 1; line <= source.lineStarts.length; line++) {
    const start = source.lineStarts[line - 1] ?? 0
    const end = endOfLine(source, line)
    const text = clean.slice(start, end)
    if (text.trim() === "") {
      blankSince = true
      continue
    }
    const own: RoundLabel[] = []
    while (next < labels.length && labels[next]!.start < end) own.push(labels[next++]!)
    const marked = /^\s{0,3}#{1,6}\s/.test(text)
    if (marked && own.length === 0) {
      if (title === null && rounds.length === 0) title = withoutMarks(text)
      open = null
      continue
    }
    const first = own[0]
    const before = first ? first.start : end
    const lead = clean.slice(start, before).replace(/^[\s#]+/, "")
    if (lead.trim() !== "" && !(first && isColourLead(lead))) {
      const heading = headingAt(clean, start, before, line)
      if (
        heading &&
        !(open && !blankSince && /^(?:ring|circle|square|pattern)$/.test(heading.name))
      ) {
        headings.push(heading)
        if (/^(?:title|pattern|name)$/.test(heading.name) && title === null) {
          const value = clean.slice(heading.valueStart, before).trim()
          if (value !== "" && value.length < longestTitle) title = value
        }
        if (
          ringHeadings.test(heading.name) ||
          opensWork(clean.slice(heading.valueStart, before), heading)
        )
          prose.push({ line, start: heading.valueStart, end: before })
        open = null
      } else if (open && goesOn(clean, open, text, blankSince, first !== undefined)) {
        open.end = before
      } else if (
        !open ||
        blankSince ||
        endsPattern(text) ||
        !isTalkLine(text, clean.slice(open.bodyStart, open.end))
      ) {
        prose.push({ line, start, end: before })
        open = null
      } else {
        clean = blanked(clean, start, before)
        asides.push({ start, end: before })
      }
    }
    for (const [i, label] of own.entries()) {
      const stop = own[i + 1]?.start ?? end
      const titled = i + 1 < own.length ? label.end : label.end + subtitleOf(clean, label.end, end)
      if (titled > label.end) asides.push({ start: label.end, end: titled })
      open = {
        label,
        line: lineAt(source, label.start),
        start: label.start,
        bodyStart: titled,
        end: Math.max(stop, titled),
      }
      rounds.push(open)
    }
    blankSince = false
  }
  for (const round of rounds) {
    const at = endMatterIn(clean.slice(round.bodyStart, round.end))
    if (at >= 0) round.end = round.bodyStart + at
  }
  takeFirstRound(clean, rounds, prose)
  return {
    clean,
    title: title ?? plainTitle(clean, headings, rounds, prose),
    headings,
    rounds,
    prose,
    asides,
  }
}

/** Talk between the lines of a round, taken out of it. */
function blanked(clean: string, start: number, end: number): string {
  return clean.slice(0, start) + " ".repeat(end - start) + clean.slice(end)
}

/** "Round 4: Around the Petals", its work on the lines below: how long such a title behind the label is. */
function subtitleOf(clean: string, from: number, end: number): number {
  const rest = clean.slice(from, end)
  if (!/\p{L}{3}/u.test(rest) || rest.length > longestTitle || !isSubtitle(rest)) return 0
  const below = /^[\s]*\n[ \t]*\S[^\n]*/.exec(clean.slice(end, end + 300))?.[0]
  return below !== undefined && makesSomething(below) ? rest.length : 0
}

/** "Pattern: Ch 6, join; 12 dc in ring": the work begins behind the heading. */
function opensWork(value: string, { name, wholeLine }: Heading): boolean {
  return (
    !wholeLine &&
    !/^(?:special|stitch|design|by|source|title|name|tips?|hint|important|helpful|assembly|finishing|photo|pic|image|fig|video|link)/.test(
      name,
    ) &&
    /\b(?:ch(?:ain)?[ .-]?\d+|\d+ ?ch(?:ain)?|magic (?:ring|circle|loop))\b/i.test(value)
  )
}

/** "Blue, Rnd 3:": a colour before the label. */
function isColourLead(lead: string): boolean {
  return /^[ \t"'*>•-]*[\p{L} ]{0,24}[-:,.]?[ \t"']{0,40}$/u.test(lead) && lead.length < 30
}

/** Labels that only stand in a heading's line are left out; behind one that has work behind it they are labels. */
function withoutSpokenOf(
  source: SourceText,
  clean: string,
  labels: readonly RoundLabel[],
): RoundLabel[] {
  const working = new Set<number>()
  return labels.filter((label) => {
    const line = lineAt(source, label.start)
    if (!working.has(line) && inHeading(source, clean, label)) return false
    working.add(line)
    return true
  })
}

/** A label inside a heading's line ("Gauge: Rnds 1-3 = 7 cm", "Yarn for rounds 1 and 2") is none. */
function inHeading(source: SourceText, clean: string, label: RoundLabel): boolean {
  // "Materials: ... Ch 8, join. Rnd 1: Ch 3, ...": all of it set in one paragraph.
  if (
    clean.slice(label.markAt, label.end).includes(":") &&
    worksAtOnce.test(clean.slice(label.end, label.end + 40))
  )
    return false
  const line = lineAt(source, label.start)
  const start = source.lineStarts[line - 1] ?? 0
  const heading = headingAt(clean, start, endOfLine(source, line), line)
  return (
    heading?.wholeLine === true &&
    heading.start <= label.start &&
    clean.slice(start, label.start).trim() !== ""
  )
}

/** Work right behind a label. */
const worksAtOnce =
  /^\s*(?:[*([]|ch\b|chain\b|\d+ ?(?:ch|sc|dc|hdc|tr|htr)\b|s[li1|]\b|s[li]ip\b|ss\b|(?:work|working|make|starting|start|with|into?|join|attach)\b|(?:sc|dc|hdc|tr|htr)\b)/i

/** A line without a label goes on with the round before it. */
function goesOn(
  clean: string,
  open: Open,
  text: string,
  blankSince: boolean,
  leads: boolean,
): boolean {
  const body = clean.slice(open.bodyStart, open.end)
  if (body.trim() === "") return true
  if (endsPattern(text)) return false
  if (isTalkLine(text, body)) return false
  if (!blankSince || leads || /^[\s•>-]*rep(?:eat)?\b[^.]{0,24}\*/i.test(text)) return true
  return looksLikeWork(text) && open.end - open.bodyStart < longestRound
}

/** A round's text after which a paragraph of its own is not taken to go on with it. */
const longestRound = 1500
/** Longest first line taken for a title. */
const longestTitle = 60

/** A short first line that is no sentence, no instruction and no statement of terms is the title. */
function plainTitle(
  clean: string,
  headings: readonly Heading[],
  rounds: readonly { readonly start: number }[],
  prose: readonly (Span & { line: number })[],
): string | null {
  const first = prose[0]
  if (
    !first ||
    headings.some((heading) => heading.start < first.start && !/^terms?$/.test(heading.name))
  )
    return null
  if (rounds.length === 0 || (rounds[0]?.start ?? 0) < first.start) return null
  const text = clean.slice(first.start, first.end).trim()
  if (text.length > longestTitle || /[.:;,=*]|\b(?:terms|terminology|ring|join|ch)\b/i.test(text))
    return null
  return text
}

/** A title without the number signs and blanks around it. */
function withoutMarks(text: string): string {
  let end = text.length
  while (end > 0 && /[\s#]/.test(text[end - 1]!)) end -= 1
  return text.slice(0, end).replace(/^[\s#]+/, "")
}
