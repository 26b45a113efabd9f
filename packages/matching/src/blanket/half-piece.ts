// Half a motif, cut from corner to corner, worked to and fro in rows: the sectors of the whole on one side of the cut, with an
// end stitch on the cut at either end of every row. Its three whole sides have the stitches of the whole piece's sides, so that
// they join stitch for stitch; where the whole lies flat it lies flat, as long as each row's edge is half the whole's.

import { cornersSeen } from "@roundwright/assessment"
import { type Verdict, verdictOf } from "@roundwright/flatness"
import { type Anchor, type Element, findCorners, type Motif, type Round } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { layOut } from "@roundwright/relaxation"
import {
  chainSize,
  type Gauge,
  type StitchKind,
  sizeOf,
  turningChainCounts,
  turningChains,
} from "@roundwright/stitches"
import { mainStitch } from "../ways/last-round.ts"

export interface HalfPiece {
  /** Rounds that are rows: open, turned after each. */
  readonly motif: Motif
  readonly rows: readonly HalfRow[]
  /** Stitches on each side of the half, from end to corner to corner to end; the end stitches not counted. */
  readonly sides: readonly number[]
  /** Stitches on a side of the whole. */
  readonly wholeSide: number
  readonly verdict: Verdict
}

export interface HalfRow {
  readonly row: number
  readonly stitches: number
  /** Edge of the row over half the edge of the whole's round. */
  readonly share: number
  /** Edge over flat edge, from the whole's. */
  readonly fullness: number
}

/** Squares, hexagons, octagons. */
const mostCorners = 8

/** On the cut: within this many degrees of it an element belongs to both halves. */
const onCutDeg = 0.5

/** @throws RoundwrightError `no-half` for a piece without an even number of corners, what `layOut` throws */
export function halfPiece(whole: Motif, gauge: Gauge): HalfPiece {
  const last = whole.rounds.length - 1
  const corners = findCorners(whole)
  const k = corners[last]?.count ?? 0
  if (k < 4 || k % 2 === 1)
    throw new RoundwrightError(
      "no-half",
      "Only a piece with an even number of corners has halves from corner to corner.",
      {
        hint: "Give it four or six corners first (square --corners 6).",
        numbers: { corners: k },
      },
    )
  const { net, flat, outline, rows: ledger } = layOut(whole, gauge, { inSpace: false })
  if (cornersSeen(outline) !== k || k > mostCorners)
    throw new RoundwrightError(
      "no-half",
      "The corners of the piece do not show, so it cannot be halved from corner to corner.",
      {
        hint: "Square it first, or give it six corners (square --corners 6).",
        numbers: { corners: k },
      },
    )
  const angles = whole.rounds.map((round, r) => anglesOf(round, r, net, flat.xy))
  const cut = cutAngle(whole, last, angles[last]!, corners[last]!.groups)
  const ends = endKinds(whole)
  // Where each element of the whole went: its index in the half's round, in the order of the whole.
  const places: Map<number, number>[] = []
  const built: { elements: Element[] }[] = []
  whole.rounds.forEach((round, r) => {
    built.push(halfRound(round, r, angles[r]!, cut, ends[r]!, places, built))
  })
  const rounds = built.map(({ elements }, r): Round => rowOf(elements, r, built))
  const motif: Motif = {
    ...(whole.title === undefined ? {} : { title: `${whole.title}, half` }),
    centre: whole.centre,
    rounds,
  }
  const rows = rounds.map((round, r): HalfRow => {
    const share =
      edgeOf(built[r]!.elements, gauge, true) /
      (edgeOf(whole.rounds[r]!.elements, gauge, false) / 2)
    const stitches = round.elements.filter(({ type }) => type === "stitch").length
    return { row: r + 1, stitches, share, fullness: share * ledger[r]!.accumulatedFullness }
  })
  const sides = sidesOf(built[last]!.elements, whole, last, places[last]!)
  const wholeSide = sideOfWhole(whole, last)
  if (sides.length !== k / 2 || sides.some((side) => Math.abs(side - wholeSide) > 1))
    throw new RoundwrightError(
      "no-half",
      "The sides of half the piece do not come out as those of the whole.",
      {
        hint: "Its rounds do not repeat as its corners do; make the half by hand from the sectors of the whole.",
        numbers: { wholeSide },
      },
    )
  return {
    motif,
    rows,
    sides,
    wholeSide,
    verdict: verdictOf(rows.at(-1)!.fullness),
  }
}

/** Angle of every element about the centre, radians; NaN for one without a place on the edge. */
function anglesOf(
  round: Round,
  r: number,
  net: ReturnType<typeof layOut>["net"],
  xy: Float64Array,
): number[] {
  const sums = round.elements.map(() => ({ x: 0, y: 0 }))
  const [cx, cy] = [0, 1].map(
    (d) => net.centre.reduce((sum, node) => sum + xy[2 * node + d]!, 0) / net.centre.length,
  ) as [number, number]
  for (const node of net.edges[r]!.nodes) {
    const sum = sums[net.nodes[node]!.element]!
    sum.x += xy[2 * node]! - cx
    sum.y += xy[2 * node + 1]! - cy
  }
  return sums.map(({ x, y }) => (x === 0 && y === 0 ? Number.NaN : Math.atan2(y, x)))
}

function cutAngle(
  whole: Motif,
  last: number,
  angles: readonly number[],
  groups: readonly { first: number; last: number }[],
): number {
  const n = whole.rounds[last]!.elements.length
  const [group] = groups
  if (!group)
    throw new RoundwrightError("no-half", "The corners of the last round cannot be made out.", {
      hint: "End the piece with a round that turns its corners.",
    })
  const span = (group.last - group.first + n) % n
  const [from, to] = [angles[group.first]!, angles[(group.first + span) % n]!]
  return from + turned(to - from) / 2
}

/** Between -pi and pi. */
function turned(angle: number): number {
  return Math.atan2(Math.sin(angle), Math.cos(angle))
}

/** The stitch that stands on the cut, as tall as the row. */
function endKinds(whole: Motif): StitchKind[] {
  return whole.rounds.map((round) => ({ basic: mainStitch(round) ?? "sc" }))
}

function halfRound(
  round: Round,
  r: number,
  angles: readonly number[],
  cut: number,
  end: StitchKind,
  places: Map<number, number>[],
  built: readonly { elements: Element[] }[],
): { elements: Element[] } {
  const n = round.elements.length
  const tolerance = (onCutDeg * Math.PI) / 180
  const from = (e: number) => turned(angles[e]! - cut)
  const inside = round.elements.map((_, e) => from(e) > tolerance && from(e) < Math.PI - tolerance)
  const onStart = round.elements.map((_, e) => Math.abs(from(e)) <= tolerance)
  const onEnd = round.elements.map((_, e) => Math.abs(turned(from(e) - Math.PI)) <= tolerance)
  const order = Array.from({ length: n }, (_, e) => e)
    .filter((e) => inside[e])
    .sort((a, b) => from(a) - from(b))
  if (order.length === 0)
    throw new RoundwrightError(
      "no-half",
      `Round ${round.number} has nothing on one side of the cut.`,
    )
  const map = new Map<number, number>()
  places.push(map)
  const elements: Element[] = []
  const endBelow = (at: "start" | "end"): Anchor =>
    r === 0
      ? { at: "centre" }
      : {
          at: "stitch",
          round: r - 1,
          element: at === "start" ? 0 : built[r - 1]!.elements.length - 1,
        }
  const put = (element: Element, e: number | null) => {
    if (e !== null) map.set(e, elements.length)
    elements.push(element)
  }
  const chainsOn = (on: readonly boolean[]) =>
    round.elements.findIndex((element, e) => on[e] && element.type === "chain")
  // Half the chains of a corner on the cut; the end stitch stands for the odd one.
  const half = (e: number) => {
    const element = round.elements[e]
    if (element?.type !== "chain" || element.chains < 2) return
    put({ type: "chain", chains: Math.floor(element.chains / 2) }, e)
  }
  put({ type: "stitch", kind: end, anchors: [endBelow("start")] }, null)
  for (const [e, on] of onStart.entries())
    if (on && round.elements[e]!.type === "stitch") map.set(e, 0)
  half(chainsOn(onStart))
  for (const e of order) {
    const element = round.elements[e]!
    if (element.type !== "stitch") {
      put(element, e)
      continue
    }
    const anchors = element.anchors.map((anchor) =>
      moved(anchor, places, from(e) < Math.PI / 2 ? endBelow("start") : endBelow("end")),
    )
    const { madeOfChains: _, ...plain } = element
    put({ ...plain, anchors }, e)
  }
  half(chainsOn(onEnd))
  put({ type: "stitch", kind: end, anchors: [endBelow("end")] }, null)
  for (const [e, on] of onEnd.entries())
    if (on && round.elements[e]!.type === "stitch") map.set(e, elements.length - 1)
  return { elements }
}

/** The place in the half; the end stitch where the whole's was on the cut or beyond it. */
function moved(anchor: Anchor, places: readonly Map<number, number>[], end: Anchor): Anchor {
  if (anchor.at === "centre") return anchor
  const element = places[anchor.round]?.get(anchor.element)
  if (element === undefined) return end
  if (anchor.at === "chain") return { at: "space", round: anchor.round, element }
  return { ...anchor, element }
}

/** Rows run to and fro: every second one from the other end, its anchors with it. */
function rowOf(
  elements: readonly Element[],
  r: number,
  built: readonly { elements: Element[] }[],
): Round {
  const back = r % 2 === 1
  const flipped = (anchor: Anchor): Anchor => {
    if (anchor.at === "centre" || anchor.round % 2 === 0) return anchor
    const n = built[anchor.round]!.elements.length
    // "Between" names the element before the gap, which from the other end is the one after it.
    const element = anchor.at === "between" ? n - 2 - anchor.element : n - 1 - anchor.element
    return { ...anchor, element }
  }
  const run = back ? [...elements].reverse() : [...elements]
  const placed = run.map(
    (element): Element =>
      element.type === "stitch" ? { ...element, anchors: element.anchors.map(flipped) } : element,
  )
  const first = placed[0] as Extract<Element, { type: "stitch" }>
  const chains = turningChains(first.kind.basic)
  const counts = turningChainCounts(first.kind.basic)
  return {
    number: r + 1,
    elements: [counts ? { ...first, madeOfChains: chains } : first, ...placed.slice(1)],
    turned: r > 0,
    closing: "open",
    startChain: { chains, counts },
  }
}

/** Length of an edge of stitches and chains, mm; of the half its end stitches count half. */
function edgeOf(elements: readonly Element[], gauge: Gauge, ends: boolean): number {
  const chainMm = chainSize(gauge).lengthMm
  return elements.reduce((sum, element, k) => {
    if (element.type === "picot") return sum
    if (element.type === "chain") return sum + element.chains * chainMm
    const { widthMm } = sizeOf(element.kind, gauge, { turned: false })
    const half = ends && (k === 0 || k === elements.length - 1)
    return sum + (half ? widthMm / 2 : widthMm)
  }, 0)
}

function cornerElements(whole: Motif, last: number): number[] {
  const { elements } = whole.rounds[last]!
  const n = elements.length
  return findCorners(whole)[last]!.groups.map(({ first, last: end }) => {
    const span = (end - first + n) % n
    const inside = Array.from({ length: span + 1 }, (_, k) => (first + k) % n)
    return inside.find((e) => elements[e]!.type === "chain") ?? inside[Math.floor(span / 2)]!
  })
}

function sideOfWhole(whole: Motif, last: number): number {
  const { elements } = whole.rounds[last]!
  const [a, b] = cornerElements(whole, last).sort((x, y) => x - y)
  return countStitches(elements.slice(a! + 1, b))
}

function sidesOf(
  elements: readonly Element[],
  whole: Motif,
  last: number,
  map: ReadonlyMap<number, number>,
): number[] {
  const at = cornerElements(whole, last)
    .flatMap((e) => map.get(e) ?? [])
    .filter((e) => e > 1 && e < elements.length - 2)
    .sort((a, b) => a - b)
  const bounds = [0, ...at, elements.length - 1]
  return bounds.slice(1).map((to, k) => countStitches(elements.slice(bounds[k]! + 1, to)))
}

function countStitches(elements: readonly Element[]): number {
  return elements.filter(({ type }) => type === "stitch").length
}
