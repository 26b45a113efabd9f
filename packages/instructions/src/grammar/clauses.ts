// Making clauses: the one or several readings a production gives.

import type { Span, Step, Times } from "../base/tree.ts"
import type { Chart, Clause } from "./chart.ts"
import type { Cursor } from "./cursor.ts"

/** A clause that ends where the cursor stands. */
export function clause(
  cursor: Cursor,
  steps: Clause["steps"],
  cost = 0,
  extra: Pick<Clause, "totals" | "remarks" | "names"> = {},
): Clause {
  return { end: cursor.at, cost, steps, ...extra }
}

/** A production of one reading: its steps, or null where it does not read. */
export function reads(
  read: (cursor: Cursor) => readonly Step[] | null,
  cost = 0,
): (chart: Chart, at: number) => readonly Clause[] {
  return (chart, at) => {
    const cursor = chart.from(at)
    const steps = read(cursor)
    return steps ? [clause(cursor, steps, cost)] : []
  }
}

/** True where work has been told before: a stitch, a chain, a group, a repeat. */
export function hasWork(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do !== "attach" &&
      step.do !== "slip" &&
      step.do !== "mode" &&
      step.do !== "turn" &&
      step.do !== "ring" &&
      step.do !== "note-counts",
  )
}

/** A stitch or a run of chains with no place of its own. */
export function isUnplaced(step: Step | undefined): boolean {
  if (step?.do === "chain") return !step.place && !step.between
  return (
    step?.do === "picot" ||
    (step?.do === "work" &&
      step.place === null &&
      !step.even &&
      !step.legs &&
      step.between === undefined)
  )
}

/** A repeat with no ending of its own. */
export function repeatOf(
  span: Span,
  body: readonly Step[],
  times: Times,
): Extract<Step, { do: "repeat" }> {
  return { ...span, do: "repeat", body, last: null, ending: null, times }
}
