// The piece to be matched: read, brought to the size it has now, and measured.

import { type Check, examinePattern } from "@roundwright/assessment"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, gaugeFrom, scaledSwatch } from "@roundwright/stitches"
import { sizedByRule } from "./by-rule.ts"
import { type Along, alongOf, type Sized, scaledSizes, sizesOf } from "./sizes.ts"
import type { Target } from "./target.ts"

export interface PieceNow {
  readonly text: string
  readonly check: Check
  readonly motif: Motif
  readonly gauge: Gauge
  readonly now: Sized
  /** Set where a plain piece stands in for one whose pattern is not told. */
  readonly standIn?: string
  /** Whether the number of its rounds is known: from a pattern, or told. */
  readonly roundsTold?: boolean
  /** A large plain piece, of which the middle alone was read and laid out. */
  readonly byRule?: boolean
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
  // Laid out again: a piece drawn larger lies a little otherwise; the rest, well below a per cent, is in proportion.
  const scaled = scaledGauge(gauge, now.mm / alongOf(sizesOf(motif, gauge), now.along))
  const sized = sizesOf(motif, scaled)
  const rest = now.mm / alongOf(sized, now.along)
  return { text, check, motif, gauge: scaledGauge(scaled, rest), now: scaledSizes(sized, rest) }
}

/** Changed pieces that were laid out, by their rounds. */
const laidOut = new WeakMap<PieceNow, Map<string, Sized>>()

/** Sizes of the piece changed, laid out once. @throws RoundwrightError what `layOut` throws */
export function sizesOfPiece(piece: PieceNow, motif: Motif): Sized {
  if (piece.byRule) return sizedByRule(motif, piece.gauge, piece.motif, piece.now)
  const known = laidOut.get(piece) ?? new Map<string, Sized>()
  laidOut.set(piece, known)
  const key = JSON.stringify(motif)
  const sized = known.get(key) ?? sizesOf(motif, piece.gauge)
  known.set(key, sized)
  return sized
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
