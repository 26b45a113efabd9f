// Reads a hook size in mm out of "5 mm", "H-8", "US H/8 (5.0 mm)", "H/8 5.00mm hook", "steel 7", "old UK 8".
//
// Millimetres decide when they are given: makers' letters differ. A letter, or a number marked US, is looked up; a number
// marked old UK likewise; a bare number or a letter that tables disagree on (P) is not guessed. Two sizes in one line that do
// not agree are not decided either; behind "instead of" stands the hook that was left.

import { cutHeading, type HeadingToken, isSign, isWord, type Spot } from "./heading-tokens.ts"
import { hooks, steelHooksMm } from "./hooks.ts"

/** The hook's size in mm, or undefined when the text names none or is ambiguous. */
export function readHook(text: string): number | undefined {
  return findHook(cutHeading(text)).hook?.mm
}

export type HookFound = Spot & { readonly mm: number }

export interface HookReading {
  readonly hook?: HookFound
  /** "4.5 mm instead of 4 mm": the 4 mm. */
  readonly insteadOf?: HookFound
  /** Every place that names a size, the names of a size in mm among them. */
  readonly named?: readonly Spot[]
  /** Why what stands there is no hook: it is below zero, no hook is so thin or thick, or it is not one size. */
  readonly refused?: Spot & { readonly why: "below zero" | "unbelievable" | "undecided" }
}

/** @param named whether the line is about a hook, so that a size like 3.5 without a unit is one of mm */
export function findHook(tokens: readonly HeadingToken[], named = false): HookReading {
  const instead = tokens.findIndex(
    (token, at) => isWord(token, "instead") && isWord(tokens[at + 1], "of"),
  )
  if (instead < 0) return findOne(tokens, named)
  const found = findOne(tokens.slice(0, instead), named)
  const other = findOne(tokens.slice(instead + 2), named)
  if (other.hook === undefined) return found
  const words = { start: tokens[instead]!.start, end: tokens[instead + 1]!.end }
  const spots = [...(found.named ?? []), words, ...(other.named ?? [])]
  return { ...found, insteadOf: other.hook, named: spots }
}

type Candidate = Spot & { readonly mm: number | undefined }

function findOne(tokens: readonly HeadingToken[], named: boolean): HookReading {
  const inMm = sizesInMm(tokens)
  if (inMm.refused !== undefined && inMm.found.length === 0) return { refused: inMm.refused }
  // Steel hooks have numbers and no letters.
  const letters = tokens.some((token) => isWord(token, "steel")) ? [] : [letterAt]
  const ways = [steelAt, oldUkAt, ...letters, usNumberAt, ...(named ? [bareSizeAt] : [])]
  const all = [inMm.found, ...ways.map((find) => tokens.flatMap((_, at) => find(tokens, at) ?? []))]
  for (const found of all) {
    const first = found[0]
    if (first === undefined) continue
    const { mm, start, end } = first
    if (mm !== undefined && found.every((one) => one.mm === mm))
      return { hook: { mm, start, end }, named: all.flat() }
    return { refused: { start, end: found.at(-1)!.end, why: "undecided" } }
  }
  return {}
}

/** Thinnest and thickest hooks made, mm. */
const hookRangeMm = { least: 0.4, most: 50 } as const
/** What else is sold by mm and named among the materials. */
const otherThings = [
  "bead",
  "beads",
  "eye",
  "eyes",
  "safety",
  "button",
  "buttons",
  "ring",
  "rings",
  "pearls",
]

function sizesInMm(tokens: readonly HeadingToken[]): {
  found: Candidate[]
  refused: HookReading["refused"]
} {
  const found: Candidate[] = []
  let refused: HookReading["refused"]
  for (const at of tokens.keys()) {
    const sizes = millimetresAt(tokens, at) ?? []
    const why = sizes.length > 0 ? whyNoHook(tokens, at, sizes) : undefined
    if (why === undefined) found.push(...sizes)
    else if (why !== "else")
      refused ??= { start: beginning(tokens, at), end: sizes.at(-1)!.end, why }
  }
  return { found, refused }
}

function whyNoHook(
  tokens: readonly HeadingToken[],
  at: number,
  sizes: readonly Candidate[],
): "below zero" | "unbelievable" | "else" | undefined {
  const unit = isSign(tokens[at + 1], "-") ? at + 2 : at + 1
  if (isWord(tokens[unit + 1], ...otherThings)) return "else"
  if (isBelowZero(tokens, at)) return "below zero"
  const outside = sizes.some(({ mm }) => mm! < hookRangeMm.least || mm! > hookRangeMm.most)
  return outside || isPower(tokens, at) ? "unbelievable" : undefined
}

/** "-4 mm": a minus that joins it to nothing before. */
function isBelowZero(tokens: readonly HeadingToken[], at: number): boolean {
  const before = tokens[at - 1]
  if (!isSign(before, "-", "−") || !tokens[at]!.joined) return false
  const further = tokens[at - 2]
  return (
    further === undefined ||
    (further.type === "sign" && !before!.joined) ||
    isSign(further, ":", "=")
  )
}

/** The 9 of "1e9 mm" is no size. */
function isPower(tokens: readonly HeadingToken[], at: number): boolean {
  const sign = isSign(tokens[at - 1], "-", "+") ? at - 1 : at
  return (
    isWord(tokens[sign - 1], "e") && tokens[sign - 1]!.joined && tokens[sign - 2]?.type === "number"
  )
}

/** Where what joins a number from before begins: its minus, the 1e of 1e9. */
function beginning(tokens: readonly HeadingToken[], at: number): number {
  let first = at
  while (first > 0 && tokens[first]!.joined) first--
  return tokens[first]!.start
}

/** The size in mm with its number here, and the lower end of "4 - 5 mm" with it; the 8 of "H-8 - 5 mm" belongs to its letter. */
function millimetresAt(tokens: readonly HeadingToken[], at: number): Candidate[] | undefined {
  const token = tokens[at]!
  const unit = isSign(tokens[at + 1], "-") ? at + 2 : at + 1
  if (token.type !== "number" || !isMm(tokens[unit])) return undefined
  const upper = { mm: token.value, start: token.start, end: tokens[unit]!.end }
  const lower = isConnector(tokens[at - 1]) ? tokens[at - 2] : undefined
  if (lower?.type !== "number" || belongsToName(tokens, at - 2)) return [upper]
  return [{ mm: lower.value, start: lower.start, end: lower.end }, upper]
}

function isMm(token: HeadingToken | undefined): boolean {
  return isWord(token, "mm", "millimetre", "millimetres", "millimeter", "millimeters")
}

function isConnector(token: HeadingToken | undefined): boolean {
  return isSign(token, "-", "–") || isWord(token, "to", "or")
}

/** Whether a number is that of "H-8", "US 8", "size 8", "#8". */
function belongsToName(tokens: readonly HeadingToken[], at: number): boolean {
  const joint = isSign(tokens[at - 1], "-", "/", "#", ".") ? at - 2 : at - 1
  const name = tokens[joint]
  if (isSign(tokens[at - 1], "/", "#")) return true
  return (
    name?.type === "word" &&
    (name.text.length === 1 || isWord(name, "us", "usa", "uk", "size", "no"))
  )
}

const isNumbered = (token: HeadingToken | undefined) =>
  isWord(token, "size", "no", "number", "nr") || isSign(token, "#", ".", ":", ",")

/** Index of the number behind words like "size" and "no." from here on; undefined where there is none. */
function numberBehind(tokens: readonly HeadingToken[], from: number): number | undefined {
  let at = from
  while (at - from < 4 && isNumbered(tokens[at])) at++
  return tokens[at]?.type === "number" ? at : undefined
}

const oneOf = (mm: number | undefined, first: HeadingToken, last: HeadingToken): Candidate[] => [
  { mm, start: first.start, end: last.end },
]

/** "steel 7", "steel hook size 7", "No. 7 steel hook", "US 10 steel". */
function steelAt(tokens: readonly HeadingToken[], at: number): Candidate[] | undefined {
  const token = tokens[at]!
  if (!isWord(token, "steel")) return undefined
  let next = at + 1
  while (isWord(tokens[next], "crochet", "hook", "hooks")) next++
  const number = numberBehind(tokens, next)
  if (number !== undefined) {
    const sizes = oneOf(steelHooksMm[tokens[number]!.text], token, tokens[number]!)
    // "No. 7 or 8", "No. 8 or No. 9".
    const other = isWord(tokens[number + 1], "or") ? numberBehind(tokens, number + 2) : undefined
    if (other === undefined || isMm(tokens[other + 1])) return sizes
    return [...sizes, ...oneOf(steelHooksMm[tokens[other]!.text], token, tokens[other]!)]
  }
  const before = isWord(tokens[at - 1], "us") ? tokens[at - 2] : tokens[at - 1]
  return before?.type === "number" ? oneOf(steelHooksMm[before.text], before, token) : undefined
}

/** "UK 8", "old UK size 8", "imperial 9", "size 8 old UK". */
function oldUkAt(tokens: readonly HeadingToken[], at: number): Candidate[] | undefined {
  const token = tokens[at]!
  if (!isWord(token, "uk", "british", "english", "imperial")) return undefined
  const size = (one: HeadingToken) => hooks.find((hook) => hook.oldUk === one.text)?.mm
  const from = isWord(tokens[at + 1], "old") ? at + 2 : at + 1
  const number = numberBehind(tokens, from)
  if (number !== undefined) return oneOf(size(tokens[number]!), token, tokens[number]!)
  const before = isWord(tokens[at - 1], "old") ? tokens[at - 2] : tokens[at - 1]
  return before?.type === "number" ? oneOf(size(before), before, token) : undefined
}

/** `H-8`, `H/8`, `H8`, `size H`, `H hook`, or a letter alone on the line. */
function letterAt(tokens: readonly HeadingToken[], at: number): Candidate[] | undefined {
  const token = tokens[at]!
  if (token.type !== "word" || token.text.length !== 1) return undefined
  const hook = hooks.find((one) => one.usLetter === token.text.toUpperCase())
  if (tokens.length === 1) return oneOf(hook?.mm, token, token)
  if (!token.capital) return undefined
  const place = isSign(tokens[at + 1], "-", "/") ? at + 2 : at + 1
  const number = tokens[place]
  if (number?.type === "number" && isUsNumber(number) && !isMm(tokens[place + 1]))
    return oneOf(hook?.usNumber === String(number.value) ? hook.mm : undefined, token, number)
  let next = at + 1
  // "an F or G hook": each of them is said.
  const other = tokens[next + 1]
  if (isWord(tokens[next], "or") && other?.type === "word" && other.text.length === 1) next += 2
  while (isWord(tokens[next], "crochet", "size", "sized")) next++
  const before = isSign(tokens[at - 1], ":", ".") ? tokens[at - 2] : tokens[at - 1]
  const said = isWord(before, "size", "us", "hook", "no") || isWord(tokens[next], "hook", "hooks")
  return said ? oneOf(hook?.mm, token, token) : undefined
}

/** US numbers are whole but for 10 1/2. */
function isUsNumber(token: HeadingToken & { readonly type: "number" }): boolean {
  return Number.isInteger(token.value) || token.value === 10.5
}

/** "US 7", "U.S. size 8", "USA no. 8", "8 US". */
function usNumberAt(tokens: readonly HeadingToken[], at: number): Candidate[] | undefined {
  const token = tokens[at]!
  const dotted = isWord(token, "u") && isSign(tokens[at + 1], ".") && isWord(tokens[at + 2], "s")
  if (!dotted && !isWord(token, "us", "usa")) return undefined
  const size = (one: HeadingToken & { readonly type: "number" }) =>
    hooks.find((hook) => hook.usNumber === String(one.value))?.mm
  const number = numberBehind(tokens, dotted ? at + 3 : at + 1)
  const after = number === undefined ? undefined : tokens[number]
  if (after?.type === "number") return oneOf(size(after), token, after)
  const before = tokens[at - 1]
  return before?.type === "number" ? oneOf(size(before), before, token) : undefined
}

const metricSizes = new Set([
  ...hooks.map(({ mm }) => mm),
  ...Object.values(steelHooksMm),
  4.25,
  0.6,
  1.25,
  1.75,
])

/** "3.5", "4.00": a size written with decimals that is made in mm and is no US number. */
function bareSizeAt(tokens: readonly HeadingToken[], at: number): Candidate[] | undefined {
  const token = tokens[at]!
  if (token.type !== "number" || !/^\d{1,2}[.,]\d{1,2}$/.test(token.text)) return undefined
  return metricSizes.has(token.value) ? oneOf(token.value, token, token) : undefined
}
