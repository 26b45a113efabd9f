// The calculator: mathjs with numbers and units only. Loaded when a notebook first calculates,
// since it takes longer to load than all the rest.

import type { MathNode, Unit } from "mathjs"

/** What an expression can be worth. */
export type Value = number | boolean | string | Unit

export interface MathTools {
  parse(expression: string): MathNode
  unit(value: number, name: string): Unit
  /** @throws Error when the value is no length, or of another kind than the unit */
  convert(value: Value, unitName: string): Value
  isUnit(value: unknown): value is Unit
  /** Arithmetic and functions over numbers and units, by the name mathjs gives them. */
  readonly apply: (name: MathFunction, ...values: Value[]) => Value
}

/** What stands between values: the only operators an expression may hold. */
export const operatorNames = [
  "add",
  "subtract",
  "multiply",
  "divide",
  "pow",
  "mod",
  "unaryMinus",
  "unaryPlus",
  "larger",
  "smaller",
  "largerEq",
  "smallerEq",
] as const

const functionNames = [
  ...operatorNames,
  "abs",
  "sqrt",
  "cbrt",
  "exp",
  "log",
  "sin",
  "cos",
  "tan",
  "asin",
  "acos",
  "atan",
  "sinh",
  "cosh",
  "tanh",
] as const

export type MathFunction = (typeof functionNames)[number]

let loading: Promise<MathTools> | undefined

/** The calculator, made once. */
export function loadMath(): Promise<MathTools> {
  loading ??= makeMath()
  return loading
}

async function makeMath(): Promise<MathTools> {
  const library = await import("./math-parts.ts")
  const recipes = library as unknown as Record<string, object>
  const wanted = ["parse", "unit", "createUnit", ...functionNames]
  const math = library.create(
    Object.assign({}, ...wanted.map((name) => recipes[`${name}Dependencies`])),
    // Outside its domain a function gives NaN, which is refused, and not a complex number.
    { predictable: true, number: "number", matrix: "Array" },
  )
  math.createUnit("scwidth", { aliases: ["scwidths"] })
  const functions = math as unknown as Record<MathFunction, (...values: Value[]) => Value>
  return {
    parse: (expression) => math.parse(expression),
    unit: (value, name) => math.unit(value, name),
    convert: (value, name) => (value as Unit).to(math.unit(name)),
    isUnit: (value): value is Unit => math.typeOf(value) === "Unit",
    apply: (name, ...values) => functions[name](...values),
  }
}
