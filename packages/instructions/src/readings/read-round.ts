// One round: its steps worked on the round before, in the usual reading first; when counts do not
// agree, in others, and the first that agrees best is taken and told.

import type { Centre, Round } from "@roundwright/motif"
import { turningChains } from "@roundwright/stitches"
import { leftOver } from "../account/accounting.ts"
import { idleFindings } from "../account/idle-steps.ts"
import { totalFindings } from "../account/total-findings.ts"
import { type Comparison, compareTotals } from "../account/totals.ts"
import { unusedShare } from "../account/usage.ts"
import { largeReading, mostReadingsOfLarge, mostReadingsTried } from "../base/limits.ts"
import type { RoundTree, Step } from "../base/tree.ts"
import { centreEdge, chainEdge, type Edge, roundEdge } from "../edge/edge.ts"
import { type ChoiceName, Choices, type ChoiceValue, otherReadings } from "../work/choices.ts"
import { firstBasic } from "../work/main-stitch.ts"
import { perform, performers } from "../work/perform.ts"
import { CannotWork, RoundWork } from "../work/round-work.ts"
import type { Foundation } from "./foundation.ts"
import { withDoubt } from "./open-readings.ts"
import { takesWholeGroups } from "./places-taken.ts"
import { withoutRareAgreement } from "./rare-readings.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"
import { toldChoices } from "./told-choices.ts"

const noComparison: Comparison = { stated: null, agrees: null, differing: [], findings: [] }

/** Weights of what may be wrong with a reading: it cannot be worked, a total differs, stitches are left. */
const weights = { cannot: 1000, total: 100, left: 10, warning: 3, gap: 2 } as const

export function workRound(request: RoundRequest): RoundResult {
  const usual = tryReading(request, new Map())
  if (usual.score === 0)
    return withDoubt(
      usual,
      (forced) => tryReading(request, forced),
      request.span,
      takesWholeGroups(request.tree.steps, request.shared.rounds[request.index - 1]),
    )
  let best = usual
  let bestForced: ReadonlyMap<ChoiceName, ChoiceValue> | null = null
  for (const forced of otherReadings(
    usual.choices,
    usual.steps > largeReading ? mostReadingsOfLarge : mostReadingsTried,
  )) {
    const other = tryReading(request, forced)
    const supported = other.comparison.agrees === true || other.comparison.inRange === true
    // An unusual reading needs a total that speaks for it and not for the usual one.
    const onlyWay =
      usual.round === null &&
      other.score === 0 &&
      /^in-(?:space|one)$/.test(forced.get("several-unplaced") ?? "")
    if (needsTotal(forced) && !onlyWay && (!supported || usual.comparison.agrees === true)) continue
    if (other.score < best.score) {
      best = other
      bestForced = forced
      if (other.score === 0) break
    }
  }
  if (!bestForced) return best
  const taken: RoundResult = {
    ...best,
    forced: bestForced,
    told: true,
    findings: [
      ...best.findings,
      toldChoices(
        bestForced,
        best.comparison.agrees === true
          ? "then the counts agree with the total stated"
          : "then the counts fit the round before best",
        request.span,
      ),
    ],
  }
  return withoutRareAgreement(taken, bestForced, request)
}

/** Doubts that a stated total which agrees puts at rest. */
const settledByTotal: ReadonlySet<string> = new Set([
  "first-place-short",
  "last-time-in-part",
  "skip-runs-out",
  "open-at-join",
  "corner-not-said",
])

function tryReading(
  request: RoundRequest,
  forced: ReadonlyMap<ChoiceName, ChoiceValue>,
): RoundResult & { choices: Choices } {
  const { shared, index, number, tree, foundation, turned } = request
  const choices = new Choices(forced)
  const edge = edgeFor(request, turned)
  const steps = foundation ? foundation.steps : tree.steps
  const work = new RoundWork(shared, index, number, edge, choices, steps, performers)
  try {
    work.firstSide = foundation?.along?.oneSide ?? null
    work.hookChainIsCentre = foundation?.skipped != null
    if (foundation?.skipped) startWithSkipped(work, foundation, steps)
    perform(work, steps)
    if (work.elements.length === 0)
      throw new CannotWork({
        severity: "error",
        code: "empty-round",
        ...request.span,
        message: `Round ${number} makes no stitches.`,
        hint: "Write what is worked in it.",
      })
  } catch (stop) {
    if (!(stop instanceof CannotWork)) throw stop
    const stated = compareNothing(tree)
    return {
      round: null,
      spans: [],
      comparison: stated,
      findings: [...work.findings, stop.finding],
      score: weights.cannot,
      worksSpaces: false,
      unused: 0,
      steps: work.steps,
      choices,
    }
  }
  const round: Round = {
    number,
    elements: work.elements,
    turned,
    closing: work.joined ? "joined" : request.row ? "open" : "spiral",
    ...(work.startChain ? { startChain: work.startChain } : {}),
  }
  const comparison = compareTotals(
    round,
    { count: work.mainRepeats, after: work.madeBeforeRepeat },
    tree.totals,
    shared.rounds[index - 1],
  )
  const left = leftOver(work, request.span)
  const own = (
    comparison.agrees === true
      ? work.findings.filter((finding) => !settledByTotal.has(finding.code))
      : work.findings
  ).map((finding) =>
    // Another name for a stitch that is there, in a round that comes to its total: told, and no doubt.
    comparison.agrees === true && /^named-(?:stitch|space)-absent$/.test(finding.code)
      ? { ...finding, severity: "note" as const }
      : finding,
  )
  const findings = [
    ...own,
    ...left,
    ...totalFindings(work, round, comparison),
    ...idleFindings(steps, {
      number,
      settled: comparison.agrees === true,
      onCentre: index === 0,
      skipsMet: new Set(work.skipsMet),
    }),
    ...comparison.findings,
  ]
  const warnings = own.filter((finding) => finding.severity === "warning").length
  const score =
    (comparison.agrees === false ? weights.total : 0) +
    left.length * weights.left +
    warnings * weights.warning +
    (work.gapsForSpaces ? weights.gap : 0)
  return {
    round,
    spans: work.spans,
    comparison,
    findings,
    score,
    worksSpaces: worksSpaces(work),
    unused: left.length > 0 ? unusedShare(work) : 0,
    steps: work.steps,
    choices,
  }
}

function worksSpaces(work: RoundWork): boolean {
  const { edge } = work.main
  return work.used.some((use) => {
    const index = ((use.from % edge.size) + edge.size) % edge.size
    const whole = use.to - use.from > 1 || edge.widths[index] === 1
    return use.use === "worked" && use.edge === edge && whole && edge.cells[index]?.type === "chain"
  })
}

function edgeFor(request: RoundRequest, turned: boolean): Edge {
  const before = request.shared.rounds[request.index - 1]
  if (before) {
    return roundEdge(before, request.index - 1, turned)
  }
  if (request.foundation?.along) return chainEdge(request.foundation.along.all)
  const centre: Centre = request.foundation?.centre ?? { kind: "adjustable-ring" }
  return centreEdge(centre)
}

/** "11 dc in 4th ch from hook": the three chains skipped are a dc, where they count. */
function startWithSkipped(work: RoundWork, foundation: Foundation, steps: readonly Step[]): void {
  const skipped = foundation.skipped
  if (!skipped || skipped.chains < 1) return
  const { told } = skipped
  if (told?.chains !== undefined && told.chains !== skipped.chains)
    work.find({
      severity: "note",
      code: "figure-passed-over",
      start: told.start,
      end: told.end,
      message: `${skipped.chains} chains are skipped at the start, not ${told.chains}.`,
      hint: "Count again.",
    })
  const basic = firstBasic(steps) ?? "sc"
  const needed = turningChains(basic)
  const stated = skipped.countsAs
  let counts = stated?.counts
  if (counts === undefined) {
    const first = steps.find((step) => step.do === "work")
    const gathered = first?.do === "work" && first.stitch.kind.gathered !== undefined
    const low = skipped.chains === needed - 1 && first?.do === "work" && oneShort(first.count)
    const usual = !gathered && needed >= 3 && (skipped.chains >= needed || low)
    counts =
      work.choices.take(
        "skipped-chains",
        usual ? ["count", "do-not-count"] : ["do-not-count", "count"],
      ) === "count"
  }
  if (!counts) {
    work.startChain = { chains: skipped.chains, counts: false }
    return
  }
  const kind = stated?.kind ?? { basic }
  const rest = stated?.chains ?? Math.max(0, skipped.chains - turningChains(kind.basic))
  const span = steps[0] ?? { start: 0, end: 0 }
  work.startChain = { chains: skipped.chains, counts: true }
  work.stitch(
    kind,
    [{ at: "centre" }],
    { start: span.start, end: span.end },
    { madeOfChains: skipped.chains - (stated?.chains ?? rest) },
  )
  if (rest > 0) work.addChains(rest, { start: span.start, end: span.end })
}

function compareNothing(tree: RoundTree): Comparison {
  const firm = tree.totals.filter((total) => total.firm).flatMap((total) => total.items)
  const kinds = firm.filter((item) => item.unit === "kind")
  const main =
    kinds.length > 0
      ? kinds.reduce((sum, item) => sum + item.count, 0)
      : (firm.find((item) => item.unit === "stitches") ?? firm[0])?.count
  return main === undefined
    ? noComparison
    : { stated: main, agrees: null, differing: [], findings: [] }
}

/** Readings so unusual that only a stated total can speak for them. */
function needsTotal(forced: ReadonlyMap<ChoiceName, ChoiceValue>): boolean {
  return (
    forced.has("single-start-chain") ||
    forced.has("pick-of") ||
    forced.has("several-unplaced") ||
    forced.has("last-repeat") ||
    forced.has("chains-are-stitches") ||
    forced.has("over-earlier")
  )
}

/** The round in one reading, whatever comes of it. */
export function workRoundAs(
  request: RoundRequest,
  forced: ReadonlyMap<ChoiceName, ChoiceValue>,
): RoundResult {
  return withoutRareAgreement(tryReading(request, forced), forced, request)
}

/** Other readings of a round at the points its words leave open. */
export function otherReadingsOf(request: RoundRequest): ReadonlyMap<ChoiceName, ChoiceValue>[] {
  return otherReadings(tryReading(request, new Map()).choices, mostReadingsTried)
}

/** "Ch 3, 11 dc in 3rd ch from hook": with the chains left out it comes to a number rings are made of. */
function oneShort(count: number): boolean {
  const even = (total: number) => [6, 8, 10].some((ring) => total % ring === 0)
  return even(count + 1) && !even(count)
}
