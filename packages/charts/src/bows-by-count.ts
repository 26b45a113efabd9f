// What is left of bow when one circle after another is squared: bow as a share of the side, by the count of
// the circle.

import { RoundwrightError, requireFinite } from "@roundwright/numerics"
import { tidy } from "./findings.ts"
import { type ChartOptions, type ChartSpec, frameChart, ink } from "./spec.ts"

/** The best squaring of one circle. `bow` is a share of the side, above 0 outwards. */
export interface BowOfCount {
  readonly count: number
  readonly bow: number
}

/** The axis shows at least this much to either side, per cent, so that small bows look small. */
const leastShownPercent = 3

/**
 * @param straight bow below this share of a side passes for straight
 * @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow`
 */
export function bowsByCountChart(
  rows: readonly BowOfCount[],
  straight: number,
  options: ChartOptions = {},
): ChartSpec {
  if (rows.length === 0)
    throw new RoundwrightError("nothing-to-draw", "There is no circle to draw.", {
      hint: "No circle of the range could be squared.",
    })
  for (const { count, bow } of rows) requireFinite(bow, `The bow of the circle of ${count}`)
  const percent = (bow: number) => 100 * bow
  const most = Math.max(leastShownPercent, ...rows.map(({ bow }) => 1.1 * Math.abs(percent(bow))))
  const scale = { domain: [-most, most], nice: false, zero: false }
  const y = { field: "bow", type: "quantitative", scale, title: null, axis: { tickCount: 6 } }
  const counts = rows.map(({ count }) => count)
  const [first, last] = [Math.min(...counts), Math.max(...counts)]
  const x = {
    field: "count",
    type: "quantitative",
    scale: { domain: [first - 1, last + 1], nice: false, zero: false },
    axis: { title: "stitches of the circle", grid: false, tickMinStep: 1 },
  }
  const within = rows.filter(({ bow }) => Math.abs(bow) < straight).length
  const limit = tidy(percent(straight), 0)
  const title = `${within} of ${rows.length} circles get sides within ${limit} % of straight`
  return frameChart(
    {
      title,
      key: `Above the line the sides bow out, below it in. Grey: within ${limit} % of the side.`,
      description: `${title}. Bow of the sides in per cent of their length, above 0 outwards. ${rows
        .map(({ count, bow }) => `${count} stitches: ${tidy(percent(bow), 1)}`)
        .join("; ")}.`,
    },
    "bow of the sides, % of a side",
    rows.map(({ count, bow }) => ({
      count,
      bow: percent(bow),
      zero: 0,
      told: `${count} stitches: a bow of ${tidy(percent(bow), 1)} %`,
    })),
    [
      {
        data: { values: [{ least: -percent(straight), most: percent(straight) }] },
        mark: { type: "rect", fill: ink, opacity: 0.13 },
        encoding: { y: { ...y, field: "least" }, y2: { field: "most" } },
      },
      {
        data: { values: [{ bow: 0 }] },
        mark: { type: "rule", stroke: ink, strokeWidth: 1 },
        encoding: { y },
      },
      {
        mark: { type: "rule", stroke: ink, strokeWidth: 1.6 },
        encoding: { x, y: { ...y, field: "zero" }, y2: { field: "bow" } },
      },
      {
        mark: { type: "point", shape: "circle", size: 46, fill: ink, stroke: ink, opacity: 1 },
        encoding: { x, y },
      },
    ],
    options,
    { rightPx: 16 },
  )
}
