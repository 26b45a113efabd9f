// Strain by round when the piece is pressed flat: how much the tops along its edge and the posts that carry
// them are stretched (above 0) or squeezed (below 0). Tops squeezed and posts stretched: the round is too full;
// the other way about it is too short.

import type { Motif } from "@roundwright/motif"
import { requireFinite } from "@roundwright/numerics"
import { type LaidOutShape, usualMaterial } from "@roundwright/relaxation"
import { requireSamePiece } from "./laid-out-piece.ts"
import { lineWithPoints, nameRoomPx, namesAtEnd } from "./parts.ts"
import {
  largestStrain,
  percent,
  strainByRound,
  strainFinding,
  strainWords,
} from "./shape-findings.ts"
import { type ChartLayer, type ChartOptions, type ChartSpec, frameChart, ink } from "./spec.ts"

/** Strains beyond this are drawn at the edge: one wild round must not flatten the rest, per cent. */
const drawnPercent = 100

/** Room above and below the furthest point, as a share of the whole. */
const roomShare = 0.08

/** @throws RoundwrightError `nothing-to-draw`, `not-finite`, `chart-too-narrow`, `shape-of-another-motif` */
export function strainChart(
  motif: Motif,
  shape: LaidOutShape,
  options: ChartOptions = {},
): ChartSpec {
  requireSamePiece(motif, shape.net)
  for (const value of shape.flat.xy) requireFinite(value, "A coordinate of the flat shape")
  const strains = strainByRound(motif, shape)
  for (const { tops, posts } of strains) requireFinite(tops + posts, "A strain")
  const values = strains.map(({ round, tops, posts }) => ({
    round,
    tops: drawn(tops),
    posts: drawn(posts),
  }))
  const give = 100 * usualMaterial.give
  const all = [...values.flatMap(({ tops, posts }) => [tops, posts]), -2 * give, 2 * give]
  const [low, high] = [Math.min(...all), Math.max(...all)]
  const span = (high - low) * (1 + 2 * roomShare)
  const scale = {
    domain: [low - roomShare * (high - low), high + roomShare * (high - low)],
    nice: false,
    zero: false,
  }
  const y = { scale, title: null, axis: { tickCount: 6 } }
  const title = strainFinding(strains, largestStrain(shape))
  const last = values.at(-1)!
  return frameChart(
    {
      title,
      key: `Mean of each round. Above 0 stretched, below 0 squeezed. Grey band: what yarn gives, ${percent(usualMaterial.give)}.`,
      description: `${title}. Mean strain of each round in the flat shape: ${strains
        .map(
          ({ round, tops, posts }) =>
            `round ${round}: tops ${strainWords(tops)}, posts ${strainWords(posts)}`,
        )
        .join("; ")}.`,
    },
    "strain when pressed flat, per cent",
    values,
    [
      ...giveBand(give, scale),
      ...lineWithPoints({ field: "posts", dash: [4, 4], shape: "square", filled: false, y }),
      ...lineWithPoints({ field: "tops", dash: [1, 0], shape: "circle", filled: true, y }),
      ...namesAtEnd(
        [
          { text: "tops", value: last.tops },
          { text: "posts", value: last.posts },
        ],
        last.round,
        span,
        "tops",
      ),
    ],
    options,
    { rightPx: nameRoomPx - 30 },
  )
}

function drawn(strain: number): number {
  return Math.min(drawnPercent, Math.max(-drawnPercent, 100 * strain))
}

function giveBand(
  give: number,
  scale: { domain: number[]; nice: boolean; zero: boolean },
): ChartLayer[] {
  const y = { type: "quantitative", scale }
  return [
    {
      data: { values: [{ least: -give, most: give }] },
      mark: { type: "rect", fill: ink, opacity: 0.13 },
      encoding: { y: { ...y, field: "least" }, y2: { field: "most" } },
    },
    {
      data: { values: [{ at: 0 }] },
      mark: { type: "rule", stroke: ink, strokeWidth: 1 },
      encoding: { y: { ...y, field: "at" } },
    },
  ]
}
