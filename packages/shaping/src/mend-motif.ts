// A change made to the piece itself, stitch by stitch, so that it can be judged whole and written out.

import type { ElementChange } from "@roundwright/flatness"
import {
  countRound,
  type Element,
  kindKey,
  type Motif,
  type Round,
  validateMotif,
} from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type StitchKind, turningChainCounts, turningChains } from "@roundwright/stitches"
import { replaceRound } from "./columns.ts"
import { changeCount } from "./count-changes.ts"
import { regrouped } from "./mend-groups.ts"
import { addPlainRound, dropRound } from "./whole-rounds.ts"

/**
 * The piece with the change made to round `index`; the piece itself where nothing is to be done. Null where it is
 * none of stitches and chains, such as another hook, or cannot be carried through the rounds after it.
 */
export function applyToMotif(motif: Motif, index: number, change: ElementChange): Motif | null {
  if (change.kind === "leave" || change.kind === "block" || change.kind === "hand") return motif
  const changed = apply(motif, index, change)
  if (!changed) return null
  const whole = { ...changed, rounds: changed.rounds.map(withOneStart) }
  return holdsTogether(whole) ? whole : null
}

/** Where work goes into chains and between stitches, a stitch more or fewer can leave a later one without its place. */
function holdsTogether(motif: Motif): boolean {
  try {
    validateMotif(motif)
    return true
  } catch (error) {
    if (error instanceof RoundwrightError) return false
    throw error
  }
}

/** The stitch most of a round is made of; sc for a round of chains alone. */
export function mainKind(round: Round): StitchKind {
  const { byKind } = countRound(round)
  const main = byKind.reduce<{ kind: StitchKind; count: number }>(
    (best, entry) => (entry.count > best.count ? entry : best),
    { kind: { basic: "sc" }, count: 0 },
  )
  return main.kind
}

/** A starting chain that counts stands for the first stitch of its round and for no other. */
function withOneStart(round: Round): Round {
  const { startChain, elements } = round
  const counts = startChain?.counts === true
  const whole = elements.every(
    (element, place) =>
      element.type !== "stitch" || (element.madeOfChains !== undefined) === (place === 0 && counts),
  )
  if (whole) return round
  const made = elements.flatMap((element) =>
    element.type === "stitch" && element.madeOfChains !== undefined ? [element.madeOfChains] : [],
  )
  const chains = made[0] ?? startChain?.chains ?? 0
  return {
    ...round,
    elements: elements.map((element, place): Element => {
      if (element.type !== "stitch") return element
      const { madeOfChains: _, ...plain } = element
      const stands = place === 0 && counts
      return stands ? { ...plain, madeOfChains: chains } : plain
    }),
  }
}

function apply(motif: Motif, index: number, change: ElementChange): Motif | null {
  switch (change.kind) {
    case "count":
      return withCount(motif, index, change.stitches, change.keeps === true)
    case "increase":
      return growBy(motif, index, change.perRound)
    case "stitch":
      return restitched(motif, index, change.to, change.from)
    case "group":
      return regrouped(motif, index, change.from, change.to)
    case "terms":
      return inOtherTerms(motif, change.by)
    case "chains":
      return rechained(motif, index, change.from, change.to)
    case "drop-round":
      return dropRound(motif, index)
    case "add-round":
      return addPlainRound(motif, index, mainKind(motif.rounds[index]!))
    default:
      return null
  }
}

function withCount(motif: Motif, index: number, stitches: number, keeps: boolean): Motif | null {
  const by = stitches - countOf(motif, index)
  const following = changeCount(motif, index, by)
  if (!following || !keeps || index === motif.rounds.length - 1) return following
  return changeCount(following, index + 1, -by)
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
function restitched(motif: Motif, index: number, to: StitchKind, from?: StitchKind): Motif | null {
  if (from) return partRestitched(motif, index, from, to)
  const round = motif.rounds[index]!
  const { byKind } = countRound(round)
  const kind = byKind[0]?.kind
  if (byKind.length !== 1 || !kind || kindKey(kind) !== kindKey({ basic: kind.basic })) return null
  const elements = round.elements.map((element): Element => {
    if (element.type !== "stitch") return element
    const { madeOfChains: _, ...rest } = element
    return { ...rest, kind: to }
  })
  const startChain = { chains: turningChains(to.basic), counts: turningChainCounts(to.basic) }
  const changed = round.startChain ? { ...round, elements, startChain } : { ...round, elements }
  return { ...motif, rounds: motif.rounds.map((own, i) => (i === index ? changed : own)) }
}

/** What of a round is worked in one stitch, in another; its starting chain stays, since it may tell what was meant. */
function partRestitched(motif: Motif, index: number, from: StitchKind, to: StitchKind): Motif {
  const elements = motif.rounds[index]!.elements.map(
    (element): Element =>
      element.type === "stitch" && kindKey(element.kind) === kindKey(from)
        ? { ...element, kind: { ...element.kind, basic: to.basic } }
        : element,
  )
  return replaceRound(motif, index, elements)
}

/** Lowest first, as the one terms' names stand for the other ones' next. */
const steps: readonly StitchKind["basic"][] = ["sc", "hdc", "dc", "tr", "dtr", "trtr", "quadtr"]

/**
 * Every stitch as the other terms name it: a UK dc is a US sc, a UK tr a dc, a UK dtr a tr. Null where one has no such
 * name.
 */
function inOtherTerms(motif: Motif, by: 1 | -1): Motif | null {
  const named = new Map<string, StitchKind["basic"]>([["sl st", "sl st"]])
  // sc, dc, tr, dtr ... step along by one; hdc goes with htr, which is a name of the UK terms alone.
  const row = steps.filter((basic) => basic !== "hdc")
  row.forEach((basic, i) => {
    const to = row[i + by]
    if (to) named.set(basic, to)
  })
  let known = true
  const rounds = motif.rounds.map((round) => ({
    ...round,
    elements: round.elements.map((element): Element => {
      if (element.type !== "stitch") return element
      const basic = named.get(element.kind.basic)
      if (!basic) known = false
      return { ...element, kind: { ...element.kind, basic: basic ?? element.kind.basic } }
    }),
  }))
  return known ? { ...motif, rounds } : null
}

/** Null where a later stitch goes into a chain that a run of the new length would not have. */
function rechained(motif: Motif, index: number, from: number, to: number): Motif | null {
  const missed = motif.rounds.some((own) =>
    own.elements.some(
      (element) =>
        element.type === "stitch" &&
        element.anchors.some(
          (anchor) => anchor.at === "chain" && anchor.round === index && anchor.chain >= to,
        ),
    ),
  )
  if (missed) return null
  const elements = motif.rounds[index]!.elements.map(
    (element): Element =>
      element.type === "chain" && element.chains === from ? { ...element, chains: to } : element,
  )
  return replaceRound(motif, index, elements)
}

function countOf(motif: Motif, index: number): number {
  return countRound(motif.rounds[index]!).stitches
}
