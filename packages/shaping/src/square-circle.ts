// From any last round to a polygon with straight sides: the search proposes, the laid-out shape decides.

import { keepLedger, type Ledger, severityOf, type Verdict } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, kindName, type StitchKind } from "@roundwright/stitches"
import { type Beginning, beginningsOf } from "./base-edge.ts"
import type { RoundRules } from "./candidates.ts"
import { feetOf } from "./feet.ts"
import { halfFromShape } from "./laid-half.ts"
import { measureProposal, type ProposalShape } from "./measure-proposal.ts"
import { type Palette, paletteOf, usualStitches } from "./palette.ts"
import { plainRound } from "./plain-round.ts"
import type { HalfPlan, HalfShape } from "./plan.ts"
import { shapeAfter } from "./plan.ts"
import { remarkable, scoreOf } from "./score.ts"
import { easeOf, type FoundPlan, type SearchCount, searchLastRound, searchPlans } from "./search.ts"
import { type Ground, type SidePlan, workRound } from "./work-plan.ts"

/** `chains`: a chain space at every corner; `stitches`: none; `any`: whichever comes out better. */
export type CornerStyle = "any" | "chains" | "stitches"

export interface SquareOptions {
  /** 3 to 12. */
  readonly corners: number
  /** Rounds to work, 1 to 6, a last straightening round not counted. */
  readonly rounds: number
  /** Stitches allowed; sc, hdc, dc and tr when absent. */
  readonly stitches?: readonly StitchKind[]
  readonly cornerStyle?: CornerStyle
  /** A last round of one stitch that follows, with a corner group of its own. */
  readonly lastStraightRound?: StitchKind
  /** How many proposals to give; 5 when absent. */
  readonly proposals?: number
}

export interface Proposal {
  /** The whole piece, the rounds it started from included. */
  readonly motif: Motif
  /** Index of the first added round. */
  readonly from: number
  readonly corners: number
  readonly shape: ProposalShape
  readonly ledger: Ledger
  readonly verdict: Verdict
  /** Names of the stitches the added rounds use, lowest first. */
  readonly stitchKinds: readonly string[]
  /** 0 is perfect; how it is made up stands in score.ts. By the laid-out shape, and by the fast model. */
  readonly score: number
  readonly modelScore: number
  /** How sides of unequal counts are evened out, in words; empty where every side is alike. */
  readonly changes: readonly string[]
  /** The half side that was planned, for the table of side and corner heights. */
  readonly plan: FoundPlan
  /** What the plan was worked onto, the place at which its first side begins, and the sides. */
  readonly onto: {
    readonly base: Motif
    readonly start: number
    readonly sides: readonly SidePlan[]
  }
  /** Stitches the search could use. */
  readonly palette: Palette
  readonly notes: readonly string[]
}

const fewestCorners = 3
const mostCorners = 12
const mostRounds = 6
const usualProposals = 5
/** Laid out and measured: enough that the model's errors do not decide, few enough for a second. */
const mostJudged = 6
/** Nodes of net laid out in all: keeps large pieces within a few seconds. */
const mostJudgedNodes = 2_400
/** The same with the last rounds searched again: a piece of some thousand stitches is laid out once. */
const mostNodesInAll = 9_000
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
/** Longer corner chains are loops, not corners. */
const mostCornerChains = 3
/** More stitches in one corner place than this do not fit side by side. */
const mostInCorner = 7

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
  const found = groundsFor(motif, gauge, options.corners, rules, allowed)
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

/** A motif to work on, with the rounds left and the ways to begin. */
interface Start {
  readonly base: Motif
  readonly beginnings: readonly Beginning[]
  readonly rules: readonly RoundRules[]
  /** What was worked before the squaring, in words. */
  readonly changes: readonly string[]
}

/** Counts below this many times the corners leave too little along a side to even out unseen. */
const evenedOutUnseen = 3

/**
 * The last round as it is, and where its count does not divide and rounds allow it (or nothing else is
 * possible), with a plain round first that lies flat and divides.
 */
function groundsFor(
  motif: Motif,
  gauge: Gauge,
  corners: number,
  rules: readonly RoundRules[],
  allowed: readonly StitchKind[],
): Start[] {
  const places = feetOf(motif, gauge).length
  const uneven = places % corners !== 0
  const starts: Start[] = []
  if (places >= corners) {
    const beginnings = beginningsOf(motif, gauge, corners)
    if (beginnings.length > 0) starts.push({ base: motif, beginnings, rules, changes: [] })
  }
  const scarce = places < evenedOutUnseen * corners
  if (starts.length > 0 && !(uneven && rules.length > (scarce ? 1 : 2))) return starts
  const left = rules.length > 1 ? rules.slice(1) : rules
  for (const kind of allowed) {
    const plain = plainRound(motif, gauge, corners, kind)
    const beginnings = beginningsOf(plain.motif, gauge, corners)
    starts.push({ base: plain.motif, beginnings, rules: left, changes: [plain.words] })
  }
  return starts
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

function checkOptions({ corners, rounds }: SquareOptions): void {
  if (!Number.isInteger(corners) || corners < fewestCorners || corners > mostCorners)
    throw new RoundwrightError("bad-corners", `A piece cannot be given ${corners} corners.`, {
      hint: `Ask for ${fewestCorners} to ${mostCorners} corners.`,
      numbers: { corners },
    })
  if (!Number.isInteger(rounds) || rounds < 1 || rounds > mostRounds)
    throw new RoundwrightError("bad-rounds", `${rounds} rounds cannot be planned.`, {
      hint: `Give a whole number of rounds from 1 to ${mostRounds}.`,
      numbers: { rounds },
    })
}

function rulesFor(
  options: SquareOptions,
  palette: Palette,
  allowed: readonly StitchKind[],
): RoundRules[] {
  const names = allowed.map((kind) => kindName(kind))
  const index = (kind: StitchKind) =>
    palette.kinds.findIndex((other) => kindName(other) === kindName(kind))
  const kinds = palette.kinds.flatMap((kind, i) => (names.includes(kindName(kind)) ? [i] : []))
  const style = options.cornerStyle ?? "any"
  const all = Array.from({ length: mostCornerChains + 1 }, (_, chains) => chains)
  const chains = style === "stitches" ? [0] : style === "chains" ? all.slice(1) : all
  const straight = options.lastStraightRound
  const total = options.rounds + (straight ? 1 : 0)
  return Array.from({ length: total }, (_, round): RoundRules => {
    const last = round === total - 1
    return {
      kinds: last && straight ? [index(straight)] : kinds,
      cornerChains: last ? chains : style === "stitches" ? [0] : all,
      sharpCorners: last,
      mostInCorner,
    }
  })
}

/** The motif with a found plan worked onto it. */
export function workPlan(
  motif: Motif,
  gauge: Gauge,
  plan: FoundPlan,
  start: number,
  sides: readonly SidePlan[],
  palette: Palette,
): Ground {
  let ground: Ground = {
    motif,
    anchors: feetOf(motif, gauge).map((foot) => foot.anchor),
    start,
    corners: [],
  }
  let shape: HalfShape = plan.start.shape
  let around: readonly SidePlan[] = sides
  for (const round of plan.rounds) {
    ground = workRound(ground, shape, round, around, palette)
    shape = shapeAfter(shape, round)
    const feet = ground.anchors.length / sides.length
    around = sides.map(() => ({ feet, evening: "none" }))
  }
  return ground
}

function propose(
  ground: Ground,
  from: number,
  gauge: Gauge,
  plan: FoundPlan,
  palette: Palette,
  changes: readonly string[],
  onto: Proposal["onto"],
): Proposal {
  const { motif } = ground
  const corners = ground.corners.length
  const shape = measureProposal(motif, gauge, ground.corners, from)
  const ledger = keepLedger(motif, gauge)
  return {
    motif,
    from,
    corners,
    shape,
    ledger,
    verdict: shape.judged.verdict,
    stitchKinds: kindsUsed(plan.rounds, palette),
    score: scoreOf({
      ...easeOf(plan.rounds),
      bow: shape.bowMm / shape.sideMm,
      uneven: shape.unevenMm / shape.sideMm,
      angleOffDeg: shape.cornerAngleDeg - (180 - 360 / corners),
      fullnessOff: shape.fullness - 1,
      strainEnergy: shape.strainEnergy,
    }),
    modelScore: plan.score,
    changes: changes.length === 0 ? [] : [...changes, costWords(shape, corners)],
    plan,
    onto,
    palette,
    notes: notesOn(plan, palette),
  }
}

/** What evening out costs, beside a count that divides: there every corner and side is alike. */
function costWords(shape: ProposalShape, corners: number): string {
  const off = Math.abs(shape.cornerAngleDeg - (180 - 360 / corners))
  const uneven = (100 * shape.unevenMm) / shape.sideMm
  return `What that costs: the corner furthest off is ${off.toFixed(1)} degrees off, the side furthest off ${uneven.toFixed(1)} % of its length uneven.`
}

function kindsUsed(rounds: readonly HalfPlan[], palette: Palette): string[] {
  const used = new Set(rounds.flatMap((round) => round.heights))
  return palette.kinds.flatMap((kind, i) => (used.has(i) ? [kindName(kind)] : []))
}

function notesOn(plan: FoundPlan, palette: Palette): string[] {
  const guessed = kindsUsed(plan.rounds, palette).filter((name) =>
    palette.extrapolated.includes(name),
  )
  return guessed.length > 0
    ? [`The size of ${guessed.join(", ")} is extrapolated: a swatch of it would settle the corner.`]
    : []
}

function evenedWords(sides: readonly SidePlan[], round: number): string[] {
  const odd = sides.filter((side) => side.evening !== "none")
  if (odd.length === 0) return []
  const where = `in the middle of ${odd.length} of the ${sides.length} sides`
  const words: Record<SidePlan["evening"], string> = {
    none: "",
    add: `Round ${round}: add a stitch ${where} (two into one place).`,
    skip: `Round ${round}: skip a place ${where}.`,
    together: `Round ${round}: work two places together ${where}.`,
  }
  return [words[odd[0]!.evening]]
}
