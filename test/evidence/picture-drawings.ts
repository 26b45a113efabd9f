// Drawings of our own, from seeds: how often centre, main count, rings, radii and sureness are right, for
// kinds of rounds the constants were chosen on and kinds they were not.

import { measurePicture, publishMeasurement } from "@roundwright/picture"
import {
  type DrawnMotif,
  drawMotif,
  type RoundKind,
  tunedKinds,
  untunedKinds,
} from "../support/drawn-motif.ts"
import { centreOf, mainCount, scoreRings } from "./picture-scores.ts"

export interface DrawingsScore {
  readonly drawings: number
  /** Centre within 1 % of the reach to a side. */
  readonly centre: number
  readonly main: number
  readonly rings: number
  readonly ringsRight: number
  readonly ringsRightWithBounds: number
  /** Rings of kinds no constant was chosen on. */
  readonly untuned: number
  readonly untunedRight: number
  readonly radii: number
  /** Within 3 % of the reach; tops of open loops within 5 %. */
  readonly radiiRight: number
  readonly outlines: number
  readonly sure: number
  readonly sureRight: number
  /** Rings wrong in pictures whose view was doubted or that were refused. */
  readonly wrongTold: number
  readonly refused: number
}

export interface DrawingsOptions {
  readonly from: number
  readonly count: number
  readonly tiltDeg: readonly [number, number]
}

/** Chance from which a count is called sure. */
const sureFrom = 0.9

export function scoreDrawings(options: DrawingsOptions): DrawingsScore {
  const sum = {
    drawings: 0,
    centre: 0,
    main: 0,
    rings: 0,
    ringsRight: 0,
    ringsRightWithBounds: 0,
    untuned: 0,
    untunedRight: 0,
    radii: 0,
    radiiRight: 0,
    outlines: 0,
    sure: 0,
    sureRight: 0,
    wrongTold: 0,
    refused: 0,
  }
  for (let seed = options.from; seed < options.from + options.count; seed++) {
    const drawn = drawMotif(seed, {
      kinds: [...tunedKinds, ...untunedKinds],
      tiltDeg: options.tiltDeg,
    })
    sum.drawings += 1
    sum.rings += drawn.rounds.length
    sum.radii += drawn.rounds.length
    const unknown = (kind: RoundKind) => (untunedKinds as readonly string[]).includes(kind)
    sum.untuned += drawn.rounds.filter(({ kind }) => unknown(kind)).length
    const measured = measureOrNull(drawn)
    if (measured === null) {
      sum.refused += 1
      sum.wrongTold += drawn.rounds.length
      continue
    }
    // A tilted view is straight up to its scale: radii are compared by the outline's reach.
    const scale =
      options.tiltDeg[1] > 10 ? measured.outline.sidePx / measured.scale / drawn.sidePx : 1
    const scores = scoreRings(
      measured,
      drawn.rounds.map((round) => ({
        ...round,
        innerPx: round.innerPx * scale,
        outerPx: round.outerPx * scale,
        repeats: round.count,
      })),
    )
    const centre = centreOf(measured)
    const off = Math.hypot(centre.x - drawn.centrePx.x, centre.y - drawn.centrePx.y)
    if (off <= 0.01 * drawn.sidePx) sum.centre += 1
    if (mainCounts(drawn).includes(mainCount(measured) ?? 0)) sum.main += 1
    if (measured.outline.corners === drawn.corners) sum.outlines += 1
    const doubtful = publishMeasurement(measured, {
      widthPx: drawn.picture.width,
      heightPx: drawn.picture.height,
      scale: 1,
    }).view.doubtful
    scores.forEach((score, i) => {
      const { kind } = drawn.rounds[i]!
      if (score.right) sum.ringsRight += 1
      else if (doubtful) sum.wrongTold += 1
      if (score.rightWithBounds) sum.ringsRightWithBounds += 1
      if (score.right && unknown(kind)) sum.untunedRight += 1
      const allowed = (score.truth.open ? 0.05 : 0.03) * drawn.sidePx * scale
      if (score.edgeOffPx <= allowed) sum.radiiRight += 1
      if (score.sureness >= sureFrom) {
        sum.sure += 1
        if (score.right) sum.sureRight += 1
      }
    })
  }
  return sum
}

function measureOrNull(drawn: DrawnMotif) {
  try {
    return measurePicture(drawn.picture)
  } catch {
    return null
  }
}

/** Counts whose rounds are the deepest together; those within a fifth of it as well. */
function mainCounts(drawn: DrawnMotif): number[] {
  const depths = new Map<number, number>()
  for (const { count, innerPx, outerPx } of drawn.rounds)
    depths.set(count, (depths.get(count) ?? 0) + outerPx - innerPx)
  const top = Math.max(...depths.values())
  return [...depths].filter(([, depth]) => depth >= 0.8 * top).map(([count]) => count)
}
