// Small changes anywhere in a piece: counts (count-changes.ts), the stitch of a round, the chains of its spaces, one
// round more or less.

import { countRound, type Element, type Motif, type Round } from "@roundwright/motif"
import { kindName, type StitchKind } from "@roundwright/stitches"
import { replaceRound } from "./columns.ts"
import { countChanges } from "./count-changes.ts"
import { type MendChange, mainKind } from "./mend-change.ts"

/** Stitches a maker exchanges for one another, lowest first. */
const ladder: readonly StitchKind["basic"][] = ["sc", "hdc", "dc", "tr", "dtr"]
const chainReach = 2

/** Every change tried, round by round. */
export function changesOf(motif: Motif): MendChange[] {
  return motif.rounds.flatMap((_, round) => [
    ...countChanges(motif, round),
    ...stitchChanges(motif, round),
    ...chainChanges(motif, round),
    ...roundChanges(motif, round),
  ])
}

function stitchChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  const { byKind, stitches } = countRound(own)
  const kind = byKind[0]?.kind
  if (byKind.length !== 1 || !kind || kind.gathered || kind.post || kind.loops) return []
  const place = ladder.indexOf(kind.basic)
  if (place < 0) return []
  return [-1, 1].flatMap((step): MendChange[] => {
    const basic = ladder[place + step]
    if (!basic) return []
    const elements = own.elements.map(
      (element): Element => (element.type === "stitch" ? { ...element, kind: { basic } } : element),
    )
    return [
      {
        kind: "stitch",
        round,
        words: `Round ${own.number}: work it in ${basic} instead of ${kindName(kind)}, same count.`,
        motif: replaceRound(motif, round, elements),
        altered: stitches,
        count: null,
        keeps: false,
      },
    ]
  })
}

function chainChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  return countRound(own).spacesBySize.flatMap(({ chains, count }) => {
    const changes: MendChange[] = []
    for (let by = -chainReach; by <= chainReach; by++) {
      const to = chains + by
      if (by === 0 || to < 1 || anchoredInChains(motif, round, to)) continue
      const elements = own.elements.map(
        (element): Element =>
          element.type === "chain" && element.chains === chains
            ? { ...element, chains: to }
            : element,
      )
      changes.push({
        kind: "chains",
        round,
        words: `Round ${own.number}: make its ch-${chains} spaces ch ${to}.`,
        motif: replaceRound(motif, round, elements),
        altered: count * Math.abs(by),
        count: null,
        keeps: false,
      })
    }
    return changes
  })
}

/** True when a later stitch goes into a chain that a run of that length would not have. */
function anchoredInChains(motif: Motif, round: number, length: number): boolean {
  return motif.rounds.some((own) =>
    own.elements.some(
      (element) =>
        element.type === "stitch" &&
        element.anchors.some(
          (anchor) => anchor.at === "chain" && anchor.round === round && anchor.chain >= length,
        ),
    ),
  )
}

/** The last round left out, or worked once more without increases. */
function roundChanges(motif: Motif, round: number): MendChange[] {
  const own = motif.rounds[round]!
  if (round !== motif.rounds.length - 1) return []
  const stitches = countRound(own).stitches
  const changes: MendChange[] = []
  if (round > 0)
    changes.push({
      kind: "drop-round",
      round,
      words: `Leave out round ${own.number}.`,
      motif: { ...motif, rounds: motif.rounds.slice(0, -1) },
      altered: stitches,
      count: null,
      keeps: false,
    })
  changes.push({
    kind: "add-round",
    round: round + 1,
    words: `Work one more round without increases, ${kindName(mainKind(own))} in each stitch and chain.`,
    motif: { ...motif, rounds: [...motif.rounds, plainOver(own, round)] },
    altered: stitches,
    count: null,
    keeps: false,
  })
  return changes
}

function plainOver(below: Round, index: number): Round {
  const kind = mainKind(below)
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
  return { number: below.number + 1, elements, turned: below.turned, closing: "joined" }
}
