// A change in words, as one maker would say it to another.

import type { ElementChange } from "@roundwright/flatness"
import { commonDivisor, type Motif, repeatsOf } from "@roundwright/motif"
import { kindName, type Terms } from "@roundwright/stitches"
import { handWords } from "./mend-hand.ts"
import { areMistaken } from "./mend-slips.ts"
import type { RoundFacts } from "./mend-summary.ts"

export function describeChange(
  motif: Motif,
  index: number,
  change: ElementChange,
  facts: readonly RoundFacts[],
  terms: Terms = "US",
): string {
  const number = motif.rounds[index]!.number
  const here = facts[index]!
  const stitch = kindName(here.kind, terms)
  switch (change.kind) {
    case "count": {
      const repeats = commonDivisor(repeatsOf(motif, index), change.stitches)
      const difference = Math.abs(change.stitches - here.stitches)
      const word = change.stitches < here.stitches ? "fewer" : "more"
      const each = difference === 1 ? "stitch" : "stitches"
      const spread = repeats > 1 ? `, still in ${repeats} repeats` : ""
      const later =
        index === motif.rounds.length - 1
          ? ""
          : change.keeps
            ? "; the rounds after it keep their counts"
            : "; carry the difference through the rounds after it"
      const what = here.uniform ? stitch : "stitches"
      return `Work ${change.stitches} ${what} in round ${number} instead of ${here.stitches} (${difference} ${each} ${word}${spread})${later}.`
    }
    case "increase": {
      const add = `${change.perRound} ${stitch}`
      const before = facts[index - 1]?.stitches ?? 0
      const counts = facts.slice(index).map((_, i) => before + change.perRound * (i + 1))
      const listed = counts.length > 6 ? [...counts.slice(0, 3), "...", counts.at(-1)] : counts
      return index === 0
        ? `Begin with ${add} and add ${change.perRound} a round: ${listed.join(", ")}.`
        : `From round ${number} on add ${add} a round: ${listed.join(", ")}.`
    }
    case "stitch":
      return change.from
        ? `Work ${kindName(change.to, terms)} instead of ${kindName(change.from, terms)} in round ${number}, same count.`
        : `Work round ${number} in ${kindName(change.to, terms)} instead of ${stitch}, same count.`
    case "group":
      return `In round ${number} work ${change.to} in one place instead of ${change.from}${index === motif.rounds.length - 1 ? "" : "; carry the difference through the rounds after it"}.`
    case "terms":
      return otherTermsWords(change.by, terms)
    case "chains":
      return `Make the ch-${change.from} spaces of round ${number} ch-${change.to} spaces.`
    case "hook":
      return `Change to a ${change.toMm} mm hook from round ${number} on.`
    case "drop-round":
      return `Leave out round ${number}.`
    case "add-round":
      return `Work one more round after round ${number} without increases, ${stitch} in each stitch${here.chains > 0 ? " and chain" : ""}.`
    case "hand":
      return handWords(change.taller)
    case "leave":
      return `Leave it: what is off works itself out by round ${number}.`
    case "block":
      return "Leave it and block it."
  }
}

/** All stitches a step lower or higher: mostly the terms were mistaken. */
function otherTermsWords(by: 1 | -1, terms: Terms): string {
  const other = terms === "US" ? "UK" : "US"
  if (areMistaken(terms, by))
    return `Read it in ${other} terms: the pattern may be written in them, and every stitch is one step ${by < 0 ? "lower" : "taller"}.`
  return `Work every round one stitch ${by < 0 ? "lower" : "taller"}, same counts.`
}

/** What is said where the piece is too large to look for changes everywhere. @param weighed changes that were looked at */
export function leftOutWords(
  { rounds }: Motif,
  weighed: readonly { readonly index: number }[],
): string {
  const indices = weighed.map(({ index }) => index)
  const number = (index: number) => rounds[index]!.number
  const [first, last] = [Math.min(...indices), Math.max(...indices)]
  const all = indices.length === 0 || (first === 0 && last === rounds.length - 1)
  const where = all ? "" : ` in rounds ${number(first)} to ${number(last)} only`
  return `The piece is large: what to change was looked for${where}${all ? " in part" : ""}, and the rest left out.`
}
