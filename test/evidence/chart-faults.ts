// Charts for print of the motifs of the data sets: posts of a round that cross, symbols that lie on one another, and how far
// a turn by one repeat is from mapping marks on marks.

import { examinePattern } from "@roundwright/assessment"
import { crossingsOf, inked, overlapsOf, type PrintMark, roomyLayout } from "@roundwright/charts"
import type { Motif } from "@roundwright/motif"

export interface ChartFaults {
  readonly repeats: number
  readonly marks: number
  readonly crossings: number
  readonly overlaps: number
  /** Largest distance, mm, of a turned mark from the nearest of its kind in its round. */
  readonly offTurn: number
}

/** Null for a pattern that could not be read whole or laid out. */
export function chartFaults(text: string): ChartFaults | null {
  const { shape, reading } = examinePattern(text, { shape: "net", remedies: false })
  const { motif, rounds } = reading
  if (!shape || motif.rounds.length < rounds.length) return null
  const { marks, repeats } = roomyLayout(motif, shape)
  return {
    repeats,
    marks: marks.length,
    crossings: crossingsOf(marks).length,
    overlaps: overlapsOf(inked(marks)).length,
    offTurn: offTurn(marks, repeats, motif),
  }
}

/**
 * Stitches, whatever they are begun with, chains and picots; joins and what leads to a start stand once. So does a loop that
 * its words close with a stitch in place of its last chains: it and its images are left out.
 */
function offTurn(marks: readonly PrintMark[], repeats: number, { rounds }: Motif): number {
  const closed = (round: number, element: number) => {
    const { elements } = rounds[round]!
    const own = elements.length / repeats
    return elements.some(
      (one, k) => one.type === "chain" && one.closedWith && k % own === element % own,
    )
  }
  const turn = (2 * Math.PI) / repeats
  const [c, s] = [Math.cos(turn), Math.sin(turn)]
  const work = marks.filter(
    ({ kind, posts, round, element }) =>
      (["stitch", "chain", "picot"].includes(kind) || (kind === "start" && posts.length > 0)) &&
      !closed(round, element),
  )
  const family = ({ kind, round }: PrintMark) => `${round} ${kind === "start" ? "stitch" : kind}`
  let most = 0
  for (const mark of work) {
    const { x, y } = mark.at
    const to = { x: c * x - s * y, y: s * x + c * y }
    const near = work
      .filter((other) => family(other) === family(mark))
      .reduce(
        (least, { at }) => Math.min(least, Math.hypot(at.x - to.x, at.y - to.y)),
        Number.POSITIVE_INFINITY,
      )
    most = Math.max(most, near)
  }
  return most
}
