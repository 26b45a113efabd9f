// Values of options as a user types them.

import { RoundwrightError } from "@roundwright/numerics"

const millimetresIn: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4, '"': 25.4 }

/** `200mm`, `20 cm`, `8 in`. @throws RoundwrightError `no-size` */
export function readLengthMm(text: string): number {
  const match = /^\s*(\d+(?:\.\d+)?)\s*(mm|cm|in|")\s*$/i.exec(text)
  const mm = match ? Number(match[1]) * millimetresIn[match[2]!.toLowerCase()]! : Number.NaN
  if (mm > 0 && Number.isFinite(mm)) return mm
  throw new RoundwrightError("no-size", `"${text}" is no length.`, {
    hint: "Write it such as 200mm, 20cm or 8in.",
  })
}

/** @throws RoundwrightError `not-whole` */
export function wholeNumber(text: string, option: string): number {
  const value = /^\s*\d{1,9}\s*$/.test(text) ? Number(text) : Number.NaN
  if (value > 0) return value
  throw new RoundwrightError("not-whole", `${option} takes a whole number above 0, not "${text}".`)
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
    `${option} takes ${words.slice(0, -1).join(", ")} or ${words.at(-1)}, not "${text}".`,
  )
}
