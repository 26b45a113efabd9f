// Amounts of yarn as makers tell them, by weight, by length or in balls, and one brought to another by a label.

import { RoundwrightError } from "@roundwright/numerics"
import { lengthAt, unitIn } from "../lengths.ts"
import { gramsIn } from "./read-yarn-options.ts"
import type { Skein } from "./yarn-basis.ts"

export type AmountUnit = "g" | "m" | "yd" | "balls"

export interface Amount {
  readonly value: number
  readonly unit: AmountUnit
}

const metresInYard = 0.9144
const mostAmount = 1e7

/** "45 g", "3.5 oz", "1200 yd", "8 balls", "8 x 220 yd", "8 skeins of 220 yd", "5". @throws RoundwrightError `bad-weight` */
export function readAmount(text: string, option: string): Amount {
  const several =
    /^\s*(\d{1,4})\s*(?:(?:balls?|skeins?|hanks?)\s*)?(?:x|×|\*|of|at|@)\s*(\S.*)$/i.exec(text)
  const one = single(several ? several[2]! : text)
  const value = one && one.value * (several ? Number(several[1]) : 1)
  if (one && value !== null && value >= 0 && value <= mostAmount) return { value, unit: one.unit }
  throw new RoundwrightError(
    "bad-weight",
    `${option} takes grams, yards, metres or balls, not "${text.slice(0, 40)}".`,
    { hint: "Write it such as '45 g', '1200 yd', '8 balls' or '8 x 220 yd'." },
  )
}

function single(text: string): Amount | null {
  const grams = gramsIn(text)
  if (grams !== null) return { value: grams, unit: "g" }
  const balls = /^(\d{1,6}(?:\.\d+)?)\s*(?:balls?|skeins?|hanks?)?$/i.exec(text.trim())
  if (balls) return { value: Number(balls[1]), unit: "balls" }
  const length = lengthAt(text)
  if (!length || text.slice(length.length).trim() !== "") return null
  const metres = length.mm / 1000
  // Inches and feet of yarn are told in yards.
  return unitIn(text) === "in"
    ? { value: metres / metresInYard, unit: "yd" }
    : { value: metres, unit: "m" }
}

/** The same amount in another unit. @throws RoundwrightError `bad-skein` where a label is needed and none is given */
export function amountIn({ value, unit }: Amount, to: AmountUnit, skein?: Skein): number {
  if (unit === to) return value
  const label = () => {
    if (skein) return skein
    throw new RoundwrightError(
      "bad-skein",
      `Nothing tells how ${words[unit]} go into ${words[to]}.`,
      {
        hint: "Add the label of the yarn: --skein '100 g = 200 m'.",
      },
    )
  }
  const metresOf = () => {
    const { metres } = label()
    if (metres !== null) return metres
    throw new RoundwrightError("bad-skein", "The skein's length is not told.", {
      hint: "Write its whole label: --skein '100 g = 200 m'.",
    })
  }
  const metres =
    unit === "m"
      ? value
      : unit === "yd"
        ? value * metresInYard
        : unit === "balls"
          ? null
          : to === "balls"
            ? null
            : (value / label().grams) * metresOf()
  if (metres === null) {
    const balls = unit === "balls" ? value : value / label().grams
    if (to === "balls") return balls
    if (to === "g") return balls * label().grams
    return (balls * metresOf()) / (to === "yd" ? metresInYard : 1)
  }
  if (to === "m") return metres
  if (to === "yd") return metres / metresInYard
  const balls = metres / metresOf()
  return to === "balls" ? balls : balls * label().grams
}

const words: Readonly<Record<AmountUnit, string>> = {
  g: "grams",
  m: "metres",
  yd: "yards",
  balls: "balls",
}

/** Whole from a hundred on, tenths from one on, hundredths below. */
export function amountFigure(value: number): string {
  const digits = value >= 100 ? 0 : value >= 1 ? 1 : 2
  return String(Number(value.toFixed(digits)))
}

/** "584 g", "12 balls", "1 ball". */
export function amountWords(value: number, unit: AmountUnit): string {
  const figure = amountFigure(value)
  return `${figure} ${unit === "balls" && figure === "1" ? "ball" : unit}`
}
