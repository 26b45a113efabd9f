// Finds the parts of a written pattern: headings, rounds with their labels, and everything else.
// Markdown is tolerated by blanking its marks, so that offsets stay those of the text given.

import { type BoughtRing, findBoughtRing } from "./bought-ring.ts"
import { takeFirstRound } from "./first-round.ts"
import { matchBareNumber, matchLabel, type RoundLabel } from "./labels.ts"
import { endOfLine, type SourceText } from "./source-text.ts"
import { isTalkLine } from "./talk.ts"
import type { Span } from "../base/tree.ts"

export interface Heading extends Span {
  readonly name: string
  readonly line: number
  readonly valueStart: number
}

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
}

const headingPattern =
  /^\s*(title|pattern|name|yarns?|threads?|wool|materials?|supplies|hooks?|hook size|needles?|gauge|tension|skew|terms?|terminology|abbreviations?|notes?|pattern notes?|special stitch(?:es)?|stitch(?:es)? used|sizes?|finished size|measurements?|level|skill(?: level)?|difficulty|design(?:ed|er)?(?: by)?|by|source|colou?rs?|instructions|pattern|motif|square|granny|hexagon|circle|(?:(?:base|foundation|centre|center|starting|beginning)\s+)?(?:ring|chain|loop)|base|foundation|centre|center|(?:to\s+)?(?:start|begin)|assembly|finishing|edging|border|tips?|hints?|helpful hints?|important|designer'?s? notes?|(?:photos?|pics?|pictures?|images?|fig(?:ure)?|videos?|links?)\s*\d*)\s*:/i

/** Headings that take the whole line, whatever rounds it speaks of. */
const wholeLine =
  /^(gauge|tension|skew|yarns?|threads?|wool|materials?|supplies|hooks?|hook size|needles?|terms?|terminology|abbreviations?|notes?|pattern notes?|sizes?|finished size|measurements?|level|skill( level)?|difficulty|colou?rs?)$/

/** Headings whose text says how the piece begins. */
const ringHeadings = /^(?:.*\s)?(?:ring|chain|loop|base|foundation|centre|center|start|begin)$/

const blockHeadings =
  /^(notes?|pattern notes?|materials?|supplies|abbreviations?|special stitch(es)?|stitch(es)? used|assembly|finishing)$/

export function layOut(source: SourceText): PatternText {
  const { clean, named, ...size } = findBoughtRing(blankMarkdown(source))
  const bought = named ? { boughtRing: size } : {}
  const layout = { ...layOutWith(source, clean, false), ...bought }
  if (layout.rounds.length > 0) return layout
  const numbered = { ...layOutWith(source, clean, true), ...bought }
  const counted = numbered.rounds.every((round, i) => round.label.from === i + 1)
  return numbered.rounds.length > 1 && counted ? numbered : layout
}

/** @param bare numbers at the start of a line are labels */
function layOutWith(source: SourceText, clean: string, bare: boolean): PatternText {
  const headings: Heading[] = []
  const rounds: {
    label: RoundLabel
    line: number
    start: number
    bodyStart: number
    end: number
  }[] = []
  const prose: (Span & { line: number })[] = []
  let title: string | null = null
  let open: (typeof rounds)[number] | null = null
  let blankSince = false
  for (let line = 1; line <= source.lineStarts.length; line++) {
    const start = source.lineStarts[line - 1] ?? 0
    const end = endOfLine(source, line)
    const text = clean.slice(start, end)
    if (text.trim() === "") {
      blankSince = true
      continue
    }
    if (/^\s{0,3}#{1,6}\s/.test(text)) {
      const words = text.replace(/^[\s#]+|[\s#]+$/g, "")
      const label = matchLabel(clean, start + text.indexOf(words), end, true)
      if (label) {
        open = openRound(rounds, label, line, end)
        blankSince = false
        continue
      }
      if (title === null && rounds.length === 0) title = words
      open = null
      continue
    }
    const plainHeading = wholeLine.test((headingPattern.exec(text)?.[1] ?? "").toLowerCase())
    const number = bare ? matchBareNumber(clean, start + leading(text), end) : null
    const labels = plainHeading ? [] : number ? [number] : labelsIn(clean, start, end)
    const first = labels[0]
    if (first === undefined || first.start > start + leading(text)) {
      const heading = headingPattern.exec(text)
      const before = first === undefined ? end : first.start
      if (heading && !(open && /^\s*(ring|circle|square|pattern)/i.test(text) && !blankSince)) {
        const name = (heading[1] ?? "").toLowerCase()
        const valueStart = start + heading[0].length
        headings.push({ name, line, start, end: before, valueStart })
        if (/^(title|pattern|name)$/.test(name) && title === null) {
          const value = clean.slice(valueStart, before).trim()
          if (value !== "") title = value
        }
        if (ringHeadings.test(name)) prose.push({ line, start: valueStart, end: before })
        open = null
      } else if (open && (!blankSince || clean.slice(open.bodyStart, open.end).trim() === "")) {
        if (first === undefined && isTalkLine(text, clean.slice(open.bodyStart, open.end))) continue
        open.end = before
      } else {
        prose.push({ line, start, end: before })
        open = null
      }
    }
    labels.forEach((label, index) => {
      const next = labels[index + 1]
      open = openRound(rounds, label, line, next ? next.start : end)
    })
    blankSince = false
  }
  takeFirstRound(clean, rounds, prose)
  return {
    clean,
    title: title ?? plainTitle(clean, headings, rounds, prose),
    headings,
    rounds,
    prose,
  }
}

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

/** True for headings whose following lines belong to them. */
export function opensBlock(name: string): boolean {
  return blockHeadings.test(name)
}

function openRound<R>(
  rounds: (
    | R
    | { label: RoundLabel; line: number; start: number; bodyStart: number; end: number }
  )[],
  label: RoundLabel,
  line: number,
  end: number,
) {
  const round = {
    label,
    line,
    start: label.start,
    bodyStart: label.end,
    end: Math.max(end, label.end),
  }
  rounds.push(round)
  return round
}

function leading(text: string): number {
  return text.length - text.trimStart().length
}

/** Labels on one line: one at its start, and further ones after the end of a sentence. */
function labelsIn(clean: string, start: number, end: number): RoundLabel[] {
  const labels: RoundLabel[] = []
  const text = clean.slice(start, end)
  let at = start + leading(text)
  const first = matchLabel(clean, at, end, true)
  if (first) {
    labels.push(first)
    at = first.end
  }
  const further =
    /(?:[.;)\]]|\s)\s+(?=(?:rounds?|rnds?|rds?|rows?|r)\b\.?\s*\d|r\d|\d+(?:st|nd|rd|th|d)\s+(?:round|rnd|row)|(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth)\s+(?:round|rnd|row))/gi
  further.lastIndex = Math.max(0, at - start - 1)
  for (let found = further.exec(text); found; found = further.exec(text)) {
    const where = start + found.index + found[0].length
    if (where < at) continue
    if (
      /\b(?:rep|repeat|as|of|like|to|from|work|in|and|with|by|for|same|than|until|after|on|over|into|through|or|each|the|this|that|previous|last)\.?\s*$/i.test(
        text.slice(0, where - start),
      )
    )
      continue
    const label = matchLabel(clean, where, end, false)
    if (!label) continue
    labels.push(label)
    further.lastIndex = Math.max(further.lastIndex, label.end - start)
  }
  return labels
}

function blankMarkdown(source: SourceText): string {
  let text = source.plain
  if (/[_`\\<>|#~-]/.test(text)) {
    if (/[_`|~\\]/.test(text))
      text = text
        .replace(/^[ \t]*(?:```|~~~)[^\n\r]*$/gm, blank)
        .replace(tableRow, tableRowAsRound)
        .replace(/[_`|]/g, " ")
        .replace(/\\(?=[*_#[\](){}.-])/g, " ")
    if (/^[ \t]*[>+-]/m.test(text))
      text = text
        .replace(/^[ \t]*(?:>[ \t]?)+/gm, blank)
        .replace(/^[ \t]*\+[ \t]+(?=(?:rounds?|rnds?|rows?|r)\b|[\w ]{1,20}:)/gim, blank)
        .replace(/^[ \t]*-[ \t]+(?!\d+ ?[a-z]+(?: [a-z]+)?[.)]*[ \t]*$)/gim, blank)
        .replace(/^[ \t]*-{3,}[ \t]*$/gm, blank)
    if (text.includes("<")) text = text.replace(/<\/?[a-z][^>\n]{0,80}>/gi, blank)
  }
  // "a) make a ring", "b) ch 3": steps of one round on lines of their own.
  text = text.replace(/^[ \t]*\(?[a-h]\)[ \t]+/gm, blank)
  if (text.includes("*"))
    text = text
      .replace(
        /^[ \t]*\*[ \t]+(?=(?:\*\*)?(?:rounds?|rnds?|rds?|rows?|r|yarn|hook|gauge|terms)\b)/gim,
        blank,
      )
      .replace(
        /^([ \t]*)\*\*([^*\n\r]{1,60})\*\*/gm,
        (_, space: string, inside: string) => `${space}  ${inside}  `,
      )
      .replace(
        /^([ \t]*)\*([^*\n\r]{1,40}:)\*/gm,
        (_, space: string, inside: string) => `${space} ${inside} `,
      )
      .replace(
        /(?<=[\s([=-])\*\*([([=]?\s*\d[^*\n\r]{0,60}?(?<!\s))\*\*(?=[\s.,;)\]]|$)/gm,
        (_, inside: string) => `  ${inside}  `,
      )
      .replace(/^[ \t]*\*{3,}[ \t]*$/gm, blank)
  return text
}

/** A row of a table of rounds: "| 3 | (1 sc, inc) x 6 | 18 |". */
const tableRow = /^([ \t]*)\|([ \t]*\d{1,3}[ \t]*)\|([^\n\r]*)$/gm

/** The number becomes a label, a last cell that is only a number the total. */
function tableRowAsRound(_: string, lead: string, number: string, rest: string): string {
  const total = rest.replace(
    /\|([ \t]*\d{1,5}[ \t]*)\|([ \t]*)$/,
    (_whole, count: string, tail: string) => `(${count})${tail}`,
  )
  return `${lead} ${number}:${total}`
}

function blank(found: string): string {
  return " ".repeat(found.length)
}
