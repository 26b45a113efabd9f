// Second derivatives by blocks: one 3 x 3 block for every pair of nodes that share a term, and where its entries go
// in the sparse matrix.

import { patternFromPairs, type SymmetricPattern } from "@roundwright/numerics"

export interface BlockPattern {
  readonly pattern: SymmetricPattern
  /** For each block and each of its d x d entries the place among the matrix's values; -1 above the diagonal. */
  readonly slots: Int32Array
  /** Where the pairs (a >= b) of each term start in blockOf, and the block of each pair. */
  readonly blockStart: Int32Array
  readonly blockOf: Int32Array
  /** Room for the entries, 9 a block. */
  readonly entries: Float64Array
}

/**
 * @param nodeStart where each term's nodes start in `nodes`, ascending within a term
 * @param count number of nodes
 * @param d coordinates of a node
 */
export function layBlocks(
  nodeStart: Int32Array,
  nodes: Int32Array,
  count: number,
  d: 2 | 3,
): BlockPattern {
  const terms = nodeStart.length - 1
  const blockStart = new Int32Array(terms + 1)
  for (let t = 0; t < terms; t++) {
    const n = nodeStart[t + 1]! - nodeStart[t]!
    blockStart[t + 1] = blockStart[t]! + (n * (n + 1)) / 2
  }
  const pairs = blockStart[terms]!
  const [high, low] = [new Int32Array(pairs), new Int32Array(pairs)]
  let pair = 0
  for (let t = 0; t < terms; t++)
    for (let a = nodeStart[t]!; a < nodeStart[t + 1]!; a++)
      for (let b = nodeStart[t]!; b <= a; b++) {
        high[pair] = nodes[a]!
        low[pair++] = nodes[b]!
      }
  // The pattern of the nodes numbers the blocks: one for each of its entries.
  const { pattern: byNode, slots: blockOf } = patternFromPairs(count, high, low)
  const blocks = byNode.row.length
  const entryCount = blocks * d * d
  const [rows, columns] = [new Int32Array(entryCount), new Int32Array(entryCount)]
  const used = new Uint8Array(entryCount)
  for (let c = 0; c < count; c++)
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
  const { pattern, slots } = patternFromPairs(d * count, rows, columns)
  for (let entry = 0; entry < entryCount; entry++) if (used[entry] === 0) slots[entry] = -1
  return { pattern, slots, blockStart, blockOf, entries: new Float64Array(9 * blocks) }
}
