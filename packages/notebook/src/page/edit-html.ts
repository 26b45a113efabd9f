// The technical edit of a pattern in a page: its text with every finding underlined, and the findings in an editor's
// order. Each finding leads to its words and back; a live page puts a button beside those that bring a wording.

import {
  type EditFinding,
  type EditReport,
  type EditSeverity,
  editSummary,
} from "@roundwright/publishing"
import type { CheckedPattern } from "../result.ts"
import { ofPiece } from "./common.ts"
import { type Child, element, type Html } from "./html.ts"
import type { PageSoFar } from "./page-so-far.ts"

const parts: readonly (readonly [EditSeverity, string])[] = [
  ["must-mend", "Must be mended"],
  ["query", "Queries to the designer"],
  ["style", "Style"],
]

/** Longer lines are cut on the page, and findings past this many usually follow from those before. */
const [mostShown, mostFindings] = [2_000, 80]

export function editHtml(
  cell: number,
  pattern: CheckedPattern,
  report: EditReport,
  { alone }: PageSoFar,
): Html[] {
  const findings = report.findings.slice(0, mostFindings)
  const idOf = (index: number) => `edit-${cell + 1}-${index + 1}`
  const rest = report.findings.length - findings.length
  return [
    element("p", { class: "label" }, `Technical edit${ofPiece(pattern, alone)}`),
    element("p", {}, element("strong", {}, editSummary(report))),
    element("pre", {}, textWithFindings(pattern.text, findings, idOf)),
    ...parts.flatMap(([severity, heading]) => partHtml(heading, severity, findings, idOf)),
    ...(rest > 0 ? [element("p", { class: "after" }, `... and ${rest} more findings.`)] : []),
  ]
}

function partHtml(
  heading: string,
  severity: EditSeverity,
  findings: readonly EditFinding[],
  idOf: (index: number) => string,
): Html[] {
  const own = findings.flatMap((finding, index) =>
    finding.severity === severity ? [itemHtml(finding, index + 1, idOf(index))] : [],
  )
  if (own.length === 0) return []
  return [element("p", { class: "part" }, heading), element("ol", { class: "found" }, own)]
}

function itemHtml(finding: EditFinding, number: number, id: string): Html {
  const { round, line, column, length, message, wording, severity, corrected } = finding
  const where = round === null ? `line ${line}` : `round ${round}`
  return element(
    "li",
    {
      id: `${id}-why`,
      class: severity,
      "data-place": `${line}:${column}:${length}`,
      "data-wording": wording,
      "data-sure": corrected,
    },
    element("a", { class: "where", href: `#${id}` }, `${number}, ${where}`),
    ` ${message}`,
    wording === null ? null : element("span", { class: "hint" }, wordingSaid(finding)),
  )
}

function wordingSaid({ wording, length }: EditFinding): Child {
  if (!wording) return "Strike it out."
  const lines = wording.trim().split("\n")
  return [length === 0 ? "Add: " : "Write: ", element("code", {}, lines.join(" / "))]
}

/** Every line, the words of findings underlined with their number behind them; where several overlap the first counts. */
function textWithFindings(
  text: string,
  findings: readonly EditFinding[],
  idOf: (index: number) => string,
): Html[] {
  const byLine = new Map<number, { finding: EditFinding; index: number }[]>()
  findings.forEach((finding, index) => {
    byLine.set(finding.line, [...(byLine.get(finding.line) ?? []), { finding, index }])
  })
  return text.split(/\r\n|\r|\n/).map((line, k) => {
    const pieces: Child[] = []
    let at = 0
    const own = (byLine.get(k + 1) ?? []).sort((a, b) => a.finding.column - b.finding.column)
    for (const { finding, index } of own) {
      const start = Math.min(finding.column - 1, line.length, mostShown)
      const end = Math.max(at, Math.min(start + finding.length, line.length, mostShown))
      if (start > at) pieces.push(line.slice(at, start))
      const from = Math.max(start, at)
      const label = element(
        "a",
        { class: "number", href: `#${idOf(index)}-why`, "aria-label": `Finding ${index + 1}` },
        String(index + 1),
      )
      pieces.push(
        element(
          "mark",
          { class: finding.severity, id: idOf(index), title: finding.message },
          line.slice(from, end),
          label,
        ),
      )
      at = Math.max(at, end)
    }
    if (at < line.length) pieces.push(line.slice(at, mostShown))
    if (line.length > mostShown) pieces.push("...")
    return element("span", { class: "line" }, pieces)
  })
}

export const editStyle = `
.edit pre { margin: 0 0 1rem; padding: 0.9rem 1.05rem; background: var(--tint); border-top: 1px solid var(--line); border-bottom: 1px solid var(--line); font-size: 0.82rem; line-height: 1.75; }
.edit .line { display: block; min-height: 1.75em; padding-left: 2.5em; text-indent: -2.5em; white-space: pre-wrap; overflow-wrap: anywhere; }
.edit .part { font: 600 0.88rem/1.4 var(--sans); margin: 1rem 0 0; }
.edit .found { margin-top: 0; }
.edit mark.query { text-decoration-color: var(--accent); text-decoration-style: dashed; }
.edit mark.style { text-decoration-color: var(--quiet); text-decoration-style: dotted; }
.edit .number { font: 600 0.66rem/1 var(--sans); vertical-align: super; text-decoration: none; padding: 0 0.15em; text-indent: 0; }
.edit .where { white-space: nowrap; }
.edit :target { background: color-mix(in srgb, var(--accent) 18%, transparent); }
.edit .hint code { overflow-wrap: anywhere; }
@media (max-width: 34rem) { .edit pre { margin: 0 -1rem 1rem; padding: 0.8rem 1rem; } .edit .line { padding-left: 1.2em; text-indent: -1.2em; } }
@media print { .edit pre { padding: 0.4rem 0; } .edit li { break-inside: avoid; } }`.trim()
