// The technical edit of a finished text: every finding with its place, reason and wording, and a corrected copy.

import type { EditSeverity } from "./codes.ts"
import type { EditFinding, EditReport, Remark } from "./finding.ts"
import { type Manuscript, readManuscript } from "./manuscript.ts"
import { rules } from "./rules.ts"
import { chartAgainstText } from "./rules-of-chart.ts"

export interface EditOptions {
  /** The file of its chart, as `printChart` writes it, to be held against the text. */
  readonly chart?: string
}

/**
 * Edits a written pattern. Never throws on anything a text can hold; the same text gives the same report.
 * @throws RoundwrightError `chart-not-read` for a chart that is none of ours
 */
export function editPattern(text: string, options: EditOptions = {}): EditReport {
  const manuscript = readManuscript(text)
  const found = rules.flatMap((rule) => rule(manuscript))
  if (options.chart !== undefined) found.push(...chartAgainstText(manuscript, options.chart))
  const remarks = withoutEchoes(found)
  const applied = corrections(remarks)
  const findings = remarks
    .map((remark) => findingOf(manuscript, remark, applied.has(remark)))
    .sort((a, b) => ranks[a.severity] - ranks[b.severity] || a.line - b.line || a.column - b.column)
  return { findings, corrected: correct(text, [...applied]) }
}

const ranks: Readonly<Record<EditSeverity, number>> = { "must-mend": 0, query: 1, style: 2 }

/** Codes that tell by themselves why a round could not be read, so that what follows from it is not told again. */
const roots: ReadonlySet<string> = new Set(["terms-mixed", "round-not-labelled"])
const echoes: ReadonlySet<string> = new Set(["not-understood", "not-settled"])

/** One thing is told once: of two alike at one place the first, and not what only follows from another. */
function withoutEchoes(remarks: readonly Remark[]): Remark[] {
  const rooted = new Set(remarks.filter(({ code }) => roots.has(code)).map(({ round }) => round))
  const unnumbered = new Set(
    remarks.filter(({ code }) => code === "round-not-labelled").map(({ round }) => round),
  )
  const seen = new Set<string>()
  return remarks.filter((remark) => {
    const key = `${remark.code}:${remark.start}:${remark.end}`
    if (seen.has(key)) return false
    seen.add(key)
    if (remark.code === "round-missing" && unnumbered.has(remark.round! - 1)) return false
    return !(echoes.has(remark.code) && remark.round !== null && rooted.has(remark.round))
  })
}

function findingOf({ lines }: Manuscript, remark: Remark, corrected: boolean): EditFinding {
  const { severity, code, round, start, end, message, wording = null } = remark
  return { severity, code, round, ...lines.place(start, end), message, wording, corrected }
}

/** The wordings that go into the copy: those that nothing speaks against, none over another. */
function corrections(remarks: readonly Remark[]): Set<Remark> {
  const taken: Remark[] = []
  for (const remark of remarks) {
    if (!remark.sure || remark.wording === undefined) continue
    const clash = taken.some(({ start, end }) => remark.start < end && start < remark.end)
    if (!clash) taken.push(remark)
  }
  return new Set(taken)
}

function correct(text: string, taken: readonly Remark[]): string {
  const order = taken
    .map((remark, k) => ({ remark, k }))
    .sort((a, b) => b.remark.start - a.remark.start || b.k - a.k)
  return order.reduce(
    (copy, { remark }) => copy.slice(0, remark.start) + remark.wording! + copy.slice(remark.end),
    text,
  )
}
