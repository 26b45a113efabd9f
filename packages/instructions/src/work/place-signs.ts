// What the edge round the hook shows of the place asked for.

import type { Noun, Step } from "../base/tree.ts"
import { cellUnder } from "../edge/cell-under.ts"
import { type Edge, groupsInOnePlace } from "../edge/edge.ts"
import { meaningOf } from "../edge/meanings.ts"
import type { Site } from "../edge/site.ts"
import { findSite } from "../edge/sites.ts"
import { namesGaps } from "../edge/spaces-named.ts"
import type { Next } from "./picked-places.ts"
import type { Position } from "./round-parts.ts"
import type { RoundWork } from "./round-work.ts"

/**
 * "dc in next st 2 rnds below": the stitch under the next one, which it stands in front of and so takes
 * up. Where the text says itself what is skipped, the earlier round is gone along on its own.
 */
export function columnBelow(work: RoundWork, position: Position, place: Next): Site | null {
  if (
    position === work.main ||
    place.count !== 1 ||
    place.pick !== undefined ||
    skips(work.allSteps)
  )
    return null
  if (place.noun.what !== "stitch") return null
  const covered = work.next(work.main, { what: "stitch" }, place)
  if (!covered) return null
  const past = cellUnder(work.shared.rounds, position.edge, covered.anchor)
  const at = past - 1
  if (position.edge.cells[at]?.type !== "stitch") return null
  work.use(work.main, covered, "worked")
  work.main.at = covered.to
  position.at = past
  return { from: at, to: at + 1, anchor: position.edge.anchorAt(at, false) }
}

function skips(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do === "skip" ||
      (step.do === "repeat" && skips(step.body)) ||
      (step.do === "group" && skips(step.steps)),
  )
}

/** "sl st in next 3 ch, sc in loop": the loop whose chains the hook has just gone along; the round begins in it. */
export function runUnderHook(work: RoundWork, noun: Noun): Site | null {
  const { startSite, main } = work
  if (noun.what !== "space" || work.elements.length > 0 || startSite?.anchor.at !== "chain")
    return null
  const { edge } = main
  let from = startSite.from
  while (
    from > startSite.from - edge.size &&
    !edge.startsRun(((from % edge.size) + edge.size) % edge.size)
  )
    from -= 1
  const index = ((from % edge.size) + edge.size) % edge.size
  const found = { from, to: from + edge.widths[index]!, anchor: edge.anchorAt(index, true) }
  const meaning = meaningOf(edge, noun)
  if (!meaning.exists || !findSite(edge, meaning.noun, from, found.to, from, null)) return null
  work.startSite = found
  work.startTaken = false
  main.base = from
  main.at = found.to
  return found
}

/** "Sl st in next loop, ch 1, 5 dc in loop": the loop that the slip stitch just made stands in. */
export function spaceSlippedInto(work: RoundWork, noun: Noun): Site | null {
  if (noun.what !== "space" || work.current?.anchor.at !== "space") return null
  const last = work.elements.findLast(({ type }) => type === "stitch")
  if (last?.type !== "stitch" || last.kind.basic !== "sl st" || last.kind.gathered) return null
  const { from, to } = work.current
  const meaning = meaningOf(work.main.edge, noun)
  return meaning.exists && findSite(work.main.edge, meaning.noun, from, to, from, null)
    ? work.current
    : null
}

/** Along a chain and back: "3 sc in last ch" when the side is used up, "2 sc in first ch" when all of it is. */
export function atEndOfChain(work: RoundWork, position: Position, place: Next): Site | null {
  if (position.edge.round >= 0 || position !== work.main || place.noun.what !== "chain") return null
  if (place.order === "last" && work.firstSide !== null && position.at === work.firstSide)
    return work.current
  if (place.order !== "first" || position.at < position.edge.size) return null
  return { from: 0, to: 1, anchor: position.edge.anchorAt(0, false) }
}

/** Every stitch is one of a petal: three or more in one place. */
export function petalsTouch(edge: Edge): boolean {
  return edge.keep("petals-touch", () => {
    const petals = groupsInOnePlace(edge, true).filter(({ cells }) => cells.length > 2)
    const inside = petals.reduce((sum, { cells }) => sum + cells.length, 0)
    return petals.length > 1 && inside === edge.cells.filter(({ type }) => type === "stitch").length
  })
}

/** "Sl st in next sp, *shell over shell": slip stitches have led into the middle of a group, and nothing stands there yet. */
export function beginsInGroup(work: RoundWork, position: Position): boolean {
  if (position !== work.main || work.startSite?.anchor.at !== "space" || work.startTaken)
    return false
  return (
    work.used.some(({ use }) => use === "slipped") &&
    (work.elements.length === 0 || onlyStartMade(work))
  )
}

/** Nothing but the starting chain has been made yet. */
export function onlyStartMade(work: RoundWork): boolean {
  return (
    work.elements.length > 0 &&
    work.elements.every(
      (element) =>
        element.type === "chain" ||
        (element.type === "stitch" && element.madeOfChains !== undefined),
    )
  )
}

/** "around post of dc" where such a dc closed the last space of the round before: that space. */
export function isClosingStitch(work: RoundWork, noun: Noun): boolean {
  const last = work.shared.rounds[work.index - 1]?.elements.at(-1)
  return (
    work.startPassed &&
    !work.startTaken &&
    work.startSite?.anchor.at === "space" &&
    last?.type === "chain" &&
    last.closedWith !== undefined &&
    last.closedWith.basic === noun.kind?.basic
  )
}

/** "dc in last dc" where the round before was closed by that dc: the end of its last space. */
export function endsInStart(work: RoundWork, place: Next): boolean {
  return (
    work.startPassed &&
    work.startSite !== null &&
    !work.startTaken &&
    place.noun.what === "stitch" &&
    work.startSite.anchor.at === "space"
  )
}

/** "3 dc in last sp" where the round has named its spaces "sp between groups" before: the nearest of either. */
export function gapMeant(work: RoundWork, position: Position, place: Next): Site | null {
  const { noun } = place
  if (noun.what !== "space" || noun.size !== undefined || position !== work.main) return null
  if (noun.corner || noun.side || noun.middle || noun.small || !namesGaps(work.allSteps))
    return null
  const gap = work.next(position, { what: "gap", betweenGroups: true }, place)
  const space = work.next(position, noun, place)
  return gap && (!space || gap.from < space.from) ? gap : null
}
