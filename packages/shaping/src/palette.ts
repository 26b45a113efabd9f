// The stitches a search may use, lowest first, with their sizes as plain arrays for its inner loop.

import { listed } from "@roundwright/instructions"
import { RoundwrightError } from "@roundwright/numerics"
import {
  chainSize,
  type Gauge,
  kindName,
  type StitchKind,
  sizeOf,
  type Terms,
} from "@roundwright/stitches"

export interface Palette {
  /** From the lowest to the tallest. */
  readonly kinds: readonly StitchKind[]
  readonly heightMm: Float64Array
  readonly widthMm: Float64Array
  readonly chainMm: number
  /** Whether the size of each is extrapolated. */
  readonly extrapolated: readonly boolean[]
  /** Terms in which its stitches are told of. */
  readonly terms: Terms
}

/** The stitches most makers know by heart; taller ones on request. */
export const usualStitches: readonly StitchKind[] = [
  { basic: "sc" },
  { basic: "hdc" },
  { basic: "dc" },
  { basic: "tr" },
]

/** @throws RoundwrightError `no-stitches` when the list is empty, `slip-stitch` or `decrease-in-list` when
 *   it holds one */
export function paletteOf(
  stitches: readonly StitchKind[],
  gauge: Gauge,
  terms: Terms = "US",
): Palette {
  checkStitches(stitches, terms)
  const names = new Set<string>()
  const unique = stitches.filter((kind) => {
    const name = kindName(kind)
    return names.has(name) ? false : names.add(name)
  })
  const sized = unique
    .map((kind) => ({ kind, size: sizeOf(kind, gauge, { turned: false }) }))
    .sort((a, b) => a.size.heightMm - b.size.heightMm)
  return {
    kinds: sized.map(({ kind }) => kind),
    heightMm: Float64Array.from(sized, ({ size }) => size.heightMm),
    widthMm: Float64Array.from(sized, ({ size }) => size.widthMm),
    chainMm: chainSize(gauge).lengthMm,
    extrapolated: sized.map(({ size }) => size.provenance === "extrapolated"),
    terms,
  }
}

/**
 * Stitches that can make a round.
 * @param terms in which the message names stitches
 * @throws RoundwrightError `no-stitches`, `slip-stitch`, `decrease-in-list`
 */
export function checkStitches(stitches: readonly StitchKind[], terms: Terms = "US"): void {
  const usual = usualStitches.map((kind) => kindName(kind, terms))
  if (stitches.length === 0)
    throw new RoundwrightError("no-stitches", "No stitch is allowed.", {
      hint: `Name at least one stitch, such as ${listed(usual)}.`,
    })
  const slip = stitches.find((kind) => kind.basic === "sl st")
  if (slip)
    throw new RoundwrightError(
      "slip-stitch",
      "Slip stitches have no height to shape a round with.",
      {
        hint: `Take ${usual[0]} as the lowest stitch.`,
      },
    )
  const gathered = stitches.find((kind) => kind.gathered?.how === "together")
  if (gathered)
    throw new RoundwrightError(
      "decrease-in-list",
      `${kindName(gathered, terms)} takes several places and cannot be one of the stitches to choose from.`,
      { hint: "Name plain stitches; places are worked together only to even out a count." },
    )
}
