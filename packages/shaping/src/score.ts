// What a proposal is ranked by, as one number: 0 is a straight-sided flat polygon of one stitch.
//
// Each part is a departure over the departure that a maker would just remark on, squared, so that parts
// of different kinds can be added. The same parts are taken from the fast model and from the laid-out
// shape; the second decides.

/** Departures a maker would just remark on. */
export const remarkable = {
  /** Bow and unevenness of a side, share of the side: half the 2 % that a straight side may have. */
  bow: 0.01,
  uneven: 0.02,
  /** Degrees off the polygon's corner: the tolerance of a corner called true. */
  angleDeg: 3,
  /** Fullness: the give of the fabric. */
  fullness: 0.07,
  /** Root of the mean squared strain: half the give, which tops and posts share. */
  strain: 0.035,
} as const

/**
 * Ease against shape: one more kind of stitch; one turn in the grading, and one place passed over, each as bad as a
 * departure that a maker would remark on; one more change of stitch or count along half a side, which is a phrase more to
 * read and a place more to watch.
 */
const perKind = 0.2
const perReversal = 1
const perSkip = 1
const perRun = 0.3

export interface ScoreParts {
  /** Shares of the side's length. */
  readonly bow: number
  readonly uneven: number
  readonly angleOffDeg: number
  /** Edge over flat edge, less one. */
  readonly fullnessOff: number
  /** Mean of half the squared strains. */
  readonly strainEnergy: number
  readonly kinds: number
  /** Turns in the grading of heights, and places skipped, over half a side. */
  readonly reversals: number
  readonly skips: number
  /** Changes of stitch or count along half a side. */
  readonly runs: number
}

export function scoreOf(parts: ScoreParts): number {
  return (
    (parts.bow / remarkable.bow) ** 2 +
    (parts.uneven / remarkable.uneven) ** 2 +
    (parts.angleOffDeg / remarkable.angleDeg) ** 2 +
    (parts.fullnessOff / remarkable.fullness) ** 2 +
    (2 * parts.strainEnergy) / remarkable.strain ** 2 +
    perKind * (parts.kinds - 1) +
    perReversal * parts.reversals +
    perSkip * parts.skips +
    perRun * parts.runs
  )
}

/**
 * Turns of direction in the heights along half a side: 0 where they only rise or only fall towards the
 * corner, as the trade grades them.
 */
export function countReversals(heights: readonly number[]): number {
  let direction = 0
  let turns = 0
  for (let i = 1; i < heights.length; i++) {
    const step = Math.sign(heights[i]! - heights[i - 1]!)
    if (step === 0) continue
    if (direction !== 0 && step !== direction) turns++
    direction = step
  }
  return turns
}

/** Scores nearer to one another than this are the same: a hundredth of what a maker would just remark on, well above the last bits. */
const sameScore = 0.01

/** Orders by score, the better first; 0 for scores that are the same but for the last bits. */
export function compareScores(a: number, b: number): number {
  const [first, second] = [Math.round(a / sameScore), Math.round(b / sameScore)]
  return first === second ? 0 : first - second
}
