// One round in words.

import {
  type Anchor,
  anchorKey,
  countRound,
  type Element,
  type Motif,
  type Round,
  type StitchElement,
} from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { kindName, type Terms, turningChains } from "@roundwright/stitches"
import { centreEdge } from "./edge.ts"
import { findRepeat } from "./find-repeat.ts"
import { edgeBelow, type Hook, hookAtStart, placeWords } from "./write-places.ts"

interface Part {
  readonly text: string
  /** "dc in next st": several alike become "dc in next 3 sts". */
  readonly each?: { readonly work: string; readonly several: string; readonly many: boolean }
}

/** The round's instructions, its label and total left out. @throws RoundwrightError `cannot-be-written` */
export function roundWords(motif: Motif, index: number, terms: Terms): string {
  const round = motif.rounds[index]!
  const edge = index === 0 ? centreEdge(motif.centre) : edgeBelow(motif.rounds, index, round.turned)
  const hook = hookAtStart(motif.rounds, index, edge)
  const opening = openingWords(motif, round, index, hook, terms)
  const { parts, closed } = partsOf(round, index, opening.from, hook, terms)
  const body = withRepeat(joinAlike(parts))
  const ending = round.closing === "joined" && !closed ? "join" : ""
  return [...opening.words, body, ending].filter((text) => text !== "").join("; ")
}

/** "(24 dc + 8 ch-3 sps)". */
export function totalWords(round: Round, terms: Terms): string {
  const counts = countRound(round)
  const kinds = counts.byKind.filter(
    (entry) => !entry.kind.gathered && !entry.kind.loops && !entry.kind.post,
  )
  const plain =
    counts.byKind.length === 1 && kinds.length === 1 ? kindName(kinds[0]!.kind, terms) : "sts"
  const spaces = counts.spacesBySize.map(
    (entry) => `${entry.count} ch-${entry.chains} ${entry.count === 1 ? "sp" : "sps"}`,
  )
  const stitches =
    counts.stitches > 0
      ? [`${counts.stitches} ${plain === "sts" && counts.stitches === 1 ? "st" : plain}`]
      : []
  return `(${[...stitches, ...spaces].join(" + ")})`
}

function openingWords(
  motif: Motif,
  round: Round,
  index: number,
  hook: Hook,
  terms: Terms,
): { words: string[]; from: number } {
  const words: string[] = []
  if (index === 0) words.push(...centreWords(motif))
  const first = round.elements[0]
  const chain = round.startChain
  const skipped = index === 0 && motif.centre.kind === "single-chain"
  if (
    first?.type === "stitch" &&
    first.madeOfChains !== undefined &&
    chain?.counts &&
    !first.kind.gathered
  ) {
    const space = spaceAfterStart(round, chain.chains, first)
    const kind = kindName(first.kind, terms)
    const as = space > 0 ? `${kind} + ch ${space}` : kind
    if (skipped) {
      words.push(`skipped ${chain.chains} ch count as ${as}`)
      throw cannot(round, "begins with chains skipped at the foundation")
    }
    words.push(...moveWords(hook, first.anchors[0]!, round))
    words.push(`ch ${chain.chains} (counts as ${as})`)
    return { words, from: space > 0 ? 2 : 1 }
  }
  if (
    first?.type === "stitch" &&
    first.madeOfChains !== undefined &&
    chain?.counts &&
    first.kind.gathered
  ) {
    words.push(...moveWords(hook, first.anchors[0]!, round))
    words.push(`ch ${chain.chains}, ${firstLegWords(hook, first, round, terms)}`)
    return { words, from: 1 }
  }
  if (chain && !chain.counts && !skipped)
    words.push(chain.chains === 1 ? "ch 1" : `ch ${chain.chains} (does not count)`)
  return { words, from: 0 }
}

function centreWords(motif: Motif): string[] {
  const { centre } = motif
  switch (centre.kind) {
    case "chain-ring":
      return [`ch ${centre.chains}, join to form a ring`]
    case "single-chain":
      return [`ch ${centre.chains}`]
    default:
      return []
  }
}

/** The chains after a counting start, when the text gives them with it. */
function spaceAfterStart(round: Round, chains: number, first: StitchElement): number {
  const next = round.elements[1]
  const rest = chains - (first.madeOfChains ?? chains)
  return next?.type === "chain" && rest > 0 && next.chains === rest ? rest : 0
}

/** Slip stitches to where the round starts, when that is not where the hook is. */
function moveWords(hook: Hook, anchor: Anchor, round: Round): string[] {
  if (anchor.at === "centre") {
    if (anchor.chain !== undefined) throw cannot(round, "starts on one chain of the ring")
    return []
  }
  const start = hook.edge.cells[0]
  const closed = hook.at > 0
  if (
    start &&
    start.element === anchor.element &&
    (anchor.at === "stitch" || (closed && anchor.at === "space"))
  ) {
    hook.last = anchorKey(anchor)
    if (!closed) hook.at = 1
    return []
  }
  if (closed) throw cannot(round, "starts away from the space that closed the round before")
  if (anchor.at === "space") {
    const before = hook.at
    hook.at = 1
    const place = placeWords(hook, anchor)
    if (place && !place.skip) return [`sl st to ${place.noun}`]
    hook.at = before
  }
  if (anchor.at === "stitch") {
    const before = hook.at
    hook.at = 1
    const place = placeWords(hook, anchor)
    if (place && !place.skip) return [`sl st in ${place.noun}`]
    hook.at = before
  }
  throw cannot(round, "starts in a place that slip stitches do not reach")
}

function firstLegWords(hook: Hook, first: StitchElement, round: Round, terms: Terms): string {
  const { gathered } = first.kind
  const one = first.anchors.every((anchor) => anchorKey(anchor) === anchorKey(first.anchors[0]!))
  if (!gathered || !one || gathered.how !== "cluster" || gathered.legs < 3)
    throw cannot(round, "starts with a gathered stitch that has no plain wording")
  const whole = kindName(
    { ...first.kind, gathered: { how: "together", legs: gathered.legs } },
    terms,
  )
  const rest = kindName(
    { ...first.kind, gathered: { how: "together", legs: gathered.legs - 1 } },
    terms,
  )
  const anchor = first.anchors[0]!
  const place = anchor.at === "centre" ? "ring" : anchor.at === "space" ? "same sp" : "same st"
  void hook
  return `${rest} in ${place} (counts as ${whole})`
}

/** Every element from `from` on as parts, in order. */
function partsOf(
  round: Round,
  index: number,
  from: number,
  hook: Hook,
  terms: Terms,
): { parts: Part[]; closed: boolean } {
  const parts: Part[] = []
  const { elements } = round
  let closed = false
  leaveStart(round, hook, from)
  for (let i = from; i < elements.length; ) {
    const element = elements[i]!
    if (element.type === "stitch") {
      const group = groupFrom(elements, i)
      if (group > 1) {
        parts.push(...groupParts(elements.slice(i, i + group), hook, round, terms, index))
        i += group
        continue
      }
      parts.push(...stitchParts(element, hook, round, terms, index))
    } else if (element.type === "picot") parts.push({ text: `picot of ch ${element.chains}` })
    else if (element.closedWith) {
      closed = true
      parts.push(closingPart(element.chains, element.closedWith, round, i, terms))
    } else parts.push({ text: `ch ${element.chains}` })
    i += 1
  }
  return { parts, closed }
}

/** A round that begins with a loop of chains starts from the join, which is then passed. */
function leaveStart(round: Round, hook: Hook, from: number): void {
  const before = hook.rounds[hook.index - 1]
  if (
    from === 0 &&
    round.elements[0]?.type === "chain" &&
    before?.closing === "joined" &&
    hook.at === 0 &&
    hook.edge.cells[0]?.type === "stitch"
  )
    hook.at = 1
}

function closingPart(
  chains: number,
  kind: StitchElement["kind"],
  round: Round,
  i: number,
  terms: Terms,
): Part {
  const own = chains - turningChains(kind.basic)
  if (own < 1 || i !== round.elements.length - 1 || round.elements[0]?.type !== "stitch")
    throw cannot(round, "closes its last space in a way that has no plain wording")
  return { text: `ch ${own}, ${kindName(kind, terms)} in first st (counts as ch-${chains} sp)` }
}

/** How many elements from `i` on stand in one place, chains and picots between them counted in. */
function groupFrom(elements: readonly Element[], i: number): number {
  const key = singleKey(elements[i]!)
  if (key === null) return 1
  let length = 1
  for (let k = i + 1; k < elements.length; k++) {
    const element = elements[k]!
    if (element.type === "stitch") {
      if (singleKey(element) !== key) break
      length = k - i + 1
    } else if (element.type === "chain" && element.closedWith) break
  }
  return length
}

function singleKey(element: Element): string | null {
  if (element.type !== "stitch" || element.madeOfChains !== undefined) return null
  const first = anchorKey(element.anchors[0]!)
  return element.anchors.every((anchor) => anchorKey(anchor) === first) ? first : null
}

function groupParts(
  group: readonly Element[],
  hook: Hook,
  round: Round,
  terms: Terms,
  index: number,
): Part[] {
  const first = group[0] as StitchElement
  const pieces: string[] = []
  for (let i = 0; i < group.length; ) {
    const element = group[i]!
    if (element.type !== "stitch") {
      pieces.push(
        element.type === "chain" ? `ch ${element.chains}` : `picot of ch ${element.chains}`,
      )
      i += 1
      continue
    }
    let count = 1
    while (i + count < group.length && sameStitch(group[i + count]!, element)) count += 1
    pieces.push(counted(count, stitchName(element, round, terms)))
    i += count
  }
  const place = placeOf(hook, first.anchors[0]!, round, index)
  const skip = place.skip ? [{ text: place.skip }] : []
  if (pieces.length === 1) return [...skip, alikePart(pieces[0]!, place, /^\d/.test(pieces[0]!))]
  return [...skip, { text: `(${pieces.join(", ")}) in ${place.noun}` }]
}

function stitchParts(
  element: StitchElement,
  hook: Hook,
  round: Round,
  terms: Terms,
  index: number,
): Part[] {
  const name = stitchName(element, round, terms)
  const keys = element.anchors.map(anchorKey)
  if (keys.every((key) => key === keys[0])) {
    const place = placeOf(hook, element.anchors[0]!, round, index)
    return [...(place.skip ? [{ text: place.skip }] : []), alikePart(name, place, false)]
  }
  const legs: string[] = []
  for (let i = 0; i < keys.length; ) {
    let count = 1
    while (keys[i + count] === keys[i]) count += 1
    const place = placeOf(hook, element.anchors[i]!, round, index)
    if (place.skip && i > 0)
      throw cannot(round, "spreads one stitch over places that are not next to each other")
    if (place.skip) legs.unshift(place.skip)
    legs.push(`${count} ${count === 1 ? "leg" : "legs"} in ${place.noun}`)
    i += count
  }
  const skip = legs[0]?.startsWith("skip") ? [{ text: legs.shift()! }] : []
  return [...skip, { text: `${name} (${legs.join(", ")})` }]
}

function alikePart(
  work: string,
  place: { noun: string; several: string; isNext: boolean },
  many: boolean,
): Part {
  const text = `${work} in ${place.noun}`
  return place.isNext && place.several !== ""
    ? { text, each: { work, several: place.several, many } }
    : { text }
}

function placeOf(hook: Hook, anchor: Anchor, round: Round, index: number) {
  if (hook.rounds.length > 0 && index === 0 && anchor.at === "centre" && anchor.chain === undefined)
    return { skip: null, noun: centreNoun(hook), several: "", isNext: false }
  const words = placeWords(hook, anchor)
  if (!words)
    throw cannot(
      round,
      anchor.at !== "centre" && anchor.round !== index - 1
        ? "works into an earlier round"
        : "works into places out of their order",
    )
  return words
}

function centreNoun(hook: Hook): string {
  void hook
  return "ring"
}

function stitchName(element: StitchElement, round: Round, terms: Terms): string {
  if (element.madeOfChains !== undefined)
    throw cannot(round, "has a chain standing for a stitch in its middle")
  return kindName(element.kind, terms)
}

function sameStitch(a: Element, b: Element): boolean {
  return (
    a.type === "stitch" &&
    b.type === "stitch" &&
    kindName(a.kind) === kindName(b.kind) &&
    a.madeOfChains === undefined
  )
}

function counted(count: number, name: string): string {
  return count === 1 ? name : `${count} ${name}`
}

/** "dc in next st, dc in next st" as "dc in next 2 sts". */
function joinAlike(parts: readonly Part[]): Part[] {
  const joined: Part[] = []
  for (let i = 0; i < parts.length; ) {
    const part = parts[i]!
    let count = 1
    while (part.each && parts[i + count]?.each && parts[i + count]!.text === part.text) count += 1
    if (count > 1 && part.each) {
      const of = part.each.many ? "each of next" : "next"
      joined.push({ text: `${part.each.work} in ${of} ${count} ${part.each.several}` })
    } else joined.push(part)
    i += count
  }
  return joined
}

function withRepeat(parts: readonly Part[]): string {
  const found = findRepeat(parts, (a, b) => a.text === b.text)
  const text = (list: readonly Part[]) => list.map((part) => part.text).join(", ")
  const startsWithChain = /^(ch|picot)/.test(parts[0]?.text ?? "")
  if (found.times < 2) return startsWithChain ? `(${text(parts)}) 1 time` : text(parts)
  const repeat = `*${text(found.body)}; rep from * ${found.times - 1} more ${found.times === 2 ? "time" : "times"}`
  const before =
    found.before.length === 0
      ? ""
      : startsWithChain
        ? `(${text(found.before)}) 1 time, `
        : `${text(found.before)}, `
  return `${before}${repeat}${found.after.length > 0 ? `; ${text(found.after)}` : ""}`
}

export function cannot(round: Round, why: string): RoundwrightError {
  return new RoundwrightError(
    "cannot-be-written",
    `Round ${round.number} ${why}, which has no plain wording.`,
    { hint: "Write this round by hand.", numbers: { round: round.number } },
  )
}
