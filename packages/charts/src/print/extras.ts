// What stands beside the stitches: the centre, starting chains that stand for no stitch, joins, slip stitches to the next
// start, yarn on and yarn off. Room for them is kept at every repeat, so that the stitches stay symmetric.

import type { Centre, Motif } from "@roundwright/motif"
import { chainOval, dot } from "./draw-stitch.ts"
import type { Frontier } from "./frontier.ts"
import { type Place, type PrintMark, polar, type Stroke, shifted, symbolMm, unit } from "./mark.ts"
import type { PlacedRounds } from "./placed.ts"
import { wrapped } from "./rings.ts"

/** Radius of the ring, chain or hole that round 1 stands on, mm. */
export function reachOfCentre(centre: Centre): number {
  switch (centre.kind) {
    case "chain-ring":
      return ringRadius(centre.chains) + symbolMm.ovalShort
    case "solid-ring":
      return 2.6
    case "single-chain":
      return 0.6
    default:
      return 1.5
  }
}

function ringRadius(chains: number): number {
  return Math.max(1.6, (chains * symbolMm.chainPitch) / (2 * Math.PI))
}

const still = {
  round: -1,
  element: 0,
  repeat: 0,
  strokes: [],
  ovals: [],
  posts: [],
  leaders: [],
} as const

export function centreMarks(centre: Centre): PrintMark[] {
  const middle = { x: 0, y: 0 }
  const circle = (radius: number) => ({
    ...middle,
    long: radius,
    short: radius,
    angle: 0,
    filled: false,
  })
  const on: PrintMark = {
    ...still,
    kind: "yarn-on",
    at: middle,
    strokes: triangle(middle, { x: 0, y: 1 }, 0.8),
  }
  switch (centre.kind) {
    case "chain-ring": {
      const radius = ringRadius(centre.chains)
      const ovals = Array.from({ length: centre.chains }, (_, k) => {
        const at = polar(Math.PI / 2 + (2 * Math.PI * k) / centre.chains, radius)
        return chainOval(at, { x: -at.y, y: at.x })
      })
      return [{ ...still, kind: "ring", at: middle, ovals }, on]
    }
    case "single-chain":
      return [{ ...still, kind: "ring", at: middle, ovals: [chainOval(middle, { x: 1, y: 0 })] }]
    case "solid-ring":
      return [{ ...still, kind: "ring", at: middle, ovals: [circle(2.4), circle(1.9)] }, on]
    default:
      return [{ ...still, kind: "ring", at: middle, ovals: [circle(1.4)] }, on]
  }
}

function triangle(at: Place, way: Place, size: number): Stroke[] {
  const corners = [
    shifted(at, way, size * 0.62, 0),
    shifted(at, way, -size * 0.45, size * 0.55),
    shifted(at, way, -size * 0.45, -size * 0.55),
  ]
  return corners.map((from, k) => ({ from, to: corners[(k + 1) % 3]! }))
}

/** The ray between the last and the first stitch of a round, and the radius of the lower of them. */
function seam(
  motif: Motif,
  round: number,
  placed: PlacedRounds,
): { angle: number; radius: number } {
  const { elements } = motif.rounds[round]!
  const first = elements.findIndex(({ type }) => type !== "picot")
  const ahead = placed.of(round, Math.max(0, first))
  const behind = placed.near(motif, round, elements.length - 1)
  const backwards = placed.isBackwards(round)
  const a = (backwards ? behind[0] : behind.at(-1)) ?? ahead[0]!
  const b = (backwards ? ahead.at(-1) : ahead[0]) ?? a
  const span = elements.length > 1 ? wrapped(b.angle - a.angle) : Math.PI
  return { angle: a.angle + span / 2, radius: Math.min(a.radius, b.radius) }
}

/** A starting chain that stands for no stitch stands between the last stitch and the first. */
export function standsAside({ rounds }: Motif, index: number): boolean {
  const { startChain, elements } = rounds[index]!
  const first = elements[0]
  return startChain !== undefined && !(first?.type === "stitch" && first.madeOfChains !== undefined)
}

const dotRoom = symbolMm.dot + 0.2

/** A dot just outside what stands there; its room is kept in every repeat. */
function dotAt(angle: number, radius: number, frontier: Frontier): Place {
  const reach = Math.max(radius, frontier.at(angle, dotRoom, radius)) + dotRoom
  frontier.cover(angle, dotRoom, reach + dotRoom)
  return polar(angle, reach)
}

/** The join of a round, or its end left open, and the starting chain that stands for no stitch. */
export function joinMarks(
  motif: Motif,
  index: number,
  placed: PlacedRounds,
  frontier: Frontier,
  repeats: number,
  drawn: readonly PrintMark[],
): { marks: PrintMark[]; start: Place } {
  const round = motif.rounds[index]!
  const { angle, radius } = seam(motif, index, placed)
  const base = { ...still, round: index, repeat: repeats - 1, element: round.elements.length }
  const marks: PrintMark[] = []
  if (round.startChain && standsAside(motif, index)) {
    const { chains } = round.startChain
    const { top, way } = besideFirst(round.elements.length, drawn, placed.isBackwards(index)) ?? {
      top: polar(angle, radius),
      way: polar(angle, 1),
    }
    const ovals = Array.from({ length: chains }, (_, k) =>
      chainOval(shifted(top, way, -0.35 - k * symbolMm.columnPitch, 0), way),
    )
    marks.push({ ...base, kind: "start", at: top, ovals })
    frontier.cover(
      Math.atan2(top.y, top.x),
      symbolMm.ovalShort + 0.2,
      Math.hypot(top.x, top.y) + 0.65,
    )
  }
  const last = round.elements.at(-1)
  const closedBySt = last?.type === "chain" && last.closedWith !== undefined
  if (round.closing === "joined" && !closedBySt) {
    const at = dotAt(angle, radius, frontier)
    marks.push({ ...base, kind: "join", at, ovals: [dot(at, unit({ x: 0, y: 0 }, at))] })
    return { marks, start: at }
  }
  return { marks, start: polar(angle, radius) }
}

/** From the middle of a stitch to that of a chain beside it, mm. */
const asideMm = 1.6

/** Between the last stitch and the first, or beside the first, upright as they stand; null where the first is none. */
function besideFirst(
  count: number,
  drawn: readonly PrintMark[],
  backwards: boolean,
): { top: Place; way: Place } | null {
  const [first, last] = [0, count - 1].map((element) =>
    drawn.find((mark) => mark.element === element && mark.posts.length > 0),
  )
  if (!first) return null
  if (!last || first === last) {
    const way = unit(first.posts[0]!.from, first.at)
    return { top: shifted(first.at, way, 0, backwards ? asideMm : -asideMm), way }
  }
  const middle = (a: Place, b: Place) => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 })
  const top = middle(first.at, last.at)
  const foot = middle(first.posts[0]!.from, last.posts[0]!.from)
  return { top, way: unit(foot, top) }
}

/** More slip stitches than these are rather a new place to join the yarn. */
const mostSlips = 6

/** Slip stitches from the join of the round before to the place where this one begins. */
export function slipMarks(
  motif: Motif,
  index: number,
  placed: PlacedRounds,
  frontier: Frontier,
  repeats: number,
): PrintMark[] {
  const round = motif.rounds[index]!
  const before = motif.rounds[index - 1]
  const first = round.elements.find(({ type }) => type === "stitch")
  if (before?.closing !== "joined" || round.turned || first?.type !== "stitch") return []
  const anchor = first.anchors[0]!
  if (anchor.at === "centre" || anchor.round !== index - 1) return []
  const passed = anchor.element + (anchor.at === "between" ? 1 : 0)
  if (passed < 1 || passed > mostSlips || round.elements[0] !== first) return []
  const marks: PrintMark[] = []
  for (let element = 1; element <= passed; element++) {
    const stand = placed.of(index - 1, element)
    const on = stand[stand.length >> 1]
    if (!on) continue
    const at = dotAt(on.angle, on.radius, frontier)
    marks.push({
      ...still,
      kind: "slip",
      round: index,
      element,
      repeat: repeats > 1 ? 0 : 0,
      at,
      ovals: [dot(at, unit({ x: 0, y: 0 }, at))],
    })
  }
  return marks
}

/** A filled triangle beyond the last join: the yarn is cut. */
export function yarnOff(motif: Motif, placed: PlacedRounds, frontier: Frontier): PrintMark[] {
  const index = motif.rounds.length - 1
  const { angle, radius } = seam(motif, index, placed)
  const reach = frontier.at(angle, 0.9, radius) + 1
  const at = polar(angle, reach)
  const inward = unit(at, { x: 0, y: 0 })
  const strokes = triangle(at, inward, 1.2)
  // Filled by strokes from corner to side.
  const fill = [0.25, 0.5, 0.75].map((share) => ({
    from: strokes[0]!.from,
    to: {
      x: strokes[1]!.from.x + share * (strokes[1]!.to.x - strokes[1]!.from.x),
      y: strokes[1]!.from.y + share * (strokes[1]!.to.y - strokes[1]!.from.y),
    },
  }))
  return [{ ...still, kind: "yarn-off", round: index, at, strokes: [...strokes, ...fill] }]
}
