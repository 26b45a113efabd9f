// `roundwright gauge FILE`: the hand of a real piece from what was measured of it.

import { formatLength } from "@roundwright/assessment"
import { figure, fitHand, type HandFit, type HandLine, readHand } from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { alignColumns } from "./align.ts"
import { pieceOf } from "./match-command.ts"
import { patternOfFile } from "./pattern-of-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface GaugeRequest {
  readonly files: readonly string[]
  readonly size?: readonly string[] | undefined
  readonly swatch?: readonly string[] | undefined
  readonly weighed?: readonly string[] | undefined
  readonly skein?: string | undefined
  readonly pattern?: string | undefined
  readonly yarn?: string | undefined
  readonly hook?: string | undefined
  readonly json: boolean
}

/** @throws RoundwrightError for what cannot be used */
export async function runGauge(request: GaugeRequest, around: Surroundings): Promise<number> {
  const [file, ...others] = request.files
  if (file === undefined || others.length > 0)
    throw new RoundwrightError("one-file", "Name the one pattern that the piece was worked from.", {
      hint: "Such as: gauge square.txt --size '9 cm after Rnd 3' --size 'side 12.2 cm'.",
    })
  const text = await patternOfFile(around.cwd, file, request.pattern)
  const { yarn, hook } = request
  const piece = pieceOf(text, { gauge: undefined, yarn, hook })
  const given = (name: HandLine, values: readonly string[] = []) =>
    values.map((value) => [name, value] as const)
  const measured = readHand(
    [
      ...given("size", request.size),
      ...given("swatch", request.swatch),
      ...given("weighed", request.weighed),
      ...given("skein", request.skein === undefined ? [] : [request.skein]),
    ],
    piece.motif,
    piece.check.reading.terms,
  )
  const fit = fitHand(piece, measured)
  around.out(request.json ? `${JSON.stringify({ file, ...fit }, null, 2)}\n` : printed(fit))
  return 0
}

function printed({ text, stitches, sizes, notes }: HandFit): string {
  const stitchRows = stitches.map((one) => [
    one.stitch,
    figure(one.widthMm, one.widthErrorMm),
    figure(one.heightMm, one.heightErrorMm),
  ])
  const sizeRows = sizes.map(({ round, mm, errorMm }) => [
    String(round),
    formatLength(mm),
    formatLength(errorMm),
  ])
  return [
    wrap(text, 80),
    "",
    ...alignColumns([["stitch", "width", "height"], ...stitchRows]),
    "",
    ...alignColumns([["after round", "across", "give or take"], ...sizeRows]),
    "",
    ...notes.map((note) => wrap(note, 80)),
    "",
  ].join("\n")
}
