// "... rep around, ending with sc in last 2": whether that follows the last whole repeat, or is the tail of
// a last time round that is otherwise as the others.

import type { Noun, Step } from "../base/tree.ts"
import { meaningOf } from "../edge/meanings.ts"
import { findSite } from "../edge/sites.ts"
import type { RoundWork } from "./round-work.ts"
import { nothingLeft, tryOnce } from "./try-once.ts"

type Repeat = Extract<Step, { do: "repeat" }>

/**
 * "*3 sc in corner, sc in next 3; rep from *, ending with sc in last 2": the ending alone leaves a stitch
 * between, and as the tail of a last time round it leaves none. Works that last time, if so.
 */
export function endsInTail(work: RoundWork, step: Repeat, last: readonly Step[]): boolean {
  const mark = work.mark()
  const alone = tryOnce(work, last)
  const gone = !alone && nothingLeft(work) && takesAllFrom(work, mark.at)
  const leaves = !alone && leavesNamed(work, step.body, mark.at)
  work.backTo(mark)
  if (gone) return false
  const tail = step.tail
  if (tail && tail.length > last.length) {
    // Loops that the whole round goes past may be left behind its last stitch as well.
    const passed = worksSpaces(work) ? undefined : (["stitch"] as const)
    if (!tryOnce(work, tail) && nothingLeft(work, passed) && takesAllFrom(work, mark.at))
      return true
    work.backTo(mark)
  }
  // What is skipped in every repeat may go without saying before the join.
  if (!leaves || step.body.some((part) => part.do === "skip")) return false
  for (let kept = step.body.length - 1; kept >= 1; kept--) {
    // The chains of the ending are those of the repeat, and no further ones.
    if (last[0]?.do === "chain" && step.body[kept - 1]?.do === "chain") continue
    const failed = tryOnce(work, [...step.body.slice(0, kept), ...last])
    if (!failed && !leavesNamed(work, step.body, mark.at)) return true
    work.backTo(mark)
  }
  return false
}

/** Every stitch from there on has been used, and every chain where the round works into spaces. */
function takesAllFrom(work: RoundWork, from: number): boolean {
  const { edge } = work.main
  const used = work.usedCells(edge)
  const spaces = edge.cells.some((cell, index) => cell.type === "chain" && used.has(index))
  for (let at = from; at < work.end; at++) {
    const index = ((at % edge.size) + edge.size) % edge.size
    const type = edge.cells[index]?.type
    if ((type === "stitch" || (spaces && type === "chain")) && !used.has(index)) return false
  }
  return true
}

function worksSpaces(work: RoundWork): boolean {
  const { edge } = work.main
  const used = work.usedCells(edge)
  return edge.cells.some((cell, index) => cell.type === "chain" && used.has(index))
}

/** A space or picot that the repeat names and works into has been left from there on. */
function leavesNamed(work: RoundWork, body: readonly Step[], from: number): boolean {
  const { edge } = work.main
  const used = work.usedCells(edge)
  return body.some((step) => {
    if ((step.do !== "work" && step.do !== "group") || step.place?.at !== "next") return false
    const { place } = step
    if (place.noun.what !== "space" || place.ofRound !== undefined || place.below !== undefined)
      return false
    return leftOf(work, place.noun, from, used)
  })
}

function leftOf(work: RoundWork, noun: Noun, from: number, used: ReadonlySet<number>): boolean {
  const { edge } = work.main
  const meaning = meaningOf(edge, noun)
  for (let at = from; meaning.exists && at < work.end; ) {
    const site = findSite(edge, meaning.noun, at, work.end, work.main.base, null)
    if (!site) return false
    const index = ((site.from % edge.size) + edge.size) % edge.size
    if (!used.has(index)) return true
    at = Math.max(at + 1, site.to)
  }
  return false
}
