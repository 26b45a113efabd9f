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

export function plural(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`
}
