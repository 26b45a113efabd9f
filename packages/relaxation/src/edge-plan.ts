// The edge of each round before any shape is known: its nodes in order, counterclockwise seen from the
// front, and how far along the edge each lies when it is laid straight.

import { chainsBeside, type Motif, type PicotElement, type StitchElement } from "@roundwright/motif"
import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { chainSize, type Gauge, picotSize, sizeOf, widthBesideChains } from "@roundwright/stitches"
import { assumedScWidthMm } from "./material.ts"

/** One node of an edge. `along` is the distance of its middle from the edge's start, mm. */
export interface EdgeNode {
  readonly element: number
  /** Which chain of a run, 0 for a stitch. */
  readonly chain: number
  readonly isChain: boolean
  readonly widthMm: number
  /** Height of the stitch, 0 for a chain. */
  readonly heightMm: number
  readonly along: number
}

export interface EdgePlan {
  readonly nodes: readonly EdgeNode[]
  readonly lengthMm: number
  readonly closed: boolean
  /** Mean height of its stitches, weighted by width; 0 when it has none. */
  readonly heightMm: number
  /** Index in `nodes` of the first node of each element (in counterclockwise order); -1 for a picot without length. */
  readonly firstOf: readonly number[]
}

export interface Sizes {
  readonly mmPerUnit: number
  readonly chainMm: number
  readonly scWidthMm: number
  /** How far a picot of so many chains stands out. */
  picotMm(chains: number): number
  stitch(element: StitchElement, turned: boolean): { heightMm: number; widthMm: number }
}

/** Nets of more nodes than this are refused: they would take minutes and much memory. */
export const mostNodes = 40_000
/** A stitch lower than this share of its width (a slip stitch) still holds its top off its base. */
const leastHeightShare = 0.1

/** @param heightFactor makes every stitch so much taller, as another hand would */
export function sizesIn(gauge: Gauge, heightFactor = 1): Sizes {
  const mmPerUnit = gauge.absolute ? 1 : assumedScWidthMm / gauge.scWidthMm
  const known = new Map<string, { heightMm: number; widthMm: number }>()
  return {
    mmPerUnit,
    chainMm: requirePositive(chainSize(gauge).lengthMm, "The length of a chain") * mmPerUnit,
    scWidthMm: gauge.scWidthMm * mmPerUnit,
    picotMm: (chains) => picotSize(chains, gauge).heightMm * mmPerUnit,
    stitch: (element, turned) => {
      const key = `${JSON.stringify(element.kind)}${turned}`
      const found = known.get(key)
      if (found !== undefined) return found
      const size = sizeOf(element.kind, gauge, { turned })
      const widthMm = requirePositive(size.widthMm, "The width of a stitch") * mmPerUnit
      const tallMm = size.heightMm * mmPerUnit * heightFactor
      const heightMm = Math.max(tallMm, leastHeightShare * widthMm)
      const made = { widthMm, heightMm }
      known.set(key, made)
      return made
    },
  }
}

/** @throws RoundwrightError `empty-round`, `net-too-large` */
export function planEdges(motif: Motif, sizes: Sizes): EdgePlan[] {
  let backwards = false
  let count = 0
  return motif.rounds.map((round, index) => {
    if (round.turned && index > 0) backwards = !backwards
    const turned = isTurned(motif, index)
    const nodes: EdgeNode[] = []
    const firstOf = new Array<number>(round.elements.length).fill(-1)
    let along = 0
    const add = (node: Omit<EdgeNode, "along">): void => {
      if (++count > mostNodes)
        throw new RoundwrightError(
          "net-too-large",
          `The piece has more than ${mostNodes} stitches and chains.`,
          {
            hint: "Lay out fewer rounds.",
            numbers: { round: round.number },
          },
        )
      nodes.push({ ...node, along: along + node.widthMm / 2 })
      along += node.widthMm
    }
    const beside = chainsBeside(round)
    const order = round.elements.map((_, k) => (backwards ? round.elements.length - 1 - k : k))
    for (const element of order) {
      const item = round.elements[element]!
      if (item.type === "picot" && item.closedWith === undefined) continue
      firstOf[element] = nodes.length
      if (item.type === "stitch")
        add({
          element,
          chain: 0,
          isChain: false,
          ...drawnTogether(sizes.stitch(item, turned), beside[element]!),
        })
      else if (item.type === "picot") {
        // The stitch that closes a loop lies along the edge like a cord: from its foot to its head.
        const { heightMm } = sizes.stitch(closingStitch(item), turned)
        add({ element, chain: 0, isChain: true, widthMm: heightMm, heightMm: 0 })
      } else
        for (let k = 0; k < item.chains; k++) {
          const chain = backwards ? item.chains - 1 - k : k
          add({ element, chain, isChain: true, widthMm: sizes.chainMm, heightMm: 0 })
        }
    }
    if (nodes.length === 0)
      throw new RoundwrightError(
        "empty-round",
        `Round ${round.number} has no stitches and no chains.`,
        {
          numbers: { round: round.number },
        },
      )
    const stitches = nodes.filter((node) => !node.isChain)
    const width = stitches.reduce((sum, node) => sum + node.widthMm, 0)
    return {
      nodes,
      lengthMm: along,
      closed: round.closing !== "open" && nodes.length > 2,
      heightMm:
        width === 0
          ? 0
          : stitches.reduce((sum, node) => sum + node.heightMm * node.widthMm, 0) / width,
      firstOf,
    }
  })
}

function drawnTogether<T extends { widthMm: number }>(size: T, sides: 0 | 1 | 2): T {
  return sides === 0 ? size : { ...size, widthMm: widthBesideChains(size.widthMm, sides) }
}

function closingStitch(item: PicotElement): StitchElement {
  return { type: "stitch", kind: item.closedWith!, anchors: [] }
}

/** Round 1 counts as turned when the work is turned after it: one hand, one manner. */
function isTurned(motif: Motif, index: number): boolean {
  return motif.rounds[Math.max(index, Math.min(1, motif.rounds.length - 1))]?.turned === true
}
