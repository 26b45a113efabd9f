// Words, numbers and marks of a round's text, each with its place.

import { table } from "../base/table.ts"
export type TokenType = "word" | "number" | "ordinal" | "mark"

export interface Token {
  readonly type: TokenType
  /** Lower case; dots inside abbreviations left out ("d.c." gives "dc"). */
  readonly text: string
  /** Value of numbers and ordinals, NaN for others. */
  readonly value: number
  readonly start: number
  readonly end: number
  /** True when white space stands before it. */
  readonly spaced: boolean
}

const pattern =
  /(\d+)((?<=1)st|(?<=2)nd|(?<=3)rd|th|(?<=[23])d(?!\.))(?!\p{L})|(\d+(?:\.\d+)?)|((?:[sdht]\. ){1,2}c(?!\p{L})\.?|s\. s(?!\p{L})\.?|(?:[a-z]\.){2,}(?:[a-z](?!\p{L}))?|(?:h|d|q|tr)\.tr(?!\p{L})|[a-z]\.[a-z](?!\p{L})|\p{L}+(?:\d+(?:tog|together))?(?:'[a-z]+)?)|(\*+)|([\u2020\u2021]+)|(\S)/giuy

const vulgarFractions: Readonly<Record<string, number>> = table({
  "\u00bd": 0.5,
  "\u00bc": 0.25,
  "\u00be": 0.75,
  "\u2153": 1 / 3,
  "\u2154": 2 / 3,
})

const numberWords: Readonly<Record<string, number>> = table({
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  eleven: 11,
  twelve: 12,
  thirteen: 13,
  fourteen: 14,
  fifteen: 15,
  sixteen: 16,
  seventeen: 17,
  eighteen: 18,
  nineteen: 19,
  twenty: 20,
  thirty: 30,
  forty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
})

/** Shortenings of plain words, for the word they shorten. */
const shortWords: Readonly<Record<string, string>> = table({
  ea: "each",
  nxt: "next",
  nx: "next",
  btw: "between",
  btwn: "between",
  btn: "between",
  betw: "between",
  arnd: "around",
  ard: "around",
  rpt: "rep",
  foll: "following",
  alt: "alternate",
  ctr: "center",
  crn: "corner",
  prev: "previous",
})

const ordinalWords: Readonly<Record<string, number>> = table({
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
  seventh: 7,
  eighth: 8,
  ninth: 9,
  tenth: 10,
})

/** Tokens of `text` from `start` to `end`, offsets into `text`. */
export function tokenise(text: string, start: number, end: number): Token[] {
  const tokens: Token[] = []
  let at = start
  while (at < end) {
    const unit = text.charCodeAt(at)
    if (unit === 32 || unit === 10 || unit === 13 || unit === 9) {
      at += 1
      continue
    }
    const plain = plainToken(text, unit, at, start, end)
    if (plain) {
      tokens.push(plain)
      at = plain.end
      continue
    }
    pattern.lastIndex = at
    const found = pattern.exec(text)
    if (!found) {
      at += 1
      continue
    }
    const tens = tensAndOnes(text, at, end)
    if (tens) {
      tokens.push(tens)
      at = tens.end
      continue
    }
    if ((unit | 32) === 119 && /^w\/(?!\p{L}{0,1}o\b)/iu.test(text.slice(at, at + 4))) {
      // "join w/ sl st"
      tokens.push({
        type: "word",
        text: "with",
        value: Number.NaN,
        start: at,
        end: Math.min(end, at + 2),
        spaced: true,
      })
      at += 2
      continue
    }
    const spaced = isSpaced(text, at, start)
    const stop = Math.min(end, at + found[0].length)
    const token = tokenOf(found, at, stop, spaced)
    tokens.push(token)
    const before = tokens[tokens.length - 2]
    const endsPlace = before?.type === "ordinal" || (before?.type === "number" && !token.spaced)
    at =
      token.type === "word" &&
      (!endsPlace ||
        /^\.\s?[,;]/.test(text.slice(stop, stop + 3)) ||
        /^\.[ \t]+(?:of|from|in)\b/i.test(text.slice(stop, stop + 8))) &&
      stopBelongs(text, stop, token.text)
        ? stop + 1
        : stop
  }
  return tokens
}

/** Marks that are a token wherever they stand, and end the word before them. */
const plainMarks = new Set([..."()+,/;:=[]{}-"].map((mark) => mark.charCodeAt(0)))
const stop = 46
const asterisk = 42

/** Most tokens are one of three: a word of small letters, a number or a mark, with nothing special beside it. */
function plainToken(
  text: string,
  unit: number,
  at: number,
  start: number,
  end: number,
): Token | null {
  if (plainMarks.has(unit) || unit === stop)
    return {
      type: "mark",
      text: text.charAt(at),
      value: Number.NaN,
      start: at,
      end: at + 1,
      spaced: isSpaced(text, at, start),
    }
  if (unit === asterisk) {
    let last = at + 1
    while (last < end && text.charCodeAt(last) === asterisk) last += 1
    const spaced = isSpaced(text, at, start)
    return {
      type: "mark",
      text: text.slice(at, last),
      value: Number.NaN,
      start: at,
      end: last,
      spaced,
    }
  }
  const word = unit >= 97 && unit <= 122
  if (!word && (unit < 48 || unit > 57)) return null
  let last = at + 1
  while (last < end && isOf(word, text.charCodeAt(last))) last += 1
  const next = last < text.length ? text.charCodeAt(last) : 32
  // What goes on after it in any other way is looked at more closely.
  const ends = next === 32 || next === 10 || plainMarks.has(next)
  if (!ends && (word || next !== stop || /\d/.test(text.charAt(last + 1)))) return null
  if (next === 47 && unit === 119) return null
  const written = text.slice(at, last)
  const spaced = isSpaced(text, at, start)
  if (!word)
    return { type: "number", text: written, value: Number(written), start: at, end: last, spaced }
  const said = sameString(written)
  if (said === null) return null
  return { type: "word", text: said, value: Number.NaN, start: at, end: last, spaced }
}

const told = new Map<string, string | null>()

/** Most words remembered; those of a language of patterns are a few hundred. */
const mostTold = 4000

/** The word meant, as one and the same string each time; null for one that is a number. */
function sameString(written: string): string | null {
  const known = told.get(written)
  if (known !== undefined) return known
  const said = shortWords[written] ?? written
  const number = numberWords[said] !== undefined || ordinalWords[said] !== undefined
  // A key of an object is kept once, and compared faster than a piece cut out of a text.
  const one = number ? null : (Object.keys({ [said]: 0 })[0] ?? said)
  if (told.size >= mostTold) told.clear()
  told.set(written, one)
  return one
}

function isOf(word: boolean, unit: number): boolean {
  return word ? unit >= 97 && unit <= 122 : unit >= 48 && unit <= 57
}

function isSpaced(text: string, at: number, start: number): boolean {
  if (at <= start) return false
  const before = text.charCodeAt(at - 1)
  return before === 32 || (before < 33 || before > 126 ? /\s/.test(text.charAt(at - 1)) : false)
}

const compound =
  /(twenty|thirty|forty|fifty|sixty|seventy|eighty|ninety)[- ](one|two|three|four|five|six|seven|eight|nine)(?![a-z])/iy

/** "twenty-four": one number. */
function tensAndOnes(text: string, at: number, end: number): Token | null {
  const unit = text.charCodeAt(at) | 32
  if (unit < 101 || unit > 116) return null
  compound.lastIndex = at
  const found = compound.exec(text)
  if (!found || at + found[0].length > end || /[a-z]/i.test(text.charAt(at - 1))) return null
  const value =
    (numberWords[found[1]!.toLowerCase()] ?? 0) + (numberWords[found[2]!.toLowerCase()] ?? 0)
  return {
    type: "number",
    text: found[0].toLowerCase(),
    value,
    start: at,
    end: at + found[0].length,
    spaced: at > 0 && /\s/.test(text.charAt(at - 1)),
  }
}

const shortened = new Set(
  "ch chs sl sk rep rnd rnds beg cont approx tog sp sps inc dec yo lp lps cl".split(" "),
)
const oftenLast = new Set(
  "st sts sc dc hdc tr dtr htr ss slst crochet treble double chain stitch stitches".split(" "),
)

/** Abbreviations that may well be the last word of a sentence. */
const endsSentences = new Set("ch chs tog sp sps inc dec lp lps cl".split(" "))

/** After "top of ch.": a sentence of nothing but a figure and what it counts. */
const totalFollows = /^\.\s+\d+\s+[a-z]{2,10}\s*(?:\.|\n|$)/i

/** A full stop that belongs to an abbreviation: the sentence goes on after it in small letters. */
function stopBelongs(text: string, at: number, word: string): boolean {
  if (text.charAt(at) !== ".") return false
  const next = /^\.[ \t]*(\S?)/.exec(text.slice(at, at + 8))?.[1] ?? ""
  if (endsSentences.has(word) && totalFollows.test(text.slice(at, at + 40))) return false
  if (/[,;]/.test(next)) return true
  // "1 dc. into next sp.": a place never begins a sentence in small letters.
  if (
    /^\.[ \t]*(?:in|into|of|from|on|to|over|round|around|through|tr)\b/.test(
      text.slice(at, at + 12),
    )
  )
    return true
  // In a text of capitals only, a capital after it says nothing.
  const capitals = word.length > 1 && /^[A-Z]+$/.test(text.slice(at - word.length, at))
  const goesOn = capitals ? /[a-z]/i.test(next) : /[a-z]/.test(next)
  if (shortened.has(word)) return goesOn || /[0-9(*-]/.test(next)
  return oftenLast.has(word) && goesOn
}

function tokenOf(found: RegExpExecArray, start: number, end: number, spaced: boolean): Token {
  const base = { start, end, spaced }
  if (found[1] === "1") return { type: "word", text: "first", value: Number.NaN, ...base }
  if (found[1] !== undefined)
    return { type: "ordinal", text: found[0].toLowerCase(), value: Number(found[1]), ...base }
  if (found[3] !== undefined)
    return { type: "number", text: found[3], value: Number(found[3]), ...base }
  if (found[4] !== undefined) {
    const said = found[4].toLowerCase().replace(/[. ]/g, "")
    const text = shortWords[said] ?? said
    const number = numberWords[text]
    if (number !== undefined) return { type: "number", text, value: number, ...base }
    const ordinal = ordinalWords[text]
    if (ordinal !== undefined) return { type: "ordinal", text, value: ordinal, ...base }
    return { type: "word", text, value: Number.NaN, ...base }
  }
  const mark = found[0]
  const fraction = vulgarFractions[mark]
  if (fraction !== undefined) return { type: "number", text: mark, value: fraction, ...base }
  if (mark === "\u00d7") return { type: "word", text: "x", value: Number.NaN, ...base }
  return { type: "mark", text: mark, value: Number.NaN, ...base }
}
