// Where an "each" or a repeat stops on the edge below.

import type { Noun, Span, Until } from "../base/tree.ts"
import type { Edge } from "../edge/edge.ts"
import { findSite } from "../edge/sites.ts"
import type { Position } from "./round-parts.ts"
import type { RoundWork } from "./round-work.ts"

/** The first space that has another number of chains than the first one from here; the limit where all are alike. */
export function endOfSide(edge: Edge, at: number, limit: number): number {
  let size: number | null = null
  for (let k = at; k < limit; k++) {
    const index = ((k % edge.size) + edge.size) % edge.size
    const element = edge.elements[edge.cells[index]!.element]
    if (element?.type !== "chain" || !edge.startsRun(index)) continue
    if (size === null) size = element.chains
    else if (element.chains !== size) return k
  }
  return limit
}

/** Where an "each" stops: a position no place of it may reach. */
export function boundaryOf(work: RoundWork, position: Position, until: Until, span: Span): number {
  const limit = work.limitOf(position)
  if (until.kind === "around" && until.implied && work.repeatDepth > 0) {
    // "*sc in each sc, 2 sc in next sp" goes as far as the next space each time.
    return boundaryOf(work, position, { kind: "to", noun: { what: "space" } }, span)
  }
  if (until.kind === "around") return position === work.main ? work.endAround : limit
  const { edge } = position
  if (until.kind === "to") {
    const target = until.ofRound === undefined ? position : position
    const meaning = work.meaning(target, until.noun, span)
    const site = meaning.exists
      ? findSite(edge, meaning.noun, position.at, limit, position.base, null)
      : null
    return site ? site.from : limit
  }
  if (until.noun) return lastOf(work, position, until.noun, until.count, span)
  const stop = until.ofGroup
    ? boundaryOf(work, position, { kind: "to", noun: { what: "space" } }, span)
    : limit
  const stitches: number[] = []
  for (let at = position.at; at < stop; at++)
    if (edge.round < 0 || edge.cells[((at % edge.size) + edge.size) % edge.size]?.type === "stitch")
      stitches.push(at)
  const cut = stitches[stitches.length - until.count]
  if (until.ofGroup)
    for (const at of stitches.slice(-until.count))
      work.use(
        position,
        {
          from: at,
          to: at + 1,
          anchor: edge.anchorAt(((at % edge.size) + edge.size) % edge.size, false),
        },
        "skipped",
      )
  return cut ?? position.at
}

/** Where the last `count` places of a kind that are left begin. */
function lastOf(
  work: RoundWork,
  position: Position,
  noun: Noun,
  count: number,
  span: Span,
): number {
  const meaning = work.meaning(position, noun, span)
  const limit = position === work.main ? work.endAround : work.limitOf(position)
  const starts: number[] = []
  for (let at = position.at; meaning.exists && at < limit; ) {
    const site = findSite(position.edge, meaning.noun, at, limit, position.base, null)
    if (!site) break
    starts.push(site.from)
    at = Math.max(at + 1, site.to)
  }
  return starts[starts.length - count] ?? position.at
}
