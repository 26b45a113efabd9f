// Scallops: a fan of stitches in one place between much lower ones, or a loop of chains filled with stitches. Both open out
// over their foot, so that their edge is an arc and takes a shorter way along the round than it is long.
//
// A fan opens to a half circle, whose chord is 2 / pi of its edge; beyond that its stitches crowd its neighbours. A filled loop
// swings out on its chains: bent by the angle phi, the chains that its tops leave over (edge - phi h, at most all of them)
// span 2 sin(phi / 2) / phi of their length between its feet, and its ends, e high, lean 2 e sin(phi / 2) over them: an
// annulus sector, elementary geometry.

import { chainThickness } from "@roundwright/stitches"
import { oneInEach, workedPlaces } from "./counts.ts"
import type { Motif } from "./model.ts"

/** Of each round the elements whose tops a later round is worked into: 1 where one is. */
export type WorkedTops = readonly Uint8Array[]

/** Fewer stitches in one place are an increase or a corner, not a fan (common practice, no source). */
const fewestInFan = 3
/** A loop of chains and what fills it: from these on it can bend (a run of one or two chains is a gap between tops). */
const shortestLoop = 3
const fewestInLoop = 3
/** Neighbours up to this share of its height hold a fan down at its foot. */
const lowNeighbour = 0.55
/** A loop at least so many times as long as its ends are high bends without them. */
const longLoop = 2
/** A fan or loop opens to a half circle before its stitches crowd its neighbours. */
const widest = Math.PI
const chordOfArc = 2 / Math.PI
/**
 * Stitches round a loop slide along it and crowd to this share of their width without rippling: eight go easily into a ring
 * of four chains (The Crochet Answer Book, chapter 6), which opened out holds five or six.
 */
const crowdedShare = 0.75
/** A later round worked into more than this share of the tops smooths the scallop out. */
const heldShare = 0.5

/**
 * How much shorter than its edge a round's scallops can stand, mm; 0 without any.
 * @param worked the tops of the whole motif that later rounds are worked into
 * @param widths top width of every element, mm
 * @param heights height of every element, mm; 0 for chains and picots
 */
export function scallopSlack(
  motif: Motif,
  index: number,
  worked: WorkedTops,
  widths: readonly number[],
  heights: readonly number[],
  chainMm: number,
): { slackMm: number; fans: number } {
  const round = motif.rounds[index]!
  const n = round.elements.length
  const held = worked[index]!
  let slackMm = 0
  let fans = 0
  for (const { chains, elements } of groupsOf(motif, index)) {
    const loop = chains >= shortestLoop
    if (elements.length < (loop ? fewestInLoop : fewestInFan)) continue
    const [first, last] = spanOf(elements, n)
    if (!onlyBetween(round.elements, first, last, elements)) continue
    const heldTops = elements.filter((element) => held[element] === 1).length
    if (heldTops > heldShare * elements.length) continue
    const solid = elements.reduce((sum, element) => sum + widths[element]!, 0)
    const tallest = Math.max(...elements.map((element) => heights[element]!))
    const mean = elements.reduce((sum, k) => sum + widths[k]! * heights[k]!, 0) / solid
    const edge = solid + gapsMm(round.elements, first, last, chainMm)
    const end = Math.max(
      Math.min(heights[first]!, besideOf(round.elements, heights, chainMm, first, -1)),
      Math.min(heights[last]!, besideOf(round.elements, heights, chainMm, last, 1)),
    )
    const foot = chains * chainMm
    const bends = loop
      ? foot >= longLoop * end || end <= lowNeighbour * tallest
      : end <= lowNeighbour * tallest
    if (!bends) continue
    const shortest = loop ? loopSpan(edge, mean, end, foot) : fanSpan(edge, mean)
    slackMm += edge - shortest
    if (!loop) fans += 1
  }
  return { slackMm, fans }
}

/** The least a fan takes of the round: the chord of its arc up to a half circle; what is longer than that stays as long. */
function fanSpan(edge: number, height: number): number {
  const most = widest * height
  return chordOfArc * Math.min(edge, most) + Math.max(0, edge - most)
}

/** The least a loop filled with tops of that length takes of the round. */
function loopSpan(edge: number, height: number, end: number, foot: number): number {
  const angle = Math.min(widest, edge / height)
  const half = angle / 2
  const inner = Math.min(foot, Math.max(0, edge - angle * height))
  const spans = (inner * Math.sin(half)) / half + 2 * end * Math.sin(half)
  const crowded = Math.max(1, (crowdedShare * edge) / (foot + angle * height))
  return Math.min(edge, spans * crowded)
}

/** Stitches by the place they are worked into, all chains of a run as one; none of the centre, nor where no place holds two. */
function groupsOf(motif: Motif, index: number): { chains: number; elements: number[] }[] {
  if (oneInEach(motif.rounds[index]!)) return []
  const groups = new Map<string, { chains: number; elements: number[] }>()
  for (const [key, { anchor, elements }] of workedPlaces(motif.rounds[index]!)) {
    if (anchor.at === "centre") continue
    const target = motif.rounds[anchor.round]?.elements[anchor.element]
    const run = target?.type === "chain" && anchor.at !== "between"
    const name = run ? `run:${anchor.round}:${anchor.element}` : key
    const group = groups.get(name)
    if (group) group.elements.push(...elements)
    else groups.set(name, { chains: run ? target.chains : 0, elements: [...elements] })
  }
  return [...groups.values()]
}

/** The shortest stretch of the round that holds the elements. */
function spanOf(elements: readonly number[], n: number): [number, number] {
  const sorted = [...elements].sort((a, b) => a - b)
  let [gap, first, last] = [-1, sorted[0]!, sorted.at(-1)!]
  sorted.forEach((element, i) => {
    const next = sorted[(i + 1) % sorted.length]!
    const here = (next - element + n) % n || n
    if (here > gap) [gap, first, last] = [here, next, element]
  })
  return [first, last]
}

/** Whether nothing but picots and chains stands between the stitches of a group. */
function onlyBetween(
  all: Motif["rounds"][number]["elements"],
  first: number,
  last: number,
  own: readonly number[],
): boolean {
  const set = new Set(own)
  for (let k = first; k !== last; k = (k + 1) % all.length)
    if (!set.has(k) && all[k]!.type === "stitch") return false
  return true
}

/** The least that short runs of chains between the tops of a group take: gaps in its arc, gathered as far as they will. */
function gapsMm(
  all: Motif["rounds"][number]["elements"],
  first: number,
  last: number,
  chainMm: number,
): number {
  let gaps = 0
  for (let k = first; k !== last; k = (k + 1) % all.length) {
    const element = all[k]!
    if (element.type === "chain" && element.chains < shortestLoop) gaps += 1
  }
  return gaps * chainThickness(chainMm)
}

/** How high the next stitch beside an element stands in its way: less where chains between them leave room on either side. */
function besideOf(
  all: Motif["rounds"][number]["elements"],
  heights: readonly number[],
  chainMm: number,
  from: number,
  by: -1 | 1,
): number {
  const n = all.length
  let room = 0
  for (let step = 1; step < n; step++) {
    const k = (from + by * step + n * step) % n
    const element = all[k]!
    if (element.type === "chain") room += (element.chains * chainMm) / 2
    else if (element.type === "stitch") return Math.max(0, heights[k]! - room)
  }
  return 0
}

/** The tops that later rounds are worked into, of all rounds in one walk over the motif. */
export function workedTops(motif: Motif): WorkedTops {
  const found = motif.rounds.map(({ elements }) => new Uint8Array(elements.length))
  motif.rounds.forEach(({ elements }, index) => {
    for (const element of elements)
      if (element.type === "stitch")
        for (const anchor of element.anchors)
          if (anchor.at === "stitch" && anchor.round < index)
            found[anchor.round]![anchor.element] = 1
  })
  return found
}
