// Chains named at the join of a round, and the space it closes in: figures that the round does not bear out are told.

import type { Finding } from "../base/problem-list.ts"
import { stepsWithin } from "../base/steps-within.ts"
import type { Span, Step } from "../base/tree.ts"
import { makesStitches } from "./idle-steps.ts"

/** "join to top of ch-5", "3rd ch of 5 ch" in a round that makes no run of five: a figure not used, and told. */
export function otherChainsAtJoin(text: string, steps: readonly Step[]): Finding[] {
  const start = startOf(steps)
  const made = start === null ? chainsMade(steps) : new Set([start])
  const otherSpaces = otherSpacesFirst(text, steps)
  return steps.flatMap((step): Finding[] => {
    if (otherSpaces.has(step))
      return [
        idle(
          step,
          "The first space of this round is named with another number of chains here.",
          "Mend one of the two figures.",
        ),
      ]
    const joins =
      step.do === "join" ||
      (step.do === "slip" && step.place?.at === "made") ||
      // "dc in base of ch-3", "hdc in top of ch-3".
      (step.do === "work" && (step.place?.at === "same" || step.place?.at === "made"))
    if (!joins || (step.do === "join" && step.ring)) return []
    if (step.do === "join" && step.chain !== undefined && step.chain > Math.max(0, ...made))
      return [
        idle(
          step,
          `The round begins with fewer than ${step.chain} chains; it is joined to what it begins with.`,
        ),
      ]
    const said = text.slice(step.start, step.end)
    const named =
      /\bch(?:ain)?s?\.?[ -]?(\d{1,3})\b|\b(\d{1,3})[ -]?ch(?:ain)?s?\b(?![ -]?\d)/i.exec(said)
    const size = Number(named?.[1] ?? named?.[2])
    if (!named || made.has(size)) return []
    const start = step.start + named.index
    return [
      idle(
        { start, end: start + named[0].length },
        `The round does not begin with ${size} chains, as is said here; this goes to what it begins with.`,
      ),
    ]
  })
}

function idle({ start, end }: Span, message: string, hint = ""): Finding {
  return { severity: "note", code: "step-without-effect", start, end, message, hint }
}

/** "sl st in ch-2 sp, ..., dc in first ch-4 sp": what closes the round in a space that is named otherwise before. */
function otherSpacesFirst(text: string, steps: readonly Step[]): Set<Step> {
  const sizesIn = (from: number, to: number) =>
    [...text.slice(from, to).matchAll(/\bch[ -]?(\d{1,3}) (?:sps?|spaces?|loops?|lps?)\b/gi)].map(
      ([, size]) => Number(size),
    )
  const from = steps[0]?.start ?? 0
  return new Set(
    steps.filter((step) => {
      if (step.do !== "work" || step.place?.at !== "next" || step.place.order !== "first")
        return false
      const [own] = step.place.noun.what === "space" ? sizesIn(step.start, step.end) : []
      const before = own === undefined ? [] : sizesIn(from, step.start)
      return own !== undefined && before.length > 0 && !before.includes(own)
    }),
  )
}

/** Chains that stand before the first stitch, of a group that opens the round too; null where there are none. */
function startOf(steps: readonly Step[]): number | null {
  const first = steps.find((step) => step.do === "chain" || makesStitches(step))
  if (first?.do === "chain") return first.chains
  return first?.do === "group" ? startOf(first.steps) : null
}

/** Lengths of the runs of chains in the words of a round, runs side by side also as one. */
function chainsMade(steps: readonly Step[]): Set<number> {
  const made = new Set<number>()
  let run = 0
  const add = (chains: number) => {
    run += chains
    made.add(chains)
    made.add(run)
  }
  for (const step of steps) {
    if (step.do === "chain" || step.do === "picot") {
      add(step.chains)
      continue
    }
    run = 0
    for (const chains of chainsMade(stepsWithin(step))) made.add(chains)
  }
  return made
}
