// `roundwright reckon '14 stitches = 4 in' '50 in'`: any figures of makers reckoned through one another.

import { reckon } from "@roundwright/matching"
import { printFigures } from "./figures-out.ts"
import type { Surroundings } from "./surroundings.ts"

export interface ReckonRequest {
  readonly statements: readonly string[]
  readonly repeat?: string | undefined
  readonly json: boolean
}

/** @returns 0 @throws RoundwrightError for what is no statement of figures */
export function runReckon(
  { statements, repeat, json }: ReckonRequest,
  around: Surroundings,
): number {
  return printFigures(reckon(statements, repeat), json, around)
}
