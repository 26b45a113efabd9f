// Places that are not there: none of that name, or all of them used.

import type { Finding } from "../base/problem-list.ts"
import type { Noun, Span } from "../base/tree.ts"
import { nounWords } from "../base/wording.ts"
import type { Edge } from "../edge/edge.ts"
import { meaningOf } from "../edge/meanings.ts"
import { findSite } from "../edge/sites.ts"
import type { Position } from "./round-parts.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"

export function noPlace(span: Span, message: string): CannotWork {
  return new CannotWork({
    severity: "error",
    code: "no-such-place",
    start: span.start,
    end: span.end,
    message,
    hint: "Compare this with what the round before makes.",
  })
}

/** The round below is used up: with what is asked for and what there is. */
export function overrun(_work: RoundWork, position: Position, noun: Noun, span: Span): CannotWork {
  const { edge } = position
  const meaning = meaningOf(edge, noun)
  if (!meaning.exists) {
    const named = nounWords(noun)
    return new CannotWork({
      severity: "error",
      code: "no-such-place",
      start: span.start,
      end: span.end,
      message: `There is no ${named} in the round before.`,
      hint: "Compare the name with what the round before makes.",
    })
  }
  return new CannotWork(() => usedUp(edge, meaning.noun, noun, span), shortage)
}

const shortage = "needs-more-than-there-is"

function usedUp(edge: Edge, meant: Noun, noun: Noun, span: Span): Finding {
  let there = 0
  for (let at = 0; at < edge.size; ) {
    const site = findSite(edge, meant, at, edge.size, 0, null)
    if (!site) break
    there += 1
    at = Math.max(at + 1, site.to)
  }
  return {
    severity: "error",
    code: shortage,
    start: span.start,
    end: span.end,
    message: `This round asks for more than the round before has: all ${there} of its ${nounWords(noun, there)} are used when it comes to this one.`,
    hint: "Count the repeats, or the stitches of the round before.",
  }
}
