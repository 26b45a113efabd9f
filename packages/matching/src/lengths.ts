// Lengths as makers write them, and as a sheet tells them back: "15.2 cm", "15,2cm", `6 1/2"`, "6.5 inches", "6½ in".

import { formatLength } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { millimetresIn, readNumber } from "@roundwright/stitches"

/** Nothing crocheted is smaller than a millimetre, and no room takes a piece of a hundred metres. */
const lengthRangeMm = { least: 1, most: 100_000 } as const

/** One number with its unit, at the start of a text; a fraction of inches after a blank or a hyphen. */
const lengthForm =
  /^\s{0,40}(-?\d{1,7}(?:[.,]\d{1,20})?)?(?:[\s-]?(?:(\d{1,2})\/(\d{1,2})|([¼½¾⅛⅜⅝⅞])))?\s{0,9}-?\s{0,9}(mm|cm|millimet(?:re|er)s?|centimet(?:re|er)s?|m(?:et(?:re|er)s?)?|in(?:ch(?:es)?)?|ft|feet|foot|yd|yards?|["″”])(?![a-z])/i

/** Few blanks, then a number. */
const lengthBegins = /^\s{0,10}[-\d¼½¾⅛⅜⅝⅞]/

/** Letters that a length has at most; blanks without end are not gone through. */
const longestLength = 80

/** The length a text begins with, mm, and how many characters it takes; null where it begins with none. */
export function lengthAt(text: string): { readonly mm: number; readonly length: number } | null {
  if (!lengthBegins.test(text)) return null
  const match = lengthForm.exec(text.slice(0, longestLength))
  if (!match) return null
  const [all, whole, over, under, sign, unit] = match
  if (whole === undefined && over === undefined && sign === undefined) {
    return null
  }
  const fraction = sign ? readNumber(sign)! : over ? Number(over) / Number(under) : 0
  // "1/2 in" is read whole by the number form as "1" and "/2": the fraction alone has no whole part.
  const number = (whole === undefined ? 0 : Number(whole.replace(",", "."))) + fraction
  return { mm: number * unitMm(unit!), length: all.length }
}

function unitMm(unit: string): number {
  if (/^m(?:et|$)/i.test(unit)) return 1000
  if (/^f/i.test(unit)) return 304.8
  if (/^y/i.test(unit)) return 914.4
  if (/^mil/i.test(unit)) return 1
  if (/^cen/i.test(unit)) return 10
  return millimetresIn(unit)
}

/**
 * A length by itself, mm.
 * @param what it is the length of, for the message: "the size to match"
 * @throws RoundwrightError `no-size`
 */
export function readLength(text: string, what: string): number {
  const found = lengthAt(text)
  if (!found || text.slice(found.length).trim() !== "")
    throw new RoundwrightError("no-size", `"${text.slice(0, 40)}" is no length for ${what}.`, {
      hint: "Write a number with its unit, such as 15.2 cm or 6 1/2 in.",
    })
  return believable(found.mm, what)
}

/** @throws RoundwrightError `no-size` */
export function believable(mm: number, what: string): number {
  if (mm >= lengthRangeMm.least && mm <= lengthRangeMm.most) return mm
  const why = mm <= 0 ? "must be more than nothing" : mm < 1 ? "is too small" : "is too large"
  throw new RoundwrightError("no-size", `A length of ${told(mm)} ${why} for ${what}.`, {
    hint: `Give a length from ${lengthRangeMm.least} mm to ${lengthRangeMm.most / 1000} m.`,
    numbers: { mm },
  })
}

/** What lengths are told in: what the asker used. */
export type LengthUnit = "cm" | "in"

/** Inches where a text speaks of inches, feet or yards and of nothing metric. */
export function unitIn(text: string): LengthUnit {
  const imperial =
    /\d\s{0,9}-?\s{0,9}(?:in(?:ch(?:es)?)?|ft|feet|foot|yd|yards?)(?![a-z])|["″”]|[¼½¾⅛⅜⅝⅞]/i
  return imperial.test(text) && !/\d\s{0,9}-?\s{0,9}(?:mm|cm|m)(?![a-z])/i.test(text) ? "in" : "cm"
}

/** A length in words, `7.2 cm`, `5.67 in`. */
export function lengthWords(mm: number, unit: LengthUnit = "cm"): string {
  if (unit === "cm") return formatLength(mm)
  const inches = mm / 25.4
  return `${Number(inches.toFixed(Math.abs(inches) < 10 ? 2 : 1))} in`
}

/** Of one stitch or row, where tenths of a millimetre tell. */
export function stitchLengthWords(mm: number, unit: LengthUnit = "cm"): string {
  return unit === "cm" && mm < 20 ? `${Number(mm.toFixed(1))} mm` : lengthWords(mm, unit)
}

function told(mm: number): string {
  return `${Number((mm / 10).toFixed(2))} cm`
}

/** For a sheet: cm to the half. */
export function cmToHalf(mm: number): string {
  return `${Math.round(mm / 5) / 2} cm`
}

/** For a sheet: inches to the quarter, `6 1/4 in`. */
export function inchesToQuarter(mm: number): string {
  const quarters = Math.round((4 * mm) / 25.4)
  const whole = Math.floor(quarters / 4)
  const part = ["", "1/4", "1/2", "3/4"][quarters % 4]!
  const parts = [whole > 0 || part === "" ? String(whole) : "", part].filter((one) => one !== "")
  return `${parts.join(" ")} in`
}

/** Both, as a sheet has them: `15 cm (6 in)`. */
export function sheetLength(mm: number): string {
  return `${cmToHalf(mm)} (${inchesToQuarter(mm)})`
}
