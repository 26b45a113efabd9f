// Each round accounted for against the one before: what was left over, with both numbers.

import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import { plural } from "../base/wording.ts"
import type { RoundWork } from "../work/round-work.ts"
import { type Gap, gapUnlikeRepeats, type UnlikeGap } from "./closing-gap.ts"
import { isImpliedSkip, type Left, spacesLeft, stitchesLeft, unevenClose } from "./left-over.ts"
import { type SkipRuns, skipRuns, usage } from "./usage.ts"

/** What the round left of the edge below, as findings. */
export function leftOver(work: RoundWork, span: Span): Finding[] {
  const { edge } = work.main
  if (edge.round < 0 || edge.size === 0) return []
  const state = usage(work)
  if (state.complete) return []
  if (!state.any && work.used.some((use) => use.use !== "slipped")) return []
  const few = nearlyAllLeft(work, span)
  if (few) return [few]
  if (!state.any) return []
  const findings: Finding[] = []
  const runs = skipRuns(edge, state)
  const unlike = gapUnlikeRepeats(work)
  const stitches = work.picked ? null : stitchesLeft(edge, state)
  if (stitches && (unlike || !isImpliedSkip(state, stitches, runs))) {
    const left = leftFinding(work, span, stitches, "stitch")
    findings.push(
      stitches.inside && stitches.left <= stitches.used && isRegular(runs)
        ? { ...left, severity: "note" }
        : left,
    )
  }
  const spaces = spacesLeft(edge, state, work.overLoops)
  if (spaces) findings.push(leftFinding(work, span, spaces, "space"))
  if (findings.length === 0 && unlike) findings.push(unevenTimes(work, unlike, span))
  if (findings.length === 0 && !work.picked) {
    const uneven = unevenClose(work, runs, span)
    if (uneven) findings.push(uneven)
  }
  return findings
}

/** Fewest times the same must be passed over to be the pattern's way. */
const fewestTimes = 4

/** All around the same numbers are passed over again and again, the join with them: so it is meant. */
function isRegular({ lengths, closing }: SkipRuns): boolean {
  const all = [...lengths, closing]
  for (let period = 1; period * fewestTimes <= all.length; period++)
    if (
      all.length % period === 0 &&
      all.every((length, i) => length === all[(i + period) % all.length])
    )
      return true
  return false
}

/** Fewest stitches below that make a round of one place an unfinished one. */
const fewestForUnfinished = 6

/** The whole round is worked into one place or two neighbours of many: its text stops short. */
function nearlyAllLeft(work: RoundWork, span: Span): Finding | null {
  const { edge } = work.main
  if (work.others.size > 0) return null
  const worked = new Set<number>()
  for (const use of work.used) {
    if (use.edge === edge && use.use === "worked") worked.add(use.from % edge.size)
    if (worked.size > 2) return null
  }
  const there = edge.cells.filter((cell) => cell.type === "stitch").length
  if (there < fewestForUnfinished * Math.max(1, worked.size)) return null
  // Points worked back along their own chains, and rounds behind others, take nothing of the round before.
  const stands = work.elements.some(
    (element) =>
      element.type === "stitch" &&
      element.anchors.some((anchor) => anchor.at !== "centre" && anchor.round === work.index),
  )
  if (worked.size === 0 && (stands || work.passes)) return null
  return {
    severity: "warning",
    code: "stitches-left-over",
    ...span,
    message: `The round before has ${there} stitches; this round works into ${intoHowMany(worked.size)}.`,
    hint: "Look whether the text of the round is cut short.",
  }
}

function intoHowMany(places: number): string {
  return places === 0
    ? "none of them"
    : `${places === 1 ? "one place" : "two places"} only and leaves the rest`
}

/** The last time round leaves something others do not, or meets what the first one has passed over. */
function unevenTimes(work: RoundWork, { usual, closing }: UnlikeGap, span: Span): Finding {
  return {
    severity: "warning",
    code: "repeat-does-not-divide",
    start: work.openRepeat?.start ?? span.start,
    end: work.openRepeat?.end ?? span.end,
    message: `Between one repeat and the next ${gapWords(usual)}, but between the last and the start of the round ${gapWords(closing)}.`,
    hint: "Count the round before, or say how the round ends.",
  }
}

function gapWords({ stitches, spaces }: Gap): string {
  if (stitches < 0 || spaces < 0) return "they overlap"
  const words = [
    ...(stitches > 0 ? [plural(stitches, "stitch", "stitches")] : []),
    ...(spaces > 0 ? [plural(spaces, "space", "spaces")] : []),
  ].join(" and ")
  return words === ""
    ? "nothing is passed over"
    : `${words} ${stitches + spaces === 1 ? "is" : "are"} passed over`
}

function leftFinding(work: RoundWork, span: Span, left: Left, what: "stitch" | "space"): Finding {
  const one = left.name
  const several = what === "stitch" ? "stitches" : `${left.name}s`
  const repeat = work.openRepeat
  if (repeat && !left.inside && what === "stitch") {
    const uses = repeat.uses
    return {
      severity: "warning",
      code: "repeat-does-not-divide",
      start: repeat.start,
      end: repeat.end,
      message: `The round before has ${plural(left.there, one, several)}, the repeat uses ${uses}: ${repeat.full} repeats and ${left.left} left over.`,
      hint: `Let the round before have ${left.there - left.left} or ${left.there - left.left + uses}, or say how the round ends.`,
    }
  }
  return {
    severity: "warning",
    code:
      what === "stitch"
        ? left.inside
          ? "stitches-passed-over"
          : "stitches-left-over"
        : "spaces-left-over",
    start: span.start,
    end: span.end,
    message: `The round before has ${plural(left.there, one, several)}; this round uses ${left.used} of them and leaves ${left.left}.`,
    hint:
      what === "space"
        ? "Work one repeat more, or make one group less in the round before."
        : "Count the repeats, or say that the rest is skipped.",
  }
}
