// Parentheses and brackets: a group worked in one place, a repeat, a total, how a chain counts, or
// an aside. What follows the bracket decides, then what is in it.

import { readSteps } from "./grammar.ts"
import { atPlace, readPlace, readUntil } from "./place-grammar.ts"
import { readTimes } from "./repeat-grammar.ts"
import { readKind, readStitch } from "./stitch-grammar.ts"
import { readTotal } from "./total-grammar.ts"
import type { CountsAs, Place, StatedTotal, Step } from "./tree.ts"
import type { Words } from "./words.ts"

const closers: Readonly<Record<string, string>> = { "(": ")", "[": "]", "{": "}" }

/** A bracket and what belongs to it. */
export function readBracket(
  words: Words,
  steps: readonly Step[],
  totals: StatedTotal[],
): Step[] | null {
  const opening = words.peek()
  const close = closers[opening?.text ?? ""]
  if (!opening || !close) return null
  const start = opening.start
  const counts = words.attempt(() => {
    words.at += 1
    const note = readCountsNote(words)
    if (!note || !words.accept(close)) return null
    return note
  })
  if (counts) return [{ ...words.since(start), ...counts, do: "note-counts" }]
  if (isTotalBracket(words, close, steps)) {
    const total = words.attempt(() => {
      words.at += 1
      const found = readTotal(words, close)
      if (!found || !words.accept(close)) return null
      return found
    })
    if (total) {
      totals.push(total)
      return []
    }
  }
  const aside = words.attempt(() => readAside(words, close))
  if (aside) return []
  words.at += 1
  const run = readSteps(words, () => false)
  totals.push(...run.totals)
  if (!words.accept(close)) {
    const wrong = words.accept(")", "]", "}")
    if (!wrong)
      words.report({
        severity: "warning",
        code: "bracket-not-closed",
        start: opening.start,
        end: opening.end,
        message: `The bracket "${opening.text}" is not closed.`,
        hint: `Put a "${close}" where it ends.`,
      })
  }
  return afterGroup(words, run.steps, start)
}

/** What is done with a bracket's steps: repeated, worked in one place, or simply worked. */
function afterGroup(words: Words, inner: readonly Step[], start: number): Step[] {
  if (inner.length === 0) return []
  const times = readTimes(words, false)
  if (times && times.kind !== "until") {
    const repeat: Step = {
      ...words.since(start),
      do: "repeat",
      body: inner,
      last: null,
      ending: null,
      times,
    }
    const shared = words.attempt(() => readSharedPlace(words, repeat))
    if (shared) return shared
    const place = atPlace(words) && words.text() !== "to" ? readPlace(words) : null
    if (place)
      return [{ ...words.since(start), do: "group", steps: [{ ...repeat, body: inner }], place }]
    words.attempt(() => readUntil(words))
    return [repeat]
  }
  if (times)
    return [{ ...words.since(start), do: "repeat", body: inner, last: null, ending: null, times }]
  const until = words.attempt(() => (words.text() === "along" ? readUntil(words) : null))
  if (until)
    return [
      {
        ...words.since(start),
        do: "repeat",
        body: inner,
        last: null,
        ending: null,
        times: { kind: "until", until },
      },
    ]
  const place = atPlace(words) && words.text() !== "to" ? readPlace(words) : null
  if (place) {
    const later = words.attempt(() => readTimes(words, false))
    const group: Step = { ...words.since(start), do: "group", steps: inner, place }
    if (later && place.at === "ring" && later.kind !== "until")
      return [
        {
          ...group,
          steps: [
            {
              ...words.since(start),
              do: "repeat",
              body: inner,
              last: null,
              ending: null,
              times: later,
            },
          ],
        },
      ]
    if (later)
      return [
        {
          ...words.since(start),
          do: "repeat",
          body: [group],
          last: null,
          ending: null,
          times: later,
        },
      ]
    return [group]
  }
  if (/^(corner|corners)$/.test(words.text()) && !atPlace(words)) {
    // "(2 dc, ch 2, 2 dc) corners": one in each.
    words.at += 1
    const corners: Place = {
      ...words.since(start),
      at: "each",
      nouns: [{ what: "corner", corner: true }],
      until: { kind: "around" },
    }
    return [{ ...words.since(start), do: "group", steps: inner, place: corners }]
  }
  return [...inner]
}

/** "(1 sc, ch 3) twice and 1 sc in top of that dc": the place is that of the whole. */
function readSharedPlace(words: Words, repeat: Step): Step[] | null {
  if (!words.accept("and", "&")) return null
  const start = words.start()
  let count = 1
  if (words.isNumber()) {
    count = words.value()
    words.at += 1
  }
  const stitch = readStitch(words)
  const place = stitch ? readPlace(words) : null
  if (!stitch || !place || place.at === "each") return null
  const last: Step = { ...words.since(start), do: "work", stitch, count, place: null }
  return [{ ...words.since(repeat.start), do: "group", steps: [repeat, last], place }]
}

/** "counts as dc", "counts as first dc, ch 2", "does not count as a st", "3 skipped ch count as dc". */
export function readCountsNote(words: Words): { countsAs: CountsAs; chains?: number } | null {
  return words.attempt(() => {
    let chains: number | undefined
    const short = readShortCount(words)
    if (short) return short
    words.accept(
      "first",
      "these",
      "this",
      "the",
      "beg",
      "beginning",
      "skipped",
      "starting",
      "initial",
      "turning",
    )
    if (words.isNumber()) {
      words.at += 1
      words.accept("-")
    }
    words.accept("skipped", "missed", "first")
    if (words.accept("ch", "chs", "chain", "chains")) {
      words.accept("-")
      if (words.isNumber()) {
        chains = words.value()
        words.at += 1
      }
    }
    words.accept("at", "beg", "beginning", "will", "now", "here")
    const withChains = (countsAs: CountsAs) => ({
      countsAs,
      ...(chains === undefined ? {} : { chains }),
    })
    const negative =
      words.acceptAll("does", "not") ||
      words.acceptAll("do", "not") ||
      words.accept("doesn't", "don't", "not") ||
      words.acceptAll("is", "not") ||
      words.acceptAll("will", "not")
    if (negative) {
      if (!words.accept("count", "counts", "counted", "included")) return null
      skipRest(words)
      return withChains({ counts: false })
    }
    words.accept("always", "now", "also")
    if (!words.accept("count", "counts", "counted", "counting", "stands", "equals", "is", "are"))
      return null
    words.accept("counted", "considered")
    words.accept("as", "for", "=")
    words.accept("a", "the", "your", "one", "an")
    words.accept("first", "1st", "beg")
    if (words.peek()?.type === "ordinal") words.at += 1
    const named = words.attempt(() => {
      words.accept("1", "one")
      return readKind(words)
    })
    if (!named) {
      const space = words.attempt(() => {
        // "counts as ch-3 sp": the tall stitch stands for the end of the last space.
        if (!words.accept("ch", "chain")) return null
        words.accept("-")
        if (!words.isNumber()) return null
        const size = words.value()
        words.at += 1
        if (!words.accept("sp", "space", "loop")) return null
        return size
      })
      if (space !== null) return withChains({ counts: true, space })
      if (!words.accept("st", "stitch", "sts")) return null
      skipRest(words)
      return withChains({ counts: true })
    }
    const extra = words.attempt(() => {
      words.accept("st", "stitch")
      if (!words.accept(",", "+", "and", "plus", "&", "with")) return null
      words.accept("a", "first", "one")
      if (words.isNumber() && /^(ch|chs|chain|chains)$/.test(words.text(1))) {
        const count = words.value()
        words.at += 2
        return count
      }
      if (!words.accept("ch", "chain")) return null
      words.accept("-")
      if (!words.isNumber()) return 1
      const count = words.value()
      words.at += 1
      words.accept("sp", "space")
      return count
    })
    skipRest(words)
    const tog = named.gathered !== undefined
    return withChains({
      counts: true,
      kind: named,
      ...(tog ? { tog } : {}),
      ...(extra === null ? {} : { chains: extra }),
    })
  })
}

/** "(first dc and ch-1)", "(= dc, ch 2)": what the chain stands for, without a verb. */
function readShortCount(words: Words): { countsAs: CountsAs } | null {
  return words.attempt(() => {
    if (!words.accept("first", "1st", "=", "equals", "stands", "for")) return null
    words.accept("for")
    words.accept("the")
    if (words.peek()?.type === "ordinal") words.at += 1
    words.accept("first", "1", "one", "a")
    const kind = readKind(words)
    if (!kind || kind.gathered) return null
    let chains = 0
    const space = words.attempt(() => {
      if (!words.accept("and", "+", ",", "plus")) return null
      words.accept("a", "first")
      if (!words.accept("ch")) return null
      words.accept("-")
      if (!words.isNumber()) return null
      const count = words.value()
      words.at += 1
      words.accept("sp", "space")
      return count
    })
    if (space !== null) chains = space
    if (!/^[)\],;.-]?$/.test(words.text())) return null
    return { countsAs: { counts: true, kind, ...(chains > 0 ? { chains } : {}) } }
  })
}

function skipRest(words: Words): void {
  while (!words.done() && !/^[)\]};.,-]$/.test(words.text()) && words.peek()?.type !== "number")
    words.at += 1
}

/** A bracket that holds nothing but figures and units, at the end of a sentence. */
function isTotalBracket(words: Words, close: string, steps: readonly Step[]): boolean {
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
  if (
    !chains &&
    inner.some((token) =>
      /^(if|not|divide|needs|between|or|about|approx|approximately|then|stated|printed)$/.test(
        token.text,
      ),
    )
  )
    return true
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
      (token) =>
        /^(slst|ss|join|turn|skip|sk|picot|counts|count|next|same)$/.test(token.text) &&
        token.text !== "picots",
    )
  )
    return false
  const plural = inner.some((token) =>
    /^(sts|stitches|sps|spaces|loops|petals|total|scallops|shells|groups|points|clusters|popcorns|picots|corners|stated|holes|leaves|if|more|printed|repeats|bars)$/.test(
      token.text,
    ),
  )
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
function readAside(words: Words, close: string): true | null {
  const start = words.at
  words.at += 1
  const inner: string[] = []
  while (!words.done() && words.text() !== close) {
    if (words.text() in closers) return null
    inner.push(words.text())
    words.at += 1
  }
  if (!words.accept(close)) return null
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
