// Repeats marked by asterisks or daggers: "*...; rep from * around", "*...* 5 times", "ending last
// rep at **", "omitting last sc", "ending last rep with ch 2, dc in first sc".

import { isRepeatWord, readSteps, type StepRun } from "./grammar.ts"
import { namedAgain } from "./passage-grammar.ts"
import { readPlace } from "./place-grammar.ts"
import { type Ending, readEnding } from "./repeat-ending-grammar.ts"
import type { Place, StatedTotal, Step, Times } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { Words } from "./words.ts"

/** A repeat from its opening mark to all that is said of its end. */
export function readStarred(words: Words, totals: StatedTotal[]): Step[] | null {
  const opening = words.peek()
  if (!opening) return null
  const mark = opening.text
  words.at += 1
  words.stars += 1
  const run = readSteps(words, (w) => endsHere(w, mark))
  words.stars -= 1
  totals.push(...run.totals)
  const start = opening.start
  let closedByMark = false
  if (words.text() === mark) {
    closedByMark = true
    words.at += 1
    words.accept(",", ";", ".")
  }
  let said: "reference" | "word" | null = null
  let upToMark = false
  if (isRepeatWord(words.text())) {
    words.at += 1
    said = acceptBackReference(words) ? "reference" : "word"
    upToMark = acceptUpToMark(words)
  } else if (!closedByMark) {
    const span = { start: opening.start, end: opening.end }
    words.report({
      severity: "error",
      code: "repeat-without-end",
      ...span,
      message: "The repeat that starts here has no end.",
      hint: 'Say how often: "rep from * 5 more times" or "rep from * around".',
    })
    return [...run.steps]
  }
  const stated = readRepeatTimes(words, closedByMark, said)
  if (!stated && closedByMark && said === null && namedAgain(words, mark)) {
    words.passages.set(mark, run.steps)
    return [...run.steps]
  }
  const times: Times = stated ?? { kind: "until", until: { kind: "around" } }
  const inOne = times.kind === "until" ? null : words.attempt(() => readPlaceOfAll(words))
  if (inOne)
    return [
      {
        ...words.since(start),
        do: "group",
        steps: [
          { ...words.since(start), do: "repeat", body: run.steps, last: null, ending: null, times },
        ],
        place: inOne,
      },
    ]
  if (upToMark && run.markAt !== null) return upTo(words, run, start, times)
  // A mark that nothing speaks of ends the last repeat only where the round itself has to end it.
  const marked = words.strayMark && times.kind !== "until" ? { ...run, markAt: null } : run
  const ending = readOnceMore(words, marked) ?? readEnding(words, marked)
  const closing = ending.last ? ending.last[ending.last.length - 1] : undefined
  if (
    ending.last &&
    ending.last.length > 1 &&
    closing &&
    (closing.do === "slip" || closing.do === "join") &&
    run.steps[run.steps.length - 1]?.do !== "slip"
  ) {
    // "ending ch 3, sl st in first dc": the slip stitch joins the round.
    const last = ending.last.slice(0, -1)
    return [
      {
        ...words.since(start),
        do: "repeat",
        body: run.steps,
        last,
        ending: ending.how,
        ...(ending.tail ? { tail: ending.tail.slice(0, -1) } : {}),
        joins: true,
        times,
      },
      closing,
    ]
  }
  return [
    {
      ...words.since(start),
      do: "repeat",
      body: run.steps,
      last: ending.last,
      ending: ending.how,
      ...(ending.tail ? { tail: ending.tail } : {}),
      times,
    },
  ]
}

/** "*1 dc, ch 1*, rep between *s 11 times in ring": where all of it goes. */
function readPlaceOfAll(words: Words): Place | null {
  if (!/^(?:in|into)$/.test(words.text())) return null
  const place = readPlace(words)
  return place?.at === "ring" || place?.at === "same" ? place : null
}

/** How often, after the closing mark or "rep from *"; said of a stretch just closed, "5 times" may count it. */
function readRepeatTimes(
  words: Words,
  closedByMark: boolean,
  said: "reference" | "word" | null,
): Times | null {
  if (!closedByMark || said === "reference") return readTimes(words, true)
  if (said === null) return readTimes(words, false)
  const times = readTimes(words, true)
  return times?.kind === "more" && times.plain ? { ...times, ofBracket: true } : times
}

/** "rep from * to ** twice more": what stands before the second mark, so often again. */
function upTo(words: Words, run: StepRun, start: number, times: Times): Step[] {
  const span = words.since(start)
  const marked = run.steps.slice(0, run.markAt ?? run.steps.length)
  if (marked.length === run.steps.length || times.kind === "until")
    return [{ ...span, do: "repeat", body: run.steps, last: null, ending: null, times }]
  const again: Times = { kind: "total", count: times.count }
  return [
    ...run.steps,
    { ...span, do: "repeat", body: marked, last: null, ending: null, times: again },
  ]
}

function acceptUpToMark(words: Words): boolean {
  return (
    words.attempt(() => {
      if (!words.accept("to", "until", "and")) return null
      if (!isMark(words.text())) return null
      words.at += 1
      return true
    }) !== null
  )
}

/** "rep from * twice more, then from * to ** once": the last time goes only so far. */
function readOnceMore(words: Words, run: StepRun): Ending | null {
  if (run.markAt === null) return null
  return words.attempt((): Ending | null => {
    words.accept(",", ";", ".")
    words.accept("and", "ending", "end")
    words.accept("then", "with", "by")
    if (isRepeatWord(words.text()) || /^(?:work|working|repeating)$/.test(words.text()))
      words.at += 1
    words.accept("from", "between")
    if (!isMark(words.text())) return null
    words.at += 1
    if (!acceptUpToMark(words)) return null
    words.accept("once", "again")
    words.accept("more", "again")
    return { last: run.steps.slice(0, run.markAt ?? 0), how: "follows" }
  })
}

function isMark(text: string): boolean {
  return /^\*+$/.test(text) || /^[\u2020\u2021]+$/.test(text)
}

function endsHere(words: Words, mark: string): boolean {
  if (words.text() === mark) return true
  if (!isRepeatWord(words.text())) return false
  // "rep from * around" ends this one; "rep from ** twice" ends an inner one, read by it.
  for (let i = 1; i <= 6; i++) {
    const text = words.text(i)
    if (text === mark) return true
    if (/^\*+$/.test(text) || /^[\u2020\u2021]+$/.test(text)) return false
    if (/^(rnd|rnds|round|rounds|row|rows)$/.test(text)) return false
    if (text === "," || text === ";" || text === ".") break
  }
  return (
    /^(around|across|to|\d+)$/.test(words.text(1)) || words.text(1) === "from" || words.isNumber(1)
  )
}

/** "from *", "from * to *", "between *'s"; true when a mark is named. */
function acceptBackReference(words: Words): boolean {
  let named = false
  words.accept("instructions", "the", "section", "directions", "pattern", "sequence")
  words.accept("between", "from", "within")
  words.accept("the", "first")
  while (
    /^\*+$/.test(words.text()) ||
    /^[\u2020\u2021]+$/.test(words.text()) ||
    (words.text() === "to" && /^\*+$/.test(words.text(1))) ||
    (words.text() === "and" && /^\*+$/.test(words.text(1)))
  ) {
    // "from * to *" and "between * and *" name the marks again; "to **" may be an end mark, read below.
    if ((words.text() === "to" || words.text() === "and") && words.text(1) !== "*") break
    named = true
    words.at += 1
    // "between *'s"
    if (words.text() === "'" && words.text(1) === "s") words.at += 2
    else words.accept("s")
  }
  return named
}

/** "5 more times", "3 times", "twice", "x 4", "around", "to last 2 sts"; null when nothing is said. */
export function readTimes(words: Words, afterOnce: boolean): Times | null {
  return words.attempt((): Times | null => {
    words.accept(",")
    if (words.accept("for")) words.accept("a", "total")
    words.accept("a", "another")
    if (words.accept("total")) words.accept("of")
    if (words.accept("once", "twice", "thrice")) {
      const word = words.tokens[words.at - 1]?.text
      const count = word === "once" ? 1 : word === "twice" ? 2 : 3
      const more = words.accept("more", "again")
      if (more) return { kind: "more", count, plain: false }
      return afterOnce ? { kind: "more", count, plain: true } : { kind: "total", count }
    }
    if (words.accept("x")) {
      if (!words.isNumber()) return null
      const count = words.value()
      words.at += 1
      words.accept("times")
      return { kind: "total", count }
    }
    if (words.isNumber() || words.accept("about")) {
      const count = words.value()
      words.at += 1
      const more = words.accept("more", "additional", "further")
      if (words.accept("x"))
        return more || words.accept("more")
          ? { kind: "more", count, plain: false }
          : { kind: "total", count }
      if (!words.accept("times", "time", "repeats", "reps"))
        return more ? { kind: "more", count, plain: false } : null
      const moreAfter = words.accept("more")
      const total =
        words.acceptAll("in", "all") ||
        words.acceptAll("in", "total") ||
        words.accept("total", "altogether")
      if (total) return { kind: "total", count }
      if (more || moreAfter) return { kind: "more", count, plain: false }
      return afterOnce ? { kind: "more", count, plain: true } : { kind: "total", count }
    }
    const until = readUntil(words)
    if (until) return { kind: "until", until }
    return null
  })
}
