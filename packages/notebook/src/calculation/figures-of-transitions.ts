// The names a calculation may use for what squaring one circle after another came to.
//
// Of all: circles (how many were squared), smallest and largest (their counts), straight (how many pass for straight),
// limit (the bow below which they do), worst_bow and mean_bow (shares of the side), worst_circle. Of the circle of n: bow_n (a share), bow_length_n, side_n, angle_n.

import type { Transition, TransitionsRequest, TransitionsResult } from "../transitions.ts"
import { straightBow } from "../transitions.ts"
import type { Figure } from "./names.ts"

/** @param found null while the search was not made: every name is then still to come */
export function figuresOfTransitions(
  request: TransitionsRequest,
  found: TransitionsResult | null,
): ReadonlyMap<string, Figure> {
  if (!found) return new Map(allNames(request).map((name) => [name, { wanted: { pattern: null } }]))
  const names = new Map<string, Figure>()
  const { transitions } = found
  const bows = transitions.map(({ bow }) => Math.abs(bow))
  names.set("circles", { number: transitions.length })
  names.set("smallest", { number: Math.min(...request.counts) })
  names.set("largest", { number: Math.max(...request.counts) })
  names.set("limit", { number: straightBow })
  names.set("straight", { number: bows.filter((bow) => bow < straightBow).length })
  const worst = transitions.reduce<Transition | null>(
    (most, one) => (most && Math.abs(most.bow) >= Math.abs(one.bow) ? most : one),
    null,
  )
  if (worst) {
    names.set("worst_bow", { number: Math.abs(worst.bow) })
    names.set("worst_circle", { number: worst.count })
    names.set("mean_bow", { number: bows.reduce((sum, bow) => sum + bow, 0) / bows.length })
  }
  for (const { count, bow, bowMm, sideMm, cornerAngleDeg } of transitions) {
    names.set(`bow_${count}`, { number: bow })
    names.set(`bow_length_${count}`, { number: bowMm, unit: "mm" })
    names.set(`side_${count}`, { number: sideMm, unit: "mm" })
    names.set(`angle_${count}`, { number: cornerAngleDeg, unit: "deg" })
  }
  return names
}

function allNames({ counts }: TransitionsRequest): string[] {
  return [
    ...["circles", "smallest", "largest", "straight", "limit"],
    ...["worst_bow", "worst_circle", "mean_bow"],
    ...counts.flatMap((count) =>
      ["bow", "bow_length", "side", "angle"].map((name) => `${name}_${count}`),
    ),
  ]
}
