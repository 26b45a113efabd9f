// What elimination will touch, found once from the pattern alone: the elimination tree, and the
// supernodes (runs of columns with nearly the same rows), each a small dense front.
// Sources: T. A. Davis, "Direct Methods for Sparse Linear Systems" (2006), ch. 4 (tree, postorder,
// counts); J. W. H. Liu, "The multifrontal method for sparse matrix solution", SIAM Review 34 (1992).

import { minimumDegreeOrder } from "./ordering.ts"
import { patternFromPairs, type SymmetricPattern } from "./sparse.ts"

/** A supernode: columns `first` to `first + width - 1`, dense on `rows` (its own columns first). */
export interface Front {
  readonly first: number
  readonly width: number
  readonly rows: Int32Array
  /** Fronts whose remainder is added to this one. */
  readonly children: readonly number[]
  /** Where its columns start among the factor's entries (rows.length x width, by columns). */
  readonly offset: number
}

export interface EliminationPlan {
  readonly pattern: SymmetricPattern
  /** order[k] = unknown eliminated k-th; place is its inverse. */
  readonly order: Int32Array
  readonly place: Int32Array
  readonly fronts: readonly Front[]
  /** The pattern in elimination order, and for each of its entries the place in the original values. */
  readonly permuted: SymmetricPattern
  readonly source: Int32Array
  readonly factorEntries: number
  readonly largestFront: number
  /** The most entries of remainders that wait at one time. */
  readonly stackEntries: number
  /** Multiplications of one factorisation: its cost. */
  readonly multiplications: number
}

/**
 * Columns are joined to their parent's front while the zeros this stores stay below a share of the
 * front: a few wasted multiplications cost less than more, smaller fronts. Shares chosen by timing.
 */
const joinedZerosShare = 0.2
/** Fronts narrower than this are joined at a larger share, for the same reason. */
const narrowFront = 6
const joinedZerosShareWhenNarrow = 0.4

/** @param order any order of elimination; minimum degree when left out */
export function planElimination(
  pattern: SymmetricPattern,
  order: Int32Array = minimumDegreeOrder(pattern),
): EliminationPlan {
  const first = permute(pattern, order)
  const parents = eliminationTree(first.pattern)
  const post = postorder(parents)
  const finalOrder = post.map((k) => order[k]!)
  const { pattern: permuted, source } = permute(pattern, finalOrder)
  const parent = eliminationTree(permuted)
  const counts = columnCounts(permuted, parent)
  const fronts = gatherFronts(permuted, parent, counts)
  const place = new Int32Array(pattern.size)
  finalOrder.forEach((unknown, k) => {
    place[unknown] = k
  })
  const last = fronts.at(-1)
  return {
    pattern,
    order: finalOrder,
    place,
    fronts,
    permuted,
    source,
    factorEntries: last === undefined ? 0 : last.offset + last.width * last.rows.length,
    largestFront: fronts.reduce((most, front) => Math.max(most, front.rows.length), 0),
    stackEntries: stackNeeded(fronts),
    multiplications: fronts.reduce((sum, front) => sum + multiplicationsOf(front), 0),
  }
}

function permute(
  pattern: SymmetricPattern,
  order: Int32Array,
): { pattern: SymmetricPattern; source: Int32Array } {
  const place = new Int32Array(pattern.size)
  order.forEach((unknown, k) => {
    place[unknown] = k
  })
  const entries = pattern.row.length
  const rows = new Int32Array(entries)
  const columns = new Int32Array(entries)
  for (let j = 0; j < pattern.size; j++)
    for (let p = pattern.columnStart[j]!; p < pattern.columnStart[j + 1]!; p++) {
      rows[p] = place[pattern.row[p]!]!
      columns[p] = place[j]!
    }
  const laid = patternFromPairs(pattern.size, rows, columns)
  const source = new Int32Array(entries)
  laid.slots.forEach((slot, p) => {
    source[slot] = p
  })
  return { pattern: laid.pattern, source }
}

/** parent[j] = the first column that eliminating j changes, -1 for a root. Needs rows of the upper triangle. */
function eliminationTree(pattern: SymmetricPattern): Int32Array {
  const n = pattern.size
  const upper = transposed(pattern)
  const parent = new Int32Array(n).fill(-1)
  const ancestor = new Int32Array(n).fill(-1)
  for (let k = 0; k < n; k++)
    for (let p = upper.start[k]!; p < upper.start[k + 1]!; p++) {
      let i = upper.index[p]!
      while (i !== -1 && i < k) {
        const next = ancestor[i]!
        ancestor[i] = k
        if (next === -1) parent[i] = k
        i = next
      }
    }
  return parent
}

/** For each row, the columns left of the diagonal. */
function transposed(pattern: SymmetricPattern): { start: Int32Array; index: Int32Array } {
  const n = pattern.size
  const start = new Int32Array(n + 1)
  for (const i of pattern.row) start[i + 1]!++
  for (let k = 0; k < n; k++) start[k + 1]! += start[k]!
  const next = start.slice()
  const index = new Int32Array(pattern.row.length)
  for (let j = 0; j < n; j++)
    for (let p = pattern.columnStart[j]!; p < pattern.columnStart[j + 1]!; p++)
      index[next[pattern.row[p]!]!++] = j
  return { start, index }
}

function postorder(parent: Int32Array): Int32Array {
  const n = parent.length
  const head = new Int32Array(n).fill(-1)
  const next = new Int32Array(n)
  for (let j = n - 1; j >= 0; j--) {
    if (parent[j] === -1) continue
    next[j] = head[parent[j]!]!
    head[parent[j]!] = j
  }
  const order = new Int32Array(n)
  let placed = 0
  for (let root = 0; root < n; root++) {
    if (parent[root] !== -1) continue
    const stack = [root]
    while (stack.length > 0) {
      const top = stack.at(-1)!
      const child = head[top]!
      if (child === -1) {
        order[placed++] = top
        stack.pop()
      } else {
        head[top] = next[child]!
        stack.push(child)
      }
    }
  }
  return order
}

/** Entries of each column of the factor, its diagonal included. */
function columnCounts(pattern: SymmetricPattern, parent: Int32Array): Int32Array {
  const n = pattern.size
  const upper = transposed(pattern)
  const counts = new Int32Array(n).fill(1)
  const seen = new Int32Array(n).fill(-1)
  for (let k = 0; k < n; k++) {
    seen[k] = k
    for (let p = upper.start[k]!; p < upper.start[k + 1]!; p++)
      for (let i = upper.index[p]!; seen[i] !== k; i = parent[i]!) {
        counts[i]!++
        seen[i] = k
      }
  }
  return counts
}

function gatherFronts(pattern: SymmetricPattern, parent: Int32Array, counts: Int32Array): Front[] {
  const n = pattern.size
  const starts: number[] = []
  let zeros = 0
  for (let j = 0; j < n; j++) {
    const first = starts.at(-1)
    if (first !== undefined && parent[j - 1] === j) {
      const width = j - first
      // Each earlier column grows to the rows of column j; the zeros stored are what it lacked.
      const added = width * (counts[j]! + 1 - counts[j - 1]!)
      const share = (zeros + added) / ((width + 1) * (counts[j]! + width))
      const allowed = width < narrowFront ? joinedZerosShareWhenNarrow : joinedZerosShare
      if (added === 0 || share < allowed) {
        zeros += added
        continue
      }
    }
    starts.push(j)
    zeros = 0
  }
  const frontOf = new Int32Array(n)
  starts.forEach((first, s) => {
    frontOf.fill(s, first, starts[s + 1] ?? n)
  })
  const children: number[][] = starts.map(() => [])
  const fronts: Front[] = []
  const seen = new Int32Array(n).fill(-1)
  let offset = 0
  starts.forEach((first, s) => {
    const end = starts[s + 1] ?? n
    const below: number[] = []
    const add = (i: number): void => {
      if (i < end || seen[i] === s) return
      seen[i] = s
      below.push(i)
    }
    for (let p = pattern.columnStart[first]!; p < pattern.columnStart[end]!; p++)
      add(pattern.row[p]!)
    for (const child of children[s]!) for (const i of fronts[child]!.rows) add(i)
    const own = Array.from({ length: end - first }, (_, k) => first + k)
    const rows = Int32Array.from([...own, ...below.sort((a, b) => a - b)])
    fronts.push({ first, width: end - first, rows, children: children[s]!, offset })
    offset += rows.length * (end - first)
    if (below.length > 0) children[frontOf[below[0]!]!]!.push(s)
  })
  return fronts
}

/** Each of its columns is taken off the lower triangle that is left. */
function multiplicationsOf({ rows, width }: Front): number {
  let sum = 0
  for (let left = rows.length; left > rows.length - width; left--) sum += (left * (left + 1)) / 2
  return sum
}

function stackNeeded(fronts: readonly Front[]): number {
  const remainder = (front: Front): number => (front.rows.length - front.width) ** 2
  let waiting = 0
  let most = 0
  for (const front of fronts) {
    for (const child of front.children) waiting -= remainder(fronts[child]!)
    waiting += remainder(front)
    most = Math.max(most, waiting)
  }
  return most
}
