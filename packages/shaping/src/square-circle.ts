// From any last round to a polygon with straight sides: the search proposes, the laid-out shape decides.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { type Case, Jury } from "./jury.ts"
import { type Palette, paletteOf, usualStitches } from "./palette.ts"
import type { SearchCount } from "./plan-score.ts"
import type { Proposal } from "./proposal.ts"
import { searchPlans } from "./search.ts"
import { settleInSpace } from "./settle-in-space.ts"
import { checkOptions, rulesFor, type SquareOptions } from "./square-options.ts"
import { plainStarts, type Start, startsFor } from "./square-starts.ts"

const usualProposals = 5
/** Laid out and measured: enough that the model's errors do not decide, few enough for a second. */
const mostJudged = 6
const fewestJudged = 3
/** Nodes of net laid out in all: keeps large pieces within a few seconds. */
const mostJudgedNodes = 2_400
/** The same with the last rounds searched again: a piece of some thousand stitches is laid out once. */
const mostNodesInAll = 6_000
/** The same while no proposal meets the target: such circles are rare and worth a few seconds. */
const mostNodesIfPoor = 30_000
/** Plans whose last round is searched again over the edge as the net laid it, always and where none meets the target. */
const mostAimed = 3
const mostAimedIfPoor = 9

/**
 * Proposals for added rounds that turn the motif's last round into a polygon, best first.
 * @throws RoundwrightError `bad-corners`, `bad-rounds`, `no-stitches`, `slip-stitch`, `no-rounds`, `too-many-places`,
 *   `nothing-fits`
 */
export function squareCircle(
  motif: Motif,
  gauge: Gauge,
  options: SquareOptions,
  count: SearchCount = { bounded: 0 },
): Proposal[] {
  checkOptions(options)
  const { lastStraightRound: last, terms = "US" } = options
  const allowed = options.stitches ?? usualStitches
  const palette = paletteOf(last ? [...allowed, last] : allowed, gauge, terms)
  const rules = rulesFor(options, palette, allowed)
  const jury = new Jury(motif, gauge, palette, count)
  const starts = startsFor(motif, gauge, options.corners, rules, allowed, terms)
  const found = casesOf(starts, palette, count)
  judgeFirst(jury, found)
  aim(jury, mostAimed, mostNodesInAll)
  if (!jury.targetMet) aim(jury, mostAimedIfPoor - mostAimed, mostNodesInAll)
  if (!jury.targetMet && !jury.hopeless) {
    const others = plainStarts(motif, gauge, options.corners, rules, allowed, terms, starts)
    judgeMore(jury, [...found, ...casesOf(others, palette, count)])
    jury.climb(mostNodesIfPoor)
  }
  if (jury.size === 0)
    throw new RoundwrightError("nothing-fits", "No round of these stitches and corners fits.", {
      hint: "Allow more stitches, another corner style or more rounds.",
      numbers: { corners: options.corners, rounds: options.rounds },
    })
  const best = jury.best().slice(0, options.proposals ?? usualProposals)
  return settleInSpace(
    best.map(({ proposal }) => proposal),
    gauge,
    options.judgeAllInSpace ?? false,
  )
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
    .sort((a, b) => a.plan.score - b.plan.score)
}

function judgeFirst(jury: Jury, cases: readonly Case[]): void {
  for (const one of cases) {
    if (jury.size >= mostJudged) return
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
