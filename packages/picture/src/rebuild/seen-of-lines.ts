// Rings as lines tell them, ready for rebuilding: counts with their chances, and the hole in the middle.

import { RoundwrightError } from "@roundwright/numerics"
import type { MeasurementLines, RingLine } from "../read-lines.ts"
import { type RebuildKind, rebuildKinds, type SeenCount, type SeenRing } from "./seen-ring.ts"

export interface SeenPiece {
  readonly rings: readonly SeenRing[]
  readonly holeMm: number
}

/** Of repeats and strands that both were found, the strands are the posts oftener. */
const strandsShare = 0.65

/** @throws RoundwrightError `no-rings`, `no-scale` */
export function seenOfLines(lines: MeasurementLines): SeenPiece {
  if (lines.rings.length === 0)
    throw new RoundwrightError("no-rings", "There is no line of a ring to rebuild from.", {
      hint: "Measure a picture first; its rings are lines such as: Ring 1: to 12 mm; 12 repeats.",
    })
  const rings = [...lines.rings].sort((a, b) => a.number - b.number)
  const unscaled = rings.find(({ toMm }) => toMm === null)
  if (unscaled)
    throw new RoundwrightError(
      "no-scale",
      `Ring ${unscaled.number} does not say in millimetres how far it reaches.`,
      { hint: "Measure the picture once more with one known length: --side 15cm or --across 9cm." },
    )
  // What is not read in the very middle is the hole, or the knot of the start: rounds begin around it.
  const firstRead = rings.findIndex((ring) => countsOf(ring).length > 0)
  const hole = firstRead > 0 ? rings[firstRead - 1]!.toMm! : 0
  const used = firstRead > 0 ? rings.slice(firstRead) : rings
  return {
    holeMm: hole,
    rings: used.map((ring) => ({
      ring: ring.number,
      outerMm: ring.toMm!,
      counts: countsOf(ring),
      stitch: kindOf(ring.stitch),
    })),
  }
}

function countsOf(ring: RingLine): SeenCount[] {
  const { repeats, strands, between, sureness, nextBest } = ring
  if (repeats === null) return []
  if (between !== null) return [{ count: repeats * (between + 1), chance: 1 }]
  // Strands that the reader counted are the posts.
  if (sureness === null && strands !== null) return [{ count: strands, chance: 1 }]
  const chance = sureness ?? 1
  const counts: SeenCount[] =
    strands === null || strands === repeats
      ? [{ count: repeats, chance }]
      : [
          { count: strands, chance: strandsShare * chance },
          { count: repeats, chance: (1 - strandsShare) * chance },
        ]
  return nextBest === null || counts.some(({ count }) => count === nextBest)
    ? counts
    : [...counts, { count: nextBest, chance: Math.max(0.02, 1 - chance) }]
}

function kindOf(stitch: string | null): RebuildKind | undefined {
  return rebuildKinds.find((kind) => kind === stitch)
}
