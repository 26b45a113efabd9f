// Working out the tree of an expression. This knows a short list of node kinds, operators, functions,
// constants and units; anything else is refused. So there is nothing to import, assign, index or call
// but what is named here, and the work is bounded by the length of the expression.

import { RoundwrightError } from "@roundwright/numerics"
import type { MathNode } from "mathjs"
import { bad, clip, finite, StillToCome, unknownName } from "./faults.ts"
import { applyFunction } from "./functions.ts"
import { type MathFunction, type MathTools, operatorNames, type Value } from "./math.ts"
import type { Figure } from "./names.ts"
import type { Names } from "./names-in-reach.ts"

/** Longest text an expression may hold or give. */
const mostText = 200

/** Areas and volumes and what comes of dividing them; more is a slip of the pen. */
const mostPower = 6

const operators: ReadonlySet<string> = new Set(operatorNames)

const constants: ReadonlyMap<string, number> = new Map([
  ["pi", Math.PI],
  ["tau", 2 * Math.PI],
])

const units: ReadonlySet<string> = new Set(
  "mm cm m inch inches ft foot feet yard yards g kg deg rad scwidth scwidths".split(" "),
)

/** @throws RoundwrightError `bad-expression`, `unknown-name`, `no-value`; StillToCome */
export class Walk {
  readonly #names: Names
  readonly #math: MathTools

  constructor(names: Names, math: MathTools) {
    this.#names = names
    this.#math = math
  }

  value(node: MathNode): Value {
    return this.#settled(this.#raw(node))
  }

  #raw(node: MathNode): Value {
    const parts = node as unknown as Parts
    switch (node.type) {
      case "ParenthesisNode":
        return this.value(parts.content)
      case "ConstantNode":
        return constantOf(parts.value)
      case "SymbolNode":
        return this.#named(parts.name)
      case "OperatorNode":
        return this.#operated(parts.fn as string, parts.op, parts.args)
      case "FunctionNode": {
        const name = (parts.fn as { name?: string }).name
        if (typeof name !== "string") throw bad("Only a function can be called, by its name.")
        const given = parts.args.map((part) => this.value(part))
        return applyFunction(name, given, this.#math)
      }
      case "ConditionalNode":
        return this.value(this.#truth(parts.condition) ? parts.trueExpr : parts.falseExpr)
      case "AccessorNode":
        return this.#member(parts)
      default:
        throw bad("The expression uses something that calculations here do not know.")
    }
  }

  #operated(name: string, sign: string, args: readonly MathNode[]): Value {
    if (name === "to") return this.#converted(args)
    if (!operators.has(name)) throw bad(`The sign ${sign} is not known to calculations here.`)
    const values = args.map((part) => this.value(part))
    if (values.some((value) => typeof value === "string" || typeof value === "boolean"))
      throw bad(`The sign ${sign} works on numbers and lengths only.`)
    return attempt(() => this.#math.apply(name as MathFunction, ...values))
  }

  #converted(args: readonly MathNode[]): Value {
    const unit = (args[1] as unknown as Parts).name
    if (args[1]!.type !== "SymbolNode" || !units.has(unit))
      throw bad(`After "to" must stand a unit.`, `Units are ${[...units].join(", ")}.`)
    const value = this.value(args[0]!)
    return attempt(() => this.#math.convert(value, unit))
  }

  #truth(node: MathNode): boolean {
    const value = this.value(node)
    if (typeof value === "boolean") return value
    throw bad("Before the question mark must stand a comparison, such as a > b.")
  }

  #named(name: string): Value {
    const known = this.#names.plain(name)
    if (known !== undefined) return this.#worth(known)
    const constant = constants.get(name)
    if (constant !== undefined) return constant
    if (units.has(name)) return this.#math.unit(1, name)
    throw unknownName(name, this.#names)
  }

  #member(parts: Parts): Value {
    const { object, index } = parts
    const dimension = index.dimensions[0] as unknown as { value?: unknown } | undefined
    const member = dimension?.value
    if (!index.dotNotation || object.type !== "SymbolNode" || typeof member !== "string")
      throw bad("A point may stand only between the name of a pattern and one of its figures.")
    const pattern = (object as unknown as Parts).name
    const figures = this.#names.pattern(pattern)
    if (!figures)
      throw new RoundwrightError("unknown-name", `There is no pattern called "${clip(pattern)}".`, {
        hint: this.#names.hint(pattern),
      })
    const figure = figures.get(member)
    if (figure === undefined) throw unknownName(`${pattern}.${member}`, this.#names)
    return this.#worth(figure)
  }

  #worth(known: Value | Figure): Value {
    if (typeof known !== "object" || this.#math.isUnit(known)) return known as Value
    const figure = known as Figure
    if ("text" in figure) return figure.text
    if ("wanted" in figure) throw new StillToCome(figure.wanted)
    return figure.unit ? this.#math.unit(figure.number, figure.unit) : figure.number
  }

  /** Refuses what is no finite number; a quotient of like units becomes a plain number. */
  #settled(value: Value): Value {
    if (typeof value === "boolean") return value
    if (typeof value === "string") {
      if (value.length <= mostText) return value
      throw bad(`A text is longer than ${mostText} characters.`)
    }
    if (typeof value === "number") return finite(value)
    if (!this.#math.isUnit(value)) throw bad("The expression gives something that is no number.")
    finite(value.toJSON().value as number)
    const dimensions = value.dimensions as unknown as readonly number[]
    if (dimensions.some((power) => Math.abs(power ?? 0) > mostPower))
      throw bad(`A unit has a power above ${mostPower}.`)
    return dimensions.some((power) => (power ?? 0) !== 0) ? value : finite(plain(value))
  }
}

interface Parts {
  readonly content: MathNode
  readonly value: unknown
  readonly name: string
  readonly fn: unknown
  readonly op: string
  readonly args: readonly MathNode[]
  readonly condition: MathNode
  readonly trueExpr: MathNode
  readonly falseExpr: MathNode
  readonly object: MathNode
  readonly index: { readonly dotNotation: boolean; readonly dimensions: readonly MathNode[] }
}

function constantOf(value: unknown): Value {
  if (typeof value === "number" || typeof value === "string" || typeof value === "boolean")
    return value
  throw bad("The expression holds something that is neither a number nor a text.")
}

/** The number a unit without dimension stands for: mathjs keeps it in base units. */
function plain(value: { value: unknown }): number {
  return Number(value.value)
}

function attempt(work: () => Value): Value {
  try {
    return work()
  } catch {
    throw bad("The units do not go together.", "Lengths add to lengths and numbers to numbers.")
  }
}
