// What was measured of a real piece, line by line: "Size: 9 cm after Rnd 3", "Size: side 12.2 cm", "Swatch: 16 dc x 9 rows =
// 10 cm", "Weighed: 4 pieces = 38 g", "Skein: 50 g = 120 m".

import { findCorners, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import {
  type PieceSize,
  readGaugeLine,
  readPieceSizes,
  type Swatch,
  type Terms,
} from "@roundwright/stitches"
import { readTarget } from "../ways/target.ts"
import { readSkein, readWeighed } from "../yarn/read-yarn-options.ts"
import type { Skein, Weighed } from "../yarn/yarn-basis.ts"

export interface HandMeasured {
  readonly sizes: readonly PieceSize[]
  readonly swatches: readonly Swatch[]
  readonly weighed: readonly Weighed[]
  readonly skein: Skein | null
}

export const handLines = ["size", "swatch", "weighed", "skein"] as const
export type HandLine = (typeof handLines)[number]

export const handExample =
  "Size: 9 cm after Rnd 3, Size: side 12.2 cm, Swatch: 16 dc x 9 rows = 10 cm, Weighed: 4 pieces = 38 g or Skein: 50 g = 120 m"

/** @throws RoundwrightError `no-size`, `no-swatch`, `bad-weight`, `bad-skein` */
export function readHand(
  lines: readonly (readonly [HandLine, string])[],
  motif: Motif,
  terms: Terms,
): HandMeasured {
  const of = (name: HandLine) => lines.flatMap(([line, value]) => (line === name ? [value] : []))
  const [skein] = of("skein")
  return {
    sizes: of("size").flatMap((value) => readSize(value, motif)),
    swatches: of("swatch").flatMap((value) => readSwatch(value, terms)),
    weighed: of("weighed").map((value) => readWeighed(value)),
    skein: skein === undefined ? null : readSkein(skein),
  }
}

function readSize(text: string, motif: Motif): PieceSize[] {
  const afterRounds = readPieceSizes(text)
  if (afterRounds.length > 0) return afterRounds
  const { mm, along } = readTarget(text, "the size of the piece")
  if (along === "diagonal") return [{ round: "last", mm, across: "corners" }]
  if (along === "across") return [{ round: "last", mm, across: "sides" }]
  const corners = findCorners(motif).at(-1)?.count ?? 0
  if (corners === 0 || corners % 2 === 1)
    throw new RoundwrightError(
      "no-size",
      corners === 0 ? "The piece is round: it has no side." : "Across is measured otherwise here.",
      { hint: "Give the size across, such as: Size: 14 cm." },
    )
  return [{ round: "last", mm: mm / Math.tan(Math.PI / corners), across: "sides" }]
}

function readSwatch(text: string, terms: Terms): readonly Swatch[] {
  const { swatches, problems } = readGaugeLine(text, terms)
  if (swatches.length > 0) return swatches
  throw new RoundwrightError(
    "no-swatch",
    problems[0]?.message ?? `"${text.slice(0, 40)}" is no swatch.`,
    { hint: problems[0]?.hint || "Write it such as: 16 dc x 9 rows = 10 cm." },
  )
}

/** The lines of a text, each known by its name. @throws RoundwrightError `unknown-line` with its place */
export function handLinesOf(text: string): (readonly [HandLine, string])[] {
  return text.split(/\r\n|\r|\n/).flatMap((raw, index) => {
    if (raw.trim() === "") return []
    const [, word = "", value = ""] =
      /^([a-z]+)\s*:\s*(\S.*)?$/i.exec(raw.slice(0, 400).trim()) ?? []
    const name = handLines.find((one) => one === word.toLowerCase())
    if (name !== undefined && value !== "") return [[name, value] as const]
    throw new RoundwrightError("unknown-line", `Line ${index + 1} is not understood here.`, {
      hint: `Write ${handExample}.`,
    })
  })
}
