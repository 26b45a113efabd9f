// A yarn cell: by round, piece, joins, border and colour, the error beside each figure.

import { formatPercent } from "@roundwright/assessment"
import {
  gramsIn,
  projectYarn,
  readColourRounds,
  readJoin,
  readPieceNow,
  readSkein,
  readWeighed,
  type YarnAmount,
} from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { readStitchList } from "@roundwright/shaping"
import { linesOf } from "./lines.ts"
import type { Asked, FinishingAnswer } from "./types.ts"

export function yarnAnswer({ pattern, text }: Asked): FinishingAnswer {
  const lines = linesOf(text)
  const piece = readPieceNow(pattern)
  const [pieces, layout] = [lines.whole("pieces"), lines.layout("layout")]
  const [weighed, step, skein] = [lines.text("weighed"), lines.text("step"), lines.text("skein")]
  const [colours, join, border] = [lines.text("colours"), lines.text("join"), lines.text("border")]
  const [left, reserve] = [lines.text("left"), lines.text("reserve")]
  const found = projectYarn(piece, {
    ...(pieces === undefined ? {} : { pieces }),
    ...(layout === undefined ? {} : { layout }),
    ...(weighed === undefined ? {} : { weighed: [readWeighed(weighed, step)] }),
    ...(skein === undefined ? {} : { skein: readSkein(skein) }),
    ...(colours === undefined ? {} : { colours: readColourRounds(colours) }),
    ...(join === undefined ? {} : { join: readJoin(join) }),
    ...(border === undefined ? {} : { border: readStitchList(border, piece.check.reading.terms) }),
    ...(left === undefined ? {} : { leftGrams: gramsOf(left) }),
    ...(reserve === undefined ? {} : { reserve: Number.parseFloat(reserve) / 100 || 0 }),
  })
  const rows = [
    ...found.rounds,
    found.piece,
    ...(found.pieces.count > 1 ? [found.pieces] : []),
    ...[found.join, found.border, found.tails].filter((one) => one !== null),
    ...(found.pieces.count > 1 ? [found.total] : []),
    ...found.colours,
  ]
  return {
    lead: found.text,
    items: [],
    table: {
      label: "Yarn",
      head: ["Metres", "Grams", "Give or take", "For"],
      rows: rows.map(rowOf),
    },
    notes: found.basis.notes,
    drawing: null,
  }
}

function rowOf({ metres, grams, errorShare, what }: YarnAmount): string[] {
  const figure = (value: number | null) =>
    value === null ? "-" : value < 100 ? value.toFixed(1) : String(Math.round(value))
  return [figure(metres), figure(grams), formatPercent(errorShare), what]
}

function gramsOf(text: string): number {
  const grams = gramsIn(text)
  if (grams !== null) return grams
  throw new RoundwrightError("bad-weight", `"${text.slice(0, 40)}" tells no weight.`, {
    hint: "Weigh what is left, such as Left: 23 g.",
  })
}
