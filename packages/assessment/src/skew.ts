// Skew: worked without turning, every stitch sits a little to one side of the one below, and the corners wander. How
// much differs by hand, so it is measured: told how far the corners of her own piece have turned, the lean of a stitch
// that turns them so far is found, and what brings them back is said.
// Remedies: turning the work, or uneven corner groups every few rounds, as makers advise
// ("Skewing Grannies", edieeckman.com/2015/08/13/skewing-grannies).

import { type Anchor, type Element, findCorners, type Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { type LaidOutShape, layOut } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"

export interface Skew {
  /** Lean of a stitch as a share of its width, for the net. */
  readonly share: number
  readonly notes: readonly string[]
}

export const noSkew: Skew = { share: 0, notes: [] }

/** First lean tried, as a share of the width: of the size that makers' squares show. */
const firstShare = 0.05
/** A stitch cannot sit further to one side than on the next one. */
const mostShare = 1
/** Lines through the last two: the turn is nearly in proportion to the lean. */
const lines = 4
/** A turn found to this many degrees is exact for every purpose. */
const closeDeg = 0.05
/** Turns below this are not seen in a piece, degrees. */
const seenDeg = 1

/** The lean that gives the skew told with the gauge. */
export function fitSkew(motif: Motif, gauge: Gauge): Skew {
  const wanted = gauge.input.skewDeg
  if (wanted === undefined) return noSkew
  return unlessRefused(
    () => fitted(motif, gauge, wanted),
    ({ message }) => unused(message),
  )
}

function fitted(motif: Motif, gauge: Gauge, wanted: number): Skew {
  const turnAt = (share: number): number | null =>
    layOut(motif, gauge, { inSpace: false, skewShare: share }).skewDeg
  let [a, atA] = [0, turnAt(0)]
  if (atA === null) return unused("fewer than two rounds have the same corners.")
  if (turnsBack(motif)) return unused("the work is turned, which takes it back.")
  let [b, atB] = [firstShare * Math.sign(wanted - atA || 1), 0]
  for (let k = 0; k < lines; k++) {
    atB = turnAt(b)!
    if (Math.abs(atB - wanted) < closeDeg || atB === atA) break
    const next: number = b + ((wanted - atB) * (b - a)) / (atB - atA)
    if (!(Math.abs(next) <= mostShare)) return unused("no stitch leans so far.")
    ;[a, atA, b] = [b, atB, next]
  }
  return { share: b, notes: adviceOn(motif, gauge, b, atB) }
}

function unused(why: string): Skew {
  return { share: 0, notes: [`The skew was not used: ${why}`] }
}

function turnsBack({ rounds }: Motif): boolean {
  return rounds.slice(1).some(({ turned }) => turned)
}

/** What brings the corners back, each with what it comes to. */
function adviceOn(motif: Motif, gauge: Gauge, share: number, turn: number): string[] {
  if (Math.abs(turn) < seenDeg) return []
  const back = layOut(toAndFro(motif), gauge, { inSpace: false, skewShare: share })
  const left = Math.abs(back.skewDeg ?? 0)
  const way = turn > 0 ? "in the direction of work" : "against the direction of work"
  const [less, more] = turn > 0 ? ["before", "after"] : ["after", "before"]
  const every = roundsForOneStitch(motif, back, turn)
  return [
    `The corners turn by ${degrees(turn)} ${way}: each stitch sits ${Math.round(100 * Math.abs(share))} % of its width to one side of the one below.`,
    `Turn the work after every round: then the corners ${left < seenDeg ? "keep their place" : `still turn by ${degrees(left)}`}.`,
    every === 1
      ? `Or work every corner uneven: one stitch fewer ${less} its chains, one more ${more} them.`
      : `Or work the corners uneven about every ${every} rounds: one stitch fewer ${less} the chains, one more ${more} them.`,
  ]
}

/** The same fabric with the work turned after every round: every other round is worked the other way about. */
function toAndFro(motif: Motif): Motif {
  const reversed = (round: number): boolean => round % 2 === 1
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

/** Rounds in which the corners turn by as much as one stitch, put to the other side of a corner, takes back. */
function roundsForOneStitch(motif: Motif, { net, outline }: LaidOutShape, turn: number): number {
  const cornered = findCorners(motif).filter(({ count }) => count === outline.corners).length
  const tops = net.edges.at(-1)!.nodes.flatMap((node) => {
    const { kind, widthMm } = net.nodes[node]!
    return kind === "top" ? [widthMm] : []
  })
  const width = tops.reduce((sum, one) => sum + one, 0) / Math.max(1, tops.length) / net.mmPerUnit
  // Half of the way out: the corners of all rounds alike.
  const back = ((width / (outline.cornerReachMm / 2)) * 180) / Math.PI
  const perRound = Math.abs(turn) / Math.max(1, cornered - 1)
  return Math.max(1, Math.round(back / perRound))
}

function degrees(value: number): string {
  const whole = Math.round(Math.abs(value))
  return whole === 1 ? "1 degree" : `${whole} degrees`
}
