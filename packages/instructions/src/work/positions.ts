// Which edge a place is on: that of the round before, or of an earlier one that is named.

import type { Noun, Place, Span } from "../base/tree.ts"
import { groupsInOnePlace } from "../edge/edge.ts"
import { meaningOf } from "../edge/meanings.ts"
import { kindFits } from "../edge/site.ts"
import type { Position } from "./round-parts.ts"
import type { RoundWork } from "./round-work.ts"
import { noPlace } from "./shortages.ts"

/** The position a place speaks of: the edge below, or an earlier round named. */
export function positionFor(work: RoundWork, place: Place): Position {
  const named = place.ofRound !== undefined ? indexOfRound(work, place.ofRound, place) : null
  // "next skipped st in rnd 3", said of the round just made: one that it has left in the round under it.
  const skipped =
    named !== null &&
    named === work.index - 1 &&
    named > 0 &&
    place.at === "next" &&
    place.noun.unworked === true
  if (skipped && !work.shared.rounds[named]!.turned) return work.positionOn(named - 1)
  if (named !== null) return work.positionOn(named)
  // "..., sc in next unworked st" goes on where the first of them was.
  const earlier = work.index - 2
  if (place.at === "next" && place.noun.unworked && work.others.has(earlier))
    return work.positionOn(earlier)
  if (place.below !== undefined) {
    const index = work.index - 1 - (place.below - 1)
    if (index < 0) throw noPlace(place, "There is no round that far below.")
    return work.positionOn(index)
  }
  if (work.modeRound !== undefined && place.at !== "same") {
    const index = work.shared.rounds.findIndex((round) => round.number === work.modeRound)
    if (index >= 0 && index < work.index) return work.positionOn(index)
  }
  const over =
    place.over === true && place.at === "next" && place.noun.what === "stitch" && place.count === 1
  if (over && work.index >= 2) {
    const noun = place.noun
    const below = meaningOf(work.main.edge, noun)
    const missing = noun.kind !== undefined && (below.stretched !== null || !below.exists)
    if (missing) {
      for (let index = work.index - 2; index >= Math.max(0, work.index - 3); index--) {
        const position = work.positionOn(index)
        if (
          meaningOf(position.edge, noun).stretched === null &&
          meaningOf(position.edge, noun).exists
        )
          return position
        work.others.delete(index)
      }
    } else {
      const order = overPetals(work, noun)
        ? (["earlier", "below"] as const)
        : (["below", "earlier"] as const)
      if (work.choices.take("over-earlier", order) === "earlier")
        return work.positionOn(work.index - 2)
    }
  }
  return work.main
}

/** The round before is nothing but petals, one to each stitch of that name under them: "over" passes behind them. */
function overPetals(work: RoundWork, noun: Noun): boolean {
  const { edge } = work.main
  const under = work.shared.rounds[work.index - 2]
  const wanted = noun.kind
  if (!under || !wanted || edge.elements.some((element) => element.type !== "stitch")) return false
  const petals = groupsInOnePlace(edge, true)
  if (petals.some((petal) => petal.cells.length < 2)) return false
  return under.elements.filter((element) => kindFits(element, wanted)).length === petals.length
}

function indexOfRound(work: RoundWork, number: number, span: Span): number {
  const index = work.shared.rounds.findIndex((round) => round.number === number)
  if (index < 0 || index >= work.index)
    throw noPlace(span, `Round ${number} is not there to work into.`)
  return index
}
