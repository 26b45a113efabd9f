// Squaring in single stitches: the search proposes, the laid-out shape decides. What is easy to work is tried first, and
// more only where the sides would not be straight: one graded round, then a taller stitch, then more rounds graded.

import type { Motif } from "@roundwright/motif"
import type { Gauge, StitchKind } from "@roundwright/stitches"
import { type Case, type Judged, Jury } from "./jury.ts"
import type { Palette } from "./palette.ts"
import type { SearchCount } from "./plan-score.ts"
import { compareScores } from "./score.ts"
import { searchPlans } from "./search.ts"
import { type Manner, rulesFor, type SquareOptions } from "./square-options.ts"
import { plainStarts, type Start, startsFor } from "./square-starts.ts"

/** Laid out and measured: enough that the model's errors do not decide, few enough for a second; of a further idea fewer. */
const mostJudged = 6
const fewestJudged = 3
/** A circle so long needs tall stitches, and each of its nets takes as long as ten of a small one. */
const longRound = 100
const mostJudgedBriefly = 3
const mostAimedBriefly = 1
/** Nodes of net laid out in all: keeps large pieces within a few seconds. */
const mostJudgedNodes = 2_400
/** The same with the last rounds searched again: a piece of some thousand stitches is laid out once. */
const mostNodesInAll = 6_000
/** The same while no proposal meets the target: such circles are rare and worth a few seconds. */
const mostNodesIfPoor = 30_000
/** Plans whose last round is searched again over the edge as the net laid it, always and where none meets the target. */
const mostAimed = 3
const mostAimedIfPoor = 9

export interface SolidWish {
  readonly options: SquareOptions
  readonly palette: Palette
  readonly allowed: readonly StitchKind[]
  /** What the proposals are called. */
  readonly idea: string
  /** Go on beyond the manners that are easy to work where none comes out straight. */
  readonly thorough: boolean
  /** The whole piece, where the motif stands in for it. */
  readonly restore: (worked: Motif) => Motif
}

/** Best first; empty where no round of these stitches and corners fits. */
export function solidProposals(
  motif: Motif,
  gauge: Gauge,
  wish: SolidWish,
  count: SearchCount,
): Judged[] {
  const long = (motif.rounds.at(-1)?.elements.length ?? 0) > longRound
  const all = mannersFor(wish.options.rounds, wish.palette, wish.thorough || long)
  // One graded round does not square a circle so long: its corners have too far to go.
  const free = all.filter(({ gradedAt, tallest }) => gradedAt === "all" && tallest !== "dc")
  const manners = long && free.length > 0 ? free.slice(0, wish.thorough ? 2 : 1) : all
  let best: Judged[] = []
  for (const manner of manners) {
    const climbing = manner === manners.at(-1) && wish.thorough && !long
    const found = inManner(
      motif,
      gauge,
      { ...wish, thorough: wish.thorough && !long },
      manner,
      climbing,
      count,
    )
    if (found[0] !== undefined && (best[0] === undefined || found[0].distance < best[0].distance))
      best = found
    if (best[0] !== undefined && best[0].distance <= (long ? 1 : 0)) break
  }
  return best
}

/** The easiest to work first. */
function mannersFor(rounds: number, palette: Palette, thorough: boolean): Manner[] {
  const tall = palette.heightMm.length > 0 && palette.kinds.some(({ basic }) => basic === "tr")
  const steps: StitchKind["basic"][] = tall ? ["dc", "tr"] : ["dc"]
  const one = [...new Set([0, rounds - 1])]
  const easy = steps.flatMap((tallest) =>
    one.map((gradedAt): Manner => ({ gradedAt, tallest, grading: "graded" })),
  )
  const more: Manner[] = [
    ...(rounds > 1
      ? steps.map((tallest): Manner => ({ gradedAt: "all", tallest, grading: "graded" }))
      : []),
    { gradedAt: "all", tallest: null, grading: "any" },
  ]
  return thorough ? [...easy, ...more] : easy
}

function inManner(
  motif: Motif,
  gauge: Gauge,
  wish: SolidWish,
  manner: Manner,
  climbing: boolean,
  count: SearchCount,
): Judged[] {
  const { options, palette, allowed } = wish
  const { corners, terms = "US" } = options
  const rules = rulesFor(options, palette, allowed, manner)
  const jury = new Jury(motif, gauge, palette, count, wish.idea, wish.restore)
  const starts = startsFor(motif, gauge, corners, rules, allowed, terms)
  const found = casesOf(starts, palette, count)
  judgeFirst(jury, found, wish.thorough ? mostJudged : mostJudgedBriefly)
  aim(jury, jury.targetMet || !wish.thorough ? mostAimedBriefly : mostAimed, mostNodesInAll)
  if (climbing) {
    if (!jury.targetMet) aim(jury, mostAimedIfPoor - mostAimed, mostNodesInAll)
    if (!jury.targetMet && !jury.hopeless) {
      const others = plainStarts(motif, gauge, corners, rules, allowed, terms, starts)
      judgeMore(jury, [...found, ...casesOf(others, palette, count)])
      jury.climb(mostNodesIfPoor)
    }
  }
  return jury.best()
}

/** The best plans by the fast model for every way to begin, best first. */
function casesOf(starts: readonly Start[], palette: Palette, count: SearchCount): Case[] {
  return starts
    .flatMap((start) =>
      start.beginnings.flatMap((beginning) =>
        searchPlans([beginning.half], palette, start.rules, mostJudged, count).map((plan) => ({
          plan,
          beginning,
          start,
        })),
      ),
    )
    .sort((a, b) => compareScores(a.plan.score, b.plan.score))
}

function judgeFirst(jury: Jury, cases: readonly Case[], most: number): void {
  for (const one of cases) {
    if (jury.size >= most) return
    if (jury.size >= fewestJudged && jury.nodes > mostJudgedNodes) return
    if (jury.size > 0 && jury.nodes > mostNodesInAll) return
    jury.judge(one)
  }
}

function aim(jury: Jury, most: number, mostNodes: number): void {
  for (let aimed = 0; aimed < most && jury.nodes <= mostNodes; aimed++)
    if (!jury.aimAtBest()) return
}

/** The plans left, each aimed again when it comes out best, until one meets the target. */
function judgeMore(jury: Jury, cases: readonly Case[]): void {
  for (const one of cases) {
    if (jury.targetMet || jury.nodes > mostNodesIfPoor / 2) return
    if (jury.judge(one) && !jury.targetMet) jury.aimAtBest()
  }
}
