// What holds for the steps after it: "working in back loops", "working behind the petals", "along the opposite
// side of the chain", and how the ring is made.

import type { Step } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { loopNamed } from "./loop-words.ts"
import { readNoun } from "./nouns.ts"
import { readCounted } from "./stitch-names.ts"

/** "working in back loops", "in back loops only:", "in BLO,". */
export function loopMode(cursor: Cursor): Step[] | null {
  const start = cursor.start()
  const working = cursor.text().startsWith("work")
  if (working && cursor.is("work")) cursor.at += 1
  if (cursor.is("in") || cursor.accept("through", "only")) if (cursor.is("in")) cursor.at += 1
  cursor.take("unworked", "rest")
  const loops = loopsHere(cursor)
  if (!loops) return null
  cursor.accept("only")
  const ofRound = cursor.attempt(() => {
    if (!cursor.take("of", "in") || !cursor.take("round")) return null
    return cursor.takeCount(1)
  })
  cursor.attempt(() => {
    // "of each st", "for this round": it holds for the round.
    if (cursor.accept("for")) {
      cursor.take("that", "each")
      return cursor.take("round") ? true : null
    }
    return null
  })
  const text = cursor.text()
  if (!working && !/^[,:;.)]?$/.test(text)) return null
  if (working && cursor.is("of")) return null
  return [{ ...cursor.since(start), do: "mode", loops, ...(ofRound === null ? {} : { ofRound }) }]
}

function loopsHere(cursor: Cursor): "front" | "back" | "third" | "both" | null {
  if (cursor.text() === "both" && cursor.is("loop-part", 1)) {
    cursor.at += 2
    return "both"
  }
  const loops = loopNamed(cursor)
  if (loops) cursor.at += 1
  return loops
}

/** "working behind the petals", "in front of the ch-3 loops", "keeping petals to the front". */
export function passesMode(cursor: Cursor): Step[] | null {
  const start = cursor.start()
  const working = cursor.is("work")
  if (working) cursor.at += 1
  const behind = cursor.is("behind") || cursor.text() === "behind"
  const front =
    !behind && (cursor.is("front") || (working && /^(?:over|around|between)$/.test(cursor.text())))
  if (!behind && !front) {
    if (!cursor.take("in") || !cursor.take("behind", "front")) return null
  } else cursor.at += 1
  if (cursor.isNumber() && cursor.text(1) !== "-") cursor.at += 1
  while (cursor.take("previous", "each", "last", "that", "next"));
  if (!readNoun(cursor)) cursor.take("round")
  let ofRound: number | undefined
  cursor.attempt(() => {
    cursor.take("of", "in")
    if (cursor.isOrdinal() && cursor.is("round", 1)) {
      ofRound = cursor.value()
      cursor.at += 2
      return true
    }
    if (cursor.take("round")) {
      const round = cursor.takeCount(1)
      if (round === null) return null
      ofRound = round
      return true
    }
    return cursor.take("previous", "last") && cursor.take("round") ? true : null
  })
  if (!/^[,:;.)]?$/.test(cursor.text()) && !cursor.is("and")) return null
  return [
    {
      ...cursor.since(start),
      do: "mode",
      passes: behind ? "behind" : "front",
      ...(ofRound === undefined ? {} : { ofRound: -ofRound }),
    },
  ]
}

/** Longest way of telling the other side of a chain, in words. */
const longestOtherSide = 16

const partOfOtherSide =
  /^(?:working|work|on|along|in|down|across|rotate|rotating|turn|pivot|continue|continuing|now|into|over|to|of|piece|so|and|you|are|can|up|back|side|sides|edge|loop|loops|lps|free|remaining|unused|front|foundation|starting|beginning|beg|base|original|initial|ch|chs|chain|chains|row|do|not|clockwise|degrees|working in|working into|in to|front loop|front loops|back loops|back loop|unworked|starting ring|chain stitches|work in|work into|sideways|along each side|other|opposite|bottom)$/

/** "working along opposite side of foundation ch", "on the other side of the chain". */
export function otherSide(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  let said = false
  for (let k = 0; k < longestOtherSide; k++) {
    const text = cursor.text()
    if (/^(?:[,;:.(*]|)$/.test(text)) {
      // "rotate piece, working along the other side": the first comma may only part the two.
      if (said || text !== "," || k === 0) break
      cursor.at += 1
      continue
    }
    if (/^(?:opposite|other|bottom|underside|second)$/.test(text) && isSide(cursor)) said = true
    else if (cursor.isNumber() || !partOfOtherSide.test(text)) break
    cursor.at += 1
  }
  if (!said || !/^(?:[,;:.(*]|)$/.test(cursor.text())) return []
  return [clause(cursor, [{ ...cursor.since(start), do: "mode", otherSide: true }])]
}

function isSide(cursor: Cursor): boolean {
  return (
    cursor.is("side", 1) || cursor.is("loop-part", 1) || cursor.is("of", 1) || cursor.text(1) === ""
  )
}

/** "Make a magic ring", "start with an adjustable loop", "into a magic ring," at the head of a round. */
/** "a magic ring of 6 sc", "magic circle with 12 dc in it": the ring and its stitches told in one. */
function stitchesOfRing(cursor: Cursor, start: number): Step | null {
  if (!cursor.take("of", "with") && !(cursor.accept("that") && cursor.accept("has", "have")))
    return null
  if (!cursor.isNumber()) return null
  const counted = readCounted(cursor)
  if (!counted || counted.count < 2 || counted.stitch.kind.gathered) return null
  if (cursor.is("in") || cursor.is("around")) {
    cursor.at += 1
    if (!cursor.accept("it") && !cursor.take("ring")) return null
  }
  const span = cursor.since(start)
  const { stitch, count } = counted
  return { ...span, do: "work", stitch, count, place: { ...span, at: "ring" } }
}

export function ringStart(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  while (cursor.take("work", "start", "forms", "with") || cursor.accept("by", "begin", "create"));
  cursor.take("in", "to")
  const solid = cursor.take("bought-ring")
  const drawn = cursor.is("drawn-ring")
  // "a circle with 12 dc in it": any ring, where its stitches are told with it.
  const plain = !solid && !drawn
  if (!cursor.take("ring")) return []
  const ringEnd = cursor.lastEnd()
  const filled = cursor.attempt(() => stitchesOfRing(cursor, start))
  if (filled) {
    const ring: Step = { start, end: ringEnd, do: "ring", centre: solid ? "solid" : "adjustable" }
    return [clause(cursor, (before) => (before.length === 0 ? [ring, filled] : null), 0.05)]
  }
  if (plain) return []
  const text = cursor.text()
  // "mc" is also the main colour: it is a ring where nothing is said of yarn.
  if (
    text !== "" &&
    !/^[,;.:)(-]$/.test(text) &&
    !cursor.isNumber() &&
    !cursor.is("and") &&
    !cursor.is("chain") &&
    !cursor.is("with") &&
    cursor.peek()!.classes.size > 0 &&
    !cursor.is("work")
  )
    return []
  return [
    clause(cursor, (before) =>
      before.length === 0
        ? [
            {
              start,
              end: chart.lexemes[at]!.end,
              do: "ring",
              centre: solid ? "solid" : "adjustable",
            },
          ]
        : null,
    ),
  ]
}

/** "do not turn", "without joining", "do not join": what is not done. */
export function notDone(cursor: Cursor): Step[] | null {
  cursor.at += 1
  if (
    !cursor.take("turn", "join", "increase", "fasten") &&
    !cursor.accept("turning", "close", "slip", "finish")
  )
    return null
  // "do not join into the 4 ch but ss into 1st tr": as far as what is done instead.
  for (let k = 0; k < 9; k++) {
    if (cursor.accept("but", "instead")) break
    if (
      cursor.done() ||
      /^[,;.!()[\]*]/.test(cursor.text()) ||
      cursor.is("repeat") ||
      cursor.is("skip")
    )
      break
    if (cursor.is("and") && k > 0) break
    // "do not turn - 32 dc": a total.
    if (cursor.text() === "-" && cursor.isNumber(1)) break
    cursor.at += 1
  }
  return []
}
