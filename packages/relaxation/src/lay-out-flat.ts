// The flat shape: the net pressed into the plane, as on a blocking board, its edge lightly pulled outward.

import {
  Factorisation,
  largestComponent,
  minimiseByNewton,
  type NewtonMinimum,
  planElimination,
} from "@roundwright/numerics"
import { NetEnergy } from "./energy.ts"
import { cornersOfFabric } from "./fabric-corners.ts"
import { findRepeat } from "./find-repeat.ts"
import { type Material, usualMaterial } from "./material.ts"
import type { Net } from "./net.ts"
import { foldTogether, type Repeat, unfold } from "./repeat.ts"

/**
 * Outward pull of the edge as a strain: enough to open loops of chains, too little to change a size by
 * more than a fifth of a per cent.
 */
export const usualPull = 0.002
/**
 * The edge is pinned out this hard first, and let go to the usual pull then: pulled taut every leg points outward and
 * the shape is the only one, while from a slack start an over-full or open round may settle in folds.
 */
export const pinningPull = 0.1
/** Pinning only finds a start: its forces need not be gone, as a share like restShare, nor in more steps than this. */
const pinningRest = 1e-3
const pinningSteps = 150
/** A large piece solved as a whole gets this many at most, pinned and let go, so that nobody waits for its last millimetre. */
const stepsOfLarge = { nodes: 600, most: 60 } as const
/** Gradient at which a shape counts as found, as a share of the force that strains one stitch to double. */
export const restShare = 1e-8
/** A flat shape settles in 10 to 60 steps; a tangle that needs more is reported as not settled. */
const mostSteps = 150

export interface FlatOptions {
  readonly material?: Material
  /** Strain with which the edge is pulled outward; 0 for none. */
  readonly pull?: number
  readonly steps?: number
}

export interface FlatShape {
  /** x, y of every node, mm. */
  readonly xy: Float64Array
  readonly energy: number
  readonly how: HowItEnded
  /** What the shape was put together from; null when the whole was solved. */
  readonly repeat: Repeat | null
}

export interface HowItEnded {
  readonly ended: NewtonMinimum["ended"]
  /** True when the shape is at rest: gradient small, or no step lowers the energy any more. */
  readonly settled: boolean
  readonly steps: number
  /** Largest force left over, N. */
  readonly gradientSize: number
  /** Ways in which the energy still falls off, of a shape put together from repeats those alike in all; 0 if stable. */
  readonly unstable: number | null
}

/**
 * Share of lean in the plane. Left to itself a fabric whose rounds are too short would swirl when pressed flat, every
 * post leaning over instead of closing up; pins and a board hold the stitches upright.
 */
const uprightLeanShare = 1

/** The flat shape. Where the net turns into itself one repeat is solved, and the whole put together from it. */
export function layOutFlat(net: Net, options: FlatOptions = {}): FlatShape {
  const material = options.material ?? usualMaterial
  const scale = typicalLength(net)
  const energyOptions = {
    dimensions: 2,
    material: { ...material, leanShare: Math.max(uprightLeanShare, material.leanShare) },
    table: false,
    pull: options.pull ?? usualPull,
    corners: cornersOfFabric(net, net.start),
  } as const
  const whole = new NetEnergy(net, energyOptions)
  // A saddle is left alone: folds within the plane are what pins are there to prevent.
  const newton = { longestMove: scale, leaveSaddles: false }
  // Pinned out or let go, the same nodes are tied to one another: the elimination is planned once.
  const planned = new Map<Repeat | null, Factorisation>()
  const factorisationOf = (energy: NetEnergy, repeat: Repeat | null): Factorisation => {
    const found = planned.get(repeat) ?? new Factorisation(planElimination(energy.pattern))
    planned.set(repeat, found)
    return found
  }
  const lower = (start: Float64Array, repeat: Repeat | null): NewtonMinimum => {
    const energy = repeat === null ? whole : new NetEnergy(net, energyOptions, repeat)
    return minimiseByNewton(energy, start, {
      ...newton,
      factorisation: factorisationOf(energy, repeat),
      gradientTolerance: restShare * material.stiffness * scale,
      iterations: options.steps ?? most(mostSteps, repeat),
    })
  }
  const most = (steps: number, repeat: Repeat | null): number =>
    repeat === null && net.nodes.length > stepsOfLarge.nodes
      ? Math.min(steps, stepsOfLarge.most)
      : steps
  const pinnedOut = (start: Float64Array, repeat: Repeat | null): Float64Array => {
    if (energyOptions.pull <= 0) return start
    const energy = new NetEnergy(net, { ...energyOptions, pull: pinningPull }, repeat)
    return minimiseByNewton(energy, start, {
      ...newton,
      factorisation: factorisationOf(energy, repeat),
      gradientTolerance: pinningRest * material.stiffness * scale,
      iterations: most(pinningSteps, repeat),
    }).x
  }
  const ended = (found: NewtonMinimum, repeat: Repeat | null): FlatShape => ({
    xy: found.x,
    energy: found.value,
    how: howItEnded(found, material, scale),
    repeat,
  })
  const like = findRepeat(net, whole, scale)
  if (like === null) return ended(lower(pinnedOut(net.start, null), null), null)
  const { repeat, exact } = like
  const part = lower(pinnedOut(foldTogether(repeat, net.start, 2), repeat), repeat)
  const xy = unfold(repeat, part.x, 2)
  if (!exact) {
    const begin = towards(whole, net.start, xy)
    return ended(lower(begin ?? pinnedOut(net.start, null), null), null)
  }
  const gradient = new Float64Array(whole.size)
  const value = whole.gradient(xy, gradient)
  const found = ended({ ...part, x: xy, value, gradientSize: largestComponent(gradient) }, repeat)
  return found.how.settled ? found : ended(lower(pinnedOut(net.start, null), null), null)
}

/** Shares of the way to a shape that is none everywhere: where joins are otherwise, stitches could lie across each other. */
const sharesOfTheWay = [1, 0.95, 0.85, 0.7, 0.5]

/** As far from the start towards a shape as stitches do not lie across each other; null where they would at half the way. */
function towards(energy: NetEnergy, start: Float64Array, shape: Float64Array): Float64Array | null {
  for (const share of sharesOfTheWay) {
    const at = start.map((from, k) => from + share * (shape[k]! - from))
    if (Number.isFinite(energy.value(at))) return at
  }
  return null
}

/** Root of the mean square of what strains the flat piece beyond its give: its energy without the pull, as a strain. */
export function heldStrain(net: Net, xy: Float64Array, material: Material): number {
  const energy = new NetEnergy(net, {
    dimensions: 2,
    material,
    table: false,
    pull: 0,
    corners: cornersOfFabric(net, net.start),
  })
  const area = net.nodes.reduce((sum, node) => sum + node.areaMm2, 0)
  return area > 0 ? Math.sqrt((2 * energy.value(xy)) / (material.stiffness * area)) : 0
}

/** A shape whose forces are this small against the stitch's is at rest for every purpose of measuring it. */
const nearlyRestShare = 1e-5

export function howItEnded(found: NewtonMinimum, material: Material, scale: number): HowItEnded {
  const small = found.gradientSize <= nearlyRestShare * material.stiffness * scale
  return {
    ended: found.ended,
    settled: small && found.ended !== "not-finite",
    steps: found.iterations,
    gradientSize: found.gradientSize,
    unstable: found.negativeEigenvalues,
  }
}

/** Mean rest length of the springs, mm: the size of a stitch. */
export function typicalLength(net: Net): number {
  return (
    net.springs.reduce((sum, spring) => sum + spring.restMm, 0) / Math.max(1, net.springs.length)
  )
}
