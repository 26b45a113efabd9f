// What stands around the rounds: headings with what belongs to them ("Hook: 4 mm", "## Abbreviations" and its lines).

import type { Lines } from "./lines.ts"

export type SectionName =
  | "title"
  | "terms"
  | "yarn"
  | "hook"
  | "gauge"
  | "size"
  | "materials"
  | "abbreviations"
  | "special"
  | "notes"
  | "other"

export interface Section {
  readonly name: SectionName
  /** Where its value begins, behind the colon or on the next line, and where its last line ends. */
  readonly start: number
  readonly end: number
  readonly value: string
}

const names: readonly (readonly [SectionName, RegExp])[] = [
  ["title", /^(?:title|pattern name|name)$/],
  ["terms", /^(?:terms?|terminology|crochet terms|pattern terms)$/],
  ["yarn", /^(?:yarns?|wool|threads?|cotton|yarn used|yarn weight)$/],
  ["hook", /^(?:hooks?|hook size|crochet hook|needles?)$/],
  ["gauge", /^(?:gauge|tension)$/],
  [
    "size",
    /^(?:(?:finished |approx(?:imate)? |motif |square )?(?:size|measurements?|dimensions))$/,
  ],
  ["materials", /^(?:materials?|supplies|you(?: will)? need|what you(?: will)? need|notions)$/],
  [
    "abbreviations",
    /^(?:(?:us |uk )?abbreviations?(?: used)?|stitch(?:es)?(?: used)?|stitch key|key|stitch abbreviations)$/,
  ],
  [
    "special",
    /^(?:special (?:stitch(?:es)?|abbreviations?|techniques?)|stitch (?:guide|explanations?))$/,
  ],
  ["notes", /^(?:(?:pattern |designer'?s? )?notes?|tips?|important|instructions|pattern)$/],
]

/** A heading of its own or before a colon: marks of Markdown, then a few words. */
const headed =
  /^[ \t>•*_#-]{0,12}([A-Za-z][A-Za-z' ]{1,28}?)(?: ?\([^)]{0,24}\))?[*_ ]{0,4}(:|$)[*_]{0,3}[ \t]*/

export function sectionsOf(lines: Lines, isRound: (offset: number) => boolean): Section[] {
  const found: { name: SectionName; start: number; end: number; open: boolean }[] = []
  for (let line = 0; line < lines.count; line++) {
    const text = lines.lineText(line)
    const start = lines.starts[line]!
    const end = lines.endOf(line)
    if (isRound(start) || (text.trim() !== "" && isRound(end - 1))) {
      if (found.length > 0) found.at(-1)!.open = false
      continue
    }
    const heading = headed.exec(text)
    const name = heading && nameOf(heading[1]!)
    const alone = heading?.[2] === ""
    if (heading && name && (!alone || isAlone(text))) {
      const from = start + heading[0].length
      found.push({ name, start: from, end, open: true })
    } else if (/^\s{0,3}#{1,6}\s/.test(text)) {
      found.push({ name: "other", start: end, end, open: true })
    } else {
      const last = found.at(-1)
      if (last?.open && (text.trim() !== "" || goesOn(last, text, end))) last.end = end
      // Without a mark of its own a blank line ends a heading that had something to say on its line.
      if (last && text.trim() === "" && lines.text.slice(last.start, last.end).trim() !== "")
        last.open =
          last.name === "abbreviations" || last.name === "special" || last.name === "notes"
    }
  }
  return found.map(({ name, start, end }) => {
    const value = lines.text.slice(start, end)
    const trimmed = value.trimEnd()
    return { name, start, end: start + trimmed.length, value: trimmed }
  })
}

function goesOn(last: { name: SectionName }, text: string, _end: number): boolean {
  return text.trim() === "" && last.name === "other"
}

function nameOf(words: string): SectionName | null {
  const plain = words.trim().toLowerCase().replace(/\s+/g, " ")
  return names.find(([, pattern]) => pattern.test(plain))?.[0] ?? null
}

/** A line of its own is a heading where it is marked as one or set in capitals or ends there. */
function isAlone(text: string): boolean {
  return (
    /^\s{0,3}#/.test(text) ||
    /^\s*\*\*/.test(text) ||
    text.trim() === text.trim().toUpperCase() ||
    /^\s*[A-Z][a-z]+(?: [a-z]+)?\s*$/.test(text)
  )
}
