// What `help`, `--help` and a mistyped command say: the whole usage, or the part of one command.

import { usage } from "./usage.ts"

const begins = /^ {2}roundwright ([a-z-]+)/

/** The lines of one command, with the exit statuses that all share; null for a name there is no command of. */
export function helpOf(name: string): string | null {
  const lines = usage.trimEnd().split("\n")
  const statuses = lines.findIndex((line) => line.startsWith("Exit status"))
  const own: string[] = []
  let reading = false
  for (const line of lines.slice(0, statuses)) {
    const begun = begins.exec(line)
    if (begun) reading = begun[1] === name
    if (reading && line !== "") own.push(line.replace(/^ {2}/, ""))
  }
  if (own.length === 0) return null
  return `${[...own, "", ...lines.slice(statuses)].join("\n")}\n`
}

/** Of all the names the one that was likely meant; null where none is near. */
export function nearest(typed: string, names: readonly string[]): string | null {
  const word = typed.toLowerCase().slice(0, longestTyped)
  let best: { name: string; off: number } | null = null
  for (const name of names) {
    const off = word.length >= shortestStart && name.startsWith(word) ? 0 : slips(word, name)
    if (off <= mostSlips && (best === null || off < best.off)) best = { name, off }
  }
  return best?.name ?? null
}

/** Letters wrong, missing, too many or changed about that a hurried hand makes in a word of six to eleven letters. */
const mostSlips = 2
/** So many first letters of a command name it. */
const shortestStart = 3
const longestTyped = 40

/** Edits that lead from one word to the other, two neighbours changed about counting as one. */
function slips(a: string, b: string): number {
  const rows = Array.from({ length: a.length + 1 }, (_, i) => [i, ...b].map((_c, j) => i + j))
  for (let i = 1; i <= a.length; i++)
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1
      const row = rows[i]!
      row[j] = Math.min(rows[i - 1]![j]! + 1, row[j - 1]! + 1, rows[i - 1]![j - 1]! + same)
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        row[j] = Math.min(row[j]!, rows[i - 2]![j - 2]! + 1)
    }
  return rows[a.length]![b.length]!
}
