// Yarn of a project from figures alone: of another yarn in place of the pattern's, of another size, of so many pieces in several
// colours, of a size with nothing weighed, and what is left on a ball.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { type YarnWeight, yarnWeights } from "@roundwright/stitches"
import { type Amount, type AmountUnit, amountIn, amountWords } from "./amounts.ts"
import { type Skein, solidFabricKgPerM2, usualMetresPer100g } from "./yarn-basis.ts"

export interface NeedTold {
  readonly value: number
  readonly unit: AmountUnit
  /** Whole skeins; null where no label is given. */
  readonly skeins: number | null
  readonly text: string
}

/** What bought yarn is rounded up by, so that a last skein is not short by a tail. */
const reserve = 0.1

/** So much in skeins of that label, whole ones. */
export function skeinsFor(need: Amount, skein: Skein): NeedTold {
  requirePositive(need.value, "The yarn needed")
  const exact = amountIn(need, "balls", skein)
  const skeins = Math.ceil(exact - 1e-9)
  const safe = Math.ceil(exact * (1 + reserve) - 1e-9)
  const label = `${amountWords(skein.grams, "g")}${skein.metres === null ? "" : ` = ${amountWords(skein.metres, "m")} (${amountWords(skein.metres / 0.9144, "yd")})`}`
  return {
    ...need,
    skeins,
    text: `${amountWords(need.value, need.unit)} are ${Number(exact.toFixed(1))} skeins of ${label}: buy ${skeins}${safe > skeins ? `, ${safe} with a tenth in reserve` : ""}. Go by length, not weight, where the yarns differ; a yarn of another thickness also comes out another size.`,
  }
}

/** Another size of one design: yarn goes with the area. Sizes in mm. */
export function yarnForSize(
  used: Amount,
  from: readonly [number, number],
  to: readonly [number, number],
  skein?: Skein,
): NeedTold & { readonly factor: number } {
  requirePositive(used.value, "The yarn used")
  const area = (size: readonly [number, number]) =>
    requirePositive(size[0], "A width") * requirePositive(size[1], "A length")
  const factor = area(to) / area(from)
  const value = used.value * factor
  const more = value - used.value
  const bought = skein ? skeinsFor({ value, unit: used.unit }, skein) : null
  const whole = used.unit === "balls" ? `, buy ${Math.ceil(value - 1e-9)}` : ""
  return {
    factor,
    value,
    unit: used.unit,
    skeins: bought?.skeins ?? null,
    text: `Yarn goes with the area: ${factor.toFixed(2)} times as large, so ${amountWords(value, used.unit)} in all${whole}, ${amountWords(Math.abs(more), used.unit)} ${more < 0 ? "less" : "more"} than ${amountWords(used.value, used.unit)}; a border goes with the length of the edge and grows less.${bought ? ` ${bought.text}` : ""}`,
  }
}

export interface EachTold {
  readonly colours: readonly {
    readonly name: string
    readonly each: number
    readonly all: number
    readonly balls: number | null
  }[]
  readonly all: number
  readonly unit: AmountUnit
  readonly text: string
}

const mostColours = 40

/** "rose 6 g, cream 4 g" of one piece, for so many. @throws RoundwrightError `bad-colours`, what amounts throw */
export function yarnOfEach(text: string, pieces: number, skein?: Skein): EachTold {
  requirePositive(pieces, "The number of pieces")
  const parts = text
    // Blanks with the end of a line among them are that end.
    .replace(/\s+/g, (blanks) => (blanks.includes("\n") ? "\n" : blanks))
    .split(/\n?[,;]\n?|\n/)
    .map((part) => colourTold(part.trim()))
  if (parts.length > mostColours || parts.some((part) => part === null))
    throw new RoundwrightError(
      "bad-colours",
      `"${text.slice(0, 40)}" tells no yarn of one piece.`,
      {
        hint: "Write it by colour, such as: rose 6 g, cream 4 g.",
      },
    )
  const amounts = parts.map((part, k) => {
    const { name, raw, word } = part!
    const unit: AmountUnit = word.startsWith("y") ? "yd" : word.startsWith("m") ? "m" : "g"
    const value = word.startsWith("o") ? raw * 28.3495 : raw
    return { name: name || `colour ${k + 1}`, value, unit }
  })
  const { unit } = amounts[0]!
  if (amounts.some((one) => one.unit !== unit))
    throw new RoundwrightError("bad-colours", "Tell all colours in one unit.", {
      hint: "Grams for all, or yards for all.",
    })
  const colours = amounts.map(({ name, value }) => {
    const all = value * pieces
    const balls = skein ? Math.ceil(amountIn({ value: all, unit }, "balls", skein) - 1e-9) : null
    return { name, each: value, all, balls }
  })
  const all = colours.reduce((sum, one) => sum + one.all, 0)
  const ballWords = (balls: number | null) =>
    balls === null ? "" : ` (${balls} ${balls === 1 ? "ball" : "balls"})`
  return {
    colours,
    all,
    unit,
    text: `For ${pieces} pieces: ${colours.map((one) => `${one.name} ${amountWords(one.all, unit)}${ballWords(one.balls)}`).join(", ")}; ${amountWords(all, unit)} in all. Joins, border and tails come on top, a tenth to a fifth.`,
  }
}

/** "rose 6 g": the name, which may be wanting, the number and its unit; null for anything else. */
function colourTold(
  part: string,
): { readonly name: string; readonly raw: number; readonly word: string } | null {
  const amount = /(?<!\d)(\d+(?:\.\d+)?)\s*(g|grams?|oz|m|metres?|meters?|yds?|yards?)$/i.exec(part)
  if (!amount) return null
  const name = part.slice(0, amount.index).replace(/(?<![:=\s])[:=\s]+$/, "")
  // A name goes over no line.
  if (!/^.*$/.test(name)) return null
  return { name, raw: Number(amount[1]), word: amount[2]!.toLowerCase() }
}

/** A blanket of a size with nothing weighed: solid fabric, mm. */
export function yarnOfSize(
  [width, length]: readonly [number, number],
  weight: YarnWeight,
): { readonly grams: number; readonly metres: number; readonly text: string } {
  const area = (requirePositive(width, "A width") * requirePositive(length, "A length")) / 1e6
  const grams = 1000 * solidFabricKgPerM2 * area
  const metres = (grams / 100) * usualMetresPer100g[weight]
  return {
    grams,
    metres,
    text: `Solid fabric weighs about ${solidFabricKgPerM2} kg to the square metre (0.76 to 0.94): ${area.toFixed(2)} square metres take about ${amountWords(grams, "g")}, in ${yarnWeights[weight]!.name.toLowerCase()} yarn about ${amountWords(metres, "m")} (${amountWords(metres / 0.9144, "yd")}), give or take a third; open work takes less. Surer: make a piece and weigh it.`,
  }
}

/** What is left on a ball, by its label. */
export function leftOnBall(left: Amount, skein: Skein): { readonly text: string } {
  const metres = amountIn(left, "m", skein)
  const grams = amountIn(left, "g", skein)
  return {
    text: `${amountWords(left.value, left.unit)} of ${amountWords(skein.grams, "g")} are ${Math.round((100 * grams) / skein.grams)} % of a ball: about ${amountWords(metres, "m")} (${amountWords(metres / 0.9144, "yd")}), ${amountWords(grams, "g")}.`,
  }
}
