// Round after round, each worked on the one before; what cannot be worked stops the motif, not the reading.

import { type Centre, countRound, type Round } from "@roundwright/motif"
import type { Terms } from "@roundwright/stitches"
import { alongChainFinding } from "./along-chain.ts"
import { attachCounts, rememberCounts } from "./counts-notes.ts"
import { type Doubt, doubtAfter } from "./doubt.ts"
import { type Foundation, readFoundation } from "./foundation.ts"
import { readRound } from "./grammar.ts"
import type { PatternText, RoundText } from "./layout.ts"
import { largestNumber, mostChains, mostStepsPerText, mostTokensPerRound } from "./limits.ts"
import { type Located, listRounds, type OneRound, resolved } from "./list-rounds.ts"
import type { Finding } from "./problem-list.ts"
import type { ProseFound } from "./prose.ts"
import { type RoundRequest, workRound } from "./read-round.ts"
import type { RoundReading } from "./reading.ts"
import { type Earlier, type Reconsidered, reconsider } from "./reconsider.ts"
import type { Shared } from "./round-work.ts"
import { beginsAnew, tellSecondPiece } from "./second-piece.ts"
import { lineAt, type SourceText } from "./source-text.ts"
import { standIn } from "./stand-in.ts"
import { tokenise } from "./tokens.ts"
import { countsOf } from "./totals.ts"
import type { RoundTree, Span, Step } from "./tree.ts"
import { joinUnread } from "./unread-words.ts"
import { Words } from "./words.ts"

export function trimmed(
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

export function readRounds(
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
    saidCounts: new Map(),
  }
  const trees = new Map<number, RoundTree>()
  const progress: Progress = { centre: { kind: "adjustable-ring" }, motif: [], readings: [] }
  const parsed = new Map<RoundText, { tree: RoundTree; findings: readonly Finding[] }>()
  let broken = false
  let lost = false
  let earlier: Earlier | null = null
  let turnNext = false
  let doubt: Doubt | null = null
  let carried: readonly Step[] = prose.foundation
  for (const [at, one] of list.entries()) {
    const { text } = one
    let read = parsed.get(text)
    if (!read) {
      read = parseRound(layout, text, terms, prose)
      parsed.set(text, read)
    }
    const said = one.nth === 0 ? read.findings : []
    const own: Located[] = said.map((finding) => ({ ...finding, round: one.number }))
    const tree = resolved(read.tree, one, trees, own, text)
    if (beginsAnew(one, tree, rounds)) {
      tellSecondPiece(findings, text, list.length - at)
      break
    }
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
      progress.centre = boughtCentre(foundation, layout, text)
      if (foundation.steps.length === 0) {
        // A round that only makes the ring: what follows is worked into it.
        carried = [...tree.steps]
        findings.push(...own)
        progress.readings.push(ringOnly(source, one))
        continue
      }
      if (!foundation.stated && progress.centre.kind !== "solid-ring")
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
    let ground: Round | null = null
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
        // The total of the round before and this round bear each other out.
        doubt = null
        result = again.result
      }
      earlier = result.round && !unreadWords ? { request, result, span: request.span } : null
      worked = result.round
      places = placesOf(result.spans)
      stated = result.comparison.stated
      agrees = unreadWords ? null : result.comparison.agrees
      for (const finding of result.findings)
        if (!unreadWords || !followsFromUnread(finding)) own.push({ ...finding, round: one.number })
      if (worked && !unreadWords) round = worked
      if (agrees === true)
        own.forEach((finding, i) => {
          if (finding.code === "growth-implied") own[i] = { ...finding, severity: "note" }
        })
      if (round) {
        const after = doubtAfter(doubt, request, result)
        doubt = after.doubt
        if (after.finding) own.push({ ...after.finding, round: one.number })
        if (after.ground) {
          const told = own.filter((finding) => finding.code !== "stated-total-differs")
          own.splice(0, own.length, ...told)
          ground = after.ground
        }
      }
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
    if (round && foundation?.along) {
      const both = foundation.along.all > foundation.along.oneSide
      own.push({
        ...alongChainFinding({ start: text.start, end: text.label.end }, both),
        round: one.number,
      })
      broken = true
    }
    if (round) {
      rounds.push(ground ?? round)
      if (!broken) progress.motif.push(round)
    } else if (!lost) {
      broken = true
      const fromTotal = standIn(tree, one.number, index)
      const firm = fromTotal?.elements.every((element) => element.type === "stitch") === true
      doubt = { number: one.number, other: null, firm }
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
    rememberCounts(tree.steps, shared.saidCounts)
    findings.push(...own)
    const counts = round ? countsOf(round) : null
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

/** What counts come to with words left out says nothing: the words are the problem. */
function followsFromUnread(finding: Finding): boolean {
  return finding.severity !== "error" || /^(?:needs-more-than|nothing-left)/.test(finding.code)
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
    elementPlaces: placesOf(again.spans),
  }
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
  const huge = tokens.find((token) => token.value > largestNumber)
  if (huge) {
    const finding: Finding = {
      severity: "error",
      code: "number-too-large",
      start: huge.start,
      end: huge.end,
      message: `${huge.text} of anything cannot be meant in one round.`,
      hint: `Look at the number; up to ${largestNumber.toLocaleString("en")} are read.`,
    }
    return { tree: { steps: [], totals: [] }, findings: [finding] }
  }
  const words = new Words(tokens, terms, prose.locals, text.end)
  const tree = readRound(words)
  return {
    tree: { steps: attachCounts(tree.steps), totals: tree.totals },
    findings: joinUnread(words.findings, tokens, layout.clean),
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

function leadsWithTurn(steps: readonly Step[]): boolean {
  const first = steps.find((step) => step.do !== "mode")
  return first?.do === "turn"
}

function endsWithTurn(steps: readonly Step[]): boolean {
  if (steps.length < 2) return false
  return steps[steps.length - 1]?.do === "turn"
}
