// A piece as a ruler tells it: along a side, across the middle, from corner to corner; with verdict, bow and count a side.

import type { Verdict } from "@roundwright/flatness"
import { countRound, type Motif } from "@roundwright/motif"
import { layOut } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { yarnByRound } from "../yarn/stitch-yarn.ts"

export type Along = "side" | "across" | "diagonal"

export interface Sized {
  /** Corner to corner along the edge; null for a round outline. */
  readonly sideMm: number | null
  readonly acrossMm: number
  /** Through the middle from corner to corner; null for a round outline. */
  readonly diagonalMm: number | null
  readonly corners: number
  readonly verdict: Verdict
  readonly bowMm: number | null
  readonly stitchesPerSide: number | null
  readonly stitches: number
  /** In the yarn of one sc. */
  readonly yarnSc: number
}

/** @throws RoundwrightError what `layOut` throws */
export function sizesOf(motif: Motif, gauge: Gauge): Sized {
  const { outline, verdict } = layOut(motif, gauge, { inSpace: false })
  const { corners } = outline
  const { stitches } = countRound(motif.rounds.at(-1)!)
  const cornered = corners > 0
  return {
    sideMm: cornered ? outline.sideMm : null,
    acrossMm: outline.acrossMm,
    diagonalMm: cornered
      ? outline.cornerReachMm + (corners % 2 === 0 ? outline.cornerReachMm : outline.sideReachMm)
      : null,
    corners,
    verdict,
    bowMm: cornered ? outline.bowMm : null,
    stitchesPerSide: cornered ? Math.round(stitches / corners) : null,
    stitches,
    yarnSc: yarnByRound(motif).reduce((sum, one) => sum + one, 0),
  }
}

/** The size that is spoken of; of a round piece its diameter, whatever is asked. */
export function alongOf(
  sized: Pick<Sized, "sideMm" | "acrossMm" | "diagonalMm">,
  along: Along,
): number {
  if (along === "side") return sized.sideMm ?? sized.acrossMm
  if (along === "diagonal") return sized.diagonalMm ?? sized.acrossMm
  return sized.acrossMm
}

/** The same piece larger or smaller, everything else kept. */
export function scaledSizes(sized: Sized, factor: number): Sized {
  const times = (mm: number | null) => (mm === null ? null : factor * mm)
  return {
    ...sized,
    sideMm: times(sized.sideMm),
    acrossMm: factor * sized.acrossMm,
    diagonalMm: times(sized.diagonalMm),
    bowMm: times(sized.bowMm),
  }
}

const alongWords: Readonly<Record<Along, RegExp>> = {
  diagonal:
    /\bdiagonal|\b(?:corner|point|tip)s?\s{0,3}-?\s{0,3}to\s{0,3}-?\s{0,3}(?:corner|point|tip)/i,
  side: /\bsides?\b|\bedge\b|\balong\b/i,
  across: /\bacross\b|\bmiddle\b|\bdiameter\b|\bwide\b|\bflat\s*-?to\s*-?flat/i,
}

/** What a wished size is measured along, from its words; `side to side` goes through the middle. */
export function readAlong(text: string): Along | null {
  if (alongWords.diagonal.test(text)) return "diagonal"
  if (/\bside\s{0,3}-?\s{0,3}to\s{0,3}-?\s{0,3}side/i.test(text)) return "across"
  if (alongWords.side.test(text)) return "side"
  return alongWords.across.test(text) ? "across" : null
}
