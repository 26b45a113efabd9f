// Two swatches told by stitches and rows together, "13 sts x 9 rows = 4 in": what the same counts come out as both ways, and the counts
// that bring a size back. They may be told over two lengths, or over a width and a height.

import { type LengthUnit, lengthAt, lengthWords, unitIn } from "../lengths.ts"
import { hookAdvice } from "../ways/hook-advice.ts"

export interface SwatchTold {
  readonly stitches: number
  readonly rows: number
  readonly widthMm: number
  readonly heightMm: number
  readonly unit: LengthUnit
}

/** "13 sts x 9 rows = 4 in", "16 dc and 8 rows = 10 x 11 cm"; null for anything else. */
export function readSwatchTold(text: string): SwatchTold | null {
  const [counts = "", size, ...more] = text.split("=")
  if (size === undefined || more.length > 0) return null
  const words = counts.trim().split(/\s{1,9}/)
  const numbers = words.flatMap((word, k) => (/^\d{1,4}(?:\.\d{1,2})?$/.test(word) ? [k] : []))
  if (numbers.length !== 2 || numbers[0] !== 0) return null
  const after = (k: number) => (words[k + 1] ?? "").toLowerCase()
  if (!/^(?:rows?|rounds?|rnds?)\W?$/.test(after(numbers[1]!)) || /^row/.test(after(0))) return null
  const [one = "", other] = size.split(/x|×|\bby\b/i).map((part) => part.trim())
  const unit = /[a-z"″”]{1,12}$/i.exec(other ?? one)?.[0] ?? ""
  const width = lengthAt(one) ?? lengthAt(`${one} ${unit}`)
  const height = other === undefined ? width : lengthAt(other)
  if (!width || !height || !(width.mm > 0) || !(height.mm > 0)) return null
  const [stitches, rows] = numbers.map((k) => Number(words[k])) as [number, number]
  if (!(stitches > 0) || !(rows > 0)) return null
  return { stitches, rows, widthMm: width.mm, heightMm: height.mm, unit: unitIn(size) }
}

export interface SwatchesCompared {
  readonly widthRatio: number
  readonly heightRatio: number
  readonly cause: "ratio" | null
  readonly text: string
}

const alike = 0.02
/** Rows and stitches this far apart are no matter of the hook, which changes both. */
const unlike = 0.06

/** @param whole width and length of the whole by the first */
export function compareSwatches(
  a: SwatchTold,
  b: SwatchTold,
  whole: readonly [number, number] | null,
): SwatchesCompared {
  const [wide, tall] = [
    [a.widthMm / a.stitches, b.widthMm / b.stitches],
    [a.heightMm / a.rows, b.heightMm / b.rows],
  ] as const
  const widthRatio = wide[1]! / wide[0]!
  const heightRatio = tall[1]! / tall[0]!
  const tell = (mm: number) => lengthWords(mm, a.unit)
  const cause = [widthRatio, heightRatio].some((one) => Math.abs(one - 1) > alike) ? "ratio" : null
  const sizes =
    whole === null
      ? ""
      : ` ${tell(whole[0])} by ${tell(whole[1])}, ${Math.round(whole[0] / wide[0]!)} stitches and ${Math.round(whole[1] / tall[0]!)} rows of the first, come to ${tell(whole[0] * widthRatio)} by ${tell(whole[1] * heightRatio)}; for the size take ${Math.round(whole[0] / wide[1]!)} stitches and ${Math.round(whole[1] / tall[1]!)} rows of the second.`
  return {
    widthRatio,
    heightRatio,
    cause,
    text: `The same counts come out ${widthRatio.toFixed(2)} times as wide and ${heightRatio.toFixed(2)} times as long in the second, ${(widthRatio * heightRatio).toFixed(2)} times the area.${sizes} ${cureWords(widthRatio, heightRatio)}`,
  }
}

function cureWords(wide: number, tall: number): string {
  if (Math.abs(wide - 1) <= alike && Math.abs(tall - 1) <= alike) return "They are alike."
  if (Math.abs(wide / tall - 1) > unlike)
    return "Not the hook alone, which changes both much alike: stitches and rows part. Meet the stitches with the hook and the length with more or fewer rows."
  const advice = hookAdvice(1 / Math.sqrt(wide * tall), { swatches: [] })
  return advice ? `To come to the first: the hook ${advice.text}, on the same yarn.` : ""
}
