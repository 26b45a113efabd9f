// Chains and picots: "ch 3", "3 ch", "ch 4, sl st in first ch", "picot of ch 5", "ch-3 picot".

import type { Place, Step } from "../base/tree.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import { type Cursor, isBoundary } from "./cursor.ts"
import { readBackAlong } from "./leaves.ts"
import { readNoun } from "./nouns.ts"
import { readPlace } from "./places.ts"
import { readKind } from "./stitch-names.ts"

/** Chains of a picot whose size is not told: common practice, no source. */
const usualPicot = 3

export function makeChains(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  while (cursor.take("start", "work") || cursor.accept("twisted"));
  const chains = readChains(cursor)
  if (chains === null) return []
  cursor.accept("loosely")
  const found: Clause[] = []
  const made = cursor.at
  if (
    chart.lexemes[at - 1]?.classes.has("forms") &&
    (cursor.take("in") || cursor.take("to")) &&
    cursor.take("ring")
  ) {
    // "form 6 ch into a ring".
    const span = cursor.since(start)
    return [
      clause(cursor, [
        { ...span, do: "chain", chains, place: null },
        { ...span, do: "join", place: null, ring: true },
      ]),
    ]
  }
  cursor.at = made
  const plain = (): Clause => {
    cursor.at = made
    const place: Place | null = cursor.is("in") ? cursor.attempt(() => readPlace(cursor)) : null
    const kept = place && (place.at === "ring" || place.at === "same") ? place : null
    if (!kept) cursor.at = made
    return clause(cursor, [{ ...cursor.since(start), do: "chain", chains, place: kept }])
  }
  if (cursor.take("ring")) {
    const span = cursor.since(start)
    found.push(
      clause(cursor, (before) =>
        before.length === 0
          ? [
              { ...span, do: "chain", chains, place: null },
              { ...span, do: "join", place: null, ring: true },
            ]
          : null,
      ),
    )
  }
  cursor.at = made
  const later = readLaterLoop(cursor, chains)
  if (later !== null) {
    // "ch 5, sl st in 2nd of these 5 ch": a loop of the later chains on a stem of the first.
    const span = cursor.since(start)
    found.push(
      clause(cursor, [
        { ...span, do: "chain", chains: chains - later, place: null },
        { ...span, do: "picot", chains: later },
      ]),
    )
    return found
  }
  cursor.at = made
  if (!namesStart(cursor, chains) && closesPicot(cursor, chains)) {
    if (cursor.attempt(() => (cursor.take("to") && cursor.take("forms") ? true : null))) {
      // "ch 4, sl st to first ch to form ring".
      cursor.take("ring", "space")
      const span = cursor.since(start)
      found.push(
        clause(cursor, [
          { ...span, do: "chain", chains, place: null },
          { ...span, do: "join", place: null, ring: true },
        ]),
      )
      return found
    }
    const remarks = beyondChains(chart, made, cursor.at, chains)
    found.push(clause(cursor, [{ ...cursor.since(start), do: "picot", chains }], 0, { remarks }))
    return found
  }
  cursor.at = made
  const back = readBackAlong(cursor, chains, start)
  if (back) {
    found.push(clause(cursor, [{ ...cursor.since(start), do: "chain", chains, place: null }, back]))
    return found
  }
  cursor.at = made
  if (cursor.take("between")) {
    cursor.take("each", "that")
    if (cursor.take("group", "corner") || cursor.accept("clusters", "cluster", "them")) {
      found.push(
        clause(cursor, [
          { ...cursor.since(start), do: "chain", chains, place: null, between: true },
        ]),
      )
      return found
    }
  }
  found.push(plain())
  return found
}

/** "ch 3, sl st in 5th ch from hook": there are not so many. */
function beyondChains(chart: Chart, from: number, to: number, chains: number): Remark[] {
  return chart.lexemes
    .slice(from, to)
    .filter(({ type, value }) => (type === "number" || type === "ordinal") && value > chains + 1)
    .map(({ start, end }): Remark => ({ code: "figure-passed-over", start, end }))
}

/** "ch 3", "3 ch", "ch", "chain of 3", "3 chain stitches"; null where it is the name of a space. */
function readChains(cursor: Cursor): number | null {
  const first = cursor.at
  return cursor.attempt(() => {
    let chains: number | null
    if (cursor.isNumber()) {
      chains = cursor.takeCount(1)
      cursor.accept("-")
      cursor.take("more")
      if (cursor.is("start") && cursor.is("chain", 1)) cursor.at += 1
      if (chains === null || !cursor.take("chain")) return null
      // "4ch foundation ch".
      if (cursor.text() === "foundation" && cursor.is("chain", 1)) cursor.at += 2
    } else {
      if (!cursor.take("chain")) return null
      cursor.accept("-")
      cursor.attempt(() => (cursor.accept("of") && cursor.isNumber() ? true : null))
      chains = cursor.takeCount(1)
      if (chains === null) {
        if (!isBoundary(cursor.text()) && !cursor.is("and")) return null
        chains = 1
      }
      cursor.take("stitch")
    }
    cursor.attempt(() =>
      cursor.accept("-") && (cursor.is("space") || cursor.is("picot")) ? true : null,
    )
    if (cursor.is("picot")) return null
    if (cursor.is("space")) {
      // "make a ch 3 loop" is work, "ch-3 sp" a place.
      // "join to ch-1 sp,": a place, though a list goes on after it.
      const led = cursor.lexemes[first - 1]?.classes
      if (!makesLoop(cursor) || led?.has("to") || led?.has("in")) return null
      return cursor.accept("loop", "lp", "space", "sp", "arch") ? chains : null
    }
    return chains
  })
}

/** A loop told as made rather than as a place: a list goes on after it, or it stands at the end of a clause. */
function makesLoop(cursor: Cursor): boolean {
  return isBoundary(cursor.text(1)) && cursor.text(1) !== ")"
}

/** ", sl st in 2nd of these 5 ch": chains in the loop so closed; null when nothing of the kind. */
function readLaterLoop(cursor: Cursor, chains: number): number | null {
  return cursor.attempt(() => {
    cursor.accept(",")
    const kind = readKind(cursor)
    if (kind?.basic !== "sl st" || !cursor.take("in")) return null
    const token = cursor.peek()
    if (token?.type !== "ordinal" || token.value < 2 || token.value >= chains) return null
    cursor.at += 1
    cursor.take("chain")
    if (!cursor.accept("of") || !cursor.take("that")) return null
    cursor.takeCount(1)
    return cursor.take("chain") ? chains - token.value + 1 : null
  })
}

/** "3 ch, sl st into the 3rd of the 6 ch": a chain longer than the one just made is the one the round began with. */
function namesStart(cursor: Cursor, chains: number): boolean {
  for (let k = 0; k < 12 && !/^[.;*)\]]?$/.test(cursor.text(k)); k++)
    if (cursor.is("of", k) && cursor.isNumber(k + 1) && cursor.is("chain", k + 2))
      return cursor.value(k + 1) > chains
  return false
}

/** After "ch 4": ", sl st in first ch", ", sl st in 4th ch from hook", ", sl st in last sc". */
function closesPicot(cursor: Cursor, chains: number): boolean {
  return (
    cursor.attempt((): true | null => {
      cursor.accept(",")
      cursor.take("and")
      const kind = readKind(cursor)
      // "ch 1, sc in same st" begins a round: one chain makes no picot.
      if (kind?.basic !== "sl st" && (kind?.basic !== "sc" || chains < 2)) return null
      if (!cursor.take("in", "to")) return null
      cursor.take("top", "base")
      cursor.accept("of")
      if (cursor.isOrdinal() || cursor.is("first"))
        return closesOnChain(cursor, chains, kind.basic === "sl st")
      return closesOnStitch(cursor)
    }) !== null
  )
}

function closesOnChain(cursor: Cursor, chains: number, slip: boolean): true | null {
  const nth = cursor.isOrdinal() ? cursor.value() : 1
  cursor.at += 1
  const isChain = cursor.take("chain") || (nth === 1 && isBoundary(cursor.text()))
  if (!isChain) return null
  const fromHook =
    cursor.attempt(() => (cursor.accept("from") && cursor.take("hook") ? true : null)) !== null
  if (fromHook && nth < Math.min(3, chains)) return null
  cursor.attempt(() => {
    if (!cursor.accept("of")) return null
    cursor.take("that")
    if (cursor.isNumber()) cursor.at += 1
    return readNoun(cursor)
  })
  return slip && (nth === 1 || fromHook) ? true : null
}

/** "sl st in last sc", "in same st", "in top of dc just made". */
function closesOnStitch(cursor: Cursor): true | null {
  if (cursor.take("last", "previous") || cursor.take("that")) {
    const noun = readNoun(cursor)
    cursor.take("made")
    return noun?.what === "stitch" ? true : null
  }
  if (cursor.is("same")) {
    cursor.at += 1
    const noun = readNoun(cursor)
    return noun?.what === "stitch" && noun.kind ? true : null
  }
  const noun = readNoun(cursor)
  return noun?.what === "stitch" && cursor.take("made") ? true : null
}

/** "picot", "ch-4 picot", "picot of ch 5", "3-ch picot", "a picot in every 3rd sc", "picot (ch 3, sl st in first ch)". */
/** "Picot after every 4 sc", "picot after every 2nd sc": among the stitches just told, one after so many of them. */
export function picotAfterEvery(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const [picot] = makePicot(cursor) ?? []
  if (!picot || !cursor.accept("after") || !cursor.take("each")) return []
  const count = cursor.isOrdinal() || cursor.isNumber() ? cursor.value() : 1
  if (cursor.isOrdinal() || cursor.isNumber()) cursor.at += 1
  const noun = readNoun(cursor)
  if (noun?.what !== "stitch" || !Number.isInteger(count) || count < 1 || count > 1000) return []
  const span = cursor.since(start)
  return [
    clause(cursor, (before) => {
      const last = before[before.length - 1]
      if (last?.do !== "work" || last.count !== 1 || last.place?.at !== "each") return null
      const { place } = last
      if (place.until.kind !== "around" || place.every !== undefined || place.pick !== undefined)
        return null
      const next: Place = {
        start: place.start,
        end: place.end,
        at: "next",
        noun: place.nouns.length > 1 ? { what: "any" } : place.nouns[0]!,
        count,
        each: true,
      }
      const body: Step[] = [{ ...last, place: next }, picot]
      const times = { kind: "until" as const, until: { kind: "around" as const } }
      return [
        ...before.slice(0, -1),
        { ...span, start: last.start, do: "repeat", body, last: null, ending: null, times },
      ]
    }),
  ]
}

export function makePicot(cursor: Cursor): Step[] | null {
  return cursor.attempt((): Step[] | null => {
    const start = cursor.start()
    cursor.take("work")
    cursor.take("size")
    let count = 1
    let chains: number | null = null
    if (cursor.isNumber() && cursor.is("picot", 1)) count = cursor.takeCount(1) ?? 1
    else if (
      cursor.isNumber() &&
      /^-?$/.test(cursor.text(1) === "-" ? "-" : "") &&
      cursor.is("picot", 2)
    ) {
      chains = cursor.takeCount(1)
      cursor.accept("-")
    } else if (cursor.isNumber()) {
      chains = cursor.takeCount(1)
      cursor.accept("-")
      if (!cursor.take("chain")) return null
      cursor.accept("-")
    } else if (cursor.take("chain")) {
      cursor.accept("-")
      chains = cursor.takeCount(1)
      cursor.accept("-")
      if (chains === null) return null
    }
    if (!cursor.take("picot")) return null
    if (cursor.is("space") || cursor.is("picot")) return null
    const local = cursor.locals.get("picot")?.picotChains
    cursor.attempt(() => {
      cursor.accept("-")
      if (!cursor.accept("of", "with", "=")) return null
      const before = cursor.takeCount(1)
      if (before !== null) {
        if (!cursor.take("chain")) return null
        chains = before
        return true
      }
      if (!cursor.take("chain")) return null
      chains = cursor.takeCount(1)
      return chains
    })
    cursor.attempt(() => {
      // "picot (ch 3, sl st in 3rd ch from hook)".
      if (!cursor.accept("(", "[")) return null
      cursor.accept("=")
      const told = readChains(cursor)
      if (told === null || !closesPicot(cursor, told)) return null
      chains = told
      return cursor.accept(")", "]") ? true : null
    })
    let every: number | undefined
    cursor.attempt(() => {
      if (!cursor.take("in") || !cursor.take("each")) return null
      if (!cursor.isOrdinal()) return null
      every = cursor.value()
      cursor.at += 1
      return readNoun(cursor)
    })
    const picot: Step = {
      ...cursor.since(start),
      do: "picot",
      chains: chains ?? local ?? usualPicot,
      ...(every === undefined ? {} : { every }),
    }
    return Array.from({ length: Math.min(count, 20) }, () => picot)
  })
}
