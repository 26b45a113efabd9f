// What can be wrong with an expression, as errors with a hint.

import { RoundwrightError } from "@roundwright/numerics"
import { functionList } from "./functions.ts"
import type { Wanted } from "./names.ts"
import type { Names } from "./names-in-reach.ts"

/** @throws RoundwrightError `no-value` */
export function finite(value: number): number {
  if (typeof value === "number" && Number.isFinite(value)) return value
  throw new RoundwrightError("no-value", "The expression has no finite value.", {
    hint: "Look for a division by zero, a root of a negative number or a very large power.",
  })
}

export function unknownName(name: string, names: Names): RoundwrightError {
  return new RoundwrightError("unknown-name", `Nothing here is called "${clip(name)}".`, {
    hint: names.hint(name),
  })
}

export function bad(message: string, hint = `Functions are ${functionList}.`): RoundwrightError {
  return new RoundwrightError("bad-expression", message, { hint })
}

/** A figure was used that is not known yet: no fault of the writer's. */
export class StillToCome extends Error {
  constructor(readonly wanted: Wanted["wanted"]) {
    super("still to come")
  }
}

/** A name short enough for a message. */
export function clip(name: string): string {
  return name.length > 60 ? `${name.slice(0, 60)}...` : name
}
