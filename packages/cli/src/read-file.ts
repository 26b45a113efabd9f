// Reading the user's files: one that cannot be read, or never ends, is a message and never a stack trace or a wait.

import { closeSync, constants, fstatSync, openSync, readSync } from "node:fs"
import { resolve } from "node:path"
import { fileWords } from "./file-words.ts"

/** Larger files are no pattern: a whole book of patterns is below this. */
const largestFileBytes = 64 * 1024 * 1024

export type FileText = { readonly text: string } | { readonly fault: string }

/** The text of a plain file, or why it cannot be read, in words. Devices and pipes, which may have no end, are refused unread. */
export function readText(cwd: string, file: string): FileText {
  if (file.trim() === "") return { fault: fileWords.noName }
  let opened: number | undefined
  try {
    // Without waiting: opening a pipe that nobody writes to would never end.
    opened = openSync(resolve(cwd, file), constants.O_RDONLY | constants.O_NONBLOCK)
    const stats = fstatSync(opened)
    if (stats.isDirectory()) return { fault: fileWords.folder(file) }
    if (!stats.isFile()) return { fault: fileWords.noPlainFile(file) }
    if (stats.size > largestFileBytes) return { fault: fileWords.tooLong(file, stats.size) }
    const bytes = readAtMost(opened, largestFileBytes, stats.size)
    return bytes === null
      ? { fault: fileWords.tooLong(file, largestFileBytes) }
      : { text: bytes.toString("utf8") }
  } catch (error) {
    return { fault: fileWords.unread(file, (error as NodeJS.ErrnoException).code) }
  } finally {
    if (opened !== undefined) closeSync(opened)
  }
}

/** All there is; null where that is more than `most` bytes, whatever the file says of its size. */
function readAtMost(file: number, most: number, expected: number): Buffer | null {
  const parts: Buffer[] = []
  let length = 0
  for (;;) {
    const part = Buffer.allocUnsafe(Math.max(64 * 1024, Math.min(expected + 1, most)))
    const count = readSync(file, part)
    if (count === 0) return Buffer.concat(parts)
    length += count
    if (length > most) return null
    parts.push(part.subarray(0, count))
  }
}
