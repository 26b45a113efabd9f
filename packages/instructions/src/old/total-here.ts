// Whether the words here begin a stated total that stands without brackets: "... join. 24 dc", "you should
// have 24 sts".

import type { Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** Words with which the end of the piece begins, after the total of its last round. */
const finishes = /^(?:fasten|finish|weave|darn|sew|cut|break)$/

/** A figure that begins a sentence of its own after work has been done: "... join. 24 dc". */
export function isTotalHere(words: Words, steps: readonly Step[]): boolean {
  if (steps.length === 0) return false
  const text = words.text()
  if (
    text === "you" &&
    (words.text(1) === "should" ||
      words.text(1) === "will" ||
      words.text(1) === "now" ||
      words.text(1) === "have")
  )
    return true
  if (text === "total") return true
  if (
    (text === "that" || text === "this" || text === "which") &&
    /^(?:makes|gives)$/.test(words.text(1))
  )
    return true
  if (text === "there" && /^(are|should|will)$/.test(words.text(1))) return true
  if (!words.isNumber()) return false
  const before = words.tokens[words.at - 1]?.text
  if (closesRound(steps[steps.length - 1]) && isFigureAtEnd(words)) return true
  // "sc in each st, 36 sts.": after a comma only at the very end, and only of stitches.
  const closing =
    before === "," && /^(?:sts|stitches)$/.test(words.text(1)) && /^[.)]?$/.test(words.text(2))
  if (before !== "." && before !== ";" && !closing) return false
  const following = words.tokens.slice(words.at)
  const finish = following.findIndex((token, i) => i > 0 && finishes.test(token.text))
  const rest = finish < 0 ? following : following.slice(0, finish)
  if (rest.length > 14) return false
  return (
    !rest.some(
      (token, i) =>
        /^(in|into|next|rep|repeat|from|join|turn)$/.test(token.text) ||
        (token.text === "ch" && rest[i + 1]?.type === "number") ||
        token.text === "*",
    ) && lastIsJoinOrRepeat(steps)
  )
}

function closesRound(step: Step | undefined): boolean {
  return step?.do === "join" || (step?.do === "slip" && step.place?.at === "made")
}

/** "- 6 sc in magic ring": a dash before work, not before a total. */
export function isWorkAhead(words: Words): boolean {
  for (let ahead = 0; ahead < 8; ahead++) {
    const text = words.text(ahead)
    if (/^[.;(]?$/.test(text)) return false
    if (!/^(?:in|into)$/.test(text)) continue
    return (
      /^(?:next|each|every|same|ring|magic|the|first|last|ch|sp|it)$/.test(words.text(ahead + 1)) &&
      !/^(?:round|rnd|end|total)$/.test(words.text(ahead + 2))
    )
  }
  return false
}

/** "... join 24 dc": a figure and what it counts, and nothing after. */
function isFigureAtEnd(words: Words): boolean {
  const left = words.tokens.length - words.at - 1
  return (
    left > 0 &&
    left < 5 &&
    words.tokens
      .slice(words.at + 1)
      .every((token) => token.text === "." || (token.type === "word" && !isPlaceWord(token.text)))
  )
}

function isPlaceWord(text: string): boolean {
  return /^(?:in|into|next|each|same|around|over|twice|times|turn|more)$/.test(text)
}

function lastIsJoinOrRepeat(steps: readonly Step[]): boolean {
  const last = steps[steps.length - 1]
  return (
    last !== undefined &&
    (last.do === "join" ||
      last.do === "repeat" ||
      last.do === "as-round" ||
      last.do === "turn" ||
      last.do === "work" ||
      last.do === "slip" ||
      last.do === "group")
  )
}
