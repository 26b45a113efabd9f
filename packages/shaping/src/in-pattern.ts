// A polygon gone on with as it was begun: what stands in its corners goes into the corners again, what stands along its sides
// into every space or stitch of them, with the same chains between.

import {
  type Anchor,
  anchorKey,
  type Element,
  findCorners,
  type Motif,
  type Round,
  type StitchElement,
} from "@roundwright/motif"
import type { Gauge } from "@roundwright/stitches"
import { type FabricName, fabricOf } from "./fabric/fabric-of.ts"
import type { Palette } from "./palette.ts"
import { type Proposal, propose } from "./proposal.ts"

export const inPattern = "In pattern"

/** What a round of the piece does, as its last round shows. */
interface Scheme {
  readonly name: FabricName
  /** What is worked into a corner, without where. */
  readonly corner: readonly Element[]
  /** What is worked into a space or a stitch along a side. */
  readonly unit: readonly StitchElement[]
  /** Chains between. */
  readonly gap: number
}

/** The piece with so many rounds more of its own; null where its last two rounds have not these corners, or no scheme. */
export function goOnInPattern(
  motif: Motif,
  gauge: Gauge,
  corners: number,
  rounds: number,
  palette: Palette,
  restore: (worked: Motif) => Motif,
): Proposal | null {
  const from = motif.rounds.length
  const scheme = schemeOf(motif, corners)
  if (scheme === null) return null
  let made = motif
  let groups: readonly (readonly number[])[] = []
  for (let r = 0; r < rounds; r++) {
    const next = workOnce(made, scheme, corners)
    if (next === null) return null
    made = { ...made, rounds: [...made.rounds, next.round] }
    groups = next.corners
  }
  const draft = {
    motif: made,
    from,
    corners: groups,
    idea: inPattern,
    fabric: scheme.name,
    palette,
    changes: [],
    restore,
  }
  return propose(draft, gauge, { used: 0, reversals: 0, skips: 0, runs: 0, kinds: 1 })
}

/** Middles of the corners of the last round, in working order; null where there are not so many, of one element each. */
function middlesOf(motif: Motif, corners: number): number[] | null {
  const found = findCorners(motif).at(-1)
  if (found?.count !== corners) return null
  const n = motif.rounds.at(-1)!.elements.length
  const spans = found.groups.map(({ first, last }) => ({ first, span: (last - first + n) % n }))
  if (spans.some(({ span }) => span % 2 === 1)) return null
  return spans.map(({ first, span }) => (first + span / 2) % n).sort((a, b) => a - b)
}

function schemeOf(motif: Motif, corners: number): Scheme | null {
  const middles = middlesOf(motif, corners)
  const before = findCorners(motif).at(-2)
  if (middles === null || before?.count !== corners) return null
  const { elements } = motif.rounds.at(-1)!
  const n = elements.length
  const groups = middles.map((middle) => groupAround(elements, middle))
  const [corner] = groups
  if (!corner || corner.length < 2) return null
  const bare = corner.map((e) => elements[e]!)
  const inCorner = new Set(groups.flat())
  const side = Array.from({ length: n }, (_, i) => (middles[0]! + i) % n).filter(
    (e) => !inCorner.has(e),
  )
  const chains = side.flatMap((e) => {
    const element = elements[e]!
    return element.type === "chain" ? [element.chains] : []
  })
  if (new Set(chains).size > 1 || side.some((e) => elements[e]!.type === "picot")) return null
  const stitches = side.filter((e) => elements[e]!.type === "stitch")
  const units = runsInOnePlace(elements, stitches)
  const sizes = new Set(units.map((unit) => JSON.stringify(unit.map(({ kind }) => kind))))
  if (sizes.size > 1) return null
  const first = bare.filter((element): element is StitchElement => element.type === "stitch")
  // A square just begun has corners alone: half of one is what a side is made of.
  const unit = units[0] ?? first.slice(0, Math.ceil(first.length / 2))
  const gap = chains[0] ?? 0
  if (gap === 0 && unit.length > 1 && units.length > 0) return null
  return { name: fabricOf(motif).name, corner: bare, unit: gap > 0 ? unit : unit.slice(0, 1), gap }
}

/** The elements beside a middle that are worked where its own neighbours are, and it. */
function groupAround(elements: readonly Element[], middle: number): number[] {
  const n = elements.length
  const own = elements[middle]!
  const near = own.type === "stitch" ? own : elements[(middle + n - 1) % n]!
  if (near.type !== "stitch") return [middle]
  const key = anchorKey(near.anchors[0]!)
  const reach = (way: 1 | -1) => {
    const found: number[] = []
    for (let e = (middle + way + n) % n; found.length < n; e = (e + way + n) % n) {
      const element = elements[e]!
      if (element.type === "stitch" && anchorKey(element.anchors[0]!) === key) found.push(e)
      else break
    }
    return found
  }
  return [...reach(-1).reverse(), middle, ...reach(1)]
}

function runsInOnePlace(
  elements: readonly Element[],
  stitches: readonly number[],
): StitchElement[][] {
  const runs: { key: string; run: StitchElement[] }[] = []
  for (const e of stitches) {
    const element = elements[e]! as StitchElement
    const key = anchorKey(element.anchors[0]!)
    const last = runs.at(-1)
    if (last?.key === key) last.run.push(element)
    else runs.push({ key, run: [element] })
  }
  return runs.map(({ run }) => run)
}

function workOnce(
  motif: Motif,
  scheme: Scheme,
  corners: number,
): { round: Round; corners: number[][] } | null {
  const middles = middlesOf(motif, corners)
  if (middles === null) return null
  const index = motif.rounds.length - 1
  const { elements, number } = motif.rounds[index]!
  const n = elements.length
  const made: Element[] = []
  const groups: number[][] = []
  const chain = () => {
    if (scheme.gap > 0) made.push({ type: "chain", chains: scheme.gap })
  }
  const work = (what: readonly Element[], anchor: Anchor) => {
    for (const element of what)
      made.push(
        element.type === "stitch"
          ? { type: "stitch", kind: element.kind, anchors: [anchor] }
          : element,
      )
  }
  middles.forEach((middle, c) => {
    const start = made.length
    work(scheme.corner, placeOf(elements[middle]!, index, middle))
    groups.push(Array.from({ length: made.length - start }, (_, i) => start + i))
    chain()
    const end = middles[(c + 1) % middles.length]!
    for (let e = (middle + 1) % n; e !== end; e = (e + 1) % n) {
      const own = elements[e]!
      if (own.type === "picot" || (scheme.gap > 0 && own.type === "stitch")) continue
      work(scheme.unit, placeOf(own, index, e))
      chain()
    }
  })
  return {
    round: { number: number + 1, elements: made, turned: false, closing: "joined" },
    corners: groups,
  }
}

function placeOf(element: Element, round: number, at: number): Anchor {
  return { at: element.type === "chain" ? "space" : "stitch", round, element: at }
}
