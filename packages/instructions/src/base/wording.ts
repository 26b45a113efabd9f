// Words for nouns and counts in messages.

import { kindName } from "@roundwright/stitches"
import type { Noun } from "./tree.ts"

/** "ch-3 space", "dc", "corner space", in the plural for counts other than 1. */
export function nounWords(noun: Noun, count = 1): string {
  const several = count !== 1
  const size = noun.size === undefined ? "" : `ch-${noun.size} `
  switch (noun.what) {
    case "space":
      return `${noun.corner ? "corner " : ""}${size}space${several ? "s" : ""}`
    case "stitch":
      return noun.kind ? kindName(noun.kind) : several ? "stitches" : "stitch"
    case "chain":
      return several ? "chains" : "chain"
    case "gap":
      return several ? "gaps between stitches" : "gap between stitches"
    case "group":
      return several ? "groups" : "group"
    case "picot":
      return several ? "picots" : "picot"
    case "corner":
      return several ? "corners" : "corner"
    case "ring":
      return "ring"
    default:
      return several ? "places" : "place"
  }
}

/** "3rd", "11th". */
export function ordinal(n: number): string {
  const tail = n % 100 >= 11 && n % 100 <= 13 ? "th" : (["th", "st", "nd", "rd"][n % 10] ?? "th")
  return `${n}${tail}`
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  return words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} and ${words.at(-1)}`
}

export function plural(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`
}
