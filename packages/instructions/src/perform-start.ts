// The chain at the start of a round: whether it stands for a stitch, for a stitch and a space, for
// the first leg of a cluster, for nothing but height, or is a run of chains on the edge.

import type { Anchor } from "@roundwright/motif"
import {
  type BasicStitch,
  type StitchKind,
  stitchForTurningChain,
  turningChains,
} from "@roundwright/stitches"
import { firstBasic } from "./main-stitch.ts"
import type { RoundWork } from "./round-work.ts"
import type { CountsAs, Place, Step } from "./tree.ts"
import { nextSites } from "./work-places.ts"

type ChainStep = Extract<Step, { do: "chain" }>

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
  const known = step.countsAs ?? statedForAll(work, step)
  const following = steps[i + 1]
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
    standsFor(work, step, known)
    return
  }
  const usual = usualMeaning(work, step, steps[i + 1])
  const meanings = (["counts", "does-not-count", "edge"] as const).filter((meaning) =>
    possible(step, meaning),
  )
  const ordered = [usual, ...meanings.filter((meaning) => meaning !== usual)]
  const taken = work.choices.take(step.chains === 1 ? "single-start-chain" : "start-chain", ordered)
  if (taken === "counts") standsFor(work, step, {})
  else if (taken === "edge") {
    work.startChain = { chains: step.chains, counts: false }
    work.addChains(step.chains, step)
    work.startChain = undefined
  } else doesNotCount(work, step)
}

function statedForAll(work: RoundWork, step: ChainStep): CountsAs | undefined {
  const basic = firstBasic(work.allSteps)
  if (step.chains === 1 && !work.shared.startCounts.has(1)) return undefined
  const stated = work.shared.startCounts.get(step.chains) ?? work.shared.startCounts.get(0)
  if (!stated || basic === null) return stated
  return stated
}

function possible(step: ChainStep, meaning: string): boolean {
  return meaning !== "counts" || step.chains >= 1
}

/** What such a chain usually is: the join and the round's stitch tell. */
function usualMeaning(
  work: RoundWork,
  step: ChainStep,
  next: Step | undefined,
): "counts" | "does-not-count" | "edge" {
  const join = joinIn(work.allSteps)
  const basic = mainAfter(work, step)
  const needed = turningChains(basic)
  if (step.chains === 1) return "does-not-count"
  if (join === "chain") return "counts"
  if (work.inPlace && step.chains < needed) return "edge"
  if (needed <= 1) return next?.do === "work" || work.inPlace ? "edge" : "does-not-count"
  if (join === "stitch" && step.chains <= needed) return "does-not-count"
  if (step.chains < needed) return "does-not-count"
  return step.chains === 2 ? "does-not-count" : "counts"
}

/** Whether the round is joined to a chain or to a stitch, as far as it says. */
function joinIn(steps: readonly Step[]): "chain" | "stitch" | null {
  for (const step of steps) {
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
      ? Math.min(step.chains, turningChains(kind.basic))
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

/** Where the first stitch stands: the place of the join, slip or group, which is then used. */
function startAnchors(work: RoundWork, step: ChainStep): Anchor[] {
  if (work.inPlace) return [...work.inPlace]
  const ring = step.place?.at === "ring" || work.main.edge.round < 0
  if (ring && work.main.edge.size === 0) return [{ at: "centre" }]
  if (ring) {
    // A ring worked chain by chain: the chain stands on the first of them.
    return passesChains(work.allSteps) ? [takeCell(work)] : [{ at: "centre" }]
  }
  const site = work.startSite
  if (!site) return [{ at: "centre" }]
  const cell =
    work.main.edge.cells[
      ((site.from % work.main.edge.size) + work.main.edge.size) % work.main.edge.size
    ]
  const moved = work.used.some((use) => use.use === "slipped")
  if (cell?.type === "chain" && !moved && !work.startPassed) {
    if (passesChains(work.allSteps)) return [takeCell(work)]
    return [lastTop(work)]
  }
  if (cell?.type === "chain" && passesChains(work.allSteps) && !work.startPassed)
    return [takeCell(work)]
  work.use(work.main, site, "worked")
  work.main.at = Math.max(work.main.at, site.to)
  work.current = site
  return [site.anchor]
}

/** The round goes over chains one by one ("dc in each st and ch"). */
function passesChains(steps: readonly Step[]): boolean {
  return steps.some((step) => {
    const cases =
      step.do === "pass" ? step.cases : step.do === "work" || step.do === "group" ? [step] : []
    return cases.some(
      (part) => part.place?.at === "each" && part.place.nouns.some((noun) => noun.what === "chain"),
    )
  })
}

function takeCell(work: RoundWork): Anchor {
  const { main } = work
  const index = ((main.at % main.edge.size) + main.edge.size) % main.edge.size
  const site = { from: main.at, to: main.at + 1, anchor: main.edge.anchorAt(index, false) }
  work.use(main, site, "worked")
  work.startTaken = false
  main.at += 1
  work.current = site
  return site.anchor
}

/** The top the hook stands on where the round before simply ran on: its last stitch. */
function lastTop(work: RoundWork): Anchor {
  const { edge } = work.main
  for (let index = edge.size - 1; index >= 0; index--)
    if (edge.cells[index]?.type === "stitch") return edge.anchorAt(index, false)
  return edge.anchorAt(0, true)
}

/** A cluster or popcorn right after the chain, one leg short of the others: the chain is its first leg. */
function firstLeg(
  work: RoundWork,
  step: ChainStep,
  next: Step | undefined,
): Extract<Step, { do: "work" }> | null {
  if (next?.do !== "work" || !next.stitch.kind.gathered || next.count !== 1) return null
  if (step.countsAs) return null
  const { basic, gathered } = next.stitch.kind
  if (step.chains < 2) return null
  const place = next.place
  if (place && place.at === "next" && place.noun.what !== "stitch") return null
  if (place && place.at === "next" && !next.stitch.tog) return null
  const larger = namesGathered(work.allSteps, basic, gathered.legs + 1)
  const alike = !next.stitch.tog
  return larger || alike ? next : null
}

function namesGathered(steps: readonly Step[], basic: string, legs: number): boolean {
  return steps.some((step) => {
    if (step.do === "work")
      return step.stitch.kind.basic === basic && step.stitch.kind.gathered?.legs === legs
    const inner =
      step.do === "group"
        ? step.steps
        : step.do === "repeat"
          ? step.body
          : step.do === "pass"
            ? step.cases
            : null
    return inner ? namesGathered(inner, basic, legs) : false
  })
}

/** The work step itself follows and is told that its first leg is there already. */
function workFirstLeg(work: RoundWork, step: ChainStep): void {
  work.startChain = { chains: step.chains, counts: true }
  work.pendingLeg = { chains: step.chains, anchors: startAnchors(work, step) }
}

/** Finishes a gathered stitch whose first leg is the starting chain. */
export function workWithFirstLeg(work: RoundWork, step: Extract<Step, { do: "work" }>): void {
  const leg = work.pendingLeg!
  work.pendingLeg = null
  const kind = step.stitch.kind
  const tog = step.stitch.tog
  const anchors: Anchor[] = [...leg.anchors]
  const place: Place | null = step.place
  if (work.inPlace)
    anchors.push(...Array.from({ length: kind.gathered?.legs ?? 1 }, () => work.inPlace![0]!))
  else if (place?.at === "next" && tog) {
    const { sites, position } = nextSites(work, place)
    for (const site of sites) work.use(position, site, "worked")
    work.current = sites[sites.length - 1] ?? work.current
    anchors.push(...sites.map((site) => site.anchor))
  }
  const legs = (kind.gathered?.legs ?? 1) + (tog ? 1 : 0)
  while (anchors.length < legs) anchors.push(anchors[anchors.length - 1]!)
  const one = anchors.every((anchor) => anchor === anchors[0])
  const how = tog ? (one ? "cluster" : "together") : (kind.gathered?.how ?? "cluster")
  work.stitch(
    { ...kind, gathered: { how, legs: Math.max(2, Math.min(legs, anchors.length)) } },
    anchors.slice(0, legs),
    step,
    { madeOfChains: leg.chains },
  )
}
