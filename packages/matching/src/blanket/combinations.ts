// Pieces that each hold several colours: how many different ones there are, and how many of each kind a blanket gives.

import { RoundwrightError } from "@roundwright/numerics"

export interface Combinations {
  /** With the order of the colours, from the centre out, and without it. */
  readonly ordered: number
  readonly unordered: number
  readonly text: string
}

/** @param pieces in the blanket; null where that is not asked @throws RoundwrightError `bad-count` */
export function combinationsOf(colours: number, each: number, pieces: number | null): Combinations {
  if (
    !Number.isInteger(colours) ||
    !Number.isInteger(each) ||
    each < 1 ||
    each > colours ||
    colours > 40
  )
    throw new RoundwrightError(
      "bad-count",
      `${each} different colours of ${colours} cannot be taken.`,
      {
        hint: "Give how many colours there are, and no more of them to a piece.",
      },
    )
  let ordered = 1
  let unordered = 1
  for (let k = 0; k < each; k += 1) {
    ordered *= colours - k
    unordered = (unordered * (colours - k)) / (k + 1)
  }
  const share = (many: number) => {
    if (pieces === null) return ""
    const of = Math.floor(pieces / many)
    const over = pieces - of * many
    return `, ${of} of each${over > 0 ? ` and ${over} over` : ""}`
  }
  return {
    ordered,
    unordered,
    text: `${colours} colours with ${each} different ones to a piece make ${ordered} kinds${share(ordered)}; where their order does not matter ${unordered}${share(unordered)}.`,
  }
}
