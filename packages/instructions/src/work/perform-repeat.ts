// Repeats: so many times, or for as long as the round below lasts.

import type { Step, Until } from "../base/tree.ts"
import { boundaryOf } from "./boundaries.ts"
import { endsRound, finishCounted, finishRepeat } from "./finish-repeat.ts"
import { CannotWork, type RoundWork } from "./round-work.ts"
import { nothingLeft, tryOnce } from "./try-once.ts"

type Repeat = Extract<Step, { do: "repeat" }>

/** Most repeats written out by a number; more is a slip of the pen. */
const mostRepeats = 5_000

export function repeatSteps(work: RoundWork, step: Repeat): void {
  if (work.repeatDepth === 0 && work.elements.length > 0) work.madeBeforeRepeat = true
  work.repeatDepth += 1
  const { doubles, spreads } = work
  work.doubles = plainAndDoubled(step.body)
  work.spreads = plainInSeveral(step.body)
  try {
    if (step.times.kind === "until") repeatUntil(work, step)
    else repeatCounted(work, step, countOf(work, step.times))
  } finally {
    work.repeatDepth -= 1
    work.doubles = doubles
    work.spreads = spreads
  }
}

/** "2 tr in next 2 sts, 2 tr in next st": were the first two in each, the words would say two in each of three. */
function plainInSeveral(body: readonly Step[]): boolean {
  const into = (step: Step, places: number) =>
    step.do === "work" &&
    step.place?.at === "next" &&
    !step.place.each &&
    step.place.pick === undefined &&
    step.place.count === places
  return body.some(
    (step) =>
      step.do === "work" &&
      into(step, step.count) &&
      step.count > 1 &&
      body.some((other) => other.do === "work" && other.count === step.count && into(other, 1)),
  )
}

/** "(1 dc, 2 dc)": one in the next stitch, two in the one after it; nobody parts three plain stitches so. */
function plainAndDoubled(body: readonly Step[]): boolean {
  const [first] = body
  if (first?.do !== "work" || body.length !== 2) return false
  const counts: number[] = []
  for (const step of body) {
    if (step.do !== "work" || step.place || step.stitch.tog || step.stitch.shape) return false
    if (step.stitch.kind.basic !== first.stitch.kind.basic) return false
    counts.push(step.count)
  }
  return Math.min(...counts) === 1 && Math.max(...counts) > 1
}

function countOf(work: RoundWork, times: Exclude<Repeat["times"], { kind: "until" }>): number {
  if (times.kind === "total") return times.count
  if (!times.plain) return times.count + 1
  const taken = work.choices.take(
    "times",
    times.ofBracket || (times.untilMade && startsAlike(work))
      ? ["in-all", "more"]
      : ["more", "in-all"],
  )
  return taken === "more" ? times.count + 1 : times.count
}

/** A stitch, or a group of them, stands before the repeat: the first of those it makes. */
function startsAlike({ elements, startChain }: RoundWork): boolean {
  const stitches = elements.filter(({ type }) => type === "stitch").length
  const [first] = elements
  const gathered = first?.type === "stitch" && first.kind.gathered !== undefined
  return stitches > (startChain?.counts && elements.length === 1 && !gathered ? 1 : 0)
}

function repeatCounted(work: RoundWork, step: Repeat, count: number): void {
  if (!Number.isInteger(count) || count < 1) return
  if (count > mostRepeats)
    throw new CannotWork({
      severity: "error",
      code: "too-many-repeats",
      start: step.start,
      end: step.end,
      message: `A repeat of ${count.toLocaleString("en")} times cannot be meant.`,
      hint: `Look at the number; up to ${mostRepeats.toLocaleString("en")} are worked.`,
    })
  const top = work.repeatDepth === 1 && work.inPlace === null
  const starts: number[] = []
  for (let i = 0; i < count; i++) {
    const last = i === count - 1
    if (last && step.last && step.ending === "replaces") work.performers.steps(work, step.last)
    else {
      starts.push(work.used.length)
      if (!last || !slipsIntoStart(work, step.body)) work.performers.steps(work, step.body)
    }
  }
  if (step.last && step.ending === "follows") work.performers.steps(work, step.last)
  if (top)
    work.wholeTimes =
      !step.last && endsRound(work, step)
        ? { starts, end: work.used.length, at: work.main.at, counted: true }
        : null
  if (top && !step.last) finishCounted(work, step)
  if (top) work.mainRepeats = Math.max(work.mainRepeats, count)
}

/** Repeats while whole repeats fit; then the ending, if one is named. */
function repeatUntil(work: RoundWork, step: Repeat): void {
  if (step.times.kind !== "until") return
  const { main } = work
  // A repeat that nothing ends goes round as one that is said to.
  const until: Until = step.times.until.kind === "around" ? { kind: "around" } : step.times.until
  const boundary = boundaryOf(work, main, until, step)
  const bounded = step.times.until.kind !== "around"
  let full = 0
  const starts: number[] = []
  const elementsBefore = work.elements.length
  let mark = work.mark()
  let beforeLast = mark
  let stopped: CannotWork | null = null
  for (;;) {
    if (positionSum(work) >= limitSum(work, boundary) && full > 0) break
    mark = work.mark()
    const at = positionSum(work)
    const failed = tryOnce(work, step.body)
    if (failed) {
      stopped = failed
      work.backTo(mark)
      if (full > 0 && !step.last && slipsIntoStart(work, step.body)) full += 1
      break
    }
    if (bounded && main.at > boundary) {
      work.backTo(mark)
      break
    }
    beforeLast = mark
    starts.push(mark.used)
    full += 1
    if (positionSum(work) <= at)
      throw new CannotWork({
        severity: "error",
        code: "repeat-without-end",
        start: step.start,
        end: step.end,
        message: 'This repeat uses nothing of the round before, so "around" gives it no end.',
        hint: "Say how often it is worked.",
      })
    work.countStep(step)
  }
  if (full === 0 && step.last === null && stopped) throw stopped
  if (until.kind === "leaving" && full > 0 && step.last === null)
    endsBefore(work, step, until, boundary)
  work.wholeTimes = null
  if (work.repeatDepth === 1 && work.inPlace === null && full > 0 && step.last === null)
    work.wholeTimes = { starts, end: work.used.length, at: work.main.at, counted: false }
  if (work.repeatDepth === 1 && !bounded && step.last === null && full > 0)
    work.openRepeat = {
      start: step.start,
      end: step.end,
      full,
      uses: stitchesUsed(work, beforeLast.at),
    }
  finishRepeat(work, step, full, beforeLast, elementsBefore)
  if (work.repeatDepth === 1)
    work.mainRepeats = Math.max(
      work.mainRepeats,
      full + (step.last && step.ending === "replaces" ? 1 : 0),
    )
}

/** "Rep to last 1 st" where whole repeats leave two: told. */
function endsBefore(
  work: RoundWork,
  step: Repeat,
  until: Extract<Until, { kind: "leaving" }>,
  boundary: number,
): void {
  const { edge, at } = work.main
  let more = 0
  for (let k = at; k < boundary; k++)
    if (edge.cells[((k % edge.size) + edge.size) % edge.size]?.type === "stitch") more += 1
  if (more === 0 || until.noun || until.ofGroup || edge.round < 0) return
  work.find({
    severity: "note",
    code: "figure-passed-over",
    start: step.start,
    end: step.end,
    message: `Whole repeats leave ${until.count + more} stitches here, where ${until.count} ${until.count === 1 ? "is" : "are"} to be left.`,
    hint: "Count again how many are left.",
  })
}

/** "*5 dc in next loop, sl st in next loop" for the last time: the slip stitch goes into the loop the round began in. */
function slipsIntoStart(work: RoundWork, body: readonly Step[]): boolean {
  const slip = body[body.length - 1]
  if (slip?.do !== "slip" || slip.place?.at !== "next" || slip.place.count !== 1 || body.length < 2)
    return false
  const { startSite } = work
  if (!startSite || work.inPlace || work.repeatDepth !== 1) return false
  const mark = work.mark()
  const uses = work.used.length
  const fits =
    !tryOnce(work, body.slice(0, -1)) && work.used.slice(uses).some(({ use }) => use === "worked")
  const kinds = slip.place.noun.what === "space" ? (["chain"] as const) : undefined
  if (fits && nothingLeft(work, kinds) && tryOnce(work, [slip])) {
    work.add(
      { type: "stitch", kind: slip.kind ?? { basic: "sl st" }, anchors: [startSite.anchor] },
      slip,
    )
    return true
  }
  work.backTo(mark)
  return false
}

function positionSum(work: RoundWork): number {
  let sum = work.main.at
  for (const position of work.others.values()) sum += position.at - position.base
  return sum
}

function limitSum(work: RoundWork, boundary: number): number {
  let sum = boundary
  let others = 0
  for (const position of work.others.values()) {
    others += 1
    sum += position.edge.size
  }
  // A repeat that works into an earlier round ends where the first of the edges does.
  if (others > 0)
    for (const position of work.others.values())
      if (position.at - position.base >= position.edge.size && work.main.at >= boundary) return 0
  return others > 0 ? sum : boundary
}

/** Stitches of the edge below that one repeat takes. */
function stitchesUsed(work: RoundWork, from: number): number {
  const { edge, at } = work.main
  let stitches = 0
  for (let k = from; k < at; k++)
    if (edge.cells[((k % edge.size) + edge.size) % edge.size]?.type === "stitch") stitches += 1
  return Math.max(1, stitches)
}
