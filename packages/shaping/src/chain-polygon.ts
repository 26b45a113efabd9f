// Polygons with chain corners, as makers work them: some stitches and a chain space at every corner, then one stitch in each
// stitch and a group on either side of a chain in each corner space.

import { severityOf } from "@roundwright/flatness"
import { type Anchor, countRound, type Element, type Motif, type Round } from "@roundwright/motif"
import { chainSize, type Gauge, type StitchKind, sizeOf } from "@roundwright/stitches"
import { layOutAsChecked } from "./lay-out-as-checked.ts"
import type { PlanBuilder } from "./plan-polygon.ts"

export interface ChainCorner {
  /** Chains of the corner space. */
  readonly chains: number
  /** Stitches of the first round between two corners. */
  readonly first: number
  /** Stitches on either side of the chain in every later round; null to follow the flat count. */
  readonly each: number | null
}

/** The usual corner first. */
const cornerChains = [2, 1, 3] as const
const mostEach = 4

/**
 * The polygon with the usual corner that lies flat, else the flattest; null where even one stitch on either side of the
 * chain is more than the corners can take.
 * @param flatCounts stitches of a round that lies flat with sharp corners
 */
export function chainPolygon(
  gauge: Gauge,
  corners: number,
  flatCounts: readonly number[],
  kind: StitchKind,
  build: PlanBuilder,
): Motif | null {
  const growth =
    flatCounts.length > 1
      ? (flatCounts.at(-1)! - flatCounts[0]!) / (flatCounts.length - 1)
      : 2 * corners
  if (growth < leastGrowth * 2 * corners) return null
  const { widthMm } = sizeOf(kind, gauge, { turned: false })
  const chain = chainSize(gauge).lengthMm / widthMm
  let best: { motif: Motif; severity: number; off: number } | null = null
  const steady = Math.max(1, Math.min(mostEach, Math.round(growth / (2 * corners))))
  for (const each of [steady, null])
    for (const chains of cornerChains) {
      const own = flatCounts[0]! / corners - chains * chain
      for (const first of new Set([Math.max(1, Math.ceil(own)), Math.max(1, Math.floor(own))])) {
        const corner = { chains, first, each }
        const motif = build((below, stitch, flat) =>
          chainPolygonRound(below, stitch, corners, flat, corner),
        )
        const laid = layOutAsChecked(motif, gauge)
        const severity = laid === null ? 0 : severityOf(laid.verdict)
        if (severity === 0) return motif
        const off = Math.abs(laid?.blockingStretch ?? 0)
        if (
          best === null ||
          severity < best.severity ||
          (severity === best.severity && off < best.off)
        )
          best = { motif, severity, off }
      }
    }
  return best?.motif ?? null
}

/** Growth per round, as a share of one stitch on either side of every corner, below which the corners ruffle. */
const leastGrowth = 0.93

export function chainPolygonRound(
  motif: Motif,
  kind: StitchKind,
  corners: number,
  flat: number,
  { chains, first, each: steady }: ChainCorner,
): Round {
  const number = motif.rounds.length + 1
  const stitch = (anchor: Anchor): Element => ({ type: "stitch", kind, anchors: [anchor] })
  const below = motif.rounds.at(-1)
  if (!below) {
    const elements = Array.from({ length: corners }, () => [
      ...Array.from({ length: first }, () => stitch({ at: "centre" })),
      { type: "chain", chains } as const,
    ]).flat()
    return { number, elements, turned: false, closing: "joined" }
  }
  const round = motif.rounds.length - 1
  // What the corner chains take of the flat edge stays as it is: stitches alone grow.
  const { stitches } = countRound(below)
  const chainPart = flatChainPart(motif, flat)
  const follow = Math.round((flat - chainPart - stitches) / (2 * corners))
  const each = steady ?? Math.min(mostEach, Math.max(1, follow))
  const elements = below.elements.flatMap((element, e): Element[] => {
    if (element.type !== "chain") return [stitch({ at: "stitch", round, element: e })]
    const group = Array.from({ length: each }, () => stitch({ at: "space", round, element: e }))
    return [...group, { type: "chain", chains }, ...group]
  })
  return { number, elements, turned: false, closing: "joined" }
}

/** What the first round leaves of its flat count to its corner chains. */
function flatChainPart(motif: Motif, flat: number): number {
  const first = countRound(motif.rounds[0]!).stitches
  return Math.max(0, flat / (motif.rounds.length + 1) - first)
}
