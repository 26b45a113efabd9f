// A large circle stood in for by its last rounds on a stiff ring: squaring moves its inside next to nothing, and the search
// lays pieces out by the dozen. What is found is put back on the whole piece.

import {
  type Anchor,
  type Element,
  type Motif,
  type Round,
  stitchesAndChains,
} from "@roundwright/motif"
import { buildNet, layOutFlat } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

export interface StandIn {
  readonly motif: Motif
  /** Its added rounds on the whole piece. */
  readonly restore: (worked: Motif) => Motif
}

/** Rounds kept on the ring: the edge gives way, what lies below it hardly. */
const roundsKept = 2
/** Of a long round one alone, whose stitches then stand evenly: its repeats are laid out once. */
const longRound = 100
/** Stitches and chains left out below which the whole is as quick. */
const worthIt = 150

/** Null for a piece that is small enough to be laid out whole. */
export function standInFor(motif: Motif, gauge: Gauge): StandIn | null {
  const last = motif.rounds.at(-1)?.elements.length ?? 0
  const cut = motif.rounds.length - (last > longRound ? 1 : roundsKept)
  if (cut < 1) return null
  const left = motif.rounds.slice(0, cut)
  if (stitchesAndChains({ ...motif, rounds: left }) < worthIt) return null
  // Loops give way to what is worked into them: no ring stands in for them.
  if (
    motif.rounds
      .slice(cut - 1)
      .some(({ elements }) => elements.some(({ type }) => type === "chain"))
  )
    return null
  if (motif.rounds.slice(cut).some((round, i) => reachesBelow(round, cut, i))) return null
  const diameterMm = 2 * reachAfter({ ...motif, rounds: left }, gauge)
  const rounds = motif.rounds.slice(cut).map((round) => moved(round, -cut))
  return {
    motif: { ...motif, centre: { kind: "solid-ring", diameterMm }, rounds },
    restore: (worked) => ({
      ...motif,
      rounds: [
        ...motif.rounds,
        ...worked.rounds.slice(rounds.length).map((round) => moved(round, cut)),
      ],
    }),
  }
}

/** Whether a kept round is worked into one left out other than the last of these. */
function reachesBelow(round: Round, cut: number, place: number): boolean {
  const lowest = place === 0 ? cut - 1 : cut
  return round.elements.some(
    (element) =>
      element.type === "stitch" &&
      element.anchors.some((anchor) => anchor.at === "centre" || anchor.round < lowest),
  )
}

function moved(round: Round, by: number): Round {
  return { ...round, elements: round.elements.map((element) => movedElement(element, by)) }
}

function movedElement(element: Element, by: number): Element {
  if (element.type !== "stitch") return element
  return { ...element, anchors: element.anchors.map((anchor) => movedAnchor(anchor, by)) }
}

function movedAnchor(anchor: Anchor, by: number): Anchor {
  if (anchor.at === "centre") return anchor
  const round = anchor.round + by
  return round < 0 ? { at: "centre" } : { ...anchor, round }
}

/** Mean distance of the last round's tops from the centre, mm. */
function reachAfter(motif: Motif, gauge: Gauge): number {
  const net = buildNet(motif, gauge)
  const { xy } = layOutFlat(net)
  const mean = (nodes: readonly number[], k: 0 | 1) =>
    nodes.reduce((sum, node) => sum + xy[2 * node + k]!, 0) / nodes.length
  const [cx, cy] = [mean(net.centre, 0), mean(net.centre, 1)]
  const nodes = net.edges.at(-1)!.nodes
  const sum = nodes.reduce(
    (total, node) => total + Math.hypot(xy[2 * node]! - cx, xy[2 * node + 1]! - cy),
    0,
  )
  return sum / nodes.length
}
