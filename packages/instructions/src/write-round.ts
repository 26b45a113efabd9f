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
  const { parts, closed } = partsOf(round, opening.from, hook, terms)
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

interface Opening {
  readonly words: string[]
  /** First element not told by the opening. */
  readonly from: number
}

function openingWords(
  motif: Motif,
  round: Round,
  index: number,
  hook: Hook,
  terms: Terms,
): Opening {
  const words: string[] = []
  const first = round.elements[0]
  const chain = round.startChain
  const counting =
    first?.type === "stitch" && first.madeOfChains !== undefined && chain?.counts === true
      ? first
      : null
  const space = counting && chain ? spaceAfterStart(round, chain.chains, counting) : 0
  const as = counting ? kindName(counting.kind, terms) + (space > 0 ? ` + ch ${space}` : "") : ""
  if (index === 0 && motif.centre.kind === "single-chain") {
    const skipped = chain
      ? counting
        ? ` (${chain.chains} skipped ch count as ${as})`
        : chain.chains > 1
          ? ` (${chain.chains} skipped ch do not count)`
          : ""
      : ""
    words.push(`ch ${motif.centre.chains}${skipped}`)
    return { words, from: counting ? (space > 0 ? 2 : 1) : 0 }
  }
  if (index === 0 && motif.centre.kind === "chain-ring")
    words.push(`ch ${motif.centre.chains}, join to form a ring`)
  if (counting && chain) {
    words.push(...moveWords(hook, counting.anchors[0]!, round))
    if (counting.kind.gathered) {
      words.push(`ch ${chain.chains}, ${firstLegWords(hook, counting, round, terms)}`)
      return { words, from: 1 }
    }
    words.push(`ch ${chain.chains} (counts as ${as})`)
    return { words, from: space > 0 ? 2 : 1 }
  }
  if (chain && !chain.counts)
    words.push(chain.chains === 1 ? "ch 1" : `ch ${chain.chains} (does not count)`)
  return { words, from: 0 }
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
    hook.shared.last = anchor
    hook.shared.start = anchor
    if (!closed) hook.at = 1
    return []
  }
  if (closed || anchor.round !== hook.edge.round)
    throw cannot(round, "starts away from where the round before ends")
  hook.at = 1
  const place = placeWords(hook, anchor)
  const over = place?.skip ? /^skip next (?:(\d+) sts|st)$/.exec(place.skip) : null
  if (!place || (place.skip && !over))
    throw cannot(round, "starts in a place that slip stitches do not reach")
  hook.shared.start = anchor
  const slips = over ? [over[1] ? `sl st in next ${over[1]} sts` : "sl st in next st"] : []
  return [...slips, `sl st ${anchor.at === "space" ? "to" : "in"} ${place.noun}`]
}

/** "dc2tog in same st (counts as dc3tog)" after the chain that is its first leg. */
function firstLegWords(hook: Hook, first: StitchElement, round: Round, terms: Terms): string {
  const gathered = first.kind.gathered!
  const start = first.anchors[0]!
  const space = start.at === "space" || start.at === "between"
  const same = start.at === "centre" ? "ring" : space ? "same sp" : "same st"
  const one = first.anchors.every((anchor) => anchorKey(anchor) === anchorKey(start))
  if (gathered.how !== "cluster" && gathered.how !== "together")
    return `${kindName(first.kind, terms)} in ${same}`
  if (gathered.legs < 3)
    throw cannot(round, "starts with a cluster of two legs, one of them a chain")
  const named = (legs: number) =>
    kindName({ ...first.kind, gathered: { how: "together", legs } }, terms)
  if (one) return `${named(gathered.legs - 1)} in ${same} (counts as ${named(gathered.legs)})`
  const places = first.anchors.slice(1).map((anchor) => placeWords(hook, anchor))
  if (places.some((place) => !place || place.skip !== null || place.noun !== "next st"))
    throw cannot(round, "starts with a stitch spread over places that are not next to each other")
  return `${named(gathered.legs - 1)} over next ${places.length} sts (counts as ${named(gathered.legs)})`
}

/** Every element from `from` on as parts, in order. */
function partsOf(
  round: Round,
  from: number,
  hook: Hook,
  terms: Terms,
): { parts: Part[]; closed: boolean } {
  const parts: Part[] = []
  const { elements } = round
  let closed = false
  const opening = chainAtStart(round, hook, from)
  let behind: string | undefined
  for (let i = opening === "slip" ? 1 : from; i < elements.length; ) {
    const element = elements[i]!
    if (element.type === "stitch" && element.passes && element.passes !== behind) {
      behind = element.passes
      parts.push({
        text: behind === "behind" ? "working behind petals" : "working in front of petals",
      })
    }
    if (i === 0 && opening === "group") {
      const length = 1 + groupFrom(elements, 1)
      parts.push(...groupParts(elements.slice(0, length), hook, round, terms))
      i += length
      continue
    }
    if (element.type === "stitch") {
      const group = groupFrom(elements, i)
      if (group > 1) {
        parts.push(...groupParts(elements.slice(i, i + group), hook, round, terms))
        i += group
        continue
      }
      parts.push(...stitchParts(element, hook, round, terms))
    } else if (element.type === "picot") parts.push({ text: `picot of ch ${element.chains}` })
    else if (element.closedWith) {
      closed = true
      parts.push(
        closingPart(element.chains, element.closedWith, round, i, terms, opening === "slip", hook),
      )
    } else parts.push({ text: `ch ${element.chains}` })
    i += 1
  }
  return { parts, closed }
}

/**
 * A round that begins with chains: as a loop from the join, which is then passed; as a group worked
 * into the join's own stitch; or after a slip stitch that stands where two loops meet.
 */
function chainAtStart(round: Round, hook: Hook, from: number): "group" | "loop" | "slip" | null {
  const before = hook.rounds[hook.index - 1]
  if (from > 0 || !before) return null
  const [first, second] = round.elements
  const last = round.elements[round.elements.length - 1]
  if (
    first?.type === "stitch" &&
    first.kind.basic === "sl st" &&
    second?.type === "chain" &&
    last?.type === "chain" &&
    last.closedWith
  ) {
    if (hook.at === 0) hook.at = 1
    return "slip"
  }
  const start = hook.edge.cells[0]
  if (
    first?.type !== "chain" ||
    before.closing !== "joined" ||
    hook.at !== 0 ||
    start?.type !== "stitch"
  )
    return null
  const key = second ? singleKey(second) : null
  hook.at = 1
  if (key !== anchorKey(hook.edge.anchorAt(0, false))) return "loop"
  hook.shared.last = hook.edge.anchorAt(0, false)
  return "group"
}

function closingPart(
  chains: number,
  kind: StitchElement["kind"],
  round: Round,
  i: number,
  terms: Terms,
  onSlip: boolean,
  hook: Hook,
): Part {
  const own = chains - turningChains(kind.basic)
  if (own < 1 || i !== round.elements.length - 1 || round.elements[0]?.type !== "stitch")
    throw cannot(round, "closes its last space in a way that has no plain wording")
  const before = hook.rounds[hook.index - 1]
  const last = before?.elements[before.elements.length - 1]
  const tall =
    last?.type === "chain" && last.closedWith ? `last ${kindName(last.closedWith, terms)}` : "sl st"
  return {
    text: `ch ${own}, ${kindName(kind, terms)} in ${onSlip ? tall : "first st"} (counts as ch-${chains} sp)`,
  }
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

function groupParts(group: readonly Element[], hook: Hook, round: Round, terms: Terms): Part[] {
  const first = group.find((element) => element.type === "stitch") as StitchElement
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
  const place = placeOf(hook, first.anchors[0]!, round)
  const skip = place.skip ? [{ text: place.skip }] : []
  if (pieces.length === 1) return [...skip, alikePart(pieces[0]!, place, true)]
  return [...skip, { text: `(${pieces.join(", ")}) in ${place.noun}` }]
}

function stitchParts(element: StitchElement, hook: Hook, round: Round, terms: Terms): Part[] {
  const name = stitchName(element, round, terms)
  const keys = element.anchors.map(anchorKey)
  if (keys.every((key) => key === keys[0])) {
    const place = placeOf(hook, element.anchors[0]!, round)
    return [
      ...(place.skip ? [{ text: place.skip }] : []),
      alikePart(name, place, element.kind.gathered !== undefined),
    ]
  }
  const alike = legsAlike(element, hook, name)
  if (alike) return alike
  const legs: string[] = []
  for (let i = 0; i < keys.length; ) {
    let count = 1
    while (keys[i + count] === keys[i]) count += 1
    const place = placeOf(hook, element.anchors[i]!, round)
    if (place.skip && i > 0)
      throw cannot(round, "spreads one stitch over places that are not next to each other")
    if (place.skip) legs.unshift(place.skip)
    legs.push(`${count} ${count === 1 ? "leg" : "legs"} in ${place.noun}`)
    i += count
  }
  const skip = legs[0]?.startsWith("skip") ? [{ text: legs.shift()! }] : []
  return [...skip, { text: `${name} (${legs.join(", ")})` }]
}

/** "dc3tog over next 3 sts", "dtr5tog over st last worked in and next 4 sts"; null when not so plain. */
function legsAlike(element: StitchElement, hook: Hook, name: string): Part[] | null {
  const keys = element.anchors.map(anchorKey)
  if (
    new Set(keys).size !== keys.length ||
    element.anchors.some((anchor) => anchor.at !== "stitch" || anchor.round !== hook.edge.round)
  )
    return null
  const { at } = hook
  const { last } = hook.shared
  const shared = last !== null && anchorKey(last) === keys[0]
  const rest = shared ? element.anchors.slice(1) : element.anchors
  const places = rest.map((anchor) => placeWords(hook, anchor))
  const plain = places.every(
    (place, i) => place?.noun === "next st" && (place.skip === null || (i === 0 && !shared)),
  )
  if (plain && rest.length > 0) {
    const skip = places[0]?.skip
    const over = `${rest.length === 1 ? "st" : `${rest.length} sts`}`
    const text = `${name} over ${shared ? "st last worked in and " : ""}next ${over}`
    return [...(skip ? [{ text: skip }] : []), { text }]
  }
  hook.at = at
  hook.shared.last = last
  return null
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

function placeOf(hook: Hook, anchor: Anchor, round: Round) {
  const words = placeWords(hook, anchor)
  if (!words) throw cannot(round, "works into places out of their order")
  return words
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
  const startsWithChain = /^(?:\(?ch|picot|(?:[BF]LO )?sl st|(?:[BF]LO )?ss)\b/.test(
    parts[0]?.text ?? "",
  )
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
