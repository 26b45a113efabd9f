// Names of lists and rounds: "work a petal in each loop: ...", "V-stitch = dc, ch 1, dc", "Border:".

import type { Chart, Clause } from "./chart.ts"
import { clause } from "./clauses.ts"
import { type Cursor, isStitchWord } from "./cursor.ts"
import { acceptWork } from "./handling.ts"
import { atPlace, readPlace } from "./places.ts"

/** "work a petal in each loop: sc, 3 dc, sc", "make petals as follows:", "for each petal:": what it is called, then how. */
export function namedList(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const opens = cursor.accept("for") || cursor.is("work")
  acceptWork(cursor)
  if (cursor.is("any") || cursor.isNumber()) cursor.at += 1
  cursor.take("each")
  while (cursor.is("size") || cursor.is("colour") || cursor.is("next") || cursor.is("first"))
    cursor.at += 1
  if (!opens || (!cursor.is("group") && !cursor.is("corner"))) return []
  cursor.at += 1
  if (atPlace(cursor)) {
    // The place leads: what it is called says nothing new.
    const place = cursor.at
    if (readPlace(cursor) && readsAsList(cursor))
      return [{ ...clause(cursor, [], 0.02), end: place }]
    return []
  }
  return readsAsList(cursor) ? [clause(cursor, [], 0.02)] : []
}

/** "V-stitch = dc, ch 1, dc.": how something named is made, told before. */
export function definedName(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  const before = chart.lexemes[at - 1]
  if (before && !/^[.;!]$/.test(before.text)) return []
  while (!cursor.done() && cursor.text() !== "=" && cursor.at < at + 4) cursor.at += 1
  if (cursor.text() !== "=" || cursor.at === at) return []
  while (!cursor.done() && !/^[.;]$/.test(cursor.text())) cursor.at += 1
  return [clause(cursor, [], 0.1)]
}

/** "Border:", "Picot round:": a name for the round. */
export function roundName(chart: Chart, at: number): readonly Clause[] {
  if (at > 0) return []
  const cursor = chart.from(at)
  for (let k = 0; k < 4 && cursor.text() !== ":"; k++) {
    const word = cursor.peek()
    const works = [
      "in",
      "repeat",
      "each",
      "next",
      "skip",
      "join",
      "work",
      "stitch",
      "start",
    ] as const
    if (
      word?.type !== "word" ||
      works.some((name) => cursor.is(name)) ||
      isStitchWord(word.text, cursor.terms)
    )
      return []
    cursor.at += 1
  }
  return cursor.accept(":") ? [clause(cursor, [], 0.05)] : []
}

/** "as follows:", ":", " - ". */
function readsAsList(cursor: Cursor): boolean {
  const follows = cursor.accept("as follows", "thus", "follows", "like this") || cursor.accept("as")
  if (follows) cursor.accept("follows")
  const mark = cursor.accept(":", "-", "=") || (cursor.text() === "," && cursor.is("work", 1))
  return mark || follows
}

/** "work a petal of (...)", "a shell of (2 dc, ch 1, 2 dc)": the bracket tells what it is. */
export function groupOf(chart: Chart, at: number): readonly Clause[] {
  const cursor = chart.from(at)
  acceptWork(cursor)
  if (!cursor.is("group") && !cursor.is("corner")) return []
  cursor.at += 1
  const worked = chart.lexemes[at]!.classes.has("work") && cursor.text() === "("
  if (!worked && !cursor.accept("of", ":", "=", "-") && !cursor.is("with")) return []
  return /^[([]$/.test(cursor.text()) ? [clause(cursor, [], 0.02)] : []
}
