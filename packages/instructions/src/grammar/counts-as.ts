// How a starting chain counts: "counts as dc, ch 2", "does not count as a st", "3 skipped ch count as dc".

import { turningChains } from "@roundwright/stitches"
import type { CountsAs, Step } from "../base/tree.ts"
import type { Chart, Clause, Remark } from "./chart.ts"
import { clause } from "./clauses.ts"
import type { Cursor } from "./cursor.ts"
import { readChainCount } from "./make-extras.ts"
import { readKind } from "./stitch-names.ts"

/** Words that may stand in such a note and change nothing in it. */
function acceptTalk(cursor: Cursor): void {
  while (
    cursor.accept(
      "here",
      "now",
      "always",
      "also",
      "throughout",
      "will",
      "beg",
      "beginning",
      "at",
      "of",
      "rnd",
      "round",
      "in",
      "first",
      "now and throughout",
      "being",
      "stitch count",
    ) ||
    cursor.is("round")
  )
    if (cursor.is("round")) cursor.at += 1
}

/** "counts as dc", "counts as first dc, ch 2", "does not count as a st", "3 skipped ch count as dc". */
export function readCountsNote(cursor: Cursor): { countsAs: CountsAs; chains?: number } | null {
  return cursor.attempt(() => {
    let chains: number | undefined
    cursor.take("to")
    cursor.accept("which", "that", "this", "it")
    const short = cursor.attempt(() => readShortCount(cursor))
    if (short) return short
    while (cursor.take("first", "that", "start", "unworked"));
    const told = cursor.attempt(() => readChainCount(cursor))
    if (told !== null) chains = told
    else if (cursor.isNumber() && cursor.is("unworked", 1)) {
      chains = cursor.takeCount(1) ?? undefined
      cursor.at += 1
      cursor.take("chain")
    } else cursor.take("chain")
    // "ch 3 and dc count as first cluster".
    cursor.attempt(() => {
      if (!cursor.take("and") && !cursor.accept("+")) return null
      cursor.take("first", "next")
      if (cursor.isNumber()) cursor.at += 1
      return readKind(cursor) && (cursor.is("counts") || cursor.accept("together")) ? true : null
    })
    while (
      cursor.accept(
        "at",
        "beg",
        "beginning",
        "will",
        "now",
        "here",
        "throughout",
        "of",
        "also",
        "always",
        "in",
        "this",
        "on",
        "it",
      )
    );
    const withChains = (countsAs: CountsAs) => ({
      countsAs,
      ...(chains === undefined ? {} : { chains }),
    })
    if (cursor.is("not")) {
      cursor.at += 1
      if (!cursor.take("counts") && !cursor.accept("included", "stitch", "st")) return null
      skipRest(cursor)
      return withChains({ counts: false })
    }
    while (cursor.accept("always", "now", "also", "will"));
    cursor.attempt(() => {
      // "this is going to be counted as first dc".
      while (cursor.accept("is", "going", "be", "should", "can", "to"));
      return cursor.is("counts") ? true : null
    })
    if (!cursor.take("counts")) return null
    if (cursor.is("not")) {
      cursor.at += 1
      cursor.take("counts")
      skipRest(cursor)
      return withChains({ counts: false })
    }
    cursor.take("counts")
    cursor.accept("as", "for", "=", "of")
    while (cursor.take("first", "start", "last") || cursor.isOrdinal())
      if (cursor.isOrdinal()) cursor.at += 1
    return readWhat(cursor, withChains)
  })
}

/** Figures before the stitch that something counts as: other than one they say nothing that can be. */
export function figuresOfCount({ lexemes }: Chart, from: number, to: number): Remark[] {
  return lexemes.slice(from, to).flatMap(({ type, value, start, end }, k): Remark[] => {
    const before = lexemes[from + k - 1]
    const counts = before?.text === "as" || before?.text === "for" || before?.classes.has("counts")
    const bare =
      lexemes[from + k + 1]?.type === "word" && !lexemes[from + k + 1]!.classes.has("chain")
    return type === "number" && value > 1 && counts && bare
      ? [{ code: "figure-passed-over", start, end }]
      : []
  })
}

function readWhat(
  cursor: Cursor,
  withChains: (countsAs: CountsAs) => { countsAs: CountsAs; chains?: number },
): { countsAs: CountsAs; chains?: number } | null {
  const named =
    cursor.attempt(() => readKind(cursor)) ??
    cursor.attempt(() => {
      // "counts as 1 dc"; of another figure it is told that nothing comes of it. "= 36 sc" is a total.
      if (!cursor.isNumber() || (cursor.value() > 1 && cursor.text(-1) === "=")) return null
      cursor.at += 1
      return readKind(cursor)
    })
  if (!named) {
    const space = cursor.attempt(() => {
      // "counts as ch-3 sp": the tall stitch stands for the end of the last space.
      const size = readChainCount(cursor)
      if (size === null) return null
      cursor.accept("-")
      return cursor.take("space") ? size : null
    })
    if (space !== null) return withChains({ counts: true, space })
    if (cursor.isNumber() && cursor.value() === 1) cursor.at += 1
    cursor.take("chain")
    cursor.accept("-")
    if (!cursor.take("stitch", "space")) return null
    const chains = readPlusChains(cursor)
    skipRest(cursor)
    return withChains({ counts: true, ...(chains === null ? {} : { chains }) })
  }
  const ofCluster = cursor.attempt(() => {
    // "first tr of first cluster".
    if (!cursor.accept("of")) return null
    while (cursor.take("first", "that", "start"));
    const whole = readKind(cursor)
    cursor.take("stitch")
    return whole?.gathered ? true : null
  })
  if (ofCluster) return withChains({ counts: true, kind: named, tog: true })
  const extra = readPlusChains(cursor)
  skipRest(cursor)
  return withChains({
    counts: true,
    kind: named,
    ...(named.gathered === undefined ? {} : { tog: true }),
    ...(extra === null ? {} : { chains: extra }),
  })
}

/** ", ch 2", "+ ch 1", "and a ch-2 space", "and 2 ch". */
function readPlusChains(cursor: Cursor): number | null {
  return cursor.attempt(() => {
    cursor.take("stitch")
    if (!cursor.accept(",", "with", "-") && !cursor.take("and")) return null
    cursor.take("and")
    cursor.take("first")
    if (cursor.isNumber() && cursor.value() === 1 && cursor.is("chain", 1) && cursor.isNumber(2))
      cursor.at += 1
    const count = readChainCount(cursor) ?? (cursor.take("chain") ? 1 : null)
    if (count === null) return null
    cursor.accept("-")
    cursor.take("space")
    return count
  })
}

/** "(first dc and ch-1)", "(= dc, ch 2)", "for first dc": what the chain stands for, without a verb. */
function readShortCount(cursor: Cursor): { countsAs: CountsAs } | null {
  if (
    !cursor.take("first") &&
    !cursor.accept("=", "for", "equals", "instead", "making", "in place", "serves", "as") &&
    !cursor.take("counts")
  )
    return null
  cursor.accept("for", "as", "of")
  while (cursor.take("first", "start") || cursor.isOrdinal()) if (cursor.isOrdinal()) cursor.at += 1
  if (cursor.isNumber() && cursor.value() === 1) cursor.at += 1
  const kind = readKind(cursor)
  if (!kind || kind.gathered) return null
  cursor.take("made")
  const chains = readPlusChains(cursor)
  acceptTalk(cursor)
  if (!/^[)\],;.-]?$/.test(cursor.text()) && !cursor.is("and") && !cursor.is("work")) return null
  return {
    countsAs: { counts: true, kind, ...(chains === null || chains === 0 ? {} : { chains }) },
  }
}

/** "ch 4 (dc plus ch 1)", "ch 4 (dc, ch 1)": a stitch and chains that add up, in a bracket behind a chain. */
export function readSumNote(
  cursor: Cursor,
): { countsAs: CountsAs; fits: (made: number) => boolean } | null {
  return cursor.attempt(() => {
    if (cursor.isNumber() && cursor.value() === 1) cursor.at += 1
    const kind = readKind(cursor)
    if (!kind || kind.gathered) return null
    const listed = cursor.text() === ","
    const chains = readPlusChains(cursor)
    if (chains === null) return null
    // A list may be a group to work; it is a sum where it comes to the chain before it.
    return {
      countsAs: { counts: true, kind, chains },
      fits: (made) => !listed || turningChains(kind.basic) + chains === made,
    }
  })
}

/** "here and throughout", "on every round": the rest of the note. */
function skipRest(cursor: Cursor): void {
  while (!cursor.done() && !/^[)\]};.,-]$/.test(cursor.text()) && !cursor.isNumber()) {
    const word = cursor.peek()!
    if (word.type !== "word" || (word.classes.size === 0 && word.skipCost > 1.5)) return
    cursor.at += 1
  }
}

/** "ch 2, does not count as a stitch, ...", "ch 3 = first dc", "ch 3 to count as first dc": no bracket. */
export function countsWithoutBracket(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const start = cursor.start()
  cursor.accept("-", ",")
  const note = readCountsNote(cursor)
  if (!note) return []
  cursor.accept("-")
  const span = cursor.since(start)
  return [
    clause(
      cursor,
      (before) => {
        const last = before[before.length - 1]
        if (
          last?.do !== "chain" &&
          !(last?.do === "work" && before[before.length - 2]?.do === "chain")
        )
          return null
        const step: Step = { ...span, ...note, do: "note-counts" }
        return [...before, step]
      },
      0,
    ),
  ]
}
