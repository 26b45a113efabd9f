// So many changes spread evenly, in the groups a maker counts: of 186 stitches with 8 decreases six groups of 23 and two of
// 24, the longer ones as far apart as can be.

import { RoundwrightError } from "@roundwright/numerics"

export interface EvenGroups {
  /** Lengths in order; they differ by one at most. */
  readonly groups: readonly number[]
  readonly short: number
  readonly long: number
  readonly shortCount: number
  readonly longCount: number
}

/** @throws RoundwrightError `bad-count` */
export function evenGroups(total: number, parts: number): EvenGroups {
  if (
    !Number.isInteger(total) ||
    !Number.isInteger(parts) ||
    parts < 1 ||
    total < parts ||
    total > 1e6
  )
    throw new RoundwrightError("bad-count", `${total} cannot be shared into ${parts} parts.`, {
      hint: "Give whole numbers, and no more parts than stitches.",
      numbers: { total, parts },
    })
  const groups = Array.from(
    { length: parts },
    (_, k) => Math.round(((k + 1) * total) / parts) - Math.round((k * total) / parts),
  )
  const short = Math.floor(total / parts)
  const longCount = total - short * parts
  return {
    groups,
    short,
    long: longCount > 0 ? short + 1 : short,
    shortCount: parts - longCount,
    longCount,
  }
}

/** "6 groups of 23 and 2 of 24". */
export function groupsText(
  { short, long, shortCount, longCount }: EvenGroups,
  noun = "groups",
): string {
  if (longCount === 0) return `${shortCount} ${noun} of ${short}`
  const spread = longCount === shortCount ? ", by turns" : ", the fewer ones as far apart as can be"
  return `${shortCount} ${noun} of ${short} and ${longCount} of ${long}${spread}`
}

/** How to take so many away or put so many in, stitch by stitch. */
export function evenChangeText(from: number, to: number): string {
  const many = Math.abs(to - from)
  if (many === 0) return `${from} stay ${to}.`
  const taken = to < from
  // Two become one at the end of a group, or one becomes two.
  const groups = evenGroups(from, Math.min(many, from))
  const plain = (length: number) => length - (taken ? 2 : 1)
  const step = (length: number, count: number) =>
    `${count === 1 ? "once" : `${count} times`} (${plain(length) > 0 ? `${plain(length)} sts, ` : ""}${taken ? "2 together" : "2 in 1"})`
  if (many > from || (taken && groups.short < 2)) return ""
  const parts = [
    step(groups.short, groups.shortCount),
    ...(groups.longCount > 0 ? [step(groups.long, groups.longCount)] : []),
  ]
  return `${taken ? "To decrease" : "To increase"} evenly from ${from} to ${to}: ${groupsText(groups)}; ${parts.join(" and ")}.`
}

/** Stitches picked up where there are more places: of how many each one is left out. */
export function pickUpText(places: number, wanted: number): string {
  const out = places - wanted
  if (out <= 0 || out > wanted) return ""
  const groups = evenGroups(places, out)
  const take = (length: number) => `take ${length - 1} of ${length}`
  return `Leave ${out} out: ${groups.shortCount} times ${take(groups.short)}${groups.longCount > 0 ? `, ${groups.longCount} times ${take(groups.long)}` : ""}.`
}
