// Steps that are not stitches: chains and picots, skips, slip stitches, joins, turns, and what holds
// for the steps after it ("working in back loops").

import { readSteps } from "./grammar.ts"
import { readNoun } from "./nouns.ts"
import { readPlace, readTarget, withEarlierRound } from "./place-grammar.ts"
import { isColour, readKind } from "./stitch-grammar.ts"
import type { Place, Step } from "./tree.ts"
import { stitchNamed, type Words } from "./words.ts"

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
    const cut = words.attempt(() => {
      if (!words.accept("fasten", "finish", "break", "cut", "end")) return null
      if (!words.accept("off", "yarn", "thread", "the")) return null
      words.accept("yarn", "thread")
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
      const loops = loopsHere(words)
      if (loops) return [{ ...words.since(start), do: "mode", loops }]
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

/** Clauses about cords and threads laid in: "over the end of a cord bent to a circle,", "wind thread over it". */
function acceptClauseOf(words: Words): true | null {
  const over = /^(over|around)$/.test(words.text())
  if (!over && !/^(wind|winding|lay|hold)$/.test(words.text())) {
    if (
      words.acceptAll("unless", "wanted") ||
      words.acceptAll("if", "wanted") ||
      words.acceptAll("as", "needed")
    )
      return true
    const colour = words.accept("all") && isColour(words.text())
    if (colour) words.at += 1
    return colour ? true : null
  }
  let cord = !over
  for (let ahead = 0; ahead < 16; ahead++) {
    const text = words.text(ahead)
    if (/^(cord|cords|thread|threads|wire)$/.test(text)) cord = true
    if (ahead > 0 && stitchNamed(text, words.terms)) return null
    if (text === "," || text === ";" || text === ":" || text === ".") {
      if (!cord) return null
      words.at += ahead
      return true
    }
  }
  return null
}

/** "mark first st", "place a marker in the last st", "move marker up as you go": to the end of the clause. */
function acceptMarker(words: Words): boolean {
  const verb = /^(place|put|use|move|mark|pm|insert|attach)$/.test(words.text())
  if (!verb) return false
  let marker = words.text() === "mark" || words.text() === "pm"
  for (let ahead = 1; ahead < 16; ahead++) {
    const text = words.text(ahead)
    if (/^(marker|markers|mark|pin)$/.test(text)) marker = true
    if (text === "" || text === "," || text === ";" || text === ".") {
      if (!marker) return false
      words.at += ahead
      return true
    }
  }
  return false
}

/** "make a slip knot", "pull the ring closed", "draw the loop up tightly". */
function acceptHandling(words: Words): true | null {
  if (acceptMarker(words)) return true
  words.accept("make", "start", "begin")
  words.accept("with")
  words.accept("a", "the")
  if (words.accept("slip", "slipknot")) {
    if (words.tokens[words.at - 1]?.text === "slip" && !words.accept("knot")) return null
    if (words.accept("on", "onto")) {
      words.accept("your", "the", "to")
      words.accept("hook")
    }
    return true
  }
  if (!words.accept("pull", "draw", "tighten", "close")) return null
  words.accept("up", "the", "your")
  words.accept("magic", "adjustable", "center", "centre")
  if (!words.accept("ring", "loop", "circle", "tail", "end", "yarn", "hole")) return null
  while (
    words.accept(
      "up",
      "to",
      "tight",
      "tightly",
      "closed",
      "close",
      "shut",
      "and",
      "firmly",
      "the",
      "ring",
      "hole",
      "loop",
      "center",
      "centre",
    )
  );
  return true
}

/** "change to B", "changing colour", "switch to red". */
function acceptColourChange(words: Words): true | null {
  if (!words.accept("change", "changing", "switch", "drop", "pick")) return null
  words.accept("up")
  words.accept("color", "colour", "colors", "colours", "yarn")
  if (words.accept("to")) return isColourWords(words) ? true : null
  isColourWords(words)
  return true
}

function isColourWords(words: Words): boolean {
  words.accept("a", "the", "new", "main", "contrasting", "contrast")
  if (words.accept("right", "wrong") && words.accept("side")) {
    words.accept("facing", "up")
    words.accept("you")
    return true
  }
  const word = words.text()
  if (isColour(word) || /^(colou?r|yarn|thread|mc|cc|[a-h])$/.test(word)) {
    words.at += 1
    words.accept("yarn", "color", "colour", "thread")
    if (/^[a-h]$/.test(words.text())) words.at += 1
    return true
  }
  return false
}

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

function loopsHere(words: Words): "front" | "back" | "third" | null {
  const word = words.text()
  if (/^(front|back|third)$/.test(word) && /^(loop|loops|lp|lps)$/.test(words.text(1))) {
    words.at += 2
    words.accept("only")
    return word as "front" | "back" | "third"
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

/** "as Rnd 2", "rep Rnd 3", "same as Round 4", "rep Rnds 4-5". */
export function readAsRound(words: Words): Step[] | null {
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
    return [{ ...words.since(start), do: "as-round", round, to: Math.max(round, to) }]
  })
}

const joinWords = new Set(["join", "joining", "attach", "rejoin", "connect"])

/** Joins that close a round, joins that start one in a new place, and rings. */
export function readJoin(words: Words, steps: readonly Step[]): Step[] | null {
  const ring = readRingStart(words)
  if (ring) return ring
  if (!joinWords.has(words.text())) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.at += 1
    let joinedYarn = false
    for (;;) {
      const word = words.text()
      if (
        isColour(word) ||
        /^(yarn|color|colour|thread|mc|cc|rnd|round|it|last|leaf|petal|together|and|a|b|c|d)$/.test(
          word,
        )
      ) {
        if (/^(yarn|color|colour|thread|mc|cc|new)$/.test(word) || isColour(word)) joinedYarn = true
        words.at += 1
        continue
      }
      break
    }
    words.attempt(() => {
      if (!words.accept("with", "by", "using")) return null
      words.accept("a", "an")
      if (words.accept("invisible")) {
        words.accept("join", "st", "stitch")
        return true
      }
      if (words.isNumber()) words.at += 1
      if (!readKind(words)) {
        const yarn = words.accept("yarn", "color", "colour", "a", "b", "c", "d")
        return yarn ? true : null
      }
      return true
    })
    if (words.accept("to", "into") || words.text() === "in") {
      if (words.text() === "in") words.at += 1
      words.accept("a", "the")
      if (words.accept("form", "make", "create")) {
        words.accept("a", "the")
        words.accept("ring", "circle", "loop")
        return [{ ...words.since(start), do: "join", place: null, ring: true }]
      }
      const target = joinTarget(words, start)
      if (words.attempt(() => (words.accept("to") && words.accept("form", "make") ? true : null))) {
        words.accept("a", "the")
        words.accept("ring", "circle", "loop")
        return [{ ...words.since(start), do: "join", place: null, ring: true }]
      }
      const place = target.place
      if (joinedYarn || (place && place.at === "next" && !hasWork(steps)))
        return [{ ...words.since(start), do: "attach", place }]
      return [
        {
          ...words.since(start),
          do: "join",
          place,
          ...(target.chain === undefined ? {} : { chain: target.chain }),
        },
      ]
    }
    if (words.accept("into") || words.acceptAll("ring"))
      return [{ ...words.since(start), do: "join", place: null, ring: true }]
    const later = words.attempt(() => readPlace(words))
    if (later && (joinedYarn || !hasWork(steps)))
      return [{ ...words.since(start), do: "attach", place: later }]
    if (joinedYarn) return []
    return [{ ...words.since(start), do: "join", place: later }]
  })
}

function joinTarget(words: Words, start: number): { place: Place | null; chain?: number } {
  const nth = words.attempt(() => {
    words.accept("the")
    words.accept("top")
    words.accept("of")
    words.accept("the")
    const token = words.peek()
    if (token?.type !== "ordinal") return null
    words.at += 1
    if (!words.accept("ch", "chain", "st") && words.text() !== "of") return null
    words.attempt(() => {
      if (!words.accept("of", "in")) return null
      words.accept("the", "these", "first", "beg", "beginning", "starting", "initial", "turning")
      words.accept("beg", "first", "starting")
      if (words.isNumber()) words.at += 1
      const noun = readNoun(words)
      if (noun?.what === "chain" && words.isNumber()) words.at += 1
      return noun
    })
    return token.value
  })
  if (nth !== null) return { place: null, chain: nth }
  const place = readTarget(words, start, "in")
  return { place }
}

function hasWork(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do !== "attach" && step.do !== "slip" && step.do !== "mode" && step.do !== "turn",
  )
}

/** "Make a magic ring", "start with an adjustable loop", "over a plastic ring of 2 cm". */
function readRingStart(words: Words): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    while (
      words.accept(
        "make",
        "start",
        "begin",
        "form",
        "create",
        "with",
        "a",
        "an",
        "the",
        "by",
        "making",
      )
    );
    if (words.accept("magic", "adjustable", "sliding", "slip")) {
      if (!words.accept("ring", "loop", "circle", "knot-ring")) return null
      return [{ ...words.since(start), do: "ring", centre: "adjustable" }]
    }
    if (
      words.accept("mr", "mc") &&
      (words.text() === "," || words.text() === ";" || words.text() === "." || words.done())
    )
      return [{ ...words.since(start), do: "ring", centre: "adjustable" }]
    return null
  })
}

/** "sl st in next 2 dc", "sl st to next ch-3 sp", "sl st across to corner". */
export function readSlip(words: Words, _steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    let count = 1
    if (words.isNumber() && words.text(1) !== "-") {
      count = words.value()
      words.at += 1
    }
    while (isColour(words.text()) || words.accept("surface")) {
      if (isColour(words.text())) words.at += 1
    }
    const kind = readKind(words)
    if (kind?.basic !== "sl st" || kind.gathered) return null
    const to = words.text() === "to" || words.text() === "into" || words.text() === "across"
    if (to && (words.text(1) === "join" || words.text(1) === "close")) {
      words.at += 2
      const where = readPlace(words)
      return [{ ...words.since(start), do: "join", place: where }]
    }
    const steps: Step[] = []
    const nth = words.attempt(() => {
      if (!words.accept("to", "in", "into")) return null
      const target = joinTarget(words, start)
      return target.chain === undefined ? null : target
    })
    if (nth)
      return [
        {
          ...words.since(start),
          do: "join",
          place: null,
          ...(nth.chain === undefined ? {} : { chain: nth.chain }),
        },
      ]
    const place = readPlace(words)
    if (words.attempt(() => (words.accept("to") && words.accept("form", "make") ? true : null))) {
      words.accept("a", "the")
      words.accept("ring", "circle", "loop")
      return [{ ...words.since(start), do: "join", place: null, ring: true }]
    }
    if (words.acceptAll("to", "join") || words.acceptAll("to", "close"))
      return [{ ...words.since(start), do: "join", place }]
    steps.push({
      ...words.since(start),
      do: "slip",
      count,
      place,
      to,
      ...(kind.loops ? { kind } : {}),
    })
    for (;;) {
      const from = words.start()
      const more = words.attempt(() => {
        if (!words.accept("and", "&")) return null
        return (
          readPlace(words) ??
          (words.text() === "next" ? readTarget(words, words.start(), "in") : null)
        )
      })
      if (!more) break
      steps.push({ ...words.since(from), do: "slip", count: 1, place: more, to })
    }
    return steps
  })
}

/** "skip 2 sc", "sk next ch-3 sp", "miss 1", "sk next sc and hdc", "sk (ch 3, sl st, sl st, ch 3)". */
export function readSkip(words: Words): Step[] | null {
  const verb = /^(skip|skips|sk|miss|seek|skipping|missing|skp|omit)$/
  if (!verb.test(words.text())) return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.at += 1
    if (words.text() === "(") {
      words.at += 1
      const run = readSteps(words, () => false)
      words.accept(")")
      return [{ ...words.since(start), do: "skip", place: null, steps: run.steps }]
    }
    words.accept("over")
    if (words.isNumber() && isBoundary(words.tokens[words.at + 1]?.text ?? "")) {
      const count = words.value()
      words.at += 1
      return [
        {
          ...words.since(start),
          do: "skip",
          place: { ...words.since(start), at: "next", noun: { what: "stitch" }, count },
        },
      ]
    }
    const target = readTarget(words, start, "skip")
    if (!target) return null
    const place = withEarlierRound(words, target, start)
    return [{ ...words.since(start), do: "skip", place }]
  })
}

function isBoundary(text: string): boolean {
  return (
    text === "," ||
    text === ";" ||
    text === "." ||
    text === ")" ||
    text === "]" ||
    text === "*" ||
    text === ""
  )
}

const chainWord = /^(ch|chs|chain|chains)$/

/** "ch 3", "3 ch", "ch-3", "ch 3, sl st in first ch" (a picot), "picot", "ch-4 picot". */
export function readChain(words: Words, steps: readonly Step[]): Step[] | null {
  return readPicot(words) ?? readPlainChain(words, steps)
}

function readPlainChain(words: Words, steps: readonly Step[]): Step[] | null {
  return words.attempt((): Step[] | null => {
    const start = words.start()
    let chains: number
    while (words.accept("beg", "beginning", "make", "twisted", "work", "starting"));
    if (words.isNumber()) {
      chains = words.value()
      words.at += 1
      words.accept("-")
      if (!chainWord.test(words.text())) return null
      words.at += 1
      if (/^(sp|sps|space|spaces|loop|loops|lp|lps)$/.test(words.text())) return null
    } else {
      if (!chainWord.test(words.text())) return null
      words.at += 1
      words.accept("a", "-")
      if (!words.isNumber()) {
        chains = 1
        if (!isBoundary(words.text())) return null
      } else {
        chains = words.value()
        words.at += 1
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
    const place = words.attempt((): Place | null => {
      // "ch 3 in ring" says where the chain starts.
      if (words.text() !== "in") return null
      return readPlace(words)
    })
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
    words.accept("ch")
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
    else if (words.isNumber() && words.text(1) === "-" && chainWord.test(words.text(2))) {
      chains = words.value()
      words.at += 3
    } else if (chainWord.test(words.text()) && words.text(1) === "-" && words.isNumber(2)) {
      chains = words.value(2)
      words.at += 3
    } else if (chainWord.test(words.text()) && words.isNumber(1)) {
      chains = words.value(1)
      words.at += 2
    } else if (words.accept("a", "small")) chains = undefined
    words.accept("-")
    if (!words.accept("picot", "picots", "p")) return null
    if (words.tokens[words.at - 1]?.text === "p" && !isBoundary(words.text())) return null
    const local = words.locals.get("picot")?.picotChains
    words.attempt(() => {
      if (!words.accept("of")) return null
      words.accept("ch")
      if (!words.isNumber()) return null
      chains = words.value()
      words.at += 1
      words.accept("ch", "chains")
      return true
    })
    words.attempt(() => {
      // "(ch 5, sl st in last sc)": how the picot is made.
      if (!words.accept("(", "[")) return null
      if (!words.accept("ch") || !words.isNumber()) return null
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
