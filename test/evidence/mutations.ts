// Clean patterns changed in one place: a number of a stated total, a number or a place of the work, a clause put in. What
// comes of each is judged by the readings alone: a wrong total must not agree, and what was written must reach the motif
// or be told.

import { readFileSync } from "node:fs"
import { type PatternReading, readPattern } from "@roundwright/instructions"
import { randomFrom } from "../../packages/instructions/test/mutate.ts"
import * as balls from "../../packages/instructions/test/varied-balls.ts"
import * as clusters from "../../packages/instructions/test/varied-clusters.ts"
import * as discs from "../../packages/instructions/test/varied-discs.ts"
import * as doilies from "../../packages/instructions/test/varied-doilies.ts"
import { patterns as habits } from "../../packages/instructions/test/varied-habits.ts"
import { patterns as lace } from "../../packages/instructions/test/varied-lace.ts"
import * as nets from "../../packages/instructions/test/varied-nets.ts"
import * as squares from "../../packages/instructions/test/varied-squares.ts"
import { patterns as textures } from "../../packages/instructions/test/varied-textures.ts"
import { patterns as ukPatterns } from "../../packages/instructions/test/varied-uk.ts"
import { patterns as usPatterns } from "../../packages/instructions/test/varied-us.ts"
import { patterns as morePatterns } from "../../packages/instructions/test/varied-us-more.ts"
import * as wheels from "../../packages/instructions/test/varied-wheels.ts"
import { harmless } from "./mutations-harmless.ts"
import { textsOfSets } from "./writing.ts"

export type MutationKind = "total" | "count" | "place" | "clause"

export interface Mutation {
  readonly kind: MutationKind
  readonly pattern: string
  /** Index of the changed round among those read. */
  readonly round: number
  /** The changed round, what stands in it before the change, and what was put where into it. */
  readonly line: string
  readonly before: string
  readonly change: string
  readonly text: string
}

export type Outcome =
  /** Told in a problem that was not there before; of a total: it does not agree. */
  | "told"
  /** Nothing told, but the motif or a count is another. */
  | "reached"
  /** The same motif, nothing told, and one of the named changes that change nothing. */
  | "harmless"
  /** The same motif, and nothing told. */
  | "silent"
  /** A changed total that the words come to as well. */
  | "true"
  /** A changed total that agrees although the words do not come to it. */
  | "bent"

export interface CleanPattern {
  readonly id: string
  readonly text: string
  readonly reading: PatternReading
  readonly outcome: string
  readonly told: ReadonlyMap<string, number>
}

const known = new Map<number, CleanPattern[]>()

/**
 * Patterns read without a doubt, the house sets and those of many styles.
 * @param every only each so-many-th of all patterns is looked at
 */
export function cleanPatterns(every = 1): CleanPattern[] {
  const found = known.get(every) ?? readClean(every)
  known.set(every, found)
  return found
}

function readClean(every: number): CleanPattern[] {
  const varied = [
    ...[usPatterns, morePatterns, ukPatterns, habits, lace, textures].flat(),
    ...[squares, discs, balls, wheels, nets, clusters, doilies].flatMap(({ us, uk }) => [
      ...us,
      ...uk,
    ]),
  ].map(({ name, text }) => ({ id: name, text }))
  return [...textsOfSets(), ...varied, ...textsOfReports()].flatMap(({ id, text }, i) => {
    if (i % every !== 0 || text.includes("\r")) return []
    const reading = readPattern(text)
    const clean =
      reading.rounds.length > 0 &&
      reading.rounds.every(({ counted, assumed }) => counted && !assumed) &&
      reading.problems.every(({ severity }) => severity === "note")
    return clean ? [{ id, text, reading, outcome: outcomeOf(reading), told: toldIn(reading) }] : []
  })
}

function textsOfReports(): { id: string; text: string }[] {
  return ["a-circle-becomes-a-square", "a-mat-that-waves", "lace-that-looks-too-full"].flatMap(
    (name) => {
      const url = new URL(`../../reports/${name}.md`, import.meta.url)
      const cells = readFileSync(url, "utf8").matchAll(/^```pattern[^\n]*\n([\s\S]*?)^```/gm)
      return [...cells].map(([, text], i) => ({ id: `${name} ${i + 1}`, text: text! }))
    },
  )
}

/** So many changes of each kind, drawn by one seed. */
export function* mutations(
  patterns: readonly CleanPattern[],
  kind: MutationKind,
  count: number,
  seed: number,
): Generator<{ mutation: Mutation; pattern: CleanPattern }> {
  const random = randomFrom(seed)
  const below = (n: number) => Math.floor(random() * n)
  let made = 0
  for (let tries = 0; made < count && tries < 40 * count; tries++) {
    const pattern = patterns[below(patterns.length)]!
    const round = below(pattern.reading.rounds.length)
    const mutation = mutated(pattern, round, kind, below)
    if (!mutation) continue
    made += 1
    yield { mutation, pattern }
  }
}

function mutated(
  pattern: CleanPattern,
  round: number,
  kind: MutationKind,
  below: (n: number) => number,
): Mutation | null {
  const { start, end, agrees } = pattern.reading.rounds[round]!
  const line = pattern.text.slice(start, end)
  const total = totalPlace(line)
  if (kind === "total" && (agrees !== true || !total)) return null
  const from = kind === "total" ? total!.from : bodyStart(line)
  const to = kind === "total" ? total!.to : (total?.from ?? line.length)
  const changed = ways[kind](line.slice(from, to), below)
  if (!changed) return null
  const newLine = line.slice(0, from) + changed.text + line.slice(to)
  return {
    kind,
    pattern: pattern.id,
    round,
    line: newLine,
    before: line.slice(0, from + changed.at),
    change: changed.change,
    text: pattern.text.slice(0, start) + newLine + pattern.text.slice(end),
  }
}

/** Where the words of a round begin, its label passed. */
function bodyStart(line: string): number {
  return /^(?:\d+\.\s+|[^:)\]]{0,40}?(?::|\)(?=\s)|\])\s*)/.exec(line)?.[0].length ?? 0
}

/** The last bracket of a round that holds a figure and stands at its end. */
function totalPlace(line: string): { from: number; to: number } | null {
  const found = /[([][^()[\]]*\d[^()[\]]*[)\]][\s.]*$/.exec(line)
  return found && found.index > 0 ? { from: found.index, to: line.length } : null
}

interface Changed {
  readonly text: string
  /** Offset of the change. */
  readonly at: number
  readonly change: string
}

type Way = (part: string, below: (n: number) => number) => Changed | null

/** Another number near by, or far. */
function otherNumber(n: number, below: (n: number) => number): number {
  const others = [n + 1, n - 1, n + 2, n - 2, 2 * n, n + 10, n + 6].filter(
    (other) => other > 0 && other !== n,
  )
  return others[below(others.length)]!
}

const changeNumber: Way = (part, below) => {
  const numbers = [...part.matchAll(/\d+/g)]
  const chosen = numbers[below(numbers.length)]
  if (!chosen) return null
  const other = otherNumber(Number(chosen[0]), below)
  const after = part.slice(chosen.index + chosen[0].length)
  return {
    text: part.slice(0, chosen.index) + other + after,
    at: chosen.index,
    change: `${chosen[0]} to ${other} before "${after.slice(0, 12)}"`,
  }
}

const otherPlaces: readonly (readonly [RegExp, readonly string[]])[] = [
  [/\bnext\b(?! \d)/g, ["same", "first", "last", "2nd", "every other"]],
  [/\beach\b/g, ["every other", "every third"]],
  [/\bsame\b/g, ["next"]],
  [/\bsts?\b/g, ["ch-3 sp", "ch-7 loops"]],
  [/\bring\b/g, ["next st"]],
  [/\b(?:ch-\d+ )?sps?\b/g, ["ch-9 sp", "st"]],
  [/\baround\b/g, ["3 times", "once more"]],
  [/\b(?:skip|sk|miss) \S+ \S+, /g, [""]],
]

const changePlace: Way = (part, below) => {
  const found = otherPlaces.flatMap(([words, others]) =>
    [...part.matchAll(words)].flatMap((match) => others.map((other) => ({ match, other }))),
  )
  const chosen = found[below(found.length)]
  if (!chosen) return null
  const { match, other } = chosen
  const after = part.slice(match.index + match[0].length)
  return {
    text: part.slice(0, match.index) + other + after,
    at: match.index,
    change: `"${match[0]}" to "${other}" before "${after.slice(0, 12)}"`,
  }
}

/** Clauses that mean work, and must be worked or told wherever they stand. */
export const workingClauses: readonly string[] = [
  "turn",
  "skip next st",
  "ch 3",
  "sc in next 2 sts",
  "3 dc in next st",
  "leave remaining sts unworked",
  "sl st in next 2 sts",
  "2 sc in same st",
  "in back loops only",
  "repeat Rnd 1",
  "work 2 more rounds",
  "dc2tog",
  "increase 6 times",
  "decrease 4 sts evenly",
  "9 increases spread evenly",
  "in every other st",
  "7 times",
  "fptr around next st 3 rnds below",
  "half as many",
  "join to first st of Rnd 1",
  "with 2 strands held together",
  "using a 6 mm hook",
  "(2 dc, ch 2, 2 dc) in corner",
  "stop 5 sts before end",
  "picot",
]

const insertClause: Way = (part, below) => {
  const places = [...part.matchAll(/[,;] /g)].map(({ index }) => index)
  const at = places[below(places.length)]
  if (at === undefined) return null
  const clause = workingClauses[below(workingClauses.length)]!
  return {
    text: `${part.slice(0, at)}, ${clause}${part.slice(at)}`,
    at,
    change: `"${clause}" before "${part.slice(at, at + 14)}"`,
  }
}

const ways: Readonly<Record<MutationKind, Way>> = {
  total: changeNumber,
  count: changeNumber,
  place: changePlace,
  clause: insertClause,
}

/** What came of a change. */
export function outcomeOfMutation(mutation: Mutation, pattern: CleanPattern): Outcome {
  const reading = readPattern(mutation.text)
  const changed = reading.rounds[mutation.round]
  if (mutation.kind === "total") {
    // "Rnds 3-6: ... (18, 24, 30, 36)": each total is of one of the rounds told together.
    const together = reading.rounds.filter(({ start }) => start === changed?.start)
    if (together.some(({ agrees }) => agrees !== true)) return "told"
    return trulyAgrees(mutation, reading, pattern) ? "true" : "bent"
  }
  const told = toldIn(reading)
  for (const [what, times] of told) if (times > (pattern.told.get(what) ?? 0)) return "told"
  if (changed?.agrees === false || pointedAt(mutation, reading, pattern)) return "told"
  if (outcomeOf(reading) !== pattern.outcome) return "reached"
  return harmlessIn(mutation, pattern) ? "harmless" : "silent"
}

/** A problem within the round points at the very words that were changed, as it did before: they are told not to be used. */
function pointedAt(
  { before, kind, round }: Mutation,
  { problems, rounds }: PatternReading,
  { text }: CleanPattern,
): boolean {
  // A clause stands behind its comma.
  const at = (rounds[round]?.start ?? 0) + before.length + (kind === "clause" ? 2 : 0)
  const lineStart = text.lastIndexOf("\n", at - 1) + 1
  const line = text.slice(0, at).split("\n").length
  return problems.some(
    (problem) =>
      problem.line === line &&
      problem.column - 1 <= at - lineStart &&
      at - lineStart < problem.column - 1 + problem.length &&
      problem.column - 1 > rounds[round]!.start - lineStart,
  )
}

/** Whether words and changed total agree after all: the words leave open what decides it, or come to it by themselves. */
function trulyAgrees(
  { text, line, round }: Mutation,
  reading: PatternReading,
  pattern: CleanPattern,
): boolean {
  const { number, stated, counted } = reading.rounds[round]!
  // Told of the changed round, or of the unchanged one: then the changed total is that of the usual reading.
  const openStart = [...reading.problems, ...pattern.reading.problems].some(
    (problem) =>
      problem.round === number &&
      problem.code === "reading-chosen" &&
      /starting chain|chains skipped at the start/.test(problem.message),
  )
  if (openStart || groupsIn(reading, round) === stated) return true
  const total = totalPlace(line)
  const alone = total && readPattern(text.replace(line, line.slice(0, total.from))).rounds[round]
  return alone?.counted?.stitches === counted?.stitches && counted?.stitches === stated
}

/** Groups of two stitches and more that stand in one place, of the motif itself. */
function groupsIn({ motif }: PatternReading, index: number): number {
  const { elements } = motif.rounds[index] ?? { elements: [] }
  const places = elements.map((one) => (one.type === "stitch" ? JSON.stringify(one.anchors) : ""))
  return places.filter(
    (place, k) => place !== "" && place === places[k + 1] && place !== places[k - 1],
  ).length
}

function harmlessIn(mutation: Mutation, pattern: CleanPattern): boolean {
  return harmless.some(({ is }) => is(mutation, pattern))
}

function outcomeOf({ motif, rounds }: PatternReading): string {
  return JSON.stringify([motif, rounds.map(({ counted }) => counted)])
}

function toldIn({ problems }: PatternReading): Map<string, number> {
  const told = new Map<string, number>()
  for (const { code, round, message } of problems) {
    const key = `${code} ${round} ${message}`
    told.set(key, (told.get(key) ?? 0) + 1)
  }
  return told
}

export interface MutationCount {
  readonly kind: MutationKind
  readonly changes: number
  readonly outcomes: Readonly<Record<Outcome, number>>
  /** Changes of a kind that must not be, with what was changed: totals that agree, counts untold though a total is stated, clauses passed over. */
  readonly faults: readonly string[]
}

/** So many changes made and judged. */
export function countMutations(
  patterns: readonly CleanPattern[],
  kind: MutationKind,
  changes: number,
  seed: number,
): MutationCount {
  const outcomes = { told: 0, reached: 0, harmless: 0, silent: 0, true: 0, bent: 0 }
  const faults: string[] = []
  for (const { mutation, pattern } of mutations(patterns, kind, changes, seed)) {
    const outcome = outcomeOfMutation(mutation, pattern)
    outcomes[outcome] += 1
    const stated = pattern.reading.rounds[mutation.round]!.agrees === true
    const fault =
      outcome === "bent" ||
      (outcome === "silent" && (kind === "clause" || (kind === "count" && stated)))
    if (fault) faults.push(`${mutation.pattern}: ${mutation.change}: ${mutation.line}`)
  }
  return { kind, changes, outcomes, faults }
}

/** The count as a line. */
export function mutationWords({ kind, changes, outcomes, faults }: MutationCount): string {
  const list = Object.entries(outcomes).filter(([, n]) => n > 0)
  return `${changes} changes of a ${kind}: ${list.map(([what, n]) => `${n} ${what}`).join(", ")}; faults ${faults.length}`
}
