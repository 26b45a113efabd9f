// Repeats: how often a round's sequence comes round, found from the sequence itself and not from
// how it was written.

import { kindKey } from "./counts.ts"
import type { Anchor, Element, Motif, Round } from "./model.ts"
import { anchorRound } from "./places.ts"

/**
 * Rotational order of a round: the largest m such that turning it by 1/m changes nothing, judged on
 * its elements and on how they step along the round below. 1 when it has no repeat.
 */
export function repeatsOf(motif: Motif, roundIndex: number): number {
  const round = motif.rounds[roundIndex]
  if (!round || round.elements.length === 0) return 1
  const signature = round.elements.map((element, index) =>
    elementSignature(motif, round, element, index),
  )
  return signature.length / smallestPeriod(signature)
}

/** Rotational order of the whole piece: the largest m that every round shares. */
export function symmetryOf(motif: Motif): number {
  return motif.rounds.reduce((order, _, index) => commonDivisor(order, repeatsOf(motif, index)), 0)
}

/** Greatest common divisor; commonDivisor(0, n) = n. */
export function commonDivisor(a: number, b: number): number {
  return b === 0 ? a : commonDivisor(b, a % b)
}

function elementSignature(motif: Motif, round: Round, element: Element, index: number): string {
  if (element.type !== "stitch") return `${element.type}${element.chains}`
  const before = previousAnchor(round, index)
  const steps = element.anchors.map((anchor) => step(motif, before, anchor)).join(",")
  return `${kindKey(element.kind)}>${steps}`
}

function previousAnchor(round: Round, index: number): Anchor | null {
  const n = round.elements.length
  for (let back = 1; back <= n; back++) {
    const element = round.elements[(index - back + n) % n]
    if (element?.type === "stitch") return element.anchors.at(-1) ?? null
  }
  return null
}

/** How far the anchor lies along its round from the one before, cyclically. */
function step(motif: Motif, from: Anchor | null, to: Anchor): string {
  if (to.at === "centre") return "centre"
  const inChain = to.at === "chain" ? `.${to.chain}` : ""
  if (!from || from.at === "centre" || from.round !== to.round)
    return `${to.at}${anchorRound(to)}${inChain}`
  const n = motif.rounds[to.round]?.elements.length ?? 1
  return `${to.at}+${(((to.element - from.element) % n) + n) % n}${inChain}`
}

/** Smallest p dividing n with s[i] = s[i+p] cyclically (failure function of Knuth, Morris and Pratt). */
function smallestPeriod(s: readonly string[]): number {
  const n = s.length
  const failure = new Int32Array(n)
  for (let i = 1, k = 0; i < n; i++) {
    while (k > 0 && s[i] !== s[k]) k = failure[k - 1]!
    if (s[i] === s[k]) k += 1
    failure[i] = k
  }
  const period = n - failure[n - 1]!
  return n % period === 0 ? period : n
}
