// Corners of a round as the net sees them: where the tip of the corner lies along its edge and along the edge
// below, and by how much the edge turns there.

import type { RoundCorners } from "@roundwright/motif"
import type { Ground } from "./places.ts"

export interface Mitre {
  /** Elements of the round that make the corner. */
  readonly elements: ReadonlySet<number>
  /** Middle of the corner group along the round's own edge, mm. */
  readonly tip: number
  /** The corner below along that edge, mm; null where the edge below has none to stand on. */
  readonly baseTip: number | null
  /** Angle by which the edge turns, 2 pi / corners. */
  readonly turn: number
}

/** One per corner of the round; none for rounds without corner groups. Legs of round 1 need none. */
export function cornerMitres(
  ground: Ground,
  round: number,
  corners: readonly RoundCorners[],
): Mitre[] {
  const here = corners[round]
  if (round === 0 || here === undefined || here.count < 3 || here.groups.length === 0) return []
  const plan = ground.edges[round]!
  const elements = ground.motif.rounds[round]!.elements.length
  return here.groups
    .map(({ first, last }) => {
      const members = new Set<number>()
      for (let k = first; ; k = (k + 1) % elements) {
        members.add(k)
        if (k === last) break
      }
      return {
        elements: members,
        tip: middleAlong(ground, round, members),
        baseTip: baseTip(ground, round, members),
        turn: (2 * Math.PI) / here.count,
      }
    })
    .filter((mitre) => Number.isFinite(mitre.tip) && plan.closed)
}

/** Where the corners of round 1 lie along its edge: where round 2 works its own. Empty for a round start. */
export function firstTips(ground: Ground, corners: readonly RoundCorners[]): number[] {
  if (!ground.edges[0]!.closed || (corners[0]?.count ?? 0) < 3) return []
  const own = corners[0]!.groups.map(({ first, last }) =>
    middleAlong(ground, 0, new Set(first <= last ? [first, last] : [last, first])),
  )
  if (own.length === corners[0]!.count) return own
  const above = ground.edges.length > 1 ? cornerMitres(ground, 1, corners) : []
  const tips = above.map((mitre) => mitre.baseTip).filter((tip) => tip !== null)
  return tips.length === corners[0]!.count ? tips : []
}

/** Middle of what the elements take up of their edge, which may run over its start. */
function middleAlong(ground: Ground, round: number, members: ReadonlySet<number>): number {
  const plan = ground.edges[round]!
  const own = plan.nodes.filter((node) => members.has(node.element))
  const anchor = own[0]?.along ?? Number.NaN
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY]
  for (const node of own) {
    const d =
      node.along - anchor - plan.lengthMm * Math.round((node.along - anchor) / plan.lengthMm)
    low = Math.min(low, d - node.widthMm / 2)
    high = Math.max(high, d + node.widthMm / 2)
  }
  return anchor + (low + high) / 2
}

/** Middle of the places of the edge below that the corner is worked into. */
function baseTip(ground: Ground, round: number, members: ReadonlySet<number>): number | null {
  const below = new Set<number>()
  for (const member of members) {
    const element = ground.motif.rounds[round]!.elements[member]!
    if (element.type !== "stitch") continue
    for (const anchor of element.anchors)
      if (anchor.at !== "centre" && anchor.round === round - 1) below.add(anchor.element)
  }
  const tip = below.size === 0 ? Number.NaN : middleAlong(ground, round - 1, below)
  return Number.isFinite(tip) ? tip : null
}
