// Values of options as a user types them.

import { RoundwrightError } from "@roundwright/numerics"

const millimetresIn: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4, '"': 25.4 }

/** `200mm`, `20 cm`, `8 in`. @throws RoundwrightError `no-size` */
export function readLengthMm(text: string): number {
  const match = /^\s*(\d+(?:\.\d+)?)\s*(mm|cm|in|")\s*$/i.exec(text)
  const mm = match ? Number(match[1]) * millimetresIn[match[2]!.toLowerCase()]! : Number.NaN
  if (mm > 0 && Number.isFinite(mm)) return mm
  throw new RoundwrightError("no-size", `"${text}" is no length.`, {
    hint: "Say how wide the disc shall be, such as: --across 200mm, 20cm or 8in; or --rounds 10.",
  })
}

export function wholeNumber(text: string, option: string): number {
  const value = Number(text)
  if (Number.isInteger(value) && value > 0) return value
  throw new RoundwrightError("not-whole", `${option} takes a whole number above 0, not "${text}".`)
}
