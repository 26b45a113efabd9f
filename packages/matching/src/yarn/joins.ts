// Yarn of joining two pieces, for each place of the seam, in sc.

import { RoundwrightError } from "@roundwright/numerics"
import { scYarnInWidths } from "./yarn-basis.ts"

export const joinKinds = ["sc", "slip-stitch", "whip", "mattress", "as-you-go", "none"] as const
export type JoinKind = (typeof joinKinds)[number]

/** A sewn strand goes over both edges and on by a stitch: about two widths a place (geometry, no source). */
const sewnWidths = 2

const yarnOfPlace: Readonly<Record<JoinKind, number>> = {
  sc: 1,
  "slip-stitch": 0.5,
  whip: sewnWidths / scYarnInWidths,
  mattress: sewnWidths / scYarnInWidths,
  // Part of the last round: a slip stitch more in each place.
  "as-you-go": 0.5,
  none: 0,
}

export const joinWords: Readonly<Record<JoinKind, string>> = {
  sc: "single crochet through both edges",
  "slip-stitch": "slip stitch through both edges",
  whip: "whip stitch",
  mattress: "mattress stitch",
  "as-you-go": "joined in the last round",
  none: "no join",
}

/** In sc; a seam works one place for each stitch of a side, and one for each corner. */
export function yarnOfSeam(kind: JoinKind, places: number): number {
  return yarnOfPlace[kind] * places
}

/** @throws RoundwrightError `unknown-join` */
export function readJoin(text: string): JoinKind {
  const plain = text
    .trim()
    .toLowerCase()
    .replace(/[\s_]+/g, "-")
  const found =
    joinKinds.find((one) => one === plain) ??
    (/^(sl|ss|slip)/.test(plain) ? "slip-stitch" : null) ??
    (/^(single|sc|dc$)/.test(plain) ? "sc" : null) ??
    (/^(whip|over|sew|sewn)/.test(plain) ? "whip" : null) ??
    (/go$/.test(plain) ? "as-you-go" : null)
  if (found) return found
  throw new RoundwrightError("unknown-join", `"${text.slice(0, 40)}" is no join known here.`, {
    hint: `Name one of ${joinKinds.join(", ")}.`,
  })
}

/** Seams of a grid of squares: sides that two pieces share. */
export function seamsOfGrid(rows: number, columns: number): number {
  return (rows - 1) * columns + rows * (columns - 1)
}
