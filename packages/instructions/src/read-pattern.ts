// Reads a written pattern: headings, terms, then round after round, each worked on the one before.

import type { Centre, Round } from "@roundwright/motif"
import { countRound } from "@roundwright/motif"
import type { Terms } from "@roundwright/stitches"
import { attachCounts } from "./counts-notes.ts"
import { readFoundation } from "./foundation.ts"
import { gaugeOf } from "./gauge-headings.ts"
import { readRound } from "./grammar.ts"
import { layOut, type PatternText, type RoundText } from "./layout.ts"
import {
  longestText,
  mostChains,
  mostRounds,
  mostStepsPerText,
  mostTokensPerRound,
} from "./limits.ts"
import { type Finding, listProblems } from "./problem-list.ts"
import { type ProseFound, readProse } from "./prose.ts"
import { type RoundRequest, standIn, workRound } from "./read-round.ts"
import type { PatternReading, RoundReading } from "./reading.ts"
import { type Earlier, type Reconsidered, reconsider } from "./reconsider.ts"
import type { Shared } from "./round-work.ts"
import { lineAt, readSource, type SourceText } from "./source-text.ts"
import { findTerms } from "./terms.ts"
import { tokenise } from "./tokens.ts"
import type { RoundTree, StatedTotal, Step } from "./tree.ts"
import { unreadable } from "./unreadable.ts"
import { Words } from "./words.ts"

export interface ReadOptions {
  /** Terms to read in, over anything the text states. */
  readonly terms?: Terms
}

type Located = Finding & { readonly round: number | null }

/**
 * Reads a written pattern in US or UK terms. Never throws; whatever is wrong is a problem with its
 * place. The motif holds the rounds before the first that could not be worked.
 */
export function readPattern(text: string, options: ReadOptions = {}): PatternReading {
  const refused = unreadable(text)
  if (refused) return nothingRead(options.terms, refused)
  const source = readSource(text.length > longestText ? "" : text)
  const layout = layOut(source)
  const terms = findTerms(layout.clean, options.terms)
  const gauge = gaugeOf(layout, terms.terms)
  const prose = readProse(layout, terms.terms)
  const findings: Located[] = [...terms.findings, ...gauge.findings].map((finding) => ({
    ...finding,
    round: null,
  }))
  for (const stray of prose.stray)
    findings.push({
      severity: "note",
      code: "outside-rounds",
      ...trimmed(layout.clean, stray),
      round: null,
      message: "This line stands outside the rounds and is not worked.",
      hint: 'Give it a label such as "Rnd 1:" if it is a round.',
    })
  const rounds = readRounds(source, layout, terms.terms, prose, findings)
  return {
    title: layout.title,
    terms: terms.terms,
    termsFrom: terms.from,
    gauge: gauge.input,
    motif: {
      ...(layout.title === null ? {} : { title: layout.title }),
      centre: rounds.centre,
      rounds: rounds.motif,
    },
    rounds: rounds.readings,
    problems: listProblems(source, findings),
  }
}

function nothingRead(terms: Terms | undefined, problem: Finding): PatternReading {
  const source = readSource("")
  return {
    title: null,
    terms: terms ?? "US",
    termsFrom: terms ? "stated" : "default",
    gauge: { swatches: [] },
    motif: { centre: { kind: "adjustable-ring" }, rounds: [] },
    rounds: [],
    problems: listProblems(source, [{ ...problem, round: null }]),
  }
}

function trimmed(
  clean: string,
  span: { start: number; end: number },
): { start: number; end: number } {
  const text = clean.slice(span.start, span.end)
  const lead = text.length - text.trimStart().length
  return { start: span.start + lead, end: span.start + text.trimEnd().length }
}

interface Progress {
  centre: Centre
  motif: Round[]
  readings: RoundReading[]
}

interface OneRound {
  readonly number: number
  readonly text: RoundText
  /** Which of a range of rounds this is, and how many there are. */
  readonly nth: number
  readonly of: number
}

function readRounds(
  source: SourceText,
  layout: PatternText,
  terms: Terms,
  prose: ProseFound,
  findings: Located[],
): Progress {
  const list = listRounds(layout, findings)
  const rounds: Round[] = []
  const shared: Shared = {
    rounds,
    centre: null,
    stepsLeft: mostStepsPerText,
    startCounts: prose.startCounts,
  }
  const trees = new Map<number, RoundTree>()
  const progress: Progress = { centre: { kind: "adjustable-ring" }, motif: [], readings: [] }
  const parsed = new Map<RoundText, { tree: RoundTree; findings: readonly Finding[] }>()
  let broken = false
  let lost = false
  let earlier: Earlier | null = null
  let turnNext = false
  let carried: readonly Step[] = prose.foundation
  for (const one of list) {
    const { text } = one
    let read = parsed.get(text)
    if (!read) {
      read = parseRound(layout, text, terms, prose)
      parsed.set(text, read)
    }
    const said = one.nth === 0 ? read.findings : []
    const own: Located[] = said.map((finding) => ({ ...finding, round: one.number }))
    const tree = resolved(read.tree, one, trees, own, text)
    trees.set(one.number, tree)
    const turned = turnNext || leadsWithTurn(tree.steps)
    turnNext = endsWithTurn(tree.steps)
    const first = rounds.length === 0 && !lost
    const foundation = first
      ? readFoundation(
          [...carried, ...tree.steps],
          /\b(?:plastic|bone|metal|curtain|cabone|wooden)\s+ring|\bcord\b/i.test(
            layout.clean.slice(text.bodyStart, text.end),
          ),
        )
      : null
    if (foundation) {
      const large = [...carried, ...tree.steps].find(
        (step) => step.do === "chain" && step.chains > mostChains,
      )
      if (large)
        own.push({
          severity: "error",
          code: "too-many-chains",
          start: large.start,
          end: large.end,
          round: one.number,
          message: `More than ${mostChains.toLocaleString("en")} chains in one run are not worked.`,
          hint: "Look at the number.",
        })
      carried = []
      progress.centre = foundation.centre
      if (foundation.steps.length === 0) {
        // A round that only makes the ring: what follows is worked into it.
        carried = [...tree.steps]
        findings.push(...own)
        progress.readings.push(ringOnly(source, one))
        continue
      }
      if (!foundation.stated)
        own.push({
          severity: "note",
          code: "ring-not-described",
          start: text.start,
          end: text.bodyStart,
          round: one.number,
          message: "How the centre is made is not said; an adjustable ring is assumed.",
          hint: 'Write, for example, "ch 4, join to form a ring".',
        })
    }
    const unreadWords = own.some((finding) => finding.severity === "error")
    const index = rounds.length
    const span = {
      start: text.start,
      end: Math.max(text.start, trimmed(layout.clean, { start: text.start, end: text.end }).end),
    }
    let round: Round | null = null
    let stated: number | null = null
    let agrees: boolean | null = null
    let worked: Round | null = null
    let places: readonly (readonly [number, number])[] = []
    if (!lost && tree.steps.length > 0) {
      const request: RoundRequest = {
        shared,
        index,
        number: one.number,
        tree,
        foundation,
        turned: turned && index > 0,
        row: text.label.row,
        span: { start: text.start, end: text.label.end },
      }
      let result = workRound(request)
      const before = earlier
      const again =
        result.score > 0 && before && !unreadWords ? reconsider(before, request, result) : null
      if (again) {
        rounds[index - 1] = again.before
        findings.push({ ...again.told, round: rounds[index - 1]!.number })
        restate(progress, again, broken)
        if (!again.worked) broken = true
        result = again.result
      }
      earlier = result.round && !unreadWords ? { request, result, span: request.span } : null
      worked = result.round
      places = result.spans.map((made) => [made.start, made.end] as const)
      stated = result.comparison.stated
      agrees = unreadWords ? null : result.comparison.agrees
      for (const finding of result.findings)
        if (!unreadWords || finding.severity !== "note")
          own.push({
            ...finding,
            round: one.number,
            ...(unreadWords && finding.severity === "error" && worked === null ? {} : {}),
          })
      if (worked && !unreadWords) round = worked
    } else if (tree.steps.length === 0 && !unreadWords) {
      own.push({
        severity: "error",
        code: "empty-round",
        ...span,
        round: one.number,
        message: `Round ${one.number} says nothing that can be worked.`,
        hint: "Write what is worked in it.",
      })
    } else if (lost && one.nth === 0) {
      own.push({
        severity: "note",
        code: "not-worked",
        start: text.start,
        end: text.label.end,
        round: one.number,
        message: "This round is not worked, as a round before it could not be.",
        hint: "Mend the first error above.",
      })
    }
    if (round) {
      rounds.push(round)
      if (!broken) progress.motif.push(round)
    } else if (!lost) {
      broken = true
      const fromTotal = standIn(tree, one.number, index)
      const substitute = fromTotal ?? (unreadWords ? worked : null)
      if (substitute) {
        rounds.push(substitute)
        own.push({
          severity: "note",
          code: "goes-on-from-total",
          start: text.start,
          end: text.label.end,
          round: one.number,
          message: fromTotal
            ? "Reading goes on from this round's stated total; the motif ends before it."
            : "Reading goes on with what was understood of this round; the motif ends before it.",
          hint: "",
        })
      } else lost = true
    }
    findings.push(...own)
    const counts = round ? countRound(round) : null
    const troubled = own.some((finding) => finding.severity !== "note")
    progress.readings.push({
      number: one.number,
      line: lineAt(source, text.start),
      start: text.start,
      end: span.end,
      counted: counts
        ? { stitches: counts.stitches, chains: counts.chains, spaces: counts.spaces }
        : null,
      stated,
      agrees,
      clean: round !== null && !troubled && agrees !== false,
      ...(round ? { elementPlaces: places } : {}),
    })
  }
  return progress
}

/** Puts the round before in its new reading into the motif and the list of readings. */
function restate(progress: Progress, again: Reconsidered, broken: boolean): void {
  const last = progress.readings[progress.readings.length - 1]
  if (!again.worked) {
    return
  }
  if (!broken) progress.motif[progress.motif.length - 1] = again.before
  if (!last) return
  const counts = countRound(again.before)
  progress.readings[progress.readings.length - 1] = {
    ...last,
    counted: { stitches: counts.stitches, chains: counts.chains, spaces: counts.spaces },
    elementPlaces: again.spans.map((made) => [made.start, made.end] as const),
  }
}

function ringOnly(source: SourceText, one: OneRound): RoundReading {
  return {
    number: one.number,
    line: lineAt(source, one.text.start),
    start: one.text.start,
    end: one.text.end,
    counted: { stitches: 0, chains: 0, spaces: 0 },
    stated: null,
    agrees: null,
    clean: true,
  }
}

function parseRound(
  layout: PatternText,
  text: RoundText,
  terms: Terms,
  prose: ProseFound,
): { tree: RoundTree; findings: readonly Finding[] } {
  const tokens = tokenise(layout.clean, text.bodyStart, text.end)
  if (tokens.length > mostTokensPerRound) {
    const finding: Finding = {
      severity: "error",
      code: "round-too-long",
      start: text.start,
      end: text.bodyStart,
      message: `This round has more than ${mostTokensPerRound.toLocaleString("en")} words.`,
      hint: "Give each round a label of its own.",
    }
    return { tree: { steps: [], totals: [] }, findings: [finding] }
  }
  const words = new Words(tokens, terms, prose.locals, text.end)
  const tree = readRound(words)
  return {
    tree: { steps: attachCounts(tree.steps), totals: tree.totals },
    findings: words.findings,
  }
}

/** Rounds one by one, ranges written out; gaps and doubles in the numbering told. */
function listRounds(layout: PatternText, findings: Located[]): OneRound[] {
  const list: OneRound[] = []
  let last = 0
  for (const text of layout.rounds) {
    const { label } = text
    const place = { start: label.start, end: Math.min(label.end, text.end) }
    if (label.unnumbered) {
      findings.push({
        severity: "error",
        code: "round-without-number",
        ...place,
        round: null,
        message: "A rule for every round is not worked; rounds need numbers.",
        hint: 'Write the rounds out, or as a range such as "Rnds 2-6:".',
      })
      continue
    }
    const of = label.to - label.from + 1
    if (last > 0 && label.from > last + 1)
      findings.push({
        severity: "warning",
        code: "round-missing",
        ...place,
        round: label.from,
        message:
          label.from === last + 2
            ? `Round ${last + 1} is missing before this one.`
            : `Rounds ${last + 1} to ${label.from - 1} are missing before this one.`,
        hint: "Look for a lost line; this round is read as following the one before it in the text.",
      })
    if (last > 0 && label.from <= last)
      findings.push({
        severity: "warning",
        code: "round-number-again",
        ...place,
        round: label.from,
        message: `Round ${label.from} comes after round ${last}.`,
        hint: "Number the rounds in the order they are worked.",
      })
    for (let nth = 0; nth < of; nth++) {
      if (list.length >= mostRounds) {
        findings.push({
          severity: "error",
          code: "too-many-rounds",
          ...place,
          round: label.from,
          message: `More than ${mostRounds.toLocaleString("en")} rounds are not read.`,
          hint: "Split the text.",
        })
        return list
      }
      list.push({ number: label.from + nth, text, nth, of })
    }
    last = label.to
  }
  if (list.length === 0 && findings.length < 1000)
    findings.push({
      severity: "error",
      code: "no-rounds",
      start: 0,
      end: Math.min(1, layout.clean.length),
      round: null,
      message: "No round was found in this text.",
      hint: 'Label the rounds: "Rnd 1: ch 4, join to form a ring; 12 dc in ring."',
    })
  return list
}

/** A tree with "as Rnd 2" put in place, and of a range of totals the one of this round. */
function resolved(
  tree: RoundTree,
  one: OneRound,
  trees: ReadonlyMap<number, RoundTree>,
  own: Located[],
  text: RoundText,
): RoundTree {
  const steps: Step[] = []
  for (const step of tree.steps) {
    if (step.do !== "as-round") {
      steps.push(step)
      continue
    }
    const wanted = step.round + (one.nth % (step.to - step.round + 1))
    const other = trees.get(wanted)
    if (!other || wanted === one.number) {
      own.push({
        severity: "error",
        code: "no-such-round",
        start: step.start,
        end: step.end,
        round: one.number,
        message: `Round ${wanted} is not there to repeat.`,
        hint: "Name a round that stands before this one.",
      })
      continue
    }
    steps.push(...other.steps.filter((part) => !(part.do === "join" && part.ring)))
  }
  void text
  return { steps, totals: tree.totals.map((total) => ofRange(total, one)) }
}

/** "(12, 24, 48, 96)" over rounds 2-5: the figure of this round; a list of another length is not firm. */
function ofRange(total: StatedTotal, one: OneRound): StatedTotal {
  if (one.of === 1) return total
  const bare = total.items.filter((item) => item.unit === "stitches" || item.unit === "kind")
  if (bare.length !== total.items.length || total.items.length < 2) {
    if (total.items.length === 1 && one.nth < one.of - 1) return { ...total, firm: false }
    return total
  }
  const item = total.items[one.nth]
  const unit = total.items[total.items.length - 1]
  if (!item || !unit || total.items.length !== one.of) return { ...total, firm: false }
  return {
    ...total,
    items: [unit.kind ? { ...item, unit: "kind", kind: unit.kind, word: unit.word } : item],
  }
}

function leadsWithTurn(steps: readonly Step[]): boolean {
  const first = steps.find((step) => step.do !== "mode")
  return first?.do === "turn"
}

function endsWithTurn(steps: readonly Step[]): boolean {
  if (steps.length < 2) return false
  return steps[steps.length - 1]?.do === "turn"
}
