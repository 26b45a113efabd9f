// Each round accounted for against the one before: what was left over at its end, a repeat that does
// not divide, a total that differs, each with both numbers and the likely slip.

import type { Round } from "@roundwright/motif"
import { kindKey } from "@roundwright/motif"
import { kindName } from "@roundwright/stitches"
import type { Edge } from "./edge.ts"
import type { Finding } from "./problem-list.ts"
import type { RoundWork } from "./round-work.ts"
import type { Comparison } from "./totals.ts"
import type { Span } from "./tree.ts"
import { plural } from "./wording.ts"

/** What the round left of the edge below, as findings. */
export function leftOver(work: RoundWork, span: Span): Finding[] {
  const { edge } = work.main
  if (edge.round < 0 || edge.size === 0) return []
  const state = usage(work)
  if (!state.any || state.complete) return []
  const findings: Finding[] = []
  const runs = skipRuns(edge, state)
  const stitches = work.picked ? null : stitchesLeft(edge, state)
  if (stitches && !isImpliedSkip(state, stitches, runs))
    findings.push(leftFinding(work, span, stitches, "stitch"))
  const spaces = spacesLeft(edge, state)
  if (spaces) findings.push(leftFinding(work, span, spaces, "space"))
  if (findings.length === 0 && !work.picked) {
    const uneven = unevenClose(work, runs, span)
    if (uneven) findings.push(uneven)
  }
  return findings
}

interface Usage {
  readonly any: boolean
  /** Every stitch and chain below is worked into. */
  readonly complete: boolean
  /** By cell: 1 worked, 2 skipped; 0 neither. */
  readonly marks: Uint8Array
  /** Cells in the order walked from the round's start. */
  readonly walk: readonly number[]
  /** First index of `walk` after everything used. */
  readonly tailFrom: number
  /** The last thing used was skipped rather than worked. */
  readonly endsSkipped: boolean
}

function usage(work: RoundWork): Usage {
  const { edge, base } = work.main
  const marks = new Uint8Array(edge.size)
  let last = base
  let any = false
  let endsSkipped = false
  for (const use of work.used) {
    if (use.edge !== edge || use.use === "slipped") continue
    for (let at = use.from; at < use.to; at++) {
      const index = ((at % edge.size) + edge.size) % edge.size
      if (use.use === "worked") marks[index] = 1
      else if (marks[index] === 0) marks[index] = 2
    }
    if (use.use === "worked") any = true
    if (use.to >= last) {
      last = use.to
      endsSkipped = use.use === "skipped"
    }
  }
  let complete = true
  for (let index = 0; index < edge.size && complete; index++) {
    const type = edge.cells[index]!.type
    complete = marks[index] === 1 || type === "gap" || type === "picot"
  }
  const walk = complete
    ? []
    : Array.from(
        { length: edge.size },
        (_, k) => (((base + k) % edge.size) + edge.size) % edge.size,
      )
  return {
    any,
    complete,
    marks,
    walk,
    tailFrom: Math.min(edge.size, Math.max(0, last - base)),
    endsSkipped,
  }
}

interface SkipRuns {
  /** Lengths, in stitches, of the runs skipped between one place worked into and the next. */
  readonly lengths: readonly number[]
  /** Stitches without work between the last place and the first again. */
  readonly closing: number
  /** Places worked into. */
  readonly places: number
}

/** Runs of stitches without work between the places worked into. */
function skipRuns(edge: Edge, state: Usage): SkipRuns {
  const lengths: number[] = []
  let places = 0
  let run = 0
  let lead = 0
  for (const index of state.walk) {
    const type = edge.cells[index]?.type
    const worked = state.marks[index] === 1
    if (!worked) {
      if (type === "stitch") run += 1
      continue
    }
    if (type === "gap" || type === "picot") continue
    if (places === 0) lead = run
    else lengths.push(run)
    places += 1
    run = 0
  }
  return { lengths, closing: run + lead, places }
}

interface Left {
  readonly used: number
  readonly there: number
  readonly left: number
  /** Left in the middle rather than at the end. */
  readonly inside: boolean
  readonly name: string
}

/** Stitches of the kinds worked one by one that nothing was worked into. */
function stitchesLeft(edge: Edge, state: Usage): Left | null {
  const kinds = new Map<string, { worked: number; skipped: number; tail: number; inside: number }>()
  const lace = passedInLace(edge, state)
  state.walk.forEach((index, k) => {
    const element = edge.elementAt(index)
    if (edge.cells[index]?.type !== "stitch" || element?.type !== "stitch" || lace.has(index))
      return
    const { basic, gathered } = element.kind
    const key = kindKey({ basic, ...(gathered ? { gathered } : {}) })
    const entry = kinds.get(key) ?? { worked: 0, skipped: 0, tail: 0, inside: 0 }
    const mark = state.marks[index]
    if (mark === 1) entry.worked += 1
    else if (mark === 2) entry.skipped += 1
    else if (k >= state.tailFrom) entry.tail += 1
    else entry.inside += 1
    kinds.set(key, entry)
  })
  let used = 0
  let tail = 0
  let inside = 0
  for (const entry of kinds.values()) {
    if (entry.worked <= 1) continue
    // Said to be skipped on one side of a repeat only, and as many passed over on the other.
    const mirrored = entry.inside > 0 && entry.inside === entry.skipped && entry.tail === 0
    used += entry.worked + entry.skipped
    tail += entry.tail
    if (!mirrored) inside += entry.inside
  }
  const left = tail + inside
  if (left === 0 || used <= 1) return null
  return { used, there: used + left, left, inside: inside > 0, name: "stitch" }
}

/** Stitches passed on the way from one space to another: lace does that everywhere. */
function passedInLace(edge: Edge, state: Usage): Set<number> {
  const passed = new Set<number>()
  let run: number[] = []
  let fromSpace = state.walk.length > 0 && edge.cells[lastUsedCell(edge, state)]?.type === "chain"
  for (const index of state.walk) {
    const type = edge.cells[index]?.type
    if (state.marks[index] !== 0) {
      if (fromSpace && type === "chain") for (const cell of run) passed.add(cell)
      if (type === "stitch" || type === "chain") fromSpace = type === "chain"
      run = []
    } else if (type === "stitch") run.push(index)
  }
  const first = state.walk.find((index) => state.marks[index] !== 0)
  if (fromSpace && first !== undefined && edge.cells[first]?.type === "chain")
    for (const cell of run) passed.add(cell)
  return passed
}

function lastUsedCell(edge: Edge, state: Usage): number {
  for (let k = state.walk.length - 1; k >= 0; k--) {
    const index = state.walk[k]!
    if (state.marks[index] !== 0 && edge.cells[index]?.type !== "gap") return index
  }
  return -1
}

/** "*dc in next st, ch 2, sk next st; ... ch 2; join": the skip before the join goes without saying. */
function isImpliedSkip(state: Usage, left: Left, runs: SkipRuns): boolean {
  if (left.inside || state.endsSkipped) return false
  return runs.lengths.includes(left.left) || runs.lengths.includes(runs.closing)
}

/** Fewest places that make a steady skip between them a rule. */
const fewestForRule = 4

/** Every two places stand the same number of stitches apart, but not the last and the first. */
function unevenClose(work: RoundWork, runs: SkipRuns, span: Span): Finding | null {
  const first = runs.lengths[0]
  if (first === undefined || first < 1 || runs.places < fewestForRule) return null
  if (runs.lengths.some((length) => length !== first) || runs.closing >= first) return null
  if (work.used.some((use) => use.edge === work.main.edge && use.use === "slipped")) return null
  const there = work.main.edge.cells.filter((cell) => cell.type === "stitch").length
  const wanted = there + first - runs.closing
  return {
    severity: "warning",
    code: "uneven-at-join",
    ...span,
    message: `Everywhere ${plural(first, "stitch is", "stitches are")} skipped, but ${runs.closing === 0 ? "none" : runs.closing} before the join: the round before has ${there} stitches, and ${wanted} would come out even.`,
    hint: `Let the round before have ${wanted}, or say how the round ends.`,
  }
}

/** Spaces of the sizes worked into that were left. */
function spacesLeft(edge: Edge, state: Usage): Left | null {
  const runs = new Map<number, { size: number; used: boolean; tail: boolean }>()
  state.walk.forEach((index, k) => {
    const cell = edge.cells[index]
    const element = edge.elementAt(index)
    if (cell?.type !== "chain" || element?.type !== "chain") return
    const entry = runs.get(cell.element) ?? {
      size: element.chains,
      used: false,
      tail: k >= state.tailFrom,
    }
    if (state.marks[index] !== 0) entry.used = true
    runs.set(cell.element, entry)
  })
  const sizes = new Map<number, { worked: number; tail: number; inside: number }>()
  for (const run of runs.values()) {
    const entry = sizes.get(run.size) ?? { worked: 0, tail: 0, inside: 0 }
    if (run.used) entry.worked += 1
    else if (run.tail) entry.tail += 1
    else entry.inside += 1
    sizes.set(run.size, entry)
  }
  for (const [size, entry] of sizes) {
    if (entry.worked < 2 || entry.tail === 0 || entry.inside > 0) continue
    const there = entry.worked + entry.tail
    return { used: entry.worked, there, left: entry.tail, inside: false, name: `ch-${size} space` }
  }
  return null
}

function leftFinding(work: RoundWork, span: Span, left: Left, what: "stitch" | "space"): Finding {
  const one = left.name
  const several = what === "stitch" ? "stitches" : `${left.name}s`
  const repeat = work.openRepeat
  if (repeat && !left.inside && what === "stitch") {
    const uses = repeat.uses
    return {
      severity: "warning",
      code: "repeat-does-not-divide",
      start: repeat.start,
      end: repeat.end,
      message: `The round before has ${plural(left.there, one, several)}, the repeat uses ${uses}: ${repeat.full} repeats and ${left.left} left over.`,
      hint: `Let the round before have ${left.there - left.left} or ${left.there - left.left + uses}, or say how the round ends.`,
    }
  }
  return {
    severity: "warning",
    code:
      what === "stitch"
        ? left.inside
          ? "stitches-passed-over"
          : "stitches-left-over"
        : "spaces-left-over",
    start: span.start,
    end: span.end,
    message: `The round before has ${plural(left.there, one, several)}; this round uses ${left.used} of them and leaves ${left.left}.`,
    hint:
      what === "space"
        ? "Work one repeat more, or make one group less in the round before."
        : "Count the repeats, or say that the rest is skipped.",
  }
}

/** A stated total that ours does not match, with the likely slip. */
export function totalFindings(work: RoundWork, round: Round, comparison: Comparison): Finding[] {
  return comparison.differing.map(({ item, stated, ours }) => ({
    severity: "warning" as const,
    code: "stated-total-differs",
    start: item.start,
    end: item.end,
    message: `The text states ${stated} ${unitWords(item.word, item.kind ? kindName(item.kind) : "")}; worked as written it comes to ${ours}.`,
    hint: likelySlip(work, round, stated, ours),
  }))
}

function unitWords(word: string, kind: string): string {
  return word !== "" ? word : kind !== "" ? kind : "stitches"
}

function likelySlip(work: RoundWork, round: Round, stated: number, ours: number): string {
  const difference = stated - ours
  if (difference === 1 && work.startChain && !work.startChain.counts)
    return "The starting chain may be counted as a stitch in the total: say whether it counts."
  if (difference === -1 && work.startChain?.counts)
    return "The starting chain may not be meant to count: say whether it counts."
  if (difference === 1)
    return "The join may have been counted as a stitch, or one stitch is missing in the round."
  const repeats = work.mainRepeats
  if (repeats > 1) {
    const per = Math.round(round.elements.length / repeats)
    const each = perRepeat(ours, repeats)
    if (each !== null && Math.abs(difference) === each)
      return difference > 0
        ? `One repeat more (${repeats + 1} in all) would give ${stated}.`
        : `One repeat fewer (${repeats - 1} in all) would give ${stated}.`
    if (each !== null && difference % repeats === 0)
      return `${Math.abs(difference / repeats)} ${difference > 0 ? "more" : "fewer"} in each of the ${repeats} repeats would give ${stated}.`
    void per
  }
  return "Count the round again; the total may belong to another round."
}

function perRepeat(ours: number, repeats: number): number | null {
  return ours % repeats === 0 ? ours / repeats : null
}
