// A verdict as HTML: the sentence first, then how sure it is, how large the piece comes out, and what else to know.

import {
  type CheckResult,
  factsSentence,
  formatLength,
  type LaidOut,
  oddsSentence,
  verdictSentence,
} from "@roundwright/assessment"
import type { CheckedPattern } from "../result.ts"
import { planSaid } from "./circle-html.ts"
import { keepUnits } from "./common.ts"
import { element, type Html } from "./html.ts"
import type { PageSoFar } from "./page-so-far.ts"

/** The verdict first, in a strong sentence; then how sure, how large, and what else must be said. */
export function verdictHtml(pattern: CheckedPattern, { told }: PageSoFar): Html[] {
  const { result, unlaid, plan } = pattern
  if (plan && !result.laidOut) {
    const said = element("strong", {}, keepUnits(planSaid(pattern, plan)))
    return [element("p", { class: "said" }, said), element("p", {}, ownVerdict)]
  }
  // Where sizes come from matters only to what has a size.
  const sizes = result.laidOut ? result.gauge.notes : []
  const notes = [
    ...(result.laidOut?.by === "net" ? [shapeWords(result.laidOut)] : []),
    ...[...result.notes, ...sizes].filter((note) => !told.has(note)),
  ]
  for (const note of sizes) told.add(note)
  const parts = [
    element("p", { class: "said" }, element("strong", {}, keepUnits(verdictSaid(result)))),
    ...(unlaid ? [element("p", {}, firstAnswer)] : []),
  ]
  if (result.laidOut) parts.push(element("p", {}, keepUnits(oddsSentence(result.laidOut.odds))))
  const facts = factsSentence(result)
  if (facts) parts.push(element("p", { class: "facts" }, keepUnits(facts)))
  if (notes.length > 0)
    parts.push(
      element(
        "ul",
        { class: "notes" },
        notes.map((note) => element("li", {}, keepUnits(note))),
      ),
    )
  return parts
}

/** Beside a verdict that the laid-out shape has not judged yet. */
export const firstAnswer = "A first answer, by the growth of the rounds: the shape may change it."

/** Of an oval. */
const ownVerdict =
  "That is the plan's own verdict, by the growth of its rounds: the shape of an oval is not worked out."

/** The verdict, and how much of the text it is of. */
export function verdictSaid(result: CheckResult): string {
  const [read, all] = [result.ledger.length, result.rounds.length]
  const partly = result.laidOut !== null && read < all
  const sentence = verdictSentence(result)
  return partly ? `${sentence.replace(/\.$/, "")} (${read} of ${all} rounds read).` : sentence
}

/** What only the laid-out shape can tell; sides and corners stand with the sizes. */
function shapeWords({ liftMm, waves }: LaidOut): string {
  if (liftMm === null) return "Judged by its shape, laid out as a net of yarn on a table."
  const rises = liftMm < leastLiftMm ? "it stays on the table" : `it rises ${formatLength(liftMm)}`
  const told = waves !== null && waves > 1 ? `${rises} in ${waves} waves` : rises
  return `Laid out as a net of yarn on a table, ${told}.`
}

/** Less than this nobody sees in a crocheted piece, mm. */
const leastLiftMm = 0.5
