// A flat disc of one stitch whose last round has a given count: as many rounds as fit, a ring of chains in
// the middle where the count asks for a hole.

import { planBand } from "@roundwright/flatness"
import type { Centre, Motif } from "@roundwright/motif"
import { chainSize, type Gauge, type StitchKind, sizeOf } from "@roundwright/stitches"
import { spreadRound } from "./spread.ts"

export function discEndingAt(kind: StitchKind, count: number, gauge: Gauge): Motif {
  const { heightMm, widthMm } = sizeOf(kind, gauge, { turned: false })
  const chainMm = chainSize(gauge).lengthMm
  const radius = (count * widthMm) / (2 * Math.PI)
  const depth = radius / heightMm
  const nearest = Math.max(1, Math.round(depth))
  const whole = Math.abs(depth / nearest - 1) <= planBand || depth < 1
  const rounds = whole ? nearest : Math.max(1, Math.floor(depth))
  const hole = whole ? 0 : radius - rounds * heightMm
  const chains = Math.round((2 * Math.PI * (hole + chainMm / 2)) / chainMm)
  const centre: Centre =
    hole > 0 && chains >= 3 ? { kind: "chain-ring", chains } : { kind: "adjustable-ring" }
  let motif: Motif = { centre, rounds: [] }
  for (let i = 0; i < rounds; i++) {
    const own = hole + (i + 1) * heightMm
    const stitches = i === rounds - 1 ? count : Math.max(1, Math.round((count * own) / radius))
    motif = {
      ...motif,
      rounds: [...motif.rounds, spreadRound(motif, kind, stitches, 1, "staggered")],
    }
  }
  return motif
}
