// The laid-out shape as judge: the whole motif as an elastic net pressed flat, and on it the sides of the last
// round: how straight, how even, how true the corners are, how far everything is strained.

import type { Motif } from "@roundwright/motif"
import { layOut, type Net, type ShapeVerdict } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

export interface ProposalShape {
  /** Corner tip to corner tip, mean over the sides, in the gauge's unit of length. */
  readonly sideMm: number
  /** How far the middle third of a side lies outside the line of its corner tips; the side furthest off. */
  readonly bowMm: number
  /** Greatest departure of any stitch from the best straight line of its side. */
  readonly unevenMm: number
  /** Angle between neighbouring sides' best lines, degrees; the corner furthest off the polygon's. */
  readonly cornerAngleDeg: number
  /** Each side's length and bow, and each corner, in working order from the first corner. */
  readonly sides: readonly { readonly lengthMm: number; readonly bowMm: number }[]
  readonly cornerAnglesDeg: readonly number[]
  readonly sideReachMm: number
  readonly cornerReachMm: number
  /** Direction of each corner's tip about the centre in the net's coordinates, radians, in working order. */
  readonly tipAngles: readonly number[]
  /**
   * The outline as a check of the finished piece reads it, which looks for the corners itself: how many it finds, how far
   * the middle of a side lies outside (share of the side), and the corner's mean angle; null where it finds none.
   */
  readonly asChecked: {
    readonly corners: number
    readonly bow: number
    readonly cornerAngleDeg: number | null
  }
  /** Edge at rest over edge as it lies, in the last round: above 1 too full. Chains left out. */
  readonly fullness: number
  /** Mean of half the squared strains of the fabric from round `from` on. */
  readonly strainEnergy: number
  readonly settled: boolean
  /** Verdict and blocking stretch as the net's own judge has them: of the flat shape, or in space where that was asked for. */
  readonly judged: Pick<ShapeVerdict, "verdict" | "fromRound" | "blockingStretch" | "blockingRound">
  /** The net and where its nodes lie, for whoever goes on from here. */
  readonly net: Net
  readonly xy: Float64Array
}

interface Spot {
  readonly x: number
  readonly y: number
}

/**
 * Lays the motif out and measures its last round.
 * @param corners elements of the last round that stand on each corner, three or more corners; or only how many:
 *   then each is the farthest place within its own share of the round
 * @param from index of the first round whose strains count
 */
export function measureProposal(
  motif: Motif,
  gauge: Gauge,
  corners: readonly (readonly number[])[] | number,
  from: number,
): ProposalShape {
  const laid = layOut(motif, gauge, { inSpace: false })
  const { net, flat } = laid
  const unit = net.mmPerUnit
  const round = motif.rounds.length - 1
  const edge = net.edges[round]!
  const centre = centreOf(net, flat.xy)
  const spots = edge.nodes.map((node) => ({
    x: flat.xy[2 * node]! - centre.x,
    y: flat.xy[2 * node + 1]! - centre.y,
  }))
  const tips =
    typeof corners === "number"
      ? farthestTips(spots, corners)
      : corners.map((elements) => tipOf(spots, edge.elements, elements))
  tips.sort((a, b) => a - b)
  const sides = tips.map((tip, i) => measureSide(spots, tip, tips[(i + 1) % tips.length]!))
  const polygonDeg = 180 - 360 / tips.length
  const angles = sides.map((side, i) => {
    const before = sides[(i - 1 + sides.length) % sides.length]!
    return angleBetween(before.direction, side.direction)
  })
  return {
    sideMm: mean(sides.map((side) => side.lengthMm)) / unit,
    bowMm: furthest(sides.map((side) => side.bowMm)) / unit,
    unevenMm: Math.max(...sides.map((side) => side.unevenMm)) / unit,
    cornerAngleDeg: polygonDeg + furthest(angles.map((angle) => angle - polygonDeg)),
    sides: sides.map(({ lengthMm, bowMm }) => ({ lengthMm: lengthMm / unit, bowMm: bowMm / unit })),
    cornerAnglesDeg: angles,
    sideReachMm: mean(sides.map((side) => side.reachMm)) / unit,
    cornerReachMm: mean(tips.map((tip) => Math.hypot(spots[tip]!.x, spots[tip]!.y))) / unit,
    tipAngles: tips.map((tip) => Math.atan2(spots[tip]!.y, spots[tip]!.x)),
    asChecked: {
      corners: laid.outline.corners,
      bow: (laid.outline.bowMm * unit) / mean(sides.map((side) => side.lengthMm)),
      cornerAngleDeg: laid.outline.cornerAngleDeg,
    },
    fullness: edgeFullness(net, flat.xy, round),
    strainEnergy: strainFrom(net, flat.xy, from),
    settled: flat.how.settled,
    judged: {
      verdict: laid.verdict,
      fromRound: laid.fromRound,
      blockingStretch: laid.blockingStretch,
      blockingRound: laid.blockingRound,
    },
    net,
    xy: flat.xy,
  }
}

function centreOf(net: Net, xy: Float64Array): Spot {
  return {
    x: mean(net.centre.map((node) => xy[2 * node]!)),
    y: mean(net.centre.map((node) => xy[2 * node + 1]!)),
  }
}

/** The farthest of the corner's nodes. */
function tipOf(
  spots: readonly Spot[],
  elements: readonly number[],
  corner: readonly number[],
): number {
  let best = -1
  elements.forEach((element, k) => {
    if (!corner.includes(element)) return
    const [spot, other] = [spots[k]!, spots[best]]
    if (!other || spot.x ** 2 + spot.y ** 2 > other.x ** 2 + other.y ** 2 + 1e-12) best = k
  })
  return best
}

/** One node in each of k equal shares of the round, the shares laid so that their farthest nodes are farthest. */
function farthestTips(spots: readonly Spot[], corners: number): number[] {
  const n = spots.length
  const reach = spots.map((spot) => Math.hypot(spot.x, spot.y))
  const share = n / corners
  const tipsFrom = (begin: number) =>
    Array.from({ length: corners }, (_, c) => {
      let best = Math.round(begin + c * share) % n
      for (let k = Math.round(begin + c * share); k < begin + (c + 1) * share; k++)
        if (reach[k % n]! > reach[best]! + 1e-9) best = k % n
      return best
    })
  let found: number[] = []
  let most = -1
  for (let begin = 0; begin < share; begin++) {
    const tips = tipsFrom(begin)
    // Tips at the rim of their share belong to two corners' climb: the spread between them tells.
    const sum = tips.reduce((total, tip) => total + reach[tip]!, 0)
    const even = tips.every((tip, i) => {
      const step = (tips[(i + 1) % corners]! - tip + n) % n
      return Math.abs(step - share) <= share / 3
    })
    if (even && sum > most + 1e-9) {
      most = sum
      found = tips
    }
  }
  return found.length > 0 ? found : tipsFrom(0)
}

function measureSide(spots: readonly Spot[], from: number, to: number) {
  const count = (to - from + spots.length) % spots.length || spots.length
  const along = Array.from({ length: count + 1 }, (_, i) => spots[(from + i) % spots.length]!)
  const [a, b] = [along[0]!, along.at(-1)!]
  const lengthMm = Math.hypot(b.x - a.x, b.y - a.y) || Number.MIN_VALUE
  const [ux, uy] = [(b.x - a.x) / lengthMm, (b.y - a.y) / lengthMm]
  const outside = (p: Spot) => (p.x - a.x) * uy - (p.y - a.y) * ux
  const middle = along.slice(Math.round(count / 3), Math.round((2 * count) / 3) + 1)
  const bowMm = mean(middle.map(outside))
  const line = bestLine(along)
  return {
    lengthMm,
    bowMm,
    reachMm: a.x * uy - a.y * ux + bowMm,
    unevenMm: Math.max(...along.map((p) => Math.abs(line.off(p)))),
    direction: line.direction,
  }
}

/** Line of least squared distances, pointing from the first spot to the last. */
function bestLine(spots: readonly Spot[]): {
  direction: readonly [number, number]
  off: (p: Spot) => number
} {
  const [mx, my] = [mean(spots.map((p) => p.x)), mean(spots.map((p) => p.y))]
  let [xx, xy, yy] = [0, 0, 0]
  for (const { x, y } of spots) {
    xx += (x - mx) ** 2
    xy += (x - mx) * (y - my)
    yy += (y - my) ** 2
  }
  const angle = Math.atan2(2 * xy, xx - yy) / 2
  let [ux, uy] = [Math.cos(angle), Math.sin(angle)]
  const [a, b] = [spots[0]!, spots.at(-1)!]
  if ((b.x - a.x) * ux + (b.y - a.y) * uy < 0) [ux, uy] = [-ux, -uy]
  return { direction: [ux, uy], off: (p) => (p.x - mx) * uy - (p.y - my) * ux }
}

/** Inner angle of a counterclockwise outline, degrees. */
function angleBetween(before: readonly [number, number], after: readonly [number, number]): number {
  const cross = before[0] * after[1] - before[1] * after[0]
  const dot = before[0] * after[0] + before[1] * after[1]
  return 180 - (Math.atan2(cross, dot) * 180) / Math.PI
}

function edgeFullness(net: Net, xy: Float64Array, round: number): number {
  let rest = 0
  let laid = 0
  for (const spring of net.springs) {
    if (spring.role !== "top" || spring.round !== round) continue
    rest += spring.restMm
    laid += lengthOf(spring, xy)
  }
  return laid > 0 ? rest / laid : 1
}

function strainFrom(net: Net, xy: Float64Array, from: number): number {
  let energy = 0
  let area = 0
  for (const spring of net.springs) {
    if (spring.role === "chain" || spring.round < from) continue
    energy += (spring.areaMm2 * (lengthOf(spring, xy) / spring.restMm - 1) ** 2) / 2
    area += spring.areaMm2
  }
  return area > 0 ? energy / area : 0
}

type Spring = Net["springs"][number]

function lengthOf(spring: Spring, xy: Float64Array): number {
  const at = (point: Spring["from"], k: 0 | 1) =>
    point.nodes.reduce((sum, node, i) => sum + point.weights[i]! * xy[2 * node + k]!, 0)
  return Math.hypot(at(spring.to, 0) - at(spring.from, 0), at(spring.to, 1) - at(spring.from, 1))
}

/** Sizes nearer to one another than this share are the same but for the solver's tolerance. */
const sameSize = 1e-3

/** The value furthest from zero; of two as far off on either side the positive one, so that the last bits decide nothing. */
function furthest(values: readonly number[]): number {
  const most = Math.max(...values.map(Math.abs))
  const alike = values.filter((value) => Math.abs(value) >= (1 - sameSize) * most)
  return Math.max(...alike)
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / Math.max(1, values.length)
}
