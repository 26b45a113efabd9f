// How a starting chain counts: "counts as dc, ch 2", "does not count as a st", "3 skipped ch count as dc".

import { turningChains } from "@roundwright/stitches"
import { readKind } from "./stitch-grammar.ts"
import type { CountsAs } from "../base/tree.ts"
import { isIgnored, isKnownWord } from "./vocabulary.ts"
import type { Words } from "./words.ts"

/** "counts as dc", "counts as first dc, ch 2", "does not count as a st", "3 skipped ch count as dc". */
export function readCountsNote(words: Words): { countsAs: CountsAs; chains?: number } | null {
  return words.attempt(() => {
    let chains: number | undefined
    words.accept("to", "which", "that")
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
    if (isWhole(words)) {
      words.at += 1
      words.accept("-")
    }
    words.accept("skipped", "missed", "first")
    if (words.accept("ch", "chs", "chain", "chains")) {
      words.accept("-")
      if (isWhole(words)) {
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
    if (
      !words.accept("count", "counts", "counted", "counting", "stands", "equals", "is", "are") &&
      !words.accept("stand", "represents", "acts")
    )
      return null
    words.accept("counted", "considered")
    words.accept("as", "for", "=")
    words.accept("a", "the", "your", "one", "an")
    words.accept("first", "1st", "beg", "last", "final")
    if (words.peek()?.type === "ordinal") words.at += 1
    const named = words.attempt(() => {
      words.accept("1", "one")
      return readKind(words)
    })
    if (!named) {
      const space = words.attempt(() => {
        // "counts as ch-3 sp": the tall stitch stands for the end of the last space.
        if (isWhole(words) && words.text(1) === "-" && /^ch/.test(words.text(2))) {
          const before = words.value()
          words.at += 3
          return words.accept("sp", "space", "loop") ? before : null
        }
        if (!words.accept("ch", "chain")) return null
        words.accept("-")
        if (!isWhole(words)) return null
        const size = words.value()
        words.at += 1
        if (!words.accept("sp", "space", "loop")) return null
        return size
      })
      if (space !== null) return withChains({ counts: true, space })
      words.acceptAll("ch", "-") || words.accept("ch")
      if (!words.accept("st", "stitch", "sts", "sp", "space", "loop")) return null
      skipRest(words)
      return withChains({ counts: true })
    }
    const extra = words.attempt(() => {
      words.accept("st", "stitch")
      if (!words.accept(",", "+", "and", "plus", "&", "with")) return null
      words.accept("a", "first", "one")
      if (isWhole(words) && /^(ch|chs|chain|chains)$/.test(words.text(1))) {
        const count = words.value()
        words.at += 2
        return count
      }
      if (!words.accept("ch", "chain")) return null
      words.accept("-")
      if (!isWhole(words)) return 1
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
    if (
      !words.accept(
        "first",
        "1st",
        "=",
        "equals",
        "stands",
        "stand",
        "standing",
        "for",
        "serves",
      ) &&
      !words.accept("represents", "represent", "replaces", "replace", "forms", "instead", "making")
    )
      return null
    words.accept("for", "as", "of")
    words.accept("the")
    if (words.peek()?.type === "ordinal") words.at += 1
    words.accept("first", "1", "one", "a")
    const kind = readKind(words)
    if (!kind || kind.gathered) return null
    let chains = 0
    const space = words.attempt(() => {
      if (!words.accept("and", "+", ",", "plus")) return null
      words.accept("a", "first")
      if (isWhole(words) && /^(ch|chs|chain|chains)$/.test(words.text(1))) {
        const before = words.value()
        words.at += 2
        words.accept("sp", "space")
        return before
      }
      if (!words.accept("ch")) return null
      words.accept("-")
      if (!isWhole(words)) return null
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

/** "ch 4 (dc plus ch 1)", "ch 4 (dc, ch 1)": a stitch and chains that add up, in a bracket behind a chain. */
export function readSumNote(words: Words, made: number): { countsAs: CountsAs } | null {
  return words.attempt(() => {
    words.accept("1", "one", "a")
    const kind = readKind(words)
    if (!kind || kind.gathered) return null
    const listed = words.text() === ","
    if (!words.accept("plus", "+", ",", "and")) return null
    words.accept("a", "first")
    const before = isWhole(words) && /^(?:ch|chs|chain|chains)$/.test(words.text(1))
    if (!before && !words.accept("ch", "chain")) return null
    if (!before) words.accept("-")
    if (!isWhole(words)) return null
    const chains = words.value()
    words.at += before ? 2 : 1
    words.accept("sp", "space")
    // A list may be a group to work; it is a sum where it comes to the chain before it.
    const group = /^(?:in|into|x|twice|around|to|all)$/.test(words.text(1)) || words.isNumber(1)
    if (listed && (group || turningChains(kind.basic) + chains !== made)) return null
    return { countsAs: { counts: true, kind, chains } }
  })
}

function isWhole(words: Words): boolean {
  return words.isNumber() && Number.isInteger(words.value())
}

/** "here and throughout", "on every round": the rest of the note; words that mean nothing are told. */
function skipRest(words: Words): void {
  for (;;) {
    const token = words.peek()
    if (!token || /^[)\]};.,-]$/.test(token.text) || token.type === "number") return
    if (token.type === "word" && !isIgnored(token.text) && !isKnownWord(token.text))
      words.report({
        severity: "note",
        code: "word-in-note",
        start: token.start,
        end: token.end,
        message: "This word of the note on the starting chain is not read.",
        hint: "",
      })
    words.at += 1
  }
}
