// Measures of what is held together: slack of chain loops, strain of springs, area of the fabric.

import type { Net } from "./net.ts"

export interface ChainSlack {
  readonly round: number
  readonly element: number
  /** Length of the run against the path it takes: 0.2 = a fifth of it hangs slack; negative when stretched. */
  readonly slack: number
}

/** Slack of every run of chains: rest length over the straight way between its ends, less one. */
export function measureSlack(net: Net, positions: Float64Array, stride: 2 | 3): ChainSlack[] {
  return net.edges.flatMap((edge, round) => {
    const found: ChainSlack[] = []
    const n = edge.nodes.length
    for (let k = 0; k < n; k++) {
      const first = net.nodes[edge.nodes[k]!]!
      if (first.kind !== "chain" || net.nodes[edge.nodes.at(k - 1)!]!.element === first.element)
        continue
      let last = k
      while (last + 1 < n && net.nodes[edge.nodes[last + 1]!]!.element === first.element) last++
      const [before, after] = [edge.nodes.at(k - 1)!, edge.nodes[(last + 1) % n]!]
      const way = distance(positions, stride, before, after)
      let rest = (net.nodes[before]!.widthMm + net.nodes[after]!.widthMm) / 2
      for (let i = k; i <= last; i++) rest += net.nodes[edge.nodes[i]!]!.widthMm
      if (way > 0) found.push({ round, element: first.element, slack: rest / way - 1 })
    }
    return found
  })
}

/** Strain of every spring: length over rest length, less one. */
export function measureStrain(net: Net, positions: Float64Array, stride: 2 | 3): Float64Array {
  return Float64Array.from(net.springs, (spring) => {
    let square = 0
    for (let k = 0; k < stride; k++) {
      let d = 0
      spring.from.nodes.forEach((node, i) => {
        d -= spring.from.weights[i]! * positions[stride * node + k]!
      })
      spring.to.nodes.forEach((node, i) => {
        d += spring.to.weights[i]! * positions[stride * node + k]!
      })
      square += d * d
    }
    return Math.sqrt(square) / spring.restMm - 1
  })
}

/** Area of the fabric between the centre and each round's edge, each stitch as two triangles, mm2. */
export function measureAreas(net: Net, xyz: Float64Array): number[] {
  const areas = net.edges.map(() => 0)
  const posts = new Map<number, { base: number[]; round: number }>()
  for (const spring of net.springs) {
    if (spring.role !== "post") continue
    const base = [0, 1, 2].map((k) =>
      spring.from.nodes.reduce(
        (sum, node, i) => sum + spring.from.weights[i]! * xyz[3 * node + k]!,
        0,
      ),
    )
    posts.set(spring.to.nodes[0]!, { base, round: spring.round })
  }
  net.edges.forEach((edge, round) => {
    edge.nodes.forEach((node, k) => {
      const next =
        k + 1 < edge.nodes.length ? edge.nodes[k + 1]! : edge.closed ? edge.nodes[0]! : -1
      const [a, b] = [posts.get(node), posts.get(next)]
      if (a === undefined || b === undefined) return
      const [p, q] = [at(xyz, node), at(xyz, next)]
      areas[round]! += triangle(a.base, b.base, q) + triangle(a.base, q, p)
    })
  })
  let sum = 0
  return areas.map((area) => {
    sum += area
    return sum
  })
}

function at(xyz: Float64Array, node: number): number[] {
  return [xyz[3 * node]!, xyz[3 * node + 1]!, xyz[3 * node + 2]!]
}

function triangle(a: readonly number[], b: readonly number[], c: readonly number[]): number {
  const u = [0, 1, 2].map((k) => b[k]! - a[k]!)
  const v = [0, 1, 2].map((k) => c[k]! - a[k]!)
  return (
    Math.hypot(
      u[1]! * v[2]! - u[2]! * v[1]!,
      u[2]! * v[0]! - u[0]! * v[2]!,
      u[0]! * v[1]! - u[1]! * v[0]!,
    ) / 2
  )
}
function distance(positions: Float64Array, stride: number, a: number, b: number): number {
  let square = 0
  for (let k = 0; k < stride; k++)
    square += (positions[stride * a + k]! - positions[stride * b + k]!) ** 2
  return Math.sqrt(square)
}
