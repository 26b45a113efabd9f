// What the designer says herself and the sheet only carries: name, copyright, notes, special stitches.

import type { Terms } from "@roundwright/stitches"
import { type Manuscript, sectionOf } from "../edit/manuscript.ts"
import { inOtherTerms } from "./in-other-terms.ts"

const ownLine =
  /^[^\S\n]{0,40}(?:[*_#>]{0,3}[^\S\n]{0,9})?((?:design(?:ed|er)?\b|by\b|pattern by\b|copyright\b|©|\(c\)|contact\b|version\b)[^\n]{0,160})$/gim

/** Lines that name the designer, a copyright, a contact or a version. */
export function linesOfDesigner({ text, rounds }: Manuscript): string[] {
  const outside = [
    text.slice(0, rounds[0]?.start ?? text.length),
    text.slice(rounds.at(-1)?.end ?? text.length),
  ]
  return outside.flatMap((part) => [...part.matchAll(ownLine)].map((match) => match[1]!.trim()))
}

export function notesOfDesigner(manuscript: Manuscript, terms: Terms): string[] {
  const notes = entriesOf(sectionOf(manuscript, "notes")?.value)
  return notes.map((note) => inOtherTerms(note, manuscript.reading.terms, terms))
}

export function specialOfDesigner(
  manuscript: Manuscript,
  terms: Terms,
): { name: string; how: string }[] {
  return entriesOf(sectionOf(manuscript, "special")?.value).map((own) => {
    const entry = inOtherTerms(own, manuscript.reading.terms, terms)
    const [, name, how] = /^([^:=–]{1,50})\s{0,9}[:=–](.+)$/.exec(entry) ?? []
    return name && how ? { name: name.trim(), how: how.trim() } : { name: "", how: entry }
  })
}

/** The lines of a section without the marks of lists. */
export function entriesOf(value: string | undefined): string[] {
  return (value ?? "")
    .split(/\r\n|\r|\n/)
    .map((line) => line.replace(/^[\s>•*+-]+/, "").trim())
    .filter((line) => line !== "")
}
