// What of a heading nothing was made of: runs of words and numbers, connecting words and the heading's own left out.

import type { HeadingToken, Spot } from "./heading-tokens.ts"

/** Words that say nothing by themselves in a heading. */
const connecting = new Set(
  (
    "a an and any as at about approx approximate approximately around be by each every equals for from full g in inch inches is it " +
    "mm cm made make measures measure measuring measured of on one or our per should size sized the this to together used use " +
    "using weight wide width with work worked your you yarn yarns hook hooks crochet gauge tension finished square squares motif " +
    "corner corners point points tip tips diagonal diagonally needed need obtain obtained required recommended correct matching " +
    "circle across diameter high height tall after before blocking blocked us uk cyc category rnd rnds round rounds steel old held"
  ).split(" "),
)

/** @param used spots that something was made of, in any order */
export function unusedOf(tokens: readonly HeadingToken[], used: readonly Spot[]): Spot[] {
  const spots = [...used].sort((a, b) => a.start - b.start)
  const unused: { start: number; end: number }[] = []
  let place = 0
  let reach = -1
  let open = false
  for (const token of tokens) {
    while (place < spots.length && spots[place]!.start <= token.start)
      reach = Math.max(reach, spots[place++]!.end)
    const taken = token.end <= reach
    const says = token.type === "number" || (token.type === "word" && !connecting.has(token.text))
    if (taken || token.type === "sign") open &&= !taken && token.text !== "," && token.text !== ";"
    else if (says) {
      if (open) unused.at(-1)!.end = token.end
      else unused.push({ start: token.start, end: token.end })
      open = true
    }
  }
  return unused
}
