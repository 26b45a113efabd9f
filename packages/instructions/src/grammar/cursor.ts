// A cursor over the words of one round: what the productions look at and step over.

import type { StitchKind, Terms } from "@roundwright/stitches"
import { readStitchName } from "@roundwright/stitches"
import type { Span, Step } from "../base/tree.ts"
import type { Lexeme } from "../words/lexemes.ts"
import type { LexicalClass } from "../words/lexicon.ts"

/** A stitch or group the pattern itself defines: "Shell: 5 dc in same st". */
export interface LocalStitch {
  readonly steps?: readonly Step[]
  readonly kind?: StitchKind
  readonly picotChains?: number
}

export type Locals = ReadonlyMap<string, LocalStitch>

export class Cursor {
  at = 0
  /** Words nobody knows that were read as the name of a place: they are passed over, whatever reads them. */
  readonly placeNames = new Set<number>()

  constructor(
    readonly lexemes: readonly Lexeme[],
    readonly terms: Terms,
    /** What the pattern defines. */
    readonly locals: Locals,
    /** Where the text ends, for problems about something missing. */
    readonly end: number,
  ) {}

  peek(ahead = 0): Lexeme | undefined {
    return this.lexemes[this.at + ahead]
  }

  text(ahead = 0): string {
    return this.lexemes[this.at + ahead]?.text ?? ""
  }

  is(name: LexicalClass, ahead = 0): boolean {
    return this.lexemes[this.at + ahead]?.classes.has(name) === true
  }

  isNumber(ahead = 0): boolean {
    return this.lexemes[this.at + ahead]?.type === "number"
  }

  isOrdinal(ahead = 0): boolean {
    return this.lexemes[this.at + ahead]?.type === "ordinal"
  }

  value(ahead = 0): number {
    return this.lexemes[this.at + ahead]?.value ?? Number.NaN
  }

  done(): boolean {
    return this.at >= this.lexemes.length
  }

  /** Steps over one of the words given, if it comes next. */
  accept(...words: readonly string[]): boolean {
    if (!words.includes(this.text()) || this.done()) return false
    this.at += 1
    return true
  }

  /** Steps over a word of one of the classes, if it comes next. */
  take(...names: readonly LexicalClass[]): boolean {
    const classes = this.lexemes[this.at]?.classes
    if (!classes) return false
    for (const name of names)
      if (classes.has(name)) {
        this.at += 1
        return true
      }
    return false
  }

  /** Steps over a whole number from `least` on; null when none is here. */
  takeCount(least = 0): number | null {
    const value = this.value()
    if (!this.isNumber() || !Number.isInteger(value) || value < least) return null
    this.at += 1
    return value
  }

  start(): number {
    return this.peek()?.start ?? this.end
  }

  /** Where the last word stepped over ends. */
  lastEnd(): number {
    return this.lexemes[this.at - 1]?.end ?? this.start()
  }

  since(start: number): Span {
    return { start, end: Math.max(start, this.lastEnd()) }
  }

  /** Tries a reading; takes the cursor back when it gives null. */
  attempt<T>(read: () => T | null): T | null {
    const at = this.at
    const result = read()
    if (result === null) this.at = at
    return result
  }
}

/** A boundary of a clause: nothing of the same clause follows. */
export function isBoundary(text: string): boolean {
  return text === "" || /^[,;.()[\]{}*!:]$/.test(text) || /^\*+$/.test(text)
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

/** Words that are part of the longer names of stitches. */
const nameParts = new Set(
  "single double half treble triple slip extended ext foundation quadruple quintuple front back fp bp cluster clusters cl cls clst clus popcorn popcorns pop pc pcs ps puff puffs bobble bobbles tuft tufts crochet".split(
    " ",
  ),
)

/** A word that names a stitch, or part of a longer name. */
export function isStitchWord(text: string, terms: Terms): boolean {
  return (
    nameParts.has(text) ||
    stitchNamed(text, terms) !== null ||
    /^(?:sc|hdc|dc|tr|trb|dtr|htr)(?:cl|cls|clus|cluster|pop|pc|puff)$/.test(text)
  )
}
