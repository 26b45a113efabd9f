// Lines and sentences between the rounds that say nothing of the work: "Photo 2: two rounds done!", "Ta-da!".

import type { Finding } from "./problem-list.ts"
import { isKnownWord, nearestWord } from "./vocabulary.ts"
import { stitchNamed, type Words } from "./words.ts"

/** Words of the work; a line with none of them is talk. */
const wordsOfWork =
  /\*|\b(?:ch|chs|chains?|sc|dc|hdc|htr|tr|dtr|trtr|sl|ss|sts?|stitch(?:es)?|sps?|spaces?|loops?|lps?|join(?:ing)?|turn|rep|repeat|skip|sk|miss|incs?|decs?|increas\w*|decreas\w*|picots?|puffs?|popcorns?|pc|clusters?|cl|shells?|bobbles?|tufts?|fans?|ring|single|double|treble|trebles|half|corners?|fasten|work|working|magic|into|total|next|each|every|even|around|blo|flo|[fb]p\w*|mr|mc|cc|rows?|rnds?)\b/i
const endsSentence = /(?:[.!?)\]}"]|\p{Extended_Pictographic})\s*$/u
const beginsSentence = /^\s*(?:\p{Lu}|["'[(]|\p{Extended_Pictographic})/u

/** A line after the text of a round that says nothing of the work, so that the round ended before it. */
export function isTalkLine(line: string, before: string): boolean {
  if (!endsSentence.test(before) || !beginsSentence.test(line)) return false
  return /\p{L}{3}/u.test(line) && !wordsOfWork.test(line)
}

/** Words of any sentence, which say nothing of what it is about. */
const connecting =
  /^(?:a|an|the|and|or|so|but|of|to|in|on|at|for|with|from|by|as|is|are|it|its|you|your|i|my|we|this|that|there|here|now|then|not|no|yes|all|just|very|too|up|out|off|if|before|after|over|under)$/

/** Longest sentence passed over, in words. */
const longestTalk = 30

/** A sentence of words that are not of the work and near to none of them: told in a note, and stepped over. */
export function acceptTalk(words: Words): boolean {
  const before = words.tokens[words.at - 1]
  if (!before || !/^[.!?)\]}]$/.test(before.text)) return false
  let others = 0
  let at = 0
  for (; at < longestTalk; at++) {
    const token = words.peek(at)
    if (!token || /^[.!?]$/.test(token.text)) break
    if (token.type === "mark" && /^[,'"-]$/.test(token.text)) continue
    if (token.type !== "word") return false
    if (connecting.test(token.text)) continue
    const { text } = token
    if (isKnownWord(text) || stitchNamed(text, words.terms) || words.locals.has(text)) return false
    if (nearestWord(text) !== null) return false
    others += 1
  }
  if (others < 2 || at === longestTalk) return false
  const start = words.start()
  words.at += at
  words.report(talkFinding(start, words.lastEnd()))
  return true
}

function talkFinding(start: number, end: number): Finding {
  return {
    severity: "note",
    code: "not-of-the-work",
    start,
    end,
    message: "This sentence says nothing of the work and is passed over.",
    hint: "",
  }
}
