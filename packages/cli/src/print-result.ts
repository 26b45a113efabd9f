// A result for a person at a terminal of 80 columns: verdict first, then the ledger, what to change,
// what was noticed, and every problem with the words it is about.

import {
  acrossAfterRounds,
  type CheckResult,
  factsSentence,
  formatFullness,
  formatLength,
  inTerms,
  type LaidOut,
  oddsSentence,
  ownFullnessText,
  rowWord,
  soFarText,
  verdictSentence,
  verdictWord,
} from "@roundwright/assessment"
import { alignColumns } from "./align.ts"
import { wrap } from "./wrap.ts"

const width = 80

/**
 * @param text the pattern, to show the words a problem is about
 * @param name said before the verdict, where there are several
 */
export function printResult(result: CheckResult, text: string, name: string | null = null): string {
  return printVerdict(result, name) + printRest(result, text)
}

/** Verdict and ledger: what is known before anything is looked for that might be changed. */
export function printVerdict(result: CheckResult, name: string | null = null): string {
  const first = `${name === null ? "" : `${name}: `}${verdictSaid(result)}`
  const parts = [wrap(first, width)]
  if (result.laidOut) parts.push(wrap(oddsSentence(result.laidOut.odds), width), describe(result))
  if (result.rounds.length > 0) parts.push("", ...ledgerTable(result))
  return `${parts.join("\n")}\n`
}

/** What follows the verdict: what to change, what to know, and what is amiss in the text. */
export function printRest(result: CheckResult, text: string): string {
  const parts: string[] = []
  if (result.remedies.length > 0)
    parts.push("", "What to change, least disturbing first", ...remedies(result))
  // Where sizes come from matters only to what has a size.
  const notes = [...result.notes, ...(result.laidOut ? result.gauge.notes : [])]
  if (notes.length > 0)
    parts.push("", "To know", ...notes.map((note) => wrap(note, width, "  - ", "    ")))
  const told = result.problems.filter((problem) => problem.severity === "note")
  const faults = result.problems.filter((problem) => problem.severity !== "note")
  if (faults.length > 0) parts.push("", "Problems", ...problems(faults, text))
  if (told.length > 0) parts.push("", "How it was read", ...readings(told))
  return parts.length > 0 ? `${parts.join("\n")}\n` : ""
}

/** The verdict, and how much of the text it is of. */
function verdictSaid(result: CheckResult): string {
  const sentence = verdictSentence(result)
  const [read, all] = [result.ledger.length, result.rounds.length]
  if (result.laidOut === null || read >= all) return sentence
  return `${sentence.replace(/\.$/, "")} (${read} of ${all} rounds read).`
}

function describe(result: CheckResult): string {
  const line = wrap(factsSentence(result), width)
  const { laidOut } = result
  const shape = laidOut?.by === "net" ? shapeSentence(laidOut) : null
  return shape === null ? line : `${line}\n${wrap(shape, width)}`
}

/** What only the solved shape can tell; null where that is nothing, as of a round piece of unknown size. */
function shapeSentence(laidOut: LaidOut): string | null {
  const facts: string[] = []
  if (laidOut.liftMm !== null)
    facts.push(
      Math.round(laidOut.liftMm) === 0
        ? "stays on the table"
        : `lifts ${formatLength(laidOut.liftMm)} off the table`,
    )
  if (laidOut.waves) facts.push(laidOut.waves === 1 ? "1 wave" : `${laidOut.waves} waves`)
  const round = laidOut.corners === 0
  if (laidOut.skewDeg !== null && !round) facts.push(skewWords(laidOut.skewDeg))
  return facts.length === 0 ? null : `Laid out: ${facts.join(", ")}.`
}

function skewWords(skewDeg: number): string {
  const degrees = Math.round(skewDeg)
  return degrees === 0 ? "no skew" : `skew\u00a0${degrees}°`
}

/** The ledger; lengths in mm, or in widths of one sc (of one dc beside a UK pattern) where no gauge is known. */
function ledgerTable(result: CheckResult): string[] {
  const unit = result.gauge.absolute ? "mm" : inTerms("sc", result.terms)
  const digits = result.gauge.absolute ? 0 : 1
  const header = [
    "round",
    "counted",
    "stated",
    `edge ${unit}`,
    `across ${unit}`,
    "fullness",
    "so far",
    "verdict",
  ]
  const across = acrossAfterRounds(result)
  const byRound = new Map(
    result.ledger.map((row, index) => [row.round, { row, across: across[index]! }]),
  )
  const body = result.rounds.map((round) => {
    const found = byRound.get(round.round)
    const row = found?.row
    const mark = round.agrees === false ? "!" : ""
    return [
      String(round.round),
      countedText(round.counted),
      round.stated === null ? "" : `${round.stated}${mark}`,
      row ? row.edgeMm.toFixed(digits) : "",
      found ? found.across.toFixed(digits) : "",
      row ? ownFullnessText(row) : "",
      row ? soFarText(row) : "",
      row ? rowWord(row) : "not read",
    ]
  })
  return alignColumns([header, ...body])
}

function countedText(counted: { stitches: number; chains: number } | null): string {
  if (!counted) return "-"
  return counted.chains > 0 ? `${counted.stitches} + ${counted.chains} ch` : `${counted.stitches}`
}

function remedies(result: CheckResult): string[] {
  return result.remedies.map((remedy, index) => {
    const after = `Then it ${verdictWord(remedy.verdictAfter)} (fullness ${formatFullness(remedy.fullnessAfter)}).`
    return wrap(`${remedy.change} ${after}`, width, `  ${index + 1}. `, "     ")
  })
}

/** More problems than this are summed up: the first ones usually cause the rest. */
const mostProblems = 20

type Problems = CheckResult["problems"]

function problems(faults: Problems, text: string): string[] {
  const lines = text.split(/\r\n|\r|\n/)
  const shown = faults.slice(0, mostProblems).flatMap((problem) => {
    const where = problem.round === null ? "" : `, round ${problem.round}`
    const head = `${problem.severity}, line ${problem.line}, column ${problem.column}${where}: `
    const said = wrap(`${head}${problem.message} ${problem.hint}`.trim(), width, "  ", "    ")
    return [said, ...excerpt(lines[problem.line - 1] ?? "", problem.column, problem.length)]
  })
  return [...shown, ...moreOf(faults)]
}

/** Choices the text left open: told, but nothing to mend. */
function readings(told: Problems): string[] {
  const shown = told
    .slice(0, mostProblems)
    .map((note) =>
      wrap(`line ${note.line}: ${note.message} ${note.hint}`.trim(), width, "  ", "    "),
    )
  return [...shown, ...moreOf(told)]
}

function moreOf(all: Problems): string[] {
  const rest = all.length - mostProblems
  return rest > 0 ? [`  ... and ${rest} more (all of them with --json).`] : []
}

/** The words a problem is about, with carets under them, cut to the width of the terminal. */
function excerpt(line: string, column: number, length: number): string[] {
  if (line.trim() === "") return []
  const indent = "      "
  const room = width - indent.length
  const start = Math.max(0, Math.min(column - 1 - 20, line.length - room))
  const shown = printable(line.slice(start, start + room))
  const at = column - 1 - start
  const carets = Math.max(1, Math.min(length, shown.length - at))
  return [`${indent}${shown}`, `${indent}${" ".repeat(Math.max(0, at))}${"^".repeat(carets)}`]
}

/** Control characters would move the terminal's cursor; each is shown as one middle dot. */
function printable(text: string): string {
  return [...text].map((char) => (/\p{Cc}/u.test(char) ? "·" : char)).join("")
}
