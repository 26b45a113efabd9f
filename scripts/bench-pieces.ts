// The pieces that the laid-out shape is timed on, at any number of nodes: a flat disc, a lace square and a ruffled disc.

import { buildDisc, type Element, type Motif, type Round } from "@roundwright/motif"
import { buildNet, type Net } from "@roundwright/relaxation"
import { gaugeFrom, kind } from "@roundwright/stitches"

export interface BenchPiece {
  readonly name: string
  readonly net: Net
}

const dc = kind("dc")
const heightMm = 13
/** The width at which 12 dc a round lie flat. */
const flatWidthMm = (2 * Math.PI * heightMm) / 12
const gauge = gaugeFrom({
  swatches: [{ kind: dc, widthMm: flatWidthMm, heightMm, worked: "rounds" }],
})

/** The three pieces with about as many nodes each. */
export function piecesOf(nodes: number): BenchPiece[] {
  return [
    { name: "flat disc", net: disc(12, nodes) },
    { name: "lace square", net: buildNet(laceSquare(nodes), gauge) },
    { name: "ruffled disc", net: disc(16, nodes) },
  ]
}

/** k dc a round, as many rounds as hold the nodes. */
function disc(k: number, nodes: number): Net {
  const rounds = Math.max(2, Math.round(Math.sqrt((2 * nodes) / k)))
  const counts = Array.from({ length: rounds }, (_, n) => k * (n + 1))
  return buildNet(buildDisc(dc, counts, { staggered: true }), gauge)
}

/**
 * Squares of groups of three dc in spaces, with ch 1 between groups and (3 dc, ch 2, 3 dc) at the corners: eight rounds
 * hold about 600 nodes.
 */
function laceSquare(nodes: number): Motif {
  const rounds = Math.max(2, Math.round(Math.sqrt(nodes / 8.5)))
  const list: Round[] = []
  for (let index = 0; index < rounds; index++)
    list.push({
      number: index + 1,
      elements: laceRound(list[index - 1], index),
      closing: "joined",
      turned: false,
    })
  return { title: "Bench lace", centre: { kind: "chain-ring", chains: 4 }, rounds: list }
}

function laceRound(below: Round | undefined, index: number): Element[] {
  const group = (anchor: Extract<Element, { type: "stitch" }>["anchors"][number]): Element[] =>
    Array.from({ length: 3 }, () => ({ type: "stitch", kind: dc, anchors: [anchor] }))
  if (below === undefined)
    return Array.from({ length: 4 }, () => [
      ...group({ at: "centre" }),
      { type: "chain" as const, chains: 2 },
    ]).flat()
  const spaces = below.elements.flatMap((element, k) => (element.type === "chain" ? [k] : []))
  return spaces.flatMap((element, k): Element[] => {
    const anchor = { at: "space", round: index - 1, element } as const
    const corner = k % index === 0
    return [
      ...group(anchor),
      ...(corner ? [{ type: "chain" as const, chains: 2 }, ...group(anchor)] : []),
      { type: "chain", chains: 1 },
    ]
  })
}
