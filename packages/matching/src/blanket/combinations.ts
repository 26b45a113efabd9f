// Pieces that each hold several colours: how many different ones there are, and how many of each kind a blanket gives.

import { RoundwrightError } from "@roundwright/numerics"

export interface Combinations {
  /** With the order of the colours, from the centre out, and without it. */
  readonly ordered: number
  readonly unordered: number
  readonly text: string
}

/** "1 x 3 x 2" choices for the places of a piece, in so many families of colours. @throws RoundwrightError `bad-count` */
export function choicesOf(text: string, families: number, pieces: number | null): Combinations {
  const each = text.split(/[x×,*]/i).map(Number)
  const product = each.reduce((all, one) => all * one, 1)
  if (each.some((one) => !Number.isInteger(one) || one < 1) || !(product * families < 1e9))
    throw new RoundwrightError("bad-count", `"${text.slice(0, 40)}" are no choices.`, {
      hint: "Write how many there are for each place: 1 x 3 x 2.",
    })
  const all = product * families
  const share = pieces === null ? "" : `, ${Math.floor(pieces / all)} of each in ${pieces}`
  return {
    ordered: all,
    unordered: product,
    text: `${text.trim()} choices make ${product} kinds${families > 1 ? ` in a family, ${all} in ${families} families` : ""}${share}.`,
  }
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
