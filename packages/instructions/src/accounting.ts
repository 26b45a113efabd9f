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
  const { main } = work
  const { edge } = main
  if (edge.round < 0 || edge.size === 0) return []
  const state = usage(work)
  if (!state.any) return []
  const findings: Finding[] = []
  const stitches = stitchesLeft(edge, state)
  if (stitches && !work.picked) findings.push(leftFinding(work, span, stitches, "stitch"))
  const spaces = spacesLeft(edge, state)
  if (spaces) findings.push(leftFinding(work, span, spaces, "space"))
  return findings
}

interface Usage {
  readonly any: boolean
  /** By cell: 1 worked, 2 skipped, 3 slipped over. */
  readonly marks: Uint8Array
  /** Cells in the order walked from the round's start. */
  readonly walk: readonly number[]
  /** First index of `walk` after everything used. */
  readonly tailFrom: number
}

function usage(work: RoundWork): Usage {
  const { edge, base } = work.main
  const marks = new Uint8Array(edge.size)
  let last = base
  let any = false
  for (const use of work.used) {
    if (use.edge !== edge) continue
    for (let at = use.from; at < use.to; at++) {
      const index = ((at % edge.size) + edge.size) % edge.size
      if (use.use === "worked") marks[index] = 1
      else if (use.use === "skipped" && marks[index] === 0) marks[index] = 2
    }
    if (use.use !== "slipped") {
      if (use.use === "worked") any = true
      if (use.to > last) last = use.to
    }
  }
  const walk = Array.from(
    { length: edge.size },
    (_, k) => (((base + k) % edge.size) + edge.size) % edge.size,
  )
  return { any, marks, walk, tailFrom: Math.min(edge.size, Math.max(0, last - base)) }
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
  const kinds = new Map<string, { worked: number; tail: number; inside: number }>()
  state.walk.forEach((index, k) => {
    const element = edge.elementAt(index)
    if (edge.cells[index]?.type !== "stitch" || element?.type !== "stitch") return
    const key = kindKey({
      basic: element.kind.basic,
      ...(element.kind.gathered ? { gathered: element.kind.gathered } : {}),
    })
    const entry = kinds.get(key) ?? { worked: 0, tail: 0, inside: 0 }
    const mark = state.marks[index]
    if (mark === 1 || mark === 2) entry.worked += 1
    else if (k >= state.tailFrom) entry.tail += 1
    else entry.inside += 1
    kinds.set(key, entry)
  })
  let worked = 0
  let tail = 0
  let inside = 0
  for (const entry of kinds.values()) {
    if (entry.worked <= 1) continue
    worked += entry.worked
    tail += entry.tail
    inside += entry.inside
  }
  const left = tail + inside
  if (left === 0 || worked <= 1) return null
  return { used: worked, there: worked + left, left, inside: inside > 0, name: "stitch" }
}

/** Spaces of the sizes worked into that were left. */
function spacesLeft(edge: Edge, state: Usage): Left | null {
  const sizes = new Map<number, { worked: number; tail: number; inside: number }>()
  const seen = new Set<number>()
  state.walk.forEach((index, k) => {
    const cell = edge.cells[index]
    const element = edge.elementAt(index)
    if (cell?.type !== "chain" || element?.type !== "chain" || seen.has(cell.element)) return
    seen.add(cell.element)
    const entry = sizes.get(element.chains) ?? { worked: 0, tail: 0, inside: 0 }
    const cells = state.walk.filter(
      (other) => edge.cells[other]?.element === cell.element && edge.cells[other]?.type === "chain",
    )
    if (cells.some((other) => state.marks[other] !== 0)) entry.worked += 1
    else if (k >= state.tailFrom) entry.tail += 1
    else entry.inside += 1
    sizes.set(element.chains, entry)
  })
  for (const [size, entry] of sizes) {
    if (entry.worked < 2 || entry.tail === 0 || entry.inside > 0) continue
    return {
      used: entry.worked,
      there: entry.worked + entry.tail,
      left: entry.tail,
      inside: false,
      name: `ch-${size} space`,
    }
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
