// The text of a pattern in a notebook of reports/, a cell or a block that only shows it.

import { readFileSync } from "node:fs"
import { resolve } from "node:path"

export function notebookPattern(folder: string, file: string, name: string): string {
  const text = readFileSync(resolve(folder, file), "utf8")
  const found = new RegExp(`^\`\`\`(?:pattern|text) name=${name}\\n([\\s\\S]*?)^\`\`\``, "m").exec(
    text,
  )
  if (!found) throw new Error(`${file} has no pattern ${name}.`)
  return found[1]!
}
