// Columns of stitches put into a worked piece or taken out of it: the round changes by a stitch, and every later
// round by the stitch that stood over it, so that the rest of the design keeps its lines. Every round is gone over once,
// from the inside out.

import { type Anchor, anchorKey, type Element, type Motif, type Round } from "@roundwright/motif"

/** Where each element of a changed round has gone, -1 for one that is gone; by the index of the round. */
type Moves = Map<number, readonly number[]>

/**
 * A copy of each named stitch put beside it, into the same place, and a plain column above each copy.
 * @param beside elements of the round, stitches all; one named twice gets two copies
 */
export function insertColumns(motif: Motif, round: number, beside: readonly number[]): Motif {
  const moves: Moves = new Map()
  const rounds = motif.rounds.slice(0, round)
  let grown = withCopies(motif.rounds[round]!, beside)
  for (let r = round; ; r += 1) {
    rounds.push({ ...motif.rounds[r]!, elements: grown.elements })
    if (grown.added.length > 0) moves.set(r, grown.moved)
    const above = motif.rounds[r + 1]
    if (!above) return { ...motif, rounds }
    grown = withColumns({ ...above, elements: followed(above.elements, moves) }, r, {
      added: grown.added,
      places: grown.elements.length,
    })
  }
}

/** A round with stitches more than before: its elements, where the old ones are now, and which are new. */
interface Grown {
  readonly elements: readonly Element[]
  readonly moved: readonly number[]
  readonly added: readonly number[]
}

function withCopies(own: Round, beside: readonly number[]): Grown {
  const elements: Element[] = []
  const moved: number[] = []
  const added: number[] = []
  own.elements.forEach((element, e) => {
    moved.push(elements.length)
    elements.push(element)
    if (element.type !== "stitch") return
    for (const name of beside)
      if (name === e) {
        added.push(elements.length)
        elements.push(plainCopy(element))
      }
  })
  return { elements, moved, added }
}

/** One plain stitch over each added one of the round below, beside the stitch over its neighbour. */
function withColumns(
  above: Round,
  round: number,
  below: { readonly added: readonly number[]; readonly places: number },
): Grown {
  const after = new Map<number, number[]>()
  for (const place of below.added) {
    const index = lastOver(above, round, place, below.places)
    after.set(index, [...(after.get(index) ?? []), place])
  }
  const elements: Element[] = []
  const moved: number[] = []
  const added: number[] = []
  above.elements.forEach((element, e) => {
    moved.push(elements.length)
    elements.push(element)
    for (const place of after.get(e) ?? []) {
      const model = element.type === "stitch" ? element : firstStitch(above)
      // Over a round of nothing but chains no column goes on.
      if (!model) continue
      added.push(elements.length)
      elements.push({
        ...plainCopy(model),
        anchors: [{ at: "stitch", round, element: place }],
      } as Element)
    }
  })
  return { elements, moved, added }
}

/** The named stitches taken out, and what stood over them alone. */
export function removeColumns(motif: Motif, round: number, named: readonly number[]): Motif {
  const moves: Moves = new Map()
  const rounds = [...motif.rounds]
  let gone: ReadonlySet<number> = new Set(named)
  // Up to the last round in which something goes all places are the old ones; then all anchors follow at once.
  for (let r = round; gone.size > 0 && gone.size < rounds[r]!.elements.length; r += 1) {
    const own = rounds[r]!
    let left = 0
    moves.set(
      r,
      own.elements.map((_, e) => (gone.has(e) ? -1 : left++)),
    )
    const above = rounds[r + 1]
    const { elements, orphans } = above
      ? withoutFeet(above.elements, r, gone, own.elements)
      : { elements: [], orphans: [] }
    rounds[r] = { ...own, elements: own.elements.filter((_, e) => !gone.has(e)) }
    if (!above) break
    rounds[r + 1] = { ...above, elements }
    gone = new Set(orphans)
  }
  if (moves.size === 0) return motif
  return {
    ...motif,
    rounds: rounds.map((own, r) =>
      r <= round ? own : { ...own, elements: followed(own.elements, moves) },
    ),
  }
}

/** What stands on the stitches that go: what keeps another foot, or a neighbour's, and what goes with them. */
function withoutFeet(
  elements: readonly Element[],
  round: number,
  gone: ReadonlySet<number>,
  below: readonly Element[],
): { readonly elements: readonly Element[]; readonly orphans: readonly number[] } {
  const orphans: number[] = []
  const firstOn = new Map<string, number>()
  elements.forEach((element, e) => {
    if (element.type !== "stitch") return
    for (const anchor of element.anchors) {
      const key = anchorKey(anchor)
      if (!firstOn.has(key)) firstOn.set(key, e)
    }
  })
  const changed = elements.map((element, e): Element => {
    if (element.type !== "stitch") return element
    const left = element.anchors.filter((anchor) => !isGone(anchor, round, gone))
    if (left.length === element.anchors.length) return element
    if (left.length > 0) return { ...element, anchors: left }
    // Several stitches on one that goes: one goes with it, the others move to its neighbour.
    const [foot] = element.anchors
    if (firstOn.get(anchorKey(foot!)) === e) {
      orphans.push(e)
      return element
    }
    return { ...element, anchors: [neighbourOf(foot!, gone, below)] }
  })
  return { elements: changed, orphans }
}

function plainCopy(element: Extract<Element, { type: "stitch" }>): Element {
  const { gathered: _, ...kind } = element.kind
  return { type: "stitch", kind, anchors: [element.anchors[0]!] }
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

function firstStitch(round: Round): Extract<Element, { type: "stitch" }> | undefined {
  return round.elements.find((element) => element.type === "stitch")
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

/** Anchors into changed rounds follow their elements to the new places. */
function followed(elements: readonly Element[], moves: Moves): readonly Element[] {
  if (moves.size === 0) return elements
  const follow = (anchor: Anchor): Anchor => {
    if (anchor.at === "centre") return anchor
    const to = moves.get(anchor.round)?.[anchor.element]
    return to === undefined || to < 0 ? anchor : { ...anchor, element: to }
  }
  return elements.map((element) =>
    element.type === "stitch" ? { ...element, anchors: element.anchors.map(follow) } : element,
  )
}
