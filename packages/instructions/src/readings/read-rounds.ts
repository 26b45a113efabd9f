// Round after round, each in the ways its words may be read and worked on each way the rounds before were; a
// few of the best go on side by side, and the counts decide. What cannot be worked stops the motif, not the
// reading.

import type { Centre, Motif } from "@roundwright/motif"
import type { Terms } from "@roundwright/stitches"
import { largestNumber, mostStepsPerText, mostTokensPerRound } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"
import type { RoundReading } from "../base/reading.ts"
import type { Locals } from "../grammar/cursor.ts"
import type { TreeReading } from "../grammar/read-words.ts"
import { readWords, type WordsOfRound } from "../grammar/read-words.ts"
import type { PatternText, RoundText } from "../text/layout.ts"
import type { ProseFound } from "../text/prose.ts"
import type { SourceText } from "../text/source-text.ts"
import { advance } from "./advance.ts"
import { bestStates, type State } from "./ground.ts"
import { type Located, listRounds, type OneRound } from "./list-rounds.ts"
import type { Reader } from "./reader.ts"
import { beginsAnew, tellSecondPiece } from "./second-piece.ts"

export interface RoundsRead {
  readonly centre: Centre
  readonly motif: Motif["rounds"]
  readonly readings: readonly RoundReading[]
}

export function readRounds(
  source: SourceText,
  layout: PatternText,
  terms: Terms,
  prose: ProseFound,
  findings: Located[],
): RoundsRead {
  const reader: Reader = { source, layout, terms, prose, budget: { stepsLeft: mostStepsPerText } }
  const list = listRounds(layout, findings)
  let states: State[] = [beginning(prose)]
  const words = new Map<RoundText, { read: WordsOfRound; locals: Locals; fault: Finding | null }>()
  for (const [at, one] of list.entries()) {
    const { locals } = states[0]!
    let known = words.get(one.text)
    if (!known || known.locals !== locals) {
      known = { ...scan(reader, one.text, locals), locals }
      words.set(one.text, known)
    }
    if (one.number === 1 && one.nth === 0 && startsOver(known.read, states[0]!, one)) {
      tellSecondPiece(findings, one.text, list.length - at)
      break
    }
    const next: State[] = []
    for (const state of states) next.push(...advance(reader, state, one, known.read, known.fault))
    states = bestStates(next)
  }
  const best = states[0]!
  findings.push(...best.findings)
  return {
    centre: best.centre,
    motif: best.motif === null ? best.rounds : best.rounds.slice(0, best.motif),
    readings: best.readings,
  }
}

/** Nothing read yet. */
export function beginning(prose: ProseFound): State {
  return {
    rounds: [],
    motif: null,
    centre: { kind: "adjustable-ring" },
    readings: [],
    findings: [],
    trees: [],
    locals: prose.locals,
    saidCounts: new Map(),
    carried: prose.foundation,
    turnNext: false,
    lost: false,
    doubt: null,
    score: 0,
  }
}

function startsOver(words: WordsOfRound, state: State, one: OneRound): boolean {
  if (state.rounds.length === 0) return false
  const first = words.trees().next().value as TreeReading | undefined
  return first !== undefined && beginsAnew(one, first, state.rounds)
}

const nothing: WordsOfRound = { tokens: [], trees: function* () {}, slips: [], remarks: [] }

/** The words of a round, looked up; too many of them, or a number no piece can have, is a fault. */
export function scan(
  { layout, terms }: Reader,
  text: RoundText,
  locals: Locals,
): { read: WordsOfRound; fault: Finding | null } {
  const read = readWords(layout.clean, text.bodyStart, text.end, terms, locals)
  if (read.tokens.length >= mostTokensPerRound)
    return {
      read: nothing,
      fault: {
        severity: "error",
        code: "round-too-long",
        start: text.start,
        end: text.bodyStart,
        message: `This round has more than ${mostTokensPerRound.toLocaleString("en")} words.`,
        hint: "Give each round a label of its own.",
      },
    }
  const huge = read.tokens.find(
    (token) => token.value > largestNumber && !isFileName(layout.clean, token),
  )
  if (!huge) return { read, fault: null }
  return {
    read: nothing,
    fault: {
      severity: "error",
      code: "number-too-large",
      start: huge.start,
      end: huge.end,
      message: `${huge.text} of anything cannot be meant in one round.`,
      hint: `Look at the number; up to ${largestNumber.toLocaleString("en")} are read.`,
    },
  }
}

/** "2009_06040081": the name of a picture, copied along with the page. */
function isFileName(text: string, { start, end }: { start: number; end: number }): boolean {
  return text.charAt(start) === "0" || text.charAt(start - 1) === "_" || text.charAt(end) === "_"
}
