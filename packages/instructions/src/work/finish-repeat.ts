// How a repeat that goes "around" ends: with what is said of its last time, with part of a repeat, with the
// chains that lead back to the first stitch.

import type { Step } from "../base/tree.ts"
import { endOnFirst } from "./end-on-first.ts"
import { endsInTail } from "./ends-in-tail.ts"
import type { RoundWork } from "./round-work.ts"
import { nothingLeft, tryOnce } from "./try-once.ts"

type Repeat = Extract<Step, { do: "repeat" }>

/**
 * The ending after the last whole repeat.
 * @param full whole repeats worked
 * @param before elements made before the first of them
 */
export function finishRepeat(
  work: RoundWork,
  step: Repeat,
  full: number,
  beforeLast: ReturnType<RoundWork["mark"]>,
  before: number,
): void {
  if (!step.last) {
    if (full > 0 && step.times.kind === "until" && step.times.until.kind === "around") {
      if (nothingLeft(work) || isLoopAndStitch(step)) closeRound(work, step)
      else endWithPart(work, step, full, before)
    }
    return
  }
  const mark = work.mark()
  const usedUp = work.main.at >= work.end - 1 && nothingLeft(work)
  if (step.ending === "follows" && step.joins && usedUp && full > 0 && !beforeLast.startTaken) {
    // The last time ends on the stitch of the join instead of a stitch of its own.
    work.backTo(beforeLast)
    const failed = tryOnce(work, step.last)
    if (failed) throw failed
    return
  }
  const backIntoLoop = nothingLeft(work, ["chain"]) && leadsBackIntoLoop(work, step, before)
  const closes = usedUp && closesLoops(step, beforeLast)
  if (step.ending === "follows" && full > 1 && (closes || backIntoLoop)) {
    // "*ch 5, sk 1, sc in next; rep around, ending ch 2, dc in first sc": that is the last loop.
    if (work.choices.take("last-repeat", ["closes", "whole"]) === "closes") {
      work.backTo(beforeLast)
      if (!tryOnce(work, step.last)) return
      work.backTo(mark)
    }
  }
  if (step.ending === "follows") {
    if (!usedUp && endsInTail(work, step, step.last)) return
    const failed = tryOnce(work, step.last)
    if (!failed) return
    work.backTo(mark)
    if (full === 0) throw failed
    work.backTo(beforeLast)
    const again = tryOnce(work, step.last)
    if (again) throw again
    return
  }
  if (!usedUp || (beforeLast.startTaken && closesOnFirst(step.last))) {
    const failed = tryOnce(work, step.last)
    if (!failed) return
    work.backTo(mark)
    if (full === 0) throw failed
  }
  // The whole repeats fit exactly, so the last of them is the one that ends early.
  if (full > 0) {
    work.backTo(beforeLast)
    const again = tryOnce(work, step.last)
    if (again) throw again
  }
}

/** The ending closes the round on its first stitch and so needs no place of its own. */
function closesOnFirst(last: readonly Step[]): boolean {
  const tail = last[last.length - 1]
  if (tail?.do !== "work" || !tail.place) return false
  return (
    (tail.place.at === "made" && tail.place.which === "first") ||
    (tail.place.at === "next" && tail.place.order === "first") ||
    (tail.place.at === "same" && tail.place.begins === true)
  )
}

/**
 * Every time makes a loop over skipped stitches, or from the place the round began in, which is left free for the
 * end; and the ending is such a loop closed on the first stitch.
 */
function closesLoops(step: Repeat, beforeLast: ReturnType<RoundWork["mark"]>): boolean {
  const loops = step.body[0]?.do === "chain" && step.last?.[0]?.do === "chain"
  if (!loops || step.last?.length !== 2 || !closesOnFirst(step.last)) return false
  return step.body.some((part) => part.do === "skip") || !beforeLast.startTaken
}

/**
 * "Sl st to centre of loop, *ch 16, sc in next loop; rep around, ending ch 16, sl st in first ch": the round
 * begins and ends in the loop it was led into, or on the stitch that closed the last loop below, so that no
 * stitch goes into that loop.
 */
function leadsBackIntoLoop(work: RoundWork, step: Repeat, before: number): boolean {
  if (step.body[0]?.do !== "chain" || step.last?.[0]?.do !== "chain") return false
  if (work.repeatDepth !== 1 || work.inPlace) return false
  if (work.elements.slice(0, before).some(({ type }) => type === "stitch")) return false
  return work.startSite?.anchor.at === "space" || closedByStitch(work)
}

/** The round below ends on a stitch that closes its last loop ("ch 5, dtr in first sc"). */
function closedByStitch(work: RoundWork): boolean {
  const elements = work.shared.rounds[work.index - 1]?.elements
  const last = elements?.[elements.length - 1]
  const loop = elements?.[elements.length - 2]
  if (last?.type !== "stitch" || loop?.type !== "chain") return false
  const anchor = last.anchors[0]
  if (anchor?.at !== "stitch") return false
  // "dtr in first sc", or, where that round began on such a stitch itself, "tr in tr".
  const before = work.shared.rounds[work.index - 2]?.elements
  return (
    anchor.round === work.index - 1 ||
    (anchor.round === work.index - 2 && anchor.element === (before?.length ?? 0) - 1)
  )
}

/**
 * Stitches are left after the last whole repeat. Where the repeat ends on the stitches the round began
 * with, its last time goes without; and a spiral may break off inside a repeat, if the totals say so.
 */
function endWithPart(work: RoundWork, step: Repeat, full: number, before: number): void {
  if (
    work.startTaken &&
    !endsInWords(work, step) &&
    (endOnFirst(work, step, before) || endBeforeAlike(work, step, full, before))
  )
    return
  if (endWithWordsAfter(work, step) || finishSide(work, step)) return
  if (work.choices.take("last-repeat", ["whole", "in-part"]) === "whole") return
  for (const part of step.body) {
    const before = work.mark()
    if (!tryOnce(work, [part])) continue
    work.backTo(before)
    return
  }
}

/**
 * "1 sc, ch 3, 1 sc in same place, *ch 4, dc in next cluster, ch 4, (1 sc, ch 3, 1 sc) in next dc; rep from * around": the
 * group the repeat ends on is the one the round began with, and the last time goes without it.
 */
function endBeforeAlike(work: RoundWork, step: Repeat, full: number, before: number): boolean {
  if (work.repeatDepth !== 1) return false
  const stitches = (from: number) =>
    work.elements.slice(from).filter(({ type }) => type === "stitch").length
  const start = stitches(0) - stitches(before)
  const each = stitches(before) / full
  if (start < 2 || !Number.isInteger(each)) return false
  const made = work.elements.length
  const fromSpace = work.startSite?.anchor.at === "space"
  const mark = work.mark()
  for (let k = step.body.length - 1; k > 0; k--) {
    if (
      !tryOnce(work, step.body.slice(0, k)) &&
      nothingLeft(work, fromSpace ? ["chain"] : ["stitch"]) &&
      each - stitches(made) === start
    ) {
      work.openRepeat = null
      work.wholeTimes = null
      work.find({
        severity: "warning",
        code: "last-time-in-part",
        start: step.start,
        end: step.end,
        message:
          "The last time round does not fit whole; it is worked as far as the stitches the round began with.",
        hint: "Say how the last repeat ends, or state the round's total.",
      })
      return true
    }
    work.backTo(mark)
  }
  return false
}

/**
 * "*..., 2 dc in next dc, ch 2, 2 dc in next dc; rep from * around ending to correspond, ch 2, join": the chain after
 * the repeat is the last one inside it, and what follows that in the repeat is what the round began with.
 */
function endWithWordsAfter(work: RoundWork, step: Repeat): boolean {
  const after = work.allSteps[work.allSteps.indexOf(step) + 1]
  if (work.repeatDepth !== 1 || after?.do !== "chain" || !work.startTaken) return false
  const at = step.body.findLastIndex((part) => part.do === "chain" && part.chains === after.chains)
  if (at <= 0 || at === step.body.length - 1) return false
  const mark = work.mark()
  if (!tryOnce(work, step.body.slice(0, at)) && nothingLeft(work, ["stitch"])) {
    work.openRepeat = null
    work.wholeTimes = null
    return true
  }
  work.backTo(mark)
  return false
}

/** "*ch 3, sk 1, sc in next; rep from * around, ch 3, join": how the last time goes is said after it. */
function endsInWords(work: RoundWork, step: Repeat): boolean {
  const at = work.allSteps.indexOf(step)
  return at >= 0 && work.allSteps.slice(at + 1).some((after) => after.do === "chain")
}

/** "ch 5, sc in next loop": nothing is passed over on purpose. */
function isLoopAndStitch({ body }: Repeat): boolean {
  const [loop] = body
  const tail = body[body.length - 1]
  const between = body.slice(1, -1)
  return (
    loop?.do === "chain" &&
    tail?.do === "work" &&
    tail.place !== null &&
    between.every((step) => step.do === "skip")
  )
}

/**
 * "sc in first, *ch 5, sc in next; rep around": when the last is worked, nothing leads back to the first.
 * Where nothing more is said the chains go round to it; a join said outright is taken at its word.
 */
function closeRound(work: RoundWork, step: Repeat): void {
  const [first, second] = work.elements
  const [loop] = step.body
  const tail = step.body[step.body.length - 1]
  if (work.repeatDepth !== 1 || work.inPlace) return
  if (loop?.do !== "chain" || tail?.do !== "work") return
  const next = work.elements.find(({ type }) => type === "chain")
  if (first?.type !== "stitch" || next?.type !== "chain" || next.chains !== loop.chains) return
  if (first.kind.basic !== tail.stitch.kind.basic) return
  if (second?.type !== "chain" && tail.count < 2) return
  const rest = work.allSteps.slice(work.allSteps.indexOf(step) + 1)
  if (rest.some((after) => after.do !== "join" && after.do !== "slip" && after.do !== "turn"))
    return
  const skips = step.body.some((part) => part.do === "skip")
  // Each time passes over stitches to its own: when none are left, the last ends beside the first.
  if (skips && nothingLeft(work)) return
  // A join said outright is taken at its word, unless stitches are left for the chains to pass over.
  const open = rest.length > 0 && !skips
  const taken = work.choices.take(
    "last-repeat",
    open ? (["whole", "closed"] as const) : (["closed", "whole"] as const),
  )
  if (taken === "closed") work.addChains(loop.chains, loop)
  work.find({
    severity: taken === "closed" && skips ? "note" : "warning",
    code: "open-at-join",
    start: step.start,
    end: step.end,
    message:
      taken === "closed"
        ? `Between the last stitch and the first nothing is said; ${loop.chains} chains are worked there as between the others.`
        : "Between the last stitch and the first there are no chains, as there are between all others.",
    hint: `Write "ch ${loop.chains}" before the join if that is meant.`,
  })
}

/** Nothing but the join follows it. */
export function endsRound(work: RoundWork, step: Repeat): boolean {
  const at = work.allSteps.indexOf(step)
  const closesNext = (after: Step) => /^(?:join|slip|turn|mode)$/.test(after.do)
  return at >= 0 && work.allSteps.slice(at + 1).every(closesNext)
}

/** The same after a counted repeat that nothing but the join follows. */
export function finishCounted(work: RoundWork, step: Repeat): void {
  if (!endsRound(work, step) || nothingLeft(work)) return
  const first = step.body[0]
  if (first?.do === "work" && first.place?.at === "each" && first.place.until.kind === "to")
    finishSide(work, step)
}

/** A round that starts inside a side ends with the rest of that side: "in each" at the start of the repeat takes it. */
function finishSide(work: RoundWork, step: Repeat): boolean {
  const first = step.body[0]
  if (first?.do !== "work" || first.place?.at !== "each") return false
  const mark = work.mark()
  if (!tryOnce(work, [first]) && nothingLeft(work)) {
    work.openRepeat = null
    work.find({
      severity: "note",
      code: "side-finished",
      start: first.start,
      end: first.end,
      message: "After the last repeat the side that the round began in is finished with this.",
      hint: "Say so at the end of the round.",
    })
    return true
  }
  work.backTo(mark)
  return false
}
