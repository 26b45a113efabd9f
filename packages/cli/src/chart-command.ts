// `roundwright chart FILE`: the stitch chart for print as SVG, with its key, in mm, or as PNG where --out ends so.

import { existsSync, writeFileSync } from "node:fs"
import { resolve } from "node:path"
import { examinePattern } from "@roundwright/assessment"
import { printChart } from "@roundwright/charts"
import { drawPng } from "@roundwright/picture/decode"
import { fileWords } from "./file-words.ts"
import { oneOf, readLengthMm } from "./option-values.ts"
import { patternIn } from "./pattern-in.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface ChartRequest {
  readonly files: readonly string[]
  readonly terms?: string | undefined
  /** Whole width of the drawing, such as 80mm. */
  readonly width?: string | undefined
  /** `repeat`: one repeat dark, the rest light; `rounds`: two inks by round. */
  readonly emphasis: string
  readonly out?: string | undefined
}

/** What printers ask of line drawings at least. */
const dotsPerInch = 300

/** @throws RoundwrightError for options that make no sense */
export async function runChart(request: ChartRequest, around: Surroundings): Promise<number> {
  const refuse = (why: string) => {
    around.err(`${wrap(`roundwright chart: ${why}`, 80)}\n`)
    return 2
  }
  const [file, ...others] = request.files
  if (file === undefined) return refuse("name the pattern file whose chart is to be drawn.")
  if (others.length > 0) return refuse("one pattern at a time, please: several files are named.")
  const emphasis = oneOf(request.emphasis, ["none", "repeat", "rounds"] as const, "--emphasis")
  const terms =
    request.terms === undefined
      ? undefined
      : oneOf(request.terms.toUpperCase(), ["US", "UK"] as const, "--terms")
  const widthMm = request.width === undefined ? undefined : readLengthMm(request.width)
  const read = readText(around.cwd, file)
  if ("fault" in read) return refuse(read.fault)
  const text = await patternIn(read.text)
  if (text === null) return refuse(`${file} holds no pattern that can be read.`)
  const { shape, reading } = examinePattern(text, { shape: "net", remedies: false })
  if (!shape) return refuse("no round of it could be laid out; 'roundwright check' tells why.")
  const svg = printChart(reading.motif, shape, {
    terms: terms ?? reading.terms,
    emphasis,
    ...(widthMm === undefined ? {} : { widthMm }),
  })
  if (request.out === undefined) {
    around.out(`${svg}\n`)
    return 0
  }
  if (existsSync(resolve(around.cwd, request.out)))
    return refuse(`${request.out} exists and is left alone. Name another with --out.`)
  const written = /\.png$/i.test(request.out) ? await drawPng(svg, dotsPerInch) : `${svg}\n`
  try {
    writeFileSync(resolve(around.cwd, request.out), written, { flag: "wx" })
  } catch (error) {
    return refuse(fileWords.unwritten(request.out, (error as NodeJS.ErrnoException).code))
  }
  around.out(`The chart: ${request.out}\n`)
  return 0
}
