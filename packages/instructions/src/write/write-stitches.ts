// Stitches in words: groups in one place, legs over several, runs of the same.

import {
  type Anchor,
  anchorKey,
  type Element,
  type Round,
  type StitchElement,
} from "@roundwright/motif"
import { kindName } from "@roundwright/stitches"
import { Folder } from "./fold.ts"
import type { Voice } from "./house-style.ts"
import { cannot, type Part, picotText } from "./part.ts"
import { type Hook, placeWords } from "./write-places.ts"

/** How many elements from `i` on stand in one place, chains and picots between them counted in. */
export function groupFrom(elements: readonly Element[], i: number): number {
  const key = singleKey(elements[i]!)
  if (key === null) return 1
  let length = 1
  for (let k = i + 1; k < elements.length; k++) {
    const element = elements[k]!
    if (element.type === "stitch") {
      if (singleKey(element) !== key) return length
      length = k - i + 1
    } else if (element.type === "chain" && element.closedWith) return length
  }
  // In a ring there is no other place: the chains behind the last stitch are made there too.
  return key === "centre" ? Math.max(length, elements.length - i) : length
}

export function singleKey(element: Element): string | null {
  if (element.type !== "stitch" || element.madeOfChains !== undefined) return null
  const first = anchorKey(element.anchors[0]!)
  return element.anchors.every((anchor) => anchorKey(anchor) === first) ? first : null
}

export function groupParts(
  group: readonly Element[],
  hook: Hook,
  round: Round,
  voice: Voice,
): Part[] {
  const first = group.find((element) => element.type === "stitch") as StitchElement
  const pieces: string[] = []
  for (let i = 0; i < group.length; ) {
    const element = group[i]!
    if (element.type !== "stitch") {
      pieces.push(element.type === "chain" ? `ch ${element.chains}` : picotText(element, voice))
      i += 1
      continue
    }
    // "2 dc", but a cluster and a cluster: its name begins with a number of its own.
    let count = 1
    while (
      !element.kind.gathered &&
      i + count < group.length &&
      sameStitch(group[i + count]!, element)
    )
      count += 1
    pieces.push(counted(count, stitchName(element, round, voice)))
    i += count
  }
  const place = placeOf(hook, first.anchors[0]!, round)
  const skip = place.skip ? [{ text: place.skip }] : []
  if (pieces.length === 1) return [...skip, alikePart(pieces[0]!, place, true)]
  const folded = new Folder(voice).fold(pieces.map((text) => ({ text }))).phrases
  const work = folded.length > 1 ? voice.inOnePlace(folded.join(", ")) : folded[0]!
  return [...skip, alikePart(work, place, true)]
}

export function stitchParts(
  element: StitchElement,
  hook: Hook,
  round: Round,
  voice: Voice,
): Part[] {
  const name = stitchName(element, round, voice)
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
  let skipFirst: string | null = null
  for (let i = 0; i < keys.length; ) {
    let count = 1
    while (keys[i + count] === keys[i]) count += 1
    const place = placeOf(hook, element.anchors[i]!, round)
    if (place.skip && i > 0)
      throw cannot(round, "spreads one stitch over places that are not next to each other")
    skipFirst ??= place.skip
    legs.push(`${count} ${count === 1 ? "leg" : "legs"} in ${place.noun}`)
    i += count
  }
  const skip = skipFirst === null ? [] : [{ text: skipFirst }]
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

function stitchName(element: StitchElement, round: Round, voice: Voice): string {
  if (element.madeOfChains !== undefined)
    throw cannot(round, "has a chain standing for a stitch in its middle")
  return voice.name(element.kind)
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
