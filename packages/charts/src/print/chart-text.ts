// What a printed chart holds, round by round: told by its marks themselves when it is drawn, and read back from its file,
// so that a text that was changed after its chart can be held against it.

import { countRound, type Element, type Motif } from "@roundwright/motif"
import { kindName, turningChains } from "@roundwright/stitches"
import type { PrintMark } from "./mark.ts"

/** Symbols of a round by their US names; "ch" for chains outside of what stands for a stitch. */
export type SymbolCounts = ReadonlyMap<string, number>

/** The name of the stitch or chain that a mark stands for; null for joins, slip stitches that lead on, rings and yarn. */
export function namedBy(motif: Motif, { kind, round, element, posts }: PrintMark): string | null {
  const item = motif.rounds[round]?.elements[element]
  if (!item) return null
  if (item.type === "stitch" && (kind === "stitch" || (kind === "start" && posts.length > 0)))
    return kindName(item.kind, "US")
  return item.type === "chain" && kind === "chain" ? "ch" : null
}

/** Larger files are no chart that was drawn here. */
const mostCharacters = 20_000_000

/** Symbols of each round of a chart for print, by the number of the round; null for any other drawing. */
export function symbolsOfChart(svg: string): ReadonlyMap<number, SymbolCounts> | null {
  if (svg.length > mostCharacters) return null
  const rounds = new Map<number, Map<string, number>>()
  let round: Map<string, number> | null = null
  for (const [, number, name] of svg.matchAll(
    /<g data-round="(\d{1,4})">|<g data-st="([^"]{1,40})"/g,
  )) {
    if (number !== undefined) {
      const own = rounds.get(Number(number)) ?? new Map<string, number>()
      rounds.set(Number(number), own)
      round = own
    } else if (round && name !== undefined) round.set(name, (round.get(name) ?? 0) + 1)
  }
  return rounds.size > 0 ? rounds : null
}

/** The same of a motif, as its chart would have them. */
export function symbolsOfMotif({ rounds }: Motif): ReadonlyMap<number, SymbolCounts> {
  return new Map(
    rounds.map((round) => {
      const counts = new Map(
        countRound(round).byKind.map(({ kind, count }) => [kindName(kind, "US"), count]),
      )
      const chains = round.elements.reduce((sum, item) => sum + looseChains(item), 0)
      if (chains > 0) counts.set("ch", chains)
      return [round.number, counts] as const
    }),
  )
}

/** Chains drawn as such: of a loop that a stitch closes those that the stitch does not stand for. */
export function looseChains(item: Element): number {
  if (item.type !== "chain") return 0
  const { chains, closedWith } = item
  return closedWith ? Math.max(0, chains - turningChains(closedWith.basic)) : chains
}
