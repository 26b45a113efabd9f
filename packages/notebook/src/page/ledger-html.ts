// The ledger of a pattern as a table: one row a round.

import {
  acrossAfterRounds,
  type CheckResult,
  inTerms,
  ownFullnessText,
  rowWord,
  soFarText,
} from "@roundwright/assessment"
import { ownFullness } from "@roundwright/flatness"
import type { CheckedPattern } from "../result.ts"
import { ofPiece, roundId, signed } from "./common.ts"
import { element, type Html } from "./html.ts"
import { roundsOfLine } from "./line-head.ts"
import type { PageSoFar } from "./page-so-far.ts"
import { dataTable } from "./table.ts"

/** Rounds past this are left to `check --json`: no page shows a table of thousands of rows. */
const mostRows = 400

/** One row a round; those whose own fullness leads astray are set in bold. */
export function ledgerHtml(pattern: CheckedPattern, { alone, told }: PageSoFar): Html[] {
  const { result } = pattern
  const unit = result.gauge.absolute ? "mm" : inTerms("sc", result.terms)
  const digits = result.gauge.absolute ? 0 : 1
  const lengths = ["Growth", "Flat needs", "Edge", "Across"].map((title) => `${title}, ${unit}`)
  const across = acrossAfterRounds(result)
  const rows = new Map(
    result.ledger.map((row, index) => [row.round, { ...row, across: across[index]! }]),
  )
  const shown = result.rounds.slice(0, mostRows)
  const number = (text: string) => element("td", {}, text)
  const leading = new Set(pattern.text.split(/\r\n|\r|\n/).flatMap(roundsOfLine))
  const leadTo = (round: number) =>
    element("a", { class: "round", href: `#${roundId(pattern.name, round)}` }, String(round))
  const body = shown.map((round) => {
    const row = rows.get(round.round)
    const measures = row ? [row.growthMm, row.flatGrowthMm, row.edgeMm, row.across] : []
    return element(
      "tr",
      {
        class: row && !row.inFront && row.verdict !== "flat" ? "astray" : null,
        "data-round": round.round,
      },
      element("td", {}, leading.has(round.round) ? leadTo(round.round) : String(round.round)),
      number(countedText(round.counted, round.agrees, round.stated)),
      number(row ? ownFullnessText(row) : ""),
      number(row ? soFarText(row).replace("-", "\u2013") : ""),
      element("td", { class: "word" }, row ? rowWord(row) : "not read"),
      lengths.map((_, index) => number(row ? signed(measures[index]!, digits) : "")),
      number(
        row && !row.inFront && ownFullness(row) !== null
          ? `${signed(row.curvatureDeg, 0)}\u00b0`
          : "",
      ),
    )
  })
  const headings = [
    ...["Round", "Stitches", "Fullness", "So far"],
    { words: "Piece so far" },
    ...lengths,
    "Angle",
  ]
  const rest = result.rounds.length - shown.length
  const after = [
    ...(told.has(readingHelp) ? [] : [readingHelp]),
    ...(result.gauge.absolute ? [] : [`Lengths are in widths of one ${unit}: no gauge is known.`]),
    ...(rest > 0 ? [`${rest} more rounds are not shown.`] : []),
  ]
  told.add(readingHelp)
  return [
    element(
      "p",
      { class: "label" },
      alone ? "Growth of the edge" : `Growth${ofPiece(pattern, alone)}, round by round`,
    ),
    dataTable(`Ledger${ofPiece(pattern, alone)}`, headings, body),
    ...after.map((sentence) => element("p", { class: "after" }, sentence)),
  ]
}

/** How the columns of a ledger are read. */
const readingHelp =
  "Fullness is what a round grows over what flat needs: 1 is flat, more ruffles, less cups. So far: the same for all of the piece up to there, from and to where chain loops can hang or be drawn out. Across: through the middle, as the piece lies after that round. Angle: what the round lacks of flat, or has too much of it (below 0)."

function countedText(
  counted: CheckResult["rounds"][number]["counted"],
  agrees: boolean | null,
  stated: number | null,
): string {
  if (!counted) return "\u2013"
  const chains = counted.chains > 0 ? ` + ${counted.chains} ch` : ""
  return `${counted.stitches}${chains}${agrees === false ? ` (text: ${stated})` : ""}`
}
