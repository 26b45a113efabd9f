// What the reader of patterns tells, as an editor would: counts, places, repeats, brackets, numbers of rounds.

import type { Problem, ProblemCode } from "@roundwright/instructions"
import type { EditCode } from "./codes.ts"
import type { Remark } from "./finding.ts"
import { isBorneOut, type Manuscript } from "./manuscript.ts"

interface Row {
  readonly code: EditCode
  /** The reader sees it without understanding the round, so that words passed over do not matter. */
  readonly plain?: true
  /** What goes before it has to be sure; it is itself what makes the round doubtful. */
  readonly before?: true
  /** Never more than asked. */
  readonly asked?: true
}

const rows: Partial<Readonly<Record<ProblemCode | "size-unlike-gauge", Row>>> = {
  "stitches-left-over": { code: "stitches-left-over" },
  "spaces-left-over": { code: "stitches-left-over" },
  "stitches-passed-over": { code: "stitches-left-over" },
  "uneven-at-join": { code: "stitches-left-over", asked: true },
  "first-place-short": { code: "stitches-left-over", asked: true },
  "open-at-join": { code: "stitches-left-over", asked: true },
  "repeat-does-not-divide": { code: "repeat-does-not-fit" },
  "last-time-in-part": { code: "repeat-does-not-fit", asked: true },
  "skip-runs-out": { code: "repeat-does-not-fit", asked: true },
  "needs-more-than-there-is": { code: "repeat-does-not-fit" },
  "nothing-left": { code: "repeat-does-not-fit" },
  "repeat-without-end": { code: "repeat-does-not-fit" },
  "named-space-absent": { code: "place-not-there" },
  "named-stitch-absent": { code: "place-not-there", asked: true },
  "no-such-place": { code: "place-not-there" },
  "no-such-round": { code: "place-not-there" },
  "chain-used-up": { code: "place-not-there" },
  "bracket-not-closed": { code: "bracket-open" },
  "repeat-start-missing": { code: "repeat-marks-missing" },
  "repeat-end-missing": { code: "repeat-marks-missing" },
  "repeat-implied": { code: "repeat-marks-missing", asked: true },
  "round-missing": { code: "round-missing", before: true },
  "round-number-again": { code: "round-number-again" },
  "round-without-number": { code: "round-not-labelled", asked: true },
  "round-without-label": { code: "round-not-labelled", asked: true },
  "empty-text": { code: "no-pattern", asked: true },
  "no-rounds": { code: "no-pattern", asked: true },
  "not-text": { code: "no-pattern", asked: true },
  "text-too-long": { code: "no-pattern", asked: true },
  "empty-round": { code: "not-understood", asked: true },
  "words-passed-over": { code: "not-understood", asked: true },
  "figure-passed-over": { code: "not-understood", asked: true },
  "read-with-gap": { code: "not-understood", asked: true },
  "counted-by-itself": { code: "not-settled", asked: true },
  "ring-not-described": { code: "not-settled", asked: true },
  "two-readings": { code: "not-settled", asked: true },
  "total-met-rarely": { code: "total-wrong", asked: true },
  "step-without-effect": { code: "not-settled", asked: true },
  "left-to-maker": { code: "not-settled", asked: true },
  "corner-not-said": { code: "not-settled", asked: true },
  "growth-implied": { code: "not-settled", asked: true },
  "growth-not-placed": { code: "not-settled", asked: true },
  "closing-chain-assumed": { code: "not-settled", asked: true },
  "terms-may-be-uk": { code: "terms-not-stated", asked: true },
  "gauge-unlike-yarn": { code: "gauge-impossible", plain: true },
  "gauge-line": { code: "heading-not-understood", asked: true },
  "hook-impossible": { code: "heading-impossible", plain: true },
  "size-impossible": { code: "heading-impossible", plain: true },
  "hook-not-read": { code: "heading-not-understood", asked: true },
  "yarn-not-read": { code: "heading-not-understood", asked: true },
}

/** Some of these only restate what another tells at its root. */
const followsFrom: ReadonlySet<string> = new Set(["stands-on-doubt"])

export function remarksOfReading(manuscript: Manuscript): Remark[] {
  const remarks: Remark[] = []
  for (const problem of manuscript.problems)
    if (isToldOfReading(problem))
      remarks.push(remarkOf(manuscript, problem, rows[problem.code as ProblemCode]!))
  return remarks
}

/** Whether what the reader tells becomes a finding here. */
export function isToldOfReading({ code, severity }: Problem): boolean {
  if (!(code in rows) || followsFrom.has(code)) return false
  return severity !== "note" || toldAsNote.has(code)
}

export function codeOfReading({ code }: Problem): EditCode | undefined {
  return rows[code as ProblemCode]?.code
}

/** Notes of the reader that an editor asks about all the same. */
const toldAsNote: ReadonlySet<string> = new Set([
  "ring-not-described",
  "bracket-not-closed",
  "repeat-start-missing",
  "repeat-end-missing",
  "named-space-absent",
  "named-stitch-absent",
  "repeat-does-not-divide",
  "round-without-label",
  "hook-not-read",
  "yarn-not-read",
])

function remarkOf(manuscript: Manuscript, problem: Problem, row: Row): Remark {
  const { lines } = manuscript
  const start = lines.offset(problem.line, problem.column)
  const sure =
    !row.asked &&
    (problem.severity !== "note" || misnamed.has(problem.code)) &&
    (row.plain === true ||
      isBorneOut(
        manuscript,
        row.before ? numberBefore(manuscript, problem.round) : problem.round,
      )) &&
    !hasDoubt(manuscript, problem)
  return {
    severity: sure ? "must-mend" : "query",
    code: row.code,
    round: problem.round,
    start,
    end: start + problem.length,
    message: [problem.message, problem.hint].filter((part) => part !== "").join(" "),
  }
}

/** Slips of the pen where the total is met all the same. */
const misnamed: ReadonlySet<string> = new Set([
  "bracket-not-closed",
  "repeat-start-missing",
  "repeat-end-missing",
  "named-space-absent",
])

const leftOver: ReadonlySet<string> = new Set([
  "stitches-left-over",
  "spaces-left-over",
  "stitches-passed-over",
  "repeat-does-not-divide",
])

function numberBefore({ rounds }: Manuscript, number: number | null): number | null {
  const index = rounds.findIndex((round) => round.number === number)
  return rounds[index - 1]?.number ?? number
}

/**
 * A round of which something else is only asked, or that meets its total all the same: the words may be a turn of phrase
 * that the reader does not know.
 */
function hasDoubt({ problems, rounds }: Manuscript, { round, code }: Problem): boolean {
  if (round === null) return false
  const own = rounds.find(({ number }) => number === round)
  if (own?.reading.agrees === true && leftOver.has(code)) return true
  return problems.some(
    (other) =>
      other.round === round &&
      other.code !== code &&
      other.severity === "warning" &&
      rows[other.code as ProblemCode]?.asked,
  )
}
