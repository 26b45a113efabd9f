// A whole round more or fewer anywhere in a piece: a plain one worked in between, or one that only carries on left out,
// so that every later stitch finds its place again.

import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"

/** Later rounds one further out, their numbers too, with their anchors changed; null where one cannot be. */
function moved(
  rounds: readonly Round[],
  by: 1 | -1,
  place: (anchor: Anchor) => Anchor | null,
): Round[] | null {
  let lost = false
  const all = rounds.map((round) => ({
    ...round,
    number: round.number + by,
    elements: round.elements.map((element): Element => {
      if (element.type !== "stitch") return element
      const anchors = element.anchors.map((anchor) => {
        const found = place(anchor)
        if (found === null) lost = true
        return found ?? anchor
      })
      return { ...element, anchors }
    }),
  }))
  return lost ? null : all
}

/**
 * One more round over round `index`, a stitch in each stitch and as many in a space as it has chains. Between rounds
 * only where round `index` is all stitches: what was worked into one goes into the one over it.
 */
export function addPlainRound(motif: Motif, index: number, kind: StitchKind): Motif | null {
  const below = motif.rounds[index]!
  const later = motif.rounds.slice(index + 1)
  if (later.length > 0 && below.elements.some(({ type }) => type !== "stitch")) return null
  const shifted = moved(later, 1, (anchor) => {
    if (anchor.at === "centre" || anchor.round < index) return anchor
    if (anchor.round === index && anchor.at !== "stitch") return null
    return { ...anchor, round: anchor.round + 1 }
  })
  if (shifted === null) return null
  return {
    ...motif,
    rounds: [...motif.rounds.slice(0, index + 1), plainOver(below, index, kind), ...shifted],
  }
}

function plainOver(below: Round, index: number, kind: StitchKind): Round {
  const elements = below.elements.flatMap((element, e): Element[] => {
    if (element.type === "picot") return []
    if (element.type === "stitch")
      return [{ type: "stitch", kind, anchors: [{ at: "stitch", round: index, element: e }] }]
    return Array.from(
      { length: element.chains },
      (): Element => ({
        type: "stitch",
        kind,
        anchors: [{ at: "space", round: index, element: e }],
      }),
    )
  })
  const { number, turned, closing, startChain } = below
  return { number: number + 1, elements, turned, closing, ...(startChain ? { startChain } : {}) }
}

/** The last round left out, or one of a stitch in each stitch: what stood on it stands on what it stood on. */
export function dropRound(motif: Motif, index: number): Motif | null {
  if (motif.rounds.length < 2) return null
  const before = motif.rounds.slice(0, index)
  const own = motif.rounds[index]!
  const later = motif.rounds.slice(index + 1)
  if (later.length === 0) return { ...motif, rounds: before }
  const below = motif.rounds[index - 1]
  if (!below || own.elements.length !== below.elements.length) return null
  const over = own.elements.map((element, e): Anchor | null => {
    const [anchor, more] = element.type === "stitch" ? element.anchors : []
    const plain = anchor?.at === "stitch" && anchor.round === index - 1 && !more
    return plain && anchor.element === e ? anchor : null
  })
  if (over.includes(null)) return null
  const shifted = moved(later, -1, (anchor) => {
    if (anchor.at === "centre" || anchor.round < index) return anchor
    if (anchor.round > index) return { ...anchor, round: anchor.round - 1 }
    return anchor.at === "stitch" ? over[anchor.element]! : null
  })
  return shifted && { ...motif, rounds: [...before, ...shifted] }
}
