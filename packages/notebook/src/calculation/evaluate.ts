// One expression to one value. mathjs reads it; this walks the tree it gives and knows a short list
// of node kinds, operators, functions, constants and units. Anything else is refused, so that there
// is nothing to import, assign, index or call but what is named here, and the work is bounded by the
// length of the expression.

import { RoundwrightError } from "@roundwright/numerics"
import type { MathNode } from "mathjs"
import { applyFunction, functionList } from "./functions.ts"
import type { MathFunction, MathTools, Value } from "./math.ts"
import type { Figure } from "./names.ts"

/** Longer formulas are better split into named steps. */
const mostCharacters = 300

/** Longest text an expression may hold or give. */
const mostText = 200

/** Where a name is looked up: first what the notebook calculated, then the patterns. */
export interface Names {
  /** Values of earlier lines, and the figures of the pattern a cell is about. */
  plain(name: string): Value | Figure | undefined
  /** The figures of a pattern by its name. */
  pattern(name: string): ReadonlyMap<string, Figure> | undefined
  /** A sentence about which names exist, for a hint. */
  hint(name: string): string
}

export interface Expression {
  /** The name it is given with `name = expression`, null otherwise. */
  readonly name: string | null
  readonly value: Value
}

/** @throws RoundwrightError `bad-expression`, `unknown-name`, `no-value` */
export function evaluate(source: string, names: Names, math: MathTools): Expression {
  if (source.length > mostCharacters)
    throw bad(`The expression has ${source.length} characters, more than ${mostCharacters}.`)
  const node = parse(source, math)
  const walk = new Walk(names, math)
  if (node.type !== "AssignmentNode") return { name: null, value: walk.value(node) }
  const { object, index, value } = node as unknown as {
    object: MathNode & { name?: string }
    index: unknown
    value: MathNode
  }
  if (index || object.type !== "SymbolNode") throw bad("Only a plain name can be given a value.")
  return { name: object.name!, value: walk.value(value) }
}

function parse(source: string, math: MathTools): MathNode {
  try {
    return math.parse(source)
  } catch (error) {
    if (error instanceof RangeError) throw bad("The expression is nested too deep.")
    const at = (error as { char?: number }).char
    throw bad(
      at === undefined
        ? "The expression cannot be read."
        : `The expression cannot be read at its character ${at}.`,
    )
  }
}

const operators: ReadonlySet<string> = new Set([
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
])

const constants: ReadonlyMap<string, number> = new Map([
  ["pi", Math.PI],
  ["tau", 2 * Math.PI],
])

const units: ReadonlySet<string> = new Set(
  "mm cm m inch inches ft foot feet yard yards g kg deg rad scwidth scwidths".split(" "),
)

class Walk {
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
    throw unknown(name, this.#names)
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
    if (figure === undefined) throw unknown(`${pattern}.${member}`, this.#names)
    return this.#worth(figure)
  }

  #worth(known: Value | Figure): Value {
    if (typeof known !== "object" || this.#math.isUnit(known)) return known as Value
    const figure = known as Figure
    if ("text" in figure) return figure.text
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

/** Areas and volumes and what comes of dividing them; more is a slip of the pen. */
const mostPower = 6

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

function finite(value: number): number {
  if (typeof value === "number" && Number.isFinite(value)) return value
  throw new RoundwrightError("no-value", "The expression has no finite value.", {
    hint: "Look for a division by zero, a root of a negative number or a very large power.",
  })
}

function unknown(name: string, names: Names): RoundwrightError {
  return new RoundwrightError("unknown-name", `Nothing here is called "${clip(name)}".`, {
    hint: names.hint(name),
  })
}

function bad(message: string, hint = `Functions are ${functionList}.`): RoundwrightError {
  return new RoundwrightError("bad-expression", message, { hint })
}

function clip(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}...` : name
}
