// The report of an edit in words, for a person: three parts in an editor's order, each finding with its place.

import type { EditSeverity } from "./codes.ts"
import type { EditFinding, EditReport } from "./finding.ts"

const parts: readonly (readonly [EditSeverity, string])[] = [
  ["must-mend", "Must be mended"],
  ["query", "Queries to the designer"],
  ["style", "Style"],
]

/** Paragraphs of the report; the caller breaks their lines. */
export function editParagraphs({
  findings,
}: EditReport): readonly { readonly heading: string; readonly items: readonly string[] }[] {
  return parts
    .map(([severity, heading]) => ({
      heading,
      items: findings.filter((finding) => finding.severity === severity).map(itemOf),
    }))
    .filter(({ items }) => items.length > 0)
}

/** "Nothing to mend.", or how much there is of what. */
export function editSummary({ findings }: EditReport): string {
  const count = (severity: EditSeverity) =>
    findings.filter((finding) => finding.severity === severity).length
  const [mend, queries, style] = [count("must-mend"), count("query"), count("style")]
  const told = [
    mend === 0
      ? "Nothing must be mended"
      : `${mend} ${mend === 1 ? "thing" : "things"} must be mended`,
    queries === 0 ? "" : `${queries} ${queries === 1 ? "query" : "queries"} to the designer`,
    style === 0 ? "" : `${style} ${style === 1 ? "matter" : "matters"} of style`,
  ].filter((part) => part !== "")
  return `${told.join(", ")}.`
}

function itemOf({ round, line, column, message, wording, length }: EditFinding): string {
  const where = round === null ? `line ${line}` : `round ${round}, line ${line}`
  return `${capital(where)}:${column}: ${message}${wordingOf(wording, length)}`
}

function wordingOf(wording: string | null, length: number): string {
  if (wording === null) return ""
  if (wording === "") return " Strike it out."
  return ` ${length === 0 ? "Add" : "Write"}: ${wording.trim()}`
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
