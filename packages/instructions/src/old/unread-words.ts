// Words the grammar has no place for: passed over when they say nothing of the work, reported otherwise.

import { atPlace } from "./place-grammar.ts"
import type { Finding } from "../base/problem-list.ts"
import { acceptTalk } from "../text/talk.ts"
import type { Token } from "../words/tokens.ts"
import { isIgnored, isKnownWord, nearestWord } from "./vocabulary.ts"
import { stitchNamed, type Words } from "./words.ts"

/** Longest piece of the text quoted in a message. */
const longestQuote = 24

function shortened(text: string): string {
  return text.length > longestQuote ? `${text.slice(0, longestQuote)}...` : text
}

/** A word like "in" whose place is not understood: the word that spoils it is the one to report. */
function leadsToUnknown(words: Words): boolean {
  if (!atPlace(words)) return false
  for (let ahead = 1; ahead <= 4; ahead++) {
    const token = words.peek(ahead)
    if (!token || token.type === "mark") return false
    if (token.type !== "word" || /^(the|next|each|every|same|first|last|a|an|of)$/.test(token.text))
      continue
    return (
      !isIgnored(token.text) && !isKnownWord(token.text) && !stitchNamed(token.text, words.terms)
    )
  }
  return false
}

/** Longest run of words quoted whole. */
const longestRun = 60
const unreadCodes = /^(?:unknown-word|misplaced-mark)$/
const between =
  /^(?:in|into|on|onto|over|around|round|through|the|next|each|every|same|first|last|of|at|to|under)$/

/** Words not understood one after the other become one problem. */
export function joinUnread(
  findings: readonly Finding[],
  tokens: readonly Token[],
  text: string,
): Finding[] {
  const joined: Finding[] = []
  const ordered = [...findings].sort((a, b) => a.start - b.start)
  let next = 0
  let runEnd = 0
  let startsKnown = false
  for (const finding of ordered) {
    const before = joined[joined.length - 1]
    while (next < tokens.length && tokens[next]!.start < runEnd) next += 1
    let at = next
    while (at < tokens.length && tokens[at]!.end <= finding.start && saysNothing(tokens[at]!))
      at += 1
    const token = tokens[at]
    const goesOn =
      before !== undefined &&
      unreadCodes.test(before.code) &&
      unreadCodes.test(finding.code) &&
      token?.start === finding.start &&
      finding.start >= runEnd
    runEnd = Math.max(runEnd, finding.end)
    const known = token?.type !== "word" || isKnownWord(token.text)
    if (!goesOn) {
      joined.push(finding)
      while (at < tokens.length && tokens[at]!.start < finding.start) at += 1
      next = at
      const first = tokens[at]
      startsKnown = first?.type !== "word" || isKnownWord(first.text)
      continue
    }
    // Words known elsewhere that follow an unknown one ("blorf in each st") are no problem of their own.
    if (known && !startsKnown) continue
    const said = text.slice(before.start, finding.end).replace(/\s+/g, " ")
    const quote = said.length > longestRun ? `${said.slice(0, longestRun)}...` : said
    joined[joined.length - 1] = {
      severity: "error",
      code: "unknown-word",
      start: before.start,
      end: finding.end,
      message: `In this round "${quote}" is not understood here.`,
      hint: usualHint,
    }
  }
  return joined
}

function saysNothing(token: Token): boolean {
  return token.type === "word" && (isIgnored(token.text) || between.test(token.text))
}

const usualHint =
  "Write it in the usual words, or take it out if it says nothing about the stitches."

/** "... the pairs of dc": a stitch that belongs to the words before it must not be taken for one to work. */
function ownsStitch(words: Words): boolean {
  const before = words.tokens[words.at - 1]
  if (words.text() !== "of" || before?.type !== "word") return false
  const next = words.peek(1)
  return next?.type === "word" && stitchNamed(next.text, words.terms) !== null
}

/** Passes over a word that means nothing to the work, or reports it. */
export function passWord(words: Words): void {
  const token = words.peek()
  if (!token) return
  if (token.type === "word" && acceptTalk(words)) return
  if (leadsToUnknown(words)) {
    while (
      /^(in|into|on|onto|over|around|round|between|through|the|next|each|every|same|first|last|a|an|of|at|to|under)$/.test(
        words.text(),
      )
    )
      words.at += 1
    return
  }
  if (ownsStitch(words)) {
    words.at += 2
    words.report({
      severity: "error",
      code: "unknown-word",
      start: token.start,
      end: words.lastEnd(),
      message: `In this round "of ${words.tokens[words.at - 1]?.text}" is not understood here.`,
      hint: usualHint,
    })
    return
  }
  words.at += 1
  if (token.type === "word" && isIgnored(token.text)) return
  if (token.type === "mark" && /^(?:["'.,;:!?-]|[\u2190-\u21ff])$/.test(token.text)) return
  const near = token.type === "word" ? nearestWord(token.text) : null
  const said =
    token.type === "number" || token.type === "ordinal"
      ? `the number ${token.text} has nothing to count here`
      : `"${shortened(token.text)}" is not understood here`
  words.report({
    severity: "error",
    code: token.type === "word" ? "unknown-word" : "misplaced-mark",
    start: token.start,
    end: token.end,
    message: `In this round ${said}.`,
    hint: near && near !== token.text ? `Did you mean "${near}"?` : usualHint,
  })
}
