// `pnpm start [FILE]`: the main job on the demo motif or on a pattern of your own. Prints the verdict
// and writes a report with charts to reports/out/, which git ignores.

import { readFileSync } from "node:fs"
import { basename, resolve } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import { holdsPatterns, printResult, readText, showProgress, writePage } from "@roundwright/cli"
import {
  type ComputeOptions,
  computeNotebook,
  patternNotebook,
  renderLivePage,
} from "@roundwright/notebook"

// A reader that stops early (`| head`) closes the pipe: that ends the command, it is no fault.
process.stdout.on("error", (error: NodeJS.ErrnoException) => {
  if (error.code === "EPIPE") process.exit()
  throw error
})

const root = resolve(import.meta.dirname, "..")
const file = process.argv[2]
process.exitCode = await (file === undefined ? demonstrate() : reportOn(file))

/** The demo is there to show its verdict, whatever it is: only a fault of ours fails. */
async function demonstrate(): Promise<number> {
  const notebook = readFileSync(resolve(root, "reports/lantern-wheel.md"), "utf8")
  return (await report(notebook, "lantern-wheel")) === null ? 2 : 0
}

async function reportOn(name: string): Promise<number> {
  const read = readText(process.env.INIT_CWD ?? process.cwd(), name)
  if ("fault" in read) {
    process.stderr.write(`${read.fault}\n`)
    return 2
  }
  const page = basename(name).replace(/\.[^.]+$/, "")
  if (holdsPatterns(read.text)) return (await report(read.text, page)) ?? 2
  const checked = checkPattern(read.text)
  if (checked.exitStatus === 2) {
    process.stdout.write(printResult(checked, read.text))
    return 2
  }
  const notebook = patternNotebook(read.text, checked.motif?.title ?? page)
  return (await report(notebook, page, { check: () => checked })) ?? 2
}

/** Prints the result of the notebook's first pattern and writes its page. @returns its exit status, null on a fault */
async function report(
  markdown: string,
  name: string,
  options: ComputeOptions = {},
): Promise<number | null> {
  showProgress("Working the piece stitch by stitch and laying it out ...")
  const computed = await computeNotebook(markdown, options)
  showProgress("")
  const first = computed.cells.find((cell) => cell.content?.kind === "pattern")?.content
  if (first?.kind !== "pattern") return null
  process.stdout.write(printResult(first.pattern.result, first.pattern.text))
  const target = `reports/out/${name}.html`
  const fault = writePage(root, target, await renderLivePage(computed, markdown))
  process.stdout.write(`\n${fault ?? `The report with charts: ${target}`}\n`)
  return fault === null ? first.pattern.result.exitStatus : null
}
