// What is kept of a repeat once it has been worked, for the account of the round.

/** A repeat worked "around" with no ending of its own. */
export interface OpenRepeat {
  readonly start: number
  readonly end: number
  /** Whole times, and the stitches of the round before that each takes. */
  readonly full: number
  readonly uses: number
}

/** The whole times of the last repeat of a round. */
export interface WholeTimes {
  /** Uses of the round before that stood before each time, and after the last. */
  readonly starts: readonly number[]
  readonly end: number
  /** Where the hook then was. */
  readonly at: number
  /** Worked by a number rather than for as long as the round before lasts. */
  readonly counted: boolean
}
