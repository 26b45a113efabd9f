// The edge a round is worked into: the elements of the round before, in the order they are met, cut
// into cells. A stitch is one cell, the gap after it another, a run of chains one cell a chain.

import { type Anchor, anchorKey, type Centre, type Element, type Round } from "@roundwright/motif"

export interface Cell {
  readonly type: "stitch" | "gap" | "chain" | "picot"
  /** Index of the element in its round; -1 for the centre. */
  readonly element: number
  /** Which chain of a run, from 0; 0 for others. */
  readonly chain: number
}

export class Edge {
  readonly cells: readonly Cell[]
  /** For each cell, cells to the end of its element (a run of chains is several). */
  readonly widths: readonly number[]
  /** Position in the walk of each element. */
  readonly order: readonly number[]
  private readonly kept = new Map<string, unknown>()

  constructor(
    /** Index of the round, -1 for the centre. */
    readonly round: number,
    readonly elements: readonly Element[],
    readonly reversed: boolean,
    order: readonly number[],
    cells: readonly Cell[],
  ) {
    this.order = order
    this.cells = cells
    const widths: number[] = new Array(cells.length)
    for (let i = cells.length - 1; i >= 0; i--) {
      const next = cells[i + 1]
      const cell = cells[i]!
      widths[i] =
        cell.type === "chain" && next?.type === "chain" && next.element === cell.element
          ? widths[i + 1]! + 1
          : 1
    }
    this.widths = widths
  }

  get size(): number {
    return this.cells.length
  }

  /** Remembers what is worked out once for an edge. */
  keep<T>(key: string, work: () => T): T {
    const found = this.kept.get(key)
    if (found !== undefined) return found as T
    const made = work()
    this.kept.set(key, made)
    return made
  }

  /** True where a run of chains, as met in the walk, begins. */
  startsRun(index: number): boolean {
    const cell = this.cells[index]
    const before = this.cells[index - 1]
    return cell?.type === "chain" && !(before?.type === "chain" && before.element === cell.element)
  }

  anchorAt(index: number, whole: boolean): Anchor {
    const cell = this.cells[index]!
    if (this.round < 0) return { at: "centre", chain: cell.chain }
    const { round } = this
    const { element } = cell
    if (cell.type === "stitch") return { at: "stitch", round, element }
    if (cell.type === "picot") return { at: "picot", round, element }
    if (cell.type === "gap") return { at: "between", round, element }
    return whole
      ? { at: "space", round, element }
      : { at: "chain", round, element, chain: cell.chain }
  }

  elementAt(index: number): Element | undefined {
    return this.elements[this.cells[index]?.element ?? -1]
  }
}

/** The chains of a chain ring, or nothing to count for other centres. */
export function centreEdge(centre: Centre): Edge {
  const chains = centre.kind === "chain-ring" ? centre.chains : 0
  const cells: Cell[] = Array.from({ length: chains }, (_, chain) => ({
    type: "chain" as const,
    element: -1,
    chain,
  }))
  return new CentreEdge(cells)
}

/** Chains of a foundation as they are met one after the other. */
export function chainEdge(chains: number): Edge {
  const cells: Cell[] = Array.from({ length: chains }, (_, chain) => ({
    type: "chain" as const,
    element: -1,
    chain,
  }))
  return new CentreEdge(cells)
}

/** Each chain of a ring stands for itself. */
class CentreEdge extends Edge {
  constructor(cells: readonly Cell[]) {
    super(-1, [], false, [], cells)
  }
  override startsRun(): boolean {
    return true
  }
}

/** The edge of a round as the next one meets it. `turned` tells that the next goes the other way. */
export function roundEdge(round: Round, index: number, turned: boolean): Edge {
  const count = round.elements.length
  const last = round.elements[count - 1]
  const closed =
    round.closing === "joined" && last?.type === "chain" && last.closedWith !== undefined
  const forward: number[] = []
  for (let i = 0; i < count; i++) forward.push(i)
  let order = forward
  if (turned) {
    order =
      round.closing === "joined" && count > 0
        ? [0, ...forward.slice(1).reverse()]
        : [...forward].reverse()
    if (closed) order = [...forward].reverse()
  } else if (closed) order = [count - 1, ...forward.slice(0, -1)]
  const cells: Cell[] = []
  for (let position = 0; position < count; position++) {
    const element = order[position]!
    const made = round.elements[element]!
    if (made.type === "chain") {
      // Of a chain worked back along only its tip is left.
      const foot = leafFoot(round, index, element)
      for (let k = 0; k < made.chains - foot; k++)
        cells.push({ type: "chain", element, chain: turned ? made.chains - 1 - k : foot + k })
      continue
    }
    if (made.type === "picot") {
      cells.push({ type: "picot", element, chain: 0 })
      continue
    }
    cells.push({ type: "stitch", element, chain: 0 })
    const next = nextSolid(round.elements, order, position)
    if (next !== null) cells.push({ type: "gap", element: turned ? next : element, chain: 0 })
  }
  return new Edge(index, round.elements, turned, order, cells)
}

/** Of a chain its own round has worked back along: the first of its chains beyond them; 0 for any other. */
export function leafFoot(round: Round, index: number, element: number): number {
  let foot = 0
  for (let i = element + 1; i < round.elements.length; i++) {
    const made = round.elements[i]!
    if (made.type !== "stitch") break
    const anchor = made.anchors[0]
    if (anchor?.at !== "chain" || anchor.round !== index || anchor.element !== element) break
    for (const { chain = -1 } of made.anchors as readonly { chain?: number }[])
      foot = Math.max(foot, chain + 1)
  }
  return foot
}

/** The element met next when it is a stitch (picots passed over), else null. */
function nextSolid(
  elements: readonly Element[],
  order: readonly number[],
  position: number,
): number | null {
  for (let step = 1; step <= Math.min(order.length, 8); step++) {
    const element = order[(position + step) % order.length]!
    const made = elements[element]
    if (made?.type === "picot") continue
    return made?.type === "stitch" ? element : null
  }
  return null
}

/** Stitches side by side, as indices of cells in walk order; `wraps` when it runs over the start. */
export interface Group {
  readonly cells: readonly number[]
  /** Every cell from its first to its last, chains inside included. */
  readonly all: readonly number[]
}

const noAnchors: readonly Anchor[] = []

/** Runs of stitches worked into one place: tight ones have no chains between them. */
export function groupsInOnePlace(edge: Edge, tight: boolean): readonly Group[] {
  return edge.keep(tight ? "tight" : "wide", () => {
    const runs: { key: string; cells: number[]; all: number[] }[] = []
    let open: (typeof runs)[number] | null = null
    let pending: number[] = []
    let anchors: readonly Anchor[] | null = null
    let key = ""
    edge.cells.forEach((cell, index) => {
      if (cell.type === "gap" || cell.type === "picot") return
      if (cell.type === "chain") {
        if (tight) open = null
        else pending.push(index)
        return
      }
      const element = edge.elements[cell.element]
      const here = element?.type === "stitch" ? element.anchors : noAnchors
      if (here !== anchors) {
        anchors = here
        key = placeKey(here)
      }
      if (open && open.key === key) {
        open.cells.push(index)
        for (const chain of pending) open.all.push(chain)
        open.all.push(index)
      } else {
        open = { key, cells: [index], all: [index] }
        runs.push(open)
      }
      pending = []
    })
    const first = runs[0]
    const last = runs[runs.length - 1]
    const endsSolid =
      edge.cells[edge.cells.length - 1]?.type !== "chain" && edge.cells[0]?.type !== "chain"
    const meets = tight ? endsSolid : true
    if (!first || !last || first.key !== last.key || !meets || edge.round < 0) return runs
    const size = edge.size
    if (first === last) {
      // All in one place: chains after the last stitch lead back to the first.
      if (!tight) first.all = leadingChains(edge).concat(first.all, pending)
      return runs
    }
    runs.pop()
    const back = (cell: number) => cell - size
    first.cells = last.cells.map(back).concat(first.cells)
    const leading = tight ? [] : leadingChains(edge)
    first.all = last.all
      .concat(tight ? [] : pending)
      .map(back)
      .concat(leading, first.all)
    return runs
  })
}

/** Chains before the first stitch of the walk. */
function leadingChains(edge: Edge): number[] {
  const found: number[] = []
  for (let index = 0; edge.cells[index]?.type === "chain"; index++) found.push(index)
  return found
}

/** Stitches between one run of chains and the next. */
export function groupsBetweenSpaces(edge: Edge): readonly Group[] {
  return edge.keep("runs", () => {
    const runs: { cells: number[]; all: number[] }[] = []
    let open: (typeof runs)[number] | null = null
    edge.cells.forEach((cell, index) => {
      if (cell.type === "chain") open = null
      if (cell.type !== "stitch") return
      if (!open) {
        open = { cells: [], all: [] }
        runs.push(open)
      }
      open.cells.push(index)
      open.all.push(index)
    })
    const first = runs[0]
    const last = runs[runs.length - 1]
    if (
      first &&
      last &&
      first !== last &&
      edge.cells[0]?.type !== "chain" &&
      edge.cells[edge.size - 1]?.type !== "chain"
    ) {
      runs.pop()
      const back = (cell: number) => cell - edge.size
      first.cells = last.cells.map(back).concat(first.cells)
      first.all = last.all.map(back).concat(first.all)
    }
    return runs
  })
}

function placeKey(anchors: readonly Anchor[]): string {
  const first = anchors[0]
  const last = anchors[anchors.length - 1]
  if (!first || !last) return ""
  const key = anchorKey(first)
  return anchors.length === 1 || anchorKey(last) === key ? key : `${key}|${anchorKey(last)}`
}

/** Runs of chains made in one place between its stitches: corners, by how they were worked. */
export function cornerRuns(edge: Edge): ReadonlySet<number> {
  return edge.keep("corners", () => {
    const found = new Set<number>()
    for (const group of groupsInOnePlace(edge, false))
      for (const cell of group.all) {
        const at = edge.cells[(cell + edge.size) % edge.size]
        if (at?.type === "chain") found.add(at.element)
      }
    const all = edge.elements.filter((element) => element.type === "chain").length
    if (found.size > 0 && found.size < all) return found
    let most = 0
    for (const element of edge.elements)
      if (element.type === "chain" && element.chains > most) most = element.chains
    const largest = new Set<number>()
    edge.elements.forEach((element, index) => {
      if (element.type === "chain" && element.chains === most) largest.add(index)
    })
    return largest
  })
}
