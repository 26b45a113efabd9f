// Borders against counts that makers and patterns print: how many stitches go on a side.

import { sideByLength, sideByPieces, sideByRows } from "@roundwright/matching"
import { gaugeFrom } from "@roundwright/stitches"

export interface BorderCase {
  readonly what: string
  readonly found: number
  readonly least: number
  readonly most: number
}

const inch = 25.4

/** Printed in public patterns and answers; the corner's one place was settled on the third of them. */
export function borderCases(): BorderCase[] {
  const worsted = gaugeFrom({ swatches: [], yarnWeight: 4, hookMm: 5 })
  const dc = gaugeFrom({ swatches: [{ kind: { basic: "dc" }, widthMm: (4 * inch) / 13 }] })
  const exact = (what: string, found: number, stated: number) => ({
    what,
    found,
    least: stated,
    most: stated,
  })
  return [
    exact(
      "three squares of 59, one a join",
      sideByPieces({ pieces: 3, stitches: 59 }).withCorners,
      181,
    ),
    exact(
      "four squares of 59, one a join",
      sideByPieces({ pieces: 4, stitches: 59 }).withCorners,
      241,
    ),
    exact("9 in at 13 dc = 4 in", sideByLength(9 * inch, dc, "dc").between, 28),
    {
      what: "6 in, sc in worsted with 5 mm",
      found: sideByLength(6 * inch, worsted, "sc").between,
      least: 19,
      most: 21,
    },
    exact(
      "20 rows of dc, 2 sc a row (KnittingHelp forum)",
      sideByRows(20, "dc", worsted, "sc").between,
      40,
    ),
  ]
}
