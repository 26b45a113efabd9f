// A cursor over the words of one round, with what the grammar has to say about them.

import type { StitchKind, Terms } from "@roundwright/stitches"
import { readStitchName } from "@roundwright/stitches"
import type { Finding } from "../base/problem-list.ts"
import type { Token } from "../words/tokens.ts"
import type { Span, Step } from "../base/tree.ts"

/** A stitch or group the pattern itself defines: "Shell: 5 dc in same st". */
export interface LocalStitch {
  readonly steps?: readonly Step[]
  readonly kind?: StitchKind
  readonly picotChains?: number
}

interface Recalled {
  readonly state: number
  readonly next: number
  readonly result: unknown
}

export class Words {
  at = 0
  depth = 0
  /** Repeats opened by a mark and not yet ended. */
  stars = 0
  /** A "**" stands in the round that nothing else speaks of. */
  strayMark = false
  readonly findings: Finding[] = []
  /** Stretches between two marks that the round speaks of again: "rep from \u2020 to \u2020 once". */
  readonly passages = new Map<string, readonly Step[]>()

  /** What a name, a noun or a counted stitch read from a word comes to: asked for again and again. */
  private readonly recalled = new Map<string, Recalled[]>()

  private all: Set<string> | null = null

  constructor(
    readonly tokens: readonly Token[],
    readonly terms: Terms,
    /** What the pattern defines, what it names on the way included. */
    readonly locals: Map<string, LocalStitch>,
    /** Where the text ends, for problems about something missing. */
    readonly end: number,
  ) {}

  /** The same with other tokens; problems go on in the same list. */
  withTokens(tokens: readonly Token[]): Words {
    const other = new Words(tokens, this.terms, this.locals, this.end)
    for (const finding of this.findings) other.findings.push(finding)
    for (const [mark, steps] of this.passages) other.passages.set(mark, steps)
    return other
  }

  /**
   * The same as `read` where it always gives the same from the same word on: it is read once and recalled
   * after that. What the pattern has defined since, or a repeat opened since, makes it be read anew.
   */
  recall<T>(what: string, read: (words: Words) => T | null): T | null {
    let list = this.recalled.get(what)
    if (!list) {
      list = []
      this.recalled.set(what, list)
    }
    const { at } = this
    const known = list[at]
    const state = this.locals.size * 1000 + this.stars
    if (known?.state === state) {
      this.at = known.next
      return known.result as T | null
    }
    const result = read(this)
    list[at] = { state, next: this.at, result }
    return result
  }

  peek(ahead = 0): Token | undefined {
    return this.tokens[this.at + ahead]
  }

  text(ahead = 0): string {
    return this.tokens[this.at + ahead]?.text ?? ""
  }

  isNumber(ahead = 0): boolean {
    return this.tokens[this.at + ahead]?.type === "number"
  }

  value(ahead = 0): number {
    return this.tokens[this.at + ahead]?.value ?? Number.NaN
  }

  /** True when the word stands anywhere in the round. */
  has(word: string): boolean {
    this.all ??= new Set(this.tokens.map((token) => token.text))
    return this.all.has(word)
  }

  done(): boolean {
    return this.at >= this.tokens.length
  }

  /** Steps over one of the words given, if it comes next. */
  accept(...words: readonly string[]): boolean {
    const text = this.text()
    for (let i = 0; i < words.length; i++)
      if (words[i] === text) {
        this.at += 1
        return true
      }
    return false
  }

  /** Steps over several words in a row. */
  acceptAll(...words: readonly string[]): boolean {
    for (let i = 0; i < words.length; i++) if (this.text(i) !== words[i]) return false
    this.at += words.length
    return true
  }

  start(): number {
    return this.peek()?.start ?? this.end
  }

  /** Where the last word stepped over ends. */
  lastEnd(): number {
    return this.tokens[this.at - 1]?.end ?? this.start()
  }

  since(start: number): Span {
    return { start, end: Math.max(start, this.lastEnd()) }
  }

  report(finding: Finding): void {
    this.findings.push(finding)
  }

  /** Tries a reading; takes the cursor back when it gives null. */
  attempt<T>(read: () => T | null): T | null {
    const at = this.at
    const found = this.findings.length
    const depth = this.depth
    const result = read()
    if (result === null) {
      this.at = at
      this.depth = depth
      this.findings.length = found
    }
    return result
  }
}

const cache = { US: new Map<string, StitchKind | null>(), UK: new Map<string, StitchKind | null>() }

/** Most spellings remembered; a pattern uses a few dozen. */
const mostRemembered = 4000

/** `readStitchName` with a memory, as the same few names come again and again. */
export function stitchNamed(word: string, terms: Terms): StitchKind | null {
  const known = cache[terms]
  const found = known.get(word)
  if (found !== undefined) return found
  const kind = readStitchName(word, terms) ?? null
  if (known.size > mostRemembered) known.clear()
  known.set(word, kind)
  return kind
}
