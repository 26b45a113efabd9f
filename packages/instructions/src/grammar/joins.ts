// Joins: those that close a round, start one in a new place or close a ring, and what they go to.

import type { Noun, Place, Step, StitchName } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause, hasWork } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readCountedChain, readNoun } from "./nouns.ts"
import { readPlace, readTarget } from "./places.ts"
import { readCounted, readKind, readStitch } from "./stitch-names.ts"

/** "to form ring", "forming a ring", "to make circle". */
export function acceptRing(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      cursor.accept(",")
      cursor.take("to", "and")
      if (!cursor.take("forms")) return null
      return cursor.take("ring") || cursor.accept("loop", "circle") ? true : null
    }) !== null
  )
}

export interface JoinTarget {
  readonly place: Place | null
  readonly chain?: number
}

/** Joins that close a round, joins that start one in a new place, and rings closed. */
export function joinRound(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const inserted = /^insert/.test(cursor.text())
  cursor.at += 1
  let yarn = inserted
  if (inserted && cursor.isNumber() && cursor.is("in", 1)) cursor.at += 1
  // "joining last ch-3 with sl st in 3rd ch": the last chain of the repeat is the one joined.
  const closing = cursor.attempt(() => {
    if (!cursor.take("last") || !cursor.take("chain", "space")) return null
    cursor.accept("-")
    const count = cursor.takeCount(1) ?? 0
    cursor.take("space")
    return count
  })
  for (;;) {
    // "join to with sl st": a word too many.
    if (cursor.text() === "to" && cursor.text(1) === "with") cursor.at += 1
    if (
      cursor.is("yarn") ||
      cursor.is("colour") ||
      /^[abcd]$/.test(cursor.text()) ||
      cursor.text() === "new"
    ) {
      yarn = true
      cursor.at += 1
    } else if (yarn && cursor.isNumber() && cursor.text(1) === ",") cursor.at += 1
    else if (
      cursor.is("round") ||
      cursor.accept("it", "last", "petal", "leaf", "together", "neatly", "evenly", "off")
    ) {
      if (cursor.is("round")) cursor.at += 1
    } else if (
      (cursor.isOrdinal() || cursor.is("and") || cursor.is("next") || cursor.is("any")) &&
      (cursor.is("colour", 1) || cursor.is("yarn", 1))
    )
      cursor.at += 1
    else break
  }
  if (yarn)
    cursor.attempt(() => {
      // "join colour you are using for the square in any sp".
      if (!cursor.is("chat")) return null
      while (cursor.is("chat") || cursor.text() === "using") cursor.at += 1
      return cursor.is("in") || cursor.is("to") || cursor.is("with") ? true : null
    })
  const tall = cursor.attempt(() => readStandingStitch(cursor))
  if (tall) return [standing(cursor, tall, start)]
  if (!yarn) yarn = acceptMeansYarn(cursor)
  cursor.attempt(() => readMeans(cursor))
  if (acceptRing(cursor) || cursor.attempt(() => ringNamed(cursor))) {
    cursor.attempt(() => toFirstChain(cursor))
    return [clause(cursor, [{ ...cursor.since(start), do: "join", place: null, ring: true }])]
  }
  const target = cursor.attempt((): JoinTarget | null => {
    const withFirst =
      cursor.is("with") &&
      (cursor.is("first", 1) || cursor.is("start", 1) || cursor.is("top", 1) || cursor.isOrdinal(1))
    if (!withFirst && !cursor.is("to") && !cursor.is("in")) return null
    cursor.at += 1
    cursor.take("in")
    const found = joinTarget(cursor, start)
    return found.place || found.chain !== undefined ? found : null
  })
  // "join in any sp with sc": the join is the first stitch.
  const first = target?.place?.at === "next" ? cursor.attempt(() => readFirstStitch(cursor)) : null
  if (first && target?.place) {
    return [beginning(cursor, start, target.place, first, 1)]
  }
  cursor.attempt(() => readMeans(cursor))
  if (target && acceptRing(cursor))
    return [clause(cursor, [{ ...cursor.since(start), do: "join", place: null, ring: true }])]
  cursor.attempt(() => {
    cursor.accept(",")
    return readMeans(cursor)
  })
  const later = target ? null : cursor.attempt(() => readPlace(cursor))
  const place = target?.place ?? later
  const chain = target?.chain
  const span = cursor.since(start)
  return [
    clause(cursor, (told) => {
      const before = closing === null ? told : endingOnChain(told, closing)
      const starts = yarn || !hasWork(before)
      if (starts && place && (yarn || place.at === "next" || later))
        return [...before, { ...span, do: "attach", place }]
      if (yarn && !target) return before
      return [...before, { ...span, do: "join", place, ...(chain === undefined ? {} : { chain }) }]
    }),
  ]
}

/** The repeat whose last time ends with its last chain. */
function endingOnChain(steps: readonly Step[], chains: number): readonly Step[] {
  const last = steps[steps.length - 1]
  if (last?.do !== "repeat" || last.last) return steps
  const at = last.body.findLastIndex(
    (step) => step.do === "chain" && (chains === 0 || step.chains === chains),
  )
  if (at < 0 || at === last.body.length - 1) return steps
  return [...steps.slice(0, -1), { ...last, last: last.body.slice(0, at + 1), ending: "replaces" }]
}

/** "join into ring". */
function ringNamed(cursor: Cursor): true | null {
  cursor.take("in", "to")
  return cursor.take("ring") || cursor.accept("circle") ? true : null
}

/** "(join into a ring) with a sl st in the first ch made": where a ring is closed in any case. */
function toFirstChain(cursor: Cursor): true | null {
  const means = cursor.attempt(() => readMeans(cursor))
  cursor.attempt(() => {
    if (!cursor.take("in", "to")) return null
    if (!cursor.take("first", "start") && cursor.value() !== 1) return null
    if (!cursor.take("chain", "stitch")) return null
    cursor.take("made")
    return true
  })
  return means
}

/** "with dc", "with a standing sc": a stitch that is the first of the round, or stands for its last space. */
function readStandingStitch(cursor: Cursor): StitchName | null {
  if (!cursor.take("with") && !cursor.accept("by")) return null
  if (cursor.isNumber()) cursor.at += 1
  const stitch = readStitch(cursor)
  if (!stitch || stitch.kind.basic === "sl st" || stitch.kind.gathered) return null
  return cursor.is("in") || cursor.is("to") || cursor.is("around") || cursor.is("between")
    ? stitch
    : null
}

/** "with sc", "with a standing dc", behind the place. */
function readFirstStitch(cursor: Cursor): StitchName | null {
  if (!cursor.take("with")) return null
  cursor.accept("standing")
  if (cursor.value() === 1) cursor.at += 1
  const stitch = readStitch(cursor)
  if (!stitch || stitch.kind.basic === "sl st" || stitch.kind.gathered) return null
  return /^[,;.*([]?$/.test(cursor.text()) ? stitch : null
}

function standing(cursor: Cursor, stitch: StitchName, start: number): Clause {
  const place = readPlace(cursor)
  const span = cursor.since(start)
  const work = { ...span, do: "work" as const, stitch, count: 1 }
  return clause(cursor, (before) => {
    // Behind chains it closes the last loop; behind stitches it is only how the round is joined.
    if (hasWork(before) && toFirst(place) && !makesChains(before[before.length - 1]))
      return [...before, { ...span, do: "join", place: null }]
    if (hasWork(before)) return [...before, { ...work, place }]
    const same: Place = { ...span, at: "same", noun: { what: "any" } }
    return [
      ...before,
      { ...span, do: "attach", place },
      { ...work, place: place?.at === "next" ? same : place },
    ]
  })
}

function toFirst(place: Place | null): boolean {
  return place?.at === "made"
    ? place.which === "first"
    : place?.at === "next" && place.order === "first"
}

function makesChains(step: Step | undefined): boolean {
  if (step?.do === "repeat") return step.body.some(makesChains)
  if (step?.do === "group") return step.steps.some(makesChains)
  return step?.do === "chain" || step?.do === "picot"
}

/** "Standing dc in any ch-2 sp", "begin with a standing sc in any st": new yarn without the word join. */
export function standingStitch(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  while (cursor.take("start", "with", "work") || cursor.accept("yarn", "new"));
  if (!cursor.accept("standing")) return []
  const counted = readCounted(cursor)
  if (!counted || counted.stitch.kind.basic === "sl st") return []
  const place = readPlace(cursor)
  if (place?.at !== "next") return []
  return [beginning(cursor, start, place, counted.stitch, counted.count)]
}

/** The round begins in the place with its first stitches, where nothing has been worked yet. */
function beginning(
  cursor: Cursor,
  start: number,
  place: Place,
  stitch: StitchName,
  count: number,
): Clause {
  const span = cursor.since(start)
  const same: Place = { ...span, at: "same", noun: { what: "any" } }
  return clause(cursor, (before) =>
    hasWork(before)
      ? null
      : [
          ...before,
          { ...span, do: "attach", place },
          { ...span, do: "work", stitch, count, place: same },
        ],
  )
}

/** "with a sl st", "by an invisible join", "using yarn B". */
function readMeans(cursor: Cursor): true | null {
  if (!cursor.take("with") && !cursor.accept("by")) return null
  if (cursor.accept("invisible", "invisibly")) {
    cursor.take("join", "stitch")
    return true
  }
  if (cursor.isNumber()) cursor.at += 1
  return readKind(cursor) ? true : null
}

function acceptMeansYarn(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      if (!cursor.take("with")) return null
      if (!cursor.is("yarn") && !cursor.is("colour") && !/^[abcd]$/.test(cursor.text())) return null
      while (cursor.take("yarn", "colour") || /^[abcd]$/.test(cursor.text()))
        if (/^[abcd]$/.test(cursor.text())) cursor.at += 1
      return true
    }) !== null
  )
}

/** What a join goes to: "3rd ch of beg ch-5", "top of ch-3", "first sc". */
export function joinTarget(cursor: Cursor, start: number): JoinTarget {
  const nth = cursor.attempt(() => {
    cursor.take("top")
    cursor.accept("of")
    if (cursor.is("start") && cursor.isOrdinal(1)) cursor.at += 1
    const token = cursor.peek()
    if (token?.type !== "ordinal") return null
    cursor.at += 1
    if (!cursor.take("chain", "stitch") && cursor.text() !== "of") return null
    cursor.attempt(() => {
      if (!cursor.take("of") && !cursor.accept("in")) return null
      while (cursor.take("start", "first", "that"));
      if (cursor.text() === "of" || cursor.is("round")) return true
      if (/^[,;.()]?$/.test(cursor.text())) return true
      if (readCountedChain(cursor)) {
        acceptWithWhich(cursor)
        return true
      }
      const counted = cursor.isNumber() && cursor.text(1) !== "-"
      if (counted) cursor.at += 1
      const noun = readNoun(cursor)
      if (noun?.what === "chain" && cursor.isNumber()) cursor.at += 1
      acceptWithWhich(cursor)
      // "3rd ch of 5": the chain is plain.
      return noun ?? (counted && /^[,;.()]?$/.test(cursor.text()) ? true : null)
    })
    acceptFromStart(cursor)
    return token.value
  })
  if (nth !== null) return { place: null, chain: nth }
  const begun = cursor.attempt((): Place | null => {
    // "to beginning", "to top of beg-ch": where the round began.
    if (cursor.take("top") && !cursor.accept("of")) return null
    if (!cursor.take("start")) return null
    if (cursor.accept("-") && !cursor.take("chain")) return null
    cursor.attempt(() => (cursor.accept("of") && cursor.take("round") ? true : null))
    if (!cursor.done() && !/^[,;.()]$/.test(cursor.text())) return null
    return { ...cursor.since(start), at: "made", which: "first", noun: { what: "chain" } }
  })
  if (begun) return { place: begun }
  const bare = cursor.attempt((): Place | null => {
    // "in first ch of ch 6".
    const firstOf = cursor.is("first") && cursor.is("chain", 1) && cursor.text(2) === "of"
    if (firstOf) cursor.at += 3
    // "to ch-3", "to 3 ch", "to beg ch 3": the chain it began with.
    const firstOne = cursor.is("first") && (cursor.is("chain", 1) || cursor.isNumber(1))
    const begins = cursor.take("start", ...(firstOne ? (["first"] as const) : []))
    let size = cursor.isNumber() ? cursor.value() : null
    const counted = readCountedChain(cursor)
    if (!counted) {
      if (!cursor.take("chain")) return null
      cursor.accept("-")
      size = cursor.takeCount(1)
      if (size === null && (!begins || firstOne)) return null
    }
    if (cursor.is("space")) return null
    cursor.take("stitch")
    const noun: Noun = { what: "chain", ...(size === null ? {} : { size }) }
    return { ...cursor.since(start), at: "made", which: "first", noun }
  })
  const place = bare ?? readTarget(cursor, start, "in")
  // "last ch of starting ch": the chain named is not made here.
  cursor.attempt(() => {
    if (!cursor.accept("of")) return null
    cursor.take("that")
    if (!cursor.take("start", "first")) return null
    if (readCountedChain(cursor)) return true
    const noun = readNoun(cursor)?.what
    if (noun === "chain" && cursor.isNumber()) cursor.at += 1
    return noun === "chain" || noun === "space" ? true : null
  })
  acceptFromStart(cursor)
  return { place }
}

/** "of beginning of round", "made at start", "from beg". */
function acceptFromStart(cursor: Cursor): void {
  cursor.attempt(() => {
    // "2nd ch (of 4) of the start".
    if (!cursor.accept("(") || !cursor.accept("of") || cursor.takeCount(1) === null) return null
    cursor.take("chain")
    return cursor.accept(")") ? true : null
  })
  cursor.attempt(() => {
    cursor.take("made")
    cursor.accept("done", "which", "that", "you")
    if (!cursor.take("of", "in") && !cursor.accept("from", "at")) return null
    cursor.take("that")
    if (cursor.take("start")) {
      cursor.attempt(() => (cursor.take("of") && cursor.take("round") ? true : null))
      cursor.take("round")
      return true
    }
    return cursor.take("round") && !cursor.isNumber() ? true : null
  })
}

/** "third stitch of chain with which the round commenced". */
function acceptWithWhich(cursor: Cursor): void {
  cursor.attempt(() => {
    // "the 3 ch you started with", "that we began with".
    cursor.take("that")
    if (!cursor.accept("you", "we", "i")) return null
    if (!cursor.take("start") && !cursor.accept("began", "started", "made")) return null
    cursor.accept("with")
    return true
  })
  cursor.attempt(() => {
    if (!cursor.take("with") || !cursor.accept("which")) return null
    cursor.take("that")
    if (!cursor.take("round")) return null
    return cursor.take("start") ||
      cursor.accept("commenced", "began", "begun", "started", "commences")
      ? true
      : null
  })
}
