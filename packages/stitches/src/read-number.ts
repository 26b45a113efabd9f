// Numbers as patterns write them: 4, 3.5, 3,5, 1/2, 3 1/2, 3-1/2, ½, 3½.

const signs: Readonly<Record<string, number>> = {
  "½": 1 / 2,
  "⅓": 1 / 3,
  "⅔": 2 / 3,
  "¼": 1 / 4,
  "¾": 3 / 4,
  "⅛": 1 / 8,
  "⅜": 3 / 8,
  "⅝": 5 / 8,
  "⅞": 7 / 8,
}
const sign = "[½⅓⅔¼¾⅛⅜⅝⅞]"

/** Source of a pattern for one number; mixed fractions first, so that none is cut short. */
export const numberPattern = String.raw`(?:\d{1,5}[ \u00a0-]?\d{1,2}[/⁄]\d{1,2}(?!\d)|\d{1,5}[ \u00a0]?${sign}|\d{1,2}[/⁄]\d{1,2}(?!\d)|${sign}|\d{1,5}(?:[.,]\d{1,4})?(?!\d)|\.\d{1,4})`

const mixed = /^(?:(\d{1,5})[ \u00a0-])?(\d{1,2})[/⁄](\d{1,2})$/
const withSign = new RegExp(String.raw`^(\d{1,5})?[ \u00a0]?(${sign})$`)

/** The value of a text that is one number, undefined when it is none (or divides by zero). */
export function readNumber(text: string): number | undefined {
  const fraction = mixed.exec(text)
  if (fraction !== null) {
    const below = Number(fraction[3])
    return below === 0 ? undefined : Number(fraction[1] ?? 0) + Number(fraction[2]) / below
  }
  const signed = withSign.exec(text)
  if (signed !== null) return Number(signed[1] ?? 0) + signs[signed[2]!]!
  const value = Number(text.replace(",", "."))
  return text !== "" && Number.isFinite(value) ? value : undefined
}
