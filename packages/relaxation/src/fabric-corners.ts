// Corners of the fabric: at the base of each leg between the leg and the edge on either side of its top, and at
// its top between both sides of its base. In a fabric that lies right side up all turn the same way.

import type { FabricCorner } from "./energy-terms.ts"
import { type Net, nodePoint, type Point } from "./net.ts"

/** @param xy places; corners that are turned over there already are left out */
export function cornersOfFabric(net: Net, xy: Float64Array): FabricCorner[] {
  const found: FabricCorner[] = []
  const add = (at: Point, first: Point, second: Point, areaMm2: number): void => {
    const [o, a, b] = [placed(at, xy), placed(first, xy), placed(second, xy)]
    const cross = (a[0] - o[0]) * (b[1] - o[1]) - (a[1] - o[1]) * (b[0] - o[0])
    if (cross > openEnough * areaMm2) found.push({ at, first, second, areaMm2 })
  }
  const share = (node: number): number => (net.nodes[node]!.kind === "chain" ? gathered : 1)
  const neighbours = edgeNeighbours(net)
  for (const { role, from, to, restMm } of net.springs) {
    if (role !== "post") continue
    const top = to.nodes[0]!
    const { before, after } = neighbours[top]!
    const width = net.nodes[top]!.widthMm
    if (after >= 0) add(from, to, nodePoint(after), restMm * width * share(after))
    if (before >= 0) add(from, nodePoint(before), to, restMm * width * share(before))
  }
  for (const { top, left, right } of net.leans) {
    const width = net.nodes[top.nodes[0]!]!.widthMm
    add(top, right, left, 2 * width * width * share(left.nodes[0]!) * share(right.nodes[0]!))
  }
  return found
}

/** A slack chain draws its ends together, and may: its corners count as open with this share of their room. */
const gathered = 0.5

/** Corners as good as closed at the start cannot be kept open. */
const openEnough = 0.02

function edgeNeighbours(net: Net): { before: number; after: number }[] {
  const found = net.nodes.map(() => ({ before: -1, after: -1 }))
  for (const { nodes, closed } of net.edges)
    nodes.forEach((node, k) => {
      found[node] = {
        before: nodes[k - 1] ?? (closed ? nodes.at(-1)! : -1),
        after: nodes[k + 1] ?? (closed ? nodes[0]! : -1),
      }
    })
  return found
}

function placed(point: Point, xy: Float64Array): [number, number] {
  let [x, y] = [0, 0]
  point.nodes.forEach((node, k) => {
    x += point.weights[k]! * xy[2 * node]!
    y += point.weights[k]! * xy[2 * node + 1]!
  })
  return [x, y]
}
