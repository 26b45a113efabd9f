// Places told by number that mean "the next" when they are repeated: "1 dc in first st, 2 dc in second st; rep".

import type { Place, Step } from "../base/tree.ts"

/** "*1 dc in first st, 2 dc in second st; rep from *": inside a repeat the first, second, third are the next in turn. */
export function inTurn(steps: readonly Step[]): readonly Step[] {
  let turn = 0
  const changed = steps.map((step): Step => {
    if (step.do !== "work" || step.place?.at !== "next" || step.place.noun.what !== "stitch")
      return step
    const { place } = step
    const plain: Place = {
      start: place.start,
      end: place.end,
      at: "next",
      noun: place.noun,
      count: 1,
    }
    const first = place.order === "first" && place.count === 1 && place.pick === undefined
    if (first ? turn !== 0 : turn === 0 || place.pick !== turn + 1 || place.count !== turn + 1)
      return step
    turn += 1
    return { ...step, place: plain }
  })
  return turn >= 2 ? changed : steps
}

/** "in first loop", repeated: each time the next of them. */
export function inTurnPlace(place: Place): Place {
  if (place.at !== "next" || place.order !== "first" || place.pick !== undefined) return place
  const { order: _order, ...next } = place
  return next
}

/** "in first sp (...), in next sp (...)", repeated: where the list begins is each time the next. */
export function eachInTurn(steps: readonly Step[]): readonly Step[] {
  const [first, ...others] = steps.flatMap((step) =>
    "place" in step && step.place ? [step.place] : [],
  )
  if (!first || others.some((place) => place.at === "next" && place.order === "first")) return steps
  return steps.map((step) =>
    (step.do === "work" || step.do === "group") && step.place
      ? { ...step, place: inTurnPlace(step.place) }
      : step,
  )
}
