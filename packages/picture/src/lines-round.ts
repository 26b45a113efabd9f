// Closed lines of thread round the piece: the tops of rounds. Peaks of how closed each row is, that stand
// out from their surroundings.

export interface ClosedLine {
  readonly row: number
  /** How far it stands out, as a share of the range between the darkest and the most closed rows. */
  readonly prominence: number
}

/** Peaks less prominent than this share of the range are texture. */
const leastProminence = 0.12

export function closedLines(closed: readonly number[]): ClosedLine[] {
  if (closed.length < 3) return []
  const smooth = closed.map((value, i) => {
    const before = closed[Math.max(0, i - 1)]!
    const after = closed[Math.min(closed.length - 1, i + 1)]!
    return (before + 2 * value + after) / 4
  })
  const sorted = [...smooth].sort((a, b) => a - b)
  const range = sorted.at(-1)! - sorted[Math.floor(sorted.length * 0.05)]!
  if (!(range > 0)) return []
  const lines: ClosedLine[] = []
  for (let i = 1; i < smooth.length - 1; i++) {
    if (!(smooth[i]! >= smooth[i - 1]! && smooth[i]! > smooth[i + 1]!)) continue
    const prominence = Math.min(dropBeside(smooth, i, -1), dropBeside(smooth, i, 1)) / range
    if (prominence >= leastProminence) lines.push({ row: i, prominence })
  }
  return lines
}

/** How far the values fall on one side before they rise above the peak again. */
function dropBeside(values: readonly number[], peak: number, step: number): number {
  let lowest = values[peak]!
  for (let i = peak + step; i >= 0 && i < values.length; i += step) {
    if (values[i]! > values[peak]!) break
    lowest = Math.min(lowest, values[i]!)
  }
  return values[peak]! - lowest
}
