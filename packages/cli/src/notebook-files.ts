// Which notebooks a command means: files by name, or the Markdown files of a folder. A file called index.md
// is no notebook among them: it opens the index, and its links give the order.

import { readdirSync, statSync } from "node:fs"
import { basename, join, resolve } from "node:path"
import { readText } from "./read-file.ts"

export interface NotebookFile {
  readonly file: string
  readonly text: string
}

export interface NotebookFiles {
  readonly notebooks: readonly NotebookFile[]
  /** Text of the index.md among them. */
  readonly index: string | null
  /** True when a folder was named. */
  readonly isFolder: boolean
}

/** @param named files or folders as the user named them */
export function notebooksOf(
  cwd: string,
  named: readonly string[],
): NotebookFiles | { readonly fault: string } {
  const files: string[] = []
  let isFolder = false
  for (const name of named) {
    const inside = markdownIn(cwd, name)
    if (inside) isFolder = true
    files.push(...(inside ?? [name]))
  }
  const notebooks: NotebookFile[] = []
  let index: string | null = null
  const pages = new Map<string, string>()
  for (const file of files) {
    const read = readText(cwd, file)
    if ("fault" in read) return read
    if (files.length > 1 && basename(file).toLowerCase() === "index.md") {
      index = read.text
      continue
    }
    const other = pages.get(pageName(file))
    if (other) return { fault: `${file} and ${other} would become the same page.` }
    pages.set(pageName(file), file)
    notebooks.push({ file, text: read.text })
  }
  if (notebooks.length === 0) return { fault: `${named.join(", ")}: no notebook is there.` }
  return { notebooks, index, isFolder }
}

/** `reports/palm-house-pane.md` -> `palm-house-pane.html`. */
export function pageName(file: string): string {
  return `${basename(file).replace(/\.(md|markdown)$/i, "")}.html`
}

/** Markdown files of a folder, by name; null when it is none. */
function markdownIn(cwd: string, name: string): string[] | null {
  try {
    if (!statSync(resolve(cwd, name)).isDirectory()) return null
    return readdirSync(resolve(cwd, name))
      .filter((file) => /\.(md|markdown)$/i.test(file))
      .sort()
      .map((file) => join(name, file))
  } catch {
    // Whether and why it cannot be read is told when it is read.
    return null
  }
}
