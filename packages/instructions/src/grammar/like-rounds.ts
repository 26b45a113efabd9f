// Rounds worked like an earlier one: "as Rnd 2", "rep Rnds 4-5", "repeat last round", and those told by how they
// grow: "1 more sc between increases", "continue in this way".

import type { Growth, Instead, Step } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { acceptEachRound } from "./evenly.ts"
import { readOtherEnding } from "./repeat-endings.ts"
import { readKind } from "./stitch-names.ts"

export function asRound(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const named = readNamedRounds(cursor)
  if (!named) return growthRule(chart, at)
  const afterName = cursor.at
  acceptLinks(cursor)
  const growth = cursor.attempt(() => readBetweenIncreases(cursor))
  if (growth)
    return [
      clause(cursor, [
        {
          ...cursor.since(start),
          do: "as-round",
          ...(named.from === null ? {} : { round: named.from }),
          growth,
        },
      ]),
    ]
  cursor.at = afterName
  if (named.from === named.to && (cursor.text() === "once" || cursor.text() === "once more"))
    cursor.at += 1
  if (named.to !== null && named.from !== null && named.to > named.from) acceptHowOften(cursor)
  else if (/^(?:once|one time|once more|one more time)$/.test(cursor.text())) cursor.at += 1
  cursor.attempt(() => acceptForWhich(cursor))
  const instead = readInstead(cursor)
  const ending = readOtherEnding(chart)
  const span = cursor.since(start)
  const like: Step = {
    ...span,
    do: "as-round",
    ...(named.from === null
      ? {}
      : { round: named.from, to: Math.max(named.from, named.to ?? named.from) }),
    ...(ending ? { ending } : {}),
    ...(instead.length > 0 ? { instead } : {}),
  }
  const other = cursor.attempt(() => {
    // "as round 1 but 2 dc in every st": what follows is the round.
    cursor.accept(",")
    return cursor.accept("but", "except") && (cursor.isNumber() || cursor.is("work")) ? true : null
  })
  if (other) return [clause(cursor, [], 0.05)]
  const sentence = /^[.;!)]$/.test(chart.lexemes[at - 1]?.text ?? "")
  if (!sentence) return [clause(cursor, [like], 0.02)]
  return [
    clause(cursor, (before) => (before.some(makesStitches) ? null : [...before, like]), 0.02),
    // "... Repeat round 2.": a round that has no number of its own.
    clause(cursor, (before) => (before.some(makesStitches) ? before : null), 0.15, {
      remarks: [{ code: "further-rounds", ...span }],
    }),
    clause(cursor, [like], 0.6),
  ]
}

function makesStitches(step: Step): boolean {
  return step.do === "work" || step.do === "group" || step.do === "repeat" || step.do === "pass"
}

/** ", making 9 dc instead of 7 dc", "having ch 6 loops in place of ch 5": figures that change. */
function readInstead(cursor: Cursor): Instead[] {
  const found: Instead[] = []
  for (;;) {
    const one = cursor.attempt((): Instead | null => {
      cursor.accept(",", "(")
      const at = cursor.at
      while (
        cursor.take("work", "and", "with") ||
        cursor.accept("having", "but", "making", "working", "using")
      );
      const to = readFigure(cursor)
      if (!to) return null
      cursor.accept("(", ",")
      while (cursor.take("in", "each", "space", "group") || cursor.accept("every"));
      if (!cursor.accept("instead", "in place", "rather than") && !(cursor.accept("place") && true))
        return to.chains && (inEach(cursor, at) || acceptBetween(cursor))
          ? { to: to.count, chains: true }
          : null
      cursor.accept("of")
      const from = readFigure(cursor)
      cursor.accept(")")
      if (!from) return null
      return { from: from.count, to: to.count, chains: to.chains || from.chains }
    })
    if (!one) return found
    found.push(one)
  }
}

/** "... in each loop", just stepped over. */
function inEach(cursor: Cursor, from: number): boolean {
  return cursor.lexemes
    .slice(from, cursor.at)
    .some(({ classes }) => classes.has("each") || classes.has("space") || classes.has("group"))
}

/** "having ch 4 between cluster sts and tr c's". */
function acceptBetween(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      if (!cursor.take("between")) return null
      while (!cursor.done() && !/^[,;.()[\]*]/.test(cursor.text())) cursor.at += 1
      return true
    }) !== null
  )
}

function readFigure(cursor: Cursor): { count: number; chains: boolean } | null {
  return cursor.attempt(() => {
    let chains = cursor.take("chain")
    cursor.accept("-")
    const count = cursor.takeCount(1)
    if (count === null) return null
    cursor.accept("-")
    if (cursor.take("chain")) chains = true
    else if (!cursor.take("stitch")) readKind(cursor)
    cursor.take("space", "stitch")
    return { count, chains }
  })
}

/** "as Rnd 4", "rep Rnds 3-4", "same as round 2", "work as for previous round": null numbers mean the round before. */
function readNamedRounds(cursor: Cursor): { from: number | null; to: number | null } | null {
  return cursor.attempt(() => {
    let lead = false
    for (let k = 0; k < 5; k++) {
      if (
        cursor.is("repeat") ||
        cursor.accept(
          "as",
          "like",
          "as for",
          "same as",
          "as per",
          "same way as",
          "same manner as",
          "as before",
        )
      ) {
        if (cursor.is("repeat")) cursor.at += 1
        lead = true
        continue
      }
      if (
        cursor.is("same") ||
        cursor.is("work") ||
        cursor.accept(
          "for",
          "in",
          "of",
          "exactly",
          "way",
          "follow",
          "is",
          "are",
          "instructions",
          "instructions for",
          "directions for",
          "pattern",
          "same way",
          "same manner",
        )
      ) {
        if (cursor.is("same")) lead = true
        if (cursor.is("same") || cursor.is("work")) cursor.at += 1
        continue
      }
      break
    }
    if (!lead) return null
    if (
      cursor.is("previous") ||
      cursor.is("last") ||
      (/^(?:this|that)$/.test(cursor.text()) && cursor.is("round", 1))
    ) {
      cursor.at += 1
      return cursor.take("round") ? { from: null, to: null } : null
    }
    if (
      (cursor.isOrdinal() || cursor.is("first")) &&
      (cursor.is("round", 1) ||
        /^(?:[,.;]|but|)$/.test(cursor.text(1)) ||
        (cursor.is("and", 1) && cursor.isOrdinal(2)))
    ) {
      const from = cursor.is("first") ? 1 : cursor.value()
      cursor.at += 1
      let to = from
      // "6th, 7th and 8th rows".
      while (cursor.text() === "," && cursor.isOrdinal(1) && cursor.value(1) === to + 1) {
        to += 1
        cursor.at += 2
      }
      cursor.attempt(() => {
        if (!cursor.take("and", "to") && !cursor.accept("-")) return null
        if (!cursor.isOrdinal()) return null
        to = cursor.value()
        cursor.at += 1
        return true
      })
      cursor.take("round")
      return { from, to }
    }
    if (!cursor.take("round")) return null
    const from = cursor.takeCount(1)
    if (from === null) return null
    let to = from
    cursor.attempt(() => {
      if (!cursor.accept("-", "to", "through", "thru", "until") && !cursor.take("and")) return null
      cursor.take("round")
      const last = cursor.takeCount(1)
      if (last === null) return null
      to = last
      return true
    })
    return { from, to }
  })
}

/** "rep Rnds 3-4 twice": the label says how many rounds that is. */
function acceptHowOften(cursor: Cursor): void {
  cursor.attempt(() => {
    if (cursor.take("once")) return cursor.take("more") || true
    if (cursor.takeCount(1) === null) return null
    cursor.take("more")
    return cursor.take("times") ? cursor.take("more") || true : null
  })
}

/** "repeat Rnd 7 for Rnds 8 and 9": the label says which they are. */
function acceptForWhich(cursor: Cursor): true | null {
  if (!cursor.accept("for") || !cursor.take("round") || cursor.takeCount(1) === null) return null
  while (cursor.take("and", "to") || cursor.accept("-", ",", "through"))
    if (cursor.takeCount(1) === null) return null
  return true
}

/** "continue in this way", "1 more sc between increases each round". */
export function growthRule(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  const led = acceptLead(cursor)
  const afterLead = cursor.at
  acceptLinks(cursor)
  const growth = cursor.attempt(() => readBetweenIncreases(cursor))
  if (growth) return [clause(cursor, [{ ...cursor.since(start), do: "as-round", growth }])]
  cursor.at = afterLead
  if (!led) return []
  // "continue in this way, increasing 6 evenly": the lead says nothing of its own.
  if (!/^[.;(]?$/.test(cursor.text())) return [clause(cursor, [], 0.2)]
  const span = cursor.since(start)
  return [
    clause(
      cursor,
      (before) =>
        before.length === 0
          ? [{ ...span, do: "as-round", growth: { plain: 1, how: "more", implied: true } }]
          : null,
      0.1,
    ),
  ]
}

const wayWords =
  /^(?:in this way|this way|in this manner|same way|same manner|way|manner|fashion|pattern|patt|sequence|in pattern|as established|as before|pattern as established)$/

/** "continue in this way", "as established", "in the same manner". */
function acceptLead(cursor: Cursor): boolean {
  return (
    cursor.attempt(() => {
      const goesOn = cursor.accept(
        "continue",
        "cont",
        "continuing",
        "continues",
        "proceed",
        "carry",
      )
      let how = false
      if (goesOn) {
        cursor.accept("on", "to", "working", "increasing")
        if (cursor.is("work") || cursor.is("increase")) cursor.at += 1
      }
      for (let k = 0; k < 4; k++) {
        if (wayWords.test(cursor.text())) how = true
        else if (
          !cursor.is("same") &&
          !/^(?:in|as|with|this|that|established|above|set|like)$/.test(cursor.text())
        )
          break
        cursor.at += 1
      }
      if (how) cursor.attempt(() => acceptHowFar(cursor))
      return how ? true : null
    }) !== null
  )
}

/** "for each round until you have ten rounds", "through Rnd 12", "for 4 more rnds": the label says so. */
function acceptHowFar(cursor: Cursor): true | null {
  let far = false
  for (let k = 0; k < 12 && !/^[.;,(]?$/.test(cursor.text()); k++) {
    if (cursor.is("round")) far = true
    if (cursor.is("increase") || cursor.is("chain") || cursor.is("between")) return null
    cursor.at += 1
  }
  return far ? true : null
}

function acceptLinks(cursor: Cursor): void {
  while (
    cursor.accept(
      ",",
      "but",
      "having",
      "time",
      "this",
      "with",
      "add",
      "adding",
      "placing",
      "making",
      "working",
      "except",
    ) ||
    cursor.take("and", "with")
  );
}

/** "1 more sc between increases each round", "3 sc between increases", "one extra st between each inc". */
function readBetweenIncreases(cursor: Cursor): Growth | null {
  let plain = cursor.takeCount(0)
  let more = false
  const said = plain !== null
  plain ??= 1
  while (cursor.is("more") || cursor.accept("extra", "plain")) {
    if (cursor.is("more")) cursor.at += 1
    more = true
  }
  const stitch = cursor.take("stitch") || readKind(cursor) !== null
  if (!said && !more && !stitch) return null
  if (!cursor.take("between") && !cursor.accept("before")) return null
  cursor.take("each")
  cursor.accept("of")
  if (!cursor.take("increase", "corner")) return null
  acceptEachRound(cursor)
  return { plain, how: more ? "more" : "exactly" }
}
