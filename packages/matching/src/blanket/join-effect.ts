// What a join does to the size of a blanket: which joins take room (common practice, no source), and how much a little room at each
// join comes to over the whole, which is reckoned.

import { type LengthUnit, lengthWords } from "../lengths.ts"
import type { JoinKind } from "../yarn/joins.ts"

const roomOf: Readonly<Record<JoinKind, string>> = {
  sc: "A join in sc through both edges stands up as a ridge and takes next to no room; worked flat, with a row of its own between the pieces, it takes that row's height.",
  "slip-stitch": "A slip-stitch join draws the edges together and takes no room.",
  whip: "A whip stitch takes no room, and a tight one draws the edges in.",
  mattress: "A mattress seam turns the edge of both pieces under: up to a stitch of each is lost.",
  "as-you-go": "Joined in the last round, that round belongs to the piece: measure it with it.",
  none: "",
}

const sampleMm: Readonly<Record<LengthUnit, number>> = { cm: 3, in: 25.4 / 8 }

export function joinEffect(
  join: JoinKind | undefined,
  unit: LengthUnit = "cm",
  [rows, columns]: readonly [number, number],
): string {
  const each = sampleMm[unit]
  const tell = (mm: number) => lengthWords(mm, unit)
  const sum =
    rows * columns > 1
      ? `Each ${unit === "cm" ? "3 mm" : "1/8 in"} that a join takes or gives adds ${tell((columns - 1) * each)} to the width and ${tell((rows - 1) * each)} to the length.`
      : ""
  return [join === undefined ? "" : roomOf[join], sum].filter((one) => one !== "").join(" ")
}
