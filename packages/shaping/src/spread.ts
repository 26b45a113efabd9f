// Increases spread over a round in repeats: where each one stands, staggered from round to round so that the
// disc stays round, or stacked so that it grows corners.

import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"

/** How increases stand over those of the round before. */
export type Increases = "staggered" | "stacked"

/**
 * Shifts of successive rounds in shares of the distance between increases: round 2 begins with a whole repeat, round 3 with
 * half of one, and so on by turns, which is a rule that can be kept in mind.
 */
const shifts = [0, 1 / 2] as const

/**
 * One more round of a disc: `count` stitches over the `below` of the round before, alike in every repeat.
 * @param repeats divides both counts
 */
export function spreadRound(
  motif: Motif,
  kind: StitchKind,
  count: number,
  repeats: number,
  increases: Increases,
): Round {
  const round = motif.rounds.length
  const number = round + 1
  if (round === 0) {
    const anchors: Anchor[] = [{ at: "centre" }]
    const elements = Array.from(
      { length: count },
      (): Element => ({ type: "stitch", kind, anchors }),
    )
    return { number, elements, turned: false, closing: "joined" }
  }
  const below = motif.rounds[round - 1]!.elements.length
  const [from, to] = [below / repeats, count / repeats]
  const shift = increases === "stacked" ? 0 : shifts[(round - 1) % shifts.length]!
  const elements: Element[] = []
  for (let repeat = 0; repeat < repeats; repeat++)
    for (const [place, tops, legs] of stepsOver(from, to, shift)) {
      const first = repeat * from + place
      for (let top = 0; top < tops; top++) {
        const anchors = Array.from(
          { length: legs },
          (_, leg): Anchor => ({
            at: "stitch",
            round: round - 1,
            element: first + leg,
          }),
        )
        const own: StitchKind = legs > 1 ? { ...kind, gathered: { how: "together", legs } } : kind
        elements.push({ type: "stitch", kind: own, anchors })
      }
    }
  return { number, elements, turned: false, closing: "joined" }
}

/** Place, stitches worked into it, places taken together: over one repeat, increases or decreases evenly spread. */
function stepsOver(from: number, to: number, shift: number): [number, number, number][] {
  const change = to - from
  const steps: [number, number, number][] = []
  if (change >= 0) {
    const base = Math.floor(change / from)
    const rest = change % from
    for (let place = 0; place < from; place++) {
      // The last place of each stretch carries the increase; a shift moves the stretches along.
      const before = Math.floor((place * rest) / from + shift)
      const after = Math.floor(((place + 1) * rest) / from + shift)
      steps.push([place, 1 + base + (after - before), 1])
    }
    return steps
  }
  for (let top = 0; top < to; top++) {
    const first = Math.floor((top * from) / to)
    const next = Math.floor(((top + 1) * from) / to)
    steps.push([first, 1, next - first])
  }
  return steps
}
