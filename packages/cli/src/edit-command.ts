// `roundwright edit FILE...`: the technical edit of a finished text, and a corrected copy beside it, never over it.

import { existsSync, writeFileSync } from "node:fs"
import { basename, dirname, extname, join, resolve } from "node:path"
import {
  type EditOptions,
  type EditReport,
  editParagraphs,
  editPattern,
  editSummary,
} from "@roundwright/publishing"
import { fileWords } from "./file-words.ts"
import { holdsPatterns, patternsOf } from "./notebook-patterns.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { wrap } from "./wrap.ts"

export interface EditRequest {
  readonly files: readonly string[]
  readonly json: boolean
  /** Name of the corrected copy; FILE-corrected beside the file when absent. */
  readonly out?: string | undefined
  /** The chart of the one file, as `chart` wrote it. */
  readonly chart?: string | undefined
}

interface Edited {
  /** What it is called; the pattern's name in a notebook. */
  readonly name: string
  readonly report: EditReport
  /** Lines of the file before the text that was edited. */
  readonly linesBefore: number
  /** Set where the whole file is one pattern, so that a copy of it can be written. */
  readonly file?: string
  readonly text: string
}

export async function runEdit(request: EditRequest, around: Surroundings): Promise<number> {
  const refuse = (why: string) => {
    around.err(`${wrap(`roundwright edit: ${why}`, 80)}\n`)
    return 2
  }
  if (request.files.length === 0) return refuse("name at least one pattern file.")
  if (request.out !== undefined && request.files.length > 1)
    return refuse("--out names one copy, and several files are named.")
  if (request.chart !== undefined && request.files.length > 1)
    return refuse("--chart is the chart of one pattern, and several files are named.")
  const chart = request.chart === undefined ? null : readText(around.cwd, request.chart)
  if (chart && "fault" in chart) return refuse(chart.fault)
  const options = chart ? { chart: chart.text } : {}
  const all: Edited[] = []
  for (const file of request.files) {
    const read = readText(around.cwd, file)
    if ("fault" in read) return refuse(read.fault)
    const edits = await editsOf(file, read.text, options)
    if (edits.length === 0) return refuse(`${file} holds no pattern that can be read.`)
    all.push(...edits)
  }
  let status = 0
  for (const [k, edited] of all.entries()) {
    status = Math.max(status, statusOf(edited.report))
    if (request.json) {
      const shown = { ...(all.length > 1 ? { file: edited.name } : {}), ...published(edited) }
      around.out(`${JSON.stringify(shown, null, all.length > 1 ? undefined : 2)}\n`)
      continue
    }
    around.out(`${k > 0 ? "\n" : ""}${printed(edited, all.length > 1)}`)
    const copied = writeCopy(edited, request.out, around.cwd)
    if (copied === null) continue
    if ("fault" in copied) return refuse(copied.fault)
    around.out(`\n${wrap(copied.told, 80)}\n`)
  }
  return status
}

async function editsOf(file: string, text: string, options: EditOptions): Promise<Edited[]> {
  if (!holdsPatterns(text))
    return [{ name: file, report: editPattern(text, options), linesBefore: 0, file, text }]
  return (await patternsOf(text)).flatMap((one) =>
    one.text === null
      ? []
      : [
          {
            name: `${file}, ${one.name === null ? `the pattern in line ${one.line}` : `pattern ${one.name}`}`,
            report: editPattern(one.text, options),
            linesBefore: one.line,
            text: one.text,
          },
        ],
  )
}

/** Places are those of the file, of which a notebook's pattern is a part. */
function published({ report, linesBefore }: Edited): EditReport {
  const findings = report.findings.map((finding) => ({
    ...finding,
    line: finding.line + linesBefore,
  }))
  return { findings, corrected: report.corrected }
}

function printed(edited: Edited, named: boolean): string {
  const report = published(edited)
  const lines = [wrap(`${named ? `${edited.name}: ` : ""}${editSummary(report)}`, 80)]
  for (const { heading, items } of editParagraphs(report))
    lines.push("", heading, ...items.map((item) => wrap(item, 80, "  - ", "    ")))
  return `${lines.join("\n")}\n`
}

/** 0 = nothing must be mended, 1 = something must, 2 = there is no round to edit. */
function statusOf({ findings }: EditReport): 0 | 1 | 2 {
  if (findings.some(({ code }) => code === "no-pattern")) return 2
  return findings.some(({ severity }) => severity === "must-mend") ? 1 : 0
}

/** Names tried for the copy beside the one that was wanted. */
const mostNames = 100

/** Writes the corrected copy under a name that nothing has yet; null where nothing is to be corrected. */
function writeCopy(
  { file, text, report }: Edited,
  out: string | undefined,
  cwd: string,
): { readonly told: string } | { readonly fault: string } | null {
  if (file === undefined || report.corrected === text) return null
  const count = report.findings.filter(({ corrected }) => corrected).length
  for (let number = 1; number <= mostNames; number++) {
    const name = out ?? correctedName(file, number)
    if (existsSync(resolve(cwd, name))) {
      if (out !== undefined)
        return { fault: `${out} exists and is left alone. Name another with --out.` }
      continue
    }
    try {
      writeFileSync(resolve(cwd, name), report.corrected, { flag: "wx" })
    } catch (error) {
      return { fault: fileWords.unwritten(name, (error as NodeJS.ErrnoException).code) }
    }
    const what = count === 1 ? "The one wording" : `The ${count} wordings`
    return {
      told: `${what} that nothing speaks against ${count === 1 ? "is" : "are"} in the corrected copy: ${name}`,
    }
  }
  return { fault: `A hundred corrected copies of ${file} exist. Name another with --out.` }
}

/** `patterns/coaster.txt` -> `patterns/coaster-corrected.txt`. */
function correctedName(file: string, number: number): string {
  const ending = extname(file)
  const name = basename(file, ending)
  return join(dirname(file), `${name}-corrected${number > 1 ? `-${number}` : ""}${ending}`)
}
