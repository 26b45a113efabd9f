// Two pieces told by their rows and length alone: how tall a row is in each, and what may make one taller.

import { formatPercent } from "@roundwright/assessment"
import { type BasicStitch, basicStitches, gaugeFrom, sizeOf } from "@roundwright/stitches"
import { type LengthUnit, lengthAt, lengthWords, unitIn } from "../lengths.ts"

export interface RowsTold {
  readonly rows: number
  readonly lengthMm: number
  readonly unit?: LengthUnit
}

/** "84 rows = 180 cm", "66 rounds, 71 in"; null for anything else. */
export function readRows(text: string): RowsTold | null {
  const match =
    /^\s*(\d{1,5})\s*(?:rows?|rounds?|rnds?)\b\s*(?:=|:|,|are|is|make|in|to|measure)?\s*/i.exec(
      text,
    )
  const length = match && lengthAt(text.slice(match[0].length))
  if (!match || !length || !(length.mm > 0) || Number(match[1]) < 1) return null
  return { rows: Number(match[1]), lengthMm: length.mm, unit: unitIn(text) }
}

export interface RowsCompared {
  readonly a: RowsTold & { readonly rowMm: number }
  readonly b: RowsTold & { readonly rowMm: number }
  /** Height of a row of b over one of a. */
  readonly ratio: number
  readonly cause: "ratio" | null
  readonly text: string
}

/** Rows this much apart are alike: a row or so in twenty. */
const alike = 0.04

/** @param wholeMm the length of the whole by the first */
export function compareRows(a: RowsTold, b: RowsTold, wholeMm?: number): RowsCompared {
  const [rowA, rowB] = [a.lengthMm / a.rows, b.lengthMm / b.rows]
  const ratio = rowB / rowA
  const tall = Math.max(ratio, 1 / ratio)
  const cm = (mm: number) =>
    a.unit === "in" ? `${(mm / 25.4).toFixed(2)} in` : `${(mm / 10).toFixed(2)} cm`
  const tell = (mm: number) => lengthWords(mm, a.unit)
  const whole =
    wholeMm === undefined
      ? ""
      : ` ${tell(wholeMm)}, ${Math.round(wholeMm / rowA)} rows of the first, come to ${tell(wholeMm * ratio)} in the second; for ${tell(wholeMm)} take ${Math.round(wholeMm / rowB)} rows of it.`
  const head = `A row is ${cm(rowA)} in the first and ${cm(rowB)} in the second, ${ratio.toFixed(2)} times as tall (the other way ${(1 / ratio).toFixed(2)}).${whole}`
  const compared = { a: { ...a, rowMm: rowA }, b: { ...b, rowMm: rowB }, ratio }
  if (tall - 1 <= alike) return { ...compared, cause: null, text: `${head} They are alike.` }
  return { ...compared, cause: "ratio", text: `${head} ${whyTaller(tall)}` }
}

/** A hook makes no row much taller: on one yarn rows go with the root of the hook. */
const hookReach = 1.15
/** The same stitch under the other country's name is at least this much taller. */
const plain: readonly BasicStitch[] = ["sc", "hdc", "dc", "tr", "dtr"]

function whyTaller(tall: number): string {
  if (tall <= hookReach)
    return `That is the hand or the hook: ${formatPercent(tall - 1)} is within what another hook gives.`
  const gauge = gaugeFrom({ swatches: [] })
  const height = (basic: BasicStitch) => sizeOf({ basic }, gauge, { turned: true }).heightMm
  const pairs = basicStitches
    .filter((basic) => basic !== "sl st")
    .flatMap((taller) =>
      plain.map((lower) => ({
        lower,
        taller,
        off: Math.abs(Math.log(height(taller) / height(lower) / tall)),
      })),
    )
    .filter(({ lower, taller }) => height(taller) > height(lower))
    .sort((p, q) => p.off - q.off)
  const [best] = pairs
  // Names that both countries have: a double and a treble (the taller ones are rare).
  const terms = [height("dc") / height("sc"), height("tr") / height("dc")]
  const least = Math.min(...terms)
  const ofTerms =
    tall > least * 0.9
      ? `In the other country's terms it would be ${least.toFixed(2)} times or more: that may be it.`
      : `It is not the other country's terms either: they make a row at least ${least.toFixed(2)} times as tall.`
  const stitch =
    best && best.off < 0.1
      ? ` It fits a taller stitch, such as ${best.taller} where ${best.lower} is meant: a step (a yarn-over or a pull-through) too many in every stitch. Work all rows alike and go by the length.`
      : " Count the steps of a stitch, and go by the length."
  return `Not the hook: ${formatPercent(tall - 1)} is more than a hook gives. ${ofTerms}${stitch}`
}
