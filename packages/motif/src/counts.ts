// Counting a round: what a maker would count, and how many tops each place below received.

import type { StitchKind } from "@roundwright/stitches"
import type { Anchor, Element, Motif, Round } from "./model.ts"
import { anchorKey } from "./places.ts"

/** Totals of one round. Stitches include a starting chain that counts and gathered tops, once each. */
export interface RoundCount {
  readonly stitches: number
  /** Single chains lying on the edge (picots not included). */
  readonly chains: number
  /** Runs of chains: what the next round can work into as spaces. */
  readonly spaces: number
  readonly picots: number
  readonly byKind: readonly { readonly kind: StitchKind; readonly count: number }[]
  readonly spacesBySize: readonly { readonly chains: number; readonly count: number }[]
}

/** Counts a round's elements. Slip stitches count as stitches only where they stand on the edge as one. */
export function countRound(round: Round): RoundCount {
  let stitches = 0
  let chains = 0
  let spaces = 0
  let picots = 0
  const kinds = new Map<string, { kind: StitchKind; count: number }>()
  const sizes = new Map<number, number>()
  let last: { kind: StitchKind; count: number } | undefined
  let lastKind: StitchKind | undefined
  for (const element of round.elements) {
    if (element.type === "stitch") {
      stitches += 1
      if (element.kind !== lastKind) {
        lastKind = element.kind
        const key = kindKey(lastKind)
        last = kinds.get(key)
        if (!last) {
          last = { kind: lastKind, count: 0 }
          kinds.set(key, last)
        }
      }
      last!.count += 1
    } else if (element.type === "chain") {
      chains += element.chains
      spaces += 1
      sizes.set(element.chains, (sizes.get(element.chains) ?? 0) + 1)
    } else picots += 1
  }
  const spacesBySize = [...sizes]
    .map(([chains, count]) => ({ chains, count }))
    .sort((a, b) => a.chains - b.chains)
  return { stitches, chains, spaces, picots, byKind: [...kinds.values()], spacesBySize }
}

/** Stitches and chains of all rounds together: how large a piece is to be laid out. */
export function stitchesAndChains({ rounds }: Motif): number {
  return rounds.reduce((sum, round) => {
    const { stitches, chains } = countRound(round)
    return sum + stitches + chains
  }, 0)
}

/** A short text that is equal for equal kinds: for maps and comparisons. */
export function kindKey(kind: StitchKind): string {
  const gathered = kind.gathered ? `${kind.gathered.how}${kind.gathered.legs}` : ""
  return `${kind.basic}|${kind.loops ?? ""}|${kind.post ?? ""}|${gathered}`
}

/** The places of earlier rounds a round is worked into, each with the indices of the elements in it, in working order. */
export function workedPlaces(round: Round): Map<string, { anchor: Anchor; elements: number[] }> {
  const places = new Map<string, { anchor: Anchor; elements: number[] }>()
  round.elements.forEach((element, index) => {
    if (element.type !== "stitch") return
    for (const anchor of element.anchors) {
      const key = anchorKey(anchor)
      const place = places.get(key)
      if (!place) places.set(key, { anchor, elements: [index] })
      else if (place.elements.at(-1) !== index) place.elements.push(index)
    }
  })
  return places
}

/** Every stitch stands alone on a stitch of its own, one after the other: no place of such a round holds two. */
export function oneInEach({ elements }: Round): boolean {
  let before = -1
  for (const element of elements) {
    if (element.type !== "stitch") continue
    const [anchor, second] = element.anchors
    if (second || anchor?.at !== "stitch" || anchor.element <= before) return false
    before = anchor.element
  }
  return true
}

/** The element an anchor names, or null for the centre. */
export function anchoredElement(motif: Motif, anchor: Anchor): Element | null {
  if (anchor.at === "centre") return null
  return motif.rounds[anchor.round]?.elements[anchor.element] ?? null
}

/** How many neighbours of each element along its round are chains: 2 for a stitch that stands alone between two loops. */
export function chainsBeside({ elements, closing }: Round): (0 | 1 | 2)[] {
  const along = elements.flatMap(({ type }, k) => (type === "picot" ? [] : [k]))
  const found: (0 | 1 | 2)[] = elements.map(() => 0)
  along.forEach((element, k) => {
    const isChain = (at: number): boolean => {
      const within = closing !== "open" || (at >= 0 && at < along.length)
      const other = along[(at + along.length) % along.length]!
      return within && other !== element && elements[other]!.type === "chain"
    }
    found[element] = (Number(isChain(k - 1)) + Number(isChain(k + 1))) as 0 | 1 | 2
  })
  return found
}
