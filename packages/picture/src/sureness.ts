// How sure a count is: a logistic function of what was seen, fitted on drawings of ours whose counts are known.

export interface SurenessSigns {
  /** Comb of the count, 0 to 1. */
  readonly comb: number
  /** Comb of the best count that is no multiple or part of it. */
  readonly rival: number
  /** Share of rows whose phase agrees with the count; negative where it speaks for another. */
  readonly vote: number
  /** Share of rows with as many peaks; negative where they show another number, 0 where not counted. */
  readonly peaks: number
  /** Counted by phase because the comb was weak. */
  readonly byPhase: boolean
  readonly pxPerRepeat: number
  readonly rows: number
}

export function surenessOf(signs: SurenessSigns): number {
  const x = signFeatures(signs)
  const z = x.reduce((sum, value, i) => sum + value * weights[i]!, 0)
  return 1 / (1 + Math.exp(-z))
}

export function signFeatures(signs: SurenessSigns): number[] {
  const ratio = signs.rival > 0 ? Math.min(8, signs.comb / signs.rival) : 8
  return [
    1,
    Math.sqrt(Math.max(0, signs.comb)),
    Math.log(Math.max(0.5, ratio)),
    signs.vote,
    signs.peaks,
    signs.byPhase ? 1 : 0,
    Math.log(Math.min(40, Math.max(2, signs.pxPerRepeat))),
    Math.log(Math.max(2, signs.rows)),
  ]
}

/** Fitted by logistic regression on 584 rings of 120 drawings (seeds 101 to 220, tuned kinds, a third of them tilted). */
const weights = [-2.37, 1.9, 0.69, 1.2, 1.93, -1.4, 0.13, -0.01] as const
