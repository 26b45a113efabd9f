// A pattern whose shape is solved as an elastic net: what its check then says, and the piece for the charts
// that draw it.

import {
  type Check,
  type CheckResult,
  type Effort,
  examinePattern,
  withRemedies,
} from "@roundwright/assessment"
import type { LaidOutPiece } from "@roundwright/charts"
import type { CheckedPattern } from "./result.ts"

/** What laying out changes in the result of a check. */
export type ShapeFound = Pick<
  CheckResult,
  "laidOut" | "rounds" | "ledger" | "notes" | "remedies" | "exitStatus"
>

/** What of a result laying out has a part in: the verdict, the piece's and each round's, and what follows from it. */
export function shapeFound(result: CheckResult): ShapeFound {
  const { laidOut, rounds, ledger, notes, remedies, exitStatus } = result
  return { laidOut, rounds, ledger, notes, remedies, exitStatus }
}

export interface LaidOutPattern {
  readonly found: ShapeFound
  /** Null where only what was found is remembered, and not the shape itself. */
  readonly piece: LaidOutPiece | null
  /** All that the check found, for a sheet; absent where it was not checked now. */
  readonly check?: Check
}

/** Takes up to some seconds. Never throws on anything a text can hold. @param text as it is read */
export function layOutPattern(text: string): LaidOutPattern {
  return laidOutPattern(examinePattern(text, { shape: "net" }))
}

/**
 * The same in two parts, for who shares the thread with a reader and looks after them in between.
 * @param rest gives false when it is not wanted any more
 */
export async function layOutInParts(
  text: string,
  effort: Effort,
  rest: () => Promise<boolean>,
): Promise<LaidOutPattern | null> {
  const check = examinePattern(text, { shape: "net", effort, remedies: false })
  return (await rest()) ? laidOutPattern({ ...check, result: withRemedies(check) }) : null
}

function laidOutPattern(check: Check): LaidOutPattern {
  const { result, reading, shape } = check
  return {
    found: shapeFound(result),
    piece: { motif: reading.motif, shape },
    check,
  }
}

/** The pattern with what was found; its problems stay where they were placed. */
export function withShape(pattern: CheckedPattern, { found }: LaidOutPattern): CheckedPattern {
  return { ...pattern, result: { ...pattern.result, ...found }, unlaid: false }
}
