// A value as it is read in a sentence: sensible digits, a unit in words or signs, never NaN.

import type { Unit } from "mathjs"
import type { MathTools, Value } from "./math.ts"

/** Digits that mean something: a plain number is often compared, a length was measured by hand. */
const digits = { number: 4, measured: 3 } as const

/** From here on a number is written as a power of ten. */
const largestPlain = 1e9

export function formatValue(value: Value, math: MathTools): string {
  if (typeof value === "string") return value
  if (typeof value === "boolean") return value ? "yes" : "no"
  if (math.isUnit(value)) return formatUnit(value)
  return formatNumber(value, digits.number)
}

/** At most `significant` digits, whole numbers whole, no trailing zeros. */
export function formatNumber(value: number, significant: number): string {
  const nearest = Math.round(value)
  if (
    Math.abs(value) < largestPlain &&
    Math.abs(value - nearest) < 1e-9 * Math.max(1, Math.abs(value))
  )
    return minus(String(nearest === 0 ? 0 : nearest))
  const size = Math.floor(Math.log10(Math.abs(value)))
  if (size >= 9 || size < -6) {
    const [mantissa, exponent] = value.toExponential(significant - 1).split("e")
    return minus(`${Number(mantissa)} \u00d7 10^${Number(exponent)}`)
  }
  return minus(String(Number(value.toFixed(Math.min(12, Math.max(0, significant - 1 - size))))))
}

interface UnitPart {
  readonly unit: { readonly name: string }
  readonly prefix: { readonly name: string }
  readonly power: number
}

function formatUnit(value: Unit): string {
  const powers = new Map<string, number>()
  for (const part of value.units as unknown as readonly UnitPart[]) {
    const name = part.prefix.name + part.unit.name
    powers.set(name, (powers.get(name) ?? 0) + part.power)
  }
  const kept = [...powers].filter(([, power]) => power !== 0)
  const number = value.toJSON().value as number
  const shown = formatNumber(toTheTape(number, kept), digits.measured)
  if (kept.length === 1 && kept[0]![0] === "deg" && kept[0]![1] === 1) return `${shown}\u00b0`
  return `${shown}\u00a0${kept.map(([name, power]) => unitWord(name, power, number)).join("\u00b7")}`
}

/** Nobody measures crochet closer than a tenth of a millimetre; the width of a thread is told as it is. */
function toTheTape(number: number, kept: readonly (readonly [string, number])[]): number {
  const inMm = kept.length === 1 && kept[0]![0] === "mm" && kept[0]![1] === 1
  return inMm && Math.abs(number) >= 0.1 ? Math.round(10 * number) / 10 : number
}

const unitWords: ReadonlyMap<string, string> = new Map([
  ["inch", "in"],
  ["in", "in"],
  ["scwidth", "widths of one sc"],
  ["scwidths", "widths of one sc"],
])

function unitWord(name: string, power: number, number: number): string {
  const word = unitWords.get(name) ?? name
  if (power === 1) return word.startsWith("widths") && number === 1 ? "width of one sc" : word
  if (power === 2) return `${word}\u00b2`
  return power === 3 ? `${word}\u00b3` : `${word}^${minus(formatNumber(power, 3))}`
}

/** The sign of typography, which lines up with digits. */
function minus(text: string): string {
  return text.replace(/-/g, "\u2212")
}
