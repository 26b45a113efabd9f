// How many rounds a wanted side takes: squared in as few rounds as come out straight, then plain rounds, each of which
// moves every side out by its height h and so makes it longer by 2 h tan(pi / k).

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, kindName, sizeOf } from "@roundwright/stitches"
import { usualStitches } from "./palette.ts"
import { squareCircle } from "./square-circle.ts"
import type { SquareOptions } from "./square-options.ts"
import { distanceFromTarget } from "./target.ts"

export interface RoundsForSide {
  readonly rounds: number
  /** Side after that many rounds, and what a plain round more or fewer makes of it, in the gauge's unit. */
  readonly sideMm: number
  readonly plainRoundMm: number
  /** The stitch that plain rounds are taken in, by name. */
  readonly stitch: string
}

const mostRounds = 12
/** Rounds tried until the sides come out straight. */
const mostTried = 3

/**
 * @param sideMm the wanted side, in the gauge's unit
 * @throws RoundwrightError `bad-side` for a side that is none, smaller than one round makes it, or more than 12 rounds away
 */
export function roundsForSide(
  motif: Motif,
  gauge: Gauge,
  options: Omit<SquareOptions, "rounds">,
  sideMm: number,
): RoundsForSide {
  if (!(Number.isFinite(sideMm) && sideMm > 0))
    throw new RoundwrightError("bad-side", `A side cannot be ${sideMm} mm long.`, {
      hint: "Give a length above zero, such as 12cm.",
      numbers: { sideMm },
    })
  const { corners, terms = "US" } = options
  const allowed = options.stitches ?? usualStitches
  const kind = allowed.find((one) => kindName(one) === "dc") ?? allowed.at(-1)!
  const { heightMm } = sizeOf(kind, gauge, { turned: false })
  const plainRoundMm = 2 * heightMm * Math.tan(Math.PI / corners)
  let squared = 0
  let side = 0
  for (let rounds = 1; rounds <= mostTried; rounds++) {
    const [best] = squareCircle(motif, gauge, { ...options, rounds, proposals: 1 })
    squared = best!.motif.rounds.length - motif.rounds.length
    side = best!.shape.sideMm
    if (distanceFromTarget(best!) <= 1 || side + plainRoundMm / 2 > sideMm) break
  }
  const more = Math.round((sideMm - side) / plainRoundMm)
  const rounds = squared + Math.max(0, more)
  if (more < 0 || rounds > mostRounds)
    throw new RoundwrightError(
      "bad-side",
      more < 0
        ? "The piece is larger than that as soon as it is squared."
        : `That takes more than ${mostRounds} rounds.`,
      {
        hint:
          more < 0 ? "Begin on an earlier round." : "Square it first, then go on from the square.",
        numbers: { sideMm },
      },
    )
  return {
    rounds,
    sideMm: side + Math.max(0, more) * plainRoundMm,
    plainRoundMm,
    stitch: kindName(kind, terms),
  }
}
