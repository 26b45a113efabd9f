// What holds for the steps after it: "working in back loops", "working behind the petals", turns, and
// rounds worked like an earlier one ("as Rnd 2").

import {
  acceptClauseOf,
  acceptColourChange,
  acceptHandling,
  isColourWords,
} from "./handling-grammar.ts"
import { readNoun } from "./nouns.ts"
import { readOtherEnding } from "./repeat-ending-grammar.ts"
import { isColour } from "./stitch-grammar.ts"
import type { Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** "working in back loops", "working behind the petals", "with right side facing". */
export function readMode(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    if (words.accept("turn")) {
      words.accept("work")
      return [{ ...words.since(start), do: "turn" }]
    }
    if (
      words.acceptAll("do", "not", "turn") ||
      words.acceptAll("don't", "turn") ||
      words.acceptAll("without", "turning") ||
      words.acceptAll("without", "increase") ||
      words.acceptAll("without", "increasing") ||
      words.acceptAll("without", "increases") ||
      words.acceptAll("no", "increase") ||
      words.acceptAll("no", "increases")
    )
      return []
    if (
      words.acceptAll("do", "not", "join") ||
      words.acceptAll("don't", "join") ||
      words.acceptAll("without", "joining")
    )
      return []
    if (words.attempt(() => readOtherSide(words)))
      return [{ ...words.since(start), do: "mode", otherSide: true }]
    const cut = words.attempt(() => {
      if (!words.accept("fasten", "finish", "break", "cut", "end")) return null
      if (!words.accept("off", "yarn", "thread", "the")) return null
      words.accept("yarn", "thread", "color", "colour")
      if (/^(?:[a-h]|mc|cc)$/.test(words.text()) || isColour(words.text())) words.at += 1
      return true
    })
    if (cut) return []
    if (
      words.acceptAll("weave", "in") ||
      words.acceptAll("sew", "in") ||
      words.acceptAll("darn", "in")
    ) {
      while (words.accept("all", "the", "loose", "yarn", "ends", "end", "tails", "tail"));
      return []
    }
    if (
      words.attempt(() =>
        words.accept("with", "using", "in") && isColourWords(words) ? true : null,
      )
    )
      return []
    if (words.accept("continue", "continuing")) {
      words.accept("to", "by", "in")
      words.accept("work", "working")
      return []
    }
    if (words.attempt(() => acceptColourChange(words))) return []
    if (words.attempt(() => acceptClauseOf(words)) ?? words.attempt(() => acceptHandling(words)))
      return []
    const working = words.accept("working", "work")
    if (working && words.accept("in", "into", "through", "only")) {
      words.accept("in", "into")
      words.accept("the")
      words.accept("unused", "free", "remaining", "unworked")
      const loops = loopsHere(words)
      if (loops) {
        const ofRound = readRoundOf(words)
        return [
          { ...words.since(start), do: "mode", loops, ...(ofRound === null ? {} : { ofRound }) },
        ]
      }
      if (words.accept("front") && words.accept("of")) return passesMode(words, start, "front")
      if (words.accept("rnds", "rounds", "spirals", "a", "continuous")) {
        words.accept("continuous", "spiral", "rnds", "rounds")
        return []
      }
      return null
    }
    if (!working && words.accept("in", "through")) {
      words.accept("the")
      const loops = loopsHere(words)
      const next = words.text()
      if (loops && (next === "," || next === ":" || next === ";" || next === "only")) {
        words.accept("only")
        return [{ ...words.since(start), do: "mode", loops }]
      }
      return null
    }
    if (working && words.accept("behind")) return passesMode(words, start, "behind")
    if (working && words.acceptAll("in", "front", "of")) return passesMode(words, start, "front")
    if (working && words.accept("over", "around", "between"))
      return passesMode(words, start, "front")
    return null
  })
}

const leadsToOtherSide =
  /^(?:working|work|on|along|in|down|across|rotate|rotating|turn|pivot|continue|continuing|now|into|over|to)$/
/** Longest way of saying it, in words. */
const longestOtherSide = 16

/** "working along opposite side of foundation ch", "on the other side of the chain", "in the free loops along the bottom". */
function readOtherSide(words: Words): true | null {
  if (!leadsToOtherSide.test(words.text())) return null
  let said = false
  let at = 0
  for (; at < longestOtherSide; at++) {
    const text = words.text(at)
    if (/^(?:[,;:.(*]|)$/.test(text)) {
      // "rotate piece, working along the other side": the first comma may only part the two.
      if (said || text !== ",") break
      continue
    }
    if (/^(?:opposite|other|bottom|underside|second)$/.test(text) && isSide(words, at + 1))
      said = true
    else if (words.isNumber(at) || !partOfOtherSide.test(text)) break
  }
  if (!said || !/^(?:[,;:.(*]|)$/.test(words.text(at))) return null
  words.at += at
  return true
}

function isSide(words: Words, at: number): boolean {
  return /^(?:side|sides|edge|loop|loops|lps|of)$/.test(words.text(at)) || words.text(at) === ""
}

const partOfOtherSide =
  /^(?:working|work|on|along|in|down|across|rotate|rotating|turn|pivot|continue|continuing|now|into|over|to|the|of|your|piece|so|and|you|are|can|up|back|side|sides|edge|loop|loops|lps|free|remaining|unused|front|foundation|starting|beginning|beg|base|original|initial|ch|chs|chain|chains|row|do|not|clockwise|degrees)$/

function passesMode(words: Words, start: number, passes: "behind" | "front"): Step[] | null {
  words.accept("the")
  if (words.isNumber() && words.text(1) !== "-") words.at += 1
  if (!readNoun(words)) {
    words.attempt(() => (words.accept("petals", "previous", "last", "rnd", "round") ? true : null))
  }
  let ofRound: number | undefined
  words.attempt(() => {
    words.accept("of", "from")
    words.accept("the")
    if (words.accept("rnd", "round", "row") && words.isNumber()) {
      ofRound = words.value()
      words.at += 1
      return true
    }
    return words.accept("previous", "last", "prev") && words.accept("rnd", "round") ? true : null
  })
  return [
    {
      ...words.since(start),
      do: "mode",
      passes,
      ...(ofRound === undefined ? {} : { ofRound: -ofRound }),
    },
  ]
}

/** "of Rnd 2" after the loops: the round they are on. */
function readRoundOf(words: Words): number | null {
  return words.attempt(() => {
    if (!words.accept("of", "on", "from")) return null
    words.accept("the")
    if (!words.accept("rnd", "round", "row") || !words.isNumber()) return null
    const round = words.value()
    words.at += 1
    return round
  })
}

function loopsHere(words: Words): "front" | "back" | "third" | "both" | null {
  const word = words.text()
  if (/^(front|back|third|both)$/.test(word) && /^(loop|loops|lp|lps)$/.test(words.text(1))) {
    words.at += 2
    words.accept("only")
    return word as "front" | "back" | "third" | "both"
  }
  if (/^(blo|bl)$/.test(word)) {
    words.at += 1
    words.accept("only")
    return "back"
  }
  if (/^(flo|fl)$/.test(word)) {
    words.at += 1
    words.accept("only")
    return "front"
  }
  return null
}

const startsAsRound = new Set("work same as rep repeat like".split(" "))

/** "as Rnd 2", "rep Rnd 3", "same as Round 4", "rep Rnds 4-5". */
export function readAsRound(words: Words): Step[] | null {
  if (!startsAsRound.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.accept("work", "same")
    if (!words.accept("as", "rep", "repeat", "like", "same")) return null
    words.accept("as", "for", "in")
    if (!words.accept("rnd", "round", "row", "rnds", "rounds", "rows", "r")) return null
    if (!words.isNumber()) return null
    const round = words.value()
    words.at += 1
    let to = round
    words.attempt(() => {
      if (!words.accept("-", "to", "and", "&", "through") || !words.isNumber()) return null
      to = words.value()
      words.at += 1
      return true
    })
    if (to > round)
      // "rep Rnds 3-4 twice": the label says how many rounds that is.
      words.attempt(() => {
        if (words.accept("twice", "once", "thrice")) return words.accept("more") || true
        if (!words.isNumber()) return null
        words.at += 1
        words.accept("more")
        return words.accept("times", "time") ? words.accept("more") || true : null
      })
    const ending = words.attempt(() => readOtherEnding(words))
    return [
      {
        ...words.since(start),
        do: "as-round",
        round,
        to: Math.max(round, to),
        ...(ending ? { ending } : {}),
      },
    ]
  })
}
