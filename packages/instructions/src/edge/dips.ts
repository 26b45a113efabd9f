// Runs of stitches at the middle of something: the dips of a waved edge, half-way between one increase of
// three or more in a place and the next; and so many centre stitches of a group.

import { type Edge, groupsInOnePlace } from "./edge.ts"
import { groupsFor } from "./groups.ts"
import type { Site } from "./site.ts"

/** The `count` stitches at the middle of the first dip that lies wholly from `from` up to `limit`. */
export function dipSites(edge: Edge, from: number, limit: number, count: number): Site[] | null {
  const peaks = edge.keep("peaks", () =>
    groupsInOnePlace(edge, true)
      .filter((group) => group.cells.length > 2)
      .map((group) => group.cells[Math.floor((group.cells.length - 1) / 2)]!)
      .sort((a, b) => a - b),
  )
  if (peaks.length < 2) return null
  const size = edge.size
  const first = Math.floor(from / size) - 1
  for (let turn = first; turn <= first + 3; turn++)
    for (let i = 0; i < peaks.length; i++) {
      const left = peaks[i]! + turn * size
      const right =
        i + 1 < peaks.length ? peaks[i + 1]! + turn * size : peaks[0]! + (turn + 1) * size
      const between: number[] = []
      for (let at = left + 1; at < right; at++)
        if (edge.cells[((at % size) + size) % size]?.type === "stitch") between.push(at)
      if (between.length < count) continue
      const at = Math.ceil((between.length - count) / 2)
      const chosen = between.slice(at, at + count)
      if (chosen[0]! < from) continue
      if (chosen[count - 1]! >= limit) return null
      return chosen.map((cell) => siteAt(edge, cell))
    }
  return null
}

/** The `count` stitches at the middle of the first group that has them from `from` up to `limit`. */
export function middleRun(edge: Edge, from: number, limit: number, count: number): Site[] | null {
  const size = edge.size
  const runs = groupsFor(edge, undefined, true)
    .filter((group) => group.cells.length >= count)
    .map(({ cells }) => {
      const at = Math.floor((cells.length - count) / 2)
      return cells.slice(at, at + count)
    })
    .sort((a, b) => a[0]! - b[0]!)
  const first = Math.floor(from / Math.max(1, size)) - 1
  for (let turn = first; turn <= first + 3; turn++)
    for (const run of runs) {
      const cells = run.map((cell) => cell + turn * size)
      if (cells[0]! < from) continue
      if (cells[count - 1]! >= limit) return null
      return cells.map((cell) => siteAt(edge, cell))
    }
  return null
}

function siteAt(edge: Edge, cell: number): Site {
  const index = ((cell % edge.size) + edge.size) % edge.size
  return { from: cell, to: cell + 1, anchor: edge.anchorAt(index, false) }
}
