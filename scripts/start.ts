// `pnpm start [FILE]`: the main job on the demo motif or on a pattern of your own. Prints the verdict
// and writes a report with charts to reports/out/, which git ignores.

import { readFileSync } from "node:fs"
import { basename, resolve } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import { printResult, readText, writePage } from "@roundwright/cli"
import { patternCellOf, patternNotebook, renderNotebook } from "@roundwright/notebook"

const root = resolve(import.meta.dirname, "..")
const file = process.argv[2]
process.exitCode = await (file === undefined ? demonstrate() : reportOn(file))

async function demonstrate(): Promise<number> {
  const notebook = readFileSync(resolve(root, "reports/lantern-wheel.md"), "utf8")
  const text = patternCellOf(notebook) ?? ""
  const result = checkPattern(text)
  process.stdout.write(printResult(result, text, false))
  const fault = await writeReport(notebook, "lantern-wheel")
  // The demo is there to show its verdict, whatever it is: only a fault of ours fails.
  return fault || result.exitStatus === 2 ? 2 : 0
}

async function reportOn(name: string): Promise<number> {
  const read = readText(process.env.INIT_CWD ?? process.cwd(), name)
  if ("fault" in read) {
    process.stderr.write(`${read.fault}\n`)
    return 2
  }
  const result = checkPattern(read.text, { file: name })
  process.stdout.write(printResult(result, read.text, false))
  if (result.exitStatus === 2) return 2
  const title = basename(name).replace(/\.[^.]+$/, "")
  const fault = await writeReport(patternNotebook(read.text, title), title)
  return fault ? 2 : result.exitStatus
}

async function writeReport(notebook: string, name: string): Promise<boolean> {
  const page = await renderNotebook(notebook)
  const target = `reports/out/${name}.html`
  const fault = writePage(root, target, page.html)
  process.stdout.write(`\n${fault ?? `The report with charts: ${target}`}\n`)
  return fault !== null
}
