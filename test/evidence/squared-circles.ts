// Circles of real designers squared: the circle part of a published motif is given, as many rounds and corners asked for as
// the designer has. What is proposed first is measured against what makers do, and the designer's own rounds are laid out.

import { readPattern, withStarts, writeRounds } from "@roundwright/instructions"
import { countRound, type Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import {
  fabricOf,
  measureProposal,
  type Proposal,
  readStitchList,
  squareCircle,
  squaringTarget,
} from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import type { SquaringCase } from "./squaring-looks.ts"
import { withStartFound } from "./with-start-found.ts"

export interface SquaringKey {
  readonly id: string
  readonly url: string
  readonly kind: string
  readonly corners: number
  readonly circleRounds: number
  readonly polygonRounds: number
  /** The circle part in our own wording. */
  readonly base: string
  readonly designer: {
    readonly rounds: readonly string[]
    readonly usesTr: boolean
    readonly chainCorner: boolean
    readonly chainsAlongSides: boolean
  }
}

const gauge = gaugeFrom({ swatches: [] })

export function scoreSquaring(key: SquaringKey): SquaringCase {
  const base = readPattern(`Terms: US\n\n${key.base}\n`)
  const none: SquaringCase = {
    id: key.id,
    url: key.url,
    kind: key.kind,
    corners: key.corners,
    rounds: key.polygonRounds,
    fabric: null,
    idea: null,
    proposals: 0,
    held: null,
    chainsAlongSides: false,
    chainCorner: false,
    usesTr: false,
    needsTr: false,
    designerUsesTr: key.designer.usesTr,
    gradedRounds: 0,
    monotone: true,
    wordsARound: 0,
    designerWordsARound: median(key.designer.rounds.map(wordsOf)),
    bowPercent: null,
    angleOffDeg: null,
    verdict: null,
    readsBack: false,
    alike: false,
    ...designerFigures(key),
  }
  if (base.motif.rounds.length !== key.circleRounds) return none
  const fabric = fabricOf(base.motif).name
  const options = { corners: key.corners, rounds: key.polygonRounds }
  const found = tried(() => squareCircle(base.motif, gauge, options))
  const first = found?.[0]
  if (!found || !first) return { ...none, fabric }
  const { motif, from, shape } = first
  const lines = writeRounds(withStarts(motif, from), from)
  const usesTr = first.stitchKinds.includes("tr")
  return {
    ...none,
    fabric,
    proposals: found.length,
    idea: first.idea,
    held: heldShare(base.motif, first),
    chainsAlongSides: hasSideChains(first),
    chainCorner: hasCornerChains(first),
    usesTr,
    needsTr: usesTr && !straightWithoutTr(base.motif, options),
    gradedRounds: motif.rounds.slice(from).filter((round) => countRound(round).byKind.length > 1)
      .length,
    monotone: isMonotone(first),
    wordsARound: median(lines.map(wordsOf)),
    bowPercent: percent(shape.bowMm / shape.sideMm),
    angleOffDeg: tenths(shape.cornerAngleDeg - (180 - 360 / key.corners)),
    verdict: first.verdict,
    readsBack: readsBack(base.motif, key, lines, motif),
    alike: haveRoundInCommon(found),
  }
}

const tenths = (value: number) => Math.round(10 * value) / 10
const percent = (share: number) => tenths(100 * share)

/** Words of a round, its label and its total left out. */
export function wordsOf(line: string): number {
  const work = line.replace(/^Rnd \d+:\s*/, "").replace(/\([^()]*\)\s*$/, "")
  return work.split(/[\s,;]+/).filter((word) => /[\da-z]/i.test(word)).length
}

/** The designer's own rounds: read, told by the writer that tells the proposals, and laid out. */
function designerFigures(
  key: SquaringKey,
): Pick<
  SquaringCase,
  | "designerWordsAsWritten"
  | "designerCorners"
  | "designerBowPercent"
  | "designerAngleOffDeg"
  | "designerVerdict"
> {
  const text = key.designer.rounds.reduce(
    (before, line) => `${before}\n${withStartFound(before, line)}`,
    `Terms: US\n\n${key.base}`,
  )
  const { motif } = readPattern(`${text}\n`)
  const from = key.circleRounds
  const unknown = {
    designerCorners: null,
    designerBowPercent: null,
    designerAngleOffDeg: null,
    designerVerdict: null,
  }
  if (motif.rounds.length !== from + key.designer.rounds.length) return unknown
  const told = tried(() => writeRounds(withStarts(motif, from), from))
  const words = told && { designerWordsAsWritten: median(told.map(wordsOf)) }
  const shape = tried(() => measureProposal(motif, gauge, key.corners, from))
  if (!shape) return { ...unknown, ...words }
  return {
    ...words,
    designerCorners: shape.asChecked.corners,
    designerBowPercent: percent(shape.bowMm / shape.sideMm),
    designerAngleOffDeg: tenths(shape.cornerAngleDeg - (180 - 360 / key.corners)),
    designerVerdict: shape.judged.verdict,
  }
}

/** Units of the circle's last round with something worked into them by the first added round. */
function heldShare(base: Motif, { motif, from }: Proposal): number {
  const { name, units } = fabricOf(base)
  const last = base.rounds.at(-1)!
  const spaces = last.elements.flatMap(({ type }, e) => (type === "chain" ? [[e]] : []))
  const wanted =
    name === "shells"
      ? units.map(({ element }) => fanAround(base, element))
      : name === "solid"
        ? spaces
        : units.map(({ element }) => [element])
  if (wanted.length === 0) return 1
  const held = new Set<number>()
  for (const element of motif.rounds[from]!.elements)
    if (element.type === "stitch")
      for (const anchor of element.anchors)
        if (anchor.at !== "centre" && anchor.round === from - 1) held.add(anchor.element)
  return wanted.filter((places) => places.some((place) => held.has(place))).length / wanted.length
}

/** Elements of the fan that an element belongs to. */
function fanAround({ rounds }: Motif, element: number): number[] {
  const { elements } = rounds.at(-1)!
  const anchorOf = (e: number) => {
    const one = elements[e]!
    return one.type === "stitch" ? JSON.stringify(one.anchors) : ""
  }
  const n = elements.length
  const fan = [element]
  for (const way of [1, -1]) {
    let e = (element + way + n) % n
    while (e !== element && anchorOf(e) === anchorOf(element)) {
      fan.push(e)
      e = (e + way + n) % n
    }
  }
  return fan
}

function hasSideChains({ motif, cornerElements }: Proposal): boolean {
  const corner = new Set(cornerElements.flat())
  return motif.rounds.at(-1)!.elements.some(({ type }, e) => type === "chain" && !corner.has(e))
}

function hasCornerChains({ motif, cornerElements }: Proposal): boolean {
  const { elements } = motif.rounds.at(-1)!
  return cornerElements.every((corner) => corner.some((e) => elements[e]!.type === "chain"))
}

function straightWithoutTr(base: Motif, options: { corners: number; rounds: number }): boolean {
  const stitches = readStitchList("sc, hdc, dc")
  const [first] =
    tried(() => squareCircle(base, gauge, { ...options, stitches, proposals: 1 })) ?? []
  return (
    first !== undefined &&
    first.fabric === fabricOf(base).name &&
    first.motif.rounds.length === base.rounds.length + options.rounds &&
    Math.abs(first.shape.bowMm / first.shape.sideMm) < squaringTarget.bow
  )
}

const heights = ["sl st", "sc", "hdc", "dc", "tr", "dtr", "trtr"]

/** Whether heights only rise or only fall from the middle of each side to its corner, in every added round. */
function isMonotone({ motif, from, shape, corners }: Proposal): boolean {
  const { net, xy, tipAngles } = shape
  const mean = (nodes: readonly number[], k: 0 | 1) =>
    nodes.reduce((sum, node) => sum + xy[2 * node + k]!, 0) / nodes.length
  const [cx, cy] = [mean(net.centre, 0), mean(net.centre, 1)]
  const share = (2 * Math.PI) / corners
  const first = Math.min(...tipAngles)
  return motif.rounds.slice(from).every((round, r) => {
    const halves = new Map<number, { off: number; height: number }[]>()
    const edge = net.edges[from + r]!
    edge.nodes.forEach((node, i) => {
      const element = round.elements[edge.elements[i]!]!
      if (element.type !== "stitch") return
      const angle = Math.atan2(xy[2 * node + 1]! - cy, xy[2 * node]! - cx) - first
      const turned = ((angle % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI)
      const half = Math.floor((2 * turned) / share)
      const within = turned - (half * share) / 2
      const off = half % 2 === 0 ? share / 2 - within : within
      const own = halves.get(half) ?? []
      own.push({ off, height: heights.indexOf(element.kind.basic) })
      halves.set(half, own)
    })
    return [...halves.values()].every((half) => {
      const row = half.sort((a, b) => a.off - b.off).map(({ height }) => height)
      const rises = row.every((height, i) => i === 0 || height >= row[i - 1]!)
      return rises || row.every((height, i) => i === 0 || height <= row[i - 1]!)
    })
  })
}

function readsBack(base: Motif, key: SquaringKey, lines: readonly string[], made: Motif): boolean {
  const again = readPattern(`Terms: US\n\n${key.base}\n${lines.join("\n")}\n`)
  return (
    again.motif.rounds.length === made.rounds.length &&
    made.rounds.slice(base.rounds.length).every((round, i) => {
      const own = countRound(round)
      const other = countRound(again.motif.rounds[base.rounds.length + i]!)
      return own.stitches === other.stitches && own.chains === other.chains
    })
  )
}

function haveRoundInCommon(found: readonly Proposal[]): boolean {
  const seen = new Set<string>()
  return found.some(({ motif, from }) =>
    writeRounds(withStarts(motif, from), from)
      .map((line) => line.replace(/^Rnd \d+:/, ""))
      .some((line) => seen.size === seen.add(line).size),
  )
}

function tried<T>(work: () => T): T | null {
  try {
    return work()
  } catch (error) {
    if (error instanceof RoundwrightError) return null
    throw error
  }
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b)
  const middle = sorted.length >> 1
  if (sorted.length === 0) return 0
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2
}
