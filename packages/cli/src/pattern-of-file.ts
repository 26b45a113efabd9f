// The one pattern of a file, which may be a notebook.

import { listed } from "@roundwright/instructions"
import { RoundwrightError } from "@roundwright/numerics"
import { holdsPatterns, patternsOf } from "./notebook-patterns.ts"
import { readText } from "./read-file.ts"

/**
 * @param name which pattern of a notebook; its first where absent and the command may choose
 * @throws RoundwrightError `no-pattern`
 */
export async function patternOfFile(cwd: string, file: string, name?: string): Promise<string> {
  const read = readText(cwd, file)
  if ("fault" in read) throw refused(read.fault, "Name a pattern in a text or Markdown file.")
  if (!holdsPatterns(read.text)) return read.text
  const found = (await patternsOf(read.text)).flatMap((one) =>
    one.text === null ? [] : [{ name: one.name, text: one.text }],
  )
  const names = listed(found.map((one) => one.name ?? "?"))
  const chosen = name === undefined ? found : found.filter((one) => one.name === name)
  const [first, ...others] = chosen
  if (first && others.length === 0) return first.text
  if (!first) throw refused(`${file} is a notebook, and no such pattern in it can be read.`, names)
  throw refused(
    `${file} is a notebook of ${found.length} patterns (${names}).`,
    `Say which is meant: --pattern ${found[0]!.name ?? "NAME"}.`,
  )
}

function refused(message: string, hint: string): RoundwrightError {
  return new RoundwrightError("no-pattern", message, { hint })
}
