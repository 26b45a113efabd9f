// A repeat whose last time ends on the stitches the round began with, which are not made again.

import { anchorKey } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import type { Noun, Place, Step } from "../base/tree.ts"
import { findSite } from "../edge/sites.ts"
import type { RoundWork } from "./round-work.ts"
import { nothingLeft, tryOnce } from "./try-once.ts"

/**
 * "sc in same st, *..., sc in next 5; rep around": the last of the 5 is the first of the round. Only where
 * the stitches before the repeat are of the kind it ends on, one to a place, and just as many are missing.
 */
export function endOnFirst(
  work: RoundWork,
  step: Extract<Step, { do: "repeat" }>,
  made: number,
): boolean {
  // "ch 11, *..., tr in next, ch 5; rep": the loop behind the first stitch is the last one of the repeat too.
  const loop = step.body[step.body.length - 1]
  const loopMade = work.elements[made - 1]
  const looped =
    loop?.do === "chain" && loopMade?.type === "chain" && loopMade.chains === loop.chains
  const before = looped ? made - 1 : made
  const body = looped ? step.body.slice(0, -1) : step.body
  const tail = body[body.length - 1]
  const shorter = tail && withoutLast(tail, before)
  if (!shorter || tail.do !== "work" || !goesWhereFirst(work, tail.place)) return false
  const places = new Set<string>()
  for (const element of work.elements.slice(0, before)) {
    if (element.type !== "stitch" || !alike(element.kind, tail.stitch.kind)) return false
    for (const anchor of element.anchors) places.add(anchorKey(anchor))
  }
  if (places.size !== before) return false
  const passed = passedBeforeLast(work, before)
  const mark = work.mark()
  const failed = tryOnce(work, [...body.slice(0, -1), ...shorter])
  // Of a round that goes from space to space the stitch before the first space is left, as are those between the others.
  const fromSpace = work.startSite?.anchor.at === "space"
  const gone =
    nothingLeft(work, fromSpace ? ["chain"] : ["stitch", "chain"]) ||
    (passed > 0 && work.end - work.main.at === passed)
  if (failed || !gone) {
    work.backTo(mark)
    return false
  }
  work.openRepeat = null
  work.wholeTimes = null
  const one = before === 1
  const these = one ? "this stitch is the first one" : `the last ${before} are the first ones`
  work.find({
    severity: "note",
    code: "last-stitch-is-first",
    start: tail.start,
    end: tail.end,
    message: `The last time round ${these} of the round, and ${one ? "is" : "are"} not made again.`,
    hint: `Say so: omit ${one ? "it" : "them"} in the last repeat.`,
  })
  return true
}

/** Cells that the last whole repeat went past right before the `count` stitches it ended on. */
function passedBeforeLast({ used, main }: RoundWork, count: number): number {
  const worked = used.filter(({ edge, use }) => edge === main.edge && use === "worked")
  const before = worked[worked.length - count - 1]
  const first = worked[worked.length - count]
  return before && first ? first.from - before.to : 0
}

/** What the repeat ends on is worked into places such as the first of the round: a stitch, or a space. */
function goesWhereFirst(work: RoundWork, place: Place | null): boolean {
  const { startSite, main } = work
  if (!startSite) return false
  const noun: Noun = place?.at === "next" ? place.noun : { what: "stitch" }
  const meaning = work.meaning(main, noun, place ?? { start: 0, end: 0 })
  const { from, to } = startSite
  return meaning.exists && findSite(main.edge, meaning.noun, from, to, main.base, null) !== null
}

/** "sc in next 5", "5 sc" with so many fewer; null when it has not as many, or is no row of single stitches. */
function withoutLast(step: Step, fewer: number): Step[] | null {
  if (step.do !== "work" || step.stitch.tog || step.stitch.shape || fewer < 1) return null
  const { place, count } = step
  if (place && (place.at !== "next" || place.pick !== undefined)) return null
  const made = place ? place.count : count
  if (made < fewer || (place && count !== 1)) return null
  if (made === fewer) return []
  return [
    place
      ? { ...step, place: { ...place, count: made - fewer } }
      : { ...step, count: made - fewer },
  ]
}

function alike(a: StitchKind, b: StitchKind): boolean {
  return a.basic === b.basic && (a.gathered === undefined) === (b.gathered === undefined)
}
