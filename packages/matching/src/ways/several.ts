// Several pieces measured, some of them off: what to do with each, and how far they lie apart. What a round adds is the height
// of its stitches twice.

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { type BasicStitch, basicName, type Gauge, sizeOf } from "@roundwright/stitches"
import { type LengthUnit, lengthWords } from "../lengths.ts"
import { alreadyThere } from "./already-there.ts"
import { hookAdvice, numberWord } from "./hook-advice.ts"
import { readTarget, type Target } from "./target.ts"

export interface PieceTold {
  readonly mm: number
  /** Size over the one wished for, less one. */
  readonly off: number
  /** On each of two sides, mm; positive where it is too small. */
  readonly perSideMm: number
  readonly change: string
  readonly text: string
}

export interface SeveralTold {
  readonly pieces: readonly PieceTold[]
  readonly asTheyAre: number
  readonly middleMm: number
  readonly text: string
}

/** "11.5 in, 12 in, 12.75 in", "15, 15.5, 16 cm": null where it is one size. */
export function readSizes(text: string): Target[] | null {
  const parts = text
    .split(/[;&]|,(?!\d)|\band\b/i)
    .map((part) => part.trim())
    .filter((part) => part !== "")
  if (parts.length < 2) return null
  // A unit at the end stands for all.
  const unit = /(?<![a-z"″”])[a-z"″”]+$/i.exec(parts.at(-1)!)?.[0] ?? ""
  return parts.map((part) => readTarget(/\d$/.test(part) ? `${part} ${unit}` : part, "a piece"))
}

/** A pin's stretch of a piece in plain stitches, as in blocking. */
const pins = 0.04
const rounds = [
  ["sc"],
  ["hdc"],
  ["dc"],
  ["sc", "sc"],
  ["hdc", "sc"],
  ["tr"],
  ["dc", "sc"],
  ["dc", "dc"],
] as const

/** @throws RoundwrightError `no-size` */
export function matchSeveral(
  sizesMm: readonly number[],
  targetMm: number,
  gauge: Gauge,
  unit: LengthUnit = "cm",
): SeveralTold {
  if (sizesMm.length === 0 || !(targetMm > 0) || sizesMm.some((mm) => !(mm > 0)))
    throw new RoundwrightError("no-size", "The sizes must be above zero.")
  const tell = (mm: number) => lengthWords(mm, unit)
  const pieces = sizesMm.map((mm): PieceTold => {
    const off = mm / targetMm - 1
    const perSideMm = (targetMm - mm) / 2
    const change = changeFor(mm, targetMm, gauge, tell)
    const how =
      Math.abs(off) < 0.005
        ? "just the size"
        : `${formatPercent(Math.abs(off))} too ${off > 0 ? "large" : "small"}, ${tell(Math.abs(perSideMm))} on each side`
    return { mm, off, perSideMm, change, text: `${tell(mm)}: ${how}; ${change}.` }
  })
  const sorted = [...sizesMm].sort((a, b) => a - b)
  const middleMm = sorted[Math.floor(sorted.length / 2)]!
  const asTheyAre = pieces.filter(({ off }) => Math.abs(off) <= alreadyThere).length
  const apart = sorted.at(-1)! / sorted[0]! - 1
  const advice = apart > pins ? hookAdvice(1 + apart, gauge.input) : null
  const hooks = advice
    ? ` If it is the hook, the largest and the smallest are ${advice.firstSizes === advice.furthestSizes ? "" : `${numberWord(advice.firstSizes)} to `}${numberWord(advice.furthestSizes)} hook sizes apart, likeliest ${numberWord(advice.likelySizes)}: stay with the one that gives the size.`
    : ""
  return {
    pieces,
    asTheyAre,
    middleMm,
    text: `${asTheyAre} of ${pieces.length} join as they are (within ${formatPercent(alreadyThere)}). They lie ${formatPercent(apart)} apart, the middle one at ${tell(middleMm)}.${apart > pins ? ` Squares of one pattern that differ so were made with different hooks, yarns or hands, or have not the same number of rounds: count those first.${hooks}` : ""}`,
  }
}

function changeFor(
  mm: number,
  targetMm: number,
  gauge: Gauge,
  tell: (mm: number) => string,
): string {
  const missing = targetMm - mm
  const share = missing / mm
  if (Math.abs(share) <= alreadyThere) return "join it as it is"
  const height = (basic: BasicStitch) => sizeOf({ basic }, gauge, { turned: false }).heightMm
  const adds = (stitches: readonly BasicStitch[]) =>
    2 * stitches.reduce((sum, one) => sum + height(one), 0)
  if (share > 0) {
    if (share <= pins) return `pin it out ${formatPercent(share)} larger and block it`
    const best = nearest(rounds, adds, missing)
    const many = Math.round(missing / adds(["dc"]))
    if (missing > adds(["dc", "dc"]) + height("sc"))
      return `add about ${many} rounds of dc, ${tell(adds(["dc"]))} each, or make it anew`
    return `add ${best.map((one) => `a round of ${basicName(one, "US")}`).join(" and ")}, ${tell(adds(best))} more`
  }
  if (-share <= pins)
    return "ease it in when joining, and make the next ones with a hook a size smaller"
  const over = -missing
  const lower: readonly (readonly [string, number])[] = [
    ["work its last round in sc in place of hdc", adds(["hdc"]) - adds(["sc"])],
    ["work its last round in sc in place of dc", adds(["dc"]) - adds(["sc"])],
    ["leave a round of sc out", adds(["sc"])],
    ["leave a round of dc out", adds(["dc"])],
    ["leave two rounds of dc out", 2 * adds(["dc"])],
  ]
  const best = lower.reduce((a, b) => (Math.abs(b[1] - over) < Math.abs(a[1] - over) ? b : a))
  return `${best[0]}, ${tell(best[1])} less; blocking makes nothing smaller`
}

function nearest<One>(all: readonly One[], size: (one: One) => number, wanted: number): One {
  return all.reduce((a, b) => (Math.abs(size(b) - wanted) < Math.abs(size(a) - wanted) ? b : a))
}
