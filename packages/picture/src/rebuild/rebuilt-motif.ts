// A motif from the chosen way of each ring, every stitch worked where the counts of the rounds lead it:
// spread evenly over the stitches below, or into the spaces of lace.

import type { Anchor, Centre, Element, Motif, Round } from "@roundwright/motif"
import type { RebuildKind, RoundChoice } from "./seen-ring.ts"

/**
 * @param holeMm radius of the hole in the middle; 0 for a ring drawn shut
 * @returns a motif, and for each choice the index of its last round (-1 while there is none)
 */
export function rebuiltMotif(
  choices: readonly RoundChoice[],
  holeMm = 0,
): { motif: Motif; lastRoundOf: readonly number[] } {
  const rounds: Round[] = []
  const lastRoundOf: number[] = []
  for (const choice of choices) {
    for (const kind of choice.kinds) rounds.push(roundOf(kind, choice, rounds))
    lastRoundOf.push(rounds.length - 1)
  }
  const centre: Centre =
    holeMm > 0 ? { kind: "solid-ring", diameterMm: 2 * holeMm } : { kind: "adjustable-ring" }
  return { motif: { centre, rounds }, lastRoundOf }
}

function roundOf(
  kind: RebuildKind,
  { count, chains }: RoundChoice,
  below: readonly Round[],
): Round {
  const places = placesOf(below)
  const elements: Element[] = []
  for (let i = 0; i < count; i++) {
    elements.push({ type: "stitch", kind: { basic: kind }, anchors: anchorsOf(i, count, places) })
    if (chains > 0) elements.push({ type: "chain", chains })
  }
  return { number: below.length + 1, elements, turned: false, closing: "joined" }
}

/** Places of the round below that are worked into: its spaces where it is lace, else its stitches. */
function placesOf(below: readonly Round[]): Anchor[] {
  const round = below.length - 1
  if (round < 0) return []
  const { elements } = below[round]!
  const lace = elements.some(({ type }) => type === "chain")
  return elements.flatMap((element, index): Anchor[] =>
    lace
      ? element.type === "chain"
        ? [{ at: "space", round, element: index }]
        : []
      : [{ at: "stitch", round, element: index }],
  )
}

function anchorsOf(i: number, count: number, places: readonly Anchor[]): Anchor[] {
  if (places.length === 0) return [{ at: "centre" }]
  // Evenly over the places below: increases where there are more stitches, places skipped where there are fewer.
  return [places[Math.floor((i * places.length) / count)]!]
}
