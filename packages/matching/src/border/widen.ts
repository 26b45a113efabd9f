// A border from a size to a size: how wide it must be on each side, and how many rounds of each stitch that is; and an edging
// worked by itself and sewn on: how many of its repeats go round.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { type BasicStitch, basicName, type Gauge, sizeOf, type Terms } from "@roundwright/stitches"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export interface Widening {
  /** On each side, mm: of the width and of the length. */
  readonly perSideMm: readonly [number, number]
  /** Rounds of each stitch; null where the gauge knows no lengths. */
  readonly rounds: readonly {
    readonly stitch: string
    readonly rounds: number
    readonly addsMm: number
  }[]
  readonly text: string
}

/** @throws RoundwrightError `too-small` */
export function widenTo(
  from: readonly [number, number],
  to: readonly [number, number],
  gauge: Gauge,
  { unit, terms = "US" }: { readonly unit?: LengthUnit; readonly terms?: Terms } = {},
): Widening {
  const perSideMm = [(to[0] - from[0]) / 2, (to[1] - from[1]) / 2] as const
  if (perSideMm.some((mm) => mm < 0) || perSideMm.every((mm) => mm === 0))
    throw new RoundwrightError("too-small", "The size wished for is not larger than the one now.", {
      hint: "A border makes it larger: give the larger size with --to.",
    })
  const tell = (mm: number) => lengthWords(mm, unit)
  const least = Math.min(...perSideMm)
  const rounds = !gauge.absolute
    ? []
    : (["sc", "hdc", "dc", "tr"] as const).map((basic: BasicStitch) => {
        const { heightMm } = sizeOf({ basic }, gauge, { turned: false })
        const many = Math.max(1, Math.round(least / heightMm))
        return { stitch: basicName(basic, terms), rounds: many, addsMm: 2 * many * heightMm }
      })
  const even = Math.abs(perSideMm[0] - perSideMm[1]) < 0.02 * Math.max(...perSideMm)
  const width = even
    ? `${tell(perSideMm[0])} on each side`
    : `${tell(perSideMm[0])} on each side of the width and ${tell(perSideMm[1])} of the length`
  const uneven = even
    ? ""
    : ` A border is as wide all round: work the lesser as rounds, and ${tell(2 * Math.abs(perSideMm[0] - perSideMm[1]))} more as rows along the two edges that are short (or another row of pieces).`
  const told =
    rounds.length === 0
      ? ""
      : `: ${rounds.map((one) => `${one.rounds} ${one.rounds === 1 ? "round" : "rounds"} of ${one.stitch} (${tell(one.addsMm)} to each way across)`).join(", or ")}`
  return { perSideMm, rounds, text: `The border must be ${width}${told}.${uneven}` }
}

export interface EdgingTold {
  readonly roundMm: number
  readonly perSide: readonly [number, number]
  readonly all: number
  readonly text: string
}

/** Repeats of an edging along all four sides, whole ones on each; the corners stand on the side they begin. */
export function edgingRound(
  sides: readonly [number, number],
  eachMm: number,
  unit: LengthUnit = "cm",
): EdgingTold {
  requirePositive(eachMm, "A repeat of the edging")
  const roundMm = 2 * (sides[0] + sides[1])
  const perSide = sides.map((mm) => Math.round(requirePositive(mm, "A side") / eachMm)) as [
    number,
    number,
  ]
  if (perSide.some((many) => many < 1))
    throw new RoundwrightError("too-short", "A side is shorter than one repeat of the edging.", {
      hint: "Check the units.",
    })
  const all = 2 * (perSide[0] + perSide[1])
  const fit = sides.map((mm, k) => mm / perSide[k]!) as [number, number]
  const tell = (mm: number) => lengthWords(mm, unit)
  return {
    roundMm,
    perSide,
    all,
    text: `All round it is ${tell(roundMm)}: ${all} repeats of ${tell(eachMm)}, ${perSide[0] === perSide[1] ? `${perSide[0]} a side` : `${perSide[0]} and ${perSide[1]} a side`}, each eased to ${fit[0] === fit[1] ? tell(fit[0]) : `${tell(fit[0])} and ${tell(fit[1])}`}; one or two more in each corner if it is to turn flat.`,
  }
}
