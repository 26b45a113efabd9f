// Where the units of a round lie, brought to one half side: distances outwards and along the side from its middle, the
// mean over all sides with as many units and both of their halves.

import type { Net } from "@roundwright/relaxation"
import type { Spot } from "./fabric-of.ts"
import type { SeatClass, Seating } from "./fabric-plan.ts"
import { classOf } from "./seatings.ts"

export interface LaidUnit {
  /** Distance from the centre square to the side, and along the side from its middle; the gauge's unit. */
  readonly out: number
  readonly along: number
}

export interface LaidSides {
  readonly half: number
  /** By the class of the side, from its first end to the other. */
  readonly sides: ReadonlyMap<string, readonly LaidUnit[]>
  /** How many sides are of that class. */
  readonly counts: ReadonlyMap<string, number>
  /** Distance of the corners' places from the centre, mean of each class. */
  readonly cornerReach: ReadonlyMap<SeatClass, number>
}

export function layUnits(net: Net, xy: Float64Array, seating: Seating): LaidSides {
  const at = placesOf(net, xy)
  const corners = seating.corners.map(({ spot }) => at(spot))
  const k = corners.length
  const half = Math.PI / k
  const way = turnsLeft(corners) ? 1 : -1
  // The regular polygon's corner 0 at the mean of where all corners say it is.
  let [c, s] = [0, 0]
  corners.forEach(({ x, y }, i) => {
    const angle = Math.atan2(y, x) - way * 2 * half * i
    c += Math.cos(angle)
    s += Math.sin(angle)
  })
  const first = Math.atan2(s, c)
  const images = new Map<string, LaidUnit[][]>()
  const counts = new Map<string, number>()
  const add = (key: string, units: LaidUnit[]) =>
    images.set(key, [...(images.get(key) ?? []), units])
  seating.sides.forEach((units, i) => {
    const normal = first + way * half * (2 * i + 1)
    const [nx, ny] = [Math.cos(normal), Math.sin(normal)]
    const laid = units.map((unit): LaidUnit => {
      const { x, y } = at(unit)
      return { out: x * nx + y * ny, along: way * (y * nx - x * ny) }
    })
    const { key, mirrored } = classOf(seating, i)
    counts.set(key, (counts.get(key) ?? 0) + 1)
    add(key, laid)
    add(
      mirrored,
      [...laid].reverse().map(({ out, along }) => ({ out, along: -along })),
    )
  })
  const sides = new Map<string, LaidUnit[]>()
  for (const key of counts.keys()) {
    const own = images.get(key)!
    const mean = (of: (unit: LaidUnit) => number, u: number) =>
      own.reduce((sum, units) => sum + of(units[u]!), 0) / own.length
    sides.set(
      key,
      own[0]!.map((_, u) => ({
        out: mean((unit) => unit.out, u),
        along: mean((unit) => unit.along, u),
      })),
    )
  }
  const reaches = new Map<SeatClass, number[]>()
  seating.corners.forEach((seat, i) => {
    const own = Math.hypot(corners[i]!.x, corners[i]!.y)
    reaches.set(seat.class, [...(reaches.get(seat.class) ?? []), own])
  })
  const cornerReach = new Map(
    [...reaches].map(([seat, all]) => [seat, all.reduce((sum, one) => sum + one, 0) / all.length]),
  )
  return { half, sides, counts, cornerReach }
}

/** How far a seating's corners are from standing evenly round: the root of the mean square, radians; and how far out. */
export function standOfCorners(
  net: Net,
  xy: Float64Array,
  seating: Seating,
): { readonly askew: number; readonly reach: number } {
  const places = seating.corners.map(({ spot }) => spot).map(placesOf(net, xy))
  const way = turnsLeft(places) ? 1 : -1
  const first = places[0]!
  const off = places.map(({ x, y }, i) => {
    const turn =
      way * (Math.atan2(y, x) - Math.atan2(first.y, first.x)) - (2 * Math.PI * i) / places.length
    return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI))
  })
  const mean = off.reduce((sum, one) => sum + one, 0) / off.length
  const askew = Math.sqrt(off.reduce((sum, one) => sum + (one - mean) ** 2, 0) / off.length)
  const reach = places.reduce((sum, { x, y }) => sum + Math.hypot(x, y), 0) / places.length
  return { askew, reach }
}

/** Mean distance of places from the centre. */
export function meanReach(net: Net, xy: Float64Array, spots: readonly Spot[]): number {
  const reach = spots.map(placesOf(net, xy)).map(({ x, y }) => Math.hypot(x, y))
  return reach.reduce((sum, one) => sum + one, 0) / reach.length
}

/** The middle of a spot about the centre, in the gauge's unit; of a run of chains the middle chains. */
function placesOf(net: Net, xy: Float64Array): (spot: Spot) => { x: number; y: number } {
  const mean = (nodes: readonly number[], k: 0 | 1) =>
    nodes.reduce((sum, node) => sum + xy[2 * node + k]!, 0) / Math.max(1, nodes.length)
  const [cx, cy] = [mean(net.centre, 0), mean(net.centre, 1)]
  return ({ anchor, element }) => {
    const edge = net.edges[anchor.at === "centre" ? 0 : anchor.round]!
    const nodesOf = (e: number) => edge.nodes.filter((_, i) => edge.elements[i] === e)
    let nodes = nodesOf(element)
    if (anchor.at === "space" && nodes.length > 2) {
      const cut = Math.floor((nodes.length - 1) / 3)
      nodes = nodes.slice(cut, nodes.length - cut)
    }
    if (anchor.at === "between") {
      const next = edge.elements.findIndex((e, i) => e === element && edge.elements[i + 1] !== e)
      nodes = [edge.nodes[next]!, edge.nodes[(next + 1) % edge.nodes.length]!]
    }
    return { x: (mean(nodes, 0) - cx) / net.mmPerUnit, y: (mean(nodes, 1) - cy) / net.mmPerUnit }
  }
}

function turnsLeft(points: readonly { x: number; y: number }[]): boolean {
  let area = 0
  points.forEach((p, i) => {
    const q = points[(i + 1) % points.length]!
    area += p.x * q.y - p.y * q.x
  })
  return area > 0
}
