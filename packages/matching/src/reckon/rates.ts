// What one thing is in another, through all that was told: 2 repeats = 28 stitches = 8 in gives 50 in = 175 stitches = 12.5
// repeats. Facts are links between units; the shortest way from one unit to another counts.

import type { Quantity } from "./read-statement.ts"

export interface Range {
  readonly low: number
  readonly high: number
}

interface Link {
  readonly to: string
  /** How much of `to` one of this is. */
  readonly rate: Range
}

export interface Rates {
  /** How much of each other unit one base unit of this is. */
  from(key: string): ReadonlyMap<string, Range>
  /** Whether a fact tells the one of the other. */
  linked(from: string, to: string): boolean
  /** Facts that tell another rate for two units already linked. */
  readonly contrary: readonly Contrary[]
}

interface Contrary {
  readonly a: string
  readonly b: string
  readonly first: Range
  readonly later: Range
}

/** Fabric is as wide as it is long, so rows do not lead to stitches through its length. */
const throughLength = "fabric"

/** Rates that differ by less are told in rounded figures. */
const alike = 0.01

export function ratesOf(facts: readonly (readonly [Quantity, Quantity])[]): Rates {
  const links = new Map<string, Link[]>()
  const contrary: Contrary[] = []
  const add = (from: Quantity, to: Quantity) => {
    const [a, b] = [baseOf(from), baseOf(to)]
    const rate = { low: b.low / a.high, high: b.high / a.low }
    const own = links.get(from.unit.key) ?? []
    const before = own.find((link) => link.to === to.unit.key)
    if (before) {
      const ratio = middle(rate) / middle(before.rate)
      if (Math.abs(ratio - 1) > alike)
        contrary.push({ a: from.unit.key, b: to.unit.key, first: before.rate, later: rate })
      return
    }
    links.set(from.unit.key, [...own, { to: to.unit.key, rate }])
  }
  for (const [a, b] of facts) {
    if (a.unit.key === b.unit.key) continue
    const before = contrary.length
    add(a, b)
    if (contrary.length === before) add(b, a)
  }
  return {
    contrary,
    linked: (from, to) => links.get(from)?.some((link) => link.to === to) ?? false,
    from: (key) => reached(key, links),
  }
}

export function middle({ low, high }: Range): number {
  return (low + high) / 2
}

export function baseOf({ unit, low, high }: Quantity): Range {
  return { low: low * unit.inBase, high: high * unit.inBase }
}

function reached(from: string, links: ReadonlyMap<string, readonly Link[]>) {
  const found = new Map<string, Range>([[from, { low: 1, high: 1 }]])
  let edge = [from]
  while (edge.length > 0) {
    const next: string[] = []
    for (const key of edge) {
      const own = found.get(key)!
      for (const { to, rate } of links.get(key) ?? []) {
        if (found.has(to)) continue
        if (key === throughLength && key !== from && goesUp(from) !== goesUp(to)) continue
        found.set(to, { low: own.low * rate.low, high: own.high * rate.high })
        next.push(to)
      }
    }
    edge = next
  }
  found.delete(from)
  return found
}

/** Rows and rounds go up the fabric, everything else across it. */
export function goesUp(key: string): boolean {
  return /\b(?:row|round)$/.test(key)
}
