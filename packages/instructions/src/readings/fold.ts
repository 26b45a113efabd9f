// The fold of a motif: how many times what is worked once comes around. From round to round it stays or doubles, so it
// tells how often a round is repeated whose own words do not.

import { type Anchor, anchorKey, type Element, type Round } from "@roundwright/motif"

/** Fewer turns alike may be chance. */
const leastFold = 3

/**
 * How often the round carries itself into itself when turned; of a round all alike, or of one not quite regular, the
 * fold of the rounds before it.
 */
export function foldOf(round: Round, before: number | null): number | null {
  const signs = signsOf(round.elements)
  const turns = turnsAlike(signs)
  if (turns < leastFold) return before
  const plain = turns === signs.length
  return plain && before !== null && turns % before === 0 ? before : turns
}

/** What each element is, and whether it shares its place with the one before it. */
function signsOf(elements: readonly Element[]): string[] {
  let before = elements[elements.length - 1]
  return elements.map((element) => {
    const shared = inOnePlace(before, element) ? "+" : ""
    before = element
    return element.type === "stitch" ? `${element.kind.basic}${shared}` : `${element.chains}`
  })
}

function inOnePlace(a: Element | undefined, b: Element): boolean {
  if (a?.type !== "stitch" || b.type !== "stitch") return false
  return (
    a.anchors.length === b.anchors.length && a.anchors.every((one, k) => isSame(one, b.anchors[k]!))
  )
}

function isSame(a: Anchor, b: Anchor): boolean {
  if (a.at !== b.at) return false
  if (a.at === "centre" || b.at === "centre") return anchorKey(a) === anchorKey(b)
  return a.element === b.element && a.round === b.round && anchorKey(a) === anchorKey(b)
}

function turnsAlike(signs: readonly string[]): number {
  const { length } = signs
  for (let period = 1; period < length; period++)
    if (length % period === 0 && signs.every((sign, k) => sign === signs[(k + period) % length]))
      return length / period
  return 1
}

/** Sets of stitches that share a place. */
export function sharedPlaces({ elements }: Round): number {
  let sets = 0
  signsOf(elements).forEach((sign, k, signs) => {
    if (sign.endsWith("+") && !signs[(k || signs.length) - 1]!.endsWith("+")) sets += 1
  })
  return sets
}
