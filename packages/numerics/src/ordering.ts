// A fill-reducing order of elimination: minimum degree on the quotient graph, with approximate
// degrees, absorbed elements and merged twins (unknowns with the same neighbours).
// Source: P. Amestoy, T. A. Davis, I. S. Duff, "An approximate minimum degree ordering algorithm",
// SIAM J. Matrix Anal. Appl. 17 (1996).

import type { SymmetricPattern } from "./sparse.ts"
import { gatherTwins, type TwinGraph } from "./twins.ts"

/** @returns order[k] = the unknown to be eliminated k-th. Ties go to the lowest index. */
export function minimumDegreeOrder(pattern: SymmetricPattern): Int32Array {
  return Int32Array.from(eliminateByDegree(gatherTwins(pattern)))
}

/** The same on a graph of twins; returns their members. */
export function eliminateByDegree(twins: TwinGraph): number[] {
  const graph = new QuotientGraph(
    twins.members.map((list) => [...list]),
    twins.edges.map((list) => [...list]),
  )
  const order: number[] = []
  for (let left = twins.members.length; left > 0; ) {
    const { members, groups } = graph.eliminateNext()
    order.push(...members)
    left -= groups
  }
  return order
}

/**
 * What is left of the elimination graph. An eliminated unknown becomes an element: the clique of
 * all it touched, kept as one list instead of as many edges. An unknown is adjacent to unknowns
 * (original edges) and to elements.
 */
class QuotientGraph {
  /** How many of the groups given an unknown stands for. */
  private readonly groups: Int32Array
  private readonly elementsOf: number[][]
  /** Unknowns of an element; empty when absorbed or not (yet) an element. */
  private readonly reach: number[][]
  private readonly degree: Int32Array
  private readonly alive: Uint8Array
  private readonly mark: Int32Array
  private stamp = 0
  private remaining: number
  /** For elements: how much of their reach lies outside the newest one, valid when `outsideStamp` fits. */
  private readonly outside: Int32Array
  private readonly outsideStamp: Int32Array
  /** Unknowns by degree, as doubly linked lists. */
  private readonly head: Int32Array
  private readonly next: Int32Array
  private readonly previous: Int32Array
  private lowest = 0

  /** @param members of a group, emptied when it joins another */
  constructor(
    private readonly members: number[][],
    private readonly edges: number[][],
  ) {
    const n = edges.length
    this.groups = new Int32Array(n).fill(1)
    this.remaining = this.members.reduce((sum, list) => sum + list.length, 0)
    this.elementsOf = Array.from({ length: n }, () => [])
    this.reach = Array.from({ length: n }, () => [])
    this.degree = Int32Array.from(edges, (list) => this.weightOf(list))
    this.alive = new Uint8Array(n).fill(1)
    this.mark = new Int32Array(n)
    this.outside = new Int32Array(n)
    this.outsideStamp = new Int32Array(n)
    this.head = new Int32Array(this.remaining + 1).fill(-1)
    this.next = new Int32Array(n).fill(-1)
    this.previous = new Int32Array(n).fill(-1)
    for (let i = n - 1; i >= 0; i--) this.enlist(i)
  }

  /** Eliminates the unknown of least degree with its twins; returns them all. */
  eliminateNext(): { members: readonly number[]; groups: number } {
    while (this.head[this.lowest] === -1) this.lowest++
    const pivot = this.head[this.lowest]!
    this.delist(pivot)
    const stamp = ++this.stamp
    const reach: number[] = []
    const collect = (list: readonly number[]): void => {
      for (const i of list) {
        if (this.alive[i] === 0 || i === pivot || this.mark[i] === stamp) continue
        this.mark[i] = stamp
        reach.push(i)
      }
    }
    collect(this.edges[pivot]!)
    for (const e of this.elementsOf[pivot]!) {
      collect(this.reach[e]!)
      this.reach[e] = []
    }
    const eliminated = this.members[pivot]!
    this.alive[pivot] = 0
    this.edges[pivot] = []
    this.elementsOf[pivot] = []
    this.remaining -= eliminated.length
    this.reach[pivot] = reach
    this.updateNeighbours(pivot, reach, stamp)
    this.mergeTwins(reach)
    this.reach[pivot] = reach.filter((i) => this.alive[i] === 1)
    for (const i of this.reach[pivot]) this.enlist(i)
    return { members: eliminated, groups: this.groups[pivot]! }
  }

  private updateNeighbours(pivot: number, reach: readonly number[], stamp: number): void {
    for (const i of reach) {
      this.delist(i)
      const weight = this.members[i]!.length
      for (const e of this.elementsOf[i]!) {
        if (this.reach[e]!.length === 0) continue
        if (this.outsideStamp[e] !== stamp) {
          this.outsideStamp[e] = stamp
          this.reach[e] = this.reach[e]!.filter((j) => this.alive[j] === 1)
          this.outside[e] = this.weightOf(this.reach[e])
        }
        this.outside[e]! -= weight
      }
    }
    const reachWeight = this.weightOf(reach)
    for (const i of reach) {
      const own = this.members[i]!.length
      let bound = reachWeight - own
      const kept = [pivot]
      for (const e of this.elementsOf[i]!) {
        if (this.reach[e]!.length === 0) continue
        if (this.outside[e] === 0) continue // all of it lies in the newest element: absorbed
        bound += this.outside[e]!
        kept.push(e)
      }
      const edges = this.edges[i]!.filter((j) => this.alive[j] === 1 && this.mark[j] !== stamp)
      bound += this.weightOf(edges)
      this.elementsOf[i] = kept
      this.edges[i] = edges
      const known = this.degree[i]! + reachWeight - own
      this.degree[i] = Math.max(0, Math.min(this.remaining - own, known, bound))
    }
  }

  private mergeTwins(reach: readonly number[]): void {
    const buckets = new Map<number, number[]>()
    for (const i of reach) {
      let hash = this.edges[i]!.length * 31 + this.elementsOf[i]!.length
      for (const j of this.edges[i]!) hash += j
      for (const e of this.elementsOf[i]!) hash += 3 * e
      const bucket = buckets.get(hash)
      if (bucket === undefined) {
        buckets.set(hash, [i])
        continue
      }
      const leader = bucket.find((j) => this.sameLists(i, j))
      if (leader === undefined) bucket.push(i)
      else {
        this.degree[leader] = Math.max(0, this.degree[leader]! - this.members[i]!.length)
        this.join(i, leader)
      }
    }
  }

  private sameLists(i: number, j: number): boolean {
    return (
      sameSet(this.edges[i]!, this.edges[j]!) && sameSet(this.elementsOf[i]!, this.elementsOf[j]!)
    )
  }

  private join(i: number, leader: number): void {
    this.members[leader]!.push(...this.members[i]!)
    this.groups[leader]! += this.groups[i]!
    this.members[i] = []
    this.alive[i] = 0
    this.edges[i] = []
    this.elementsOf[i] = []
  }

  private weightOf(list: readonly number[]): number {
    let sum = 0
    for (const i of list) sum += this.members[i]!.length
    return sum
  }

  private enlist(i: number): void {
    const d = this.degree[i]!
    const first = this.head[d]!
    this.next[i] = first
    this.previous[i] = -1
    if (first !== -1) this.previous[first] = i
    this.head[d] = i
    if (d < this.lowest) this.lowest = d
  }

  private delist(i: number): void {
    const [before, after] = [this.previous[i]!, this.next[i]!]
    if (before === -1) this.head[this.degree[i]!] = after
    else this.next[before] = after
    if (after !== -1) this.previous[after] = before
  }
}

function sameSet(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((x) => b.includes(x))
}
