// Reading and writing the user's files: a file that cannot be read is a message, never a stack trace,
// and a file of the user's is never overwritten.

import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs"
import { dirname, resolve } from "node:path"

/** Larger files are no pattern: a whole book of patterns is below this. */
const largestFileBytes = 64 * 1024 * 1024

export type FileText = { readonly text: string } | { readonly fault: string }

/** The text of a file, or why it cannot be read, in words. */
export function readText(cwd: string, file: string): FileText {
  if (file.trim() === "") return { fault: "The name of a file is empty." }
  const path = resolve(cwd, file)
  try {
    const stats = statSync(path)
    if (stats.isDirectory()) return { fault: `${file} is a folder, not a file.` }
    if (stats.size > largestFileBytes)
      return {
        fault: `${file} is ${Math.round(stats.size / 1e6)} MB long, too long for a pattern.`,
      }
    return { text: readFileSync(path, "utf8") }
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code
    if (code === "ENOENT") return { fault: `${file}: there is no such file.` }
    if (code === "EACCES") return { fault: `${file} may not be read (no permission).` }
    return { fault: `${file} cannot be read (${code ?? "unknown reason"}).` }
  }
}

/** Marks a page this tool wrote, so that it may be written anew. */
const ownMark = '<meta name="generator" content="Roundwright">'

/** Why a page may not be written there, in words; null where it may: an existing file is replaced only if it is such a page. */
export function refusedPage(cwd: string, file: string): string | null {
  if (file.trim() === "") return "The name of the page is empty."
  if (!existsSync(resolve(cwd, file))) return null
  const existing = readText(cwd, file)
  if ("fault" in existing) return existing.fault
  return existing.text.slice(0, 4096).includes(ownMark)
    ? null
    : `${file} exists and is not a page of ours: it is left alone. Name another with --out.`
}

/** Writes a page, unless it is refused. @returns a fault in words, or null */
export function writePage(cwd: string, file: string, html: string): string | null {
  const refused = refusedPage(cwd, file)
  if (refused !== null) return refused
  const path = resolve(cwd, file)
  try {
    mkdirSync(dirname(path), { recursive: true })
    writeFileSync(path, html)
    return null
  } catch (error) {
    return `${file} cannot be written (${(error as NodeJS.ErrnoException).code ?? "unknown reason"}).`
  }
}
