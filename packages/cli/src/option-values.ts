// Values of options as a user types them.

import { RoundwrightError } from "@roundwright/numerics"
import { millimetresIn } from "@roundwright/stitches"

/** Nothing worked in rounds is smaller than a millimetre, and no room takes a piece of a hundred metres. */
const lengthRangeMm = { least: 1, most: 100_000 } as const

/** `200mm`, `20 cm`, `8 in`. @throws RoundwrightError `no-size` */
export function readLengthMm(text: string): number {
  const match = /^\s*(\d{1,12}(?:\.\d{1,12})?)\s*(mm|cm|in|")\s*$/i.exec(text)
  if (!match)
    throw new RoundwrightError("no-size", `${quoted(text)} is no length.`, {
      hint: "Write it such as 200mm, 20cm or 8in.",
    })
  const mm = Number(match[1]) * millimetresIn(match[2]!)
  if (mm >= lengthRangeMm.least && mm <= lengthRangeMm.most) return mm
  const size = mm < lengthRangeMm.least ? "small" : "large"
  throw new RoundwrightError("no-size", `${quoted(text)} is too ${size} for a piece.`, {
    hint: `Give a length from ${lengthRangeMm.least} mm to ${lengthRangeMm.most / 1000} m.`,
    numbers: { mm },
  })
}

/** Digits a whole number may have; more are exact in no computer, and nothing here is counted so far. */
const mostDigits = 12

/** @throws RoundwrightError `not-whole` */
export function wholeNumber(text: string, option: string): number {
  const digits =
    /^\s*(\d+)(?:\s{0,9}(?:sts?|stitches|sc|dc|hdc|rows?|rounds?|rnds?|pieces?|squares?|repeats?))?\s*$/i
      .exec(text)?.[1]
      ?.replace(/^0+(?=\d)/, "")
  if (digits !== undefined && digits.length > mostDigits)
    throw new RoundwrightError("not-whole", `${option} ${shortened(digits)} is far too many.`)
  const value = digits === undefined ? 0 : Number(digits)
  if (value > 0) return value
  throw new RoundwrightError(
    "not-whole",
    `${option} takes a whole number above 0, not ${quoted(text)}.`,
  )
}

/** One of a few words, in any case. @throws RoundwrightError `no-choice` */
export function oneOf<Word extends string>(
  text: string,
  words: readonly Word[],
  option: string,
): Word {
  const found = words.find((word) => word.toLowerCase() === text.trim().toLowerCase())
  if (found) return found
  throw new RoundwrightError(
    "no-choice",
    `${option} takes ${words.slice(0, -1).join(", ")} or ${words.at(-1)}, not ${quoted(text)}.`,
  )
}

/** Longer values are cut where they are told back. */
const mostShown = 40

/** What was typed, in quotes, as a message shows it: long text cut, control characters as dots. */
export function quoted(text: string): string {
  return `"${shortened(text)}"`
}

function shortened(text: string): string {
  const plain = text.replace(/\p{Cc}/gu, "·")
  return plain.length > mostShown ? `${plain.slice(0, mostShown)}...` : plain
}

/**
 * A minus and a digit after an option are its value, not another option: `--rounds -1` becomes `--rounds=-1`, so that the
 * option itself says what it takes.
 */
export function joinNegatives(args: readonly string[]): string[] {
  const joined: string[] = []
  for (const arg of args) {
    const option = joined.at(-1)
    if (/^-(?:\d|\.\d|inf)/i.test(arg) && option !== undefined && /^--[a-z-]+$/.test(option))
      joined[joined.length - 1] = `${option}=${arg}`
    else joined.push(arg)
  }
  return joined
}
