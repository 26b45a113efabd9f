// What reaches a terminal. File names and texts come from anybody: signs that would move its cursor, change its colours
// or turn its writing round are shown as what they are.

import { fileWords } from "./file-words.ts"

/** Control signs but line breaks and tabs, and those that set the direction of writing. */
const unsafe = /[^\P{Cc}\n\t]|[\u202a-\u202e\u2066-\u2069]/gu

/** Each such sign as \u and its number, which JSON reads as that sign again. */
export function plainly(text: string): string {
  return text.replace(unsafe, (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`)
}

/**
 * Ends the process quietly when a reader stops early (`| head`), and with a sentence and status 2 when what it prints
 * cannot be written.
 */
export function guardOutput({ stdout, stderr }: Pick<NodeJS.Process, "stdout" | "stderr">): void {
  stdout.on("error", ({ code }: NodeJS.ErrnoException) => {
    if (code === "EPIPE") process.exit()
    stderr.write(`${fileWords.outputFull(code)}\n`)
    process.exit(2)
  })
  // Nobody is left to be told.
  stderr.on("error", () => process.exit(2))
}
