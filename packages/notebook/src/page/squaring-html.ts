// Proposals for squaring as HTML: of each first what it comes out as, then its rounds.

import { formatFullness, verdictWord } from "@roundwright/assessment"
import { listed } from "@roundwright/instructions"
import type { SquaringRequest, SquaringResult } from "../squaring.ts"
import { keepUnits } from "./common.ts"
import { type Child, element, type Html } from "./html.ts"

export function squaringHtml(request: SquaringRequest, result: SquaringResult | null): Html[] {
  if (!result) return [element("p", { class: "after" }, "Not searched yet.")]
  if ("fault" in result)
    return [
      element(
        "p",
        {},
        `No proposal. ${result.fault}`,
        element("span", { class: "after" }, result.hint),
      ),
    ]
  if (result.proposals.length === 0)
    return [element("p", {}, "No proposal found: try more rounds, or other stitches.")]
  return [
    element("p", { class: "label" }, askedWords(request, result)),
    ...result.toKnow.map((sentence) => element("p", { class: "after" }, keepUnits(sentence))),
    element(
      "ol",
      { class: "proposals" },
      result.proposals.map((proposal) => element("li", {}, proposalHtml(proposal))),
    ),
  ]
}

type Found = Extract<SquaringResult, { proposals: unknown }>
type Proposal = Found["proposals"][number]

function proposalHtml(proposal: Proposal): Child {
  const bow = Math.abs(proposal.bowMm)
  const way = proposal.bowMm < 0 ? "inwards" : "outwards"
  const facts = [
    `sides of ${length(proposal.sideMm)} mm, bowed ${way} by ${length(bow)} mm`,
    `corners of ${Math.round(proposal.cornerAngleDeg)}\u00b0`,
    `fullness ${formatFullness(proposal.fullness)}`,
    proposal.price,
  ]
  const remarks = [...proposal.changes, ...proposal.notes]
  return [
    `${proposal.idea}, with ${listed(proposal.stitchKinds)}: it ${verdictWord(proposal.verdict)}.`,
    element("span", { class: "after" }, keepUnits(`${sentence(facts.join(", "))}.`)),
    element(
      "pre",
      {},
      proposal.rounds.map((round) => element("span", { class: "line" }, round)),
    ),
    remarks.length === 0
      ? null
      : element(
          "ul",
          { class: "notes" },
          remarks.map((remark) => element("li", {}, keepUnits(remark))),
        ),
  ]
}

/** What was asked for, in the terms of what is written. */
function askedWords(
  { corners, rounds, cornerStyle, fromRound }: SquaringRequest,
  { stitches, straighten }: Found,
): string {
  const style =
    cornerStyle === "chains"
      ? " with chain spaces"
      : cornerStyle === "stitches"
        ? " without chain spaces"
        : ""
  const onto = fromRound === undefined ? "" : ` after round ${fromRound}`
  const added = rounds === 1 ? "1 round" : `${rounds} rounds`
  const last = straighten === null ? "" : ` and a last one of ${straighten}`
  return `${corners} corners${style} in ${added} of ${listed(stitches)}${last}${onto}, best first`
}

function length(value: number): string {
  return value.toFixed(value < 10 ? 1 : 0)
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
