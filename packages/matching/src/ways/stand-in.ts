// A plain piece that stands in where a maker tells sizes alone: so many rounds of dc, squared, hexagonal or round. Proportions
// of one round to the next are much alike in plain pieces, and the size told scales it.

import { buildDisc, buildPolygon, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"

export const standInShapes = ["square", "hexagon", "circle", "granny"] as const
export type StandInShape = (typeof standInShapes)[number]

/** A blanket of one granny has seldom more. */
const mostRounds = 150

/** A pattern of that many rounds that lies flat. @throws RoundwrightError `bad-count` */
export function standIn(rounds: number, shape: Exclude<StandInShape, "granny"> = "square"): Motif {
  checkRounds(rounds)
  if (shape === "circle")
    return buildDisc(
      { basic: "dc" },
      Array.from({ length: rounds }, (_, k) => 12 * (k + 1)),
    )
  // Four more stitches a corner and round for a square, two for a hexagon.
  return shape === "square"
    ? buildPolygon({ basic: "dc" }, 4, rounds, 3, 5)
    : buildPolygon({ basic: "dc" }, 6, rounds, 2, 3)
}

/** A round of dc is about twice as deep as a stitch is wide. */
const usualRoundMm = 14

/** How many rounds a plain piece of that size may have, where it is not told: in worsted and 5 mm. */
export function likelyRounds(acrossMm: number): number {
  return Math.min(mostRounds, Math.max(2, Math.round(acrossMm / (2 * usualRoundMm))))
}

/** The granny square of the trade, 3 dc to a group, a chain between groups and two in the corners. */
export function grannyText(rounds: number): string {
  checkRounds(rounds)
  const lines = [
    "Terms: US",
    "",
    "Rnd 1: ch 3 (counts as dc), 2 dc in magic ring, *ch 2, 3 dc in ring; rep from * 2 more times, ch 2; join.",
  ]
  for (let round = 2; round <= rounds; round += 1) {
    const side = round === 2 ? "" : ` (ch 1, 3 dc in next ch-1 sp) ${round - 2} times,`
    lines.push(
      `Rnd ${round}: join in any ch-2 sp, *(3 dc, ch 2, 3 dc) in ch-2 sp,${side} ch 1; rep from * around; join.`,
    )
  }
  return `${lines.join("\n")}\n`
}

/** @throws RoundwrightError `bad-count` */
export function checkRounds(rounds: number): void {
  if (!Number.isInteger(rounds) || rounds < 1 || rounds > mostRounds)
    throw new RoundwrightError("bad-count", `A piece of ${rounds} rounds cannot stand in.`, {
      hint: `Give 1 to ${mostRounds} rounds.`,
      numbers: { rounds },
    })
}
