// Fans: several stitches in one place between much lower ones, as in a shell edging. A fan opens out
// over its foot, so its edge is an arc and may take a shorter way along the round than it is long.

import { type Round, workedPlaces } from "@roundwright/motif"

/** Fewer stitches in one place are an increase or a corner, not a fan (common practice, no source). */
const fewestInFan = 4

/** Neighbours up to this share of its height hold a fan down at its foot. */
const lowNeighbour = 0.55

/** Chord over arc of a half circle, 2 / pi: a fan opens to a half circle before its stitches crowd. */
const chordOfArc = 2 / Math.PI

/**
 * How much shorter than its edge a round's fans can stand, mm; 0 without fans.
 * @param widths top width of every element, mm
 * @param heights height of every element, mm; 0 for chains and picots
 */
export function fanSlack(
  round: Round,
  widths: readonly number[],
  heights: readonly number[],
): { slackMm: number; fans: number } {
  const n = round.elements.length
  let slackMm = 0
  let fans = 0
  for (const { anchor, elements } of workedPlaces(round).values()) {
    if (anchor.at === "centre" || elements.length < fewestInFan) continue
    const first = elements[0]!
    const last = elements.at(-1)!
    if (last - first !== elements.length - 1) continue
    const lowest = Math.min(...elements.map((element) => heights[element]!))
    const before = round.elements[(first - 1 + n) % n]
    const after = round.elements[(last + 1) % n]
    if (before?.type !== "stitch" || after?.type !== "stitch") continue
    const beside = Math.max(heights[(first - 1 + n) % n]!, heights[(last + 1) % n]!)
    if (beside > lowNeighbour * lowest) continue
    const edge = elements.reduce((sum, element) => sum + widths[element]!, 0)
    slackMm += edge * (1 - chordOfArc)
    fans += 1
  }
  return { slackMm, fans }
}
