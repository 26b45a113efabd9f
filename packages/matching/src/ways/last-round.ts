// The last round worked otherwise: every stitch some steps taller or lower, or taller towards the corners than in the middle
// of a side.

import { countRound, type Element, findCorners, type Motif, type Round } from "@roundwright/motif"
import {
  type BasicStitch,
  type StitchKind,
  turningChainCounts,
  turningChains,
} from "@roundwright/stitches"

/** Stitches a maker exchanges for one another, lowest first. */
export const ladder: readonly BasicStitch[] = ["sc", "hdc", "dc", "tr", "dtr"]

/** The plain stitch most of a round is made of; null where most of it is none of the ladder. */
export function mainStitch(round: Round): BasicStitch | null {
  const { byKind } = countRound(round)
  const main = byKind.reduce<{ kind: StitchKind; count: number } | null>(
    (best, one) => (best === null || one.count > best.count ? one : best),
    null,
  )
  return main && ladder.includes(main.kind.basic) ? main.kind.basic : null
}

/** The same, dc where there is none. */
export function mainStitchOf(round: Round): BasicStitch {
  return mainStitch(round) ?? "dc"
}

/** The round with every stitch as many steps up or down the ladder as its main stitch goes to `to`. */
export function inStitch(motif: Motif, index: number, to: BasicStitch): Motif | null {
  const main = mainStitch(motif.rounds[index]!)
  if (main === null || main === to) return null
  const steps = ladder.indexOf(to) - ladder.indexOf(main)
  return withKinds(motif, index, (kind) => stepped(kind, steps))
}

/** The extended form, half a step taller: one more pull-through in every stitch. */
export const extended: Readonly<Partial<Record<BasicStitch, BasicStitch>>> = {
  sc: "esc",
  hdc: "ehdc",
  dc: "edc",
  tr: "etr",
}

/** The round with its main stitch in the extended form, everything else as it is; null where there is none. */
export function inExtended(motif: Motif, index: number): Motif | null {
  const main = mainStitch(motif.rounds[index]!)
  const to = main && extended[main]
  if (!to) return null
  return withKinds(motif, index, (kind) => (kind.basic === main ? { ...kind, basic: to } : kind))
}

/** Fewer stitches a side than these have no middle to be lower. */
const leastSide = 6

/**
 * Sides with `middle` in their middle and `outer` towards the corners; null where the last round has no sides.
 * @param share of a side that is its middle
 */
export function mixedHeights(
  motif: Motif,
  middle: BasicStitch,
  outer: BasicStitch,
  share = 1 / 3,
): Motif | null {
  const index = motif.rounds.length - 1
  const round = motif.rounds[index]!
  const found = findCorners(motif)[index]!
  if (found.count < 3 || found.groups.length !== found.count) return null
  const n = round.elements.length
  const inMiddle = new Set<number>()
  found.groups.forEach(({ last }, g) => {
    const next = found.groups[(g + 1) % found.groups.length]!.first
    const side = Array.from({ length: (next - last - 1 + n) % n }, (_, k) => (last + 1 + k) % n)
    if (side.length < leastSide) return
    const beside = Math.round((side.length * (1 - share)) / 2)
    for (const e of side.slice(beside, side.length - beside)) inMiddle.add(e)
  })
  if (inMiddle.size === 0) return null
  return withKinds(motif, index, (kind, e) =>
    ladder.includes(kind.basic) ? { ...kind, basic: inMiddle.has(e) ? middle : outer } : kind,
  )
}

function stepped(kind: StitchKind, steps: number): StitchKind | null {
  const place = ladder.indexOf(kind.basic)
  if (place < 0) return kind
  const basic = ladder[place + steps]
  return basic === undefined ? null : { ...kind, basic }
}

function withKinds(
  motif: Motif,
  index: number,
  change: (kind: StitchKind, element: number) => StitchKind | null,
): Motif | null {
  const round = motif.rounds[index]!
  let lost = false
  const elements = round.elements.map((element, e): Element => {
    if (element.type !== "stitch") return element
    const kind = change(element.kind, e)
    if (kind === null) lost = true
    const { madeOfChains: _, ...plain } = element
    return { ...plain, kind: kind ?? element.kind }
  })
  if (lost) return null
  const changed = begun({ ...round, elements }, round)
  return { ...motif, rounds: motif.rounds.map((own, r) => (r === index ? changed : own)) }
}

/** The starting chain as tall as the first stitch, where the round had one. */
function begun(round: Round, before: Round): Round {
  const [first, ...others] = round.elements
  if (!before.startChain || first?.type !== "stitch") return round
  const { basic } = first.kind
  const chains = turningChains(basic)
  const counts = turningChainCounts(basic)
  const start: Element = counts ? { ...first, madeOfChains: chains } : first
  return { ...round, elements: [start, ...others], startChain: { chains, counts } }
}
