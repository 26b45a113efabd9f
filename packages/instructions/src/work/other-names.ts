// Names and sizes that the round before does not have: what it has is taken instead, and that is told.

import type { Finding } from "../base/problem-list.ts"
import type { Noun, Span } from "../base/tree.ts"
import type { Edge } from "../edge/edge.ts"
import { hasGroupOf } from "../edge/groups.ts"
import type { Meaning } from "../edge/meanings.ts"
import { sizesThere } from "../edge/spaces-named.ts"

/** A name that was stretched to what is there; null where it was not. */
export function otherName(meaning: Meaning, noun: Noun, edge: Edge, span: Span): Finding | null {
  if (!meaning.stretched) return null
  const what =
    meaning.stretched === "size" && noun.what === "space"
      ? `space of ${noun.size} chains`
      : meaning.stretched === "size"
        ? `group of ${noun.size}`
        : "stitch of that name"
  const there = meaning.stretched === "size" && noun.what === "space" ? sizesThere(edge) : "others"
  return {
    severity: "warning",
    code: meaning.stretched === "kind" ? "named-stitch-absent" : "named-space-absent",
    ...span,
    message: `The round before has no ${what}; it has ${there}, which ${there === "others" ? "are" : "is"} taken instead.`,
    hint: "Compare the names with what the round before makes.",
  }
}

/** "each 9-dc group" where no group has nine: those that are there are taken. */
export function otherGroups(edge: Edge, noun: Noun, span: Span): Finding | null {
  const size = noun.what === "group" ? noun.size : noun.groupSize
  if (size === undefined || edge.round < 0 || hasGroupOf(edge, size)) return null
  return {
    severity: "note",
    code: "not-reckoned",
    start: span.start,
    end: span.end,
    message: `The round before has no group of ${size} stitches; those it has are taken instead.`,
    hint: "",
  }
}
