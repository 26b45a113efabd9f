// How far the edge is from the centre after each round: in the middle of a side and, where there
// are corners, at a corner.

import type { LedgerRow } from "@roundwright/flatness"
import { hasCorners, lengthWords, reachFinding, tellRounds } from "./findings.ts"
import { drawableRows, lineWithPoints, nameRoomPx, namesAtEnd } from "./parts.ts"
import { type ChartOptions, type ChartSpec, frameChart } from "./spec.ts"

/** @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow` */
export function reachChart(rows: readonly LedgerRow[], options: ChartOptions = {}): ChartSpec {
  drawableRows(rows)
  const unit = options.lengthUnit ?? "mm"
  const corners = hasCorners(rows)
  const values = rows.map((row) => ({
    round: row.round,
    side: row.radiusMm,
    corner: row.cornerReachMm,
  }))
  const last = values.at(-1)!
  const title = reachFinding(rows, unit)
  const span = Math.max(...values.map((value) => Math.max(value.side, value.corner)))
  const corner = lineWithPoints({
    field: "corner",
    dash: [6, 4],
    shape: "diamond",
    filled: false,
  })
  return frameChart(
    {
      title,
      key: corners
        ? "Solid line: middle of a side. Dashed line: corner."
        : "The edge is round: side and corner are the same.",
      description: `${title}. Distance from the centre in ${unit}. ${tellRounds(rows, (row) =>
        corners
          ? `side ${lengthWords(row.radiusMm, unit)}, corner ${lengthWords(row.cornerReachMm, unit)}`
          : lengthWords(row.radiusMm, unit),
      )}`,
    },
    `distance from the centre, ${unit}`,
    values,
    [
      ...lineWithPoints({
        field: "side",
        dash: [1, 0],
        shape: "circle",
        filled: true,
      }),
      ...(corners ? corner : []),
      ...namesAtEnd(
        corners
          ? [
              { text: "side", value: last.side },
              { text: "corner", value: last.corner },
            ]
          : [{ text: "edge", value: last.side }],
        last.round,
        span,
        "side",
      ),
    ],
    options,
    { rightPx: nameRoomPx },
  )
}
