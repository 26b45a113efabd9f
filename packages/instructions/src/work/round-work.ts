// The state while one round is worked: where on the edge below the hook is, what has been made, what
// has been used. Everything can be taken back to a mark, so that repeats can be tried.

import type { Anchor, Centre, Element } from "@roundwright/motif"
import type { StitchKind } from "@roundwright/stitches"
import { CannotWork } from "../base/cannot-work.ts"
import { mostChainsPerRound, mostElementsPerRound, mostStepsPerRound } from "../base/limits.ts"
import type { Finding } from "../base/problem-list.ts"
import type { Noun, Span, Step } from "../base/tree.ts"
import { cellUnder } from "../edge/cell-under.ts"
import { Edge, roundEdge } from "../edge/edge.ts"
import { type Meaning, meaningOf } from "../edge/meanings.ts"
import type { Site } from "../edge/site.ts"
import { findSite } from "../edge/sites.ts"
import type { Choices } from "./choices.ts"
import { otherGroups, otherName } from "./other-names.ts"
import type { OpenRepeat, WholeTimes } from "./repeats-made.ts"
import {
  type Mark,
  modesOf,
  type OwnChain,
  type Position,
  type Shared,
  type Use,
} from "./round-parts.ts"

export { CannotWork } from "../base/cannot-work.ts"

/** How steps are worked: told to the round once by the dispatcher, so that no kind of step need know the others. */
export interface Performers {
  /** @throws CannotWork at the first step that cannot be worked */
  readonly steps: (work: RoundWork, steps: readonly Step[]) => void
  readonly stitches: (work: RoundWork, step: Extract<Step, { do: "work" }>) => void
  /** Works a group into one place found. */
  readonly groupAt: (
    work: RoundWork,
    step: Extract<Step, { do: "group" }>,
    site: Site,
    position: Position,
  ) => void
}

const noExtra: { madeOfChains?: number } = {}
const noOthers: Mark["others"] = []

export class RoundWork {
  readonly elements: Element[] = []
  readonly spans: Span[] = []
  readonly findings: Finding[] = []
  /** Skips that were come to: one that never was changes nothing. */
  readonly skipsMet: Step[] = []
  readonly used: { edge: Edge; from: number; to: number; use: Use }[] = []
  readonly others = new Map<number, Position>()
  current: Site | null = null
  currentRound: number | null = null
  /** The place a group is being worked into. */
  inPlace: readonly Anchor[] | null = null
  loops: "front" | "back" | "third" | undefined
  passes: "behind" | "front" | undefined
  /** Round named by "working over ch-3 of Rnd 3". */
  modeRound: number | undefined
  /** Where the round starts on the edge, and whether that place is worked into. */
  startSite: Site | null = null
  startTaken = false
  /** The hook stands past its starting place: "next" does not mean that one. */
  startPassed = false
  turned = false
  joined = false
  joinChain: number | undefined
  startChain: { chains: number; counts: boolean } | undefined
  repeatDepth = 0
  /** Chains made after every stitch of the step in hand. */
  between = 0
  /** "2nd ch from hook" names the chain the piece starts on. */
  hookChainIsCentre = false
  /** Chains along the first side of a foundation, while that side is being worked; null elsewhere. */
  firstSide: number | null = null
  /** A chain of this round that is being worked back along. */
  own: OwnChain | null = null
  /** The repeat being worked has single stitches beside several: the several go into one place. */
  doubles = false
  /** "2 tr in next 2 sts, 2 tr in next st": the first of them are one in each. */
  spreads = false
  /** Stitches with no place of their own have gone on past a loop. */
  overLoops = false
  /** A starting chain that is the first leg of the gathered stitch about to be made. */
  pendingLeg: { readonly chains: number; readonly anchors: readonly Anchor[] } | null = null
  /** Cells from the first stitch skipped to the first one worked. */
  skippedFirst = 0
  /** A place inside a group or run was named, so its other stitches are passed over on purpose. */
  picked = false
  /** The round speaks of single chains, so that its "st" takes them in. */
  chainsNamed = false
  /** The last repeat worked "around" with no ending of its own. */
  openRepeat: OpenRepeat | null = null
  /** The last repeat of the round itself: what was used before each of its whole times, and after the last. */
  wholeTimes: WholeTimes | null = null
  /** Times the main repeat was worked. */
  mainRepeats = 0
  madeBeforeRepeat = false
  centre: Centre | null
  steps = 0
  chainsMade = 0
  readonly main: Position

  constructor(
    readonly shared: Shared,
    readonly index: number,
    readonly number: number,
    edge: Edge,
    readonly choices: Choices,
    readonly allSteps: readonly Step[],
    readonly performers: Performers,
  ) {
    this.main = { edge, at: 0, base: 0 }
    this.centre = shared.centre
    const before = shared.rounds[index - 1]
    const last = before?.elements[before.elements.length - 1]
    if (before && last?.type === "chain" && last.closedWith && before.closing === "joined") {
      const width = edge.widths[0] ?? 1
      this.startSite = { from: 0, to: width, anchor: edge.anchorAt(0, true) }
      this.current = this.startSite
      this.startPassed = true
      this.main.at = width
    } else if (edge.size > 0 && edge.round >= 0) {
      const width = edge.cells[0]?.type === "stitch" ? 1 : edge.widths[0]!
      this.startSite = { from: 0, to: width, anchor: edge.anchorAt(0, true) }
      this.current = this.startSite
    }
  }

  /** First position that no longer belongs to this round. */
  get end(): number {
    const { base, edge } = this.main
    if (this.firstSide !== null) return base + this.firstSide
    const width = this.startSite ? this.startSite.to - this.startSite.from : 0
    return base + edge.size + (this.startPassed && !this.startTaken ? width : 0)
  }

  /** The same without stitches said to be skipped before the first one worked. */
  get endAround(): number {
    return this.end - this.skippedFirst
  }

  countStep(span: Span): void {
    this.steps += 1
    this.shared.budget.stepsLeft -= 1
    if (this.steps > mostStepsPerRound || this.shared.budget.stepsLeft < 0)
      throw new CannotWork({
        severity: "error",
        code: "too-many-steps",
        ...span,
        message: `Written out, this round has more than ${mostStepsPerRound.toLocaleString("en")} steps.`,
        hint: "Look at the number of repeats.",
      })
  }

  mark(): Mark {
    return {
      modes: modesOf(this),
      at: this.main.at,
      base: this.main.base,
      startSite: this.startSite,
      startPassed: this.startPassed,
      skippedFirst: this.skippedFirst,
      made: this.elements.length,
      used: this.used.length,
      current: this.current,
      startTaken: this.startTaken,
      others:
        this.others.size === 0
          ? noOthers
          : [...this.others].map(([round, position]) => [round, position.at] as const),
      lastChain: this.elements[this.elements.length - 1] ?? null,
      findings: this.findings.length,
      skipsMet: this.skipsMet.length,
      own: this.own && { ...this.own },
      overLoops: this.overLoops,
    }
  }

  backTo(mark: Mark): void {
    Object.assign(this, mark.modes)
    this.main.at = mark.at
    this.main.base = mark.base
    this.startSite = mark.startSite
    this.startPassed = mark.startPassed
    this.skippedFirst = mark.skippedFirst
    this.elements.length = mark.made
    this.spans.length = mark.made
    if (mark.lastChain) this.elements[mark.made - 1] = mark.lastChain
    this.used.length = mark.used
    this.current = mark.current
    this.startTaken = mark.startTaken
    this.findings.length = mark.findings
    this.skipsMet.length = mark.skipsMet
    this.own = mark.own && { ...mark.own }
    this.overLoops = mark.overLoops
    if (this.others.size === 0) return
    const known = new Map(mark.others)
    for (const [round, position] of this.others) {
      const at = known.get(round)
      if (at === undefined) this.others.delete(round)
      else position.at = at
    }
  }

  add(element: Element, span: Span): void {
    if (this.elements.length >= mostElementsPerRound)
      throw new CannotWork({
        severity: "error",
        code: "round-too-large",
        ...span,
        message: `This round would hold more than ${mostElementsPerRound.toLocaleString("en")} stitches and spaces.`,
        hint: "Look at the number of repeats.",
      })
    this.elements.push(element)
    this.spans.push(span)
  }

  /** Adds chains, to the run before them if one is open. */
  addChains(chains: number, span: Span): void {
    this.chainsMade += chains
    if (this.chainsMade > mostChainsPerRound)
      throw new CannotWork({
        severity: "error",
        code: "round-too-large",
        ...span,
        message: `This round would hold more than ${mostChainsPerRound.toLocaleString("en")} chains.`,
        hint: "Look at the number of repeats.",
      })
    const last = this.elements[this.elements.length - 1]
    if (last?.type === "chain") {
      this.elements[this.elements.length - 1] = { ...last, chains: last.chains + chains }
      return
    }
    this.add({ type: "chain", chains }, span)
  }

  stitch(
    kind: StitchKind,
    anchors: readonly Anchor[],
    span: Span,
    extra: { madeOfChains?: number } = noExtra,
  ): void {
    const formed = this.loops && !kind.loops && !kind.post ? { ...kind, loops: this.loops } : kind
    const passed =
      this.passes &&
      anchors.some((anchor) => anchor.at !== "centre" && anchor.round < this.index - 1)
    if (extra === noExtra && !passed) this.add({ type: "stitch", kind: formed, anchors }, span)
    else {
      const passes = passed ? { passes: this.passes } : {}
      this.add({ type: "stitch", kind: formed, anchors, ...extra, ...passes } as Element, span)
    }
  }

  /** The edge of an earlier round, with the hook where it stands over it. */
  positionOn(roundIndex: number): Position {
    if (roundIndex === this.main.edge.round) return this.main
    const known = this.others.get(roundIndex)
    if (known) return known
    const round = this.shared.rounds[roundIndex]
    const edge = round
      ? roundEdge(round, roundIndex, false)
      : new Edge(roundIndex, [], false, [], [])
    const at = round
      ? cellUnder(this.shared.rounds, edge, this.used.length > 0 ? this.current?.anchor : undefined)
      : 0
    const position = { edge, at, base: at }
    this.others.set(roundIndex, position)
    return position
  }

  limitOf(position: Position): number {
    return position === this.main ? this.end : position.base + position.edge.size
  }

  /** What a noun means on an edge; tells when its name had to be stretched. */
  /** A space was asked for where the round below has no chains: the gap between stitches was taken. */
  gapsForSpaces = false

  meaning(position: Position, named: Noun, span: Span): Meaning {
    const noun = this.withChains(position.edge, named)
    const meaning = meaningOf(position.edge, noun)
    this.tell(otherName(meaning, named, position.edge, span))
    this.tell(otherGroups(position.edge, named, span))
    if (named.what === "space" && meaning.noun.what === "gap") this.gapsForSpaces = true
    return meaning
  }

  /** "st" may take in the chains one by one, where there are any: a choice. */
  private withChains(edge: Edge, noun: Noun): Noun {
    if (noun.what !== "stitch" || noun.kind || noun.corner || noun.unworked || edge.round < 0)
      return noun
    if (!edge.keep("any-chain", () => edge.elements.some((element) => element.type === "chain")))
      return noun
    const taken = this.choices.take(
      "chains-are-stitches",
      this.chainsNamed ? ["yes", "no"] : ["no", "yes"],
    )
    return taken === "yes" ? { what: "cell" } : noun
  }

  tell(finding: Finding | null): void {
    if (finding) this.find(finding)
  }

  find(finding: Finding): void {
    if (this.findings.some((other) => other.code === finding.code && other.start === finding.start))
      return
    this.findings.push(finding)
  }

  use(position: Position, site: Site, use: Use): void {
    // What is passed over before the first place used is met again at the end of the round.
    if (
      position === this.main &&
      use === "worked" &&
      !this.startPassed &&
      !this.anyUsed() &&
      site.from > position.base
    ) {
      position.base = site.from
      this.startSite = site
      this.startTaken = false
      const skipped = this.used.filter(
        (use) => use.use === "skipped" && use.edge === this.main.edge,
      )
      this.skippedFirst =
        skipped.length > 0 ? site.from - Math.min(...skipped.map((use) => use.from)) : 0
    }
    this.used.push({ edge: position.edge, from: site.from, to: site.to, use })
    if (position === this.main && this.startSite && use !== "slipped") {
      const size = Math.max(1, position.edge.size)
      const start = this.startSite.from % size
      if (site.from % size === start) this.startTaken = true
    }
  }

  private anyUsed(): boolean {
    for (const use of this.used)
      if (use.edge === this.main.edge && use.use === "worked") return true
    return false
  }

  usedCells(edge: Edge): Set<number> {
    const cells = new Set<number>()
    for (const use of this.used) {
      if (use.edge !== edge || use.use === "slipped") continue
      for (let at = use.from; at < use.to; at++)
        cells.add(((at % edge.size) + edge.size) % edge.size)
    }
    return cells
  }

  /** The next place a noun names, or null when the round has no more. */
  next(position: Position, noun: Noun, span: Span): Site | null {
    const meaning = this.meaning(position, noun, span)
    if (!meaning.exists) return null
    const used = noun.unworked ? this.workedBefore(position.edge) : null
    return findSite(
      position.edge,
      meaning.noun,
      position.at,
      this.limitOf(position),
      position.base,
      used,
    )
  }

  /** Cells of an earlier round's edge that the rounds since then, or this one, have worked into. */
  private workedBefore(edge: Edge): Set<number> {
    const cells = this.usedCells(edge)
    const taken = edge.keep("taken", () => {
      const anchors = new Set<number>()
      for (let round = edge.round + 1; round < this.index; round++)
        for (const element of this.shared.rounds[round]?.elements ?? [])
          if (element.type === "stitch")
            for (const anchor of element.anchors)
              if (anchor.at !== "centre" && anchor.round === edge.round) anchors.add(anchor.element)
      return anchors
    })
    edge.cells.forEach((cell, index) => {
      if (cell.type === "stitch" && taken.has(cell.element)) cells.add(index)
    })
    return cells
  }
}
