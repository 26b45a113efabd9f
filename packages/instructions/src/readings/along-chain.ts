// A first round worked along a chain rather than into a ring: down one side of it and back along the other
// (an oval), or along one side only (a strip). It is counted; as its middle is no point and no ring, its
// shape is not.

import type { Finding } from "../base/problem-list.ts"
import type { Place, Span, Step } from "../base/tree.ts"

/** Chains met on the way: along the first side, and along both. */
export interface AlongChain {
  readonly oneSide: number
  readonly all: number
}

/** How a first round goes along a foundation of so many chains; null when it is not worked so. */
export function alongChain(steps: readonly Step[], chains: number): AlongChain | null {
  const first = firstPlace(steps)
  if (!first || chains < 2) return null
  const nth = first.at === "hook-chain" ? first.nth : 1
  const goesOn = steps.some(goesAlong) && (first.at === "hook-chain" || goesAlongPlace(first))
  const oneSide = chains - nth + 1
  if (!goesOn || oneSide < 2) return null
  const both = steps.some((step) => step.do === "mode" && step.otherSide === true)
  return { oneSide, all: both ? 2 * oneSide - 1 : oneSide }
}

/** The chain counted from the hook is the first of those met. */
export function fromFirstChain(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex((step) => step.do === "work" || step.do === "group")
  const step = steps[at]
  if ((step?.do !== "work" && step?.do !== "group") || step.place?.at !== "hook-chain") return steps
  const place: Place = {
    start: step.place.start,
    end: step.place.end,
    at: "next",
    noun: { what: "chain" },
    count: 1,
  }
  return steps.map((other, i) => (i === at ? { ...step, place } : other))
}

/** Told of such a round: what is counted and what is not. */
export function alongChainFinding(span: Span, both: boolean): Finding {
  return {
    severity: "error",
    code: "worked-along-chain",
    ...span,
    message: both
      ? "This round goes round a chain, so the piece is an oval: its rounds are counted, its shape is not worked out."
      : "This is worked along a chain as a straight piece: its stitches are counted, its shape is not worked out.",
    hint: "Only pieces that grow from a point or a ring are laid out.",
  }
}

function firstPlace(steps: readonly Step[]): Place | null {
  for (const step of steps) {
    if (step.do === "work" || step.do === "group") return step.place
    if (step.do === "repeat") return firstPlace(step.body)
    if (step.do === "chain" || step.do === "join") return null
  }
  return null
}

function goesAlong(step: Step): boolean {
  if (step.do === "mode") return step.otherSide === true
  if (step.do === "repeat") return step.body.some(goesAlong)
  if (step.do === "pass") return step.cases.some(goesAlong)
  if (step.do !== "work" && step.do !== "group") return false
  return step.place !== null && goesAlongPlace(step.place)
}

function goesAlongPlace(place: Place): boolean {
  if (place.at === "list") return place.places.some(goesAlongPlace)
  if (place.at === "each") return place.nouns.some((noun) => noun.what === "chain")
  return place.at === "next" && place.noun.what === "chain" && place.order !== "first"
}
