// How the last repeat ends: "ending last rep at **", "omitting last sc", "ending last rep with ch 2, dc
// in first sc".

import { readSteps, type StepRun } from "./grammar.ts"
import { readKind } from "./stitch-grammar.ts"
import type { Step } from "../base/tree.ts"
import type { Words } from "./words.ts"

/** The last time round: steps that replace it or follow it, and those that replace it should nothing else fit. */
export interface Ending {
  readonly last: readonly Step[] | null
  readonly how: "replaces" | "follows" | null
  readonly tail?: readonly Step[]
}

/** What is said of the last repeat. */
export function readEnding(words: Words, run: StepRun): Ending {
  const marked = run.markAt === null ? null : run.steps.slice(0, run.markAt)
  const found = words.attempt((): (Ending & { readonly last: readonly Step[] }) | null => {
    words.accept(",", ";")
    words.accept("but", "and")
    if (words.accept("omitting", "omit", "leaving")) {
      words.accept("out")
      words.accept("the")
      words.accept("last", "final")
      const at = words.at
      const part = readOmitted(words)
      if (!part) {
        words.at = at
        return null
      }
      return { last: dropTail(run.steps, part), how: "replaces" }
    }
    if (words.accept("stopping")) {
      // "stopping 1 sc short": that one is held over to the next round.
      if (!words.isNumber()) return null
      words.at += 1
      readKind(words)
      return words.accept("short") ? { last: [], how: "follows" } : null
    }
    if (words.accept("ending", "end", "ends")) {
      words.accept("the", "with")
      const lastSaid = words.accept("last", "final")
      words.accept("rep", "repeat", "repetition", "time", "one")
      if (words.accept("at", "on", "to", "with") || lastSaid) {
        const previous = words.tokens[words.at - 1]?.text
        if (/^\*+$/.test(words.text()) || /^[\u2020\u2021]+$/.test(words.text())) {
          words.at += 1
          return marked ? { last: marked, how: "replaces" } : null
        }
        if (previous === "at" || previous === "on") return null
      }
      const ending = readSteps(
        words,
        (w) => w.text() === ";" || w.text() === "." || isJoin(w.text()),
      )
      if (ending.steps.length === 0) return null
      if (lastSaid) return { last: replaceTail(run.steps, ending.steps), how: "replaces" }
      const tail = replaceTail(run.steps, ending.steps)
      return { last: ending.steps, how: "follows", tail }
    }
    return null
  })
  if (found && found.last.length === 0) return { last: null, how: null }
  if (found) return found
  if (marked) return { last: marked, how: "replaces" }
  return { last: null, how: null }
}

/** "as Rnd 4, ending with 1 dc in each of last 5 dc": another ending for the repeat of that round. */
export function readOtherEnding(words: Words): readonly Step[] | null {
  words.accept(",", ";")
  words.accept("but", "and")
  if (!words.accept("ending", "end", "ends")) return null
  words.accept("the", "with")
  words.accept("last")
  words.accept("rep", "repeat")
  words.accept("with")
  const run = readSteps(words, (w) => w.text() === ";" || w.text() === "." || isJoin(w.text()))
  return run.steps.length > 0 ? run.steps : null
}

/** The steps of a round, its last repeat ending in another way; null where it has no repeat. */
export function withOtherEnding(
  steps: readonly Step[],
  ending: readonly Step[],
): readonly Step[] | null {
  const at = steps.findLastIndex((step) => step.do === "repeat")
  const repeat = steps[at]
  if (repeat?.do !== "repeat") return null
  const tail = replaceTail(repeat.body, ending)
  return [
    ...steps.slice(0, at),
    { ...repeat, last: ending, ending: "follows", tail },
    ...steps.slice(at + 1).filter((step) => step.do === "join" || step.do === "turn"),
  ]
}

function isJoin(text: string): boolean {
  return text === "join" || text === "joining"
}

function readOmitted(words: Words): readonly Step[] | null {
  const close = words.accept("(") ? ")" : words.accept("[") ? "]" : null
  const run = readSteps(
    words,
    (w) =>
      w.text() === ";" ||
      w.text() === "." ||
      isJoin(w.text()) ||
      atLastRepeat(w) ||
      (close === null && w.text() === ","),
  )
  if (close) words.accept(close)
  if (atLastRepeat(words)) {
    words.at += 1
    words.accept("the")
    words.at += 2
  }
  return run.steps.length > 0 ? run.steps : null
}

/** "omitting last sc of last rep", "on the final repeat". */
function atLastRepeat(words: Words): boolean {
  if (!/^(?:of|on|in|from|at)$/.test(words.text())) return false
  const ahead = words.text(1) === "the" ? 2 : 1
  return (
    /^(?:last|final)$/.test(words.text(ahead)) &&
    /^(?:rep|repeat|repetition|time)$/.test(words.text(ahead + 1))
  )
}

/** The body without its last stitches and chains. */
function dropTail(body: readonly Step[], part: readonly Step[]): readonly Step[] {
  const steps = [...body]
  for (let i = part.length - 1; i >= 0; i--) {
    const drop = part[i]
    if (!drop) continue
    let left = drop.do === "work" ? drop.count * placesOf(drop) : 1
    while (left > 0 && steps.length > 0) {
      const tail = steps[steps.length - 1]
      if (!tail) break
      const places = tail.do === "work" ? placesOf(tail) : 1
      if (tail.do === "work" && drop.do === "work" && places > left && tail.place?.at === "next") {
        steps[steps.length - 1] = { ...tail, place: { ...tail.place, count: places - left } }
        left = 0
        break
      }
      if (tail.do === "work" && drop.do === "work" && !tail.place && tail.count > left) {
        steps[steps.length - 1] = { ...tail, count: tail.count - left }
        left = 0
        break
      }
      steps.pop()
      if (tail.do === "skip" || tail.do === "mode") continue
      left -= tail.do === "work" ? Math.max(1, places * (tail.place ? tail.count : 1)) : 1
    }
  }
  return steps
}

function placesOf(step: Extract<Step, { do: "work" }>): number {
  if (!step.place) return step.count > 1 ? 1 : 1
  return step.place.at === "next" && !step.stitch.tog ? step.place.count : 1
}

/** The body with its last steps replaced, matched from the kind of step the ending starts with. */
function replaceTail(body: readonly Step[], ending: readonly Step[]): readonly Step[] {
  const first = ending[0]
  if (!first) return body
  const works = ending.filter(
    (step) => step.do === "work" || step.do === "group" || step.do === "chain",
  ).length
  let at = body.length - 1
  if (first.do === "chain") {
    while (at >= 0 && body[at]?.do !== "chain") at -= 1
    // Of several chains the one that leaves as many steps as the ending has.
    while (at > 0 && countWorks(body.slice(at)) < works) {
      at -= 1
      while (at > 0 && body[at]?.do !== "chain") at -= 1
    }
    const skipsItself = ending.some((step) => step.do === "skip")
    const skipped = skipsItself ? [] : body.slice(at + 1).filter((step) => step.do === "skip")
    return [...body.slice(0, Math.max(0, at)), first, ...skipped, ...ending.slice(1)]
  }
  const alike = lastAlike(body, ending)
  if (alike !== null) return [...body.slice(0, alike), ...ending]
  at = body.length
  let left = works
  while (at > 0 && left > 0) {
    at -= 1
    const step = body[at]
    if (step && (step.do === "work" || step.do === "group" || step.do === "chain")) left -= 1
  }
  return [...body.slice(0, at), ...ending]
}

/** Where the body has the same steps as the ending, looked for from its end: the last time stops with them. */
function lastAlike(body: readonly Step[], ending: readonly Step[]): number | null {
  for (let at = body.length - ending.length; at >= 0; at--)
    if (ending.every((step, i) => isAlike(body[at + i]!, step))) return at
  return null
}

/** The same stitches into the same kind of place. */
function isAlike(a: Step, b: Step): boolean {
  if (a.do === "chain") return b.do === "chain" && a.chains === b.chains
  if (a.do !== "work" || b.do !== "work") return false
  return (
    a.count === b.count &&
    a.stitch.kind.basic === b.stitch.kind.basic &&
    a.place?.at === "next" &&
    b.place?.at === "next" &&
    a.place.count === b.place.count &&
    a.place.noun.what === b.place.noun.what &&
    a.place.noun.kind?.basic === b.place.noun.kind?.basic
  )
}

function countWorks(steps: readonly Step[]): number {
  return steps.filter((step) => step.do === "work" || step.do === "group" || step.do === "chain")
    .length
}
