// What only the designer can say and has not said: listed, so that nothing is made up.

import type { Check } from "@roundwright/assessment"
import { type Manuscript, sectionOf } from "../edit/manuscript.ts"
import { fibresOf } from "./care.ts"
import { linesOfDesigner } from "./words-of-designer.ts"
import { reckonedYarnLength, statedYarnLength } from "./yarn-length.ts"

export function missingOf(manuscript: Manuscript, check: Check): string[] {
  const { reading } = manuscript
  const { gauge } = reading
  const own = linesOfDesigner(manuscript).join(" ")
  const rows: readonly (readonly [boolean, string])[] = [
    [reading.title === null, "the title"],
    [!/\b(?:design|by\b)/i.test(own), "the designer's name"],
    [!/copyright|©|\(c\)/i.test(own), "date and copyright"],
    [
      gauge.yarnWeight === undefined && !sectionOf(manuscript, "yarn", "materials"),
      "the yarn: weight, fibre, metres in 100 g",
    ],
    [fibresOf(manuscript).length === 0, "the fibre"],
    [
      statedYarnLength(manuscript) === null,
      reckonedYarnLength(check) === null
        ? "how much yarn, for each colour"
        : "how much yarn by the scale, for each colour: the length above is reckoned",
    ],
    [gauge.hookMm === undefined, "the hook in mm"],
    [
      gauge.swatches.length === 0 && (gauge.pieces ?? []).length === 0,
      "a gauge of your own, or the size of your own piece after round 2 or 3",
    ],
    [true, "a photograph"],
  ]
  return rows.filter(([lacks]) => lacks).map(([, what]) => what)
}
