// Lays the chart out, round after round from the centre: the solved piece, made symmetric, at a scale at which a stitch is
// as wide as its symbol; tops kept in order and apart along their round, and outside of what was laid before.

import type { Element, Motif } from "@roundwright/motif"
import type { LaidOutShape } from "@roundwright/relaxation"
import { isTall, turningChains } from "@roundwright/stitches"
import { beyond, coveredHalf, depthOf, halfWidth } from "./depths.ts"
import {
  chainColumn,
  chainOval,
  drawPicot,
  drawStitch,
  isCross,
  picotReach,
  shortFoot,
} from "./draw-stitch.ts"
import { centreMarks, joinMarks, reachOfCentre, slipMarks, standsAside, yarnOff } from "./extras.ts"
import { feetOf } from "./feet.ts"
import { Frontier } from "./frontier.ts"
import { type Place, type PrintMark, polar, symbolMm, unit } from "./mark.ts"
import { offOwnChain } from "./own-chain.ts"
import { type PlacedItem, PlacedRounds } from "./placed.ts"
import { type Ring, type SymmetricPiece, symmetricPiece } from "./rings.ts"
import { spread } from "./spread.ts"

export interface ChartLayout {
  readonly marks: readonly PrintMark[]
  readonly repeats: number
  /** Farthest reach of the work from the centre, mm. */
  readonly reach: number
  /** For each round the place where it begins. */
  readonly starts: readonly Place[]
}

/** @param stretch makes the rounds so much larger against their symbols */
export function layOutChart(motif: Motif, shape: LaidOutShape, stretch = 1): ChartLayout {
  const piece = symmetricPiece(motif, shape)
  return new Layout(motif, piece, stretch).run()
}

class Layout {
  private readonly turn: number
  private readonly scale: number
  private readonly frontier: Frontier
  private readonly placed = new PlacedRounds()
  private readonly marks: PrintMark[] = []
  private readonly starts: Place[] = []

  constructor(
    private readonly motif: Motif,
    private readonly piece: SymmetricPiece,
    stretch: number,
  ) {
    this.turn = (2 * Math.PI) / piece.repeats
    this.scale = (stretch * symbolMm.pitch) / piece.stitchWidth
    this.frontier = new Frontier(this.turn, reachOfCentre(motif.centre))
  }

  run(): ChartLayout {
    const { motif, piece, marks, frontier } = this
    marks.push(...centreMarks(motif.centre))
    piece.rings.forEach((ring, index) => {
      this.round(ring, index)
    })
    marks.push(...yarnOff(motif, this.placed, this.frontier))
    return {
      marks,
      repeats: piece.repeats,
      reach: marks.reduce((most, mark) => Math.max(most, reachOf(mark)), frontier.most),
      starts: this.starts,
    }
  }

  private round(ring: Ring, index: number): void {
    const { motif, placed, frontier, turn, marks } = this
    const { repeats } = this.piece
    marks.push(...slipMarks(motif, index, placed, frontier, repeats))
    const { angles, radii } = offOwnChain(motif, index, ring, this.place(ring, index), turn)
    placed.begin(ring.backwards)
    const edge = this.piece.piece.net.edges[index]!
    const tops = new Map<number, PlacedItem[]>()
    const own = ring.items.length
    edge.elements.forEach((element, k) => {
      const repeat = Math.floor(k / own)
      const item = { angle: angles[k % own]! + repeat * turn, radius: radii[k % own]! }
      placed.add(element, item)
      tops.set(element, [...(tops.get(element) ?? []), item])
    })
    const feet = feetOf(motif, index, placed, tops, frontier, reachOfCentre(motif.centre))
    const points = edge.elements.map((_, k) => {
      const repeat = Math.floor(k / own)
      return polar(angles[k % own]! + repeat * turn, radii[k % own]!)
    })
    this.draw(ring, index, points, feet)
    ring.items.forEach((one, k) => {
      frontier.cover(angles[k]!, coveredHalf(one.item), radii[k]! + beyond(one))
      const next = (k + 1) % own
      if (!ring.closed && next === 0) return
      const ahead = angles[next]! + (next === 0 ? turn : 0)
      frontier.join(
        { angle: angles[k]!, radius: radii[k]! },
        { angle: ahead, radius: radii[next]! },
      )
    })
    this.picots(index, tops)
    const stitches = marks.filter((mark) => mark.round === index && mark.kind === "stitch")
    const joined = joinMarks(motif, index, placed, frontier, repeats, stitches)
    marks.push(...joined.marks)
    this.starts.push(joined.start)
  }

  /** Angles and radii of one repeat. */
  private place(ring: Ring, index: number): { angles: number[]; radii: number[] } {
    const { items } = ring
    const n = items.length
    const chains = startChains(this.motif, index, ring)
    const halves = items.map(({ item }) => halfWidth(item))
    const seamMm = standsAside(this.motif, index) ? asideMm : 0
    let radii = items.map(({ radius }) => radius * this.scale)
    const wanted = evenRuns(items, this.turn)
    let angles = wanted
    const passes = 4
    for (let pass = 0; pass < passes; pass++) {
      const gapsAt = (all: readonly number[]) =>
        items.map((_, k) => {
          const next = (k + 1) % n
          const room = halves[k]! + halves[next]! + (next === 0 ? seamMm : 0)
          // On a steep edge neighbours stand apart in radius already.
          const low = isLow(items[k]!.item) && isLow(items[next]!.item)
          const apart = low ? Math.min(0.85 * room, Math.abs(all[k]! - all[next]!)) : 0
          return Math.sqrt(room * room - apart * apart) / Math.max(0.5, (all[k]! + all[next]!) / 2)
        })
      const total = gapsAt(radii).reduce((sum, gap) => sum + gap, 0)
      const tight = total / (0.985 * this.turn)
      if (tight > 1) radii = radii.map((radius) => radius * tight)
      angles = spread(wanted, gapsAt(radii), this.turn)
      const needed = items.map((one, k) => {
        const ground = this.frontier.at(angles[k]!, halves[k]! * 0.8, radii[k]!)
        const depth = depthOf(one, chains.get(k) ?? 0) / Math.max(leastFacing, one.facing)
        return Math.max(0, ground + depth - radii[k]!)
      })
      const pushed = smoothed(
        withNeighbours(
          needed,
          items.map(({ item }) => item.type === "stitch"),
        ),
      )
      radii = radii.map((radius, k) => radius + pushed[k]!)
    }
    return { angles, radii }
  }

  private draw(
    ring: Ring,
    index: number,
    points: readonly Place[],
    feet: ReturnType<typeof feetOf>,
  ): void {
    const { elements } = this.motif.rounds[index]!
    const edge = this.piece.piece.net.edges[index]!
    const own = ring.items.length
    const n = points.length
    const seen = new Map<number, number>()
    edge.elements.forEach((element, k) => {
      const item = elements[element]!
      const at = points[k]!
      const base = { round: index, element, repeat: Math.floor(k / own), at, leaders: [] as const }
      const before = points[(k - 1 + n) % n]!
      const after = points[(k + 1) % n]!
      if (item.type === "stitch") {
        const stand = feet.of.get(element) ?? []
        if (stand.length === 0) return
        const leaders = feet.leaders.get(element) ?? []
        if (item.madeOfChains) {
          const post = { from: stand[0]!, to: at }
          const ovals = chainColumn(stand[0]!, at, item.madeOfChains)
          this.marks.push({ ...base, kind: "start", strokes: [], ovals, posts: [post], leaders })
        } else {
          // In a place shared with others a cross has no stem: it would lie on theirs.
          const from =
            feet.shared.has(element) && isCross(item) ? [shortFoot(stand[0]!, at)] : stand
          this.marks.push({ ...base, kind: "stitch", ...drawStitch(item, from, at), leaders })
        }
        return
      }
      if (item.type !== "chain") return
      const chain = seen.get(element) ?? 0
      seen.set(element, chain + 1)
      const inOrder = ring.backwards ? item.chains - 1 - chain : chain
      const loose = item.closedWith
        ? item.chains - turningChains(item.closedWith.basic)
        : item.chains
      if (inOrder < loose) {
        const ovals = [chainOval(at, unit(before, after))]
        this.marks.push({ ...base, kind: "chain", strokes: [], ovals, posts: [] })
      } else if (inOrder === loose && item.closedWith) {
        const far = points[(k + (ring.backwards ? -1 : 1) * (item.chains - 1 - loose) + n) % n]!
        const closing = drawStitch(
          { type: "stitch", kind: item.closedWith, anchors: [] },
          [far],
          at,
        )
        this.marks.push({ ...base, kind: "stitch", ...closing })
      }
    })
  }

  private picots(index: number, tops: ReadonlyMap<number, readonly PlacedItem[]>): void {
    const { elements } = this.motif.rounds[index]!
    const perRepeat = elements.length / this.piece.repeats
    const grounds = new Map<number, number>()
    elements.forEach((item, element) => {
      if (item.type !== "picot" || tops.has(element)) return
      const stand = this.placed.near(this.motif, index, element)
      const on = (this.placed.isBackwards(index) ? stand[0] : stand.at(-1)) ?? stand[0]
      if (!on) return
      const reach = picotReach(item.chains)
      // All images of a picot stand as far out as the first.
      const base = element % perRepeat
      const ground = grounds.get(base) ?? this.frontier.at(on.angle, reach / 2.4, on.radius)
      grounds.set(base, ground)
      const at = polar(on.angle, ground)
      const ovals = drawPicot(at, unit({ x: 0, y: 0 }, at), item.chains)
      const repeat = Math.floor(element / perRepeat)
      const mark = { kind: "picot", round: index, element, repeat, at, ovals } as const
      this.marks.push({ ...mark, strokes: [], posts: [], leaders: [] })
      this.frontier.cover(on.angle, reach / 2, ground + reach)
    })
  }
}

/** Angles with the chains of every run at equal steps between the stitches at its ends. */
function evenRuns(items: Ring["items"], turn: number): number[] {
  const n = items.length
  const angles = items.map(({ angle }) => angle)
  if (!items.some(({ item }) => item.type === "stitch")) return angles
  return items.map(({ item }, k) => {
    if (item.type === "stitch") return angles[k]!
    let [back, ahead] = [1, 1]
    while (items[(k - back + n) % n]!.item.type !== "stitch") back += 1
    while (items[(k + ahead) % n]!.item.type !== "stitch") ahead += 1
    const before = angles[(k - back + n) % n]! - (k - back < 0 ? turn : 0)
    const after = angles[(k + ahead) % n]! + (k + ahead >= n ? turn : 0)
    return before + ((after - before) * back) / (back + ahead)
  })
}

/** Along an edge that is pushed out at one place its neighbours follow, each by so much less, mm. */
const followMm = 0.4

function smoothed(pushes: readonly number[]): number[] {
  const n = pushes.length
  const out = [...pushes]
  for (let pass = 0; pass < 2; pass++)
    for (let step = 0; step < n; step++) {
      const k = pass === 0 ? step : n - 1 - step
      const next = (k + (pass === 0 ? 1 : n - 1)) % n
      out[next] = Math.max(out[next]!, out[k]! - followMm)
    }
  return out
}

/** At a sharp corner a ray runs along the edge; more than this it is not lengthened. */
const leastFacing = 0.6

/** Chains and low stitches may stand over one another on a steep edge; tall ones fan out. */
function isLow(item: Element): boolean {
  return item.type !== "stitch" || (!isTall(item.kind.basic) && !item.kind.gathered)
}

/** Room along the round for a starting chain that stands for no stitch, kept in every repeat, mm. */
const asideMm = 2 * symbolMm.ovalShort + 0.3

/** Chains of a start in the place of each item of the repeat, in any of its images. */
function startChains({ rounds }: Motif, index: number, ring: Ring): ReadonlyMap<number, number> {
  const { elements } = rounds[index]!
  const found = new Map<number, number>()
  ring.items.forEach(({ element }, k) => {
    for (let image = element % ring.perRepeat; image < elements.length; image += ring.perRepeat) {
      const item = elements[image]!
      if (item.type === "stitch" && item.madeOfChains) found.set(k, item.madeOfChains)
    }
  })
  return found
}

/** Chains are pushed out as the stitches at either end of their run are, at least as far as they must be. */
function withNeighbours(needed: readonly number[], isStitch: readonly boolean[]): number[] {
  const n = needed.length
  if (!isStitch.includes(true)) return [...needed]
  return needed.map((own, k) => {
    if (isStitch[k]) return own
    let [back, ahead] = [1, 1]
    while (!isStitch[(k - back + n) % n]) back += 1
    while (!isStitch[(k + ahead) % n]) ahead += 1
    const before = needed[(k - back + n) % n]!
    const after = needed[(k + ahead) % n]!
    return Math.max(own, (before * ahead + after * back) / (back + ahead))
  })
}

function reachOf(mark: PrintMark): number {
  const points = [
    ...mark.strokes.flatMap(({ from, to }) => [from, to]),
    ...mark.ovals.map(({ x, y, long }) => {
      const r = Math.hypot(x, y)
      return { x: x * (1 + long / Math.max(r, 0.1)), y: y * (1 + long / Math.max(r, 0.1)) }
    }),
  ]
  return points.reduce((most, { x, y }) => Math.max(most, Math.hypot(x, y)), 0)
}
