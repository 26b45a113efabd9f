// The points that terms act on: nodes, and weighted sums of nodes (a place between two chains, a second difference
// along a chord of chains). Terms see points only; how these follow from the unknowns is written here once.
// Of a piece solved by its repeat, an image of a node is the node turned about the z axis.

import type { Point } from "./net.ts"
import type { Repeat } from "./repeat.ts"

export class PointTable {
  /** Unknown nodes: point k is node k for k below this. */
  readonly nodes: number
  private readonly starts: number[] = []
  private readonly members: number[] = []
  private readonly weights: number[] = []
  private readonly turns: number[] = []
  private readonly known = new Map<string, number>()
  private readonly cosines: Float64Array
  private readonly sines: Float64Array
  private places = new Float64Array(0)
  private pulls = new Float64Array(0)

  constructor(
    count: number,
    private readonly repeat: Repeat | null,
  ) {
    this.nodes = repeat === null ? count : repeat.nodes.length
    const order = repeat?.order ?? 1
    const angles = Float64Array.from({ length: order }, (_, k) => (2 * Math.PI * k) / order)
    this.cosines = angles.map(Math.cos)
    this.sines = angles.map(Math.sin)
    this.starts.push(0)
  }

  get count(): number {
    return this.nodes + this.starts.length - 1
  }

  /** The number of a point, entered when it is new. */
  of({ nodes, weights }: Point): number {
    const image = this.repeat
    if (nodes.length === 1 && weights[0] === 1) {
      const node = nodes[0]!
      if (image === null) return node
      if (image.turn[node] === 0) return image.unknown[node]!
    }
    const key = `${nodes.join()}:${weights.join()}`
    const found = this.known.get(key)
    if (found !== undefined) return found
    const id = this.count
    this.known.set(key, id)
    nodes.forEach((node, k) => {
      this.members.push(image === null ? node : image.unknown[node]!)
      this.turns.push(image === null ? 0 : image.turn[node]!)
      this.weights.push(weights[k]!)
    })
    this.starts.push(this.members.length)
    return id
  }

  /** x, y, z of all points from the unknowns, `d` a node. */
  place(x: Float64Array, d: 2 | 3): Float64Array {
    if (this.places.length !== 3 * this.count) {
      this.places = new Float64Array(3 * this.count)
      this.pulls = new Float64Array(3 * this.count)
    }
    const { places: p, nodes, starts, members, weights, turns } = this
    if (d === 3) p.set(x)
    else
      for (let k = 0; k < nodes; k++) {
        p[3 * k] = x[2 * k]!
        p[3 * k + 1] = x[2 * k + 1]!
      }
    for (let i = 0; i + 1 < starts.length; i++) {
      let [px, py, pz] = [0, 0, 0]
      for (let e = starts[i]!; e < starts[i + 1]!; e++) {
        const at = 3 * members[e]!
        const w = weights[e]!
        const [c, s] = [w * this.cosines[turns[e]!]!, w * this.sines[turns[e]!]!]
        px += c * p[at]! - s * p[at + 1]!
        py += s * p[at]! + c * p[at + 1]!
        pz += w * p[at + 2]!
      }
      const to = 3 * (nodes + i)
      p[to] = px
      p[to + 1] = py
      p[to + 2] = pz
    }
    return p
  }

  /** Room for the gradient by points, cleared. */
  clearPulls(): Float64Array {
    this.pulls.fill(0)
    return this.pulls
  }

  /** Gradient by points to gradient by unknowns. */
  gather(gradient: Float64Array, d: 2 | 3): void {
    const { pulls: g, nodes, starts, members, weights, turns } = this
    for (let i = 0; i + 1 < starts.length; i++) {
      const from = 3 * (nodes + i)
      const [gx, gy, gz] = [g[from]!, g[from + 1]!, g[from + 2]!]
      for (let e = starts[i]!; e < starts[i + 1]!; e++) {
        const at = 3 * members[e]!
        const w = weights[e]!
        const [c, s] = [w * this.cosines[turns[e]!]!, w * this.sines[turns[e]!]!]
        g[at]! += c * gx + s * gy
        g[at + 1]! += c * gy - s * gx
        g[at + 2]! += w * gz
      }
    }
    for (let k = 0; k < nodes; k++) for (let i = 0; i < d; i++) gradient[d * k + i] = g[3 * k + i]!
  }

  /** What a point is made of: calls back with each unknown node, its weight, and cosine and sine of its turn. */
  eachMember(
    point: number,
    use: (node: number, weight: number, cosine: number, sine: number) => void,
  ): void {
    if (point < this.nodes) {
      use(point, 1, 1, 0)
      return
    }
    const i = point - this.nodes
    for (let e = this.starts[i]!; e < this.starts[i + 1]!; e++) {
      const turn = this.turns[e]!
      use(this.members[e]!, this.weights[e]!, this.cosines[turn]!, this.sines[turn]!)
    }
  }
}
