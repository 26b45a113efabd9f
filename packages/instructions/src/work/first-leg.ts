// A cluster that begins with the starting chain as its first leg.

import type { Anchor } from "@roundwright/motif"
import type { Place, Step } from "../base/tree.ts"
import { stepsInside } from "./main-stitch.ts"
import type { RoundWork } from "./round-work.ts"
import { type ChainStep, startAnchors } from "./start-places.ts"
import { nextSites } from "./work-places.ts"

/** A cluster or popcorn right after the chain, one leg short of the others: the chain is its first leg. */
export function firstLeg(
  work: RoundWork,
  step: ChainStep,
  next: Step | undefined,
): Extract<Step, { do: "work" }> | null {
  if (next?.do !== "work" || !next.stitch.kind.gathered || next.count !== 1) return null
  const { basic, gathered } = next.stitch.kind
  const said = step.countsAs
  // "ch 4 (counts as tr), 2-tr cluster", where all others are of three: the chain is the first of them.
  const asLeg = said?.counts && said.kind?.basic === basic && !said.kind.gathered && !said.chains
  if (said && !(asLeg && namesGathered(work.allSteps, basic, gathered.legs + 1))) return null
  if (step.chains < 2) return null
  const place = next.place
  if (place && place.at === "next" && place.noun.what !== "stitch") return null
  if (place && place.at === "next" && !next.stitch.tog) return null
  const larger = namesGathered(work.allSteps, basic, gathered.legs + 1)
  const alike = !next.stitch.tog
  return larger || alike ? next : null
}

/** "Ch 2, dc in next st, *dc2tog; rep from *": the chain and the stitch after it may be the first of the pairs. */
export function isLegWithNext(work: RoundWork, step: ChainStep, next: Step | undefined): boolean {
  if (next?.do !== "work" || next.count !== 1 || next.stitch.kind.gathered) return false
  if (step.chains < 2) return false
  if (isLegInSame(work, step, next)) return true
  if (next.place?.at !== "next" || next.place.count !== 1) return false
  const { what } = next.place.noun
  return (
    (what === "stitch" || what === "space") &&
    namesGathered(work.allSteps, next.stitch.kind.basic, 2)
  )
}

/** "Ch 3, dc in same sp, *ch 5, 2-dc cluster in next sp; rep from *": the chain and the dc are the first cluster. */
export function isLegInSame(work: RoundWork, step: ChainStep, next: Step | undefined): boolean {
  if (
    next?.do !== "work" ||
    next.count !== 1 ||
    next.stitch.kind.gathered ||
    next.place?.at !== "same"
  )
    return false
  return (
    step.chains >= 2 && !step.countsAs && namesGathered(work.allSteps, next.stitch.kind.basic, 2)
  )
}

/** "Ch 4, tr in next loop, *ch 7, 2-tr cluster over next 2 loops": the chain and the tr are the first of them. */
export function isLegAcross(work: RoundWork, step: ChainStep, next: Step | undefined): boolean {
  if (next?.do !== "work" || next.place?.at !== "next" || next.place.noun.what !== "space")
    return false
  return (
    isLegWithNext(work, step, next) &&
    work.allSteps.some(
      (one) =>
        one.do === "repeat" &&
        one.body.some(
          (part) =>
            part.do === "work" &&
            part.stitch.kind.gathered?.legs === 2 &&
            part.place?.at === "next" &&
            part.place.count === 2,
        ),
    )
  )
}

/** A plain stitch as what is gathered with the chain before it. */
export function besideFirstLeg(step: Extract<Step, { do: "work" }>): typeof step {
  const { kind } = step.stitch
  if (kind.gathered) return step
  return {
    ...step,
    stitch: { kind: { ...kind, gathered: { how: "together", legs: 1 } }, tog: true },
  }
}

function namesGathered(steps: readonly Step[], basic: string, legs: number): boolean {
  return steps.some((step) => {
    if (step.do === "work")
      return step.stitch.kind.basic === basic && step.stitch.kind.gathered?.legs === legs
    const inner = stepsInside(step)
    return inner ? namesGathered(inner, basic, legs) : false
  })
}

/** The work step itself follows and is told that its first leg is there already. */
export function workFirstLeg(work: RoundWork, step: ChainStep): void {
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
