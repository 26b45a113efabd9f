// `pnpm start [FILE]`: the main job on the demo motif or on a pattern of your own. Prints the verdict
// and writes a report with charts to reports/out/, which git ignores.

import { readFileSync } from "node:fs"
import { basename, dirname, resolve } from "node:path"
import { checkPattern } from "@roundwright/assessment"
import {
  guardOutput,
  holdsPatterns,
  madeFrom,
  picturesIn,
  plainly,
  printResult,
  readText,
  showProgress,
  writePage,
} from "@roundwright/cli"
import {
  type ComputeOptions,
  computeNotebook,
  patternNotebook,
  renderLivePage,
} from "@roundwright/notebook"

guardOutput(process)
const say = (text: string) => process.stdout.write(plainly(text))

const root = resolve(import.meta.dirname, "..")
const file = process.argv[2]
process.exitCode = await (file === undefined ? demonstrate() : reportOn(file))

/** The demo is there to show its verdict, whatever it is: only a fault of ours fails. */
async function demonstrate(): Promise<number> {
  const file = resolve(root, "reports/palm-house-pane.md")
  return (await report(readFileSync(file, "utf8"), file)) === null ? 2 : 0
}

async function reportOn(name: string): Promise<number> {
  const cwd = process.env.INIT_CWD ?? process.cwd()
  const read = readText(cwd, name)
  if ("fault" in read) {
    process.stderr.write(plainly(`${read.fault}\n`))
    return 2
  }
  const from = resolve(cwd, name)
  if (holdsPatterns(read.text)) return (await report(read.text, from)) ?? 2
  const checked = checkPattern(read.text, { remedies: false })
  if (checked.exitStatus === 2) {
    say(printResult(checked, read.text))
    return 2
  }
  const notebook = patternNotebook(read.text, checked.motif?.title ?? pageOf(from))
  return (await report(notebook, from, { check: () => checked })) ?? 2
}

/** Prints the result of the notebook's first pattern and writes its page. @param from the file it was read from @returns its exit status, null on a fault */
async function report(
  markdown: string,
  from: string,
  options: ComputeOptions = {},
): Promise<number | null> {
  showProgress("Working the piece stitch by stitch and laying it out ...")
  const picture = picturesIn(dirname(from))
  const computed = await computeNotebook(markdown, { picture, ...options })
  showProgress("")
  const first = computed.cells.find((cell) => cell.content?.kind === "pattern")?.content
  if (first?.kind !== "pattern") return null
  say(printResult(first.pattern.result, first.pattern.text))
  const target = `reports/out/${pageOf(from)}.html`
  const html = await renderLivePage(computed, markdown)
  const placed = writePage(root, target, html, madeFrom(root, from, target))
  if ("fault" in placed) {
    process.stderr.write(plainly(`\n${placed.fault}\n`))
    return null
  }
  say(`\n${placed.told ? `${placed.told}\n` : ""}The report with charts: ${placed.file}\n`)
  return first.pattern.result.exitStatus
}

/** `a/coaster.txt` -> `coaster`. */
function pageOf(file: string): string {
  return basename(file).replace(/\.[^.]+$/, "")
}
