// What a bracket holds: figures of a total, or an aside in plain words.

import { closers } from "./bracket-grammar.ts"
import type { Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

const softensTotal = new Set(
  "if not divide needs between or about approx approximately then stated printed".split(" "),
)
const tellsWork = new Set("slst ss join turn skip sk picot counts count next same".split(" "))
const namesTotal = new Set(
  "sts stitches sps spaces loops petals total scallops shells groups points clusters popcorns picots corners stated holes leaves if more printed repeats bars".split(
    " ",
  ),
)

/** A bracket that holds nothing but figures and units, at the end of a sentence. */
export function isTotalBracket(words: Words, close: string, steps: readonly Step[]): boolean {
  let depth = 0
  let end = -1
  for (let i = words.at; i < words.tokens.length; i++) {
    const text = words.tokens[i]?.text ?? ""
    if (text in closers) depth += 1
    else if (text === ")" || text === "]" || text === "}") {
      depth -= 1
      if (depth === 0) {
        end = i
        break
      }
    }
  }
  if (end < 0 || words.tokens[end]?.text !== close) return false
  const after = words.tokens[end + 1]?.text ?? ""
  if (/^(in|into|x|times|twice|once|around|to|on|over|along|thrice|until|across)$/.test(after))
    return false
  const follow = words.tokens[end + 1]
  if (follow?.type === "number" && /^(times|more|x|time)$/.test(words.tokens[end + 2]?.text ?? ""))
    return false
  const inner = words.tokens.slice(words.at + 1, end)
  if (!inner.some((token) => token.type === "number")) return false
  const chains = inner.some(
    (token, i) => token.text === "ch" && inner[i + 1]?.type === "number" && inner[i + 1]?.spaced,
  )
  if (!chains && inner.some((token) => softensTotal.has(token.text))) return true
  if (
    inner.some(
      (token, i) =>
        token.text === "ch" &&
        inner[i + 1]?.type === "number" &&
        inner[i + 1]?.spaced &&
        !/^(sp|sps|loop|loops|lp)$/.test(inner[i + 2]?.text ?? ""),
    )
  )
    return false
  if (
    inner.some(
      (token, i) =>
        tellsWork.has(token.text) &&
        !(/^(slst|ss)$/.test(token.text) && inner[i - 1]?.type === "number"),
    )
  )
    return false
  const plural = inner.some((token) => namesTotal.has(token.text))
  if (plural) return true
  const last = words.tokens
    .slice(end + 1)
    .every((token) => /^[.)\];,*-]$/.test(token.text) || token.type === "word")
  return (
    (steps.length > 0 || words.findings.length > 0) &&
    (after === "" || after === "." || after === ";" || last)
  )
}

const asideStarts = new Set([
  "now",
  "note",
  "see",
  "same",
  "here",
  "throughout",
  "and",
  "first",
  "last",
  "rs",
  "ws",
  "right",
  "wrong",
  "using",
  "about",
  "approx",
  "or",
  "optional",
  "made",
  "as",
  "for",
  "the",
  "this",
  "these",
  "if",
  "it",
  "you",
  "not",
  "all",
  "of",
  "on",
  "corner",
  "total",
  "with",
  "color",
  "colour",
])

/** A bracket of plain words, or of other sizes: read over. */
export function readAside(words: Words, close: string): true | null {
  const start = words.at
  words.at += 1
  const inner: string[] = []
  while (!words.done() && words.text() !== close) {
    if (words.text() in closers) return null
    inner.push(words.text())
    words.at += 1
  }
  if (!words.accept(close)) return null
  // "(picot made)", "(5-dc shell made)" tells what has just been done.
  if (/^(?:made|formed|completed|complete)$/.test(inner[inner.length - 1] ?? "")) return true
  if (tellsFirst(inner)) return true
  // "(or ch 2 and work into the 2nd ch from hook)": another way of doing the same.
  if (inner[0] === "or" && inner.length > 2) return true
  // "(not the ch 2!)"
  if (inner[0] === "not" && !inner.some((text) => /^(?:count|counts|counted)$/.test(text)))
    return true
  const numbers = inner.filter((text) => /^\d+$/.test(text)).length
  const first = inner[0] ?? ""
  if (
    numbers === inner.filter((text) => text !== ",").length &&
    inner.length > 1 &&
    words.tokens[start - 1]?.type === "number"
  )
    return true
  if (
    inner.some((text) => /^(round|rounds|rnd|joining|cm|mm|inches|inch)$/.test(text)) &&
    !inner.some((text) => /^(ch|in|into|times)$/.test(text))
  )
    return true
  if (numbers > 0 || inner.length === 0) return null
  if (isColourOnly(inner)) return true
  if (
    inner.some((text) => /^(ch|sc|dc|hdc|tr|sl|st|picot|sk|skip|join|inc|dec)$/.test(text)) &&
    !asideStarts.has(first)
  )
    return null
  if (inner.some((text) => /^(dc|sc|hdc|tr)\d/.test(text))) return null
  return asideStarts.has(first) ? true : null
}

/** "(first dc is ch 3)": how the first of the stitches just counted is made. */
function tellsFirst(inner: readonly string[]): boolean {
  const at = inner[0] === "the" ? 1 : 0
  return (
    /^(?:first|beg|beginning)$/.test(inner[at] ?? "") &&
    /^(?:is|are|being|equals|=)$/.test(inner[at + 2] ?? "") &&
    inner.length <= at + 8
  )
}

function isColourOnly(inner: readonly string[]): boolean {
  return (
    inner.length <= 3 &&
    inner.every((text) =>
      /^(color|colour|red|blue|green|yellow|white|black|grey|gray|pink|purple|cream|a|b|c|d|mc|cc|main|contrast)$/.test(
        text,
      ),
    )
  )
}
