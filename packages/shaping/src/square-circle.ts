// From any last round to a polygon with straight sides: the search proposes, the laid-out shape decides.

import { severityOf } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import type { Beginning } from "./base-edge.ts"
import { feetOf } from "./feet.ts"
import { halfFromShape } from "./laid-half.ts"
import { type Palette, paletteOf, usualStitches } from "./palette.ts"
import { type HalfShape, shapeAfter } from "./plan.ts"
import type { SearchCount } from "./plan-score.ts"
import { evenedWords, type Proposal, propose, workPlan } from "./proposal.ts"
import { remarkable } from "./score.ts"
import { type FoundPlan, searchLastRound, searchPlans } from "./search.ts"
import { checkOptions, rulesFor, type SquareOptions } from "./square-options.ts"
import { type Start, startsFor } from "./square-starts.ts"

const usualProposals = 5
/** Laid out and measured: enough that the model's errors do not decide, few enough for a second. */
const mostJudged = 6
/** Nodes of net laid out in all: keeps large pieces within a few seconds. */
const mostJudgedNodes = 2_400
/** The same with the last rounds searched again: a piece of some thousand stitches is laid out once. */
const mostNodesInAll = 6_000
const fewestJudged = 3
/**
 * The fast model holds the edge below still, the net lets it give: so the last rounds of the best plans are
 * searched again over the edge as the net laid it. How many plans, and how many results of each are judged.
 */
const mostAimed = 3
/** The same where none is straight, true and flat yet. */
const mostAimedIfPoor = 9
/** A side bowed by less than this share of its length passes for straight. */
const straightBow = 0.02
const judgedPerAim = 2

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
  const last = options.lastStraightRound
  const allowed = options.stitches ?? usualStitches
  const palette = paletteOf(last ? [...allowed, last] : allowed, gauge)
  const rules = rulesFor(options, palette, allowed)
  const wanted = options.proposals ?? usualProposals
  const found = startsFor(motif, gauge, options.corners, rules, allowed)
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
  const judged = new Map<string, Judged>()
  const judge = (plan: FoundPlan, beginning: Beginning, start: Start): Judged | null => {
    const { base, changes } = start
    const key = JSON.stringify([
      changes,
      beginning.start,
      beginning.sides,
      plan.start.shape,
      plan.rounds,
    ])
    if (judged.has(key) || !fits(plan, beginning)) return null
    const ground = workPlan(base, gauge, plan, beginning.start, beginning.sides, palette)
    const evened = evenedWords(beginning.sides, base.rounds.at(-1)!.number + 1)
    const words = [...changes, ...evened]
    const made = {
      beginning,
      start,
      proposal: propose(ground, motif.rounds.length, gauge, plan, palette, words, {
        base,
        start: beginning.start,
        sides: beginning.sides,
      }),
    }
    if (!Number.isFinite(made.proposal.score)) return null
    judged.set(key, made)
    return made
  }
  let nodes = 0
  for (const { plan, beginning, start } of found) {
    if (judged.size >= mostJudged) break
    if (judged.size >= fewestJudged && nodes > mostJudgedNodes) break
    if (judged.size > 0 && nodes > mostNodesInAll) break
    const made = judge(plan, beginning, start)
    nodes += made?.proposal.shape.net.nodes.length ?? 0
  }
  const aimed = new Set<Judged>()
  const best = () => [...judged.values()].sort(byScore)
  while (aimed.size < mostAimed || (aimed.size < mostAimedIfPoor && !best().some(meetsTarget))) {
    const next = best().find((made) => !aimed.has(made))
    if (!next || nodes > mostNodesInAll) break
    aimed.add(next)
    for (const plan of aimAgain(next, gauge, palette, count)) {
      const made = judge(plan, next.beginning, next.start)
      nodes += made?.proposal.shape.net.nodes.length ?? 0
    }
  }
  if (judged.size === 0)
    throw new RoundwrightError("nothing-fits", "No round of these stitches and corners fits.", {
      hint: "Allow more stitches, another corner style or more rounds.",
      numbers: { corners: options.corners, rounds: options.rounds },
    })
  return [...judged.values()]
    .sort(byScore)
    .slice(0, wanted)
    .map(({ proposal }) => proposal)
}

interface Judged {
  readonly beginning: Beginning
  readonly start: Start
  readonly proposal: Proposal
}

/** Pieces that will not even block flat come last, however straight. */
function byScore(a: Judged, b: Judged): number {
  const spoilt = ({ proposal }: Judged) => (severityOf(proposal.verdict) > 1 ? 1 : 0)
  return spoilt(a) - spoilt(b) || a.proposal.score - b.proposal.score
}

/** Straight, true and flat enough that a maker would not remark on it twice. */
function meetsTarget({ proposal }: Judged): boolean {
  const { shape, corners, verdict } = proposal
  return (
    Math.abs(shape.bowMm) < straightBow * shape.sideMm &&
    Math.abs(shape.cornerAngleDeg - (180 - 360 / corners)) <= remarkable.angleDeg &&
    (verdict === "flat" || verdict === "blocks-flat")
  )
}

/** Last rounds searched again over the edge below as the net has laid it for this plan. */
function aimAgain(best: Judged, gauge: Gauge, palette: Palette, count: SearchCount): FoundPlan[] {
  const { beginning, proposal, start } = best
  const { base, rules } = start
  const { plan, shape, corners } = proposal
  const before = plan.rounds.slice(0, -1)
  if (before.length === 0 && beginning.sides.some((side) => side.evening !== "none")) return []
  const below = workPlan(
    base,
    gauge,
    { ...plan, rounds: before },
    beginning.start,
    beginning.sides,
    palette,
  )
  const half = halfFromShape(
    {
      net: shape.net,
      xy: shape.xy,
      round: below.motif.rounds.length - 1,
      places: feetOf(below.motif, gauge),
      start: below.start,
    },
    before.reduce<HalfShape>((now, round) => shapeAfter(now, round), plan.start.shape),
    corners,
  )
  return searchLastRound(half, before, 0, palette, rules.at(-1)!, judgedPerAim, count)
    .slice(0, judgedPerAim)
    .map((last) => ({ ...plan, rounds: [...before, last] }))
}

/** Two places are worked together only where the middle of the side holds a single stitch. */
function fits(plan: FoundPlan, beginning: Beginning): boolean {
  const first = plan.rounds[0]!.tops[0]!
  return beginning.sides.every((side) => side.evening !== "together" || first === 1)
}
