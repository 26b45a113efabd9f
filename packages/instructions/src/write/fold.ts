// A list of parts folded from the inside out: runs of the same become "dc in next 3 sts", a sequence that comes again
// and again "[dc in next st, ch 1] 3 times". Of all ways to fold, the one that reads shortest is taken.

import type { Voice } from "./house-style.ts"
import type { Part } from "./part.ts"

/** Parts in one bracket; longer ones are lost sight of. */
const longestBracket = 16
/** What a bracket costs beside its length, in characters: it has to be taken in as one. */
const bracketCost = 4
/** A sequence worked twice reads as easily written out as in a bracket. */
const twiceCost = 6
/** A bracket within a bracket loses its reader. */
const nestedCost = 30

export interface Told {
  readonly phrases: readonly string[]
  readonly cost: number
}

/** Folds lists of parts, each list once. */
export class Folder {
  readonly #known = new Map<string, Told>()

  constructor(readonly voice: Voice) {}

  /**
   * The parts as phrases, between which commas go, and what they cost to read: their length, brackets weighed.
   * @param most parts that a bracket may hold with all its repeats
   */
  fold(parts: readonly Part[], most = parts.length): Told {
    return fold(parts, this.voice, this.#known, most)
  }

  words(parts: readonly Part[]): string {
    return this.fold(parts).phrases.join(", ")
  }
}

/** The parts one after the other, only runs of the same told together. */
export function listParts(parts: readonly Part[]): string[] {
  const phrases: string[] = []
  for (let i = 0; i < parts.length; ) {
    const run = runFrom(parts, i)
    phrases.push(runText(parts[i]!, run))
    i += run
  }
  return phrases
}

function fold(parts: readonly Part[], voice: Voice, known: Map<string, Told>, most: number): Told {
  const key = `${most}|${parts.map(({ text }) => text).join("|")}`
  const before = known.get(key)
  if (before) return before
  const best: Told[] = Array.from({ length: parts.length + 1 }, () => ({ phrases: [], cost: 0 }))
  for (let i = parts.length - 1; i >= 0; i--) {
    let here: Told | null = null
    const offer = (phrase: string, length: number, extra: number) => {
      const rest = best[i + length]!
      const cost = phrase.length + extra + (rest.phrases.length > 0 ? 2 : 0) + rest.cost
      // Of two alike the later offer, which folds from the first phrase on.
      if (here === null || cost <= here.cost) here = { phrases: [phrase, ...rest.phrases], cost }
    }
    const run = runFrom(parts, i)
    for (let length = 1; length <= run; length++) offer(runText(parts[i]!, length), length, 0)
    const longest = Math.min(longestBracket, Math.floor((parts.length - i) / 2))
    for (let length = run > 1 ? run + 1 : 1; length <= longest; length++) {
      if (length === 1 && parts[i]!.each) continue
      const times = timesFrom(parts, i, length)
      if (times < 2 || times * length > most) continue
      if (isPower(parts.slice(i, i + length))) continue
      const inner = fold(parts.slice(i, i + length), voice, known, most)
      const nested = inner.phrases.some((phrase) => /^[[(].* (?:twice|times)$/.test(phrase))
      const extra =
        bracketCost +
        (times === 2 ? twiceCost : 0) +
        (nested ? nestedCost : 0) +
        inner.cost -
        textCost(inner)
      offer(voice.repeated(inner.phrases.join(", "), times), length * times, extra)
    }
    best[i] = here!
  }
  known.set(key, best[0]!)
  return best[0]!
}

function textCost({ phrases }: Told): number {
  return phrases.join(", ").length
}

function runFrom(parts: readonly Part[], i: number): number {
  const { text, each } = parts[i]!
  let run = 1
  while (each && parts[i + run]?.each && parts[i + run]!.text === text) run += 1
  return run
}

/** "dc in next 3 sts", "2 dc in each of next 3 sts". */
function runText({ text, each }: Part, run: number): string {
  if (run === 1 || !each) return text
  return `${each.work} in ${each.many ? "each of next" : "next"} ${run} ${each.several}`
}

/** How often the `length` parts from `i` on come one after the other. */
export function timesFrom(parts: readonly Part[], i: number, length: number): number {
  let end = i + length
  while (end < parts.length && parts[end]!.text === parts[end - length]!.text) end += 1
  return Math.floor((end - i) / length)
}

/** True for a sequence that is itself a shorter one repeated. */
export function isPower(parts: readonly Part[]): boolean {
  for (let length = 1; length <= parts.length / 2; length++)
    if (parts.length % length === 0 && timesFrom(parts, 0, length) * length === parts.length)
      return true
  return false
}
