// Columns of stitches put into a worked piece or taken out of it: the round changes by a stitch, and every later
// round by the stitch that stood over it, so that the rest of the design keeps its lines.

import { type Anchor, anchorKey, type Element, type Motif, type Round } from "@roundwright/motif"

/**
 * A copy of each named stitch put beside it, into the same place, and a plain column above each copy.
 * @param beside elements of the round, stitches all; one named twice gets two copies
 */
export function insertColumns(motif: Motif, round: number, beside: readonly number[]): Motif {
  const elements: Element[] = []
  const moved: number[] = []
  const added: number[] = []
  motif.rounds[round]!.elements.forEach((element, e) => {
    moved.push(elements.length)
    elements.push(element)
    if (element.type !== "stitch") return
    for (const name of beside)
      if (name === e) {
        added.push(elements.length)
        elements.push(plainCopy(element))
      }
  })
  const next = renumber(replaceRound(motif, round, elements), round, moved)
  return standOver(next, round, added)
}

/** The named stitches taken out, and what stood over them alone. */
export function removeColumns(motif: Motif, round: number, named: readonly number[]): Motif {
  const gone = new Set(named)
  const elements: Element[] = []
  const moved: number[] = []
  motif.rounds[round]!.elements.forEach((element, e) => {
    moved.push(gone.has(e) ? -1 : elements.length)
    if (!gone.has(e)) elements.push(element)
  })
  if (elements.length === 0) return motif
  const above = motif.rounds[round + 1]
  const orphans: number[] = []
  const kept = new Map<number, Anchor[]>()
  above?.elements.forEach((element, e) => {
    if (element.type !== "stitch") return
    const left = element.anchors.filter((anchor) => !isGone(anchor, round, gone))
    if (left.length === element.anchors.length) return
    if (left.length > 0) {
      kept.set(e, left)
      return
    }
    // Several stitches on one that goes: one goes with it, the others move to its neighbour.
    const key = anchorKey(element.anchors[0]!)
    const first = above.elements.findIndex(
      (other) =>
        other.type === "stitch" && other.anchors.some((anchor) => anchorKey(anchor) === key),
    )
    if (first === e) orphans.push(e)
    else kept.set(e, [neighbourOf(element.anchors[0]!, gone, motif.rounds[round]!.elements)])
  })
  let next = motif
  if (above && (orphans.length > 0 || kept.size > 0)) {
    const changed = above.elements.map((element, e): Element => {
      const anchors = kept.get(e)
      return anchors && element.type === "stitch" ? { ...element, anchors } : element
    })
    next = removeColumns(replaceRound(motif, round + 1, changed), round + 1, orphans)
  }
  return renumber(replaceRound(next, round, elements), round, moved)
}

function plainCopy(element: Extract<Element, { type: "stitch" }>): Element {
  const { gathered: _, ...kind } = element.kind
  return { type: "stitch", kind, anchors: [element.anchors[0]!] }
}

/** One plain stitch over each added one, beside the stitch over its neighbour, round after round. */
function standOver(motif: Motif, round: number, added: readonly number[]): Motif {
  const above = motif.rounds[round + 1]
  if (!above || added.length === 0) return motif
  const places = motif.rounds[round]!.elements.length
  const after = new Map<number, number[]>()
  for (const place of added) {
    const index = lastOver(above, round, place, places)
    after.set(index, [...(after.get(index) ?? []), place])
  }
  const elements: Element[] = []
  const moved: number[] = []
  const next: number[] = []
  above.elements.forEach((element, e) => {
    moved.push(elements.length)
    elements.push(element)
    for (const place of after.get(e) ?? []) {
      next.push(elements.length)
      const model = element.type === "stitch" ? element : firstStitch(above)
      elements.push({
        ...plainCopy(model),
        anchors: [{ at: "stitch", round, element: place }],
      } as Element)
    }
  })
  return standOver(
    renumber(replaceRound(motif, round + 1, elements), round + 1, moved),
    round + 1,
    next,
  )
}

/** Element of the round above after which a stitch over the place is worked. */
function lastOver(above: Round, round: number, place: number, places: number): number {
  for (let back = 1; back <= places; back++) {
    const neighbour = (place - back + places) % places
    for (let e = above.elements.length - 1; e >= 0; e--) {
      const element = above.elements[e]!
      if (
        element.type === "stitch" &&
        element.anchors.some(
          (anchor) =>
            anchor.at !== "centre" && anchor.round === round && anchor.element === neighbour,
        )
      )
        return e
    }
  }
  return above.elements.length - 1
}

function firstStitch(round: Round): Extract<Element, { type: "stitch" }> {
  return round.elements.find((element) => element.type === "stitch") as Extract<
    Element,
    { type: "stitch" }
  >
}

function isGone(anchor: Anchor, round: number, gone: ReadonlySet<number>): boolean {
  return anchor.at !== "centre" && anchor.round === round && gone.has(anchor.element)
}

/** The next stitch left before the one that goes; after it where there is none, so that a round still begins over its beginning. */
function neighbourOf(
  anchor: Anchor,
  gone: ReadonlySet<number>,
  elements: readonly Element[],
): Anchor {
  if (anchor.at === "centre") return anchor
  const stays = elements.flatMap(({ type }, e) => (type === "stitch" && !gone.has(e) ? [e] : []))
  const element = stays.findLast((e) => e < anchor.element) ?? stays[0]
  return element === undefined ? anchor : { at: "stitch", round: anchor.round, element }
}

export function replaceRound(motif: Motif, round: number, elements: readonly Element[]): Motif {
  return {
    ...motif,
    rounds: motif.rounds.map((own, r) => (r === round ? { ...own, elements } : own)),
  }
}

/** Anchors into the round follow its elements to their new numbers. */
function renumber(motif: Motif, round: number, moved: readonly number[]): Motif {
  const follow = (anchor: Anchor): Anchor => {
    if (anchor.at === "centre" || anchor.round !== round) return anchor
    const to = moved[anchor.element]
    return to === undefined || to < 0 ? anchor : { ...anchor, element: to }
  }
  return {
    ...motif,
    rounds: motif.rounds.map((own, r) =>
      r <= round
        ? own
        : {
            ...own,
            elements: own.elements.map((element) =>
              element.type === "stitch"
                ? { ...element, anchors: element.anchors.map(follow) }
                : element,
            ),
          },
    ),
  }
}
