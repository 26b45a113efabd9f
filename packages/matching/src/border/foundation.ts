// A foundation chain and the stitches of the first row: the first stitch goes into the second chain from the hook for sc, the
// third for hdc, the fourth for dc, the fifth for tr, and the chains passed over stand for a stitch from hdc on (custom; for
// hdc it is not fixed, so both are told).

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { type LengthUnit, lengthWords } from "../lengths.ts"
import { hookAdvice } from "../ways/hook-advice.ts"

export const rowStitches = ["sc", "hdc", "dc", "tr"] as const
export type RowStitch = (typeof rowStitches)[number]

/** Chains passed over before the first stitch, and whether they stand for one. */
const turns: Readonly<Record<RowStitch, { readonly skip: number; readonly counts: boolean }>> = {
  sc: { skip: 1, counts: false },
  hdc: { skip: 2, counts: true },
  dc: { skip: 3, counts: true },
  tr: { skip: 4, counts: true },
}

export interface Foundation {
  readonly chains: number
  readonly stitches: number
  readonly text: string
}

/** Stitches of a first row on so many chains. @throws RoundwrightError `bad-count` */
export function stitchesOnChains(chains: number, stitch: RowStitch): Foundation {
  const { skip, counts } = turns[stitch]
  const worked = chains - skip
  if (!Number.isInteger(chains) || worked < 1)
    throw new RoundwrightError("bad-count", `${chains} chains hold no row of ${stitch}.`, {
      hint: `Chain ${skip + 1} at least.`,
    })
  const stitches = worked + (counts ? 1 : 0)
  return { chains, stitches, text: foundationText(chains, stitches, worked, stitch) }
}

/** Chains for a first row of so many stitches. @throws RoundwrightError `bad-count` */
export function chainsForStitches(stitches: number, stitch: RowStitch): Foundation {
  const { skip, counts } = turns[stitch]
  if (!Number.isInteger(stitches) || stitches < 1 || stitches > 1e6)
    throw new RoundwrightError("bad-count", `There cannot be ${stitches} stitches in a row.`)
  const chains = stitches + skip - (counts ? 1 : 0)
  return {
    chains,
    stitches,
    text: foundationText(chains, stitches, chains - skip, stitch),
  }
}

function foundationText(
  chains: number,
  stitches: number,
  worked: number,
  stitch: RowStitch,
): string {
  const { skip, counts } = turns[stitch]
  const from = ["", "2nd", "3rd", "4th", "5th"][skip]!
  const passed = counts
    ? `the ${skip} chains passed over count as one; where they do not, ${worked}`
    : "the chain passed over counts for none"
  return `${chains} chains give ${stitches} ${stitch}: the first into the ${from} chain from the hook, ${passed}. The loop on the hook is no chain: who counts it has one fewer. A count that is off here is a chain missed or worked twice, not the hook.`
}

/** A chain this much shorter than its row gives way when worked into. */
const givesWay = 0.03

/** A foundation chain beside the rows worked on it, mm. */
export function tightFoundation(
  chainMm: number,
  rowMm: number,
): { readonly share: number; readonly text: string } {
  if (!(chainMm > 0) || !(rowMm > 0))
    throw new RoundwrightError("no-size", "Both lengths must be above zero.")
  const share = chainMm / rowMm - 1
  const off = formatPercent(Math.abs(share))
  if (Math.abs(share) <= givesWay)
    return { share, text: `The chain and its rows are alike (${off} apart): leave it.` }
  if (share > 0)
    return {
      share,
      text: `The chain is ${off} longer than its rows: it hangs in a wave at first and is drawn in by the first row; chain with a smaller hook, and never take the width from a loose chain.`,
    }
  const advice = hookAdvice(rowMm / chainMm, { swatches: [] })
  return {
    share,
    text: `The chain is ${off} shorter than its rows and draws the edge in; no border cures it. Chain with ${advice ? `a hook ${advice.way}: ${advice.text}` : "a larger hook"}, or begin with foundation stitches that have no chain, or take the chain off and work the edge anew. The rows keep their hook.`,
  }
}

/** A chain of that length came out so wide: what to chain for the width wished for, mm. */
export function chainByLength(
  chainMm: number,
  nowMm: number,
  toMm: number,
  unit: LengthUnit = "cm",
): { readonly ratio: number; readonly chainMm: number; readonly text: string } {
  if (!(chainMm > 0) || !(nowMm > 0) || !(toMm > 0))
    throw new RoundwrightError("no-size", "All three lengths must be above zero.")
  const ratio = nowMm / chainMm
  const wanted = toMm / ratio
  const tell = (mm: number) => lengthWords(mm, unit)
  const share = toMm / nowMm
  const why =
    Math.abs(ratio - 1) <= givesWay
      ? "The chain is as long as its rows"
      : ratio > 1
        ? "The chain is tighter than its stitches, so its length is no measure"
        : "The chain is looser than its stitches, so its length is no measure"
  return {
    ratio,
    chainMm: wanted,
    text: `${why}: ${tell(nowMm)} over ${tell(chainMm)} is ${ratio.toFixed(2)}. For ${tell(toMm)} chain ${tell(wanted)} in the same way, ${share.toFixed(2)} times the stitches (${share < 1 ? `${Number((10 * share).toFixed(1))} for every 10` : `${formatPercent(share - 1)} more`}). Surer: count the stitches in a part of the row, and go by that. Not the hook; the rows keep theirs.`,
  }
}
