// What the last round of a piece is made of, and the units that the next round is built on: the spaces of lace, mesh
// and groups, the tips of shells, single stitches of solid fabric.

import {
  type Anchor,
  anchorKey,
  type Motif,
  type Round,
  type StitchElement,
} from "@roundwright/motif"

/** `lace`: loops of chains; `mesh`: lone tall stitches and short chains; `groups`: as in a granny; `shells`: fans. */
export type FabricName = "lace" | "mesh" | "groups" | "shells" | "solid"

/** Where something can be worked into the last round. */
export interface Spot {
  readonly anchor: Anchor
  /** Index of the element it is, or after which it lies. */
  readonly element: number
  /** Chains of a space, 0 for anything else. */
  readonly chains: number
}

export interface Fabric {
  readonly name: FabricName
  /** In working order. */
  readonly units: readonly Spot[]
  /** What lies half way between unit i and the one after it: a stitch, a gap; null where a chain lies there. */
  readonly joints: readonly (Spot | null)[]
}

/** Chains of mesh: a longer run between two posts is a loop. */
const longestMeshChain = 3
/** A fan of fewer stitches in one place is a group. */
const fewestOfShell = 4
/** The same with chains between: a group of four is worked on in its spaces, a fan of five in its tip. */
const fewestOfLoneShell = 5
const fewestOfGroup = 3
/** Fewer spaces than this are corners or a single eyelet, not a fabric. */
const fewestUnits = 3

export function fabricOf(motif: Motif): Fabric {
  const index = motif.rounds.length - 1
  const round = motif.rounds[index]
  if (!round) return { name: "solid", units: [], joints: [] }
  const runs = stitchRuns(round)
  const spaces = spacesOf(round, index)
  const fans = fansOf(round)
  const shellSize = spaces.length > 0 ? fewestOfLoneShell : fewestOfShell
  if (mostlyFans(round, fans, shellSize)) return shells(round, index, fans, shellSize)
  if (spaces.length >= fewestUnits && spaces.length >= leastShare * runs.length) {
    const name = nameOfSpaced(round, runs)
    if (name !== null) return { name, units: spaces, joints: jointsOf(round, index, spaces) }
  }
  if (
    spaces.length === 0 &&
    fans.length >= fewestUnits &&
    mostlyFans(round, fans, fewestOfGroup) &&
    setApart(fans)
  )
    return besideOneAnother(index, fans)
  return solid(round, index)
}

/** Spaces against stretches of stitches: with fewer than this the round is solid with a few holes. */
const leastShare = 0.9

/** Mean stitches between two spaces above which the round is solid fabric with eyelets. */
const longestRun = 4

function nameOfSpaced(round: Round, runs: readonly number[]): FabricName | null {
  const mean = runs.reduce((sum, run) => sum + run, 0) / Math.max(1, runs.length)
  if (mean > longestRun) return null
  const stitches = round.elements.filter(
    (element): element is StitchElement => element.type === "stitch",
  )
  const low = stitches.every(({ kind }) => kind.basic === "sc" || kind.basic === "sl st")
  const longest = Math.max(
    ...round.elements.map((element) => (element.type === "chain" ? element.chains : 0)),
  )
  // A cluster or popcorn is a group drawn into one stitch.
  const gathered = stitches.filter(({ kind }) => kind.gathered !== undefined).length
  if (mean < 1.5 && longest <= longestMeshChain && 2 * gathered > stitches.length) return "groups"
  if (mean < 1.5) return low || longest > longestMeshChain ? "lace" : "mesh"
  return low ? "lace" : "groups"
}

/** Lengths of the stretches of stitches between chains. */
function stitchRuns(round: Round): number[] {
  const { elements } = round
  const first = elements.findIndex(({ type }) => type === "chain")
  if (first < 0) return [elements.length]
  const runs: number[] = []
  let run = 0
  for (let i = 1; i <= elements.length; i++) {
    const { type } = elements[(first + i) % elements.length]!
    if (type === "stitch") run++
    else if (type === "chain") {
      if (run > 0) runs.push(run)
      run = 0
    }
  }
  return runs
}

function spacesOf(round: Round, index: number): Spot[] {
  return round.elements.flatMap((element, e) =>
    element.type === "chain"
      ? [
          {
            anchor: { at: "space" as const, round: index, element: e },
            element: e,
            chains: element.chains,
          },
        ]
      : [],
  )
}

/** The stitch in the middle of each stretch between two units, or the gap between its two middle stitches. */
function jointsOf(round: Round, index: number, units: readonly Spot[]): (Spot | null)[] {
  const n = round.elements.length
  return units.map((unit, i) => {
    const next = units[(i + 1) % units.length]!
    const between: number[] = []
    for (let e = (unit.element + 1) % n; e !== next.element; e = (e + 1) % n)
      if (round.elements[e]!.type === "stitch") between.push(e)
    return middleOf(between, index)
  })
}

function middleOf(elements: readonly number[], round: number): Spot | null {
  if (elements.length === 0) return null
  const element = elements[(elements.length - 1) >> 1]!
  const at = elements.length % 2 === 1 ? ("stitch" as const) : ("between" as const)
  return { anchor: { at, round, element }, element, chains: 0 }
}

interface Fan {
  /** Its elements in working order. */
  readonly elements: readonly number[]
  readonly anchor: Anchor
}

/** Stretches of stitches side by side in one place. */
function fansOf(round: Round): Fan[] {
  const fans: { elements: number[]; anchor: Anchor; key: string }[] = []
  round.elements.forEach((element, e) => {
    if (element.type !== "stitch" || element.anchors.length !== 1) return
    const anchor = element.anchors[0]!
    const key = anchorKey(anchor)
    const last = fans.at(-1)
    if (last?.key === key && last.elements.at(-1) === e - 1) last.elements.push(e)
    else fans.push({ elements: [e], anchor, key })
  })
  const [first, last] = [fans[0], fans.at(-1)]
  const whole = first?.elements[0] === 0 && last?.elements.at(-1) === round.elements.length - 1
  if (first && last && first !== last && whole && first.key === last.key) {
    first.elements.unshift(...last.elements)
    fans.pop()
  }
  return fans
}

/** Whether fans of so many stitches make up the round, at most one lone stitch between two of them. */
function mostlyFans(round: Round, fans: readonly Fan[], fewest: number): boolean {
  const large = fans.filter(({ elements }) => elements.length >= fewest)
  const stitches = round.elements.filter(({ type }) => type === "stitch").length
  const inside = large.reduce((sum, { elements }) => sum + elements.length, 0)
  return (
    large.length >= fewestUnits &&
    stitches - inside <= large.length &&
    large.every(({ anchor }) => anchor.at !== "centre")
  )
}

/** Groups stand with places passed over, or in spaces; an increase in every stitch makes none. */
function setApart(fans: readonly Fan[]): boolean {
  return fans.every(({ anchor }) => anchor.at === "space" || anchor.at === "between")
}

function shells(round: Round, index: number, fans: readonly Fan[], fewest: number): Fabric {
  const large = fans.filter(({ elements }) => elements.length >= fewest)
  const units = large.map(({ elements }): Spot => middleOf(elements, index)!)
  const n = round.elements.length
  const joints = large.map((fan, i): Spot | null => {
    const from = fan.elements.at(-1)!
    const to = large[(i + 1) % large.length]!.elements[0]!
    const between: number[] = []
    for (let e = (from + 1) % n; e !== to; e = (e + 1) % n) between.push(e)
    const stitches = between.filter((e) => round.elements[e]!.type === "stitch")
    const space = between.find((e) => round.elements[e]!.type === "chain")
    if (stitches.length > 0) return middleOf(stitches, index)
    if (space !== undefined) {
      const run = round.elements[space]!
      const anchor = { at: "space" as const, round: index, element: space }
      return { anchor, element: space, chains: run.type === "chain" ? run.chains : 0 }
    }
    return { anchor: { at: "between", round: index, element: from }, element: from, chains: 0 }
  })
  return { name: "shells", units, joints }
}

/** Groups side by side: the next stand between them. */
function besideOneAnother(index: number, fans: readonly Fan[]): Fabric {
  const units = fans.map(({ elements }): Spot => {
    const element = elements.at(-1)!
    return { anchor: { at: "between", round: index, element }, element, chains: 0 }
  })
  const joints = fans.map((_, i) => middleOf(fans[(i + 1) % fans.length]!.elements, index))
  return { name: "groups", units, joints }
}

function solid(round: Round, index: number): Fabric {
  const units = round.elements.flatMap((element, e): Spot[] =>
    element.type === "picot"
      ? []
      : element.type === "chain"
        ? [
            {
              anchor: { at: "space", round: index, element: e },
              element: e,
              chains: element.chains,
            },
          ]
        : [{ anchor: { at: "stitch", round: index, element: e }, element: e, chains: 0 }],
  )
  return {
    name: "solid",
    units,
    joints: units.map(({ element }) => ({
      anchor: { at: "between", round: index, element },
      element,
      chains: 0,
    })),
  }
}
