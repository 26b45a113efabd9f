// Rounds of which nothing is made, and those after them: reading goes on, until a stated total is firm ground again.

import type { Round } from "@roundwright/motif"
import { countsOf } from "../account/totals.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundReading } from "../base/reading.ts"
import type { RoundTree, Span } from "../base/tree.ts"
import type { TreeReading, WordsOfRound } from "../grammar/read-words.ts"
import { assumedRound } from "./assumed.ts"
import { assumedFinding, clearTotal } from "./assumed-totals.ts"
import { byItselfFinding, countedByItself } from "./by-itself.ts"
import type { Resolver } from "./candidates.ts"
import { sharedFold } from "./fold-lost.ts"
import type { State } from "./ground.ts"
import type { OneRound } from "./list-rounds.ts"
import { placeOfRound, type Reader } from "./reader.ts"

/** A round that nothing can be made of, against one that can. */
const lostRound = 1000

export function emptyRound(one: OneRound, span: Span): Finding {
  return {
    severity: "error",
    code: "empty-round",
    ...span,
    message: `Round ${one.number} says nothing that can be worked.`,
    hint: "Write what is worked in it.",
  }
}

/** A round with no count of its own. */
function notWorked(reader: Reader, one: OneRound, stated: number | null): RoundReading {
  const { line, span } = placeOfRound(reader, one.text)
  const { start } = one.text
  return {
    number: one.number,
    line,
    start,
    end: span.end,
    counted: null,
    stated,
    agrees: null,
    clean: false,
  }
}

/** A round of which nothing is made: reading goes on lost, or not at all changed where it had nothing to say. */
export function unread(
  reader: Reader,
  state: State,
  one: OneRound,
  told: readonly Finding[],
): State {
  return {
    ...state,
    carried: state.rounds.length === 0 ? state.carried : [],
    motif: state.motif ?? state.rounds.length,
    lost: true,
    score: state.score + lostRound,
    findings: [...state.findings, ...told.map((finding) => ({ ...finding, round: one.number }))],
    readings: [...state.readings, notWorked(reader, one, null)],
  }
}

/** Nothing to work on: a round that states its total is gone on from, others are only told. */
export function goOnLost(
  reader: Reader,
  state: State,
  one: OneRound,
  words: WordsOfRound,
  resolve: Resolver,
): State[] {
  const first = words.trees().next().value as TreeReading | undefined
  const tree = first ? resolve(first).tree : { steps: [], totals: [] }
  const firm = tree.totals.find((total) => total.firm)
  const below = state.rounds[state.rounds.length - 1]
  const round =
    firm && assumedRound(tree, { index: state.rounds.length, number: one.number, below })
  if (
    first &&
    round &&
    onlyOneFirm(tree) &&
    onlyOneFirm(first) &&
    firm.items.some(({ unit }) => unit === "kind" || unit === "stitches") &&
    clearTotal(first, one.text)
  )
    return [recovered(reader, state, one, { ...first, ...tree }, round)]
  const alone = first && onUnknownGround(reader, state, one, first, tree)
  if (alone) return [alone]
  const note: Finding = {
    severity: "note",
    code: "not-worked",
    start: one.text.start,
    end: one.text.label.end,
    message: "This round is not worked, as a round before it could not be.",
    hint: "Mend the first error above.",
  }
  return [
    {
      ...state,
      findings:
        one.nth === 0 ? [...state.findings, { ...note, round: one.number }] : state.findings,
      trees: [...state.trees, { number: one.number, tree }],
      readings: [...state.readings, notWorked(reader, one, firm?.items[0]?.count ?? null)],
    },
  ]
}

/** One total that is stated outright; others may be said in passing ("18 sts (+6)"). */
export function onlyOneFirm({ totals }: RoundTree): boolean {
  return totals.filter(({ firm }) => firm).length === 1
}

/** A round whose own words tell what it stands on and how often: reading goes on from it, though the motif has ended. */
function onUnknownGround(
  reader: Reader,
  state: State,
  one: OneRound,
  first: TreeReading,
  tree: RoundTree,
): State | null {
  const shared = {
    rounds: state.rounds,
    centre: null,
    budget: reader.budget,
    startCounts: reader.prose.startCounts,
    saidCounts: state.saidCounts,
  }
  const label = { start: one.text.start, end: one.text.label.end }
  const found = countedByItself(
    {
      shared,
      index: state.rounds.length + 1,
      number: one.number,
      tree,
      foundation: null,
      turned: false,
      row: one.text.label.row,
      span: label,
    },
    first.gaps,
    { fold: sharedFold(state.rounds), below: null, short: false },
  )
  if (!found) return null
  const { stated, agrees } = found.result.comparison
  const rounds = [...state.rounds, found.ground, found.round]
  const finding = byItselfFinding(one.number, found, label)
  const doubt = found.sure ? null : { number: one.number, other: null }
  return onNewGround(reader, { ...state, rounds, doubt }, one, tree, finding, { stated, agrees })
}

/** A round that states its total gives those after it firm ground again; it is no part of the motif, which has ended. */
function recovered(
  reader: Reader,
  state: State,
  one: OneRound,
  tree: TreeReading,
  round: Round,
): State {
  const label = { start: one.text.start, end: one.text.label.end }
  const finding = assumedFinding(one, round, label, clearTotal(tree, one.text) ? "note" : "warning")
  const stated = tree.totals.find((total) => total.firm)?.items[0]?.count ?? null
  const rounds = [...state.rounds, round]
  const total = { stated, agrees: null }
  return onNewGround(reader, { ...state, rounds, doubt: null }, one, tree, finding, total)
}

/** Reading goes on from the last of the rounds, which is assumed. */
function onNewGround(
  reader: Reader,
  state: State,
  one: OneRound,
  tree: RoundTree,
  finding: Finding,
  total: Pick<RoundReading, "stated" | "agrees">,
): State {
  const { line, span } = placeOfRound(reader, one.text)
  const { stitches, chains, spaces } = countsOf(state.rounds[state.rounds.length - 1]!)
  const reading: RoundReading = {
    number: one.number,
    line,
    start: one.text.start,
    end: span.end,
    counted: { stitches, chains, spaces },
    ...total,
    clean: finding.severity === "note",
    assumed: true,
  }
  return {
    ...state,
    carried: [],
    lost: false,
    trees: [...state.trees, { number: one.number, tree }],
    findings: [...state.findings, { ...finding, round: one.number }],
    readings: [...state.readings, reading],
  }
}
