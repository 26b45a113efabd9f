// Planning a flat circle, or a polygon with stacked increases: what a circle cell asks for, and the plan as a
// pattern.

import { readPattern } from "@roundwright/instructions"
import { RoundwrightError } from "@roundwright/numerics"
import { type CircleOptions, circlePlan, readStitchList } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import type { WrittenCell } from "./cells.ts"
import type { Report } from "./problems.ts"
import { readRequestLines } from "./request-lines.ts"
import { readStitches } from "./squaring-request.ts"

export type CirclePlan = ReturnType<typeof circlePlan>

const gaugeLines = ["yarn", "hook", "gauge"] as const
const usualStitch = "dc"
const usualRounds = 8

/** A dinner plate's worth of rounds and more; a cell stays quick to compute. */
const roundBounds = { least: 1, most: 60 } as const
const cornerBounds = { least: 3, most: 12 } as const

const millimetresIn: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 }

/** Plans what the cell asks for. @returns null when that cannot be done, reported at its line */
export function planCell(cell: WrittenCell, report: Report): CirclePlan | null {
  const lines = readRequestLines(
    cell,
    ["stitch", "across", "rounds", "corners", ...gaugeLines],
    "Stitch: dc, Across: 20 cm or Rounds: 8, Corners: 6, and Yarn:, Hook: or Gauge:",
    report,
  )
  const stitch = readStitches(lines, "stitch", usualStitch)
  const across = lines.value("across")
  const acrossMm = across === null ? null : lengthOf(across)
  if (across !== null && acrossMm === null)
    lines.fault("across", `"${across.slice(0, 40)}" is no length.`, "Write it such as 20 cm.")
  if (across !== null && lines.value("rounds") !== null)
    lines.fault("across", "Both a size and a number of rounds are given.", "Leave one of them out.")
  const rounds = lines.whole("rounds", roundBounds, usualRounds)
  const corners =
    lines.value("corners") === null ? 0 : lines.whole("corners", cornerBounds, cornerBounds.least)
  const said = gaugeLines.flatMap((name) => {
    const value = lines.value(name)
    return value === null ? [] : [`${name}: ${value}`]
  })
  const reading = readPattern(said.join("\n"))
  for (const { message, hint, severity, line } of reading.problems)
    if (severity === "error" && said[line - 1] !== undefined)
      lines.fault(said[line - 1]!.split(":")[0]!, message, hint)
  if (!lines.sound) return null
  try {
    const options: CircleOptions = {
      stitches: readStitchList(stitch),
      gauge: gaugeFrom(reading.gauge),
      ...(acrossMm === null ? { rounds } : { acrossMm }),
      ...(corners > 0 ? { corners } : {}),
    }
    return circlePlan(options)
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    lines.fault(across === null ? "rounds" : "across", error.message, error.hint)
    return null
  }
}

function lengthOf(text: string): number | null {
  const match = /^(\d{1,5}(?:\.\d{1,3})?)\s*(mm|cm|in)$/i.exec(text)
  const mm = match ? Number(match[1]) * millimetresIn[match[2]!.toLowerCase()]! : 0
  return mm > 0 ? mm : null
}
