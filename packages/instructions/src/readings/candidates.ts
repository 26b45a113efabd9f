// What a round may be: every tree of its words, each worked in the ways it leaves open, scored by how well
// the counts agree and how much of the words it leaves over. Words are cheaper than counts.

import type { Round } from "@roundwright/motif"
import { isOfRound } from "../account/idle-steps.ts"
import { sameCounts } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundTree, Step } from "../base/tree.ts"
import type { TreeReading, WordsOfRound } from "../grammar/read-words.ts"
import { assumedRound } from "./assumed.ts"
import { closingChainFinding, missingClosingChain, withClosingChain } from "./closing-chain.ts"
import { losesFold, takesUpFold } from "./fold-lost.ts"
import type { Foundation } from "./foundation.ts"
import type { Located } from "./list-rounds.ts"
import { againstLikelierTree } from "./rare-readings.ts"
import { otherReadingsOf, workRound, workRoundAs } from "./read-round.ts"
import { repeatedToTotal } from "./repeats-by-total.ts"
import type { RoundRequest, RoundResult } from "./round-result.ts"
import { aroundAll } from "./worked-around.ts"

/** A tree with the words of other rounds put in place of what names them. */
export type Resolver = (tree: RoundTree) => {
  readonly tree: RoundTree
  readonly findings: readonly Located[]
}

/** One reading of a round. */
export interface Candidate {
  readonly tree: TreeReading
  readonly request: RoundRequest
  readonly foundation: Foundation | null
  /** What putting another round's words in place told. */
  readonly findings: readonly Finding[]
  readonly result: RoundResult
  /** What the next round is worked on; null when nothing fixes it. */
  readonly round: Round | null
  /** Words were passed over without which most of the round before is left: how it goes is not known. */
  readonly unknown: boolean
  /** Set when the round stands for its stated total. */
  readonly assumed: boolean
  readonly score: number
}

/** Points for every unit of cost in words: a word not known (1.2) is worth less than a stitch left over (10). */
const wordWeight = 5
/** Trees of a round that are worked, at most, and once a clean one is found. */
const mostTrees = 10
/** Ways of working one tree that go on beside the best. */
const mostOthers = 3
/** A round that stands for its total though all its words are understood: only the next round can speak for it. */
const assumedAgainstWords = 108
/** A round that stands for its total, with words in it that were not understood. */
const assumedWithGap = 30
/** A round nothing of which could be worked, but for its total. */
const assumedAlone = 60
const cannotBeWorked = 1000
/** So much cheaper in words is the likelier reading: a list that goes apart instead of into one place costs 0.4. */
const clearlyCheaper = 0.3
/** A tree that costs more has words passed over that may matter, and is not likely itself. */
const understood = 1.5
/** What passing over a word that carries meaning costs at least, a little less for sums of costs. */
const leastMeaning = 1.7
/** Share of the round before that may be left by a round with words passed over in it. */
const mostUnused = 0.5
/** A tree that passes over the total another one reads is no better than one that misses it. */
const overlookedTotal = 101

const waysOpen: ReadonlySet<string> = new Set([
  "start-chain",
  "skipped-chains",
  "times",
  "last-repeat",
  "same-space",
])

/** The readings of a round on one ground, best first. */
export function candidatesOf(
  words: WordsOfRound,
  resolve: Resolver,
  foundationOf: (tree: RoundTree) => Foundation | null,
  {
    turnNext,
    ...given
  }: Omit<RoundRequest, "tree" | "foundation" | "turned"> & { turnNext: boolean },
): Candidate[] {
  const found: Candidate[] = []
  let tried = 0
  let statesTotal = false
  for (const tree of words.trees()) {
    const { tree: told, findings } = resolve(tree)
    if (told.steps.length === 0 && !told.totals.some(({ firm }) => firm)) continue
    const foundation = foundationOf(told)
    const turned = (turnNext || leadsWithTurn(told.steps)) && given.index > 0
    const request: RoundRequest = { ...given, tree: told, foundation, turned }
    const result = likeAnother(tree) ? withoutOtherNames(workRound(request)) : workRound(request)
    const stated = told.totals.some(({ firm, more, range }) => firm || more || range !== undefined)
    if (stated) statesTotal ||= tree.cost < (found[0]?.tree.cost ?? tree.cost) + 1
    const overlooked = statesTotal && !stated ? overlookedTotal : 0
    const missing = findings.some(({ severity }) => severity === "error")
    const unknown = isUnknown(tree, result)
    const score =
      result.score +
      overlooked +
      tree.cost * wordWeight +
      (missing || unknown ? cannotBeWorked / 2 : 0) +
      (result.comparison.agrees === true || !passesFigure(tree) ? 0 : figurePassed) +
      withoutMeaning(tree, result, found[0])
    found.push({
      tree,
      request,
      foundation,
      findings,
      result,
      round: missing || unknown ? null : result.round,
      unknown,
      assumed: false,
      score,
    })
    tried += 1
    if (result.score === 0 && settled(result, tree)) break
    if (tried >= mostTrees) break
    if (tree.cost > found[0]!.tree.cost + costMargin(found)) break
  }
  found.splice(0, found.length, ...found.map((one) => unlessLikelier(one, found)))
  found.sort((a, b) => a.score - b.score)
  const best = found[0]
  if (!best) return []
  const list = [
    best,
    ...found
      .slice(1)
      .filter((other) => other.round && differs(other, best) && other.score < best.score + 40)
      .slice(0, mostOthers),
  ]
  if (best.result.comparison.agrees !== true) list.push(...otherWays(best))
  list.push(...closedByChain(best))
  if (best.result.comparison.agrees !== true) {
    const endless = found.find(({ result }) => result.findings.some(isEndless))
    list.push(...workedAround(best), ...(endless ? endedByTotal(endless) : []))
  }
  // Where nothing can be worked, any total that the words state is better than none.
  const assumed = assume(best.result.round ? best : (found.find(statesFirm) ?? best))
  if (assumed) list.push(assumed)
  return list.sort((a, b) => a.score - b.score)
}

/** A figure left out of the words changes what is made; unless a total bears it out, it was meant. */
const figurePassed = 40

function passesFigure({ gaps }: TreeReading): boolean {
  return gaps.some(({ words }) => words.some(({ type }) => type === "number"))
}

/**
 * A tree that is taken for its total although another can be worked and misses it has not met it, where the other is
 * clearly cheaper, or reads figures as parts of the total that this one passes over.
 */
function unlessLikelier(candidate: Candidate, all: readonly Candidate[]): Candidate {
  const { result, tree, request } = candidate
  if (result.comparison.agrees !== true) return candidate
  const figures = figuresStated(tree)
  const likelier = all.filter(
    (other) =>
      other.round !== null &&
      other.tree.cost < understood &&
      other.result.comparison.agrees === false &&
      (other.tree.cost <= tree.cost - clearlyCheaper ||
        (other.tree.cost <= tree.cost + clearlyCheaper && figuresStated(other.tree) > figures)),
  )
  if (likelier.length === 0) return candidate
  const others = likelier.map((other) => other.result)
  return { ...candidate, result: againstLikelierTree(result, request, others) }
}

function figuresStated({ totals }: RoundTree): number {
  return totals.reduce((sum, { items }) => sum + items.length, 0)
}

function likeAnother({ steps }: RoundTree): boolean {
  return steps.some((step) => step.do === "as-round")
}

/** "Same as last round": the spaces and stitches it names were those of that round. */
function withoutOtherNames(result: RoundResult): RoundResult {
  const findings = result.findings.map((finding) =>
    /^named-(?:stitch|space)-absent$/.test(finding.code)
      ? { ...finding, severity: "note" as const }
      : finding,
  )
  return { ...result, findings }
}

/**
 * Where the words are understood but ask for what is not there, a reading that leaves a repeat, a place or a figure out
 * of them is no reading, unless a total speaks for it.
 */
function withoutMeaning(
  tree: TreeReading,
  result: RoundResult,
  cheapest: Candidate | undefined,
): number {
  if (!cheapest || cheapest.round || result.comparison.agrees === true) return 0
  // Nor is one that works once what has no end.
  const endless =
    cheapest.request.index === 0 &&
    cheapest.result.findings.some(isEndless) &&
    !tree.steps.some(isRepeat)
  return endless || tree.cost >= cheapest.tree.cost + leastMeaning ? cannotBeWorked : 0
}

function isRepeat(step: Step): boolean {
  return step.do === "repeat"
}

/** What says where and how often was passed over, and most of the round before is left. */
function isUnknown({ gaps, totals }: TreeReading, result: RoundResult): boolean {
  if (!result.round || totals.some(({ firm }) => firm) || result.unused <= mostUnused) return false
  return gaps.some(({ words }) => words.some(({ skipCost }) => skipCost >= leastMeaning))
}

/** How much dearer in words a tree may be and still be worked: more, the less the first one fits. */
function costMargin(found: readonly Candidate[]): number {
  const best = Math.min(...found.map(({ result }) => result.score))
  return best === 0 ? 0.5 : best < 100 ? 2 : 5
}

/** All agrees, by a total or because nothing in the words was guessed. */
function settled(result: RoundResult, tree: TreeReading): boolean {
  return result.comparison.agrees === true || tree.cost < 0.3
}

function differs(a: Candidate, b: Candidate): boolean {
  if (!a.round || !b.round) return true
  return !sameCounts(a.round, b.round)
}

/** A repeat that nothing speaks of. */
const impliedRepeat = 4

/** What is told once, worked around: more likely where else most of the round below is left. */
function workedAround(best: Candidate): Candidate[] {
  return aroundAll(best.request, best.result).map(({ request, result, leaves }) => ({
    ...best,
    request,
    result,
    round: result.round,
    score:
      best.score - best.result.score + result.score + (leaves ? impliedRepeat : -impliedRepeat),
  }))
}

/** The same words worked in other ways they leave open, where no total decides. */
function otherWays(best: Candidate): Candidate[] {
  if (!best.round) return []
  const before = best.request.shared.rounds
  const lost = best.result.score === 0 && losesFold(before, best.round)
  const found: Candidate[] = []
  for (const forced of otherReadingsOf(best.request)) {
    const [way] = forced.keys()
    if (forced.size !== 1 || way === undefined) continue
    const open = waysOpen.has(way) || (way === "single-start-chain" && joinsToChain(best.request))
    const restores = lost && waysOfFold.has(way)
    if (!open && !restores) continue
    const result = workRoundAs(best.request, forced)
    if (!result.round || result.score > best.result.score + 3) continue
    const alike = restores && result.score === 0 && takesUpFold(before, result.round)
    if (!open && !alike) continue
    if (
      sameCounts(result.round, best.round) ||
      found.some((other) => sameCounts(other.round!, result.round!))
    )
      continue
    found.push({
      ...best,
      result: { ...result, forced },
      round: result.round,
      score:
        best.score +
        (result.score - best.result.score) +
        (alike ? towardsFold : againstCustom(forced, best.request)),
    })
    if (found.length >= mostOthers) break
  }
  return found
}

/** A repeat "around" in a ring, which only the total ends. */
function endedByTotal(endless: Candidate): Candidate[] {
  const ended = repeatedToTotal(endless.request)
  if (!ended?.result.round) return []
  const score = ended.result.score + endless.tree.cost * wordWeight
  return [{ ...endless, ...ended, round: ended.result.round, unknown: false, score }]
}

function isEndless({ code }: Finding): boolean {
  return code === "repeat-without-end"
}

/** The same round with the chain before its join that the words leave out. */
function closedByChain(best: Candidate): Candidate[] {
  const { round, result, request } = best
  const chains = round && missingClosingChain(round)
  if (!round || !chains) return []
  const closed = withClosingChain(round, chains)
  const findings = [...result.findings, closingChainFinding(chains, request.span)]
  const spans = [...result.spans, request.span]
  return [
    {
      ...best,
      result: { ...result, round: closed, findings, spans },
      round: closed,
      score: best.score + chainLeftOut,
    },
  ]
}

/** "Ch 1, ..., join with sl st to first ch": the single chain the round is joined to may be one of its stitches. */
function joinsToChain({ tree }: RoundRequest): boolean {
  return tree.steps.some(
    (step) =>
      step.do === "join" &&
      (step.place?.at === "next" || step.place?.at === "made") &&
      step.place.noun.what === "chain",
  )
}

/** Ways that change the start of a round alone: with the right one it goes round as the rounds before do. */
const waysOfFold: ReadonlySet<string> = new Set(["start-chain", "single-start-chain"])
const towardsFold = -1

/** What speaks against a way: a round joined to its starting chain counts it. */
function againstCustom(forced: ReadonlyMap<string, string>, { tree }: RoundRequest): number {
  const [way] = forced.keys()
  // "*ch 3, sc in next sp; rep around; join": the last chains to the first stitch are often left unsaid.
  if (way === "last-repeat") return forced.get(way) === "closed" ? unusualWay : rareWay
  if (way === "single-start-chain") return rareWay
  if (way !== "start-chain") return unusualWay
  return tree.steps.some(
    (step) =>
      step.do === "join" &&
      (step.chain !== undefined || (step.place?.at === "made" && step.place.noun.what === "chain")),
  ) && forced.get(way) !== "counts"
    ? againstJoin
    : unusualWay
}

/** A chain that no word tells: only rounds that cannot be worked without it speak for it. */
const chainLeftOut = 30
const unusualWay = 2
/** A last repeat worked in part: rare, and told by a total where it is meant. */
const rareWay = 15
const againstJoin = 25

function statesFirm({ request }: Candidate): boolean {
  return request.tree.totals.some(({ firm }) => firm)
}

/** The round as its stated total has it, where its words cannot be worked to it. */
function assume(best: Candidate): Candidate | null {
  const { result, tree } = best
  if (result.comparison.agrees === true) return null
  const { index, number, shared } = best.request
  const round = assumedRound(best.request.tree, { index, number, below: shared.rounds[index - 1] })
  if (!round) return null
  const gap = tree.gaps.some(({ cost }) => cost >= 1)
  const base = result.round === null ? assumedAlone : gap ? assumedWithGap : assumedAgainstWords
  return { ...best, round, assumed: true, score: base + tree.cost * wordWeight }
}

/** "turn" before any stitch of the round, "ch 3, turn" too. */
function leadsWithTurn(steps: readonly Step[]): boolean {
  const first = steps.findIndex(isOfRound)
  return steps.slice(0, Math.max(0, first)).some((step) => step.do === "turn")
}
