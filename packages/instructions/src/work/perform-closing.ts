// Stitches worked on what this round has made: on a stitch just made, a tall stitch that closes the
// last space, a loop closed back into its own first chain.

import { turningChains } from "@roundwright/stitches"
import type { Place, Step } from "../base/tree.ts"
import { meaningOf } from "../edge/meanings.ts"
import { makeAt } from "./make-stitches.ts"
import type { RoundWork } from "./round-work.ts"
import { noPlace } from "./shortages.ts"

/** "1 sc in top of that dc": a stitch on one made just before, or the end of the round on its first. */
export function workOnMade(
  work: RoundWork,
  step: Extract<Step, { do: "work" }>,
  place: Extract<Place, { at: "made" }>,
): void {
  if (place.which === "first" && closeWith(work, step)) return
  const target = madeElement(work, place)
  if (target === null && work.startSite && !work.elements.some(({ type }) => type === "stitch")) {
    // "Join in any tr, work 1 sc into the top of that tr": the place the round begins in.
    work.use(work.main, work.startSite, "worked")
    work.main.at = Math.max(work.main.at, work.startSite.to)
    makeAt(work, step, [[work.startSite.anchor]], place)
    return
  }
  if (target === null) throw noPlace(place, "Nothing of that name has been made in this round yet.")
  makeAt(work, step, [[{ at: "stitch", round: work.index, element: target }]], place)
}

export function madeElement(work: RoundWork, place: Extract<Place, { at: "made" }>): number | null {
  const fits = (i: number) => work.elements[i]?.type === "stitch"
  if (place.which === "first") {
    for (let i = 0; i < work.elements.length; i++) if (fits(i)) return i
    return null
  }
  const wanted = place.noun.what === "stitch" ? place.noun.kind?.basic : undefined
  for (let i = work.elements.length - 1; i >= 0; i--) {
    const element = work.elements[i]
    if (element?.type === "stitch" && (wanted === undefined || element.kind.basic === wanted)) {
      // Not onto a stitch that itself stands on one of this round.
      const anchor = element.anchors[0]
      if (anchor && anchor.at === "stitch" && anchor.round === work.index) return anchor.element
      return i
    }
  }
  return null
}

/** A tall stitch that stands for the last chains of the round: "ch 2, dc in first sc". */
export function closesSpace(work: RoundWork, step: Extract<Step, { do: "work" }>): boolean {
  const place = step.place
  if (place?.at !== "next" || step.count !== 1) return false
  if (turningChains(step.stitch.kind.basic) < 2 && !endsAsOthers(work)) return false
  if (place.noun.what !== "stitch") return false
  const onSlip =
    place.noun.kind?.basic === "sl st" && meaningOf(work.main.edge, place.noun).stretched !== null
  const onStart =
    place.order === "last" &&
    work.startPassed &&
    !work.startTaken &&
    work.startSite?.anchor.at === "space"
  const onFirst =
    place.order === "first" &&
    work.elements.length > 0 &&
    (work.elements[0]?.type === "stitch" || work.elements[0]?.type === "chain")
  // "end with ch 2, dc in dc", where a dc closed the round before and there is no other.
  const before = work.shared.rounds[work.index - 1]?.elements.at(-1)
  const onClosing =
    before?.type === "chain" &&
    before.closedWith !== undefined &&
    before.closedWith.basic === place.noun.kind?.basic &&
    work.startPassed &&
    meaningOf(work.main.edge, place.noun).stretched !== null
  if (!onSlip && !onStart && !onFirst && !onClosing) return false
  if (onFirst && !onSlip && (mostlyUnused(work) || beginsRepeat(work.allSteps, step))) return false
  return closeWith(work, step)
}

/** "ch 1, sc in first dc", where the other spaces have two chains: the sc stands for the last of them. */
function endsAsOthers(work: RoundWork): boolean {
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "chain") return false
  return work.elements.some(
    (element) => element !== last && element.type === "chain" && element.chains === last.chains + 1,
  )
}

/** "*dc in first st, ch 3, miss 1; rep": what begins a repeat closes nothing. */
function beginsRepeat(steps: readonly Step[], step: Step): boolean {
  return steps.some(
    (one) => one.do === "repeat" && (one.body[0] === step || beginsRepeat(one.body, step)),
  )
}

/** More than half of the round before is still to be worked into. */
function mostlyUnused(work: RoundWork): boolean {
  return work.end - work.main.at > work.main.edge.size / 2
}

/** "*ch 3, 3 dc in ring; rep 4 times, join with dc to top of ch 3": the dc is as tall as the last loop is long. */
function leadToFirst(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const tall = turningChains(step.stitch.kind.basic)
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "stitch" || tall < 2 || step.countsAs?.space !== undefined) return
  if (!work.elements.some((element) => element.type === "chain" && element.chains === tall)) return
  work.add({ type: "chain", chains: 0 }, step)
}

function closeWith(work: RoundWork, step: Extract<Step, { do: "work" }>): boolean {
  if (work.elements.length < 2) return false
  leadToFirst(work, step)
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "chain") return false
  const stands =
    step.countsAs?.space !== undefined
      ? Math.max(1, step.countsAs.space - last.chains)
      : turningChains(step.stitch.kind.basic)
  work.elements[work.elements.length - 1] = {
    ...last,
    chains: last.chains + stands,
    closedWith: step.stitch.kind,
  }
  const first = work.elements[0]
  if (first?.type === "chain" && work.startSite) {
    // The point where both loops meet: the first one starts in the stitch that closed the round before.
    work.elements.unshift({
      type: "stitch",
      kind: { basic: "sl st" },
      anchors: [work.startSite.anchor],
    })
    work.spans.unshift({ start: step.start, end: step.end })
    work.startTaken = true
  }
  if (work.startPassed && work.startSite) work.use(work.main, work.startSite, "worked")
  work.joined = true
  return true
}

/** "ch 13, dc in 13th ch from hook": the chain becomes a loop standing on the edge. */
export function closeLoop(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const last = work.elements[work.elements.length - 1]
  if (last?.type !== "chain") throw noPlace(step, "There is no chain just made to work into.")
  const { kind } = step.stitch
  const tall = turningChains(kind.basic) > turningChains("sc")
  work.elements[work.elements.length - 1] = {
    type: "picot",
    chains: last.chains,
    ...(tall ? { closedWith: kind } : {}),
  }
  if (kind.gathered)
    work.find({
      severity: "note",
      code: "loop-closed-by-cluster",
      start: step.start,
      end: step.end,
      message:
        "This cluster stands on the chains just made: it is taken for what closes their loop, and not counted as a stitch.",
      hint: "Where your totals count it, they are higher by one for each.",
    })
}
