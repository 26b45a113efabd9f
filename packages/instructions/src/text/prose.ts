// What stands outside the rounds and still says something about them: how starting chains count in
// the whole pattern, stitches the pattern defines, and a foundation before round 1.

import type { Terms } from "@roundwright/stitches"
import type { CountsAs, Span, Step } from "../base/tree.ts"
import { readCountsNote } from "../grammar/counts-as.ts"
import { Cursor, isStitchWord, type LocalStitch, stitchNamed } from "../grammar/cursor.ts"
import { readStepsOf } from "../grammar/read-words.ts"
import { lexemesOf } from "../words/lexemes.ts"
import { tokenise } from "../words/tokens.ts"
import type { PatternText } from "./layout.ts"

export interface ProseFound {
  /** By number of chains; 0 stands for any. */
  readonly startCounts: ReadonlyMap<number, CountsAs>
  readonly locals: Map<string, LocalStitch>
  /** Steps before round 1, such as the ring. */
  readonly foundation: readonly Step[]
  /** Lines that look like work but belong to no round. */
  readonly stray: readonly Span[]
}

const definition =
  /^\s*(?:special(?:\s+st(?:itch)?(?:es)?)?\s*:\s*|special\s+)?([a-z][a-z -]{0,28}?)\s{0,9}(?:\(([a-z -]{1,16})\))?\s{0,9}(?:=|:|-\s)\s*(?=\S)/i
const looksLikeWork = /\b(?:\d+\s*(?:sc|dc|hdc|tr|ch|htr|sts?)|ch\s*-?\d+|(?:sc|dc|hdc|tr)\s+in)\b/i
const countSentence =
  /\b(?:chs?|chains?)\b[^.;\n]{0,60}\bcounts?\b|\bcounts?\b[^.;\n]{0,40}\b(?:as|not)\b/i
const ringSentence =
  /\b(?:start|begin|commence)\s+with\s+an?\s+\w+[ -](?:ch(?:ain)?|st(?:itch)?)[ -]ring\b|\b(?:form|make)\s+(?:a\s+|the\s+)?(?:ring|circle|loop)\b|\bmagic\s+(?:ring|circle|loop)\b|\badjustable\s+(?:ring|loop)\b|\bjoin\b[^.\n]{0,30}\bring\b/i
/** A line that begins with chains and closes them. */
const closedChains =
  /^\s*(?:make\s+|work\s+)?(?:ch(?:ain)?\s*-?\d+|\d+\s*ch(?:ain)?s?)\b\.?[^.\n]{0,60}\b(?:join|unite|sl\s*st|s\.?\s?s|slip)\b/i

/** "Form 6 ch into a ring", "6 ch joined in a ring". */
const chainsToRing =
  /^\s*(?:form|make|join|work)?\s{0,9}\d+\s{0,9}ch(?:ain)?s?\b[^.\n]{0,20}\b(?:ring|circle|loop)\b/i
/** A line of nothing but chains: what the first round is worked on. */
const onlyChains =
  /^\s*(?:(?:with|using|in)\s+[\w ]{1,24}[,:]\s*)?(?:make\s+|work\s+|begin\s+with\s+)?(?:ch(?:ain)?\s*-?\d+|\d+\s*ch(?:ain)?s?)(?:\s+(?:loosely|sts?|stitches)){0,9}\s{0,40}\.?\s{0,40}$/i

export function readProse(layout: PatternText, terms: Terms): ProseFound {
  const startCounts = new Map<number, CountsAs>()
  const locals = new Map<string, LocalStitch>()
  const stray: Span[] = []
  let foundation: readonly Step[] = []
  const firstRound = layout.rounds[0]?.start ?? Number.POSITIVE_INFINITY
  const lines: Span[] = [
    ...layout.prose,
    ...layout.headings
      .filter((heading) => /note|special|stitch|abbrev/.test(heading.name))
      .map((heading) => ({ start: heading.valueStart, end: heading.end })),
  ]
  for (const line of lines) {
    const text = layout.clean.slice(line.start, line.end)
    if (text.trim() === "" || text.length > 4000) continue
    if (readStartCounts(text, line.start, layout.clean, terms, startCounts)) continue
    if (
      line.start < firstRound &&
      (ringSentence.test(text) ||
        closedChains.test(text) ||
        chainsToRing.test(text) ||
        onlyChains.test(text))
    ) {
      const steps = stepsOf(layout.clean, line, terms, locals)
      if (
        steps.some(
          (step) =>
            step.do === "ring" || step.do === "join" || step.do === "chain" || step.do === "picot",
        )
      ) {
        // A later line that begins with chains makes another ring: the last one before round 1 is meant.
        if (/\byo\b|yarn over|insert hook/i.test(text)) continue
        const begins =
          steps[0]?.do === "chain" || steps[0]?.do === "ring" || steps[0]?.do === "picot"
        const making = steps.filter((step) =>
          /^(?:chain|ring|join|picot|slip|mode|note-counts)$/.test(step.do),
        )
        foundation = begins ? making : [...foundation, ...making]
        continue
      }
    }
    if (readDefinition(text, line.start, layout.clean, terms, locals)) continue
    readInParagraph(text, line.start, layout.clean, terms, locals)
    if (looksLikeWork.test(text) && !/[=@]/.test(text)) stray.push(line)
  }
  for (const round of layout.rounds)
    readInRound(layout.clean, round.bodyStart, round.end, terms, locals)
  return { startCounts, locals, foundation, stray }
}

/** "Pattern notes: weave in ends. Shell: 2 dc, ch 2, 2 dc in indicated sp. ...": definitions one after the other. */
function readInParagraph(
  text: string,
  start: number,
  clean: string,
  terms: Terms,
  locals: Map<string, LocalStitch>,
): void {
  for (const match of text.matchAll(definedInside)) {
    const name = match[1]!
    if (locals.has(name.toLowerCase().replace(/[^a-z]/g, ""))) continue
    const from = match.index + match[0].indexOf(name)
    const part = text.slice(from, match.index + match[0].length)
    readDefinition(part, start + from, clean, terms, locals)
  }
}

const definedInside =
  /[.;,] (shell|v[- ]?st|v[- ]?stitch|fan|petal|picot|cluster|popcorn|puff|bobble)(?: st(?:itch)?)?(?: \([a-z -]{1,16}\))?[:=] ?[^.;:]{5,160}/gi

/** "(shell = 5 dc)", "V-stitch = dc, ch 1, dc.": what a round says of a name it uses itself. */
function readInRound(
  clean: string,
  start: number,
  end: number,
  terms: Terms,
  locals: Map<string, LocalStitch>,
): void {
  for (let at = clean.indexOf("=", start); at >= 0 && at < end; at = clean.indexOf("=", at + 1)) {
    let from = at
    while (from > start && at - from < longestInRound && !/[(.;*\n]/.test(clean[from - 1]!))
      from -= 1
    let to = at
    while (to < end && to - at < longestInRound && !/[).;\n]/.test(clean[to]!)) to += 1
    const text = clean.slice(from, to)
    const name = clean.slice(from, at).trim()
    if (text.length > longestInRound || !namesGroup.test(name)) continue
    readDefinition(
      text.trimStart(),
      from + text.length - text.trimStart().length,
      clean,
      terms,
      locals,
    )
  }
}

const namesGroup =
  /^(?:corner|shell|fan|petal|group|v|v[ -]?st|v[ -]?stitch|cluster|popcorn|bobble|puff|picot|granny)s?$/i
const longestInRound = 120

function stepsOf(
  clean: string,
  span: Span,
  terms: Terms,
  locals: Map<string, LocalStitch>,
): Step[] {
  return [...readStepsOf(clean, span.start, span.end, terms, locals).steps]
}

/** "Ch 3 at the beginning of a round counts as dc throughout." */
function readStartCounts(
  text: string,
  start: number,
  clean: string,
  terms: Terms,
  found: Map<number, CountsAs>,
): boolean {
  if (!countSentence.test(text)) return false
  let any = false
  for (const sentence of text.matchAll(/[^.;]+/g)) {
    if (!countSentence.test(sentence[0])) continue
    const from = start + sentence.index
    const tokens = tokenise(clean, from, from + sentence[0].length)
    for (let i = 0; i < tokens.length; i++) {
      if (!/^(ch|chs|chain|chains|beginning|beg|starting|turning)$/.test(tokens[i]?.text ?? ""))
        continue
      const countsAt = tokens.findIndex(
        (token, k) => k > i && /^(count|counts|counted)$/.test(token.text),
      )
      if (countsAt < 0) continue
      const negated =
        tokens.slice(i, countsAt).some((token) => /^(not|doesn't|don't|never)$/.test(token.text)) ||
        tokens[countsAt - 1]?.text === "not"
      const number = tokens.slice(i, countsAt).find((token) => token.type === "number")?.value ?? 0
      const lexemes = lexemesOf(tokens.slice(countsAt), (word) => isStitchWord(word, terms))
      const cursor = new Cursor(lexemes, terms, new Map(), from + sentence[0].length)
      const note = negated ? { countsAs: { counts: false } as CountsAs } : readCountsNote(cursor)
      if (note) {
        found.set(number, note.countsAs)
        any = true
      }
      break
    }
  }
  return any
}

/** Words of a definition that may be passed over: a little talk, no stitch. */
const mostCostOfDefinition = 1

/** "Picot: ch 3, sl st in first ch", "Shell = 5 dc in same st", "Cluster (cl): dc3tog". */
function readDefinition(
  text: string,
  start: number,
  clean: string,
  terms: Terms,
  locals: Map<string, LocalStitch>,
): boolean {
  const match = definition.exec(text)
  if (!match) return false
  const name = (match[1] ?? "")
    .toLowerCase()
    .replace(/\b(?:st|stitch)\b/g, "")
    .replace(/[^a-z]/g, "")
  const short = (match[2] ?? "").toLowerCase().replace(/[^a-z]/g, "")
  if (name === "") return false
  // "dc = double crochet" explains a name that is known.
  if (stitchNamed((match[1] ?? "").toLowerCase().trim(), terms)) return true
  const bodyStart = start + match[0].length
  const { steps, cost } = readStepsOf(clean, bodyStart, start + text.length, terms, locals)
  if (steps.length === 0 || cost > mostCostOfDefinition) return false
  const local = localOf(steps)
  if (!local) return false
  for (const key of [name, short, `${name}s`]) if (key !== "" && key !== "s") locals.set(key, local)
  return true
}

function localOf(steps: readonly Step[]): LocalStitch | null {
  const only = steps[0]
  if (!only) return null
  if (steps.length === 1 && only.do === "picot") return { picotChains: only.chains }
  if (steps.length === 1 && only.do === "work" && only.stitch.kind.gathered)
    return { kind: only.stitch.kind }
  const inner: Step[] = []
  for (const step of steps) {
    if (step.do === "group") inner.push(...step.steps)
    else if (step.do === "work") inner.push({ ...step, place: null })
    else if (step.do === "chain" || step.do === "picot" || step.do === "repeat") inner.push(step)
    else return null
  }
  return inner.some((step) => step.do === "work") ? { steps: inner } : null
}
