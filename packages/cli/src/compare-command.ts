// `roundwright compare A B`: two pieces of one pattern round by round, where they part and why.

import { existsSync } from "node:fs"
import { resolve } from "node:path"
import { type Comparison, comparePieces, figuresAlone, readMeasured } from "@roundwright/matching"
import { alignColumns } from "./align.ts"
import { askedFigures, printFigures } from "./figures-out.ts"
import { quoted } from "./option-values.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface CompareRequest {
  readonly files: readonly string[]
  readonly whole?: string | undefined
  readonly rows?: string | undefined
  readonly sides?: string | undefined
  readonly at?: string | undefined
  readonly json: boolean
}

/** @returns 0 where they do not part, 1 where they do @throws RoundwrightError for pieces that cannot be compared */
export function runCompare(
  { files, json, ...asked }: CompareRequest,
  around: Surroundings,
): number {
  const refuse = (why: string) => {
    around.err(`${wrap(`roundwright compare: ${why}`, 80)}\n`)
    return 2
  }
  const [alone] = files
  if (files.length === 1 && isFigures(alone!)) {
    const grown = figuresAlone("compare", { ...askedFigures(asked), first: alone, second: "" })
    if (grown) return printFigures(grown, json, around)
  }
  if (files.length !== 2)
    return refuse(
      `name two pieces, as files or as counts or sizes in quotes, not ${files.length}: compare old.txt '12, 24, 35'.`,
    )
  const [first, second] = files as [string, string]
  // A file of that name goes before anything its name may say.
  const named = files.some((file) => existsSync(resolve(around.cwd, file)))
  const figures = named ? null : figuresAlone("compare", { ...askedFigures(asked), first, second })
  if (figures) return printFigures(figures, json, around)
  const texts = files.map((file) => pieceText(around.cwd, file))
  const unread = files.find((file, k) => "fault" in texts[k]! && !/[./\\]/.test(file))
  if (unread !== undefined)
    return refuse(
      `${quoted(unread)} is neither a file nor, beside the other, anything that can be set side by side: two gauges ('16 sts = 4 in'), rows, hooks, yarns, stitches, widths, or counts round by round. 'roundwright help compare' shows them.`,
    )
  for (const text of texts) if ("fault" in text) return refuse(text.fault)
  const [a, b] = texts.map((one, k) =>
    readMeasured((one as { text: string }).text, nameOf(files[k]!, k)),
  )
  const found = comparePieces(a!, b!)
  around.out(json ? `${JSON.stringify(publishedComparison(found), null, 2)}\n` : printed(found))
  return found.cause === null ? 0 : 1
}

/** The keys every version keeps, and those beside them. */
export function publishedComparison({
  parting: _,
  ...found
}: Comparison): Omit<Comparison, "parting"> {
  return found
}

/** A file's text; figures typed in place of a file stand for themselves. */
export function pieceText(cwd: string, file: string): ReturnType<typeof readText> {
  if (isFigures(file) && !existsSync(resolve(cwd, file))) return { text: file }
  return readText(cwd, file)
}

/** "12, 24, 36" or "4 cm, 7 cm": counts and lengths alone. */
function isFigures(text: string): boolean {
  return (
    /^[\s.,;:/"½¼¾]*\d(?:[\s\d.,;:/"½¼¾]|(?:mm|cm|in|sts?)\b)*$/i.test(text) &&
    /[,;\s]/.test(text.trim())
  )
}

function nameOf(file: string, index: number): string {
  return isFigures(file) ? (index === 0 ? "A" : "B") : file
}

function printed(found: Comparison): string {
  const unit = found.by === "counts" ? "" : " mm"
  const figure = (value: number | null) =>
    value === null ? "-" : `${Math.round(10 * value) / 10}${unit}`
  const rows = found.rounds.map(({ round, a, b, ratio }) => [
    String(round),
    figure(a),
    figure(b),
    ratio === null ? "-" : ratio.toFixed(2),
    round === found.partAtRound ? "<- here" : "",
  ])
  const table = alignColumns([["round", "A", "B", "B / A", ""], ...rows])
  return `${wrap(found.text, 80)}\n\n${table.join("\n")}\n`
}
