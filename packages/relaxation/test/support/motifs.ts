// Motifs for the tests, invented here: built directly as data.

import type { Anchor, Element, Motif, Round } from "@roundwright/motif"
import { seededRandom } from "@roundwright/numerics"
import { kind, type StitchKind } from "@roundwright/stitches"

const dc = kind("dc")

export function stitch(kindOf: StitchKind, ...anchors: Anchor[]): Element {
  return { type: "stitch", kind: kindOf, anchors }
}

export function chain(chains: number): Element {
  return { type: "chain", chains }
}

export function round(number: number, elements: Element[], turned = false): Round {
  return { number, elements, turned, closing: "joined" }
}

/** Groups of 3 dc in spaces, (3 dc, ch 2, 3 dc) in corners, ch 1 between groups. */
export function grannySquare(rounds: number, corners = 4, group = 3): Motif {
  const list: Round[] = []
  for (let index = 0; index < rounds; index++) {
    const elements: Element[] = []
    for (let corner = 0; corner < corners; corner++) {
      if (index === 0) {
        for (let k = 0; k < group; k++) elements.push(stitch(dc, { at: "centre" }))
        elements.push(chain(2))
        continue
      }
      const below = list[index - 1]!.elements
      const spaces = below.flatMap((element, i) => (element.type === "chain" ? [i] : []))
      const own = spaces.slice(corner * index, (corner + 1) * index)
      own.forEach((space, k) => {
        const anchor: Anchor = { at: "space", round: index - 1, element: space }
        for (let i = 0; i < group; i++) elements.push(stitch(dc, anchor))
        if (k === 0) {
          elements.push(chain(2))
          for (let i = 0; i < group; i++) elements.push(stitch(dc, anchor))
        }
        elements.push(chain(1))
      })
    }
    list.push(round(index + 1, elements))
  }
  return { title: "Little windows", centre: { kind: "chain-ring", chains: 4 }, rounds: list }
}

/**
 * A lace square from a circle: rounds of dc with ch 1 between them, then arches that are tall at the corners, then
 * solid rounds of dc with (2 dc, ch 2, 2 dc) corners. Eight rounds hold about 460 nodes, eleven about 840.
 */
export function laceSquare(rounds = 8): Motif {
  const list: Round[] = []
  list.push(
    round(
      1,
      Array.from({ length: 12 }, () => stitch(dc, { at: "centre" })),
    ),
  )
  let tops = list[0]!.elements.map((_, i) => i)
  for (let index = 1; index < 4; index++) {
    const elements: Element[] = []
    const next: number[] = []
    for (const element of tops) {
      next.push(elements.length)
      elements.push(stitch(dc, { at: "stitch", round: index - 1, element }))
      elements.push(chain(index))
    }
    list.push(round(index + 1, elements))
    tops = next
  }
  // Round 5: stitches into the spaces, taller towards the corners, (2 tr, ch 3, 2 tr) at them.
  const spaces = list[3]!.elements.flatMap((element, i) => (element.type === "chain" ? [i] : []))
  const quarter = spaces.length / 4
  const fifth: Element[] = []
  spaces.forEach((space, i) => {
    const anchor: Anchor = { at: "space", round: 3, element: space }
    const place = i % quarter
    if (place === 0)
      fifth.push(
        stitch(kind("tr"), anchor),
        stitch(kind("tr"), anchor),
        chain(3),
        stitch(kind("tr"), anchor),
        stitch(kind("tr"), anchor),
      )
    else {
      const far = Math.min(place, quarter - place) / (quarter / 2)
      const tall = far < 0.5 ? kind("dc") : far < 0.9 ? kind("hdc") : kind("sc")
      for (let k = 0; k < 4; k++) fifth.push(stitch(tall, anchor))
    }
  })
  list.push(round(5, fifth))
  for (let index = 5; index < rounds; index++) {
    const elements: Element[] = []
    list[index - 1]!.elements.forEach((element, i) => {
      if (element.type === "stitch")
        elements.push(stitch(dc, { at: "stitch", round: index - 1, element: i }))
      else {
        const anchor: Anchor = { at: "space", round: index - 1, element: i }
        elements.push(
          stitch(dc, anchor),
          stitch(dc, anchor),
          chain(2),
          stitch(dc, anchor),
          stitch(dc, anchor),
        )
      }
    })
    list.push(round(index + 1, elements))
  }
  return { title: "Window on the garden", centre: { kind: "chain-ring", chains: 6 }, rounds: list }
}

/** A motif of random counts, kinds, chains and places: valid, not sensible. For derivatives and for bad cases. */
export function randomMotif(seed: number, rounds = 4): Motif {
  const random = seededRandom(seed)
  const pick = (n: number): number => random.integer() % n
  const kinds = (["sc", "hdc", "dc", "tr"] as const).map((basic) => kind(basic))
  const list: Round[] = []
  const ring = pick(2) === 0
  list.push(
    round(
      1,
      Array.from({ length: 5 + pick(6) }, () => stitch(kinds[pick(4)]!, { at: "centre" })),
    ),
  )
  for (let index = 1; index < rounds; index++) {
    const below = list[index - 1]!.elements
    const elements: Element[] = []
    below.forEach((element, i) => {
      const legs = 1 + pick(3)
      for (let leg = 0; leg < legs; leg++) {
        if (pick(4) === 0) elements.push(chain(1 + pick(3)))
        const at: Anchor =
          element.type === "stitch"
            ? pick(6) === 0
              ? { at: "between", round: index - 1, element: i }
              : { at: "stitch", round: index - 1, element: i }
            : element.type === "chain" && pick(2) === 0
              ? { at: "chain", round: index - 1, element: i, chain: pick(element.chains) }
              : { at: "space", round: index - 1, element: i }
        if (element.type !== "picot") elements.push(stitch(kinds[pick(4)]!, at))
        if (pick(8) === 0) elements.push({ type: "picot", chains: 3 })
      }
    })
    list.push(round(index + 1, elements, pick(3) === 0))
  }
  return {
    centre: ring ? { kind: "chain-ring", chains: 4 } : { kind: "adjustable-ring" },
    rounds: list,
  }
}

/** The same piece seen from behind: every round worked the other way round. */
export function mirrored(motif: Motif): Motif {
  const flip = (roundIndex: number, element: number): number =>
    motif.rounds[roundIndex]!.elements.length - 1 - element
  const rounds = motif.rounds.map((one) => ({
    ...one,
    elements: one.elements
      .map((element): Element => {
        if (element.type !== "stitch") return element
        const anchors = element.anchors.map((anchor): Anchor => {
          if (anchor.at === "centre") return anchor
          return { ...anchor, element: flip(anchor.round, anchor.element) }
        })
        return { ...element, anchors: anchors.reverse() }
      })
      .reverse(),
  }))
  return { ...motif, rounds }
}

/** The same piece with every round begun \`by\` elements later. */
export function begunLater(motif: Motif, by: number): Motif {
  const move = (roundIndex: number, element: number): number => {
    const n = motif.rounds[roundIndex]!.elements.length
    return (((element - by) % n) + n) % n
  }
  const rounds = motif.rounds.map((one) => {
    const n = one.elements.length
    const elements = one.elements.map((_, k): Element => {
      const element = one.elements[(k + by) % n]!
      if (element.type !== "stitch") return element
      const anchors = element.anchors.map((anchor): Anchor => {
        if (anchor.at === "centre") return anchor
        return { ...anchor, element: move(anchor.round, anchor.element) }
      })
      return { ...element, anchors }
    })
    return { ...one, elements }
  })
  return { ...motif, rounds }
}

/** Corners of (2 dc, ch 1, 2 dc) in the ch-1 space below, one dc in every dc between: far too full for a hexagon. */
export function fullHexagon(rounds = 4): Motif {
  const list: Round[] = []
  for (let index = 0; index < rounds; index++) {
    const below = list[index - 1]?.elements
    const centre: Anchor = { at: "centre" }
    const elements =
      below === undefined
        ? Array.from({ length: 6 }, () => [stitch(dc, centre), stitch(dc, centre), chain(1)]).flat()
        : below.flatMap((element, k): Element[] => {
            if (element.type !== "chain")
              return index === 1 ? [] : [stitch(dc, { at: "stitch", round: index - 1, element: k })]
            const space: Anchor = { at: "space", round: index - 1, element: k }
            const pair = [stitch(dc, space), stitch(dc, space)]
            return [...pair, chain(1), ...pair]
          })
    list.push(round(index + 1, elements))
  }
  return { title: "Crowded six", centre: { kind: "chain-ring", chains: 4 }, rounds: list }
}
