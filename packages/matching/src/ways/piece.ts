// The piece to be matched: read, brought to the size it has now, and measured.

import { type Check, examinePattern } from "@roundwright/assessment"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, gaugeFrom, scaledSwatch } from "@roundwright/stitches"
import { type Along, alongOf, type Sized, sizesOf } from "./sizes.ts"
import type { Target } from "./target.ts"

export interface PieceNow {
  readonly text: string
  readonly check: Check
  readonly motif: Motif
  readonly gauge: Gauge
  readonly now: Sized
}

/**
 * @param now what a ruler says of the piece as it is; what the text tells where absent
 * @param another a gauge in place of the text's
 * @throws RoundwrightError `unreadable-pattern`, `no-measure`, what `layOut` throws
 */
export function readPieceNow(
  text: string,
  now?: Target,
  another?: (check: Check) => Gauge | null,
): PieceNow {
  const check = examinePattern(text, { remedies: false })
  const { reading } = check
  const error = check.result.problems.find(({ severity }) => severity === "error")
  if (reading.motif.rounds.length === 0 || !check.gauge)
    throw new RoundwrightError(
      "unreadable-pattern",
      `The pattern could not be read${error ? `: ${error.message}` : "."}`,
      {
        hint: error?.hint || "Write a line a round, such as: Rnd 1: 12 dc in magic ring. (12 dc)",
        ...(error
          ? { place: { line: error.line, column: error.column, length: error.length } }
          : {}),
      },
    )
  const { motif } = reading
  const gauge = another?.(check) ?? check.gauge
  if (!now && !gauge.absolute)
    throw new RoundwrightError("no-measure", "Nothing tells how large the piece is now.", {
      hint: "Measure it and say so (--now '14 cm'), or put Yarn: and Hook:, Gauge: or Size: at the head of the pattern.",
    })
  if (!now) return { text, check, motif, gauge, now: sizesOf(motif, gauge) }
  // Twice: a piece drawn larger lies a little otherwise under its own weight.
  let scaled = gauge
  for (let pass = 0; pass < 2; pass += 1)
    scaled = scaledGauge(scaled, now.mm / alongOf(sizesOf(motif, scaled), now.along))
  return { text, check, motif, gauge: scaled, now: sizesOf(motif, scaled) }
}

/** Everything drawn larger or smaller; proportions stay. */
export function scaledGauge(gauge: Gauge, factor: number): Gauge {
  const { input } = gauge
  return gaugeFrom({
    ...input,
    swatches: input.swatches.map((swatch) => scaledSwatch(swatch, factor)),
    scWidthMm: factor * gauge.scWidthMm,
  })
}

/** Along what a size is meant: what was said, or the one that is spoken of (across). */
export function alongMeant(target: Target, now: Sized): Along {
  return now.corners === 0 ? "across" : target.along
}
