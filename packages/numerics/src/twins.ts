// Twins: unknowns that have the same neighbours and each other. They are eliminated together, so a graph of groups
// of twins has the same orders as the whole and is smaller (by three for points in space).
// Source: C. Ashcraft, "Compressed graphs and the minimum degree algorithm", SIAM J. Sci. Comput. 16 (1995).

import type { SymmetricPattern } from "./sparse.ts"

/** Group k holds the unknowns members[k] and touches the groups edges[k]. */
export interface TwinGraph {
  readonly members: number[][]
  readonly edges: number[][]
}

export function gatherTwins(pattern: SymmetricPattern): TwinGraph {
  const all = neighbours(pattern)
  const groupOf = new Int32Array(pattern.size)
  const members: number[][] = []
  const known = new Map<string, number>()
  for (let i = 0; i < pattern.size; i++) {
    const key = [...all[i]!, i].sort((a, b) => a - b).join()
    const found = known.get(key)
    if (found === undefined) {
      known.set(key, members.length)
      groupOf[i] = members.length
      members.push([i])
    } else {
      groupOf[i] = found
      members[found]!.push(i)
    }
  }
  const edges = members.map(([leader], group) => {
    const found = new Set<number>()
    for (const j of all[leader!]!) if (groupOf[j] !== group) found.add(groupOf[j]!)
    return [...found]
  })
  return { members, edges }
}

function neighbours(pattern: SymmetricPattern): number[][] {
  const lists: number[][] = Array.from({ length: pattern.size }, () => [])
  for (let j = 0; j < pattern.size; j++)
    for (let p = pattern.columnStart[j]! + 1; p < pattern.columnStart[j + 1]!; p++) {
      lists[j]!.push(pattern.row[p]!)
      lists[pattern.row[p]!]!.push(j)
    }
  return lists
}
