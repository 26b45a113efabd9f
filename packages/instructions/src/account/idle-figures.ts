// Figures of a round that lead nowhere: another stitch than the first at the join, another round at a slip stitch than the
// one that is worked on, so many rounds below where the last stitch was not. The round is counted without them.

import { turningChains } from "@roundwright/stitches"
import { stepsWithin } from "../base/steps-within.ts"
import type { Place, Span, Step } from "../base/tree.ts"

export interface IdleFigure {
  readonly span: Span
  readonly message: string
}

/** @param number of the round */
export function idleFigures(steps: readonly Step[], number: number): IdleFigure[] {
  return [
    ...joinedElsewhere(steps),
    ...otherRounds(steps, number),
    ...otherDepths(steps),
    ...otherSpaces(steps),
  ]
}

/** "ss to 11th dc" at the end of a round: it closes at its first stitch all the same. */
function joinedElsewhere(steps: readonly Step[]): IdleFigure[] {
  const last = steps.findLast(({ do: what }) => what !== "turn" && what !== "chain")
  if (last?.do !== "join" && last?.do !== "slip") return []
  const { place } = last
  if (place?.at !== "next" || !place.afterSkip || typeof place.pick !== "number" || place.pick < 2)
    return []
  return [
    {
      span: last,
      message: `The round is closed at its first stitch, not at stitch ${place.pick}.`,
    },
  ]
}

/** "sl st in skipped sc of Rnd 7, *ch 5, sl st in next skipped sc of Rnd 1": the work goes on over Rnd 1. */
function otherRounds(steps: readonly Step[], number: number): IdleFigure[] {
  const named = new Set<number>()
  const walk = (list: readonly Step[], inside: boolean) => {
    for (const step of list) {
      const { ofRound } = placeOf(step) ?? {}
      if (ofRound !== undefined && (inside || step.do !== "slip")) named.add(ofRound)
      walk(stepsWithin(step), true)
    }
  }
  walk(steps, false)
  return steps.flatMap((step): IdleFigure[] => {
    const round = step.do === "slip" ? step.place?.ofRound : undefined
    if (round === undefined || (round < number && (named.size === 0 || named.has(round)))) return []
    return [{ span: step, message: `What follows is not worked into round ${round}.` }]
  })
}

/** "in same st 4 rnds below" where the last such place was not so far below; "sc2tog over the 3 sts in the dip". */
function otherDepths(steps: readonly Step[]): IdleFigure[] {
  const found: IdleFigure[] = []
  const seen = new Set<number>()
  const walk = (list: readonly Step[]) => {
    for (const step of list) {
      const place = placeOf(step)
      const legs = step.do === "work" ? step.stitch.kind.gathered?.legs : undefined
      const over = place?.coversCount ?? 1
      if (legs && over > 1 && over !== legs)
        found.push({
          span: step,
          message: `What is worked together here goes over ${legs} stitches, not ${over}.`,
        })
      if (place?.below !== undefined) {
        const { below } = place
        if (place.at === "same" && !seen.has(below))
          found.push({
            span: place,
            message: `No stitch of this round stands ${below} rounds below; this goes where the last one went.`,
          })
        seen.add(below)
      }
      walk(stepsWithin(step))
    }
  }
  walk(steps)
  return found
}

/** "ch 2, hdc in top of ch-3 (counts as ch-3 sp)": a half treble is as tall as two chains, and that makes four. */
function otherSpaces(steps: readonly Step[]): IdleFigure[] {
  return steps.flatMap((step, k): IdleFigure[] => {
    const chain = steps[k - 1]
    const space = step.do === "work" ? step.countsAs?.space : undefined
    if (step.do !== "work" || space === undefined || chain?.do !== "chain") return []
    const made = chain.chains + turningChains(step.stitch.kind.basic)
    if (space === made) return []
    return [
      { span: step, message: `With its chain this makes a space of ${made}, not of ${space}.` },
    ]
  })
}

function placeOf(step: Step): Place | null {
  return step.do === "work" || step.do === "group" || step.do === "slip" || step.do === "skip"
    ? step.place
    : null
}
