// Skew: worked without turning, every stitch sits a little to one side of the one below, and the corners wander. How
// much differs by hand, so it is measured: told how far the corners of her own piece have turned, the lean of a stitch
// that turns them so far is found, and what brings them back is said.
// Remedies: turning the work, or uneven corner groups every few rounds, as makers advise
// ("Skewing Grannies", edieeckman.com/2015/08/13/skewing-grannies).

import {
  type Anchor,
  type Element,
  findCorners,
  type Motif,
  stitchesAndChains,
} from "@roundwright/motif"
import { findRoot, unlessRefused } from "@roundwright/numerics"
import { type LaidOutShape, layOut } from "@roundwright/relaxation"
import { type Gauge, gaugeFrom } from "@roundwright/stitches"

/** First lean tried, as a share of the width: of the size that makers' squares show. */
const firstShare = 0.05
/** A stitch cannot sit further to one side than on the next one. */
const mostShare = 1
/** The next lean tried, by the line through the last two: at least and at most so many times the last one. */
const growth = { least: 1.1, most: 4 }
/** Leans tried one beyond the other; the turn is nearly in proportion, so mostly the second is the last. */
const mostTries = 12
/** A turn found to this many degrees is exact for every purpose; leans nearer than this to one another are the same. */
const close = { deg: 0.05, share: 1e-4 }
/** Stitches and chains: larger pieces take seconds each time. */
const mostNodes = 8_000
/** Turns below this are not seen in a piece, degrees. */
const seenDeg = 1

/**
 * The gauge with the lean of a stitch that gives the skew told with it; the gauge as it is where none is told or none
 * can be found, and why. The lean is a share of the width: the same whatever the size.
 */
export function leanFromSkew(motif: Motif, gauge: Gauge): { gauge: Gauge; notes: string[] } {
  const wanted = gauge.input.skewDeg
  if (wanted === undefined) return { gauge, notes: [] }
  const found = unlessRefused(
    () => findLean(motif, gauge, wanted),
    ({ message }) => message,
  )
  if (typeof found === "number") return { gauge: leaning(gauge, found), notes: [] }
  return { gauge, notes: [`The skew of ${degrees(wanted)} was not used: ${found}`] }
}

function leaning(gauge: Gauge, leanShare: number): Gauge {
  return gaugeFrom({ ...gauge.input, leanShare })
}

/** The lean that turns the corners so far, or why there is none. */
function findLean(motif: Motif, gauge: Gauge, wanted: number): number | string {
  if (stitchesAndChains(motif) > mostNodes)
    return "the piece is too large to be laid out several times."
  if (alwaysTurned(motif)) return "the work is turned after every round, which takes it back."
  const turns = new Map<number, number | null>()
  const turnAt = (share: number): number | null => {
    if (!turns.has(share)) turns.set(share, turnOf(motif, leaning(gauge, share)))
    return turns.get(share) ?? null
  }
  const atEase = turnAt(0)
  const none = atEase === null || Math.abs(atEase) < close.deg ? atEase : evenTurn(turnAt)
  if (none === null) return "it needs corners, as many in the last round as in one before it."
  const offAt = (share: number): number => {
    const off = (share === 0 ? none : turnAt(share)!) - wanted
    return Math.abs(off) < close.deg ? 0 : off
  }
  const ends = bracket(offAt)
  if (ends === null) return "for that each stitch would sit beyond the next one below."
  const { x, value } = findRoot(offAt, ...ends, close.share)
  return Math.abs(value) < seenDeg ? x : "the piece folds when it is laid out, which hides it."
}

function turnOf(motif: Motif, gauge: Gauge): number | null {
  return layOut(motif, gauge, { inSpace: false }).skewDeg
}

/**
 * How far the corners turn by the counts alone, without any lean: midway between two leans to either side. Pressed flat,
 * loops that are too full or too tight fold over to the one side or the other, and that turns a piece by some degrees of
 * which nothing is to be seen on the table.
 */
function evenTurn(turnAt: (share: number) => number | null): number | null {
  const [one, other] = [turnAt(firstShare), turnAt(-firstShare)]
  return one === null || other === null ? null : (one + other) / 2
}

/** Skew of a laid-out shape, degrees, without what folded loops alone make of it where nothing leans. */
export function skewOfShape({ skewDeg }: LaidOutShape, motif: Motif, gauge: Gauge): number | null {
  if (skewDeg === null || gauge.input.leanShare) return skewDeg
  // Where nothing leans a turn too small to be seen is one of folded loops.
  if (Math.abs(skewDeg) < seenDeg) return 0
  if (stitchesAndChains(motif) > mostNodes) return skewDeg
  return unlessRefused(
    () => evenTurn((share) => turnOf(motif, leaning(gauge, share))),
    () => skewDeg,
  )
}

/** Two leans between which the skew lies, the second found by lines; null where no lean reaches it. */
function bracket(offAt: (share: number) => number): [number, number] | null {
  let [before, offBefore] = [0, offAt(0)]
  if (offBefore === 0) return [0, 0]
  const way = -Math.sign(offBefore)
  let share = way * firstShare
  for (let tried = 0; tried < mostTries; tried++) {
    // Where rounds come to lie across one another no stitch can lean like that.
    const off = unlessRefused(
      () => offAt(share),
      () => null,
    )
    if (off === null) return null
    if (off * way >= 0) return [before, share]
    if (Math.abs(share) === mostShare) return null
    const onLine = share - (off * (share - before)) / (off - offBefore)
    const times = onLine / share
    ;[before, offBefore] = [share, off]
    share *= times > 0 ? Math.min(growth.most, Math.max(growth.least, times)) : growth.most
    if (Math.abs(share) > mostShare) share = way * mostShare
  }
  return null
}

function alwaysTurned({ rounds }: Motif): boolean {
  return rounds.slice(1).every(({ turned }) => turned)
}

/**
 * What brings the corners of a laid-out piece back, each with what it comes to; nothing where its gauge knows of no
 * lean, or the turn is not to be seen.
 */
export function adviceOnSkew(motif: Motif, gauge: Gauge, turn: number | null): string[] {
  const share = gauge.input.leanShare
  if (!share || turn === null || Math.abs(turn) < seenDeg) return []
  const back = unlessRefused(
    () => layOut(toAndFro(motif), gauge, { inSpace: false }),
    () => null,
  )
  if (back === null) return []
  const left = Math.abs(back.skewDeg ?? 0)
  const way = turn > 0 ? "in the direction of work" : "against the direction of work"
  const percent = Math.round(100 * Math.abs(share))
  return [
    `The corners turn by ${degrees(turn)} ${way}: for that each stitch sits ${percent} % of its width to one side of the one below.`,
    `Work turned after every round ${left < seenDeg ? "would keep the corners in their place" : `would still turn the corners by ${degrees(left)}`}.`,
    unevenCorners(motif, back, turn),
  ]
}

/** Stitches moved from one side of a corner to the other: in how many rounds, and how. */
function unevenCorners(motif: Motif, back: LaidOutShape, turn: number): string {
  const corners = findCorners(motif)
  const cornered = corners.filter(({ count }) => count === back.outline.corners).length
  const { first, last } = corners.at(-1)!.groups[0]!
  const elements = motif.rounds.at(-1)!.elements
  const span = (last - first + elements.length) % elements.length
  const loop = elements.some(
    ({ type }, k) => type === "chain" && (k - first + elements.length) % elements.length <= span,
  )
  const [less, more] = turn > 0 ? ["before", "after"] : ["after", "before"]
  const how = loop
    ? `one stitch fewer ${less} the chains, one more ${more} them`
    : `one stitch fewer on the side ${less} each, one more on the side ${more} it`
  const atEdge = stitchAtEdge(back)
  if (Math.abs(turn) < atEdge / 2)
    return `Uneven corners would take back too much: moved by one stitch, a corner of the last round turns by ${degrees(atEdge)}.`
  // Half of the way out a stitch turns twice as far: the corners of all rounds alike.
  const every = Math.max(1, Math.round(((2 * atEdge) / Math.abs(turn)) * Math.max(1, cornered - 1)))
  if (every === 1) return `Or make every corner uneven: ${how}.`
  return every < cornered
    ? `Or make the corners uneven about every ${every} rounds: ${how}.`
    : `Or make the corners of one late round uneven: ${how}; there that turns them back by ${degrees(atEdge)}.`
}

/** The same fabric with the work turned after every round: every other round is worked the other way about. */
function toAndFro(motif: Motif): Motif {
  let backwards = false
  const turning = motif.rounds.map(({ turned }, k) => {
    if (turned && k > 0) backwards = !backwards
    return backwards !== (k % 2 === 1)
  })
  const reversed = (round: number): boolean => turning[round]!
  const last = (round: number): number => motif.rounds[round]!.elements.length - 1
  const moved = (anchor: Anchor): Anchor => {
    if (anchor.at === "centre" || !reversed(anchor.round)) return anchor
    const own = motif.rounds[anchor.round]!.elements
    const element = last(anchor.round) - anchor.element
    if (anchor.at === "between")
      return { ...anchor, element: element > 0 ? element - 1 : own.length - 1 }
    if (anchor.at !== "chain") return { ...anchor, element }
    const run = own[anchor.element]!
    return { ...anchor, element, chain: (run.type === "chain" ? run.chains - 1 : 0) - anchor.chain }
  }
  return {
    ...motif,
    rounds: motif.rounds.map((round, k) => {
      const elements = round.elements.map(
        (element): Element =>
          element.type === "stitch" ? { ...element, anchors: element.anchors.map(moved) } : element,
      )
      return { ...round, turned: k > 0, elements: reversed(k) ? elements.reverse() : elements }
    }),
  }
}

/** Degrees by which a corner of the last round turns that is moved by one stitch. */
function stitchAtEdge({ net, outline }: LaidOutShape): number {
  const tops = net.edges.at(-1)!.nodes.flatMap((node) => {
    const { kind, widthMm } = net.nodes[node]!
    return kind === "top" ? [widthMm] : []
  })
  const width = tops.reduce((sum, one) => sum + one, 0) / Math.max(1, tops.length) / net.mmPerUnit
  return ((width / outline.cornerReachMm) * 180) / Math.PI
}

function degrees(value: number): string {
  const whole = Math.round(Math.abs(value))
  return whole === 1 ? "1 degree" : `${whole} degrees`
}
