// From the words of a round to its steps. A loose recursive descent: what it cannot place is
// reported word by word, and reading goes on after it.

import { readEachOf, readGroupsEach } from "./back-along-grammar.ts"
import { readBracket } from "./bracket-grammar.ts"
import { readChain } from "./chain-grammar.ts"
import { readCountsNote } from "./counts-grammar.ts"
import { readFan, readLinked } from "./fan-grammar.ts"
import { readGrowthRule } from "./growth-grammar.ts"
import { readJoin } from "./join-grammar.ts"
import { deepestNesting } from "../base/limits.ts"
import { readAsRound, readMode } from "./mode-grammar.ts"
import { withoutOtherSizes } from "./other-sizes.ts"
import { readPassage } from "./passage-grammar.ts"
import { asPasses } from "./passes.ts"
import { atPlace, readPlace } from "./place-grammar.ts"
import { readStarred } from "./repeat-grammar.ts"
import { intoSameSpace, ledByGroup } from "./same-space.ts"
import { readDroppedLoop, readHeldBack, readSpelledCluster } from "./spelled-grammar.ts"
import { readSkip, readSlip } from "./step-grammar.ts"
import { readTotal } from "./total-grammar.ts"
import { isTotalHere, isWorkAhead } from "./total-here.ts"
import type { RoundTree, StatedTotal, Step } from "../base/tree.ts"
import { passWord } from "./unread-words.ts"
import { readCornerIncrease, readLeftToMaker, readUnlabelledRound } from "./vague-grammar.ts"
import { listTimes, repeatAll, wrapAll } from "./whole-list-grammar.ts"
import type { Words } from "./words.ts"
import { readWork } from "./work-grammar.ts"

/** What a run of steps holds besides: where the last repeat stops, and totals met. */
export interface StepRun {
  readonly steps: Step[]
  /** Steps before a "**" that ends the last repeat; null when there is none. */
  readonly markAt: number | null
  readonly totals: StatedTotal[]
}

/** Reads a whole round. Problems are left in `words.findings`. */
export function readRound(given: Words): RoundTree {
  const words = withoutOtherSizes(given)
  const run = readSteps(words, () => false)
  while (!words.done()) {
    // A bracket closes that was never opened: the rest is read all the same.
    words.report({
      severity: "warning",
      code: "bracket-not-opened",
      start: words.start(),
      end: words.start() + 1,
      message: `A "${words.text()}" closes a bracket that was not opened.`,
      hint: "Put the opening bracket where it begins, or take this one out.",
    })
    words.at += 1
    const rest = readSteps(words, () => false)
    run.steps.push(...rest.steps)
    run.totals.push(...rest.totals)
  }
  if (words !== given) given.findings.splice(0, given.findings.length, ...words.findings)
  return { steps: intoSameSpace(ledByGroup(run.steps)), totals: run.totals }
}

/** Reads steps until `stops` says so, a closing bracket or the end. */
export function readSteps(words: Words, stops: (words: Words) => boolean): StepRun {
  const steps: Step[] = []
  const totals: StatedTotal[] = []
  let markAt: number | null = null
  words.depth += 1
  if (words.depth > deepestNesting) {
    words.report({
      severity: "error",
      code: "nested-too-deeply",
      start: words.start(),
      end: words.start() + 1,
      message: `Brackets and repeats are nested more than ${deepestNesting} deep.`,
      hint: "Write the inner part out as steps of its own.",
    })
    words.at = words.tokens.length
  }
  while (!words.done() && !stops(words)) {
    const text = words.text()
    if (text === ")" || text === "]" || text === "}") break
    if (isSeparator(text)) {
      words.at += 1
      continue
    }
    if (isEndMark(words)) {
      markAt = steps.length
      words.at += 1
      continue
    }
    if (readLeftToMaker(words)) continue
    const passage = readPassage(words)
    if (passage) {
      steps.push(...passage)
      continue
    }
    const allIn = text === "all" ? wrapAll(words, steps) : null
    if (allIn) {
      steps.splice(0, steps.length, ...allIn)
      continue
    }
    const whole =
      steps.length > 0
        ? isRepeatWord(text)
          ? repeatAll(words, steps)
          : listTimes(words, steps, totals)
        : null
    if (whole) {
      steps.splice(0, steps.length, ...whole)
      continue
    }
    const before = words.at
    const popcorn = readDroppedLoop(words, steps)
    if (popcorn) {
      steps.splice(-1, 1, ...popcorn)
      continue
    }
    const made = readStep(words, steps, totals)
    if (made) steps.push(...made)
    else if (words.at === before) passWord(words)
    if (words.at === before) words.at += 1
  }
  words.depth -= 1
  return { steps: asPasses(steps), markAt, totals }
}

/** First words of rules and fans, so that they are not looked for at every step. */
const startsRule = new Set(
  "as same rep repeat like work continue cont continuing proceed carry in with a an and".split(" "),
)
const startsWrap = new Set("yo yoh yrh wrap yarn".split(" "))
/** First words of clusters whose last loops are held back. */
const startsHolding = new Set(
  "work make leaving leave holding hold keeping keep retaining".split(" "),
)
/** First words of stitches and chains, which begin nothing else. */
const startsMaking = new Set(
  "ch chain sc hdc dc tr dtr trtr htr edc esc single half treble".split(" "),
)
/** How far ahead the last word of a stitch's longest name may stand. */
const nameEnds = 14

const roundWords = new Set(["round", "rounds", "rnd", "rnds", "row", "rows"])

/** "1 sc round": a round is named just ahead. */
function saysRound(words: Words): boolean {
  for (let ahead = 1; ahead < nameEnds; ahead++) if (roundWords.has(words.text(ahead))) return true
  return false
}

/** "3 sc between increases": said just ahead. */
function saysBetween(words: Words): boolean {
  for (let ahead = 1; ahead < nameEnds; ahead++) {
    const text = words.text(ahead)
    if (text === "between" || text === "before") return true
  }
  return false
}

const startsFan = new Set("a one 1 fan shell petal scallop group".split(" "))

function readStep(words: Words, steps: readonly Step[], totals: StatedTotal[]): Step[] | null {
  const text = words.text()
  const marked = text === "(" || text === "[" || text === "*"
  const spelled = marked && startsWrap.has(words.text(1)) ? readSpelledCluster(words) : null
  if (spelled) return spelled
  if (text === "(" || text === "[" || text === "{") return readBracket(words, steps, totals)
  if (isRepeatMark(text)) return readStarred(words, totals)
  const note = steps[steps.length - 1]?.do === "chain" ? readBareCount(words) : null
  if (note) return note
  if (text === "=" || text === "-" || text === ":" || isTotalHere(words, steps)) {
    const total = words.attempt(() => {
      words.accept("=", "-", ":")
      words.accept("=", "-", ">")
      return steps.length === 0 || isWorkAhead(words) ? null : readTotal(words, null)
    })
    if (total) {
      totals.push(total)
      return []
    }
    if (text === "=" || text === "-" || text === ":") {
      words.at += 1
      return []
    }
  }
  const figure = words.isNumber()
  if (
    (figure || text === "a" || text === "another") &&
    saysRound(words) &&
    readUnlabelledRound(words)
  )
    return []
  const held = figure || startsHolding.has(text) ? readHeldBack(words) : null
  if (held) return held
  const making = figure || startsMaking.has(text)
  return (
    ((figure ? saysBetween(words) : startsRule.has(text)) ? readGrowthRule(words) : null) ??
    (figure ? (readEachOf(words) ?? readGroupsEach(words)) : null) ??
    (making
      ? null
      : (readCornerIncrease(words) ??
        readAsRound(words) ??
        readMode(words) ??
        readJoin(words, steps))) ??
    (making && !figure ? null : (readSlip(words, steps) ?? readSkip(words))) ??
    readChain(words, steps) ??
    (figure && words.has("each") ? readLinked(words) : null) ??
    (startsFan.has(text) ? readFan(words) : null) ??
    readWork(words, steps) ??
    readPlaceFirst(words, totals)
  )
}

/** "ch 2, does not count as a stitch, ...", "ch 3 = first dc", "ch 3 to count as first dc": no bracket. */
function readBareCount(words: Words): Step[] | null {
  if (
    !/^(does|do|doesn't|don't|not|counts|count|counted|counting|=|for|to|-|as|is|will|which|that|instead|standing)$/.test(
      words.text(),
    )
  )
    return null
  return words.attempt((): Step[] | null => {
    const start = words.start()
    words.accept("-")
    words.accept("to")
    const note = words.text() === "as" ? null : readCountsNote(words)
    if (!note) return null
    words.accept("-")
    return [{ ...words.since(start), ...note, do: "note-counts" }]
  })
}

/** "in next ch-5 loop 1 sc, 2 dc, 1 sc;": the place before what goes into it. */
function readPlaceFirst(words: Words, totals: StatedTotal[]): Step[] | null {
  if (!atPlace(words) || !startsClause(words)) return null
  return words.attempt(() => {
    const start = words.start()
    const place = readPlace(words)
    if (!place) return null
    words.accept(",", ":", "work", "make", "place")
    if (words.text() === "(" || words.text() === "[") {
      const inner = words.attempt(() => {
        const bracket = readBracket(words, [], [])
        const only = bracket?.[0]
        return bracket && bracket.length > 0 && only ? bracket : null
      })
      if (inner) return [{ ...words.since(start), do: "group", steps: inner, place }]
    }
    const run = readSteps(
      words,
      (w) => w.text() === ";" || w.text() === "." || w.text() === "*" || isRepeatWord(w.text()),
    )
    if (run.steps.length === 0) return null
    totals.push(...run.totals)
    let inside = run.steps.length
    while (inside > 0 && closesRound(run.steps[inside - 1]!)) inside -= 1
    if (inside === 0) return null
    const group: Step = {
      ...words.since(start),
      do: "group",
      steps: run.steps.slice(0, inside),
      place,
    }
    return [group, ...run.steps.slice(inside)]
  })
}

/** The join after what goes into the ring is no part of it. */
function closesRound(step: Step): boolean {
  if (step.do === "join" || step.do === "turn") return true
  if (step.do !== "slip") return false
  const { place } = step
  return place?.at === "made" || (place?.at === "next" && place.order === "first")
}

function startsClause(words: Words): boolean {
  const before = words.tokens[words.at - 1]
  if (!before) return true
  return before.type === "mark" || /^(then|and|now|work|working)$/.test(before.text)
}

export function isRepeatWord(text: string): boolean {
  return text === "rep" || text === "repeat" || text === "rpt" || text === "reps"
}

/** Asterisks or daggers: the tokeniser keeps them together and apart from others. */
function isRepeatMark(text: string): boolean {
  const first = text.charCodeAt(0)
  return first === 42 || first === 0x2020 || first === 0x2021
}

/** "**" said elsewhere in the round to be where the last repeat stops. */
function isEndMark(words: Words): boolean {
  const mark = words.text()
  if (mark === "*" || !isRepeatMark(mark) || mark.startsWith("****")) return false
  for (let i = words.at + 1; i < words.tokens.length; i++) {
    if (words.tokens[i]?.text !== mark) continue
    const before = words.tokens[i - 1]?.text ?? ""
    if (before === "at" || before === "on" || before === "to" || before === "with") return true
    if (before === "from" || isRepeatWord(before)) return false
  }
  return isStrayMark(words, mark)
}

/** "**" that stands alone in the round, inside a repeat: an ending nobody speaks of again. */
function isStrayMark(words: Words, mark: string): boolean {
  if (mark !== "**" || words.stars === 0) return false
  if (words.tokens.filter((token) => token.text === mark).length > 1) return false
  words.strayMark = true
  return true
}

function isSeparator(text: string): boolean {
  return text.length === 1 && ",;./&!\"'+#".includes(text)
}
