// Yarn of a piece that goes on growing, from what was used so far: in rounds round a middle the area, and so the yarn, goes
// with the square of the size, each round taking a little more than the last; in rows it goes with the length.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"

export interface RoundsGrown {
  /** Rounds there are, by what the last one took. */
  readonly roundsNow: number | null
  readonly addedMm: number | null
  readonly sizeMm: number
  readonly grams: number
  readonly sizeFactor: number
}

export interface RoundsGrowth {
  /** Across now, mm. */
  readonly sizeMm: number
  /** Used so far, in any one unit (g, balls). */
  readonly used: number
  /** What the last round took, and rounds more; or rounds now. */
  readonly lastRound?: number
  readonly roundsNow?: number
  readonly more?: number
  /** Yarn more that there is. */
  readonly spare?: number
}

/**
 * A disc or polygon of n alike rounds holds n^2 parts, the last round 2 n - 1 of them: n = used x 2 / last, about.
 * @throws RoundwrightError `nothing-told`, `not-positive`
 */
export function growInRounds(asked: RoundsGrowth): RoundsGrown {
  const { sizeMm, used, lastRound, more, spare } = asked
  requirePositive(sizeMm, "The size now")
  requirePositive(used, "The yarn used so far")
  const roundsNow =
    asked.roundsNow ??
    (lastRound === undefined
      ? null
      : roundsFrom(used, requirePositive(lastRound, "The yarn of the last round")))
  if (more !== undefined && roundsNow !== null) {
    const sizeFactor = (roundsNow + more) / roundsNow
    return {
      roundsNow,
      addedMm: sizeMm * (sizeFactor - 1),
      sizeMm: sizeMm * sizeFactor,
      grams: used * (sizeFactor ** 2 - 1),
      sizeFactor,
    }
  }
  if (spare !== undefined) {
    if (!(spare > 0))
      throw new RoundwrightError("no-yarn-left", "No yarn is to spare, so it grows no further.", {
        hint: "Tell what is left beyond what is kept.",
        numbers: { spare },
      })
    const sizeFactor = Math.sqrt((used + spare) / used)
    return {
      roundsNow,
      addedMm: sizeMm * (sizeFactor - 1),
      sizeMm: sizeMm * sizeFactor,
      grams: spare,
      sizeFactor,
    }
  }
  throw new RoundwrightError("nothing-told", "Neither rounds more nor yarn to spare is told.", {
    hint: "Give --more 12 with --last-round '45 g', or --spare '200 g'.",
  })
}

/** n of n^2 = used, 2 n - 1 = last: n^2 / (2 n - 1) = used / last. */
function roundsFrom(used: number, last: number): number {
  const share = used / last
  return share + Math.sqrt(Math.max(0, share * share - share))
}

export interface RowsGrown {
  readonly rows: number
  readonly rowsWithEnds: number
  readonly lengthMm: number
  readonly lengthWithEndsMm: number
  readonly perBall: number
  readonly overPerBall: number
}

/** Rows that so many balls make, whole rows a ball, and with the ends joined. @throws RoundwrightError `not-positive`, `too-short` */
export function growInRows(asked: {
  readonly perRow: number
  readonly rowMm: number
  readonly ball: number
  readonly balls: number
}): RowsGrown {
  const perRow = requirePositive(asked.perRow, "The yarn of a row")
  const ball = requirePositive(asked.ball, "A ball")
  const balls = requirePositive(asked.balls, "The number of balls")
  const rowMm = requirePositive(asked.rowMm, "The height of a row")
  const perBall = Math.floor(ball / perRow + 1e-9)
  const rows = perBall * balls
  const rowsWithEnds = Math.floor((ball * balls) / perRow + 1e-9)
  if (rowsWithEnds < 1)
    throw new RoundwrightError("too-short", "All balls together do not make one row.", {
      hint: "Check the units.",
    })
  return {
    rows,
    rowsWithEnds,
    lengthMm: rows * rowMm,
    lengthWithEndsMm: rowsWithEnds * rowMm,
    perBall,
    overPerBall: ball - perBall * perRow,
  }
}
