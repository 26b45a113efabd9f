// A round told once and meant all around: "5 ch, 1 dc into the dc between the petals", with no word of repeating it.
// Tried only where the round as written leaves most of the round below, and taken only where nothing is left then.

import type { Place, Step } from "../base/tree.ts"

/** The steps with what is told once worked around; none where the words speak of how often themselves. */
export function impliedRepeats(steps: readonly Step[]): readonly Step[][] {
  if (steps.some(saysHowOften)) return []
  let from = 0
  while (from < steps.length && leads(steps[from]!)) from += 1
  let to = steps.length
  while (to > from && closes(steps[to - 1]!)) to -= 1
  const middle = steps.slice(from, to)
  if (middle.length < 2 || !middle.some(goesOn)) return []
  const begun = middle.findLastIndex((step) => placeOf(step)?.at === "same") + 1
  const starts =
    begun > 0 && middle.slice(begun).some(goesOn)
      ? [begun]
      : middle[0]?.do === "chain" && middle[0].countsAs
        ? [1]
        : [0, 1]
  return starts.flatMap((start) => {
    const body = middle.slice(start)
    const [first, last] = [body[0], body[body.length - 1]]
    if (!first || !last || !body.some(goesOn)) return []
    const repeat: Step = {
      start: first.start,
      end: last.end,
      do: "repeat",
      body,
      last: null,
      ending: null,
      times: { kind: "until", until: { kind: "around", implied: true } },
    }
    return [[...steps.slice(0, from + start), repeat, ...steps.slice(to)]]
  })
}

function saysHowOften(step: Step): boolean {
  if (step.do === "repeat" || step.do === "pass" || step.do === "as-round" || step.do === "ring")
    return true
  if (step.do === "work" && (step.even || step.count > 12)) return true
  const place = placeOf(step)
  return (
    place?.at === "each" ||
    place?.at === "ring" ||
    place?.at === "hook-chain" ||
    place?.at === "own-chain"
  )
}

function leads(step: Step): boolean {
  return step.do === "slip" || step.do === "attach" || step.do === "turn" || step.do === "mode"
}

function closes(step: Step): boolean {
  return (
    step.do === "join" ||
    step.do === "turn" ||
    step.do === "mode" ||
    (step.do === "slip" && step.place?.at === "made")
  )
}

/** Worked into the next of something: what can be done again. */
function goesOn(step: Step): boolean {
  const place = placeOf(step)
  return (
    (step.do === "work" || step.do === "group" || step.do === "slip") &&
    place?.at === "next" &&
    place.order === undefined
  )
}

function placeOf(step: Step): Place | null {
  return step.do === "work" || step.do === "group" || step.do === "slip" || step.do === "skip"
    ? step.place
    : null
}
