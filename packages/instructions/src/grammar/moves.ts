// Going on without stitches: "sl st in next 2 dc and in ch-2 sp", "skip next sc and hdc", "join with sl st
// to top of ch-3", "join yarn in any corner", "turn".

import type { Place, Step } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause, hasWork } from "./clauses.ts"
import { type Cursor, isBoundary } from "./cursor.ts"
import { gathered, isOneOrEach } from "./gathered-lists.ts"
import { acceptRing, type JoinTarget, joinTarget } from "./joins.ts"
import { readNoun } from "./nouns.ts"
import { readPlace, readTarget, withEarlierRound } from "./places.ts"
import { readKind } from "./stitch-names.ts"

/** "leave the next st unworked", "leaving last 2 dc unworked": skipped. */
export function leftUnworked(cursor: Cursor): Step[] | null {
  const start = cursor.start()
  cursor.at += 1
  let rest = false
  for (;;) {
    if (cursor.is("rest")) rest = true
    if (!cursor.take("next", "last", "rest", "that")) break
  }
  if (cursor.isNumber()) rest = false
  const count = cursor.isNumber() ? cursor.takeCount(1) : 1
  const noun = count === null ? null : readNoun(cursor)
  if (!noun || noun.unworked || count === null) return null
  if (!cursor.take("unworked") && !cursor.accept("alone", "out")) return null
  const span = cursor.since(start)
  const place: Place = {
    ...span,
    at: "next",
    noun: { what: noun.what === "space" ? "space" : "stitch" },
    count,
  }
  return [{ ...span, do: "skip", place, ...(rest ? { rest: true as const } : {}) }]
}

/** "sl st in next 2 dc", "sl st to next ch-3 sp", "sl st across to corner", "slip stitch to join". */
export function slipStitch(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  let count = 1
  cursor.take("work")
  const figure = cursor.peek()
  const figureAt = cursor.at
  if (cursor.isNumber() && cursor.text(1) !== "-") count = cursor.takeCount(1) ?? 1
  while (cursor.is("colour") || cursor.is("adjective")) cursor.at += 1
  const kind = readKind(cursor)
  if (kind?.basic === "sc" && !kind.gathered) return closedOnStart(cursor, start)
  if (kind?.basic !== "sl st" || kind.gathered) return []
  if (cursor.isNumber() && isBoundary(cursor.text(1))) count = cursor.takeCount(1) ?? 1
  if (cursor.is("around") && cursor.is("to", 1)) cursor.at += 1
  cursor.attempt(() => {
    // "slip stitch final ch 3 into 3rd ch of beg ch": the last chains are made already.
    if (!cursor.take("last") || !cursor.take("chain")) return null
    cursor.accept("-")
    cursor.takeCount(1)
    return cursor.is("in") || cursor.is("to") ? true : null
  })
  if (!passesOver(cursor)) cursor.accept("over", "up", "along")
  // "7 sl st to 4th ch": one slip stitch joins, whatever figure stands before it.
  const told = (joined: Clause): Clause =>
    count > 1 && figure?.type === "number"
      ? {
          ...joined,
          remarks: [
            { code: "skipped", start: figure.start, end: figure.end, said: String(figureAt) },
          ],
        }
      : joined
  // "12 dc in ring, ss together".
  if (cursor.attempt(() => (cursor.take("together") && isBoundary(cursor.text()) ? true : null)))
    return [told(joinClause(cursor, start, { place: null }))]
  // "sl st with first st".
  if (cursor.is("with") && (cursor.is("first", 1) || cursor.isOrdinal(1) || cursor.is("top", 1)))
    return withStart(cursor, start)
  const to = cursor.is("to") || cursor.text() === "into" || cursor.text() === "across"
  if (acceptJoining(cursor)) {
    // "sl st to join to first dc".
    const target = readJoinPlace(cursor, start)
    return [told(joinClause(cursor, start, target))]
  }
  const nth = cursor.attempt(() => {
    if (!cursor.take("to", "in")) return null
    const target = joinTarget(cursor, start)
    // "in 2ch-sp": a space, and no chain to join to.
    if (cursor.text() === "-" || cursor.is("space")) return null
    if (
      target.place?.at === "made" &&
      target.place.which === "first" &&
      target.place.noun.what === "chain"
    )
      return target
    return target.chain === undefined || cursor.text() === "from" ? null : target
  })
  if (nth && nth.chain === undefined) {
    const steps = intoFirstChains(chart, at, start)
    acceptJoining(cursor)
    const joined = told(joinClause(cursor, start, nth))
    if (!steps) return [joined]
    const joins = joined.steps as readonly Step[]
    return [{ ...joined, steps: (before) => [...before, ...(hasWork(before) ? joins : [steps])] }]
  }
  if (nth) {
    const joins = acceptJoining(cursor)
    const joined = joinClause(cursor, start, nth)
    const span = cursor.since(start)
    const inside: Place = {
      ...span,
      at: "next",
      noun: { what: "space" },
      count: 1,
      pick: nth.chain!,
      pickNoun: { what: "chain" },
    }
    const moved: Step = { ...span, do: "slip", count: 1, place: inside, to: true }
    const steps = joined.steps as readonly Step[]
    // Before any work it leads into a loop: "sl st to 8th ch".
    return [
      {
        ...joined,
        steps: (before) => (joins || hasWork(before) ? [...before, ...steps] : [...before, moved]),
      },
    ]
  }
  const place =
    cursor.attempt(() => readPlace(cursor)) ??
    (cursor.is("next") ? readTarget(cursor, cursor.start(), "in") : null)
  if (acceptRing(cursor))
    return [clause(cursor, [{ ...cursor.since(start), do: "join", place: null, ring: true }])]
  if (acceptJoining(cursor))
    return [clause(cursor, [{ ...cursor.since(start), do: "join", place }])]
  const loops = kind.loops ? { kind } : {}
  const places = place?.at === "list" ? place.places : [place]
  const steps = places.map(
    (one): Step => ({ ...cursor.since(start), do: "slip", count, place: one, to, ...loops }),
  )
  for (;;) {
    const from = cursor.start()
    const more = cursor.attempt(() => {
      cursor.accept(",")
      if (!cursor.take("and")) return null
      const found =
        readPlace(cursor) ?? (cursor.is("next") ? readTarget(cursor, cursor.start(), "in") : null)
      return found && !cursor.is("work") ? found : null
    })
    if (!more) break
    steps.push({ ...cursor.since(from), do: "slip", count: 1, place: more, to })
  }
  const plain = clause(cursor, steps)
  const only = steps.length === 1 ? steps[0] : undefined
  if (only?.do !== "slip" || !place || !isOneOrEach(place) || place.at === "same") return [plain]
  // "ss, sc, 3 dc, sc, ss in next loop": the slip stitch ends a list that goes there.
  const inner: Step = { ...only, place: null }
  return [
    plain,
    clause(
      cursor,
      (before) => {
        const gatheredTo = gathered(before, [inner], place)
        const group = gatheredTo?.[gatheredTo.length - 1]
        const begins = group?.do === "group" && group.steps[0]?.do === "slip"
        return begins && group.steps.some(({ do: what }) => what === "work") ? gatheredTo : null
      },
      slipListCost,
    ),
  ]
}

/** "Sl st in first 2 ch" where nothing is worked yet: along the first loop, and no join. */
function intoFirstChains(chart: Chart, at: number, start: number): Step | null {
  const { cursor } = chart
  const end = cursor.at
  cursor.at = at
  while (!cursor.is("first") && cursor.at < end) cursor.at += 1
  const first = cursor.take("first") && cursor.isNumber() && cursor.text(1) !== "-"
  const count = first ? cursor.takeCount(1) : null
  const chains = count !== null && cursor.take("chain") && cursor.at === end
  cursor.at = end
  if (!chains) return null
  const span = cursor.since(start)
  const place: Place = { ...span, at: "next", noun: { what: "chain" }, count: count! }
  return { ...span, do: "slip", count: 1, place, to: false }
}

/** A list that begins and ends with a slip stitch is a petal. */
const slipListCost = 0.05

/** "sl st over the 3 dc into the corner": what lies on the way says nothing more. */
function passesOver(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      if (!cursor.accept("over", "across", "along")) return null
      cursor.take("next")
      if (cursor.takeCount(1) === null || !readNoun(cursor)) return null
      return cursor.is("in") || cursor.is("to") ? true : null
    }) !== null
  )
}

/** "... 3 ch, 1 sc into the 3rd of the 6 ch" at the end of a round: old texts join it with a single stitch. */
function closedOnStart(cursor: Cursor, start: number): readonly Clause[] {
  if (!cursor.take("in", "to") || !cursor.isOrdinal()) return []
  const nth = cursor.value()
  cursor.at += 1
  cursor.take("chain")
  if (!cursor.take("of")) return []
  while (cursor.take("first", "start", "that"));
  const chains = cursor.takeCount(2)
  if (
    chains === null ||
    nth > chains ||
    !cursor.take("chain") ||
    !/^[.;]?$/.test(cursor.text()) ||
    (!cursor.done() && cursor.peek(1))
  )
    return []
  const span = cursor.since(start)
  return [
    clause(cursor, (before) => {
      const first = before.find(
        (step) => step.do === "chain" || step.do === "work" || step.do === "group",
      )
      return first?.do === "chain" && first.chains === chains
        ? [...before, { ...span, do: "join", place: null, chain: nth }]
        : null
    }),
  ]
}

/** "to join", "to close", "to finish round". */
function acceptJoining(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      cursor.accept(",")
      if (!cursor.is("to") && !cursor.is("and")) return null
      cursor.at += 1
      if (!cursor.is("join") && !cursor.accept("close", "finish", "complete", "end")) return null
      if (cursor.is("join")) cursor.at += 1
      cursor.take("round")
      return true
    }) !== null
  )
}

function joinClause(cursor: Cursor, start: number, target: JoinTarget): Clause {
  return clause(cursor, [
    {
      ...cursor.since(start),
      do: "join",
      place: target.place,
      ...(target.chain === undefined ? {} : { chain: target.chain }),
    },
  ])
}

function withStart(cursor: Cursor, start: number): readonly Clause[] {
  cursor.at += 1
  return [joinClause(cursor, start, joinTarget(cursor, start))]
}

function readJoinPlace(cursor: Cursor, start: number): JoinTarget {
  return (
    cursor.attempt(() => {
      if (!cursor.take("to", "in")) return null
      return joinTarget(cursor, start)
    }) ?? { place: null }
  )
}

const skipStops = /^[,;.)\]*]?$/

/** "skip 2 sc", "sk next ch-3 sp", "miss 1", "sk next sc and hdc", "sk (ch 3, sl st, sl st, ch 3)". */
export function skipStitches(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  cursor.at += 1
  if (cursor.text() === "(") {
    const from = cursor.at + 1
    const end = chart.lexemes.findIndex(({ text }, k) => k >= from && text === ")")
    if (end < 0) return []
    const inner = chart.readInner(from, end)[0]
    if (!inner || inner.skipped.length > 0) return []
    cursor.at = end + 1
    return [
      clause(
        cursor,
        [{ ...cursor.since(start), do: "skip", place: null, steps: inner.steps }],
        inner.cost,
        { remarks: inner.remarks },
      ),
    ]
  }
  cursor.accept("over", "in")
  const onGroup = cursor.attempt(() => skippedOnGroup(cursor, start))
  if (onGroup) return [skipClause(cursor, start, onGroup)]
  if (cursor.isNumber() && (skipStops.test(cursor.text(1)) || cursor.is("and", 1))) {
    const count = cursor.takeCount(0) ?? 1
    if (count === 0) return [clause(cursor, [])]
    return [
      skipClause(cursor, start, {
        ...cursor.since(start),
        at: "next",
        noun: { what: "stitch" },
        count,
      }),
    ]
  }
  if (skipStops.test(cursor.text())) return []
  const target = readTarget(cursor, start, "skip")
  if (!target) return []
  const places: Place[] = [withEarlierRound(cursor, target, start)]
  for (;;) {
    const more = cursor.attempt(() => {
      cursor.accept(",")
      if (!cursor.take("and")) return null
      if (!cursor.is("next") && !cursor.isNumber()) return null
      const found = readTarget(cursor, cursor.start(), "skip")
      return found?.at === "next" && !cursor.is("in") ? found : null
    })
    if (!more) break
    places.push(more)
  }
  const place: Place =
    places.length === 1 ? places[0]! : { ...cursor.since(start), at: "list", places }
  return [skipClause(cursor, start, place)]
}

/** "skip 2 sts on next petal": from where that petal begins. */
function skippedOnGroup(cursor: Cursor, start: number): Place | null {
  cursor.take("first")
  const count = cursor.takeCount(1)
  if (count === null || readNoun(cursor)?.what !== "stitch") return null
  if (!cursor.take("of", "in") || !cursor.take("next") || !cursor.is("group")) return null
  if (cursor.is("side")) return null
  const noun = readNoun(cursor)
  if (noun?.what !== "group") return null
  return { ...cursor.since(start), at: "next", noun: { what: "group" }, count: 1, pick: count }
}

function skipClause(cursor: Cursor, start: number, place: Place): Clause {
  return clause(cursor, [{ ...cursor.since(start), do: "skip", place }])
}

/** "turn", "turn work": the next round goes the other way; turning something else says nothing. */
export function turnWork(cursor: Cursor): Step[] | null {
  const start = cursor.start()
  cursor.at += 1
  cursor.attempt(() => (cursor.take("work") || cursor.accept("piece") ? true : null))
  return isBoundary(cursor.text()) || cursor.is("and") || cursor.is("with") || cursor.is("chain")
    ? [{ ...cursor.since(start), do: "turn" }]
    : null
}
