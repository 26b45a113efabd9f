// What the first round is worked into: a ring of chains, an adjustable loop, one chain counted from
// the hook, or a bought ring; and whether chains skipped at the start stand for a stitch.

import type { Centre } from "@roundwright/motif"
import { mostChains } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"
import type { CountsAs, Step } from "../base/tree.ts"
import { type AlongChain, alongChain, fromFirstChain } from "./along-chain.ts"

export interface Foundation {
  readonly centre: Centre
  /** False when the text does not say and an adjustable loop is assumed. */
  readonly stated: boolean
  /** Steps without those that made the centre. */
  readonly steps: readonly Step[]
  /** Chains skipped before the chain worked into; null when not started so. */
  readonly skipped: {
    readonly chains: number
    readonly countsAs: CountsAs | null
    /** The words that say how they count. */
    readonly told?: Extract<Step, { do: "note-counts" }>
  } | null
  /** Set when the first round goes along a chain instead of into a centre. */
  readonly along?: AlongChain
}

/** @param solid the round speaks of a bought ring or cord */
export function readFoundation(steps: readonly Step[], solid: boolean): Foundation {
  const rest = [...steps]
  const at = rest.findIndex((step) => step.do !== "mode" && step.do !== "turn")
  const first = rest[at]
  if (first?.do === "ring") {
    rest.splice(at, 1)
    return { centre: { kind: "adjustable-ring" }, stated: true, steps: rest, skipped: null }
  }
  if (first?.do === "picot" && first.every === undefined) {
    // "ch 10, sl st in first ch" at the very start closes a ring.
    rest.splice(at, 1)
    const chains = Math.min(first.chains, mostChains)
    return { centre: { kind: "chain-ring", chains }, stated: true, steps: rest, skipped: null }
  }
  if (first?.do === "chain") {
    for (let i = at + 1; i < rest.length; i++) rest[i] = fromHook(rest[i]!, first.chains)
    const next = rest[at + 1]
    const chains = Math.min(first.chains, mostChains)
    if (
      next?.do === "join" &&
      (next.ring || next.place === null || next.place.at !== "same") &&
      chains > 0
    ) {
      rest.splice(at, 2)
      return { centre: { kind: "chain-ring", chains }, stated: true, steps: rest, skipped: null }
    }
    if (next?.do === "slip" && chains > 0) {
      rest.splice(at, 2)
      return { centre: { kind: "chain-ring", chains }, stated: true, steps: rest, skipped: null }
    }
    const nth = hookChain(rest.slice(at + 1))
    const along = alongChain(rest.slice(at + 1), chains)
    if (along) {
      rest.splice(at, 1)
      const skipped =
        nth !== null && nth > 1 ? { chains: nth - 1, countsAs: first.countsAs ?? null } : null
      return {
        centre: { kind: "single-chain", chains },
        stated: true,
        steps: fromFirstChain(rest),
        skipped,
        along,
      }
    }
    if (rest.length === 1)
      // Nothing but chains: what comes next is worked on them.
      return { centre: { kind: "single-chain", chains }, stated: true, steps: [], skipped: null }
    if (nth !== null) {
      rest.splice(at, 1)
      const noteAt = rest.findIndex((step) => step.do === "note-counts")
      const note = rest[noteAt]
      if (note?.do === "note-counts") rest.splice(noteAt, 1)
      const countsAs = note?.do === "note-counts" ? note.countsAs : (first.countsAs ?? null)
      return {
        centre: { kind: "single-chain", chains },
        stated: true,
        steps: rest,
        skipped: {
          chains: nth - 1,
          countsAs,
          ...(note?.do === "note-counts" ? { told: note } : {}),
        },
      }
    }
  }
  const ring = ringNamed(rest)
  if (ring === "adjustable")
    return { centre: { kind: "adjustable-ring" }, stated: true, steps: rest, skipped: null }
  if (solid || ring === "solid")
    return { centre: { kind: "solid-ring" }, stated: true, steps: rest, skipped: null }
  const intoChain = worksIntoFirstChain(rest)
  if (intoChain)
    return { centre: { kind: "single-chain", chains: 2 }, stated: true, steps: rest, skipped: null }
  const nth = hookChain(rest)
  if (nth !== null)
    return {
      centre: { kind: "single-chain", chains: nth },
      stated: true,
      steps: rest,
      skipped: { chains: nth - 1, countsAs: null },
    }
  return {
    centre: { kind: "adjustable-ring" },
    stated: false,
    steps: rest.map(intoRing),
    skipped: null,
  }
}

/** "8 dc in the first loop", where nothing has been made: the loop is the one it begins with. */
function intoRing(step: Step): Step {
  if (step.do !== "work" && step.do !== "group") return step
  const { place } = step
  if (place?.at !== "next" || (place.noun.what !== "space" && place.noun.what !== "gap"))
    return step
  if (place.noun.size !== undefined || place.count > 1) return step
  return { ...step, place: { start: place.start, end: place.end, at: "ring" } }
}

/** "6 sc in 2nd st of chain": counted from the hook, the chain being all there is. */
function fromHook(step: Step, chains: number): Step {
  if (step.do !== "work" && step.do !== "group") return step
  const { place } = step
  if (place?.at !== "next" || place.noun.what !== "chain" || typeof place.pick !== "number")
    return step
  return {
    ...step,
    // The first chain made is the last from the hook.
    place: {
      start: place.start,
      end: place.end,
      at: "hook-chain",
      nth: place.pick === 1 ? chains : place.pick,
    },
  }
}

/** How the ring worked into is made, where its place says so ("in magic ring"). */
function ringNamed(steps: readonly Step[]): "adjustable" | "solid" | null {
  for (const step of steps) {
    if ((step.do === "work" || step.do === "group") && step.place?.at === "ring")
      return step.place.made ?? null
    const inner = step.do === "repeat" ? step.body : step.do === "group" ? step.steps : null
    const found = inner ? ringNamed(inner) : null
    if (found !== null) return found
  }
  return null
}

/** Which chain from the hook the first stitch goes into; null when it goes elsewhere, or a chain of the round comes before it. */
function hookChain(steps: readonly Step[]): number | null {
  for (const step of steps) {
    if (step.do === "work" || step.do === "group" || step.do === "slip")
      return step.place?.at === "hook-chain" ? step.place.nth : null
    if (step.do === "chain") return null
    if (step.do === "repeat") return hookChain(step.body)
  }
  return null
}

function worksIntoFirstChain(steps: readonly Step[]): boolean {
  return steps.some(
    (step) =>
      step.do === "work" &&
      step.place?.at === "next" &&
      step.place.noun.what === "chain" &&
      step.place.order === "first",
  )
}

/** A run of chains longer than any piece begins with. */
export function tooManyChains(steps: readonly Step[]): Finding | null {
  const large = steps.find((step) => step.do === "chain" && step.chains > mostChains)
  if (!large) return null
  return {
    severity: "error",
    code: "too-many-chains",
    start: large.start,
    end: large.end,
    message: `More than ${mostChains.toLocaleString("en")} chains in one run are not worked.`,
    hint: "Look at the number.",
  }
}
