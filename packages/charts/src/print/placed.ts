// Where things came to stand in the chart: every element of every round with the places of its top or of its chains.

import type { Anchor, Motif } from "@roundwright/motif"
import { wrapped } from "./rings.ts"

export interface PlacedItem {
  readonly angle: number
  readonly radius: number
}

export class PlacedRounds {
  private readonly rounds: Map<number, PlacedItem[]>[] = []
  private readonly backwards: boolean[] = []

  begin(backwards: boolean): void {
    this.rounds.push(new Map())
    this.backwards.push(backwards)
  }

  /** Chains of a run counterclockwise, as they are added. */
  add(element: number, item: PlacedItem): void {
    const round = this.rounds.at(-1)!
    round.set(element, [...(round.get(element) ?? []), item])
  }

  of(round: number, element: number): readonly PlacedItem[] {
    return this.rounds[round]?.get(element) ?? []
  }

  isBackwards(round: number): boolean {
    return this.backwards[round] ?? false
  }

  /** The element itself, or for a picot, which has no place of its own, the nearest before it. */
  near(motif: Motif, round: number, element: number): readonly PlacedItem[] {
    const { elements } = motif.rounds[round]!
    let at = element
    for (let tried = 0; tried < elements.length; tried++) {
      const found = this.of(round, at)
      if (found.length > 0) return found
      at = (at - 1 + elements.length) % elements.length
    }
    return []
  }

  /** The middle of what an anchor names, and half the angle it takes up; null for the centre. */
  anchor(motif: Motif, anchor: Anchor): { angle: number; radius: number; half: number } | null {
    if (anchor.at === "centre") return null
    const own = this.near(motif, anchor.round, anchor.element)
    if (own.length === 0) return null
    if (anchor.at === "chain") {
      const k = this.isBackwards(anchor.round) ? own.length - 1 - anchor.chain : anchor.chain
      const chain = own[Math.max(0, Math.min(own.length - 1, k))]!
      return { ...chain, half: 0 }
    }
    if (anchor.at === "between") {
      const { elements } = motif.rounds[anchor.round]!
      const next = this.near(motif, anchor.round, (anchor.element + 1) % elements.length)
      const a = this.isBackwards(anchor.round) ? own[0]! : own.at(-1)!
      const b = (this.isBackwards(anchor.round) ? next.at(-1) : next[0]) ?? a
      return {
        angle: a.angle + wrapped(b.angle - a.angle) / 2,
        radius: Math.min(a.radius, b.radius),
        half: 0,
      }
    }
    const first = own[0]!
    const last = own.at(-1)!
    const span = wrapped(last.angle - first.angle)
    const radius = own.reduce((sum, one) => sum + one.radius, 0) / own.length
    return { angle: first.angle + span / 2, radius, half: Math.abs(span) / 2 }
  }
}
