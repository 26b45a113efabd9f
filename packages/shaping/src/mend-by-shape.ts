// Changes for a piece whose counts look right and whose laid-out shape is not: lace and mixed heights, which the growth of
// rounds tells only in outline. The small changes are pressed flat one by one, the best laid on the table as a check would.

import { severityOf } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { layOut, type ShapeVerdict } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { layOutAsChecked } from "./lay-out-as-checked.ts"

/** A changed piece, by how much of it is made otherwise. */
export interface ChangedPiece<T> {
  readonly of: T
  /** The piece; null where it cannot be made. */
  make(): Motif | null
  /** Number of the round that is changed. */
  readonly round: number
  readonly disturbance: number
}

export interface BetterShape<T> {
  readonly of: T
  readonly motif: Motif
  readonly verdict: ShapeVerdict["verdict"]
  readonly fullness: number
}

/** Pressed flat: changes near the worst round first, then the least disturbing, within a budget of nodes in all. */
const mostPressed = 20
const mostNodes = 6_000
/** Rounds this near to the worst are where the fault can be. */
const nearRounds = 1
/** Laid on the table, in the order of what is left to stretch. */
const mostOnTable = 4
/** A change must take away this share of the stretch to be worth laying on the table. */
const leastGain = 0.2
/** Working all of the piece anew counts like this much misfit: half the give of the yarn. */
export const disturbanceWeight = 0.035

/** Pieces that lie better than before, best first. */
export function betterShapes<T>(
  pieces: readonly ChangedPiece<T>[],
  gauge: Gauge,
  before: ShapeVerdict,
): BetterShape<T>[] {
  const pressed: { readonly of: T; readonly motif: Motif; readonly left: number }[] = []
  let nodes = 0
  let tries = 0
  const far = ({ round }: ChangedPiece<T>) =>
    Math.abs(round - before.blockingRound) > nearRounds ? 1 : 0
  const wanted = [...pieces].sort((a, b) => far(a) - far(b) || a.disturbance - b.disturbance)
  for (const piece of wanted) {
    if (nodes > mostNodes || tries === mostPressed) break
    const motif = piece.make()
    if (motif === null) continue
    tries += 1
    const shape = unlessRefused(
      () => layOut(motif, gauge, { inSpace: false }),
      () => null,
    )
    if (shape === null) continue
    nodes += shape.net.nodes.length
    if (shape.meanStretch <= (1 - leastGain) * before.meanStretch)
      pressed.push({
        of: piece.of,
        motif,
        left: shape.meanStretch + disturbanceWeight * piece.disturbance,
      })
  }
  return pressed
    .sort((a, b) => a.left - b.left)
    .slice(0, mostOnTable)
    .flatMap(({ of, motif }): BetterShape<T>[] => {
      const shape = layOutAsChecked(motif, gauge)
      if (shape === null || severityOf(shape.verdict) >= severityOf(before.verdict)) return []
      return [{ of, motif, verdict: shape.verdict, fullness: shape.fullness }]
    })
    .sort((a, b) => severityOf(a.verdict) - severityOf(b.verdict))
}
