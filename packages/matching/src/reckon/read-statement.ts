// Statements of figures as makers make them: "14 stitches = 4 in", "8 g a square", "9 bags of 12 hexagons", "have 55 squares",
// "48 x 60 in". Words are walked over one by one.

import { RoundwrightError } from "@roundwright/numerics"
import { areaOf, type Unit, unitOf } from "./units.ts"

/** An amount, at least and at most, in the unit it was told in. */
export interface Quantity {
  readonly unit: Unit
  readonly low: number
  readonly high: number
  /** Of an area or a layout, its two sides in the unit they were told in. */
  readonly sides: readonly [number, number] | null
  /** The unit of the sides. */
  readonly sideUnit: Unit | null
}

export type Role = "have" | "want" | null

export interface Asked {
  readonly quantity: Quantity
  readonly role: Role
}

export interface Statement {
  /** Each amount stands for the next. */
  readonly facts: readonly (readonly [Quantity, Quantity])[]
  readonly asked: readonly Asked[]
}

const haveWords = /^(?:have|has|got|made|done|left|had)$/
const wantWords = /^(?:want|wanted|need|needed|wish|wished|planned|meant)$/
const perWords = /^(?:per|each|every|a|an|to)$/

/** @throws RoundwrightError `bad-statement` for what is no statement of figures */
export function readStatement(told: string): Statement {
  const text = plainly(told)
  const parts = text.split("=")
  if (parts.length > 1) {
    const amounts = parts.map((part) => wholly(wordsOf(part), text))
    return { facts: amounts.slice(1).map((one, k) => [amounts[k]!, one] as const), asked: [] }
  }
  const words = wordsOf(text)
  const first = words[0]?.toLowerCase() ?? ""
  const role: Role = haveWords.test(first) ? "have" : wantWords.test(first) ? "want" : null
  const rest = role === null ? words : words.slice(1)
  // "12 squares, 5 g each".
  const last = rest.at(-1)?.toLowerCase() ?? ""
  const second = rest.findIndex((word, k) => k > 1 && isNumber(word) && !isNumber(rest[k - 1]!))
  if (/^(?:each|apiece)$/.test(last) && second > 0) {
    const many = wholly(rest.slice(0, second), text)
    return {
      facts: [[one(many.unit), wholly(rest.slice(second, -1), text)]],
      asked: [{ quantity: many, role }],
    }
  }
  // "8 g a square": so much for one of them. "3 to 4 g" is a range.
  const per = rest.findIndex(
    (word, k) => k > 1 && perWords.test(word.toLowerCase()) && !isNumber(rest[k + 1] ?? ""),
  )
  if (per > 0) {
    const unit = unitOf(rest.slice(per + 1))
    if (!unit) throw badStatement(text)
    return { facts: [[one(unit), wholly(rest.slice(0, per), text)]], asked: [] }
  }
  // "4 strips of 9 blocks": each is so many, and so many there are.
  const of = rest.findIndex(
    (word, k) => k > 1 && /^(?:of|at|with)$/i.test(word) && isNumber(rest[k + 1] ?? ""),
  )
  if (of > 0) {
    const many = wholly(rest.slice(0, of), text)
    return {
      facts: [[one(many.unit), wholly(rest.slice(of + 1), text)]],
      asked: [{ quantity: many, role }],
    }
  }
  return { facts: [], asked: [{ quantity: wholly(rest, text), role }] }
}

function one(unit: Unit): Quantity {
  return { unit, low: 1, high: 1, sides: null, sideUnit: null }
}

const fractions: Readonly<Record<string, string>> = {
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
  "⅓": "1/3",
  "⅔": "2/3",
}
const money: Readonly<Record<string, string>> = {
  $: "dollars",
  "£": "pounds sterling",
  "€": "euros",
}
/** Words that stand between a thing and what it is. */
const verbs =
  /^(?:are|is|takes?|took|uses?|used|weighs?|weighed|makes?|gives?|gave|covers?|covered|measures?|measured|costs?|equals?|needs?)$/
const numbers = "zero one two three four five six seven eight nine ten eleven twelve".split(" ")

/** Signs and words as one way of writing: "50 g (125 m)" and "6 squares weigh 50 g" are told with "=". */
function plainly(told: string): string {
  const signs = told
    .slice(0, mostLetters)
    .replace(/\bhalf\s(?:of\s)?an?\s/gi, "1/2 ")
    .replace(/\ba\sdozen\b/gi, "12")
    .replace(/[½¼¾⅓⅔]/g, (sign) => ` ${fractions[sign]}`)
    .replace(
      /([$£€])\s?(\d{1,7}(?:\.\d{1,2})?)/g,
      (_, sign: string, value: string) => `${value} ${money[sign]}`,
    )
    .replace(/\s?\((?=\d)/g, " = ")
    .replace(/[()]/g, " ")
    .replace(/(?<=[a-z])\s?\/\s?(?=\d)/gi, " = ")
  const words = signs.split(/\s+/).filter((word) => word !== "")
  return words
    .map((word, k) => {
      const plain = word.toLowerCase()
      const value = numbers.indexOf(plain)
      if (value > 0) return String(value)
      if (k === 0 && /^(?:an?|each|every)$/.test(plain)) return "1"
      const next = words[k + 1] ?? ""
      const followed = /^\d/.test(next) || numbers.indexOf(next.toLowerCase()) > 0
      return k > 0 && verbs.test(plain) && followed ? "=" : word
    })
    .join(" ")
}

/** Numbers and words apart: "8g" is "8", "g"; "5x7" is "5", "x", "7". */
function wordsOf(text: string): string[] {
  return text
    .slice(0, mostLetters)
    .replace(/(\d)(?=[a-z"″”×–-])/gi, "$1 ")
    .replace(/([x×–-])(?=\d)/gi, "$1 ")
    .replace(/(\d),(?=\d{3}(?!\d))/g, "$1")
    .split(/[\s,;]+/)
    .filter((word) => word !== "")
}

const mostLetters = 200
const mostValue = 1e9

function isNumber(word: string): boolean {
  return /^\d{1,9}(?:\.\d{1,9})?$/.test(word) || /^\d{1,3}\/\d{1,3}$/.test(word)
}

/** A number and where the words go on: "6 1/2" is one number. */
function numberAt(words: readonly string[], at: number): [number, number] | null {
  const numberIn = (word: string) => {
    const [over, under] = word.split("/").map(Number)
    return under === undefined ? over! : over! / under
  }
  const first = words[at] ?? ""
  if (!isNumber(first)) return null
  const next = words[at + 1] ?? ""
  const mixed = !first.includes("/") && /^\d{1,3}\/\d{1,3}$/.test(next)
  const value = numberIn(first) + (mixed ? numberIn(next) : 0)
  return Number.isFinite(value) && value <= mostValue ? [value, at + (mixed ? 2 : 1)] : null
}

/** An amount that takes all words. */
function wholly(words: readonly string[], text: string): Quantity {
  const first = numberAt(words, 0)
  if (!first) throw badStatement(text)
  let [low, at] = first
  let high = low
  let sides: readonly [number, number] | null = null
  const link = (words[at] ?? "").toLowerCase()
  // "4 in x 6 in": the unit may be told twice.
  const linkLater = (words[at + 1] ?? "").toLowerCase()
  const skip = /^(?:x|×|by)$/.test(linkLater) && !isNumber(link) && link !== "" ? 1 : 0
  const joint = skip === 1 ? linkLater : link
  if (/^(?:x|×|by|to|-|–)$/.test(joint)) {
    const second = numberAt(words, at + skip + 1)
    if (!second) throw badStatement(text)
    if (/^(?:x|×|by)$/.test(joint)) sides = [low, second[0]]
    else high = second[0]
    at = second[1]
  }
  const unit = unitOf(words.slice(at))
  if (!unit)
    throw new RoundwrightError("bad-statement", `${words[0]} of what, in "${cut(text)}"?`, {
      hint: "Name what is counted or measured: '55 squares', '58 g', '50 in'.",
    })
  if (words.slice(at).some(isNumber)) throw badStatement(text)
  if (sides) {
    const product = sides[0] * sides[1]
    const whole = unit.dimension === "fabric" ? areaOf(unit) : unit
    return { unit: whole, low: product, high: product, sides, sideUnit: unit }
  }
  if (!(low > 0) || !(high >= low))
    throw new RoundwrightError("bad-statement", `"${cut(text)}" tells no amount above nothing.`)
  return { unit, low, high, sides: null, sideUnit: null }
}

function cut(text: string): string {
  return text.trim().slice(0, 60)
}

function badStatement(text: string): RoundwrightError {
  return new RoundwrightError("bad-statement", `"${cut(text)}" is no statement of figures.`, {
    hint: "Write what stands for what, '14 stitches = 4 in' or '8 g a square', and what is asked, '50 in'.",
  })
}
