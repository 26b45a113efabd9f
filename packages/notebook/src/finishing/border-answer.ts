// A border cell: round a blanket of the pattern's pieces, stitches a side and each round judged.

import {
  planBorder,
  readLength,
  readPieceNow,
  readRepeat,
  sideByLength,
  sideByPieces,
} from "@roundwright/matching"
import { readStitchList } from "@roundwright/shaping"
import { kindName } from "@roundwright/stitches"
import { linesOf } from "./lines.ts"
import type { Asked, FinishingAnswer } from "./types.ts"

export function borderAnswer({ pattern, text }: Asked): FinishingAnswer {
  const lines = linesOf(text)
  const { gauge, now, check } = readPieceNow(pattern)
  const { terms } = check.reading
  const kinds = readStitchList(lines.text("rounds") ?? kindName({ basic: "sc" }, terms), terms)
  const side = lines.text("side")
  const repeat = lines.text("repeat")
  const perJoin = lines.whole("per join") ?? 1
  const pieces = lines.whole("pieces")
  const along = pieces === undefined ? (lines.layout("layout") ?? [1]) : [pieces]
  const stitches = now.stitchesPerSide ?? Math.round(now.stitches / 4)
  const sides =
    side === undefined
      ? [...new Set(along)].map((many) => ({
          ...sideByPieces({ pieces: many, stitches, perJoin }),
          edgeMm: many * now.acrossMm,
        }))
      : [readLength(side, "Side")].map((edgeMm) => ({
          ...sideByLength(edgeMm, gauge, kinds[0]?.basic ?? "sc"),
          edgeMm,
        }))
  const plan = planBorder(gauge, {
    sides,
    rounds: kinds,
    terms,
    ...(repeat === undefined ? {} : { repeat: readRepeat(repeat) }),
  })
  return {
    lead: plan.text,
    items: [
      ...sides.map(({ text: said }) => ({ text: `${said}.`, rounds: [] })),
      { text: "Round by round:", rounds: plan.rounds.map(({ text: said }) => `${said}.`) },
    ],
    table: null,
    notes: [],
    drawing: null,
  }
}
