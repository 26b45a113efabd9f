// Weighings, labels and colours as a maker writes them: "4 pieces = 38 g", "50 g = 120 m", "rose: 1-3; cream: 4-6".

import { RoundwrightError } from "@roundwright/numerics"
import { lengthAt } from "../lengths.ts"
import type { Skein, Weighed } from "./yarn-basis.ts"

const massForm = /(-?\d{1,6}(?:[.,]\d{1,3})?)\s*(kg|g|grams?|oz|ounces?|lbs?)(?![a-z])/i

/** A mass in grams; null where the text has none. */
export function gramsIn(text: string): number | null {
  const match = massForm.exec(text)
  if (!match) return null
  const value = Number(match[1]!.replace(",", "."))
  const unit = match[2]!.toLowerCase()
  return (
    value *
    (unit === "kg" ? 1000 : unit.startsWith("o") ? 28.3495 : unit.startsWith("l") ? 453.592 : 1)
  )
}

/** Kitchen scales show whole grams. */
const usualStepGrams = 1

/** "4 pieces = 38 g", "one square weighs 9.5 g (0.1 g)". @throws RoundwrightError `bad-weight` */
export function readWeighed(text: string, stepText?: string): Weighed {
  const weight = gramsIn(text)
  const pieces = /^\s*(\d{1,4})\b(?!\s*(?:[.,]\d|g\b|kg\b|oz\b))/.exec(text)
  const one = /\b(?:one|a|1)\b/i.test(text)
  if (weight === null || weight <= 0 || (!pieces && !one && !/^\s*[\d.,]+\s*(?:g|oz)/i.test(text)))
    throw new RoundwrightError(
      "bad-weight",
      `"${text.slice(0, 40)}" tells no weight of some pieces.`,
      {
        hint: "Write how many lay on the scale together: 4 pieces = 38 g.",
      },
    )
  const step = stepText === undefined ? null : gramsIn(stepText)
  const decimals = /\d[.,](\d+)\s*(?:g|oz)/i.exec(text)?.[1]?.length ?? 0
  return {
    pieces: pieces ? Number(pieces[1]) : 1,
    grams: weight,
    stepGrams: step ?? (decimals > 0 ? 10 ** -decimals : usualStepGrams),
  }
}

/** "50 g = 120 m", "100 g, 295 m", "3.5 oz 170 yd", "100 g". @throws RoundwrightError `bad-skein` */
export function readSkein(text: string): Skein {
  const weight = gramsIn(text)
  const metres = metresIn(text)
  if (weight === null || weight <= 0 || (metres !== null && metres <= 0))
    throw new RoundwrightError("bad-skein", `"${text.slice(0, 40)}" is no skein.`, {
      hint: "Write its label: 50 g = 120 m.",
    })
  return { grams: weight, metres }
}

function metresIn(text: string): number | null {
  for (let at = 0; at < text.length; at += 1) {
    if (at > 0 && /[\d.,]/.test(text[at - 1]!)) continue
    const found = lengthAt(text.slice(at))
    if (found && found.mm >= 5000) return found.mm / 1000
  }
  return null
}

export interface ColourRounds {
  readonly colour: string
  /** Round numbers. */
  readonly rounds: readonly number[]
}

/** "rose: 1-3; cream: 4, 6". @throws RoundwrightError `bad-colours` */
export function readColourRounds(text: string): ColourRounds[] {
  return text
    .split(/[;\n]/)
    .filter((part) => part.trim() !== "")
    .map((part) => {
      const match =
        /^\s{0,40}([^:=]{1,40}?)\s{0,9}[:=]\s{0,9}(?:rnds?|rounds?)?\s{0,9}([\d\s,–-]{1,400}?)\s{0,9}$/i.exec(
          part,
        )
      const rounds = match ? numbersIn(match[2]!) : []
      if (!match || rounds.length === 0)
        throw new RoundwrightError(
          "bad-colours",
          `"${part.trim().slice(0, 40)}" names no colour with its rounds.`,
          {
            hint: "Write them such as: rose: 1-3; cream: 4-6.",
          },
        )
      return { colour: match[1]!, rounds }
    })
}

const mostRounds = 500

function numbersIn(text: string): number[] {
  return text
    .split(/[\s,]{1,9}(?![–-])/)
    .filter((one) => one !== "")
    .flatMap((one) => {
      const range = /^(\d{1,3})\s*[–-]\s*(\d{1,3})$/.exec(one.trim())
      if (!range) return /^\d{1,3}$/.test(one) ? [Number(one)] : []
      const [from, to] = [Number(range[1]), Number(range[2])]
      return to < from || to - from > mostRounds
        ? []
        : Array.from({ length: to - from + 1 }, (_, k) => from + k)
    })
}
