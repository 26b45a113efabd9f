// `roundwright sheet FILE`: the pattern sheet, to the terminal or into a file that nothing stands in yet.

import { existsSync, writeFileSync } from "node:fs"
import { resolve } from "node:path"
import { makeSheet, type SheetFormat, sheetFormats } from "@roundwright/publishing"
import { fileWords } from "./file-words.ts"
import { oneOf } from "./option-values.ts"
import { patternIn } from "./pattern-in.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface SheetRequest {
  readonly files: readonly string[]
  readonly terms?: string | undefined
  /** md, html, txt or large. */
  readonly format: string
  /** Where it goes; to the terminal when absent. */
  readonly out?: string | undefined
}

/** @throws RoundwrightError for options that make no sense, and for a pattern that no sheet can be made of */
export async function runSheet(request: SheetRequest, around: Surroundings): Promise<number> {
  const refuse = (why: string) => {
    around.err(`${wrap(`roundwright sheet: ${why}`, 80)}\n`)
    return 2
  }
  const [file, ...others] = request.files
  if (file === undefined) return refuse("name the pattern file whose sheet is to be made.")
  if (others.length > 0) return refuse("one pattern at a time, please: several files are named.")
  const formats = Object.keys(sheetFormats) as SheetFormat[]
  const format = oneOf(request.format, formats, "--format")
  const terms =
    request.terms === undefined
      ? undefined
      : oneOf(request.terms.toUpperCase(), ["US", "UK"] as const, "--terms")
  const read = readText(around.cwd, file)
  if ("fault" in read) return refuse(read.fault)
  const text = await patternIn(read.text)
  if (text === null) return refuse(`${file} holds no pattern that can be read.`)
  around.progress?.(`Working ${file} stitch by stitch ...`)
  const sheet = makeSheet(text, {
    ...(terms === undefined ? {} : { terms }),
    chart: format === "html",
  })
  around.progress?.("")
  const written = sheetFormats[format](sheet)
  if (request.out === undefined) {
    around.out(written)
    return 0
  }
  if (existsSync(resolve(around.cwd, request.out)))
    return refuse(`${request.out} exists and is left alone. Name another with --out.`)
  try {
    writeFileSync(resolve(around.cwd, request.out), written, { flag: "wx" })
  } catch (error) {
    return refuse(fileWords.unwritten(request.out, (error as NodeJS.ErrnoException).code))
  }
  around.out(`The sheet: ${request.out}\n`)
  return 0
}
