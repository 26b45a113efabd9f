// Results of a checked pattern as HTML: the verdict in a sentence, the ledger as a table, what to
// change, what was found in the text.

import {
  type CheckResult,
  factsSentence,
  formatFullness,
  formatLength,
  type LaidOut,
  oddsSentence,
  verdictSentence,
  verdictWord,
} from "@roundwright/assessment"
import type { CheckedPattern } from "../result.ts"
import { type Child, element, type Html } from "./html.ts"

/**
 * The verdict first, in a strong sentence; then how sure, how large, and what else must be said.
 * @param told where sizes come from, as far as the page has said it; once is enough for all patterns
 */
export function verdictHtml({ result, unlaid }: CheckedPattern, told: Set<string>): Html[] {
  const notes = [
    ...(unlaid ? ["By the ledger of rounds; its shape is still being laid out."] : []),
    ...(result.laidOut?.by === "net" ? [shapeWords(result.laidOut)] : []),
    ...[...result.notes, ...result.gauge.notes].filter((note) => !told.has(note)),
  ]
  for (const note of result.gauge.notes) told.add(note)
  const parts = [element("p", { class: "said" }, element("strong", {}, verdictSentence(result)))]
  if (result.laidOut) parts.push(element("p", {}, oddsSentence(result.laidOut.odds)))
  const facts = factsSentence(result)
  if (facts) parts.push(element("p", { class: "facts" }, facts))
  if (notes.length > 0)
    parts.push(
      element(
        "ul",
        { class: "notes" },
        notes.map((note) => element("li", {}, note)),
      ),
    )
  return parts
}

/** What only the laid-out shape can tell. */
function shapeWords({ liftMm, waves, bowMm }: LaidOut): string {
  const told = ["Laid out as a net of yarn on a table"]
  if (liftMm !== null) {
    const rises =
      liftMm < leastLiftMm ? "it stays on the table" : `it rises ${formatLength(liftMm)}`
    told.push(waves !== null && waves > 1 ? `${rises} in ${waves} waves` : rises)
  }
  if (bowMm !== null)
    told.push(
      Math.abs(bowMm) < leastLiftMm
        ? "its sides are straight"
        : `its sides bow ${bowMm > 0 ? "out" : "in"} by ${Math.abs(bowMm).toFixed(1)} mm`,
    )
  return `${told.join(", ").replace(",", ":")}.`
}

/** Less than this nobody sees in a crocheted piece, mm. */
const leastLiftMm = 0.5

/** Rounds past this are left to `check --json`: no page shows a table of thousands of rows. */
const mostRows = 400

/** One row a round; those whose own fullness leads astray are set in bold. */
export function ledgerHtml({ name, result }: CheckedPattern): Html[] {
  const unit = result.gauge.absolute ? "mm" : "sc"
  const digits = result.gauge.absolute ? 0 : 1
  const lengths = ["Growth", "Flat growth", "Edge", "Out"].map((title) => `${title}, ${unit}`)
  const rows = new Map(result.ledger.map((row) => [row.round, row]))
  const shown = result.rounds.slice(0, mostRows)
  const number = (text: string) => element("td", {}, text)
  const body = shown.map((round) => {
    const row = rows.get(round.round)
    const measures = row ? [row.growthMm, row.flatGrowthMm, row.edgeMm, row.radiusMm] : []
    return element(
      "tr",
      { class: row && row.verdict !== "flat" ? "astray" : null },
      number(String(round.round)),
      number(countedText(round.counted, round.agrees, round.stated)),
      number(row ? signed(row.fullness, 2) : ""),
      number(row ? signed(row.accumulatedFullness, 2) : ""),
      element("td", { class: "word" }, row ? verdictWord(row.verdict) : "not read"),
      lengths.map((_, index) => number(row ? signed(measures[index]!, digits) : "")),
      number(row ? `${signed(row.curvatureDeg, 0)}\u00b0` : ""),
    )
  })
  const heading = (title: string, word = false) =>
    element("th", { scope: "col", class: word ? "word" : null }, title)
  const head = element(
    "tr",
    {},
    ["Round", "Stitches", "Fullness", "So far"].map((title) => heading(title)),
    heading("Piece so far", true),
    [...lengths, "Angle"].map((title) => heading(title)),
  )
  const table = element("table", {}, element("thead", {}, head), element("tbody", {}, body))
  const rest = result.rounds.length - shown.length
  return [
    element("p", { class: "label" }, `Growth of ${name}, round by round`),
    scrollBox(`Ledger of ${name}`, table),
    ...(result.gauge.absolute
      ? []
      : [element("p", { class: "after" }, "Lengths are in widths of one sc: no gauge is known.")]),
    ...(rest > 0 ? [element("p", { class: "after" }, `${rest} more rounds are not shown.`)] : []),
  ]
}

function countedText(
  counted: CheckResult["rounds"][number]["counted"],
  agrees: boolean | null,
  stated: number | null,
): string {
  if (!counted) return "\u2013"
  const chains = counted.chains > 0 ? ` + ${counted.chains} ch` : ""
  return `${counted.stitches}${chains}${agrees === false ? ` (text: ${stated})` : ""}`
}

/** What to change, least disturbing first, and what each change leads to. */
export function remediesHtml({ name, result }: CheckedPattern): Html[] {
  if (result.remedies.length === 0) {
    const said =
      result.laidOut?.verdict === "flat"
        ? "Nothing to change: it lies flat."
        : "No single change found that would mend it."
    return [element("p", {}, result.laidOut ? said : "Nothing to propose: no round could be read.")]
  }
  const items = result.remedies.map((remedy) =>
    element(
      "li",
      {},
      remedy.change,
      element(
        "span",
        { class: "after" },
        `Then it ${verdictWord(remedy.verdictAfter)} (fullness ${formatFullness(remedy.fullnessAfter)}).`,
      ),
    ),
  )
  return [
    element("p", { class: "label" }, `What to change in ${name}, least disturbing first`),
    element("ol", {}, items),
  ]
}

/** Problems past this usually follow from those before. */
const mostProblems = 60

/** Every problem in the text of a pattern, with its line. */
export function problemsHtml({ name, result }: CheckedPattern): Html[] {
  if (result.problems.length === 0)
    return [element("p", { class: "after" }, `Nothing to mend in the text of ${name}.`)]
  return [
    element("p", { class: "label" }, `Found in the text of ${name}`),
    element("ul", {}, problemItems(result.problems)),
  ]
}

/** Problems as list items. */
export function problemItems(problems: CheckResult["problems"]): Child {
  const rest = problems.length - mostProblems
  return [
    problems.slice(0, mostProblems).map(({ severity, line, round, message, hint }) => {
      const where = `${severity}, line ${line}${round === null ? "" : `, round ${round}`}: `
      return element(
        "li",
        {},
        element("span", { class: "where" }, where),
        message,
        hint ? element("span", { class: "hint" }, hint) : null,
      )
    }),
    rest > 0 ? element("li", {}, `... and ${rest} more.`) : null,
  ]
}

/** A box in which something wide scrolls by itself, reachable by keyboard. */
export function scrollBox(label: string, content: Html): Html {
  return element(
    "div",
    { class: "scroll", tabindex: 0, role: "region", "aria-label": label },
    content,
  )
}

/** Fixed decimals with the minus sign of typography and no minus before zero. */
export function signed(value: number, digits: number): string {
  const text = Math.abs(value) < 1e12 ? value.toFixed(digits) : value.toExponential(2)
  return (Number(text) === 0 ? (0).toFixed(digits) : text).replace("-", "\u2212")
}
