// Stitches lost or won row by row: so many fewer after so many rows, and what does that.

import { RoundwrightError } from "@roundwright/numerics"

export interface Drift {
  readonly change: number
  readonly perRow: number
  readonly text: string
}

/** @throws RoundwrightError `bad-count` */
export function driftOf(from: number, to: number, rows: number): Drift {
  for (const [value, what] of [
    [from, "stitches at first"],
    [to, "stitches now"],
    [rows, "rows"],
  ] as const)
    if (!Number.isInteger(value) || value < 1)
      throw new RoundwrightError("bad-count", `There cannot be ${value} ${what}.`)
  const change = to - from
  const perRow = change / rows
  const size = Math.abs(perRow)
  if (change === 0)
    return { change, perRow, text: `${from} stayed ${to}: nothing was lost or won.` }
  const many = `${Math.abs(change)} ${change < 0 ? "fewer" : "more"} in ${rows} rows`
  const rate = size < 0.05 ? "hardly any" : `${Number(size.toFixed(2))} a row`
  const wide = `${(to / from).toFixed(2)} times as wide as it began`
  return {
    change,
    perRow,
    text: `${many}, ${rate}, and ${wide}. ${whyDrift(size, change < 0, change)}`,
  }
}

/** How near a rate must be to a whole number of ends to be told as that. */
const near = 0.15

function whyDrift(size: number, lost: boolean, change: number): string {
  const ends = "Not the hook or the tension, which change no count."
  if (Math.abs(size - 1) <= near)
    return `${ends} ${lost ? "At one end of every row a stitch is left out: the turning chain, or the stitch under it where the chain counts for none" : "At one end of every row there is one too many: a stitch into the first stitch as well as the turning chain that counts for it"}. Mark the first and last stitch of a row.`
  if (Math.abs(size - 2) <= 2 * near)
    return `${ends} ${lost ? "A stitch is left out" : "There is one too many"} at both ends of every row. Mark the first and last stitch.`
  if (Math.abs(size - 0.5) <= near / 2)
    return `${ends} It happens in every other row, so at one edge only: look at the turning chain of that side.`
  if (Math.abs(change) <= 2)
    return `${ends} A single slip: a place passed over or worked twice. Count back row by row to where it parts.`
  return `${ends} It is not the same in every row: count every row, and mark both ends.`
}
