// The plans that are laid out as a net and judged by it, each once, within a budget of nodes.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import type { Beginning } from "./base-edge.ts"
import { feetOf } from "./feet.ts"
import { halfFromShape } from "./laid-half.ts"
import { neighboursOf } from "./neighbours.ts"
import type { Palette } from "./palette.ts"
import { type HalfShape, shapeAfter } from "./plan.ts"
import { easeOf, type SearchCount } from "./plan-score.ts"
import { type Proposal, propose, workPlan } from "./proposal.ts"
import { evenedWords } from "./proposal-words.ts"
import { compareScores } from "./score.ts"
import { type FoundPlan, searchLastRound } from "./search.ts"
import type { Start } from "./square-starts.ts"
import { squaringTarget } from "./squaring-target.ts"
import { distanceFromTarget } from "./target.ts"
import type { Ground } from "./work-plan.ts"

/** Twice what a straight side may bow: one changed place does not bring it back. */
const farFromStraight = 2 * squaringTarget.bow
/** Smaller pieces are searched on whatever their bow: it takes a second or two. */
const mostNodesToSearchOn = 700

/** A plan to judge, with what it is worked onto. */
export interface Case {
  readonly plan: FoundPlan
  readonly beginning: Beginning
  readonly start: Start
}

export interface Judged extends Case {
  readonly key: string
  readonly proposal: Proposal
  readonly distance: number
}

/** Last rounds tried for each plan that is aimed again. */
const judgedPerAim = 2
/** Plans that are climbed from, for small pieces, whose nets cost next to nothing. */
const mostClimbed = 12

export class Jury {
  /** Nodes of all nets laid out so far: what the time goes with. */
  nodes = 0
  readonly #judged = new Map<string, Judged>()
  readonly #aimed = new Set<string>()

  constructor(
    readonly motif: Motif,
    readonly gauge: Gauge,
    readonly palette: Palette,
    readonly count: SearchCount,
    /** What its proposals are called. */
    readonly idea: string,
    /** The whole piece, where the motif stands in for it. */
    readonly restore: (worked: Motif) => Motif,
  ) {}

  get size(): number {
    return this.#judged.size
  }

  /** Best first: those that meet the target, then by score; the plan itself settles what is left. */
  best(): Judged[] {
    return [...this.#judged.values()].sort(
      (a, b) =>
        a.distance - b.distance ||
        compareScores(a.proposal.score, b.proposal.score) ||
        (a.key < b.key ? -1 : 1),
    )
  }

  get targetMet(): boolean {
    return [...this.#judged.values()].some(({ distance }) => distance === 0)
  }

  /** A large piece whose best sides are far from straight: more searching takes long and mends nothing. */
  get hopeless(): boolean {
    const [best] = this.best()
    if (!best) return false
    const { net, bowMm, sideMm } = best.proposal.shape
    return net.nodes.length > mostNodesToSearchOn && Math.abs(bowMm / sideMm) > farFromStraight
  }

  /** Lays a plan out; null for one that was judged before, does not fit or cannot be measured. */
  judge({ plan, beginning, start }: Case): Judged | null {
    const { base, changes } = start
    const key = JSON.stringify([
      changes,
      beginning.start,
      beginning.sides,
      plan.start.shape,
      plan.rounds,
    ])
    if (this.#judged.has(key) || !fits(plan, beginning)) return null
    const { gauge, palette } = this
    const ground = workPlan(base, gauge, plan, beginning.start, beginning.sides, palette)
    const words = [...changes, ...evenedWords(beginning, base.rounds.at(-1)!.number)]
    const proposal = this.#laidOut(ground, words, plan)
    if (!proposal || !Number.isFinite(proposal.score)) return null
    const distance = distanceFromTarget(proposal)
    const judged = { plan, beginning, start, key, proposal, distance }
    this.#judged.set(key, judged)
    this.nodes += proposal.shape.net.nodes.length
    return judged
  }

  /** Null for a plan whose rounds come to lie across one another: it is none. */
  #laidOut({ motif, corners }: Ground, changes: readonly string[], plan: FoundPlan) {
    const { gauge, palette, idea, restore } = this
    const from = this.motif.rounds.length
    const fabric = "solid" as const
    const draft = { motif, from, corners, fabric, idea, palette, changes, plan, restore }
    try {
      return propose(draft, gauge, easeOf(plan.rounds))
    } catch (error) {
      if (error instanceof RoundwrightError && error.code === "tangled") return null
      throw error
    }
  }

  /**
   * Judges the best plan not yet aimed again with other last rounds, searched over the edge below as the net has
   * laid it: the fast model holds that edge still, the net lets it give. False when there is none left.
   */
  aimAtBest(): boolean {
    const next = this.best().find(({ key }) => !this.#aimed.has(key))
    if (!next) return false
    this.#aimed.add(next.key)
    for (const plan of this.#lastRoundsFor(next)) this.judge({ ...next, plan })
    return true
  }

  #lastRoundsFor({ beginning, plan, proposal, start }: Judged): FoundPlan[] {
    const { base, rules } = start
    const { shape, corners } = proposal
    const before = plan.rounds.slice(0, -1)
    if (before.length === 0 && beginning.sides.some((side) => side.evening !== "none")) return []
    const { gauge, palette } = this
    const part = { ...plan, rounds: before }
    const below = workPlan(base, gauge, part, beginning.start, beginning.sides, palette)
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
    return searchLastRound(half, before, 0, palette, rules.at(-1)!, judgedPerAim, this.count)
      .slice(0, judgedPerAim)
      .map((last) => ({ ...plan, rounds: [...before, last] }))
  }

  /**
   * Every plan one change away from the best is laid out, then those from the best not yet climbed from, until one
   * meets the target or the budget is spent: for the few circles on which the fast model leads astray.
   */
  climb(mostNodes: number): void {
    const climbed = new Set<string>()
    while (!this.targetMet) {
      const from = this.best().find(({ key }) => !climbed.has(key))
      if (!from || climbed.size === mostClimbed) return
      climbed.add(from.key)
      const { plan, start } = from
      for (const rounds of neighboursOf(plan.start, plan.rounds, start.rules)) {
        if (this.nodes > mostNodes) return
        this.judge({ ...from, plan: { ...plan, rounds } })
        if (this.targetMet) return
      }
    }
  }
}

/** Two places are worked together only where the middle of the side holds a single stitch. */
function fits(plan: FoundPlan, beginning: Beginning): boolean {
  const first = plan.rounds[0]!.tops[0]!
  return beginning.sides.every((side) => side.evening !== "together" || first === 1)
}
