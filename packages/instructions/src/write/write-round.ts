// One round in words.

import {
  anchorKey,
  countRound,
  type Motif,
  type Round,
  type StitchElement,
} from "@roundwright/motif"
import { kindName, type Terms, turningChains } from "@roundwright/stitches"
import { centreEdge } from "../edge/edge.ts"
import { findRepeat } from "./find-repeat.ts"
import { cannot, type Part, picotText } from "./part.ts"
import { openingWords } from "./write-opening.ts"
import { edgeBelow, type Hook, hookAtStart } from "./write-places.ts"
import { groupFrom, groupParts, singleKey, stitchParts } from "./write-stitches.ts"

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
    } else if (element.type === "picot") parts.push({ text: picotText(element, terms) })
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
