// Which of the labels a text seems to hold are labels: those that stand where a round may begin and count on
// from one another. Labels are looked for everywhere, also inside a paragraph and glued to the word before.

import { type BareLabel, bareLabelAt, labelAt, type RoundLabel } from "./labels.ts"
import { type Sequel, sequelsIn } from "./sequels.ts"

interface Found {
  readonly label: RoundLabel
  /** How much speaks for it. */
  readonly score: number
}

/** Words that begin something that may be a label. */
const trigger =
  /(?:rounds?|rnds?|rds?|rows?|r(?=[ .]?\d|[ \t]{1,2}:[ \t]?\d{1,2}[ \t]{0,3}[-.:)])|tier(?= \d)|\d{1,3}(?=\.? (?:round|rnd|rd|row|lap|circle)[ \t]?[:.)-]|(?:-\d{1,3})?(?:st|nd|rd|th)?\.? (?:laps?|circles?|series)[ \t]?[:.)-])|\d{1,3}(?:st|nd|rd|th|d)(?![a-z])|(?:first|second|third|fourth|fifth|sixth|seventh|eighth|ninth|tenth|eleventh|twelfth|thirteenth|fourteenth|fifteenth)(?= (?:round|rnd|row|colou?r))|(?:every|each|all)(?= (?:rounds?|rnds?|rows?)\b)|(?:\S{1,4}th|[il]st)(?= (?:row|rnd|round)\b))/gi

/** Words after which a round is spoken of rather than begun. */
const refers =
  /(?:^|[^a-z])(?:rep|repeat|as|of|like|to|from|work|in|and|with|by|for|same|than|until|after|on|over|into|through|or|each|the|this|that|previous|last|next|per|every|working|begin|beginning|end|at|before|your|our|following|prev|between|for this|during|is|was|do|first|both|see|finish|finished|complete|above|below|until|called|up)[ .]*$/i

/** A label this sure is one wherever it stands in the sequence. */
const sure = 4
/** A label less sure counts when it goes on from the one before. */
const likely = 2

/** Work stands behind it, and nothing speaks of it as of a round told elsewhere. */
const spoken = 0.5

export function findLabels(text: string): RoundLabel[] {
  const worded = chosen(candidates(text))
  const bare = worded.length >= 2 ? [] : bareLabels(text)
  const told = bare.length >= 2 && bare.length > worded.length ? bare : worded
  if (told.length > 2) return told
  const unmarked = runOf(candidates(text, spoken))
  return unmarked.length > told.length ? unmarked : told
}

/** Fewest rounds that count on from one another before labels without a mark are taken for labels. */
const shortestRun = 3

/** "... to form circle row 1 ch 2, ... sl st row 2 ch 2, ...": labels inside a text that sets no mark behind them. */
function runOf(found: readonly Found[]): RoundLabel[] {
  const kept: RoundLabel[] = []
  let longest = 0
  for (const { label } of found) {
    const last = kept[kept.length - 1]
    if (label.unnumbered || label.inferred || label.weak) continue
    // Another piece begins with a round 1 of its own.
    if (label.from !== 1 && (!last || label.from !== last.to + 1)) continue
    kept.push(label)
    longest = Math.max(longest, label.to)
  }
  const restart = kept.findIndex((label, i) => i > 0 && label.from === 1)
  const first = restart < 0 ? kept : kept.slice(0, restart)
  return first.length >= shortestRun ? kept : []
}

/** The rounds told without a number go on from the label before them, unless a later label counts without them. */
export function withSequels(text: string, labels: readonly RoundLabel[]): RoundLabel[] {
  const sequels: readonly Sequel[] = labels.length === 0 ? [] : sequelsIn(text)
  const kept: RoundLabel[] = []
  let next = 0
  for (const [i, label] of labels.entries()) {
    kept.push(label)
    const until = labels[i + 1]
    while (next < sequels.length && sequels[next]!.label.start < label.end) next += 1
    const added: RoundLabel[] = []
    let last = label.to
    for (; next < sequels.length; next++) {
      const sequel = sequels[next]!
      if (until && sequel.label.start >= until.start) break
      const to = sequel.until ?? last + sequel.rounds
      if (to <= last) continue
      added.push({ ...sequel.label, from: last + 1, to })
      last = to
    }
    if (!label.unnumbered && (!until || until.from === last + 1 || until.from === 1))
      kept.push(...added)
  }
  return kept
}

function candidates(text: string, least = likely): Found[] {
  const found: Found[] = []
  trigger.lastIndex = 0
  for (let match = trigger.exec(text); match; match = trigger.exec(text)) {
    const at = match.index
    const before = text.charAt(at - 1)
    const glued = /[a-z\d]/.test(before) && /[A-Z]/.test(match[0].charAt(0))
    if (/[\p{L}\d]/u.test(before) && !glued) continue
    const start = lineStartOf(text, at)
    const lead = text.slice(Math.max(start, at - 40), at)
    const label = labelAt(text, at, lead.trim() === "" || /^[\W_]*$/.test(lead))
    if (!label) continue
    const score = scoreOf(text, label, lead, glued)
    if (score < least) {
      trigger.lastIndex = Math.max(trigger.lastIndex, at + match[0].length)
      continue
    }
    found.push({ label, score })
    trigger.lastIndex = Math.max(trigger.lastIndex, label.end)
  }
  return found
}

function lineStartOf(text: string, at: number): number {
  const before = text.lastIndexOf("\n", at - 1)
  return before + 1
}

/** What speaks for a label: where it stands, what follows it. */
function scoreOf(text: string, label: RoundLabel, lead: string, glued: boolean): number {
  const first = lead.trim() === "" || /^[\W_]*$/.test(lead)
  // "Round 1 (white)", "Blue, Rnd 3:", "Motif 1st row": a few words before it on its line.
  const opening = /^[ \t"'*>#•-]*[\p{L} ]{1,24}[-:,.–]?[ \t]{0,40}$/u.test(lead) && lead.length < 30
  const sentence = /[.;:!?)\]}"]\s*$/.test(lead) || /=\s*\d+[\p{L} ]{0,60}\s$/u.test(lead)
  // "2nd Round.": the full stop is a mark, though it is read with the word.
  const stop = text.charAt(label.markAt - 1) === "." ? 1 : 0
  const mark = text.slice(label.markAt - stop, label.end)
  const colon = mark.includes(":")
  const marked = /[.\-–)]/.test(mark)
  let score = 0
  if (first) score += 2.5
  else if (glued) score += 2
  else if (sentence) score += 1.5
  else if (opening && colon) score += 1.5
  else if (refers.test(lead)) score -= 3
  else score -= 0.5
  if (colon) score += 2
  else if (marked) score += 1.2
  else if (/^\s*(?:\n|$)/.test(text.slice(label.end, label.end + 3))) score += first ? 1 : 0
  if (!first && refers.test(lead) && !colon) score -= 1
  if (beginsWork(text.slice(label.end, label.end + 24))) score += 1
  return score
}

/** The words after a label are those a round begins with. */
function beginsWork(text: string): boolean {
  return /^\s*(?:ch\b|ch\d|chain|sl|ss\b|\d+ ?[a-z]|\*|\(|\[|sc\b|dc\b|hdc\b|tr\b|join|with|work|make|in\b|into|using|starting|start|sc in|skip|turn|attach|rep|repeat|cont|same|as\b|begin|beg\b|inc|2 )/i.test(
    text,
  )
}

/** All sure labels, and those likely ones that count on from the label before. */
function chosen(found: readonly Found[]): RoundLabel[] {
  const kept: RoundLabel[] = []
  found.forEach(({ label, score }, i) => {
    const last = kept[kept.length - 1]
    if (label.unnumbered) {
      if (score >= sure - 1) kept.push(label)
      return
    }
    const next = last && !last.unnumbered ? last.to + 1 : null
    const here = label.inferred && next !== null ? { ...label, from: next, to: next } : label
    if (label.inferred && next === null) return
    if (label.weak && here.from !== (next ?? 1)) return
    const goesOn = next === null ? here.from <= 2 : here.from === next
    // What comes later goes on from it.
    const leads = found.slice(i + 1, i + 4).some((later) => later.label.from === here.to + 1)
    if (score >= sure || (goesOn && score >= likely) || (leads && score >= likely + 1))
      kept.push(here)
  })
  return kept
}

/** "1) 6 sc in ring", "2- Ch 5": numbers that count on from one another, where a text labels its rounds in no other way. */
function bareLabels(text: string): BareLabel[] {
  let best: BareLabel[] = []
  for (const lines of [true, false]) {
    const runs: BareLabel[][] = []
    const mark = lines
      ? /(?:^|\n)[ \t>•*-]*(?=\(?\d{1,2}[ \t]?[.):-]|\d{1,2}[ \t]{1,4}[a-z*]|[\u2460-\u2473])/gi
      : /(?:^|[\s.;)=])(?=\d{1,2}[-.):] ?\S)/g
    for (let match = mark.exec(text); match; match = mark.exec(text)) {
      const at = match.index + match[0].length
      if (match[0] === "") mark.lastIndex += 1
      const label = lines || !closesBracket(text, at) ? bareLabelAt(text, at, lines) : null
      const run = runs.at(-1)
      const last = run?.at(-1)
      const begins = label?.from === 1 || (lines && label?.from === 2 && opensBefore(text, at))
      if (!label) continue
      if (run && last && label.from === last.to + 1) run.push(label)
      // A list of materials may be numbered as well, before the rounds are.
      else if (begins && (!run || !worksAfter(text, run))) runs.push([label])
    }
    const kept = runs.at(-1) ?? []
    if (
      kept.length > best.length &&
      worksAfter(text, kept) &&
      best.every((label) =>
        kept.some(({ start }) => start === label.start || start === label.start + 1),
      )
    )
      best = kept
  }
  return best
}

/** "*(3 dc, ch 2) rep from *": a figure at the end of a bracket. */
function closesBracket(text: string, at: number): boolean {
  if (!/^\d{1,2}\)/.test(text.slice(at, at + 3))) return false
  const lead = text.slice(Math.max(0, at - longestBracket), at)
  return lead.lastIndexOf("(") > lead.lastIndexOf(")")
}

const longestBracket = 120

/** Before a line numbered 2 stands a first round without its number. */
function opensBefore(text: string, at: number): boolean {
  const lead = text.slice(Math.max(0, at - firstRoundWithin), at)
  return (
    /\b\d+ ?(?:sc|dc|hdc|htr|tr|single|double|treble)/i.test(lead) &&
    /\b(?:ring|circle|loop|mr|ch)\b/i.test(lead)
  )
}

const firstRoundWithin = 300

/** Most of them have work behind them: a list of materials may be numbered too. */
function worksAfter(text: string, labels: readonly BareLabel[]): boolean {
  const work = labels.filter((label, i) => {
    const body = text.slice(label.end, labels[i + 1]?.start ?? label.end + 120)
    return /\b(?:\d* ?(?:sc|dc|hdc|htr|tr|dtr|single|double|treble|inc)|ch ?-?\d|\d+ ?ch|chain|stitch(?:es)?|sts?)\b/i.test(
      body,
    )
  })
  return work.length * 2 > labels.length
}
