// Lists that go into one place, told behind them: what of the steps before belongs to the list.

import type { Place, Step } from "../base/tree.ts"
import { isUnplaced } from "./clauses.ts"

/** The unplaced stitches and chains just told, and these, all into one place. */
export function gathered(
  before: readonly Step[],
  inner: readonly Step[],
  place: Place,
): readonly Step[] | null {
  let from = before.length
  while (from > 0 && (isUnplaced(before[from - 1]) || isBareSlip(before[from - 1]))) from -= 1
  // The chain that starts the round stands where it stands.
  if (from === 0 && before[0]?.do === "chain") from = 1
  if (from === 1 && before[0]?.do === "chain" && before[1]?.do === "chain") from = 2
  if (from >= before.length) return null
  const steps = [...before.slice(from), ...inner]
  return [
    ...before.slice(0, from),
    { start: steps[0]!.start, end: inner[inner.length - 1]!.end, do: "group", steps, place },
  ]
}

/** "ss, sc, dc, sc, ss in next loop": slip stitches belong to the list. */
function isBareSlip(step: Step | undefined): boolean {
  return step?.do === "slip" && step.place === null && step.count === 1
}

export function isOneOrEach(place: Place): boolean {
  if (place.at === "next")
    return place.count === 1 || place.pick !== undefined || place.each === true
  return place.at === "each" || place.at === "same" || place.at === "ring"
}
