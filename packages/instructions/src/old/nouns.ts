// What a place is called: "ch-3 sp", "corner sp", "3-dc group", "st", "next ch", "sp between groups".

import { sidesOf } from "../edge/gap-sides.ts"
import { isColour, readKind } from "./stitch-grammar.ts"
import type { Noun } from "../base/tree.ts"
import type { Words } from "./words.ts"

const spaceWords = new Set(
  "sp sps space spaces lp lps loop loops arch arches arc arcs hole holes gap gaps bar bars".split(
    " ",
  ),
)
const groupWords = new Set(
  "group groups grp grps gp petal petals scallop scallops shell shells fan fans set sets leaf leaves v point points pair pairs bunch bunches side sides".split(
    " ",
  ),
)
const stitchWord = new Set("st sts stitch stitches".split(" "))

/** The noun here, stepped over; null when none is. */
export function readNoun(words: Words): Noun | null {
  return words.recall("noun", readNounHere)
}

function readNounHere(words: Words): Noun | null {
  return words.attempt(() => readPlainNoun(words))
}

function readPlainNoun(words: Words): Noun | null {
  if (words.accept("skipped", "unworked", "unused", "free")) {
    const noun = readPlainNoun(words)
    return noun ? { ...noun, unworked: true } : null
  }
  if (words.accept("corner", "corners", "cnr")) return afterCorner(words)
  if (isColour(words.text())) {
    words.at += 1
    return readPlainNoun(words)
  }
  const chain = readChainNoun(words)
  if (chain) return chain
  if (
    groupWords.has(words.text()) &&
    (/^(ch|sp|sps|space|spaces|loop|loops|lp|lps|picot|picots)$/.test(words.text(1)) ||
      (words.isNumber(1) && words.text(2) === "-" && isChain(words.text(3))))
  ) {
    const side = words.accept("side", "sides")
    if (!side) words.at += 1
    const noun = readPlainNoun(words)
    return noun && side && noun.what === "space" ? { ...noun, side: true } : noun
  }
  const group = readGroupNoun(words)
  if (group) return group
  const word = words.text()
  if (spaceWords.has(word)) {
    words.at += 1
    return afterSpace(words)
  }
  if (stitchWord.has(word)) {
    words.at += 1
    return { what: "stitch" }
  }
  if (word === "ring" || word === "circle" || word === "mr") {
    words.at += 1
    return { what: "ring" }
  }
  if (word === "picot" || word === "picots" || word === "p") {
    words.at += 1
    return { what: "picot" }
  }
  if (
    word === "small" ||
    word === "shell" ||
    word === "side" ||
    word === "large" ||
    word === "big"
  ) {
    if (spaceWords.has(words.text(1)) || words.text(1) === "ch") {
      words.at += 1
      const noun = readPlainNoun(words)
      return noun?.what === "space" && word === "small" ? { ...noun, small: true } : noun
    }
  }
  if (word === "v" && words.text(1) === "-" && stitchWord.has(words.text(2))) {
    words.at += 3
    if (isChain(words.text())) {
      const inner = readChainNoun(words)
      if (inner?.what === "space") return { ...inner, middle: true }
    }
    if (spaceWords.has(words.text())) {
      words.at += 1
      return { what: "space" }
    }
    return { what: "group", middle: true }
  }
  const kind = readKind(words)
  if (kind) {
    if (/^(group|groups|grp|grps)$/.test(words.text())) {
      words.at += 1
      return { what: "group" }
    }
    return { what: "stitch", kind }
  }
  return null
}

function afterCorner(words: Words): Noun {
  const inner = words.attempt(() => readPlainNoun(words))
  if (inner && (inner.what === "space" || inner.what === "stitch" || inner.what === "group"))
    return { ...inner, corner: true }
  return { what: "corner", corner: true }
}

/** "ch-3 sp", "ch sp", "3-ch loop", "ch-5", "ch", "chain". */
function readChainNoun(words: Words): Noun | null {
  if (!words.isNumber() && !isChain(words.text())) return null
  return words.attempt(() => {
    let size: number | undefined
    if (words.isNumber() && (words.text(1) === "-" || isChain(words.text(1)))) {
      const ahead = words.text(1) === "-" ? 2 : 1
      if (!isChain(words.text(ahead))) return null
      const joined = words.text(1) === "-" || words.peek(1)?.spaced === false
      const after = words.text(ahead + 1) === "-" ? words.text(ahead + 2) : words.text(ahead + 1)
      if (!joined && !spaceWords.has(after)) return null
      size = words.value()
      words.at += ahead + 1
    } else {
      if (!isChain(words.text())) return null
      words.at += 1
      // "each ch - 8 sc" has a dash, "ch-8 sp" a hyphen.
      const dash = words.peek()?.spaced && words.peek(1)?.spaced
      if (words.text() === "-" && words.isNumber(1) && !dash) {
        size = words.value(1)
        words.at += 2
      } else if (
        words.isNumber() &&
        (spaceWords.has(words.text(1)) ||
          (words.text(1) === "-" && spaceWords.has(words.text(2))) ||
          words.peek()?.spaced === false ||
          /^corner/.test(words.text(1)))
      ) {
        size = words.value()
        words.at += 1
      }
    }
    if (words.text() === "-" && (spaceWords.has(words.text(1)) || /^corners?$/.test(words.text(1))))
      words.at += 1
    const corner = words.accept("corner", "corners")
    if (spaceWords.has(words.text())) {
      words.at += 1
      const noun = afterSpace(words)
      if (noun.what === "gap") return noun
      return withSize({ ...noun, ...(corner ? { corner: true } : {}) }, size)
    }
    if (corner) return withSize({ what: "space", corner: true }, size)
    if (size !== undefined) return { what: "space", size }
    return { what: "chain" }
  })
}

function withSize(noun: Noun, size: number | undefined): Noun {
  return size === undefined ? noun : { ...noun, size }
}

/** "loop of 4 ch": the size after the word. */
function readSizeAfter(words: Words): number | null {
  return words.attempt(() => {
    if (!words.accept("of")) return null
    words.accept("the")
    const before = isChain(words.text())
    if (before) {
      words.at += 1
      words.accept("-")
    }
    if (!words.isNumber()) return null
    const size = words.value()
    words.at += 1
    words.accept("-")
    if (before) return size
    if (!isChain(words.text())) return null
    words.at += 1
    return size
  })
}

/** After the word "sp": "between groups", "before next dc", "at top of petal". */
function afterSpace(words: Words): Noun {
  const found = words.attempt((): Noun | null => {
    if (words.accept("between", "betw")) {
      words.accept("the", "any", "each", "every")
      words.accept("next", "last", "first", "same", "of")
      if (words.isNumber() && words.text(1) !== "-") words.at += 1
      const first = readPlainNoun(words)
      if (!first) return null
      let second: Noun | null = null
      if (words.accept("and", "&")) {
        words.accept("next", "the")
        second = readPlainNoun(words)
      }
      const groups = first.what === "group" || first.kind?.gathered !== undefined
      return { what: "gap", ...(groups ? { betweenGroups: true } : sidesOf(first, second)) }
    }
    if (words.accept("before")) {
      words.accept("the")
      words.accept("next")
      if (!readPlainNoun(words)) return null
      return { what: "gap", before: true }
    }
    if (
      words.acceptAll("at", "top", "of") ||
      words.acceptAll("at", "tip", "of") ||
      words.acceptAll("at", "the", "top", "of")
    ) {
      words.accept("any", "next", "each", "a", "the")
      const group = readPlainNoun(words)
      return group ? { what: "space", middle: true } : null
    }
    return null
  })
  if (found) return found
  const middle = words.attempt(() => {
    // "ch-2 sp of next shell": the space in its middle.
    if (!words.accept("of", "in")) return null
    words.accept("the")
    words.accept("next", "each", "same", "following", "any", "every")
    const owner = readPlainNoun(words)
    return owner?.what === "group" ? true : null
  })
  if (middle) return { what: "space", middle: true }
  const size = readSizeAfter(words)
  return size === null ? { what: "space" } : { what: "space", size }
}

/** "every chain of 3": the space, where no place inside it is asked for. */
export function chainOfSize(words: Words, noun: Noun): Noun {
  if (noun.what !== "chain") return noun
  const size = words.attempt(() => {
    if (!words.accept("of") || !words.isNumber()) return null
    const count = words.value()
    words.at += 1
    return /^[,;.:*)\]]?$/.test(words.text()) ? count : null
  })
  return size === null ? noun : { what: "space", size }
}

/** "3-dc group", "9-dc scallop", "petal", "group of 3 dc". */
function readGroupNoun(words: Words): Noun | null {
  if (words.isNumber() ? words.text(1) !== "-" : !groupWords.has(words.text())) return null
  return words.attempt(() => {
    let size: number | undefined
    if (words.isNumber() && words.text(1) === "-") {
      size = words.value()
      words.at += 2
      if (!readKind(words) && !acceptPlainStitch(words)) return null
      words.accept("-")
    }
    if (!groupWords.has(words.text())) return null
    if (words.text() === "v" && size === undefined) return null
    const middle = /^(?:shell|shells|fan|fans)$/.test(words.text()) ? { middle: true } : {}
    words.at += 1
    words.attempt(() => {
      if (!words.accept("of")) return null
      if (words.isNumber()) {
        size = words.value()
        words.at += 1
      } else words.accept("the")
      return readKind(words) ?? acceptPlainStitch(words)
    })
    return withSize({ what: "group", ...middle }, size)
  })
}

function acceptPlainStitch(words: Words): true | null {
  if (!stitchWord.has(words.text())) return null
  words.at += 1
  return true
}

function isChain(text: string): boolean {
  return text === "ch" || text === "chs" || text === "chain" || text === "chains"
}
