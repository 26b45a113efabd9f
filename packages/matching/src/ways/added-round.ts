// One more round over the last, that lies flat: increases at the corners as the outline asks for them (2 k tan(pi / k) stitch
// heights a round for k corners, 2 pi for a round one), or groups in the spaces where the last round is worked so.

import { type Anchor, type Element, findCorners, type Motif, type Round } from "@roundwright/motif"
import {
  type BasicStitch,
  chainLengthInStitches,
  type Gauge,
  sizeOf,
  turningChainCounts,
  turningChains,
} from "@roundwright/stitches"
import { cornerPlaces } from "./corner-places.ts"

/** The piece with a round of that stitch more; null where its last round offers no places. */
export function withRound(motif: Motif, basic: BasicStitch, gauge: Gauge): Motif | null {
  const index = motif.rounds.length - 1
  const below = motif.rounds[index]
  if (!below || below.closing === "open") return null
  const corners = findCorners(motif)[index]!.count
  const at = corners >= 3 ? cornerPlaces(motif, index) : []
  const { heightMm, widthMm } = sizeOf({ basic }, gauge, { turned: false })
  const ratio = heightMm / widthMm
  const elements =
    at.length === corners && corners >= 3
      ? inGroups(below, at)
        ? groupsOver(below, index, at, basic)
        : corneredOver(below, index, at, basic, 2 * Math.tan(Math.PI / corners) * ratio)
      : evenlyOver(below, index, basic, 2 * Math.PI * ratio)
  if (elements.length === 0) return null
  return { ...motif, rounds: [...motif.rounds, roundOf(below, elements, basic)] }
}

function roundOf(below: Round, elements: readonly Element[], basic: BasicStitch): Round {
  const chains = turningChains(basic)
  const counts = turningChainCounts(basic)
  const [first, ...others] = elements
  const start = counts && first?.type === "stitch" ? { ...first, madeOfChains: chains } : first!
  return {
    number: below.number + 1,
    elements: [start, ...others],
    turned: false,
    closing: below.closing,
    startChain: { chains, counts: counts && first?.type === "stitch" },
  }
}

function stitchAt(basic: BasicStitch, anchor: Anchor): Element {
  return { type: "stitch", kind: { basic }, anchors: [anchor] }
}

/** Chains at a corner that may be tried in place of those below, dearer the further they are from the piece's own. */
const cornerChains = [1, 2, 3] as const
const otherChainsCost = 0.3

/** What goes into a corner so that it grows by `growth` stitch widths: stitches either side, chains between. */
function cornerWork(chainsBelow: number, growth: number): { each: number; chains: number } {
  let best = { each: 1, chains: Math.max(1, chainsBelow), cost: Number.POSITIVE_INFINITY }
  for (const chains of new Set([Math.max(1, chainsBelow), ...cornerChains]))
    for (let each = 1; each <= 6; each += 1) {
      const grows = 2 * each + chainLengthInStitches * (chains - chainsBelow)
      const cost = Math.abs(grows - growth) + (chains === chainsBelow ? 0 : otherChainsCost)
      if (cost < best.cost) best = { each, chains, cost }
    }
  return best
}

function corneredOver(
  below: Round,
  index: number,
  at: readonly number[],
  basic: BasicStitch,
  growth: number,
): Element[] {
  return below.elements.flatMap((element, e): Element[] => {
    if (element.type === "picot") return []
    if (element.type === "chain") {
      const anchor: Anchor = { at: "space", round: index, element: e }
      if (!at.includes(e))
        return Array.from({ length: element.chains }, () => stitchAt(basic, anchor))
      const { each, chains } = cornerWork(element.chains, growth)
      const half = Array.from({ length: each }, () => stitchAt(basic, anchor))
      return [...half, { type: "chain", chains }, ...half]
    }
    const anchor: Anchor = { at: "stitch", round: index, element: e }
    // A corner of stitches alone: an odd number in its middle one.
    const many = at.includes(e) ? 1 + 2 * Math.max(1, Math.round(growth / 2)) : 1
    return Array.from({ length: many }, () => stitchAt(basic, anchor))
  })
}

function evenlyOver(below: Round, index: number, basic: BasicStitch, growth: number): Element[] {
  const places = below.elements.flatMap((element, e): Anchor[] => {
    if (element.type === "stitch") return [{ at: "stitch", round: index, element: e }]
    if (element.type === "picot") return []
    return Array.from({ length: element.chains }, () => ({ at: "space", round: index, element: e }))
  })
  if (places.length === 0) return []
  const many = places.length + Math.max(1, Math.round(growth))
  return Array.from({ length: many }, (_, j) =>
    stitchAt(basic, places[Math.floor((j * places.length) / many)]!),
  )
}

/** Whether the round is worked in groups: several stitches in one place, in every place, none into a single stitch. */
function inGroups(round: Round, at: readonly number[]): boolean {
  const stitches = round.elements.filter((element) => element.type === "stitch")
  const intoSpaces = stitches.every(({ anchors }) =>
    anchors.every(
      (anchor) => anchor.at === "space" || anchor.at === "between" || anchor.at === "centre",
    ),
  )
  return (
    intoSpaces &&
    stitches.length > at.length &&
    at.every((e) => round.elements[e]!.type === "chain")
  )
}

/** As the last round was worked: a group in every space and gap of a side, two at a corner with its chains between. */
function groupsOver(
  below: Round,
  index: number,
  at: readonly number[],
  basic: BasicStitch,
): Element[] {
  const { group, between } = groupsOf(below, at)
  const n = below.elements.length
  const made: Element[] = []
  const put = (anchor: Anchor, before: boolean) => {
    if (before && between > 0) made.push({ type: "chain", chains: between })
    for (let k = 0; k < group; k += 1) made.push(stitchAt(basic, anchor))
  }
  below.elements.forEach((element, e) => {
    const next = below.elements[(e + 1) % n]!
    if (element.type === "chain") {
      const anchor: Anchor = { at: "space", round: index, element: e }
      if (at.includes(e)) {
        put(anchor, made.length > 0)
        made.push({ type: "chain", chains: element.chains })
        put(anchor, false)
      } else put(anchor, made.length > 0)
    } else if (element.type === "stitch" && next.type === "stitch" && !sharesPlace(element, next))
      put({ at: "between", round: index, element: e }, made.length > 0)
  })
  if (between > 0 && made.length > 0) made.push({ type: "chain", chains: between })
  return made
}

type Stitch = Extract<Element, { type: "stitch" }>

function sharesPlace(a: Stitch, b: Stitch): boolean {
  return JSON.stringify(a.anchors) === JSON.stringify(b.anchors)
}

/** How many stitches stand in a group, and the chains between two groups of a side (0: none). */
function groupsOf(round: Round, at: readonly number[]): { group: number; between: number } {
  const runs: number[] = []
  let run = 0
  round.elements.forEach((element, e) => {
    const before = round.elements[e - 1]
    if (element.type !== "stitch") {
      if (run > 0) runs.push(run)
      run = 0
    } else if (before?.type === "stitch" && !sharesPlace(before, element)) {
      runs.push(run)
      run = 1
    } else run += 1
  })
  if (run > 0) runs.push(run)
  const sorted = runs.sort((x, y) => x - y)
  const chains = round.elements.flatMap((element, e) =>
    element.type === "chain" && !at.includes(e) ? [element.chains] : [],
  )
  return { group: sorted[Math.floor(sorted.length / 2)] ?? 3, between: Math.min(...chains, 9) % 9 }
}
