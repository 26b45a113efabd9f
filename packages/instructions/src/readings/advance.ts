// One round more on one way of having read those before: its candidates, each as a new state.

import type { Centre, Round } from "@roundwright/motif"
import { otherChainsAtJoin } from "../account/chains-at-join.ts"
import { isOfRound } from "../account/idle-steps.ts"
import { countsOf } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundReading } from "../base/reading.ts"
import type { RoundTree, Span, Step } from "../base/tree.ts"
import { rememberCounts } from "../grammar/attach-counts.ts"
import type { TreeReading, WordsOfRound } from "../grammar/read-words.ts"
import type { PatternText, RoundText } from "../text/layout.ts"
import { isShortage } from "../work/try-once.ts"
import { apartFromNext, begunBy, otherChainsBegun, withNext } from "./after-join.ts"
import { alongChainFinding } from "./along-chain.ts"
import { assumedFinding, clearTotal, isFarFewer, withoutCannot } from "./assumed-totals.ts"
import { byItselfFinding, countedByItself, countedOnCentre } from "./by-itself.ts"
import { type Candidate, candidatesOf, type Resolver } from "./candidates.ts"
import { doubtAfter } from "./doubt.ts"
import { fewStitches, foldLost, goesRoundAlike, losesFold, sharedFold } from "./fold-lost.ts"
import { type Foundation, readFoundation, tooManyChains } from "./foundation.ts"
import type { State } from "./ground.ts"
import { impliedRound } from "./implied-round.ts"
import { type Located, type OneRound, resolved } from "./list-rounds.ts"
import { emptyRound, goOnLost, onlyOneFirm, unread } from "./lost.ts"
import { placeOfRound, type Reader } from "./reader.ts"
import { gapFindings, remarkFindings, slipFindings } from "./remarks.ts"
import { toldChoices } from "./told-choices.ts"

export function advance(
  reader: Reader,
  state: State,
  one: OneRound,
  words: WordsOfRound,
  fault: Finding | null,
): State[] {
  const { text } = one
  const { span } = placeOfRound(reader, text)
  const resolve = resolver(state, one)
  if (fault) return [unread(reader, state, one, [fault])]
  if (state.lost) return goOnLost(reader, state, one, words, resolve)
  const first = state.rounds.length === 0
  if (isShort(one)) {
    const told = words.trees().next().value as TreeReading | undefined
    const implied = impliedRound(words, told, state, one)
    if (implied) return advance(reader, state, one, implied, fault)
    if (told && statesTotal(told, one)) return goOnLost(reader, state, one, words, resolve)
  }
  const solid =
    first &&
    /\b(?:plastic|bone|metal|curtain|cabone|wooden)\s+ring|\bcord\b/i.test(
      reader.layout.clean.slice(text.bodyStart, text.end),
    )
  const foundationOf = (tree: RoundTree): Foundation | null =>
    first ? readFoundation([...state.carried, ...tree.steps], solid) : null
  const candidates = candidatesOf(words, resolve, foundationOf, {
    shared: {
      rounds: state.rounds,
      centre: null,
      budget: reader.budget,
      startCounts: reader.prose.startCounts,
      saidCounts: state.saidCounts,
    },
    index: state.rounds.length,
    number: one.number,
    turnNext: state.turnNext,
    row: text.label.row,
    span: { start: text.start, end: text.label.end },
  })
  if (candidates.length === 0) {
    // What its words name and is not there, or nest too deeply, is told beside that nothing is made of them.
    const first = words.trees().next().value as TreeReading | undefined
    const remarks = remarkFindings(reader.layout.clean, first?.remarks ?? [], false)
    const missing = first ? resolve(first).findings : []
    return [unread(reader, state, one, [emptyRound(one, span), ...remarks, ...missing])]
  }
  return candidates.map((candidate) => after(reader, state, one, words, candidate))
}

/** Longest text of a round that may say nothing of its work. */
const longestBare = 60

function isShort({ text }: OneRound): boolean {
  return text.end - text.bodyStart < longestBare
}

/** It says nothing but its total. */
function statesTotal(tree: TreeReading, one: OneRound): boolean {
  if (tree.steps.length > 0) return false
  if (tree.remarks.some(({ code }) => code === "not-of-the-work")) return false
  if (tree.gaps.some(({ words }) => words.some(({ type }) => type === "word"))) return false
  return onlyOneFirm(tree) && clearTotal(tree, one.text)
}

function resolver(state: State, one: OneRound): Resolver {
  const begun = (tree: RoundTree) => {
    const own = apartFromNext(tree)
    return state.rounds.length === 0 ? own : begunBy(state.carried, own)
  }
  const twice = (tree: RoundTree): Located[] =>
    state.rounds.length === 0
      ? []
      : otherChainsBegun(state.carried, tree).map((told) => ({ ...told, round: one.number - 1 }))
  return (tree) => {
    if (!tree.steps.some((step) => step.do === "as-round") && one.of === 1)
      return { tree: begun(tree), findings: twice(tree) }
    const findings: Located[] = twice(tree)
    return { tree: begun(resolved(tree, one, state.trees, findings)), findings }
  }
}

/** The state after one candidate. */
function after(
  reader: Reader,
  state: State,
  one: OneRound,
  words: WordsOfRound,
  candidate: Candidate,
): State {
  const { text } = one
  const { clean } = reader.layout
  const { tree, request, result, foundation } = candidate
  const { line, span } = placeOfRound(reader, text)
  const label = { start: text.start, end: text.label.end }
  const first = state.rounds.length === 0
  const settled = result.comparison.agrees === true || result.comparison.inRange === true
  const own: Finding[] = []
  if (one.nth === 0) {
    const alike =
      tree.gaps.length > 0 &&
      candidate.round !== null &&
      goesRoundAlike(state.rounds, candidate.round)
    own.push(
      ...gapFindings(clean, tree.gaps, settled, alike, candidate.unknown),
      ...slipFindings(clean, words),
    )
    own.push(...remarkFindings(clean, [...words.remarks, ...tree.remarks], settled))
  }
  // How a round grows is borne out by its total.
  for (const finding of candidate.findings)
    own.push(
      finding.code === "growth-implied" && (settled || goesOnEvenly(state.rounds, candidate.round))
        ? { ...finding, severity: "note" }
        : finding,
    )
  const common = {
    ...state,
    trees: [...state.trees, { number: one.number, tree: withNext(request.tree) }],
    locals: tree.names.size > 0 ? new Map([...state.locals, ...tree.names]) : state.locals,
    saidCounts: remembered(state, request.tree.steps),
    turnNext: endsWithTurn(request.tree.steps),
    score: state.score + candidate.score,
  }
  const located = (list: readonly Finding[]) =>
    list.map((finding) => ({ ...finding, round: one.number }))
  let centre = state.centre
  if (first && foundation) {
    const large = tooManyChains([...state.carried, ...request.tree.steps])
    if (large) own.push(large)
    centre = boughtCentre(foundation, reader.layout, text)
    if (foundation.steps.length === 0)
      // A round that only makes the ring: what follows is worked into it.
      return {
        ...common,
        centre,
        carried: [...request.tree.steps],
        findings: [...state.findings, ...located(own)],
        readings: [...state.readings, ringOnly(line, one)],
      }
    if (!foundation.stated && centre.kind !== "solid-ring") own.push(ringNotDescribed(text))
  }
  if (!candidate.unknown && candidate.round)
    own.push(...otherChainsAtJoin(clean, foundation?.steps ?? request.tree.steps))
  // Of a round that is not known nothing else is told: it would follow from what was passed over.
  if (!candidate.unknown) own.push(...result.findings.map(withoutDoubtOfChains))
  if (result.forced && !result.told)
    own.push(toldChoices(result.forced, "then the rounds after it fit", label))
  let round: Round | null = candidate.round
  let doubt = state.doubt
  let { motif } = state
  let assumed = candidate.assumed
  if (assumed) {
    // A bracketed total at the end of the round settles its count; what is not known is only where the stitches stand.
    const settledByTotal =
      tree.gaps.length > 0 &&
      clearTotal(tree, text) &&
      !isFarFewer(round!, [state.rounds.at(-1), result.round])
    withoutCannot(own, settledByTotal)
    own.push(assumedFinding(one, round!, label, settledByTotal ? "note" : "warning"))
    doubt = null
  } else if (round) {
    const then = doubtAfter(state.doubt, request, result)
    doubt = then.doubt
    const told = own.some(({ severity }) => severity !== "note")
    const few = settled || told ? null : fewStitches(round, label)
    if (!settled && !told && !saysStart(request.tree.steps) && losesFold(state.rounds, round)) {
      own.push(foldLost(state.rounds, round, label))
      doubt = { number: one.number, other: null, fold: sharedFold(state.rounds) }
    } else if (few) {
      own.push(few)
      doubt = { number: one.number, other: null }
    } else if (then.finding) own.push(then.finding)
    else if (
      !doubt &&
      !settled &&
      own.some(({ code, severity }) => severity !== "note" && leavesDoubt.has(code))
    )
      doubt = { number: one.number, other: null, firm: true }
    if (then.ground) {
      round = then.ground
      assumed = true
    }
  }
  // The count goes on by the words of the round alone; the piece ends before it.
  const alone = round
    ? null
    : first
      ? countedOnCentre(request)
      : countedByItself(request, tree.gaps, {
          fold: sharedFold(state.rounds),
          below: state.rounds[state.rounds.length - 1] ?? null,
          short: result.findings.some(({ code }) => isShortage(code)),
        })
  if (alone) {
    motif ??= state.rounds.length
    round = alone.round
    assumed = true
    if (!alone.sure) doubt = { number: one.number, other: null }
    own.push(byItselfFinding(one.number, alone, label))
  }
  if (round && foundation?.along) {
    own.push(alongChainFinding(label, foundation.along.all > foundation.along.oneSide))
    motif ??= state.rounds.length
  }
  if (!round) motif ??= state.rounds.length
  const counts = round ? countsOf(round) : null
  const troubled = own.some((finding) => finding.severity !== "note")
  const { comparison } = result
  const reading: RoundReading = {
    number: one.number,
    line,
    start: text.start,
    end: span.end,
    counted: counts && { stitches: counts.stitches, chains: counts.chains, spaces: counts.spaces },
    stated: comparison.stated,
    agrees: comparison.agrees,
    clean: round !== null && !troubled && comparison.agrees !== false,
    ...(assumed ? { assumed: true as const } : {}),
    ...(round && !assumed ? { elementPlaces: placesOf(result.spans) } : {}),
  }
  return {
    ...common,
    centre,
    carried: request.tree.next ?? [],
    rounds: round ? [...state.rounds, round] : state.rounds,
    motif,
    lost: round === null,
    doubt,
    findings: [...state.findings, ...located(own)],
    readings: [...state.readings, reading],
  }
}

/** "Ch 3 (does not count)", or no chain and no repeat at all: how it starts and ends is no matter of doubt. */
function saysStart(steps: readonly Step[]): boolean {
  if (steps.some((step) => step.do === "chain" && step.countsAs?.counts === false)) return true
  return !steps.some(({ do: what }) => what === "chain" || what === "repeat")
}

/** The round grows by as many stitches as the two before it did. */
function goesOnEvenly(rounds: readonly Round[], round: Round | null): boolean {
  if (!round || rounds.length < 3) return false
  const [a, b, c, d] = [...rounds.slice(-3), round].map((one) => countsOf(one).stitches)
  return b! - a! === c! - b! && c! - b! === d! - c!
}

/** The chains before the join change no count of stitches: told, and no doubt once the reading is chosen. */
function withoutDoubtOfChains(finding: Finding): Finding {
  return finding.code === "open-at-join" ? { ...finding, severity: "note" } : finding
}

/** What puts the count of a round in doubt, and of those that stand on it. */
const leavesDoubt: ReadonlySet<string> = new Set([
  "words-passed-over",
  "figure-passed-over",
  "stitches-passed-over",
  "spaces-left-over",
  "repeat-does-not-divide",
])

function remembered(state: State, steps: readonly Step[]): State["saidCounts"] {
  const said = new Map(state.saidCounts)
  rememberCounts(steps, said)
  return said
}

/** Start and end for every element; those made by one stretch of the text share them. */
function placesOf(spans: readonly Span[]): readonly (readonly [number, number])[] {
  const places: (readonly [number, number])[] = []
  let last: Span | null = null
  for (const span of spans) {
    places.push(span === last ? places[places.length - 1]! : [span.start, span.end])
    last = span
  }
  return places
}

function ringOnly(line: number, one: OneRound): RoundReading {
  return {
    number: one.number,
    line,
    start: one.text.start,
    end: one.text.end,
    counted: { stitches: 0, chains: 0, spaces: 0 },
    stated: null,
    agrees: null,
    clean: true,
  }
}

function ringNotDescribed(text: RoundText): Finding {
  return {
    severity: "note",
    code: "ring-not-described",
    start: text.start,
    end: text.bodyStart,
    message: "How the centre is made is not said; an adjustable ring is assumed.",
    hint: 'Write, for example, "ch 4, join to form a ring".',
  }
}

/** The centre with the size of the bought ring; a ring of which nothing is said is the bought one, if there is one. */
function boughtCentre(
  { centre, stated }: Foundation,
  { boughtRing, clean }: PatternText,
  { bodyStart, end }: RoundText,
): Centre {
  if (boughtRing === undefined) return centre
  const meant = !stated && /\bring\b/i.test(clean.slice(bodyStart, end))
  return centre.kind === "solid-ring" || meant ? { kind: "solid-ring", ...boughtRing } : centre
}

/** "turn" as the last of the round's work, before or after its join. */
function endsWithTurn(steps: readonly Step[]): boolean {
  const last = steps.findLastIndex(isOfRound)
  return last >= 0 && steps.slice(last + 1).some((step) => step.do === "turn")
}
