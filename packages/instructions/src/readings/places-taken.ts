// How much of the round below the words of a repeat take, as far as the words alone tell.

import type { Round } from "@roundwright/motif"
import type { Step } from "../base/tree.ts"

/** Every repeat takes the stitches between one space and the next of the round below, or some such groups whole. */
export function takesWholeGroups(steps: readonly Step[], below: Round | undefined): boolean {
  if (!below) return false
  const runs: number[] = []
  let run = 0
  for (const { type } of below.elements) {
    if (type === "stitch") run += 1
    else if (run > 0) {
      runs.push(run)
      run = 0
    }
  }
  const first = runs[0]
  if (first === undefined || runs.length < 3) return false
  // The last run goes on in the first one.
  if (run > 0) runs[0] = first + run
  const group = runs[1]!
  if (runs.some((length) => length !== group)) return false
  return steps.some((step) => {
    // A stitch said to be skipped may be a chain.
    if (
      step.do !== "repeat" ||
      step.times.kind !== "until" ||
      step.body.some((part) => part.do === "skip")
    )
      return false
    const taken = placesTaken(step.body)
    return taken >= group && taken % group === 0
  })
}

/** Places named one after the other, those of inner repeats with them. */
export function placesTaken(steps: readonly Step[]): number {
  let taken = 0
  for (const step of steps) {
    if (step.do === "repeat" && step.times.kind === "total")
      taken += placesTaken(step.body) * step.times.count
    else if (
      (step.do === "work" || step.do === "group" || step.do === "skip") &&
      step.place?.at === "next" &&
      step.place.noun.what === "stitch"
    )
      taken += step.place.count
  }
  return taken
}
