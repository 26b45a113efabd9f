// A total that only a rare reading of the words meets. The reading is kept, since the rounds after it may bear it out,
// but it is no agreement: a total that is one off is as likely, and the user is told so.

import type { Round } from "@roundwright/motif"
import { countsOf } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundTree, Span, Step } from "../base/tree.ts"
import type { ChoiceName, ChoiceValue } from "../work/choices.ts"
import { joinedTo } from "../work/perform-start.ts"
import { goesRoundAlike, sharedFold } from "./fold-lost.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"
import { choiceWords } from "./told-choices.ts"

type Forced = ReadonlyMap<ChoiceName, ChoiceValue>

/** What a reading leaves unsettled in the round itself: one chosen for its total must leave nothing. */
const unsettled: ReadonlySet<string> = new Set([
  "repeat-does-not-divide",
  "stitches-left-over",
  "stitches-passed-over",
  "spaces-left-over",
])

/** The result of a reading that was chosen for its total, which is taken back where the reading is rare. */
export function withoutRareAgreement(
  result: RoundResult,
  forced: Forced,
  request: RoundRequest,
): RoundResult {
  if (result.comparison.agrees !== true) return result
  const leaves = result.findings.some(
    ({ code, severity }) => severity === "warning" && unsettled.has(code),
  )
  const twoRuns = forced.has("last-repeat") && endsBesideRun(result.round)
  const rare = isRare(forced, request.tree, result.round?.startChain?.chains ?? 0)
  if (!leaves && !twoRuns && !rare) return result
  const words = [...forced].map(([name, value]) => choiceWords(name, value))
  return notAgreeing(result, `only if ${words.join(" and ")}`, request.span)
}

/**
 * A total one off breaks the fold of the motif; one that keeps it, to the stitch, is meant, however rarely it is met. A
 * start that stands apart from the rest keeps the fold without being counted in it.
 */
function isBorneOut({ round }: RoundResult, { shared: { rounds } }: RoundRequest): boolean {
  if (round === null || rounds.length === 0 || !goesRoundAlike(rounds, round)) return false
  return countsOf(round).stitches % sharedFold(rounds) === 0
}

/** The last loop of a round meets the first with no stitch between them: one too many. */
function endsBesideRun(round: Round | null): boolean {
  const elements = round?.elements ?? []
  return elements[0]?.type === "chain" && elements.at(-1)?.type === "chain"
}

/** The result of a tree of the words that is taken for its total against a likelier one that misses it. */
export function againstLikelierTree(
  result: RoundResult,
  request: RoundRequest,
  likelier: readonly RoundResult[],
): RoundResult {
  if (isBorneOut(result, request) && !likelier.some((other) => isBorneOut(other, request)))
    return result
  return notAgreeing(result, "only by an unlikely reading of the words", request.span)
}

function notAgreeing(result: RoundResult, how: string, span: Span): RoundResult {
  const told: Finding = {
    severity: "warning",
    code: "total-met-rarely",
    ...span,
    message: `The stated total${result.comparison.stated === null ? "" : ` of ${result.comparison.stated}`} is met ${how}.`,
    hint: "Count the round again; if that is what is meant, say so in its words.",
  }
  const findings = result.findings.filter(({ code }) => code !== "reading-chosen")
  return {
    ...result,
    comparison: { ...result.comparison, agrees: null },
    findings: [...findings, told],
    told: true,
  }
}

/** Chains that usually stand for a stitch: fewer give height only, unless the words say otherwise. */
const fewestForStitch = 3

/** A single chain taken for a stitch, "3 sc" without a place all in one, chains that stand for a stitch taken for edge, and what the join speaks against. */
function isRare(forced: Forced, { steps, totals }: RoundTree, startChains: number): boolean {
  const start = forced.get("start-chain")
  return (
    forced.has("single-start-chain") ||
    forced.get("several-unplaced") === "in-one" ||
    start === "edge" ||
    (start === "does-not-count" &&
      (joinedTo(steps) === "chain" || totals.some(({ withStart }) => withStart))) ||
    (start === "counts" && endsOnStitch(steps) && startChains < fewestForStitch) ||
    (forced.get("skipped-chains") === "count" && startChains < 2)
  )
}

/** "join to first sc", "sl st to the first hdc". */
function endsOnStitch(steps: readonly Step[]): boolean {
  const last = steps.findLast((step) => step.do === "slip" || step.do === "join")
  if (last?.do === "join") return joinedTo(steps) === "stitch"
  const place = last?.place
  const isFirst = place?.at === "made" || (place?.at === "next" && place.order === "first")
  return isFirst && place.noun.what === "stitch"
}
