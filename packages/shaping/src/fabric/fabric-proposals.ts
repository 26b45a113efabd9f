// Proposals in a fabric of units: searched with what is easy to work first, a taller stitch, more graded rounds or an even
// round of units first only where the sides would not be straight.

import { type Motif, stitchesAndChains } from "@roundwright/motif"
import type { Gauge, Terms } from "@roundwright/stitches"
import type { Palette } from "../palette.ts"
import { type Proposal, propose } from "../proposal.ts"
import { sharedWords } from "../proposal-words.ts"
import { squaringTarget } from "../squaring-target.ts"
import { distanceFromTarget } from "../target.ts"
import { evenUnits } from "./even-units.ts"
import { type Fabric, type FabricName, fabricOf } from "./fabric-of.ts"
import { type CornerWork, type FabricRound, kindsOf } from "./fabric-plan.ts"
import type { Filling } from "./fit-fabric.ts"
import { plainGround } from "./plain-ground.ts"
import { type FabricPiece, searchFabric } from "./search-fabric.ts"

export interface FabricIdea {
  readonly idea: string
  /** What the rounds are made of. */
  readonly name: Exclude<FabricName, "solid">
  /** What they are built on. */
  readonly onto: Fabric
  readonly fillings: readonly Filling[]
  readonly corners: readonly Omit<CornerWork, "kind">[]
  readonly rounds: number
  readonly palette: Palette
  /** Terms in which stitches are told of in words. */
  readonly terms: Terms
  /** Go on beyond what is easy to work where nothing comes out straight. */
  readonly thorough: boolean
  /** The whole piece, where the motif stands in for it. */
  readonly restore: (worked: Motif) => Motif
}

/** Nodes of net laid out for one step of the ladder, and fewest and most pieces. */
const nodesAStep = { thorough: 4_500, brief: 1_500 } as const
const fewestPieces = { thorough: 14, brief: 5 } as const
/** Units of all its rounds together from which on a piece takes seconds to lay out. */
const longPiece = 100
/** Stitches and chains that corners add to a round. */
const cornersTake = 24
const mostPieces = 24

/** Best first; empty where nothing fits. */
export function fabricProposals(
  motif: Motif,
  gauge: Gauge,
  corners: number,
  idea: FabricIdea,
): Proposal[] {
  const { palette } = idea
  const all = palette.kinds.map((_, i) => i)
  const low = all.filter((kind) => !["tr", "dtr", "trtr"].includes(palette.kinds[kind]!.basic))
  const long = idea.onto.units.length * idea.rounds > longPiece
  // Over a long round a further idea gets one look.
  const kindSets =
    low.length === 0 || low.length === all.length || (long && !idea.thorough) ? [all] : [low, all]
  const steps = [
    ...kindSets.map((kinds) => ({ kinds, gradedRounds: 1 })),
    ...(idea.thorough && idea.rounds > 1 ? [{ kinds: all, gradedRounds: idea.rounds }] : []),
  ].map((step) => ({ ...step, times: 1 }))
  // Where nothing came out straight the last resort is to look longer.
  if (idea.thorough) steps.push({ kinds: all, gradedRounds: idea.rounds, times: longerLook })
  let best: Proposal[] = []
  const take = (found: Proposal[]) => {
    if (found.length > 0 && (best.length === 0 || isBetter(found[0]!, best[0]!))) best = found
    return best[0] !== undefined && distanceFromTarget(best[0]) <= 1
  }
  for (const step of steps) {
    if (step.times > 1 && best[0] !== undefined && isHopeless(best[0])) break
    const pieces = searchFabric(motif, gauge, idea.onto, corners, {
      ...idea,
      ...step,
      brief: !idea.thorough,
      budget: step.times * budgetFor(motif, idea),
    })
    if (take(proposalsOf(pieces, motif, gauge, idea, []))) return best
  }
  if (idea.thorough && idea.onto.units.length % corners !== 0)
    for (const kinds of kindSets) {
      const ground = plainGround(motif, gauge, idea.onto, corners, idea)
      if (ground === null) break
      const rounds = Math.max(1, idea.rounds - 1)
      const wish = { ...idea, kinds, rounds, gradedRounds: 1, budget: budgetFor(motif, idea) }
      const from = motif.rounds.length
      const pieces = searchFabric(ground.motif, gauge, ground.fabric, corners, wish, from)
      const words = idea.rounds > 1 ? [ground.words] : [ground.words, oneMoreRound]
      if (take(proposalsOf(pieces, motif, gauge, idea, words))) return best
    }
  for (const kinds of kindSets) {
    if (!idea.thorough) break
    const evened = evenUnits(motif, gauge, idea.onto, corners, palette, kinds, idea.fillings)
    if (evened === null) break
    const rounds = Math.max(1, idea.rounds - 1)
    const wish = { ...idea, kinds, rounds, gradedRounds: 1, budget: budgetFor(motif, idea) }
    const fabric = fabricOf(evened.motif)
    const pieces = searchFabric(evened.motif, gauge, fabric, corners, wish, motif.rounds.length)
    const words = idea.rounds > 1 ? [evened.words] : [evened.words, oneMoreRound]
    if (take(proposalsOf(pieces, motif, gauge, idea, words))) return best
  }
  return best
}

const longerLook = 3

/** So far off that more of the same tells nothing. */
function isHopeless({ shape, corners }: Proposal): boolean {
  const bow = Math.abs(shape.bowMm / shape.sideMm)
  const off = Math.abs(shape.cornerAngleDeg - (180 - 360 / corners))
  return bow > 3 * squaringTarget.bow || off > 3 * squaringTarget.angleDeg
}

export const oneMoreRound = "That is one round more than was asked for."

function isBetter(one: Proposal, other: Proposal): boolean {
  const [a, b] = [distanceFromTarget(one), distanceFromTarget(other)]
  return a < b || (a === b && one.score < other.score)
}

function budgetFor(motif: Motif, { rounds, thorough }: FabricIdea): number {
  const last = stitchesAndChains({ ...motif, rounds: motif.rounds.slice(-1) })
  const nodes = stitchesAndChains(motif) + (rounds * (last + cornersTake)) / 2
  const manner = thorough ? "thorough" : "brief"
  const pieces = Math.floor(nodesAStep[manner] / nodes)
  return Math.min(mostPieces, Math.max(fewestPieces[manner], pieces))
}

/** Pieces made into proposals at most: each has its ledger kept. */
const mostProposed = 6

function proposalsOf(
  pieces: readonly FabricPiece[],
  motif: Motif,
  gauge: Gauge,
  idea: FabricIdea,
  changes: readonly string[],
): Proposal[] {
  const { palette } = idea
  const from = motif.rounds.length
  return pieces
    .slice(0, mostProposed)
    .map((piece) => ({
      piece,
      proposal: propose(
        {
          motif: piece.motif,
          from,
          corners: piece.corners,
          idea: idea.idea,
          fabric: idea.name,
          palette,
          changes: [...changes, ...sharedBy(piece, idea.onto)],
          restore: idea.restore,
        },
        gauge,
        easeOfRounds(piece.rounds),
        piece.shape,
      ),
    }))
    .map(({ proposal, piece }) => ({ ...proposal, score: piece.score }))
    .sort((a, b) => distanceFromTarget(a) - distanceFromTarget(b) || a.score - b.score)
}

/** Told where the first added round has corners that share the units unevenly. */
function sharedBy({ firstSeating, from, motif }: FabricPiece, fabric: Fabric): string[] {
  const base = { ...motif, rounds: motif.rounds.slice(0, from) }
  return sharedWords(base, firstSeating, fabric)
}

function easeOfRounds(rounds: readonly FabricRound[]) {
  const kinds = new Set(rounds.flatMap((round) => [...kindsOf(round)])).size
  return { used: 0, reversals: 0, skips: 0, runs: 0, kinds }
}
