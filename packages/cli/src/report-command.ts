// `roundwright report NOTEBOOK...` and `roundwright new`: notebooks to HTML files, and an index of several.

import { basename, dirname, join, resolve } from "node:path"
import type { NotebookResult } from "@roundwright/notebook"
import { type NotebookFile, notebooksOf, pageName } from "./notebook-files.ts"
import { readText } from "./read-file.ts"
import type { Surroundings } from "./surroundings.ts"
import { madeFrom, placePage, writePage } from "./write-page.ts"

export interface ReportRequest {
  readonly files: readonly string[]
  readonly out: string | undefined
  /** Without the script that lets the page be changed: smaller, and complete all the same. */
  readonly plain: boolean
}

export async function runReport(request: ReportRequest, around: Surroundings): Promise<number> {
  const { files, out, plain } = request
  const folderOf = (file: string) => dirname(resolve(around.cwd, file))
  const [first, ...more] = files
  if (first === undefined) {
    around.err("roundwright report: name a notebook (a Markdown file) or a folder of them.\n")
    return 2
  }
  const found = notebooksOf(around.cwd, files)
  if ("fault" in found) {
    around.err(`roundwright report: ${found.fault}\n`)
    return 2
  }
  if (more.length > 0 || found.isFolder)
    return reportAll(found.notebooks, found.index, out, plain, around)
  const target = out ?? pageName(first)
  const read = readText(around.cwd, first)
  if ("fault" in read) {
    around.err(`roundwright report: ${read.fault}\n`)
    return 2
  }
  const source = madeFrom(around.cwd, first, target)
  return (await writeNotebook("report", read.text, target, source, !plain, around, folderOf(first)))
    .status
}

/** A page for a motif of one's own: a pattern to write over, everything else following. */
export async function runNew(out: string | undefined, around: Surroundings): Promise<number> {
  const { blankNotebook } = await import("@roundwright/notebook")
  const target = out ?? "my-motif.html"
  const made = await writeNotebook(
    "new",
    blankNotebook(),
    target,
    "new",
    true,
    around,
    around.cwd,
    "no searches",
  )
  return made.status
}

/** A page for each notebook, and the index. */
async function reportAll(
  notebooks: readonly NotebookFile[],
  index: string | null,
  out: string | undefined,
  plain: boolean,
  around: Surroundings,
): Promise<number> {
  const { computeNotebook, linksIn, renderIndex } = await import("@roundwright/notebook")
  const folder = out ?? "."
  const order = index === null ? [] : linksIn(index)
  const place = (file: string) => {
    const at = order.indexOf(basename(file))
    return at < 0 ? order.length : at
  }
  const folderOf = (file: string) => dirname(resolve(around.cwd, file))
  const sorted = [...notebooks].sort((a, b) => place(a.file) - place(b.file))
  const entries: { file: string; notebook: NotebookResult }[] = []
  let status = 0
  for (const { file, text } of sorted) {
    const page = join(folder, pageName(file))
    const source = madeFrom(around.cwd, file, page)
    const written = await writeNotebook(
      "report",
      text,
      page,
      source,
      !plain,
      around,
      folderOf(file),
    )
    status = Math.max(status, written.status)
    if (written.notebook) entries.push({ file: basename(written.file), notebook: written.notebook })
  }
  const introduction = index === null ? null : await computeNotebook(index)
  const html = await renderIndex(
    introduction ? { title: introduction.title, introduction } : { title: "Reports" },
    entries,
  )
  const target = join(folder, "index.html")
  const placed = writePage(around.cwd, target, html, "index")
  if ("fault" in placed) {
    around.err(`roundwright report: ${placed.fault}\n`)
    return 2
  }
  if (placed.told) around.out(`${placed.told}\n`)
  around.out(`The index: written to ${placed.file}\n`)
  return status
}

async function writeNotebook(
  command: string,
  markdown: string,
  target: string,
  source: string,
  live: boolean,
  around: Surroundings,
  folder: string,
  mode?: "no searches",
): Promise<{
  readonly status: number
  readonly file: string
  readonly notebook: NotebookResult | null
}> {
  const refuse = (fault: string) => {
    around.err(`roundwright ${command}: ${fault}\n`)
    return { status: 2, file: target, notebook: null }
  }
  // Told before the work is done, which may take a minute.
  const place = placePage(around.cwd, target, source)
  if ("fault" in place) return refuse(place.fault)
  // Loaded only here: pages need the chart and Markdown libraries, `check` does not.
  const { computeNotebook, renderLivePage, renderPage } = await import("@roundwright/notebook")
  const { picturesIn } = await import("./picture-file.ts")
  const notebook = await computeNotebook(markdown, {
    ...(mode ? { square: () => null } : {}),
    picture: picturesIn(folder),
  })
  const html = live ? await renderLivePage(notebook, markdown) : await renderPage(notebook)
  const placed = writePage(around.cwd, target, html, source)
  if ("fault" in placed) return refuse(placed.fault)
  if (placed.told) around.out(`${placed.told}\n`)
  around.out(`${notebook.title}: written to ${placed.file}\n`)
  const toMend = notebook.problems.filter((problem) => problem.severity !== "note")
  for (const problem of toMend) around.out(`  line ${problem.line}: ${problem.message}\n`)
  return { status: toMend.length > 0 ? 1 : 0, file: placed.file, notebook }
}
