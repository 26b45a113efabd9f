// Building motifs by hand: plain discs and polygons with known counts, for closed forms, reports,
// tests and the inverse. Everything here is data in, motif out.

import { RoundwrightError } from "@roundwright/numerics"
import type { StitchKind } from "@roundwright/stitches"
import type { Anchor, Element, Motif, Round } from "./model.ts"

export interface DiscOptions {
  readonly title?: string
  /** Work turned between rounds; false by default. */
  readonly turned?: boolean
  /** Shift the increases of every other round by half a repeat, so that the disc stays round. */
  readonly staggered?: boolean
}

/**
 * A disc of one stitch from counts per round, increases (or decreases) spread evenly.
 * @param counts whole numbers above 0, one a round, from the centre out
 * @throws RoundwrightError `bad-counts`
 */
export function buildDisc(
  kind: StitchKind,
  counts: readonly number[],
  options: DiscOptions = {},
): Motif {
  if (counts.length === 0 || counts.some((n) => !Number.isInteger(n) || n < 1))
    throw new RoundwrightError("bad-counts", "Counts per round must be whole numbers above 0.", {
      hint: "Give one count for each round, from the centre out.",
    })
  const rounds = counts.map((count, index): Round => {
    const below = counts[index - 1]
    const staggered = options.staggered === true && index % 2 === 0
    const upright =
      below === undefined
        ? ringStitches(kind, count)
        : spreadOver(kind, count, below, index - 1, staggered)
    const elements =
      options.turned === true && below !== undefined ? turnRound(upright, below) : upright
    return {
      number: index + 1,
      elements,
      turned: options.turned === true && index > 0,
      closing: "joined",
    }
  })
  const motif: Motif = { centre: { kind: "adjustable-ring" }, rounds }
  return options.title === undefined ? motif : { ...motif, title: options.title }
}

/**
 * A solid polygon: every corner stitch of the round below gets `perCorner` stitches, every other
 * stitch one. Round 1 holds `corners * perSide` stitches, the corner being the last of each side.
 */
export function buildPolygon(
  kind: StitchKind,
  corners: number,
  rounds: number,
  perSide: number,
  perCorner: number,
): Motif {
  const list: Round[] = [
    {
      number: 1,
      elements: ringStitches(kind, corners * perSide),
      turned: false,
      closing: "joined",
    },
  ]
  let side = perSide
  let cornerAt = perSide - 1
  for (let index = 1; index < rounds; index++) {
    const elements: Element[] = []
    for (let below = 0; below < corners * side; below++) {
      const anchors: Anchor[] = [{ at: "stitch", round: index - 1, element: below }]
      const tops = below % side === cornerAt ? perCorner : 1
      for (let top = 0; top < tops; top++) elements.push({ type: "stitch", kind, anchors })
    }
    list.push({ number: index + 1, elements, turned: false, closing: "joined" })
    cornerAt += Math.floor((perCorner - 1) / 2)
    side += perCorner - 1
  }
  return { centre: { kind: "adjustable-ring" }, rounds: list }
}

/** A round worked after turning runs over the round below from its last stitch to its first. */
function turnRound(elements: readonly Element[], below: number): Element[] {
  return elements.map((element) => {
    if (element.type !== "stitch") return element
    const anchors = element.anchors.map((anchor) =>
      anchor.at === "stitch" ? { ...anchor, element: below - 1 - anchor.element } : anchor,
    )
    return { ...element, anchors }
  })
}

function ringStitches(kind: StitchKind, count: number): Element[] {
  return Array.from({ length: count }, () => ({
    type: "stitch" as const,
    kind,
    anchors: [{ at: "centre" as const }],
  }))
}

function spreadOver(
  kind: StitchKind,
  count: number,
  below: number,
  round: number,
  shifted: boolean,
): Element[] {
  const offset = shifted ? Math.floor(below / Math.max(1, Math.abs(count - below)) / 2) : 0
  if (count >= below)
    return Array.from({ length: count }, (_, j) => ({
      type: "stitch" as const,
      kind,
      anchors: [
        {
          at: "stitch" as const,
          round,
          element: (Math.floor((j * below) / count) + offset) % below,
        },
      ],
    }))
  return Array.from({ length: count }, (_, j) => {
    const from = Math.floor((j * below) / count)
    const to = Math.floor(((j + 1) * below) / count)
    const anchors: Anchor[] = []
    for (let e = from; e < to; e++) anchors.push({ at: "stitch", round, element: e })
    const legs = anchors.length
    return {
      type: "stitch" as const,
      kind: legs > 1 ? { ...kind, gathered: { how: "together" as const, legs } } : kind,
      anchors,
    }
  })
}
