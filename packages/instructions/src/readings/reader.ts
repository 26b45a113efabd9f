// What the reading of every round of a text shares, and where a round stands in it.

import type { Terms } from "@roundwright/stitches"
import type { Span } from "../base/tree.ts"
import type { PatternText, RoundText } from "../text/layout.ts"
import type { ProseFound } from "../text/prose.ts"
import { lineAt, type SourceText } from "../text/source-text.ts"

export interface Reader {
  readonly source: SourceText
  readonly layout: PatternText
  readonly terms: Terms
  readonly prose: ProseFound
  readonly budget: { stepsLeft: number }
}

/** A stretch of text without the blanks at its ends. */
export function trimmed(clean: string, span: Span): Span {
  const text = clean.slice(span.start, span.end)
  const lead = text.length - text.trimStart().length
  return { start: span.start + lead, end: span.start + text.trimEnd().length }
}

/** Offset, line and end of a round's text. */
export function placeOfRound(reader: Reader, text: RoundText): { line: number; span: Span } {
  const { layout, source } = reader
  const end = Math.max(text.start, trimmed(layout.clean, { start: text.start, end: text.end }).end)
  return { line: lineAt(source, text.start), span: { start: text.start, end } }
}
