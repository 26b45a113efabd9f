// A gauge from what was measured of the piece itself. Its skew gives the lean of the stitches (skew.ts). For its sizes the
// motif is laid out flat after the round measured, and all sizes are brought to the one that was measured. Proportions
// (height over width) stay as swatch, yarn and hook have them.

import type { Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { layOut } from "@roundwright/relaxation"
import { type Gauge, gaugeFrom, type PieceSize, scaledSwatch } from "@roundwright/stitches"
import { leanFromSkew } from "./skew.ts"

/** Measured sizes that ask for widths further apart than this are told of: a ruler read to half a cm on a small piece. */
const apart = 1.1

/**
 * A size this many times the computed one, or as many times smaller, is told: of 41 published motifs with yarn and hook
 * named the farthest lies within 1.4.
 */
const oddSize = 1.5

/** A size that swatch, yarn and hook cannot give. */
export interface OddSize {
  readonly piece: PieceSize
  readonly message: string
  readonly hint: string
}

export interface SizedGauge {
  readonly gauge: Gauge
  readonly notes: string[]
  readonly odd: readonly OddSize[]
}

/**
 * The gauge with the lean that `gauge.input.skewDeg` tells and the sizes that `gauge.input.pieces` tell; the gauge
 * as it is where neither is given or none can be laid out. Several sizes are met in the middle (geometric mean). A
 * finished size far from the computed one is left out, since it may be that of something made of many motifs.
 * @param leanToo false leaves the lean out: the growth ledger knows of none, and it takes a few layings out
 */
export function gaugeFromPieces(motif: Motif, gauge: Gauge, leanToo = true): SizedGauge {
  const leaning = leanToo ? leanFromSkew(motif, gauge) : { gauge, notes: [] }
  const sized = sizedByPieces(motif, leaning.gauge)
  return { ...sized, notes: [...sized.notes, ...leaning.notes] }
}

function sizedByPieces(motif: Motif, gauge: Gauge): SizedGauge {
  const notes: string[] = []
  const odd: OddSize[] = []
  const factors = (gauge.input.pieces ?? []).flatMap((piece) => {
    const found = sizeAfter(motif, gauge, piece)
    if (typeof found !== "number") {
      notes.push(found.fault)
      return []
    }
    const factor = piece.mm / found
    const isOdd = gauge.absolute && (factor > oddSize || factor < 1 / oddSize)
    if (isOdd) odd.push(oddOne(piece, factor))
    return isOdd && piece.round === "last" ? [] : [factor]
  })
  if (factors.length === 0) return { gauge, notes, odd }
  const factor = Math.exp(factors.reduce((sum, one) => sum + Math.log(one), 0) / factors.length)
  const [least, most] = [Math.min(...factors), Math.max(...factors)]
  if (most / least > apart)
    notes.push(
      `The sizes given after several rounds differ by ${Math.round(100 * (most / least - 1))} % in the width of a stitch they ask for; the middle is used.`,
    )
  return unlessRefused(
    () => ({ gauge: scaledBy(factor, gauge), notes, odd }),
    ({ message }) => ({ gauge, notes: [...notes, `${message} It was not used.`], odd }),
  )
}

function oddOne(piece: PieceSize, factor: number): OddSize {
  const times = factor > 1 ? `${factor.toFixed(1)} times` : `${Math.round(100 * factor)} % of`
  const [what, used] =
    piece.round === "last"
      ? ["This finished size", "it was not used"]
      : [`This size after round ${piece.round}`, "it is used"]
  return {
    piece,
    message: `${what} is ${times} what gauge, yarn and hook give; ${used}.`,
    hint: "Check the unit, the round it was measured after, and whether it is one motif that has this size.",
  }
}

/** Everything measured drawn to the piece's size; proportions stay. */
function scaledBy(factor: number, gauge: Gauge): Gauge {
  const { input } = gauge
  const swatches = input.swatches.map((swatch) => scaledSwatch(swatch, factor))
  return gaugeFrom({ ...input, swatches, scWidthMm: factor * gauge.scWidthMm })
}

/** Size of the motif after a round (or finished), pressed flat, in the unit of the gauge; or why there is none. */
export function sizeAfter(
  motif: Motif,
  gauge: Gauge,
  piece: Pick<PieceSize, "round" | "across">,
): number | { readonly fault: string } {
  const last =
    piece.round === "last"
      ? motif.rounds.length - 1
      : motif.rounds.findIndex((round) => round.number === piece.round)
  if (last < 0)
    return {
      fault: `The size after round ${piece.round} was not used: that round is not there or not read.`,
    }
  return unlessRefused(
    () => {
      const part = { ...motif, rounds: motif.rounds.slice(0, last + 1) }
      const { outline } = layOut(part, gauge, { inSpace: false })
      return piece.across === "corners" && outline.corners > 0
        ? 2 * outline.cornerReachMm
        : outline.acrossMm
    },
    ({ message }) => ({
      fault: `The size after ${piece.round === "last" ? "the last round" : `round ${piece.round}`} was not used: ${message}`,
    }),
  )
}
