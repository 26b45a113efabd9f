// What a chart shows, as a sentence for its title, and all its values as a text for those who cannot
// see it. Fullness below is growth over flat growth: 1 is flat, more ruffles, less cups.

import { bands, type LedgerRow, tellsGrowth } from "@roundwright/flatness"

/** Rounds told one by one in a description; the table of the ledger holds the rest. */
const mostToldRounds = 60

/** The rounds whose own growth leaves the flat band, in working order. */
export function unevenRounds(rows: readonly LedgerRow[]): LedgerRow[] {
  return rows.filter((row) => tellsGrowth(row) && Math.abs(row.fullness - 1) > bands.flat)
}

export function growthFinding(rows: readonly LedgerRow[]): string {
  const worst = furthestFrom(unevenRounds(rows), (row) => row.fullness - 1)
  if (!worst) return "Every round grows about as much as flat needs"
  const { round, fullness } = worst
  if (Math.abs(fullness) < leastTold) return `Round ${round} does not grow where flat needs it to`
  if (fullness < 0) return `Round ${round} draws the edge in where flat would let it grow`
  if (rows.every(({ verdict }) => verdict === "flat"))
    return `Round ${round} grows ${fullness > 1 ? "most" : "least"}, ${times(fullness)} of a flat round by itself; the others even it out`
  if (fullness > 1) return `Round ${round} grows ${times(fullness)} times what flat needs`
  return `Round ${round} grows only ${times(fullness)} of what flat needs`
}

/** A smaller fullness would be told as 0.00. */
const leastTold = 0.005

export function fullnessFinding(rows: readonly LedgerRow[]): string {
  const last = rows.at(-1)!
  if (last.verdict !== "flat")
    return `After round ${last.round} the edge is ${times(last.accumulatedFullness)} times a flat one`
  const strayed = rows.filter(({ verdict }) => verdict !== "flat")
  if (strayed.length === 0)
    return `The edge stays within ${Math.round(100 * bands.flat)} % of a flat one`
  return `The edge leaves flat in ${countRounds(strayed.length)} and comes back`
}

export function curvatureFinding(rows: readonly LedgerRow[]): string {
  const worst = furthestFrom(unevenRounds(rows), (row) => row.curvatureDeg)
  if (!worst) {
    const most = Math.max(...rows.map((row) => Math.abs(row.curvatureDeg)))
    if (most < 0.5) return "Every round is flat to the degree"
    return `No round is more than ${Math.ceil(most - 1e-6)} degrees away from flat`
  }
  const side = worst.curvatureDeg > 0 ? "cupping" : "ruffling"
  const degrees = Math.round(Math.abs(worst.curvatureDeg))
  return `Round ${worst.round} is furthest from flat: ${degrees} degrees towards ${side}`
}

/** How far a round is from the centre, in the unit of the chart. */
export interface Reach {
  readonly round: number
  readonly side: number
  readonly corner: number
}

export function reachFinding(reaches: readonly Reach[], unit: string): string {
  const last = reaches.at(-1)!
  const side = lengthWords(last.side, unit)
  if (!hasCorners(reaches)) return `After round ${last.round} the edge is ${side} from the centre`
  return `After round ${last.round} a side is ${side} out and a corner ${lengthWords(last.corner, unit)}`
}

/** True when any round reaches further at a corner than at a side. */
export function hasCorners(reaches: readonly Reach[]): boolean {
  return reaches.some(({ side, corner }) => corner > side * (1 + leastCorner))
}

/** A corner further out than the side by less than this share cannot be told from a round edge. */
const leastCorner = 0.005

/** `Round 1: ...; round 2: ...` for the description. */
export function tellRounds<Row extends { readonly round: number }>(
  rows: readonly Row[],
  tell: (row: Row) => string,
): string {
  const told = rows.slice(0, mostToldRounds).map((row) => `round ${row.round}: ${tell(row)}`)
  const rest = rows.length - told.length
  return `${told.join("; ")}${rest > 0 ? `; and ${countRounds(rest)} more` : ""}.`
}

/** What a mark says where it is pointed at. */
export function tellOne<Row extends { readonly round: number }>(
  row: Row,
  tell: (row: Row) => string,
): string {
  return `Round ${row.round}: ${tell(row)}`
}

/** From here on a tenth of a millimetre says more than a tape can. */
const wholeFromMm = 20

/** A length with its unit: long ones in whole mm, all else to a tenth. */
export function lengthWords(length: number, unit: string): string {
  return `${tidy(length, unit === "mm" && Math.abs(length) >= wholeFromMm ? 0 : 1)} ${unit}`
}

/** Rounded to `digits` decimals, without a minus before zero. */
export function tidy(value: number, digits: number): string {
  const text = Math.abs(value) < 1e15 ? value.toFixed(digits) : value.toExponential(2)
  return Number(text) === 0 ? (0).toFixed(digits) : text
}

function times(fullness: number): string {
  return tidy(fullness, 2)
}

function countRounds(count: number): string {
  return count === 1 ? "1 round" : `${count} rounds`
}

/** The row whose measure is furthest from 0. */
export function furthestFrom(
  rows: readonly LedgerRow[],
  measure: (row: LedgerRow) => number,
): LedgerRow | undefined {
  let worst: LedgerRow | undefined
  for (const row of rows)
    if (!worst || Math.abs(measure(row)) > Math.abs(measure(worst))) worst = row
  return worst
}
