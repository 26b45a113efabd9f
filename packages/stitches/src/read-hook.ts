// Reads a hook size in mm out of "5 mm", "H-8", "US H/8 (5.0 mm)", "steel 7", "old UK 8".
//
// Millimetres decide when they are given: makers' letters differ. A letter, or a number marked US,
// is looked up; a number marked old UK likewise; a bare number or a letter that tables disagree on
// (P) is not guessed. Two sizes in one line that do not agree are not decided either.

import { hooks, steelHooksMm } from "./hooks.ts"
import { numberPattern, readNumber } from "./read-number.ts"

/** The hook's size in mm, or undefined when the text names none or is ambiguous. */
export function readHook(text: string): number | undefined {
  if (text.length > longestLine) return undefined
  for (const read of [readMillimetres, readSteel, readOldUk, readLetters, readUsNumber]) {
    const found = read(text)
    if (found.length === 0) continue
    const first = found[0]!
    return found.every((mm) => mm === first) ? first : undefined
  }
  return undefined
}

/** A heading line is far shorter; longer text is not a hook's size. */
const longestLine = 2000

/** Thinnest and thickest hooks made, mm; other lengths in mm are not hooks. */
const hookRangeMm = { least: 0.4, most: 50 } as const

/** One size, or the two ends of "4 - 5 mm"; the 8 of "H-8 - 5 mm" belongs to its letter. */
const millimetres = new RegExp(
  String.raw`(?:(?<![\p{L}\d/.,-]\s?)(${numberPattern})\s*(?:-|–|to|or)\s*)?(?<![\d.,/])(${numberPattern})\s*-?\s*(?:mm|millimet(?:re|er)s?)(?![\p{L}])`,
  "giu",
)

function readMillimetres(text: string): number[] {
  return [...text.matchAll(millimetres)]
    .flatMap((match) => [match[1], match[2]])
    .map((size) => (size === undefined ? undefined : readNumber(size)))
    .filter((mm) => mm !== undefined)
    .filter((mm) => mm >= hookRangeMm.least && mm <= hookRangeMm.most)
}

/** "steel 7", "steel hook size 7", "No. 7 steel hook". */
function readSteel(text: string): (number | undefined)[] {
  const after =
    /\bsteel\b(?:\s+(?:crochet\s+)?hook)?\s{0,9},?\s{0,9}(?:size|no\.?|number)?\s{0,9}[#:]?\s{0,9}(00|\d{1,2})\b/gi
  const before = /(?<![\d.,/])(00|\d{1,2})\s+steel\b/gi
  return [...text.matchAll(before), ...text.matchAll(after)].map((match) => steelHooksMm[match[1]!])
}

function readOldUk(text: string): (number | undefined)[] {
  const pattern =
    /\b(?:(?:old\s+)?(?:uk|british|english)|imperial)(?:\s+(?:size|no\.?|number))?\s{0,9}[#:]?\s{0,9}(0{1,3}|\d{1,2})\b/gi
  return [...text.matchAll(pattern)].map(
    (match) => hooks.find((hook) => hook.oldUk === match[1])?.mm,
  )
}

/** `H-8`, `H/8`, `H8`, `size H`, `H hook`, or a letter alone on the line. */
function readLetters(text: string): (number | undefined)[] {
  const found: (number | undefined)[] = []
  const half = String.raw`(\d{1,2}(?:\.5|\s?1\/2|½)?)`
  const joined = new RegExp(String.raw`(?<![\p{L}\d])([A-Z])\s?[-/]?\s?${half}(?![\d\p{L}/])`, "gu")
  for (const match of text.matchAll(joined)) {
    const hook = hooks.find((one) => one.usLetter === match[1])
    const number = match[2]!.replace(/\s?1\/2|½/, ".5")
    found.push(hook?.usNumber === number ? hook.mm : undefined)
  }
  if (found.length > 0) return found
  const alone =
    /^\s*([A-Za-z])\s*$|\b(?:size|US|hook:?|no\.?)\s+([A-Z])(?![\p{L}\d/-])|(?<![\p{L}\d/-])([A-Z])(?=\s+(?:crochet\s+)?hook\b)/gu
  for (const match of text.matchAll(alone)) {
    const letter = (match[1] ?? match[2] ?? match[3])!.toUpperCase()
    found.push(hooks.find((one) => one.usLetter === letter)?.mm)
  }
  return found
}

function readUsNumber(text: string): (number | undefined)[] {
  const pattern =
    /\bU\.?S\.?A?\.?(?:\s+(?:size|no\.?|number))?\s{0,9}[#:]?\s{0,9}(\d{1,2}(?:\.5|\s?1\/2|½)?)(?![\d.])/g
  return [...text.matchAll(pattern)].map((match) => {
    const number = match[1]!.replace(/\s?1\/2|½/, ".5")
    return hooks.find((hook) => hook.usNumber === number)?.mm
  })
}
