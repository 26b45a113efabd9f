// "Sl st to corner sp; ch 3, 2 dc, ch 3, 3 dc in same sp", "join in any ch-3 sp, ch 3, 2 dc, ch 3, 3 dc in
// same sp": without brackets, and all of it goes into the space the slip stitch or the join led to.

import type { Place, Step } from "../base/tree.ts"

/** "(Slip st, ch 1, sc) in first ch-3 sp" at the start: the slip stitch leads there, the rest goes into it. */
export function ledByGroup(steps: readonly Step[]): readonly Step[] {
  const at = steps.findIndex((step) => step.do !== "mode" && step.do !== "turn")
  const group = steps[at]
  if (group?.do !== "group" || group.place.at !== "next" || group.place.count !== 1) return steps
  const [slip, ...rest] = group.steps
  if (slip?.do !== "slip" || slip.place || rest[0]?.do !== "chain") return steps
  const same: Place = {
    start: group.place.start,
    end: group.place.end,
    at: "same",
    noun: group.place.noun,
  }
  return [
    ...steps.slice(0, at),
    { ...slip, place: group.place },
    { ...group, steps: rest, place: same },
    ...steps.slice(at + 1),
  ]
}

/** Stitches between the starting chain and the "in same sp" that follows them, gathered into that space. */
export function intoSameSpace(steps: readonly Step[]): readonly Step[] {
  const start = steps.findIndex((step) => step.do === "chain")
  const leading = steps[start - 1]
  const slip =
    (leading?.do === "slip" || leading?.do === "attach") && leadsToSpace(leading.place)
      ? start - 1
      : -1
  const first = steps[slip + 2]?.do === "note-counts" ? slip + 3 : slip + 2
  if (slip < 0 || steps[slip + 1]?.do !== "chain") return steps
  let end = first
  while (isUnplaced(steps[end])) end += 1
  const closing = steps[end]
  if (end === first || closing?.do !== "work" || !isSameSpace(closing.place)) return steps
  const inner = [...steps.slice(first, end), { ...closing, place: null }]
  if (inner.filter((step) => step.do === "work").length < 2) return steps
  const group: Step = {
    start: inner[0]!.start,
    end: closing.end,
    do: "group",
    steps: inner,
    place: closing.place,
  }
  return [...steps.slice(0, first), group, ...steps.slice(end + 1)]
}

function leadsToSpace(place: Place | null): boolean {
  return place?.at === "next" && /^(?:space|corner|gap)$/.test(place.noun.what)
}

function isUnplaced(step: Step | undefined): boolean {
  return step?.do === "chain" || (step?.do === "work" && step.place === null && !step.even)
}

function isSameSpace(place: Place | null): place is Place {
  if (place?.at === "next")
    return place.bare === true && place.count === 1 && /^(?:space|corner)$/.test(place.noun.what)
  return place?.at === "same" && /^(?:space|corner|any)$/.test(place.noun.what)
}
