// The cells that publish a pattern: its sheet, as it will print, and its technical edit.

import { unlessRefused } from "@roundwright/numerics"
import { editPattern, makeSheet, type Sheet, type SheetOptions } from "@roundwright/publishing"
import type { LaidOutPattern } from "./laid-out-pattern.ts"
import type { CellContent, CheckedPattern } from "./result.ts"

/**
 * @param laid the piece as it was laid out; undefined where it was not, now or at all
 * @param terms of the sheet; the pattern's own when absent
 */
export function publishingContent(
  kind: "edit" | "sheet",
  pattern: CheckedPattern,
  laid: LaidOutPattern | undefined,
  terms: string | undefined,
): CellContent {
  if (kind === "edit") return { kind, pattern, report: editPattern(pattern.text) }
  const check = laid?.check
  // A page that was opened shows the sheet that was made with it until something is changed.
  if (!check && pattern.result.laidOut)
    return { kind: "later", wanted: [{ wanted: { pattern: pattern.name } }] }
  const options: SheetOptions = {
    ...(terms === "US" || terms === "UK" ? { terms } : {}),
    ...(check ? { check } : { shape: "ledger" }),
  }
  const sheet = unlessRefused<Sheet | { why: string }, { why: string }>(
    () => makeSheet(pattern.readText, options),
    ({ message }) => ({ why: message }),
  )
  return { kind, pattern, sheet }
}
