// Second derivatives by blocks: one 3 x 3 block for every pair of unknown nodes that share a term, where its entries go
// in the sparse matrix, and which blocks each pair of points of each term adds to.

import { patternFromPairs, type SymmetricPattern } from "@roundwright/numerics"
import type { PointTable } from "./point-table.ts"
import type { TermGroup } from "./term-group.ts"

export interface BlockPattern {
  readonly pattern: SymmetricPattern
  /** For each block and each of its d x d entries the place among the matrix's values; -1 above the diagonal. */
  readonly slots: Int32Array
  /** Room for the entries, 9 a block. */
  readonly entries: Float64Array
  /** Where the targets of each pair of points start; pairs run through groups, terms and points i >= j. */
  readonly targetStart: Int32Array
  /** For each target its block. */
  readonly target: Int32Array
  /** 1 where the pair's block is added as it is, 2 transposed; else weight, turns and lie below apply. */
  readonly simple: Uint8Array
  readonly weight: Float64Array
  /** Cosine and sine of the turns of both nodes. */
  readonly cosines: Float64Array
  readonly sines: Float64Array
  /** 0: as the pair lies; 1: transposed; 2: both, on the diagonal. */
  readonly lies: Uint8Array
}

/** @param d coordinates of a node */
export function layBlocks(groups: readonly TermGroup[], table: PointTable, d: 2 | 3): BlockPattern {
  const [high, low, simple, weight, cosines, sines, lies]: number[][] = [[], [], [], [], [], [], []]
  const targetStart = [0]
  const enter = (p: number, q: number, same: boolean): void => {
    if (p < table.nodes && q < table.nodes && p >= q) {
      put(p, q, 1, 1, 0, 1, 0, same || p !== q ? 0 : 2)
      return
    }
    let first = 0
    table.eachMember(p, (a, wa, ca, sa) => {
      let second = 0
      table.eachMember(q, (b, wb, cb, sb) => {
        // Of a point with itself every pair of members is entered once.
        if (same && second++ > first) return
        const twice = a === b && !(same && second - 1 === first)
        if (a >= b) put(a, b, wa * wb, ca, sa, cb, sb, twice ? 2 : 0)
        else put(b, a, wa * wb, ca, sa, cb, sb, 1)
      })
      first++
    })
  }
  const put = (
    a: number,
    b: number,
    w: number,
    ca: number,
    sa: number,
    cb: number,
    sb: number,
    lie: number,
  ): void => {
    high!.push(a)
    low!.push(b)
    weight!.push(w)
    cosines!.push(ca, cb)
    sines!.push(sa, sb)
    lies!.push(lie)
    simple!.push(w === 1 && ca === 1 && cb === 1 && lie < 2 ? lie + 1 : 0)
  }
  for (const { arity, count, points } of groups)
    for (let t = 0; t < count; t++)
      for (let i = 0; i < arity; i++)
        for (let j = 0; j <= i; j++) {
          enter(points[arity * t + i]!, points[arity * t + j]!, i === j)
          targetStart.push(high!.length)
        }
  // The pattern of the nodes numbers the blocks: one for each of its entries.
  const { pattern: byNode, slots: target } = patternFromPairs(table.nodes, high!, low!)
  return {
    ...placesOfBlocks(byNode, d),
    targetStart: Int32Array.from(targetStart),
    target,
    simple: Uint8Array.from(simple!),
    weight: Float64Array.from(weight!),
    cosines: Float64Array.from(cosines!),
    sines: Float64Array.from(sines!),
    lies: Uint8Array.from(lies!),
  }
}

function placesOfBlocks(
  byNode: SymmetricPattern,
  d: 2 | 3,
): Pick<BlockPattern, "pattern" | "slots" | "entries"> {
  const blocks = byNode.row.length
  const entryCount = blocks * d * d
  const [rows, columns] = [new Int32Array(entryCount), new Int32Array(entryCount)]
  const used = new Uint8Array(entryCount)
  for (let c = 0; c < byNode.size; c++)
    for (let block = byNode.columnStart[c]!; block < byNode.columnStart[c + 1]!; block++) {
      const r = byNode.row[block]!
      for (let i = 0; i < d; i++)
        for (let j = 0; j < d; j++) {
          const entry = block * d * d + d * i + j
          // Above the diagonal of a diagonal block the entry is its mirror image, which is there already.
          used[entry] = r === c && j > i ? 0 : 1
          rows[entry] = d * r + i
          columns[entry] = d * c + j
        }
    }
  const { pattern, slots } = patternFromPairs(d * byNode.size, rows, columns)
  for (let entry = 0; entry < entryCount; entry++) if (used[entry] === 0) slots[entry] = -1
  return { pattern, slots, entries: new Float64Array(9 * blocks) }
}
