// The shape in space: from every start the energy is lowered a little way, the best are followed to their
// end, and the lowest is kept. With weight and table on the piece lies as on a table; without, it takes the
// shape that its lengths ask for.

import {
  Factorisation,
  minimiseByNewton,
  type NewtonMinimum,
  planElimination,
} from "@roundwright/numerics"
import { NetEnergy } from "./energy.ts"
import { cornersOfFabric } from "./fabric-corners.ts"
import {
  type HowItEnded,
  heldStrain,
  howItEnded,
  restShare,
  typicalLength,
} from "./lay-out-flat.ts"
import { type Material, usualMaterial } from "./material.ts"
import type { Net } from "./net.ts"
import { roundMisfits, type SpaceStart, startsInSpace, wantsOf } from "./starts-in-space.ts"

export interface SpaceOptions {
  readonly material?: Material
  readonly table?: boolean
  /** Strain with which the edge is pulled outward; none by default: the piece lies free. */
  readonly pull?: number
  /** Wave numbers among the starts; when given, every kind of start is tried whatever the lengths ask for. */
  readonly waves?: readonly number[]
  /** More starts of the caller's own. */
  readonly starts?: readonly SpaceStart[]
  readonly steps?: number
}

export interface SpaceShape {
  /** x, y, z of every node, mm. */
  readonly xyz: Float64Array
  readonly energy: number
  readonly how: HowItEnded
  /** The start it came from, and where every start ended. */
  readonly from: string
  readonly tried: readonly {
    readonly name: string
    readonly energy: number
    readonly followed: boolean
  }[]
}

/** Steps that every start gets before the best are chosen: by then the order of energies hardly changes. */
const firstSteps = 12
/** How many starts are followed to their end. */
const followed = 3
/** Steps of those: pieces of ordinary fullness need 20 to 100; one that ruffles wildly is reported as not settled. */
const mostSteps = 150

/** Steps over which the pace of a run is judged. */
const paceSteps = 15

/** Tells when a run, at its present pace, would not come below `toBeat` in the steps it has left. */
function hopeless(toBeat: number, steps: number): (step: number, value: number) => boolean {
  const values: number[] = []
  return (step, value) => {
    values[step] = value
    const before = values[step - paceSteps]
    if (before === undefined || value <= toBeat) return false
    return ((before - value) / paceSteps) * (steps - step) < value - toBeat
  }
}

/**
 * A piece whose tops and posts all lie within their give has nothing to gain by leaving the plane. If it is stable
 * there and lifts no more than this, no other start is tried, mm.
 */
const flatEnoughMm = 0.5

export function layOutInSpace(net: Net, xy: Float64Array, options: SpaceOptions = {}): SpaceShape {
  const material = options.material ?? usualMaterial
  const energy = new NetEnergy(net, {
    dimensions: 3,
    material,
    table: options.table ?? true,
    pull: options.pull ?? 0,
    corners: cornersOfFabric(net, xy),
  })
  const scale = typicalLength(net)
  const factorisation = new Factorisation(planElimination(energy.pattern))
  const lower = (
    from: Float64Array,
    iterations: number,
    toBeat = Number.POSITIVE_INFINITY,
  ): NewtonMinimum =>
    minimiseByNewton(energy, from, {
      gradientTolerance: restShare * material.stiffness * scale,
      iterations,
      longestMove: scale,
      saddleMove: 0.05 * scale,
      factorisation,
      watch: hopeless(toBeat, iterations),
    })
  const limit = options.steps ?? mostSteps
  const misfits = roundMisfits(net, xy, material.give)
  const wants =
    options.waves === undefined ? wantsOf(misfits, heldStrain(net, xy, material)) : "both"
  if (wants === "nothing" && options.starts === undefined) {
    const flat = stayFlat(startsInSpace(net, xy, misfits, wants, [])[0]!)
    if (flat !== null) return flat
  }
  const starts = [
    ...startsInSpace(net, xy, misfits, wants, options.waves),
    ...(options.starts ?? []),
  ]
  const first = starts.map(({ name, xyz }) => ({ name, found: lower(xyz, firstSteps) }))
  const ranked = [...first].sort((a, b) => a.found.value - b.found.value)
  let toBeat = Number.POSITIVE_INFINITY
  const ends = ranked.slice(0, followed).map(({ name, found }) => {
    const end = found.ended === "iterations" ? lower(found.x, limit, toBeat) : found
    toBeat = Math.min(toBeat, end.value)
    return { name, found: end }
  })
  const best = ends.reduce((a, b) => (b.found.value < a.found.value ? b : a))
  return {
    xyz: best.found.x,
    energy: best.found.value,
    how: howItEnded(best.found, material, scale),
    from: best.name,
    tried: first.map(({ name, found }) => {
      const end = ends.find((other) => other.name === name)
      return { name, energy: (end?.found ?? found).value, followed: end !== undefined }
    }),
  }

  /** The shape close to the plane, if it is a stable one; null otherwise. */
  function stayFlat({ name, xyz }: SpaceStart): SpaceShape | null {
    const found = lower(xyz, limit)
    const how = howItEnded(found, material, scale)
    const heights = found.x.filter((_, k) => k % 3 === 2)
    const lift = Math.max(...heights) - Math.min(...heights)
    if (!how.settled || how.unstable !== 0 || lift > flatEnoughMm) return null
    const tried = [{ name, energy: found.value, followed: true }]
    return { xyz: found.x, energy: found.value, how, from: name, tried }
  }
}
