// A last round of one stitch over a polygon of lace, groups or mesh: a stitch in each stitch, in each space as many as its
// chains leave room for, and a point of stitches and chains in every corner. Counts are tried and laid out; the straightest
// is taken.

import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import { type Gauge, kindName, type StitchKind, type Terms } from "@roundwright/stitches"
import { type Proposal, propose } from "./proposal.ts"
import { distanceFromTarget } from "./target.ts"

/** Stitches in a space less its chains: fewer draw the side in, more let it out. */
const offsets = [0, -1, 1] as const
/** Stitches before and after a corner's chains, and these. Common practice, no source. */
const points = [
  { each: 1, chains: 2 },
  { each: 2, chains: 2 },
  { each: 1, chains: 1 },
  { each: 2, chains: 1 },
] as const
/** More in one space do not lie side by side. */
const mostInSpace = 7

/** The proposal with the round added; null where its corners are no spaces. */
export function straightened(
  proposal: Proposal,
  kind: StitchKind,
  gauge: Gauge,
  restore: (worked: Motif) => Motif,
  terms: Terms,
): Proposal | null {
  const corners = proposal.cornerElements.map((group) => middleSpace(proposal.motif, group))
  if (corners.includes(null)) return null
  const found = points.flatMap((point) =>
    offsets.map((offset) => {
      const made = overPolygon(proposal.motif, corners as number[], kind, offset, point)
      const draft = {
        motif: { ...proposal.motif, rounds: [...proposal.motif.rounds, made.round] },
        from: proposal.from,
        corners: made.corners,
        idea: proposal.idea,
        fabric: proposal.fabric,
        palette: proposal.palette,
        changes: proposal.changes,
        restore,
      }
      return propose(draft, gauge, { used: 0, reversals: 0, skips: 0, runs: 0, kinds: 1 })
    }),
  )
  found.sort((a, b) => distanceFromTarget(a) - distanceFromTarget(b) || a.score - b.score)
  const [best] = found
  if (!best) return null
  const { number } = best.motif.rounds.at(-1)!
  const words = `Round ${number} is the straightening round, in ${kindName(kind, terms)}.`
  return { ...best, notes: [...best.notes, words] }
}

function middleSpace({ rounds }: Motif, group: readonly number[]): number | null {
  const { elements } = rounds.at(-1)!
  const spaces = group.filter((e) => elements[e]!.type === "chain")
  return spaces[spaces.length >> 1] ?? null
}

function overPolygon(
  motif: Motif,
  corners: readonly number[],
  kind: StitchKind,
  offset: number,
  { each, chains }: { readonly each: number; readonly chains: number },
): { round: Round; corners: number[][] } {
  const index = motif.rounds.length - 1
  const { elements, number } = motif.rounds[index]!
  const made: Element[] = []
  const groups: number[][] = corners.map(() => [])
  const work = (count: number, anchor: Anchor) => {
    for (let i = 0; i < count; i++) made.push({ type: "stitch", kind, anchors: [anchor] })
  }
  elements.forEach((element, e) => {
    if (element.type === "picot") return
    const anchor: Anchor = {
      at: element.type === "chain" ? "space" : "stitch",
      round: index,
      element: e,
    }
    const corner = corners.indexOf(e)
    if (corner >= 0) {
      const start = made.length
      work(each, anchor)
      made.push({ type: "chain", chains })
      work(each, anchor)
      groups[corner] = Array.from({ length: made.length - start }, (_, i) => start + i)
    } else if (element.type === "chain") {
      work(Math.min(mostInSpace, Math.max(1, element.chains + offset)), anchor)
    } else work(1, anchor)
  })
  return {
    round: { number: number + 1, elements: made, turned: false, closing: "joined" },
    corners: groups,
  }
}
