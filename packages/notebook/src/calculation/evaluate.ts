// One expression to one value, with the name it is given if any. mathjs reads it, walk.ts works it out.

import type { MathNode } from "mathjs"
import { bad } from "./faults.ts"
import type { MathTools, Value } from "./math.ts"
import type { Names } from "./names-in-reach.ts"
import { Walk } from "./walk.ts"

/** Longer formulas are better split into named steps. */
const mostCharacters = 300

export interface Expression {
  /** The name it is given with `name = expression`, null otherwise. */
  readonly name: string | null
  readonly value: Value
}

/** @throws RoundwrightError `bad-expression`, `unknown-name`, `no-value`; StillToCome */
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

/** The name a line would give its value, also where there is no value yet. */
export function nameGiven(source: string): string | null {
  return /^([A-Za-z]\w*)\s*=(?!=)/.exec(source)?.[1] ?? null
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
