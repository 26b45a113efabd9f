// The shape in space. A piece with nothing to gain by leaving the plane is shown to be stable there. Of any other the
// energy is lowered a little way from every start, the best are followed to their end, and the lowest is kept. Where the
// piece turns into itself a start of m folds is followed on the repeat it shares with the piece; what comes of it is put
// together and lowered as a whole, so that no symmetry is forced on the result. With weight and table on the piece lies
// as on a table; without, it takes the shape that its lengths ask for.

import {
  Factorisation,
  minimiseByNewton,
  type NewtonMinimum,
  planElimination,
} from "@roundwright/numerics"
import { NetEnergy } from "./energy.ts"
import type { EnergyOptions } from "./energy-terms.ts"
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
import { foldTogether, greatestDivisor, type Repeat, repeatOf, unfold } from "./repeat.ts"
import { roundMisfits } from "./round-misfits.ts"
import { type SpaceStart, startsInSpace, wantsOf } from "./starts-in-space.ts"
import { restingDepthMm, restingHeightMm } from "./table.ts"

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
  /**
   * Work after which the lowest shape so far is taken as it is, not at rest, in multiplications; none by default. Counted,
   * not timed, so that the same piece always gives the same shape.
   */
  readonly work?: number
  /** How the net turns into itself, as found with the flat shape; used where a start does so too. */
  readonly repeat?: Repeat | null
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
const firstSteps = 8
/** How many starts are followed further, and with how many steps before the lowest is followed to its end. */
const followed = 3
const furtherSteps = 16
/** Steps of those: pieces of ordinary fullness need 20 to 100; one that ruffles wildly is reported as not settled. */
const mostSteps = 150

/** What a step costs beside its factorisation, in multiplications a node: measured. */
const workOfNode = 40_000

/** Steps over which the pace of a run is judged. */
const paceSteps = 15

/**
 * A piece whose tops and posts all lie within their give has nothing to gain by leaving the plane. If it is stable
 * there and lifts no more than this, no other start is tried, mm.
 */
const flatEnoughMm = 0.5

export function layOutInSpace(net: Net, xy: Float64Array, options: SpaceOptions = {}): SpaceShape {
  const material = options.material ?? usualMaterial
  const solver = new SpaceSolver(net, xy, options, material)
  const misfits = roundMisfits(net, xy, material.give)
  const wants =
    options.waves === undefined ? wantsOf(misfits, heldStrain(net, xy, material)) : "both"
  if (wants === "nothing" && options.starts === undefined) {
    const flat = solver.stayFlat()
    if (flat !== null) return flat
  }
  const order = options.repeat?.order ?? 1
  const starts = [
    ...startsInSpace(net, xy, misfits, wants, options.waves).filter(
      ({ folds }) => options.waves !== undefined || sitsWell(order, folds ?? 0),
    ),
    ...(options.starts ?? []),
  ]
  const first = starts.map((start) => solver.begin(start))
  // The best go on side by side before one is followed to its end: where a soft way down is left, that takes long.
  const further = lowestFirst(first)
    .slice(0, followed)
    .map((run) => solver.follow(run, furtherSteps))
  let toBeat = Number.POSITIVE_INFINITY
  const ends = lowestFirst(further).map((run) => {
    const end = solver.follow(run, solver.limit, toBeat)
    toBeat = Math.min(toBeat, end.value)
    return end
  })
  const lowest = ends.reduce((a, b) => (b.value < a.value ? b : a))
  const best = solver.whole(lowest)
  return {
    xyz: best.x,
    energy: best.value,
    how: solver.howItEnded(best),
    from: lowest.name,
    tried: first.map(({ name, value }) => {
      const end = ends.find((other) => other.name === name)
      const energy = end === lowest ? best.value : (end?.value ?? value)
      return { name, energy, followed: end !== undefined }
    }),
  }
}

function lowestFirst(runs: readonly Run[]): Run[] {
  return [...runs].sort((a, b) => a.value - b.value)
}

/** Whether so many folds repeat with the piece; a few folds are tried whatever the piece. */
function sitsWell(order: number, folds: number): boolean {
  return order === 1 || folds <= 3 || greatestDivisor(order, folds) > 1
}

/** A start on its way down: its place among the unknowns of its repeat, and its energy as a whole. */
interface Run {
  readonly name: string
  readonly order: number
  readonly found: NewtonMinimum
  readonly value: number
  /** Energy of its part before each step so far. */
  readonly way: readonly number[]
}

/** An energy, of the whole or of a repeat, with the memory to factor its second derivatives. */
interface Part {
  readonly repeat: Repeat | null
  readonly energy: NetEnergy
  readonly factorisation: Factorisation
}

class SpaceSolver {
  private readonly energyOptions: EnergyOptions
  private readonly scale: number
  readonly limit: number
  private readonly parts = new Map<number, Part>()
  private work = 0

  constructor(
    private readonly net: Net,
    private readonly xy: Float64Array,
    private readonly options: SpaceOptions,
    private readonly material: Material,
  ) {
    this.scale = typicalLength(net)
    this.limit = options.steps ?? mostSteps
    this.energyOptions = {
      dimensions: 3,
      material,
      table: options.table ?? true,
      pull: options.pull ?? 0,
      corners: cornersOfFabric(net, xy),
    }
  }

  /** The shape close to the plane, if it is a stable one; null otherwise. */
  stayFlat(): SpaceShape | null {
    const { net, xy, material } = this
    const depth = this.energyOptions.table ? restingHeightMm(material.weight) : () => 0
    const start = Float64Array.from({ length: 3 * net.nodes.length }, (_, k) =>
      k % 3 === 2 ? depth(net.nodes[(k / 3) | 0]!.areaMm2) : xy[2 * ((k / 3) | 0) + (k % 3)]!,
    )
    const order = this.options.repeat?.order ?? 1
    const run = this.lower(this.part(order), this.fold(order, start), this.limit)
    const found = this.whole({ order, found: run })
    const how = this.howItEnded(found)
    const heights = found.x.filter((_, k) => k % 3 === 2)
    const lift = Math.max(...heights) - Math.min(...heights)
    if (!how.settled || how.unstable !== 0 || lift > flatEnoughMm) return null
    const tried = [{ name: "flat", energy: found.value, followed: true }]
    return { xyz: found.x, energy: found.value, how, from: "flat", tried }
  }

  begin({ name, folds, xyz }: SpaceStart): Run {
    const most = this.options.repeat?.order ?? 1
    const order = folds === undefined ? 1 : greatestDivisor(most, folds)
    const way: number[] = []
    const found = this.lower(this.part(order), this.fold(order, xyz), firstSteps, way)
    return { name, order, found, value: order * found.value, way }
  }

  /** A run some steps further on its repeat, unless at its present pace it will not come below `toBeat`. */
  follow(run: Run, steps: number, toBeat = Number.POSITIVE_INFINITY): Run {
    if (run.found.ended !== "iterations") return run
    const { name, order } = run
    const way = [...run.way]
    const found = this.lower(this.part(order), run.found.x, steps, way, toBeat / order)
    return { name, order, found, value: order * found.value, way }
  }

  /** What was found on a repeat, put together and lowered as a whole. */
  whole({ order, found }: Pick<Run, "order" | "found">): NewtonMinimum {
    const { repeat } = this.part(order)
    return repeat === null
      ? found
      : this.lower(this.part(1), unfold(repeat, found.x, 3), this.limit)
  }

  howItEnded(found: NewtonMinimum): HowItEnded {
    return howItEnded(found, this.material, this.scale)
  }

  private fold(order: number, xyz: Float64Array): Float64Array {
    const { repeat } = this.part(order)
    return repeat === null ? xyz : foldTogether(repeat, xyz, 3)
  }

  private part(order: number): Part {
    const known = this.parts.get(order)
    if (known !== undefined) return known
    const repeat = order === 1 ? null : repeatOf(this.net, order)
    const energy = new NetEnergy(this.net, this.energyOptions, repeat)
    const factorisation = new Factorisation(planElimination(energy.pattern))
    const part = { repeat, energy, factorisation }
    this.parts.set(order, part)
    return part
  }

  private lower(
    { energy, factorisation }: Part,
    from: Float64Array,
    iterations: number,
    way: number[] = [],
    toBeat = Number.POSITIVE_INFINITY,
  ): NewtonMinimum {
    const workOfStep = factorisation.plan.multiplications + (workOfNode * energy.size) / 3
    return minimiseByNewton(energy, from, {
      gradientTolerance: restShare * this.material.stiffness * this.scale,
      iterations,
      longestMove: this.scale,
      saddleMove: 0.05 * this.scale,
      factorisation,
      ...(this.energyOptions.table ? { project: keepAbove } : {}),
      watch: (step, value) => {
        this.work += workOfStep
        way.push(value)
        return (
          this.work > (this.options.work ?? Number.POSITIVE_INFINITY) ||
          hopeless(way, toBeat, iterations - step)
        )
      },
    })
  }
}

/** How much deeper into the table than before a step may press a node, mm: a few resting depths. */
const deeperMm = 3 * restingDepthMm

/** A step that would rock the piece through the table leaves on it what would go through. */
function keepAbove(trial: Float64Array, from: Float64Array): void {
  for (let k = 2; k < trial.length; k += 3)
    if (trial[k]! < 0) trial[k] = Math.max(trial[k]!, Math.min(from[k]!, 0) - deeperMm)
}

/** Whether a run, at its present pace, will not come below `toBeat` in the steps it has left. */
function hopeless(way: readonly number[], toBeat: number, left: number): boolean {
  const [value, before] = [way.at(-1)!, way.at(-1 - paceSteps)]
  if (before === undefined || value <= toBeat) return false
  return ((before - value) / paceSteps) * left < value - toBeat
}
