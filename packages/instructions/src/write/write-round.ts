// One round in words.

import {
  anchorKey,
  type Motif,
  type Round,
  type RoundCorners,
  type StitchElement,
} from "@roundwright/motif"
import { turningChains } from "@roundwright/stitches"
import { centreEdge } from "../edge/edge.ts"
import { type CornersTold, cornersTold } from "./corner-places.ts"
import type { Voice } from "./house-style.ts"
import { cannot, type Part, picotText, type Wording } from "./part.ts"
import { roundText } from "./round-repeat.ts"
import { joinWords } from "./write-ending.ts"
import { openingWords } from "./write-opening.ts"
import { edgeBelow, type Hook, hookAtStart, skipBackTo } from "./write-places.ts"
import { groupFrom, groupParts, singleKey, stitchParts } from "./write-stitches.ts"

/** The round's instructions, its label and total left out. @throws RoundwrightError `cannot-be-written` */
export function roundWords(
  motif: Motif,
  index: number,
  corners: readonly RoundCorners[],
  voice: Voice,
  wording: Wording,
): string {
  const round = motif.rounds[index]!
  const edge = index === 0 ? centreEdge(motif.centre) : edgeBelow(motif.rounds, index, round.turned)
  const told = cornersTold(motif, index, corners)
  const hook = hookAtStart(motif.rounds, index, edge, told.below, wording.corners, voice)
  const opening = openingWords(motif, round, index, hook, voice)
  const begins = beginsAtJoin(motif, round, opening.from, hook)
  const { parts, closing, loop } = partsOf(round, opening.from, hook, voice, told)
  const skip = closing !== null ? null : skipAtEnd(round, hook)
  const body = roundText(
    {
      parts,
      skipAtEnd: skip === null ? null : { text: skip },
      begins,
      whole: opening.from === 0 && loop === null,
    },
    voice,
    wording,
  )
  const work = [...opening.words, ...(loop === null ? [] : [loop]), cornerOnce(body)]
  const ending =
    closing ?? (round.closing === "joined" ? joinWords(round, voice, wording.joinInto) : "")
  return [opening.centre ?? "", work.filter((text) => text !== "").join(", "), ending]
    .filter((text) => text !== "")
    .join("; ")
}

const cornerMade = " (corner made)"

/** What makes a corner is said of the first one. */
function cornerOnce(body: string): string {
  const at = body.indexOf(cornerMade)
  if (at < 0) return body
  const end = at + cornerMade.length
  return body.slice(0, end) + body.slice(end).replaceAll(cornerMade, "")
}

/** Whether the first stitch goes where the round before is joined, which "next" would pass by. */
function beginsAtJoin(motif: Motif, round: Round, from: number, hook: Hook): boolean {
  const before = motif.rounds[hook.index - 1]
  const first = round.elements[from]
  if (from > 0 || hook.at > 0 || before?.closing !== "joined" || first?.type !== "stitch")
    return false
  const start = hook.edge.cells[0]
  if (start?.type !== "stitch") return false
  return anchorKey(first.anchors[0]!) === anchorKey(hook.edge.anchorAt(0, false))
}

/** What lies between the last place and the first of the round, so that every repeat can be told alike. */
function skipAtEnd({ elements, closing }: Round, hook: Hook): string | null {
  const first = elements.find((element) => element.type === "stitch")
  if (closing === "open" || first?.type !== "stitch") return null
  return skipBackTo(hook, first.anchors[0]!)
}

/** Every element from `from` on as parts, in order. */
function partsOf(
  round: Round,
  from: number,
  hook: Hook,
  voice: Voice,
  corners: CornersTold,
): { parts: Part[]; closing: string | null; loop: string | null } {
  const parts: Part[] = []
  const { elements } = round
  let closing: string | null = null
  const opening = chainAtStart(round, hook, from)
  let behind: string | undefined
  const [first] = elements
  const loop =
    opening === "loop" && first?.type === "chain"
      ? `ch ${first.chains} (counts as first ch-${first.chains} sp)`
      : null
  const inCorner = () => hook.shared.last !== null && corners.below.has(anchorKey(hook.shared.last))
  const add = (i: number, length: number, told: Part[]) => {
    const start = i === from ? 0 : i
    const makes = [...corners.made].some((made) => made >= start && made < i + length)
    const last = told.at(-1)!
    const named = hook.shared.naming === "none" || /\bcorner\b/.test(last.text) || inCorner()
    const { round: below } = hook.edge
    if (makes && !named && below >= 0) told[told.length - 1] = { text: `${last.text}${cornerMade}` }
    parts.push(...told)
  }
  for (let i = opening === "slip" || loop !== null ? 1 : from; i < elements.length; ) {
    const element = elements[i]!
    if (element.type === "stitch" && element.passes && element.passes !== behind) {
      behind = element.passes
      parts.push({
        text: behind === "behind" ? "working behind petals" : "working in front of petals",
      })
    }
    if (i === 0 && opening === "group") {
      const length = 1 + groupFrom(elements, 1)
      add(i, length, groupParts(elements.slice(0, length), hook, round, voice))
      i += length
      continue
    }
    if (element.type === "stitch") {
      const group = groupFrom(elements, i)
      if (group > 1) {
        add(i, group, groupParts(elements.slice(i, i + group), hook, round, voice))
        i += group
        continue
      }
      parts.push(...stitchParts(element, hook, round, voice))
    } else if (element.type === "picot") parts.push({ text: picotText(element, voice) })
    else if (element.closedWith) {
      const { chains, closedWith } = element
      closing = closingWords(chains, closedWith, round, i, voice, opening === "slip", hook)
    } else parts.push({ text: `ch ${element.chains}` })
    i += 1
  }
  return { parts, closing, loop }
}

/**
 * A round that begins with chains: as a loop from the join, which is then passed; as a group worked
 * into the join's own stitch; or after a slip stitch that stands where two loops meet.
 */
function chainAtStart(round: Round, hook: Hook, from: number): "group" | "loop" | "slip" | null {
  const before = hook.rounds[hook.index - 1]
  const [first, second] = round.elements
  const inRing = second?.type === "stitch" && second.anchors[0]?.at === "centre"
  if (from === 0 && !before && first?.type === "chain" && inRing) return "loop"
  if (from > 0 || !before) return null
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

function closingWords(
  chains: number,
  kind: StitchElement["kind"],
  round: Round,
  i: number,
  voice: Voice,
  onSlip: boolean,
  hook: Hook,
): string {
  const own = chains - turningChains(kind.basic)
  if (own < 1 || i !== round.elements.length - 1 || round.elements[0]?.type !== "stitch")
    throw cannot(round, "closes its last space in a way that has no plain wording")
  const before = hook.rounds[hook.index - 1]
  const last = before?.elements[before.elements.length - 1]
  const tall =
    last?.type === "chain" && last.closedWith
      ? `last ${voice.name(last.closedWith)}`
      : voice.name({ basic: "sl st" })
  return `ch ${own}, ${voice.name(kind)} in ${onSlip ? tall : "first st"} (counts as ch-${chains} sp)`
}
