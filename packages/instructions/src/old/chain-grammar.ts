// Chains and picots: "ch 3", "3 ch", "ch 4, sl st in first ch", "picot of ch 5", "ch-3 picot".

import { readBackAlong, readPointOf } from "./back-along-grammar.ts"
import { readNoun } from "./nouns.ts"
import { readPlace } from "./place-grammar.ts"
import { isBoundary } from "./step-grammar.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Place, Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

const chainWord = new Set("ch chs chain chains".split(" "))

/** "ch 3", "3 ch", "ch-3", "ch 3, sl st in first ch" (a picot), "picot", "ch-4 picot". */
export function readChain(words: Words, steps: readonly Step[]): Step[] | null {
  const figure = words.isNumber()
  const text = words.text()
  return (
    (figure || startsPicot.has(text) ? readPicot(words) : null) ??
    (startsPoint.has(text) ? readPointOf(words) : null) ??
    (figure || startsChain.has(text) ? readPlainChain(words, steps) : null)
  )
}

const startsPicot = new Set("ch chs chain chains a small - picot picots p".split(" "))
const startsPoint = new Set("a one 1 point leaf spike tooth".split(" "))
const startsChain = new Set(
  "beg beginning make twisted work starting a ch chs chain chains".split(" "),
)

function readPlainChain(words: Words, steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    let chains: number
    while (words.accept("beg", "beginning", "make", "twisted", "work", "starting"));
    if (words.text() === "a" && chainWord.has(words.text(1))) words.at += 1
    if (words.isNumber()) {
      chains = words.value()
      words.at += 1
      words.accept("-")
      if (!chainWord.has(words.text())) return null
      words.at += 1
      if (/^(sp|sps|space|spaces|loop|loops|lp|lps)$/.test(words.text())) return null
    } else {
      if (!chainWord.has(words.text())) return null
      words.at += 1
      words.accept("a", "-")
      if (words.text() === "of" && words.isNumber(1)) words.at += 1
      if (!words.isNumber()) {
        chains = 1
        if (!isBoundary(words.text())) return null
      } else {
        chains = words.value()
        words.at += 1
        words.accept("sts", "stitches")
      }
      if (
        words.text() === "sp" ||
        words.text() === "loop" ||
        words.text() === "sps" ||
        words.text() === "lp"
      )
        return null
    }
    if (!Number.isInteger(chains) || chains < 1) return null
    if (steps.length === 0 && words.accept("ring")) {
      const span = words.since(start)
      return [
        { ...span, do: "chain", chains, place: null },
        { ...span, do: "join", place: null, ring: true },
      ]
    }
    const loop = closesLaterLoop(words, chains)
    if (loop !== null) {
      // "ch 5, sl st in 2nd of these 5 ch": a loop of the later chains on a stem of the first.
      const span = words.since(start)
      return [
        { ...span, do: "chain", chains: chains - loop, place: null },
        { ...span, do: "picot", chains: loop },
      ]
    }
    const picot = closesPicot(words, chains)
    if (picot && words.text() === "to" && /^(form|make)$/.test(words.text(1))) {
      // "ch 4, sl st to first ch to form ring".
      words.at += 2
      words.accept("a", "the")
      words.accept("ring", "circle", "loop")
      const span = words.since(start)
      return [
        { ...span, do: "chain", chains, place: null },
        { ...span, do: "join", place: null, ring: true },
      ]
    }
    if (picot) return [{ ...words.since(start), do: "picot", chains }]
    const made = words.since(start)
    const back = readBackAlong(words, chains, start)
    if (back) return [{ ...made, do: "chain", chains, place: null }, back]
    const between =
      words.text() === "between" &&
      words.attempt(() => {
        words.at += 1
        words.accept("each", "all", "the")
        return words.accept("groups", "group", "shells", "clusters", "sets", "them") ? true : null
      })
    if (between) return [{ ...words.since(start), do: "chain", chains, place: null, between: true }]
    // "ch 3 in ring" says where the chain starts.
    const place: Place | null = words.text() === "in" ? readPlace(words) : null
    return [
      {
        ...words.since(start),
        do: "chain",
        chains,
        place: place?.at === "ring" || place?.at === "same" ? place : null,
      },
    ]
  })
}

/** ", sl st in 2nd of these 5 ch": chains in the loop so closed; null when nothing of the kind. */
function closesLaterLoop(words: Words, chains: number): number | null {
  return words.attempt(() => {
    words.accept(",")
    const kind = readKind(words)
    if (kind?.basic !== "sl st" || !words.accept("in", "into")) return null
    words.accept("the")
    const token = words.peek()
    if (token?.type !== "ordinal" || token.value < 2 || token.value >= chains) return null
    words.at += 1
    words.accept("ch", "chain")
    if (!words.accept("of")) return null
    words.accept("these", "the", "those")
    if (words.isNumber()) words.at += 1
    if (!words.accept("ch", "chs", "chains")) return null
    return chains - token.value + 1
  })
}

/** After "ch 4": ", sl st in first ch", ", sl st in 4th ch from hook", ", sl st in last sc". */
function closesPicot(words: Words, chains: number): boolean {
  return (
    words.attempt((): true | null => {
      words.accept(",")
      words.accept("and", "then")
      const kind = readKind(words)
      if (kind?.basic !== "sl st" && kind?.basic !== "sc") return null
      if (!words.accept("in", "into", "to")) return null
      words.accept("the", "top", "base")
      words.accept("of")
      words.accept("the")
      const token = words.peek()
      if (token?.type === "ordinal" || token?.text === "first" || token?.text === "1st") {
        words.at += 1
        const nth = token.type === "ordinal" ? token.value : 1
        const isChain = words.accept("ch", "chain") || (nth === 1 && isBoundary(words.text()))
        if (!isChain) return null
        const fromHook = words.acceptAll("from", "hook") || words.acceptAll("from", "the", "hook")
        if (fromHook && nth < Math.min(3, chains)) return null
        words.attempt(() => {
          if (!words.accept("of")) return null
          words.accept("the", "these")
          if (words.isNumber()) words.at += 1
          return readNoun(words)
        })
        return kind.basic === "sl st" && (nth === 1 || fromHook) ? true : null
      }
      if (
        words.accept("last", "same", "previous", "prev", "sc", "dc") ||
        words.acceptAll("st", "just")
      ) {
        readKind(words)
        words.accept("st", "stitch", "sp", "made", "worked")
        return kind.basic === "sl st" ? true : null
      }
      return null
    }) !== null
  )
}

/** Chains of a picot whose size is not said: 3, common practice, no source. */
const usualPicot = 3

function readPicot(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    let chains: number | undefined
    if (words.isNumber() && words.value() === 1 && /^picots?$/.test(words.text(1))) words.at += 1
    else if (words.isNumber() && words.text(1) === "-" && chainWord.has(words.text(2))) {
      chains = words.value()
      words.at += 3
    } else if (chainWord.has(words.text()) && words.text(1) === "-" && words.isNumber(2)) {
      chains = words.value(2)
      words.at += 3
    } else if (chainWord.has(words.text()) && words.isNumber(1)) {
      chains = words.value(1)
      words.at += 2
    } else if (words.accept("a", "small")) chains = undefined
    words.accept("-")
    if (!words.accept("picot", "picots", "p")) return null
    if (words.tokens[words.at - 1]?.text === "p" && !isBoundary(words.text())) return null
    const local = words.locals.get("picot")?.picotChains
    words.attempt(() => {
      if (!words.accept("of")) return null
      words.accept("ch", "chain", "chains")
      if (!words.isNumber()) return null
      chains = words.value()
      words.at += 1
      words.accept("ch", "chains")
      return true
    })
    words.attempt(() => {
      // "(ch 5, sl st in last sc)": how the picot is made.
      if (!words.accept("(", "[")) return null
      if (!words.accept("ch", "chain") || !words.isNumber()) return null
      const inner = words.value()
      words.at += 1
      if (!closesPicot(words, inner)) return null
      if (!words.accept(")", "]")) return null
      chains = inner
      return true
    })
    let every: number | undefined
    words.attempt(() => {
      if (!words.accept("after", "in", "on") || !words.accept("every", "each")) return null
      const token = words.peek()
      if (!token || (token.type !== "number" && token.type !== "ordinal")) {
        every = 1
        return readNoun(words)
      }
      every = token.value
      words.at += 1
      readNoun(words)
      return true
    })
    if (chains !== undefined && (!Number.isInteger(chains) || chains < 1)) return null
    return [
      {
        ...words.since(start),
        do: "picot",
        chains: chains ?? local ?? usualPicot,
        ...(every === undefined ? {} : { every }),
      },
    ]
  })
}
