// Rounds keyed without their starts: where a round begins its key does not say. Of the places it may begin at, by slip
// stitches to there, the first is taken at which the reader has nothing to warn of.

import { readPattern } from "@roundwright/instructions"

/** Slip stitches that makers put up with on the way to the place. */
const mostSlips = 12

/** The line with the slip stitches that lead to its place; as it is where it needs none, or where none helps. */
export function withStartFound(before: string, line: string): string {
  const parts = /^(Rnd \d+: )(.*)$/.exec(line)
  const warned = (text: string) =>
    readPattern(`${text}\n`).problems.filter(({ severity }) => severity !== "note").length
  const least = warned(before)
  if (!parts || warned(`${before}\n${line}`) <= least) return line
  for (let slips = 0; slips <= mostSlips; slips++)
    for (const lead of slipsOver(slips)) {
      const led = `${parts[1]}${lead}${parts[2]}`
      if (warned(`${before}\n${led}`) <= least) return led
    }
  return line
}

function slipsOver(slips: number): string[] {
  const over = slips === 0 ? [] : [`sl st in next ${slips} sts`]
  return [over, [...over, "sl st in next ch sp"]]
    .filter((steps) => steps.length > 0)
    .map((steps) => `${steps.join(", ")}, `)
}
