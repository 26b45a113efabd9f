// The total at the end of a round, in one style throughout: stitches by kind, then spaces by size.

import { countRound, type Round } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import type { Voice } from "./house-style.ts"
import type { Wording } from "./part.ts"

/** More kinds than this are counted together: a list of them checks nothing at a glance. */
const mostKinds = 4

/** "(24 dc, 4 ch-1 sps, 4 ch-2 sps)". */
export function totalWords(round: Round, voice: Voice, totals: Wording["totals"]): string {
  const { stitches, byKind, spacesBySize } = countRound(round)
  const kinds = new Map<string, number>()
  for (const { kind, count } of byKind) {
    const name = nameInTotal(kind, voice)
    kinds.set(name, (kinds.get(name) ?? 0) + count)
  }
  const apart = kinds.size === 1 || (totals === "by-kind" && kinds.size <= mostKinds)
  const gathered = byKind.some(({ kind }) => kind.gathered)
  const named =
    apart && (totals === "by-kind" || !gathered)
      ? [...kinds].map(([name, count]) => `${count} ${severalOf(name, count)}`)
      : [`${stitches} ${stitches === 1 ? "st" : "sts"}`]
  const spaces = spacesBySize.map(
    ({ chains, count }) => `${count} ch-${chains} ${count === 1 ? "sp" : "sps"}`,
  )
  return `(${[...(stitches > 0 ? named : []), ...spaces].join(", ")})`
}

/** Loops make no other stitch; a gathered one goes by what it is. */
function nameInTotal({ loops: _, ...kind }: StitchKind, voice: Voice): string {
  const { gathered } = kind
  if (gathered === undefined || gathered.how === "together") return voice.name(kind)
  return gathered.how
}

function severalOf(name: string, count: number): string {
  if (count === 1) return name
  return /^(?:cluster|puff|bobble|popcorn|sl st)$/.test(name) ? `${name}s` : name
}
