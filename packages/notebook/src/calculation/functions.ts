// The functions a calculation may call, and how many values each takes.

import { RoundwrightError } from "@roundwright/numerics"
import type { MathFunction, MathTools, Value } from "./math.ts"

interface Callable {
  readonly least: number
  readonly most: number
  readonly call: (values: readonly Value[], math: MathTools) => Value
}

const ofOne = (name: MathFunction): Callable => ({
  least: 1,
  most: 1,
  call: ([value], math) => math.apply(name, value!),
})

/** Most values `min` and `max` take. */
const mostCompared = 20

const extreme = (further: "larger" | "smaller"): Callable => ({
  least: 1,
  most: mostCompared,
  call: (values, math) =>
    values.reduce((best, value) => (math.apply(further, value, best) === true ? value : best)),
})

const roundedBy = (round: (value: number) => number): Callable => ({
  least: 1,
  most: 2,
  call: ([value, places = 0], math) => {
    if (typeof places !== "number" || !Number.isInteger(places) || places < 0 || places > 9)
      throw fault("The number of decimals must be a whole number from 0 to 9.")
    const scale = 10 ** places
    if (typeof value === "number") return round(value * scale) / scale
    if (!math.isUnit(value)) throw fault("Only numbers and lengths can be rounded.")
    const { value: number, unit } = value.toJSON() as unknown as { value: number; unit: string }
    return math.unit(round(number * scale) / scale, unit)
  },
})

const callables: ReadonlyMap<string, Callable> = new Map<string, Callable>([
  ["abs", ofOne("abs")],
  ["sqrt", ofOne("sqrt")],
  ["cbrt", ofOne("cbrt")],
  ["exp", ofOne("exp")],
  ["log", ofOne("log")],
  ["sin", ofOne("sin")],
  ["cos", ofOne("cos")],
  ["tan", ofOne("tan")],
  ["asin", ofOne("asin")],
  ["acos", ofOne("acos")],
  ["atan", ofOne("atan")],
  ["sinh", ofOne("sinh")],
  ["cosh", ofOne("cosh")],
  ["tanh", ofOne("tanh")],
  ["min", extreme("smaller")],
  ["max", extreme("larger")],
  ["round", roundedBy(Math.round)],
  ["floor", roundedBy(Math.floor)],
  ["ceil", roundedBy(Math.ceil)],
  [
    "percent",
    {
      least: 1,
      most: 1,
      call: ([share]) => {
        if (typeof share !== "number") throw fault("percent takes a plain number.")
        const rounded = Math.round(100 * share)
        return `${rounded < 0 ? `\u2212${-rounded}` : rounded === 0 ? 0 : rounded}\u00a0%`
      },
    },
  ],
])

/** For hints. */
export const functionList = [...callables.keys()].join(", ")

/** @throws RoundwrightError `bad-expression` */
export function applyFunction(name: string, values: readonly Value[], math: MathTools): Value {
  const callable = callables.get(name)
  if (!callable) throw fault(`There is no function "${name.slice(0, 60)}".`)
  const { least, most } = callable
  if (values.length < least || values.length > most) {
    const number = least === most ? `${least}` : `${least} to ${most}`
    throw fault(`${name} takes ${number} values, not ${values.length}.`)
  }
  if (values.some((value) => typeof value === "string" || typeof value === "boolean"))
    throw fault(`${name} works on numbers and lengths only.`)
  try {
    return callable.call(values, math)
  } catch (error) {
    if (error instanceof RoundwrightError) throw error
    throw fault(`${name} cannot be used with these units.`)
  }
}

function fault(message: string): RoundwrightError {
  return new RoundwrightError("bad-expression", message, {
    hint: `Functions are ${functionList}.`,
  })
}
