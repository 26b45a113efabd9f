// The names a calculation may use for a plan besides those of the pattern it is. An oval's shape is not worked out by
// a check: its verdict and sizes are the plan's own: verdict, rounds, stitches_last, oval_length, oval_width, oval_chains (of the foundation).

import { verdictWord } from "@roundwright/assessment"
import type { CirclePlan } from "../circle.ts"
import type { Figure } from "./names.ts"

export function figuresOfPlan(plan: CirclePlan): ReadonlyMap<string, Figure> {
  if (!("chains" in plan)) return new Map()
  const { counts, chains, verdict, lengthMm, widthMm } = plan
  const lengths = { oval_length: lengthMm, oval_width: widthMm }
  return new Map<string, Figure>([
    ["verdict", { text: verdictWord(verdict) }],
    ["rounds", { number: counts.length }],
    ["stitches_last", { number: counts.at(-1)! }],
    ["oval_chains", { number: chains }],
    ...Object.entries(lengths).flatMap(([name, mm]): [string, Figure][] =>
      mm === null ? [] : [[name, { number: mm, unit: "mm" }]],
    ),
  ])
}
