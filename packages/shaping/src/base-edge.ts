// The edge that a squaring starts from: the motif's last round as it lies flat, cut into half sides in every
// way a corner can fall on it.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { buildNet, layOutFlat } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { type Foot, feetOf } from "./feet.ts"
import { circleHalf, type HalfEdge, squareToEdge } from "./half-edge.ts"
import { halfOf } from "./plan.ts"
import type { Evening, SidePlan } from "./work-plan.ts"

/** A place of the last round where it lies: polar, about the centre, in the gauge's unit. */
export interface LaidFoot extends Foot {
  readonly reachMm: number
  readonly angle: number
}

/** One way to begin: half a side as the search wants it, and which places make up each side. */
export interface Beginning {
  readonly half: HalfEdge
  /** Place at which side 0 begins, in the middle of the side. */
  readonly start: number
  readonly sides: readonly SidePlan[]
}

/** Reaches that differ by less than this share are those of one circle. */
const roundWithin = 0.05
/** Beginnings tried per corner on or between places, where the edge below is not alike all round. */
const mostBeginnings = 3

/** Longer sides than this are no circle to be squared but a blanket. */
const mostPlacesOfSide = 160

/**
 * Every way to begin on a round as it lies; none where places of unequal size cannot be shared out.
 * @param laid what layFeet gives
 * @throws RoundwrightError `too-few-places`, `too-many-places`
 */
export function beginningsOf(laid: readonly LaidFoot[], corners: number): Beginning[] {
  const count = laid.length
  if (count < corners)
    throw new RoundwrightError(
      "too-few-places",
      `The last round has ${count} place${count === 1 ? "" : "s"} to work into, fewer than ${corners} corners.`,
      {
        hint: "Work an increase round first, or ask for fewer corners.",
        numbers: { places: count, corners },
      },
    )
  if (count > mostPlacesOfSide * corners)
    throw new RoundwrightError(
      "too-many-places",
      `A side of ${Math.round(count / corners)} places is too long to plan.`,
      {
        hint: `Start from a smaller round: at most ${mostPlacesOfSide} places a side.`,
        numbers: { places: count, corners },
      },
    )
  const reach = laid.reduce((sum, foot) => sum + foot.reachMm, 0) / count
  if (count % corners === 0) {
    const found = wholeBeginnings(laid, corners, reach)
    if (found.length > 0) return found
  }
  if (laid.some((foot) => foot.chains > 0)) return []
  return evenedBeginnings(laid, corners, reach)
}

/**
 * The feet of the last round with their place in the flat shape.
 * @throws RoundwrightError `no-rounds`
 */
export function layFeet(motif: Motif, gauge: Gauge): LaidFoot[] {
  if (motif.rounds.length === 0)
    throw new RoundwrightError("no-rounds", "The motif has no round to start from.", {
      hint: "Give at least one round.",
    })
  const net = buildNet(motif, gauge)
  const { xy } = layOutFlat(net)
  const edge = net.edges.at(-1)!
  const middle = (nodes: readonly number[], k: 0 | 1) =>
    nodes.reduce((sum, node) => sum + xy[2 * node + k]!, 0) / nodes.length
  const [cx, cy] = [middle(net.centre, 0), middle(net.centre, 1)]
  return feetOf(motif, gauge).map((foot) => {
    const nodes = edge.nodes.filter((_, i) => edge.elements[i] === foot.element)
    const [x, y] = [middle(nodes, 0) - cx, middle(nodes, 1) - cy]
    return { ...foot, reachMm: Math.hypot(x, y) / net.mmPerUnit, angle: Math.atan2(y, x) }
  })
}

/** Every side alike: all starts at which the places read the same both ways from the corner. */
function wholeBeginnings(laid: readonly LaidFoot[], corners: number, reach: number): Beginning[] {
  const feet = laid.length / corners
  const isRound = laid.every((foot) => Math.abs(foot.reachMm / reach - 1) < roundWithin)
  const sides = Array.from({ length: corners }, () => ({ feet, evening: "none" as const }))
  const found: Beginning[] = []
  for (const cornerOn of [true, false]) {
    const shape = halfOf(feet, cornerOn)
    const ways = new Map<string, Beginning & { lagMm: number }>()
    for (let start = 0; start < feet; start++) {
      const own = Array.from({ length: shape.feet }, (_, i) =>
        imagesOf(laid, start, feet, i, shape.midOn),
      )
      const chains = own.map((images) => images[0]!.chains)
      if (own.some((images, i) => images.some((foot) => foot.chains !== chains[i]))) continue
      const widths = own.map((images) => images[0]!.widthMm)
      const circle = circleHalf(shape, corners, reach, widths, chains)
      const half = isRound ? circle : withReach(circle, own, reach)
      const lagMm = half.feet.at(-1)!.x - half.feet[0]!.x
      const key = JSON.stringify([chains, isRound ? 0 : half.feet.map((foot) => foot.x.toFixed(2))])
      if (!ways.has(key)) ways.set(key, { half, start, sides, lagMm })
    }
    found.push(...[...ways.values()].sort((a, b) => b.lagMm - a.lagMm).slice(0, mostBeginnings))
  }
  return found
}

/** The places that foot i of the half stands for: on every side, and mirrored about its corner. */
function imagesOf(
  laid: readonly LaidFoot[],
  start: number,
  feet: number,
  i: number,
  midOn: boolean,
): LaidFoot[] {
  const sides = laid.length / feet
  const images: LaidFoot[] = []
  for (let side = 0; side < sides; side++)
    for (const at of [i, midOn ? feet - i : feet - 1 - i])
      images.push(laid[(start + side * feet + at) % laid.length]!)
  return images
}

/** The places of a circle moved to their own mean reach, with the way out square to the edge they make. */
function withReach(circle: HalfEdge, own: readonly LaidFoot[][], reach: number): HalfEdge {
  const feet = circle.feet.map((foot, i) => {
    const mean = own[i]!.reduce((sum, image) => sum + image.reachMm, 0) / own[i]!.length
    return { ...foot, x: (foot.x * mean) / reach, y: (foot.y * mean) / reach }
  })
  return squareToEdge({ ...circle, feet })
}

/**
 * Counts that k does not divide. Sides are planned with the next whole number of places and some are a
 * place short (one place takes both stitches), or with the one below and some have a place too
 * many (skipped, or worked together with its neighbour); odd sides are shared out evenly.
 */
function evenedBeginnings(laid: readonly LaidFoot[], corners: number, reach: number): Beginning[] {
  const count = laid.length
  const [low, high] = [Math.floor(count / corners), Math.ceil(count / corners)]
  const ways: { feet: number; odd: number; evening: Evening }[] = [
    { feet: high, odd: low, evening: "add" },
    { feet: low, odd: high, evening: "skip" },
    { feet: low, odd: high, evening: "together" },
  ]
  return ways.flatMap(({ feet, odd, evening }) => {
    if (low < 2 && evening !== "add") return []
    const sides = oddInside(
      Array.from({ length: corners }, (_, side): SidePlan => {
        const own =
          Math.floor(((side + 1) * count) / corners) - Math.floor((side * count) / corners)
        return own === odd && odd !== feet ? { feet: own, evening } : { feet: own, evening: "none" }
      }),
    )
    return [true, false].map((cornerOn) => {
      const shape = halfOf(feet, cornerOn)
      const places = Array.from({ length: shape.feet }, () => laid[0]!)
      const half = circleHalf(
        shape,
        corners,
        reach,
        places.map((foot) => foot.widthMm),
        places.map(() => 0),
      )
      return { half, start: 0, sides }
    })
  })
}

/**
 * The round is joined in the middle of the first side: the odd place must stand away from there, or it would seem
 * forgotten. So the first and the last side are alike, both as planned where two such sides are neighbours.
 */
function oddInside(sides: readonly SidePlan[]): SidePlan[] {
  const alike = (first: number, planned: boolean) => {
    const last = (first + sides.length - 1) % sides.length
    return [first, last].every((side) => (sides[side]!.evening === "none") === planned)
  }
  const from = sides.map((_, side) => side)
  const first = from.find((side) => alike(side, true)) ?? from.find((side) => alike(side, false))
  return first === undefined ? [...sides] : [...sides.slice(first), ...sides.slice(0, first)]
}
