// Stitches spread evenly over the whole round below, where the text gives only their number.

import type { Anchor } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import type { Step } from "../base/tree.ts"
import { makeStitches } from "./make-stitches.ts"
import type { RoundWork } from "./round-work.ts"

/** "36 sc evenly, increasing 6": so many stitches spread over the whole round below. */
export function workEvenly(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const { edge } = work.main
  const below: number[] = []
  edge.cells.forEach((cell, index) => {
    if (cell.type === "stitch" || (cell.type === "chain" && edge.round < 0)) below.push(index)
  })
  if (below.length === 0)
    edge.cells.forEach((cell, index) => {
      if (cell.type === "chain") below.push(index)
    })
  const count = step.count > 0 ? step.count : Math.max(1, below.length + (step.extra ?? 0))
  // "Ch 4 (counts as tr), inc 15 tr evenly around": of a whole round the starting stitch is one.
  const begun = step.count === 0 ? work.elements.filter(({ type }) => type === "stitch").length : 0
  if (below.length === 0) {
    makeStitches(work, step, step.stitch, [{ at: "centre" }], count)
    return
  }
  const more = Math.abs(count - below.length)
  if (step.count > 0 && step.extra !== undefined && Math.abs(step.extra) !== more)
    work.find({
      severity: "warning",
      code: "figure-passed-over",
      start: step.start,
      end: step.end,
      message: `The text speaks of ${Math.abs(step.extra)} increases or decreases; from ${below.length} to ${count} stitches it takes ${more}.`,
      hint: "Mend one of the two figures.",
    })
  const place = (k: number) => edge.anchorAt(below[k]!, false)
  if (work.startTaken && work.between > 0 && count < below.length) {
    // The starting stitch is the first of them.
    for (let i = 1; i <= count; i++)
      makeStitches(
        work,
        step,
        step.stitch,
        [place(Math.floor((i * below.length) / (count + 1)))],
        1,
      )
  } else if (count >= below.length) {
    // The increases stand evenly, the first in the first stitch.
    let made = begun
    for (let k = 0; k < below.length; k++) {
      const upTo = Math.ceil(((k + 1) * count) / below.length - 1e-9)
      if (upTo > made) makeStitches(work, step, step.stitch, [place(k)], upTo - made)
      made = Math.max(made, upTo)
    }
  } else
    for (let i = begun; i < count; i++) {
      const anchors: Anchor[] = []
      for (
        let k = Math.floor((i * below.length) / count);
        k < Math.floor(((i + 1) * below.length) / count);
        k++
      )
        anchors.push(place(k))
      const kind: StitchKind =
        anchors.length > 1
          ? { ...step.stitch.kind, gathered: { how: "together", legs: anchors.length } }
          : step.stitch.kind
      makeStitches(work, step, { kind, tog: false }, anchors, 1)
    }
  for (const index of below)
    work.use(work.main, { from: index, to: index + 1, anchor: place(0) }, "worked")
  work.main.at = work.end
  work.find({
    severity: "note",
    code: "spread-evenly",
    start: step.start,
    end: step.end,
    message: `${count} stitches are spread evenly over the ${below.length} below; where the increases or decreases stand is not said.`,
    hint: "Write the repeat out if their places matter.",
  })
}
