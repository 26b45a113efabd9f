// The words after a fence: the kind of cell, then options as `key=value` or `key="some words"`.

import type { Place } from "@roundwright/numerics"
import { type CellKind, cellKinds } from "./written-cell.ts"

export interface InfoOption {
  readonly key: string
  readonly value: string
  /** Offset of the option in the info string. */
  readonly at: number
  readonly length: number
}

export interface InfoReading {
  readonly options: readonly InfoOption[]
  /** What could not be read as options: the words and where they stand. */
  readonly faults: readonly { readonly text: string; readonly at: number; readonly why: string }[]
}

/** @param info all after the fence and the kind, as written */
export function readInfo(info: string): InfoReading {
  const options: InfoOption[] = []
  const faults: { text: string; at: number; why: string }[] = []
  const seen = new Set<string>()
  // One option, or one run of other characters; each branch starts on a different character class.
  for (const match of info.matchAll(/([A-Za-z][\w-]{0,40})=(?:"([^"]*)"|([^\s"]*))(?=\s|$)|\S+/g)) {
    const [text, key, quoted, bare] = match
    const at = match.index
    if (key === undefined) faults.push({ text, at, why: "is not written as key=value" })
    else if (seen.has(key)) faults.push({ text, at, why: "is given twice" })
    else {
      seen.add(key)
      options.push({ key, value: quoted ?? bare ?? "", at, length: text.length })
    }
  }
  return { options, faults }
}

/** The kind a fence names, or the kind it probably means when one or two letters are off. */
export function readKind(word: string): { kind: CellKind } | { meant: CellKind } | null {
  const kind = cellKinds.find((known) => known === word)
  if (kind) return { kind }
  if (word.length > 20) return null
  const meant = cellKinds.find((known) => lettersApart(known, word.toLowerCase()) <= 2)
  return meant && word.length >= 5 ? { meant } : null
}

/** Place of an option in the notebook, given where the info string starts. */
export function placeInInfo(line: number, column: number, at: number, length: number): Place {
  return { line, column: column + at, length: Math.max(1, length) }
}

/** Levenshtein distance of two short words. */
function lettersApart(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, index) => index)
  for (let i = 1; i <= a.length; i += 1) {
    const next = [i]
    for (let j = 1; j <= b.length; j += 1)
      next.push(
        Math.min(row[j]! + 1, next[j - 1]! + 1, row[j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1)),
      )
    row = next
  }
  return row[b.length]!
}
