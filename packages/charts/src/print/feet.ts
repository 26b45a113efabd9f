// Where the legs of a round stand: on what they are worked into, those in one place side by side in the order of their
// tops, so that none crosses another.

import { anchorKey, type Motif } from "@roundwright/motif"
import type { Frontier } from "./frontier.ts"
import { type Place, polar, type Stroke, shifted, symbolMm, unit } from "./mark.ts"
import { besideChain } from "./own-chain.ts"
import type { PlacedItem, PlacedRounds } from "./placed.ts"
import { wrapped } from "./rings.ts"

export interface Feet {
  /** For each element of the round a foot for each leg. */
  readonly of: ReadonlyMap<number, readonly Place[]>
  readonly leaders: ReadonlyMap<number, readonly Stroke[]>
  /** Elements that share a chain space with others. */
  readonly shared: ReadonlySet<number>
}

interface Leg {
  readonly element: number
  readonly leg: number
  readonly top: number
  readonly topRadius: number
}

/** A foot this far above what it is worked into is led down to it by a thin line, mm. */
const ledFrom = 3

/** @param centreRadius of the ring or chain that the first round is worked into */
export function feetOf(
  motif: Motif,
  round: number,
  placed: PlacedRounds,
  tops: ReadonlyMap<number, readonly PlacedItem[]>,
  frontier: Frontier,
  centreRadius: number,
): Feet {
  const places = new Map<string, Leg[]>()
  const { elements } = motif.rounds[round]!
  elements.forEach((element, index) => {
    if (element.type !== "stitch") return
    const top = tops.get(index)?.[0]
    if (!top) return
    // Legs that all stand in one place are drawn from one foot.
    const keys = element.anchors.map(anchorKey)
    const one = new Set(keys).size === 1
    keys.forEach((key, leg) => {
      if (one && leg > 0) return
      places.set(key, [
        ...(places.get(key) ?? []),
        { element: index, leg, top: top.angle, topRadius: top.radius },
      ])
    })
  })
  const standing: Standing[] = []
  const shared = new Set<number>()
  for (const legs of places.values()) {
    const first = legs[0]!
    const stitch = elements[first.element]!
    if (stitch.type !== "stitch") continue
    const anchor = stitch.anchors[first.leg]!
    const target = placed.anchor(motif, anchor)
    const centre = target?.angle ?? 0
    if (legs.length > 1 && anchor.at === "space")
      for (const { element } of legs) shared.add(element)
    const own = anchor.at === "chain" && anchor.round === round
    const earlier = anchor.at !== "centre" && anchor.round < round - 1
    const ordered = [...legs].sort((a, b) => wrapped(a.top - centre) - wrapped(b.top - centre))
    ordered.forEach((leg, k) => {
      if (target === null) standing.push({ leg, angle: leg.top, target, led: false, own })
      else {
        const radius = Math.max(target.radius, 1)
        const beside = centre + offset(k, ordered, target.half, radius)
        const led =
          earlier && frontier.at(beside, symbolMm.stroke, radius) - target.radius > ledFrom
        const angle = led ? beside + nearTop * wrapped(leg.top - beside) : beside
        standing.push({ leg, angle, target, led, own })
      }
    })
  }
  return { ...footed(inOrder(standing), frontier, centreRadius), shared }
}

interface Standing {
  readonly leg: Leg
  readonly angle: number
  readonly target: ReturnType<PlacedRounds["anchor"]>
  /** Where later rounds lie over the place, the foot stands near its top's ray and a line leads down. */
  readonly led: boolean
  /** Worked into a chain of its own round. */
  readonly own: boolean
}

const nearTop = 0.85

/** A foot that is led stands between those of its neighbours, in the order of their tops; several in a row share the room. */
function inOrder(standing: readonly Standing[]): Standing[] {
  const order = [...standing].sort((a, b) => a.leg.element - b.leg.element || a.leg.leg - b.leg.leg)
  const n = order.length
  return order.map((one, k) => {
    if (!one.led || n < 3) return one
    const look = (by: 1 | -1): { off: number; led: number } => {
      for (let step = 1; step < n; step++) {
        const other = order[(k + by * step + n * step) % n]!
        if (!other.led) return { off: wrapped(other.angle - one.leg.top), led: step - 1 }
      }
      return { off: by * Math.PI, led: 0 }
    }
    const [back, ahead] = [look(-1), look(1)]
    const [low, high] = back.off <= ahead.off ? [back, ahead] : [ahead, back]
    const own = wrapped(one.angle - one.leg.top)
    const share = (high.off - low.off) / (low.led + high.led + 1)
    const [a, b] = [low.off + low.led * share, low.off + (low.led + 1) * share]
    const edge = Math.min(share / 3, 0.05)
    if (own >= a + edge && own <= b - edge) return one
    return { ...one, angle: one.leg.top + Math.max(a + edge, Math.min(b - edge, own)) }
  })
}

function footed(
  standing: readonly Standing[],
  frontier: Frontier,
  centreRadius: number,
): Omit<Feet, "shared"> {
  const feet = new Map<number, Place[]>()
  const leaders = new Map<number, Stroke[]>()
  for (const { leg, angle, target, led, own } of standing) {
    if (own && target !== null) {
      const chain = polar(target.angle, target.radius)
      const foot = shifted(chain, unit(chain, polar(leg.top, leg.topRadius)), besideChain, 0)
      feet.set(leg.element, [...(feet.get(leg.element) ?? []), foot])
      continue
    }
    const beside = target !== null && target.half > 0 ? besideFoot : footMm
    const ground =
      target === null
        ? centreRadius
        : Math.max(target.radius, frontier.at(angle, beside, Math.max(target.radius, 1)))
    const foot = polar(angle, ground + symbolMm.footGap)
    feet.set(leg.element, [...(feet.get(leg.element) ?? []), foot])
    if (target !== null && led) {
      const from = polar(target.angle, target.radius + symbolMm.footGap)
      leaders.set(leg.element, [...(leaders.get(leg.element) ?? []), { from, to: foot }])
    }
  }
  return { of: feet, leaders }
}

/** What a foot, or the chain that stands for a stitch, takes to either side, mm. */
const footMm = 0.5

/** A foot on a slanting loop stands clear of the chains on either side of it, mm. */
const besideFoot = 0.8

/** How far the k-th foot stands from the middle of its place, radians: in a loop as far apart as their tops, as far as there is room. */
function offset(k: number, legs: readonly Leg[], half: number, radius: number): number {
  const n = legs.length
  if (half === 0) return ((k - (n - 1) / 2) * symbolMm.footPitch) / radius
  const room = (2 * half * radius + symbolMm.ovalLong) / n
  const tops = n > 1 ? (wrapped(legs[n - 1]!.top - legs[0]!.top) * radius) / (n - 1) : 0
  const wanted = Math.max(symbolMm.footPitch, Math.min(tops, room))
  return ((k - (n - 1) / 2) * wanted) / radius
}
