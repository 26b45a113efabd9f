// Words for where a stitch goes: the hook's way along the edge below is followed, so that "next",
// "same" and what is skipped come out as a reader will take them.

import { type Anchor, anchorKey, type Round } from "@roundwright/motif"
import { ordinal } from "../base/wording.ts"
import { cellUnder } from "../edge/cell-under.ts"
import { type Edge, groupsInOnePlace, roundEdge } from "../edge/edge.ts"
import { partsGroups } from "../edge/sites.ts"
import type { Voice } from "./house-style.ts"
import type { Wording } from "./part.ts"

/** The hook's place on one edge while a round is written. */
export interface Hook {
  readonly edge: Edge
  at: number
  readonly rounds: readonly Round[]
  readonly index: number
  /** Shared by the hooks of one round: the last place worked into, and the edges of earlier rounds. */
  readonly shared: {
    /** The chain of this round being worked back along, and which of its chains comes next. */
    own: { readonly element: number; next: number } | null
    last: Anchor | null
    start: Anchor | null
    readonly earlier: Map<number, Hook>
    /** Corners of the round below, and how they are named. */
    readonly corners: ReadonlySet<string>
    readonly naming: Wording["corners"]
    readonly voice: Voice
  }
}

/** "skip 2 sts" or nothing, and "next ch-3 sp"; null when the place cannot be reached going on. */
export interface PlaceWords {
  readonly skip: string | null
  /** Stitches passed over, for slip stitches along them; null where they are not stitches. */
  readonly over: number | null
  readonly noun: string
  /** The same for several of them: "sts". */
  readonly several: string
  readonly isNext: boolean
}

/** Words for one place, the hook moving past it. */
export function placeWords(hook: Hook, anchor: Anchor): PlaceWords | null {
  if (anchor.at === "centre" && anchor.chain === undefined)
    return { skip: null, over: 0, noun: "ring", several: "ring", isNext: false }
  if (anchor.at === "chain" && anchor.round === hook.index) return alongWords(hook, anchor)
  const { last } = hook.shared
  if (last && anchorKey(last) === anchorKey(anchor)) {
    const space = anchor.at === "space" || anchor.at === "between"
    return { skip: null, over: 0, noun: space ? "same sp" : "same st", several: "", isNext: false }
  }
  const within = last && withinRun(last, anchor)
  if (within) {
    hook.shared.last = anchor
    return { skip: null, over: null, noun: within, several: "", isNext: false }
  }
  if (anchor.at === "stitch" && anchor.round === hook.index) return justMade(hook, anchor)
  const { start } = hook.shared
  if (start?.at === "space" && anchorKey(start) === anchorKey(anchor)) {
    hook.shared.last = anchor
    return { skip: null, over: 0, noun: "first sp", several: "", isNext: false }
  }
  if (anchor.at !== "centre" && anchor.round !== hook.edge.round) return earlierWords(hook, anchor)
  const found = cellOf(hook, anchor)
  if (found === null) return null
  const { edge } = hook
  const skipped = countSkipped(hook, anchor, found)
  hook.at = found + (anchor.at === "space" ? edge.widths[found % edge.size]! : 1)
  hook.shared.last = anchor
  return { ...(isCorner(hook, anchor) ? atCorner(skipped, hook) : skipped), isNext: true }
}

/** "skip 2 sts" on the way from the last place to one the round has been in already; null when nothing is passed. */
export function skipBackTo(hook: Hook, anchor: Anchor): string | null {
  if (anchor.at === "centre" || anchor.round !== hook.edge.round) return null
  const found = cellOf(hook, anchor)
  return found === null || found < hook.edge.size ? null : countSkipped(hook, anchor, found).skip
}

function isCorner(hook: Hook, anchor: Anchor): boolean {
  return hook.shared.naming !== "none" && hook.shared.corners.has(anchorKey(anchor))
}

/** "next corner ch-2 sp", or "next st (corner)". */
function atCorner<T extends { noun: string; several: string }>(words: T, hook: Hook): T {
  if (hook.shared.naming === "aside")
    return { ...words, noun: `${words.noun} (corner)`, several: "" }
  // Corners need no size beside their name.
  const bare = (text: string) => text.replace(/^ch-\d+ (?=sp)/, "")
  const { several } = words
  return {
    ...words,
    noun: `next corner ${bare(words.noun.replace(/^next /, ""))}`,
    several: several === "" ? "" : `corner ${bare(several)}`,
  }
}

/** From a run of chains into one of its chains, or from that under the run again: "6th ch of same sp", "same sp". */
function withinRun(last: Anchor, anchor: Anchor): string | null {
  if (last.at === "centre" || anchor.at === "centre") return null
  if (last.round !== anchor.round || last.element !== anchor.element) return null
  if (last.at === "space" && anchor.at === "chain")
    return `${ordinal(anchor.chain + 1)} ch of same sp`
  return last.at === "chain" && anchor.at === "space" ? "same sp" : null
}

/** On the stitch last made: "top of dc just made"; null for any other stitch of the round. */
function justMade(hook: Hook, anchor: Extract<Anchor, { at: "stitch" }>): PlaceWords | null {
  const made = hook.rounds[hook.index]?.elements[anchor.element]
  if (made?.type !== "stitch" || made.kind.gathered) return null
  hook.shared.last = anchor
  const noun = `top of ${hook.shared.voice.name(made.kind)} just made`
  return { skip: null, over: null, noun, several: "", isNext: false }
}

/** Back along a chain of the round itself: "2nd ch from hook", then "next ch"; null when chains are left out. */
function alongWords(hook: Hook, anchor: Extract<Anchor, { at: "chain" }>): PlaceWords | null {
  const { own } = hook.shared
  const chain = hook.rounds[hook.index]?.elements[anchor.element]
  if (chain?.type !== "chain") return null
  if (own?.element !== anchor.element) {
    const nth = chain.chains - anchor.chain
    hook.shared.own = { element: anchor.element, next: anchor.chain - 1 }
    return { skip: null, over: 0, noun: `${ordinal(nth)} ch from hook`, several: "", isNext: false }
  }
  if (own.next !== anchor.chain) return null
  own.next -= 1
  return { skip: null, over: 0, noun: "next ch", several: "ch", isNext: true }
}

/** The same on an earlier round, which is named. */
function earlierWords(hook: Hook, anchor: Exclude<Anchor, { at: "centre" }>): PlaceWords | null {
  const round = hook.rounds[anchor.round]
  if (!round || anchor.round >= hook.index) return null
  let other = hook.shared.earlier.get(anchor.round)
  if (!other) {
    const edge = roundEdge(round, anchor.round, false)
    const at = cellUnder(hook.rounds, edge, hook.shared.last ?? undefined)
    other = { edge, at, rounds: hook.rounds, index: hook.index, shared: hook.shared }
    hook.shared.earlier.set(anchor.round, other)
  }
  const words = placeWords(other, anchor)
  if (!words?.isNext) return words
  const of = ` of Rnd ${round.number}`
  return {
    skip: words.skip === null ? null : words.skip + of,
    over: words.over,
    noun: words.noun + of,
    several: words.several === "" ? "" : words.several + of,
    isNext: true,
  }
}

/** Position of the anchor's cell at or after the hook, within one turn. */
function cellOf(hook: Hook, anchor: Anchor): number | null {
  const { edge, at } = hook
  for (let k = at; k < at + edge.size; k++) {
    const index = ((k % edge.size) + edge.size) % edge.size
    const cell = edge.cells[index]!
    if (anchor.at === "centre") {
      if (cell.chain === anchor.chain) return k
      continue
    }
    if (cell.element !== anchor.element) continue
    if (anchor.at === "stitch" && cell.type === "stitch") return k
    if (anchor.at === "picot" && cell.type === "picot") return k
    if (anchor.at === "between" && cell.type === "gap") return k
    if (anchor.at === "space" && cell.type === "chain" && edge.startsRun(index)) return k
    if (anchor.at === "chain" && cell.type === "chain" && cell.chain === anchor.chain) return k
  }
  return null
}

function countSkipped(hook: Hook, anchor: Anchor, found: number): Omit<PlaceWords, "isNext"> {
  const { edge, at } = hook
  const between = (type: string, test: (index: number) => boolean = () => true) => {
    let count = 0
    for (let k = at; k < found; k++) {
      const index = ((k % edge.size) + edge.size) % edge.size
      if (edge.cells[index]!.type === type && test(index)) count += 1
    }
    return count
  }
  const passing = (count: number, one: string, several: string) => ({
    skip: skipWords(hook.shared.voice, count, one, several),
    over: one === "st" ? count : count === 0 ? 0 : null,
  })
  if (anchor.at === "centre")
    return { ...passing(between("chain"), "ch", "ch"), noun: "next ch", several: "ch" }
  if (anchor.at === "stitch")
    return { ...passing(between("stitch"), "st", "sts"), noun: "next st", several: "sts" }
  if (anchor.at === "picot")
    return {
      ...passing(between("picot"), "picot", "picots"),
      noun: "next picot",
      several: "picots",
    }
  if (anchor.at === "between") {
    const passed = passing(stitchesBeforeGap(hook, found), "st", "sts")
    return isNextBetweenGroups(hook, found)
      ? { ...passed, skip: null, noun: "next sp between groups", several: "sps between groups" }
      : { ...passed, noun: "next sp between sts", several: "sps between sts" }
  }
  const run = runStart(edge, found)
  const element = edge.elements[anchor.element]
  const size = element?.type === "chain" ? element.chains : 1
  if (anchor.at === "chain" && run < at && found > at) {
    // Further along in the run worked into last.
    const walk = found - run + 1
    return { skip: null, over: 0, noun: `${ordinal(walk)} ch`, several: "" }
  }
  if (anchor.at === "chain" && between("chain") === 0)
    return { skip: null, over: between("stitch"), noun: "next ch", several: "ch" }
  const passed =
    between("chain", (index) => edge.startsRun(index) && sizeAt(edge, index) === size) -
    (anchor.at === "chain" && run < found && run >= at ? 1 : 0)
  const name = `ch-${size} sp`
  if (anchor.at === "space")
    return { ...passing(passed, name, `${name}s`), noun: `next ${name}`, several: `${name}s` }
  return {
    ...passing(passed, name, `${name}s`),
    noun: `${nthOf(found - run + 1, size)} ch of next ${name}`,
    several: "",
  }
}

/** "2nd", "centre". */
function nthOf(nth: number, size: number): string {
  return size >= 3 && 2 * nth === size + 1 ? "centre" : ordinal(nth)
}

/** Stitches to skip so that the gap wanted is the next one. */
function stitchesBeforeGap(hook: Hook, found: number): number {
  const { edge, at } = hook
  let gaps = 0
  let stitches = 0
  for (let k = at; k < found; k++) {
    const { type } = edge.cells[((k % edge.size) + edge.size) % edge.size]!
    if (type === "stitch") stitches += 1
    if (type === "gap") gaps += 1
  }
  return gaps === 0 ? 0 : stitches
}

/** Over a round all of groups the gaps that part them are spoken of, whatever stitches lie before. */
function isNextBetweenGroups({ edge, at, shared }: Hook, found: number): boolean {
  if (shared.naming === "none" || !allInGroups(edge)) return false
  const parts = (k: number) => {
    const index = ((k % edge.size) + edge.size) % edge.size
    return edge.cells[index]!.type === "gap" && partsGroups(edge, index)
  }
  for (let k = at; k < found; k++) if (parts(k)) return false
  return parts(found)
}

function allInGroups(edge: Edge): boolean {
  return edge.keep("all-in-groups", () =>
    groupsInOnePlace(edge, false).every(({ cells }) => cells.length > 1),
  )
}

function runStart(edge: Edge, found: number): number {
  let at = found
  while (!edge.startsRun(((at % edge.size) + edge.size) % edge.size)) at -= 1
  return at
}

function sizeAt(edge: Edge, index: number): number {
  const element = edge.elementAt(index)
  return element?.type === "chain" ? element.chains : 0
}

function skipWords({ skip }: Voice, count: number, one: string, several: string): string | null {
  if (count === 0) return null
  return count === 1 ? `${skip} next ${one}` : `${skip} ${count} ${several}`
}

/** The hook where a round starts. */
export function hookAtStart(
  rounds: readonly Round[],
  index: number,
  edge: Edge,
  corners: ReadonlySet<string>,
  naming: Wording["corners"],
  voice: Voice,
): Hook {
  const before = rounds[index - 1]
  const last = before?.elements[before.elements.length - 1]
  const closed =
    before?.closing === "joined" && last?.type === "chain" && last.closedWith !== undefined
  const shared = {
    own: null,
    last: closed ? edge.anchorAt(0, true) : null,
    start: null,
    earlier: new Map<number, Hook>(),
    corners,
    naming,
    voice,
  }
  return { edge, at: closed ? (edge.widths[0] ?? 0) : 0, rounds, index, shared }
}

export function edgeBelow(rounds: readonly Round[], index: number, turned: boolean): Edge {
  return roundEdge(rounds[index - 1]!, index - 1, turned)
}
