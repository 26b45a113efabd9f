// What the writer wrote, as HTML: patterns with their problems marked in place, gauges, and
// calculations with their values.

import type { Problem } from "@roundwright/instructions"
import type { CalculationLine, CheckedPattern } from "../result.ts"
import { roundId, scrollBox } from "./common.ts"
import { type Child, element, type Html } from "./html.ts"
import { headLength, roundsOfLine } from "./line-head.ts"
import type { PageSoFar } from "./page-so-far.ts"
import { problemItems } from "./problems-html.ts"

/** Longer lines of a pattern are cut on the page; nothing a maker reads is that long. */
const mostShown = 2_000

export function patternHtml(
  { name, text, result }: CheckedPattern,
  { listed, alone }: PageSoFar,
): Html[] {
  const title = result.motif?.title
  const lines = text.split(/\r\n|\r|\n/)
  const byLine = new Map<number, Problem[]>()
  for (const problem of result.problems) {
    const same = byLine.get(problem.line)
    if (same) same.push(problem)
    else byLine.set(problem.line, [problem])
  }
  const seen = new Set<number>()
  const shown = lines.map((line, index) => {
    const rounds = roundsOfLine(line)
    const fresh = rounds.find((round) => !seen.has(round))
    for (const round of rounds) seen.add(round)
    const attributes = {
      class: "line",
      id: fresh === undefined ? null : roundId(name, fresh),
      "data-round": rounds.length > 0 ? rounds.join(" ") : null,
    }
    return element("span", attributes, markedLine(line, byLine.get(index + 1) ?? []))
  })
  const named = title && title !== name ? `Pattern ${name}: ${title}` : `Pattern ${name}`
  return [
    element("p", { class: "label" }, alone ? "Pattern" : named),
    element("pre", {}, shown),
    ...(listed.has(name) || result.problems.length === 0
      ? []
      : [element("ul", { class: "found" }, problemItems(result.problems))]),
  ]
}

/** A line with its head in bold and its problems underlined; where several overlap the first one's words are marked. */
export function markedLine(line: string, problems: readonly Problem[]): Child {
  const parts: Child[] = []
  let at = 0
  const head = Math.min(headLength(line), mostShown)
  const words = (from: number, to: number): Child[] => {
    const bold = Math.min(Math.max(from, head), to)
    return [
      bold > from ? element("span", { class: "head" }, line.slice(from, bold)) : "",
      line.slice(bold, to),
    ]
  }
  const sorted = [...problems].sort((a, b) => a.column - b.column)
  for (const { column, length, severity, message, hint } of sorted) {
    const start = Math.min(column - 1, mostShown)
    const end = Math.min(start + length, line.length, mostShown)
    if (start < at || end <= start) continue
    parts.push(...words(at, start))
    const title = hint ? `${message} ${hint}` : message
    parts.push(element("mark", { class: severity, title }, words(start, end)))
    at = end
  }
  parts.push(...words(at, Math.min(line.length, mostShown)), line.length > mostShown ? "..." : "")
  return parts
}

export function gaugeHtml(of: string, lines: readonly string[], { alone }: PageSoFar): Html[] {
  const label = alone ? "Size, yarn, hook and gauge" : `Size, yarn, hook and gauge of ${of}`
  if (lines.every((line) => line.trim() === "")) {
    const nothing = "Nothing yet: the pattern's own headings count."
    return [element("p", { class: "label" }, label), element("p", { class: "after" }, nothing)]
  }
  const shown = lines.map((line) => element("span", { class: "line" }, line.slice(0, mostShown)))
  return [element("p", { class: "label" }, label), element("pre", {}, shown)]
}

/**
 * @param place which cell of the notebook it is, from 1, to tell several calculations apart
 * @param faults message and hint by source line, for lines without a value
 */
export function calculationHtml(
  place: number,
  lines: readonly CalculationLine[],
  faults: ReadonlyMap<string, { readonly message: string; readonly hint: string }>,
): Html[] {
  const rows = lines.map((line) => {
    if (line.source === "")
      return element("tr", {}, element("td", { class: "word wrap", colspan: 3 }, line.comment))
    const fault = line.value === null ? faults.get(line.source) : undefined
    const value =
      line.value ??
      element(
        "span",
        {},
        element("strong", {}, "No value. "),
        fault?.message ?? "",
        fault?.hint ? element("span", { class: "hint" }, fault.hint) : null,
      )
    const remark = line.comment ? element("span", { class: "remark" }, line.comment) : null
    return element(
      "tr",
      {},
      element("td", { class: "name word" }, line.name ?? ""),
      element("td", { class: "formula word" }, line.source, remark),
      element("td", { class: line.value === null ? "word wrap" : null }, value),
    )
  })
  return [
    scrollBox(`Calculation in cell ${place}`, element("table", {}, element("tbody", {}, rows))),
  ]
}
