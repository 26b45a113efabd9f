// The chain at the start of a round: whether it stands for a stitch, for a stitch and a space, for
// the first leg of a cluster, for nothing but height, or is a run of chains on the edge.

import {
  type BasicStitch,
  type StitchKind,
  stitchForTurningChain,
  turningChains,
} from "@roundwright/stitches"
import { stepsWithin } from "../base/steps-within.ts"
import type { CountsAs, Noun, Step } from "../base/tree.ts"
import { firstLeg, isLegAcross, isLegInSame, isLegWithNext, workFirstLeg } from "./first-leg.ts"
import { firstBasic } from "./main-stitch.ts"
import { move } from "./move-start.ts"
import type { RoundWork } from "./round-work.ts"
import { type ChainStep, leaveStart, startAnchors } from "./start-places.ts"

/** True for the first thing a round makes, outside repeats. */
export function isStartChain(work: RoundWork, step: ChainStep): boolean {
  return (
    work.elements.length === 0 &&
    work.repeatDepth === 0 &&
    work.startChain === undefined &&
    step.chains > 0 &&
    step.chains <= 30
  )
}

export function workStartChain(
  work: RoundWork,
  step: ChainStep,
  steps: readonly Step[],
  i: number,
): void {
  if (step.place?.at === "same" && work.current === null && work.index > 0)
    work.current = work.startSite
  const following = steps[i + 1]
  moveToSameSpace(work, following)
  if (turnsBack(following)) {
    // A leaf or point right at the start of the round.
    work.addChains(step.chains, step)
    return
  }
  const even = startsEvenRound(steps.slice(i + 1))
  const inSame = isLegInSame(work, step, following) || isLegAcross(work, step, following)
  const known =
    step.countsAs ??
    statedForAll(work, step) ??
    (even || inSame ? undefined : saidBefore(work, step))
  const gathered = following?.do === "work" && following.stitch.kind.gathered !== undefined
  if (known?.tog && gathered) {
    workFirstLeg(work, step)
    return
  }
  if (firstLeg(work, step, following)) {
    workFirstLeg(work, step)
    return
  }
  if (known) {
    if (!known.counts) {
      doesNotCount(work, step)
      return
    }
    if (known.space === step.chains && !known.kind) {
      // "ch 5 (counts as first ch-5 sp)": the round begins with a loop from the join.
      leaveStart(work)
      onTheEdge(work, step)
      return
    }
    standsFor(work, step, known)
    return
  }
  const usual = even ? "does-not-count" : inSame ? "leg" : usualMeaning(work, step, steps[i + 1])
  const leg = isLegWithNext(work, step, following)
  const meanings = (["counts", "does-not-count", "edge", "leg"] as const).filter(
    (meaning) => possible(step, meaning) && (meaning !== "leg" || leg),
  )
  const ordered = [usual, ...meanings.filter((meaning) => meaning !== usual)]
  const taken = work.choices.take(step.chains === 1 ? "single-start-chain" : "start-chain", ordered)
  if (taken === "counts") standsFor(work, step, {})
  else if (taken === "leg") workFirstLeg(work, step)
  else if (taken === "edge") onTheEdge(work, step)
  else doesNotCount(work, step)
}

function onTheEdge(work: RoundWork, step: ChainStep): void {
  work.startChain = { chains: step.chains, counts: false }
  work.addChains(step.chains, step)
  work.startChain = undefined
}

/** "sc in loop, ch 4 (counts as tr)": the first sc and the chains on it are the first tr together. */
export function raisesFirst(
  work: RoundWork,
  step: ChainStep,
  following: Step | undefined,
): boolean {
  const [first] = work.elements
  const joined = step.countsAs ? null : joinedOnFirst(work, step, following)
  const kind = joined ?? (step.countsAs?.counts ? step.countsAs.kind : undefined)
  if (!kind || step.countsAs?.tog || work.elements.length !== 1 || work.repeatDepth > 0)
    return false
  if (first?.type !== "stitch" || first.madeOfChains !== undefined || work.inPlace) return false
  if (turningChains(first.kind.basic) > 1 || first.kind.gathered || first.anchors.length !== 1)
    return false
  work.elements[0] = {
    type: "stitch",
    kind,
    anchors: first.anchors,
    madeOfChains: step.chains - (step.countsAs?.chains ?? 0),
  }
  work.startChain = { chains: step.chains, counts: true }
  if (step.countsAs?.chains) work.addChains(step.countsAs.chains, step)
  return true
}

/** "Sc in sp, ch 4, 2 tr in same sp, ..., sl st in 4th st of ch-4": nothing says so, and yet it is the first tr. */
function joinedOnFirst(
  work: RoundWork,
  step: ChainStep,
  following: Step | undefined,
): StitchKind | null {
  if (following?.do !== "work" || following.place?.at !== "same" || following.count < 2) return null
  const { basic, gathered } = following.stitch.kind
  if (gathered || turningChains(basic) < 2 || turningChains(basic) !== step.chains) return null
  return joinedTo(work.allSteps) === "chain" ? { basic } : null
}

/** "3 dc in each sp around", "(2 dc, ch 1, 2 dc) in next sp": the space the round begins in is the first of them. */
function spacesFilled(steps: readonly Step[]): boolean {
  const nouns = steps.flatMap(nounsWorkedInto)
  return nouns.length > 0 && nouns.every(({ what }) => what === "space" || what === "corner")
}

function nounsWorkedInto(step: Step): readonly Noun[] {
  if (step.do === "repeat") return step.body.flatMap(nounsWorkedInto)
  if (step.do === "pass") return step.cases.flatMap(nounsWorkedInto)
  if (step.do !== "work" && step.do !== "group") return []
  if (step.place?.at === "each") return step.place.nouns
  if (step.place?.at === "next") return [step.place.noun]
  return []
}

/** "Join to 3rd ch. Ch 3, 2 dc in same sp": nothing led to a space, yet the round begins in the next one. */
export function moveToSameSpace(work: RoundWork, following: Step | undefined): void {
  if (following?.do !== "work" && following?.do !== "group") return
  const { place } = following
  const { edge } = work.main
  if (place?.at !== "same" || !/^(?:space|corner)$/.test(place.noun.what)) return
  if (work.startSite?.anchor.at !== "stitch" || work.inPlace || work.startPassed) return
  if (work.used.length > 0 || !edge.cells.some((cell) => cell.type === "chain")) return
  // "In same space" is also said for "in the same place".
  if (
    place.noun.size === undefined &&
    !place.noun.corner &&
    work.choices.take(
      "same-space",
      spacesFilled(work.allSteps) ? ["space", "place"] : ["place", "space"],
    ) === "place"
  )
    return
  move(work, { ...place, at: "next", count: 1 }, false)
  work.find({
    severity: "note",
    code: "begins-in-space",
    start: place.start,
    end: place.end,
    message: 'Nothing leads to a space before "same sp"; the round is begun in the next one.',
    hint: 'Write "sl st to next sp" first.',
  })
}

function statedForAll(work: RoundWork, step: ChainStep): CountsAs | undefined {
  const basic = firstBasic(work.allSteps)
  if (step.chains === 1 && !work.shared.startCounts.has(1)) return undefined
  // "(ch 3, 2 tr) in same st, (2 tr, ch 3, sl st) in next st": the chains of a petal are no start.
  if (work.inPlace && makesChains(otherSteps(work, step), step.chains)) return undefined
  const stated = work.shared.startCounts.get(step.chains) ?? work.shared.startCounts.get(0)
  if (!stated || basic === null) return stated
  return stated
}

/** The steps of the round without the one given. */
function otherSteps(work: RoundWork, step: ChainStep): readonly Step[] {
  const without = (steps: readonly Step[]): readonly Step[] =>
    steps
      .filter((one) => one !== step)
      .map((one) => (one.do === "group" ? { ...one, steps: without(one.steps) } : one))
  return without(work.allSteps)
}

/** What an earlier round said of as many chains, where this round's stitch and join do not speak against it. */
function saidBefore(work: RoundWork, step: ChainStep): CountsAs | undefined {
  const said = work.shared.saidCounts.get(step.chains)
  if (!said || step.chains < 2) return undefined
  const join = joinedTo(work.allSteps)
  if (!said.counts) return join === "chain" ? undefined : said
  if (join === "stitch" || said.kind?.basic !== mainAfter(work, step)) return undefined
  if (said.chains !== undefined && !makesChains(work.allSteps, said.chains)) return undefined
  return said
}

function possible(step: ChainStep, meaning: string): boolean {
  return meaning !== "counts" || step.chains >= 1
}

/** "Ch 2, 12 dc in ring, join to ch 2": lower than the stitch, and twelve come out even without it. */
function isLowStart(work: RoundWork, step: ChainStep, needed: number): boolean {
  const [only, ...others] = work.allSteps.filter(({ do: what }) => what === "work")
  if (work.index > 0 || step.chains !== 2 || needed < 3) return false
  return (
    only?.do === "work" && others.length === 0 && evenRings.some((ring) => only.count % ring === 0)
  )
}

/** Stitches that makers begin with. */
const evenRings = [6, 8, 10]

/** What such a chain usually is: the join and the round's stitch tell. */
function usualMeaning(
  work: RoundWork,
  step: ChainStep,
  next: Step | undefined,
): "counts" | "does-not-count" | "edge" {
  const join = joinedTo(work.allSteps)
  const basic = mainAfter(work, step)
  const needed = turningChains(basic)
  if (step.chains === 1) return "does-not-count"
  if (join === "chain") return isLowStart(work, step, needed) ? "does-not-count" : "counts"
  if (work.inPlace && step.chains < needed) return "edge"
  if (needed <= 1) return next?.do === "work" || work.inPlace ? "edge" : "does-not-count"
  if (join === "stitch" && step.chains <= needed) return "does-not-count"
  // Three chains before a treble stand for it as they do for the UK treble, which it may well be.
  if (step.chains < (needed > 3 ? needed - 1 : needed)) return "does-not-count"
  return step.chains === 2 ? "does-not-count" : "counts"
}

/**
 * "ch 2, 2 hdc in each st around": were the chain one of them, the first stitch would be left with one
 * and all others have two; so it gives height only, whatever the round is joined to.
 */
function startsEvenRound(following: readonly Step[]): boolean {
  const next = following.find((step) => step.do !== "mode" && step.do !== "note-counts")
  if (next?.do !== "work" || next.place?.at !== "each") return false
  const { until, every, pick, nouns } = next.place
  if (until.kind !== "around" || every !== undefined || pick !== undefined) return false
  if (nouns.some((noun) => noun.what !== "stitch")) return false
  return next.stitch.shape === "increase" || (next.count > 1 && !next.stitch.kind.gathered)
}

function turnsBack(step: Step | undefined): boolean {
  if (step?.do !== "work" && step?.do !== "group" && step?.do !== "slip") return false
  return step.place?.at === "own-chain" || step.place?.at === "hook-chain"
}

/** Whether the round is joined to a chain or to a stitch, as far as it says. */
export function joinedTo(steps: readonly Step[]): "chain" | "stitch" | null {
  for (const step of steps) {
    if (step.do === "slip" && step.place?.at === "made" && step.place.which === "first") {
      const { what } = step.place.noun
      if (what === "chain" || what === "space") return "chain"
    }
    const onFirst = step.do === "slip" && step.place?.at === "next" && step.place.order === "first"
    if (onFirst && step.place?.at === "next" && step.place.noun.kind) return "stitch"
    if (step.do !== "join") continue
    if (step.chain !== undefined) return "chain"
    if (step.place?.at === "made" || step.place?.at === "next") {
      const noun = step.place.noun
      if (noun.what === "space" || noun.what === "chain") return "chain"
      if (noun.what === "stitch" && noun.kind) return "stitch"
      return null
    }
  }
  return null
}

/**
 * Chains that stand for the stitch itself: as many as it is tall, and those beyond are a space. Where the
 * round makes no other space of that size they are only a generous start ("ch 3" before hdc).
 */
function usualHeight(work: RoundWork, step: ChainStep, kind: StitchKind): number {
  const needed = turningChains(kind.basic)
  const rest = step.chains - needed
  return rest > 0 && !makesChains(work.allSteps, rest) ? step.chains : needed
}

function makesChains(steps: readonly Step[], chains: number): boolean {
  return steps.some((step) => {
    if (step.do === "chain") return step.chains === chains
    if (step.do === "work") return step.between === chains
    return makesChains(stepsWithin(step), chains)
  })
}

/** The chain of the start that the round is joined to, counted from its foot: as tall as the stitch it stands for. */
function joinedAt(steps: readonly Step[], chains: number): number | null {
  for (const step of steps) {
    if (step.do !== "join" && step.do !== "slip") continue
    if (step.do === "join" && step.chain !== undefined)
      return step.chain <= chains ? step.chain : null
    if (step.place?.at !== "made" || step.place.which !== "first") continue
    const { noun } = step.place
    // "4 ch, ..., sl st to 2 ch at beg": as high as that, and the others are a space.
    const size = noun.what === "chain" ? (noun.size ?? 0) : 0
    if (size > 1 && size < chains && makesChains(steps, chains - size)) return size
    if (noun.what === "chain" || (noun.what === "space" && noun.size === chains)) return chains
  }
  return null
}

function mainAfter(work: RoundWork, step: ChainStep): BasicStitch {
  const found = firstBasic(work.allSteps)
  return found ?? stitchForTurningChain(step.chains) ?? "dc"
}

function doesNotCount(work: RoundWork, step: ChainStep): void {
  work.startChain = { chains: step.chains, counts: false }
}

/** The chain as the first stitch, its chains above that stitch's height as the first space. */
function standsFor(
  work: RoundWork,
  step: ChainStep,
  as: { kind?: StitchKind; chains?: number },
): void {
  const kind = as.kind ?? usualKind(work, step)
  const own =
    as.chains === undefined
      ? Math.min(step.chains, joinedAt(work.allSteps, step.chains) ?? usualHeight(work, step, kind))
      : Math.max(1, step.chains - as.chains)
  const rest = as.chains ?? (as.kind?.gathered ? 0 : Math.max(0, step.chains - own))
  const anchors = startAnchors(work, step)
  const legs = kind.gathered?.legs ?? 1
  const full = kind.gathered
    ? Array.from({ length: legs }, (_, i) => anchors[Math.min(i, anchors.length - 1)]!)
    : [anchors[0]!]
  work.startChain = { chains: step.chains, counts: true }
  work.stitch(clustered(kind), full, step, { madeOfChains: own })
  if (rest > 0) work.addChains(rest, step)
}

function clustered(kind: StitchKind): StitchKind {
  return kind.gathered?.how === "together"
    ? { ...kind, gathered: { ...kind.gathered, how: "cluster" } }
    : kind
}

function usualKind(work: RoundWork, step: ChainStep): StitchKind {
  const basic = mainAfter(work, step)
  if (turningChains(basic) <= step.chains && turningChains(basic) > 1) return { basic }
  const byChains = stitchForTurningChain(step.chains)
  return { basic: byChains ?? basic }
}
