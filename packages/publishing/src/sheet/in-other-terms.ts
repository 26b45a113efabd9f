// The designer's own sentences in the other terms: only the names of stitches change.

import { inTerms } from "@roundwright/assessment"
import type { Terms } from "@roundwright/stitches"

const us: Readonly<Record<string, string>> = {
  dc: "sc",
  htr: "hdc",
  tr: "dc",
  dtr: "tr",
  trtr: "dtr",
  tension: "gauge",
  miss: "skip",
}

export function inOtherTerms(line: string, from: Terms, to: Terms): string {
  if (from === to) return line
  if (from === "US") return inTerms(line, to)
  return line.replace(/\b(?:dc|htr|tr|dtr|trtr|tension|miss)\b/g, (name) => us[name]!)
}
