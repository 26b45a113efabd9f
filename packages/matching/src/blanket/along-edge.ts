// Small pieces along the edge of a large one: how many fit, how large each must be for a wished number, what a frame all
// round takes. In any one unit: lengths, or groups of grannies (one of n rounds has n groups on a side).

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { meetingOf } from "./mixed-blocks.ts"

export interface AlongEdge {
  readonly edge: number
  readonly piece: number | null
  /** Whole pieces of that size along the edge. */
  readonly fits: number | null
  /** Of the number asked for, or of those that fit: how large each must be. */
  readonly along: number
  readonly each: number
  /** What is missing to the edge, in its unit; for each join between them too. */
  readonly missing: number | null
  readonly perJoin: number | null
  /** Pieces of a frame round a square, corners filled. */
  readonly frame: number
  readonly text: string
}

/** A piece that is so much too large still goes in with ease. */
const ease = 0.02

/** @param unit how figures are told @throws RoundwrightError `not-positive`, `nothing-told`, `too-small` */
export function alongEdge(
  edge: number,
  piece: number | null,
  wanted: number | null,
  unit: (value: number) => string,
): AlongEdge {
  requirePositive(edge, "The edge")
  if (piece === null && wanted === null)
    throw new RoundwrightError(
      "nothing-told",
      "Neither the size of a piece nor how many go along the edge is told.",
      {
        hint: "Give one of them, such as --piece '8.5 in' or --along 3.",
      },
    )
  const fits =
    piece === null ? null : Math.floor(edge / (requirePositive(piece, "A piece") * (1 - ease)))
  const along = wanted ?? fits!
  if (along < 1)
    throw new RoundwrightError("too-small", "The edge is shorter than one piece.", {
      hint: "Check the units.",
      numbers: { edge, piece: piece ?? 0 },
    })
  const each = edge / along
  const missing = piece === null ? null : edge - along * piece
  const perJoin = missing === null || along < 2 ? null : missing / (along - 1)
  const frame = 4 * along + 4
  const parts = [`${along} along ${unit(edge)} must be ${unit(each)} each, joins included`]
  if (piece !== null && fits !== along)
    parts.push(`of ${unit(piece)} each ${fits} ${fits === 1 ? "goes" : "go"} along it`)
  else if (missing !== null && perJoin !== null && Math.abs(missing) > 1e-9)
    parts.push(
      `${along} of ${unit(piece!)} make ${unit(along * piece!)}, ${unit(Math.abs(missing))} ${missing > 0 ? "short" : "too long"}: ${unit(Math.abs(perJoin))} for each of the ${along - 1} joins`,
    )
  const meeting =
    piece !== null && fits !== null && Math.abs(missing!) > ease * edge
      ? meetingOf(edge / piece)
      : null
  if (meeting && meeting.large > 1)
    parts.push(
      `${meeting.small} of the small are as long as ${meeting.large} of the large, so ${meeting.small ** 2} small go in place of ${meeting.large ** 2} large`,
    )
  parts.push(`a frame all round with its corners filled takes ${frame}`)
  return { edge, piece, fits, along, each, missing, perJoin, frame, text: `${parts.join("; ")}.` }
}
