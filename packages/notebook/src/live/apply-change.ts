// A remedy worked into the piece itself, stitch by stitch, so that it can be written out.

import type { ElementChange } from "@roundwright/flatness"
import { countRound, type Element, kindKey, type Motif, type Round } from "@roundwright/motif"
import { changeCount } from "@roundwright/shaping"
import { type StitchKind, turningChainCounts, turningChains } from "@roundwright/stitches"

/** The changed piece; null where the change is none of stitches and chains, such as another hook. */
export function applyToMotif(motif: Motif, index: number, change: ElementChange): Motif | null {
  const changed = apply(motif, index, change)
  return changed && { ...changed, rounds: changed.rounds.map(withOneStart) }
}

/** A starting chain that counts stands for the first stitch of its round and for no other. */
function withOneStart(round: Round): Round {
  const { startChain, elements } = round
  const made = elements.flatMap((element) =>
    element.type === "stitch" && element.madeOfChains !== undefined ? [element.madeOfChains] : [],
  )
  const chains = made[0] ?? startChain?.chains ?? 0
  return {
    ...round,
    elements: elements.map((element, place): Element => {
      if (element.type !== "stitch") return element
      const { madeOfChains: _, ...plain } = element
      const stands = place === 0 && startChain?.counts
      return stands ? { ...plain, madeOfChains: chains } : plain
    }),
  }
}

function apply(motif: Motif, index: number, change: ElementChange): Motif | null {
  switch (change.kind) {
    case "count":
      return changeCount(motif, index, change.stitches - countOf(motif, index))
    case "increase":
      return growBy(motif, index, change.perRound)
    case "stitch":
      return withRound(motif, index, (round) => restitched(round, change.to))
    case "chains":
      return withRound(motif, index, (round) => ({
        ...round,
        elements: round.elements.map(
          (element): Element =>
            element.type === "chain" && element.chains === change.from
              ? { ...element, chains: change.to }
              : element,
        ),
      }))
    case "hook":
      return null
  }
}

/** Each round from `index` on has so many stitches more than the one before it. */
function growBy(motif: Motif, index: number, perRound: number): Motif | null {
  const start = index === 0 ? 0 : countOf(motif, index - 1)
  let grown: Motif | null = motif
  for (let i = index; grown && i < motif.rounds.length; i += 1) {
    const by = start + perRound * (i - index + 1) - countOf(grown, i)
    if (by !== 0) grown = changeCount(grown, i, by)
  }
  return grown
}

/** A round of one plain stitch in another; its starting chain becomes that stitch's own. */
function restitched(round: Round, to: StitchKind): Round | null {
  const { byKind } = countRound(round)
  const kind = byKind[0]?.kind
  if (byKind.length !== 1 || !kind || kindKey(kind) !== kindKey({ basic: kind.basic })) return null
  const chains = turningChains(to.basic)
  const counts = turningChainCounts(to.basic)
  const elements = round.elements.map((element): Element => {
    if (element.type !== "stitch") return element
    const { madeOfChains: _, ...rest } = element
    return { ...rest, kind: to }
  })
  return round.startChain
    ? { ...round, elements, startChain: { chains, counts } }
    : { ...round, elements }
}

function withRound(
  motif: Motif,
  index: number,
  change: (round: Round) => Round | null,
): Motif | null {
  const round = change(motif.rounds[index]!)
  return round && { ...motif, rounds: motif.rounds.map((own, i) => (i === index ? round : own)) }
}

function countOf(motif: Motif, index: number): number {
  return countRound(motif.rounds[index]!).stitches
}
