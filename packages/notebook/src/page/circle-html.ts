// A planned circle, polygon or oval as HTML: what it comes to, its counts beside the exact ones, and its rounds.

import { capitalised, formatLength, verdictWord } from "@roundwright/assessment"
import type { CirclePlan } from "../circle.ts"
import type { CheckedPattern } from "../result.ts"
import { keepUnits, signed } from "./common.ts"
import { element, type Html } from "./html.ts"
import { dataTable } from "./table.ts"
import { markedLine } from "./written.ts"

export function circleHtml(pattern: CheckedPattern, plan: CirclePlan): Html[] {
  const { counts, flatCounts, added, words } = plan
  const number = (text: string) => element("td", {}, text)
  const body = counts.map((count, index) =>
    element(
      "tr",
      {},
      number(String(index + 1)),
      number(String(count)),
      number(signed(added[index]!, 0)),
      number(flatCounts[index]!.toFixed(1)),
      number((count / flatCounts[index]!).toFixed(2)),
    ),
  )
  return [
    element("p", { class: "label" }, `Plan ${pattern.name}`),
    element("p", {}, element("strong", {}, keepUnits(planSaid(pattern, plan)))),
    element(
      "ul",
      { class: "notes" },
      words.map((sentence) => element("li", {}, keepUnits(sentence))),
    ),
    dataTable(
      `Counts of ${pattern.name}`,
      ["Round", "Stitches", "More", "Exactly flat", "Share of flat"],
      body,
    ),
    element(
      "pre",
      { class: "rounds" },
      plan.text
        .trimEnd()
        .split("\n")
        .map((line) => element("span", { class: "line" }, markedLine(line, []))),
    ),
    element("p", { class: "after" }, beginning),
  ]
}

/** How it lies, in how many rounds, and how large: `Lies flat; 8 rounds, about 16.5 cm across.` */
export function planSaid({ result }: CheckedPattern, plan: CirclePlan): string {
  const verdict = result.laidOut?.verdict ?? plan.verdict
  const rounds = plan.counts.length === 1 ? "1 round" : `${plan.counts.length} rounds`
  return `${capitalised(verdictWord(verdict))}; ${rounds}${sizeOf(plan, result.laidOut?.acrossMm ?? null)}.`
}

/** @param laidOutMm across as laid out, which is surer than the plan's own */
function sizeOf(plan: CirclePlan, laidOutMm: number | null): string {
  if ("acrossMm" in plan) {
    const acrossMm = laidOutMm ?? plan.acrossMm
    return acrossMm === null ? "" : `, about ${formatLength(acrossMm)} across`
  }
  const { lengthMm, widthMm } = plan
  return lengthMm === null || widthMm === null
    ? ""
    : `, about ${formatLength(lengthMm)} long and ${formatLength(widthMm)} wide`
}

const beginning =
  "Begin each round with a standing stitch, or with chains as high as its first stitch, which then stand for it."
