// Slips put on purpose into sound squares, hexagons and lace of the data sets, one of a kind at a time: a count, the
// length of chains, a group, the stitch of a round, the terms of the whole pattern. Is the true correction among the
// mends, and at which place? And is nothing offered for the pieces as they are?

import { examinePattern } from "@roundwright/assessment"
import { keepLedger } from "@roundwright/flatness"
import { readPattern, withStarts } from "@roundwright/instructions"
import { countRound, findCorners, kindKey, type Motif, repeatsOf } from "@roundwright/motif"
import { type RandomSource, seededRandom } from "@roundwright/numerics"
import {
  applyToMotif,
  changeCount,
  findMends,
  groupSizes,
  planCircle,
  solidFrom,
} from "@roundwright/shaping"
import { type Gauge, gaugeFrom, type StitchKind } from "@roundwright/stitches"
import { caseText, loadCases } from "./cases.ts"
import { leftOut } from "./judged-pieces.ts"

export const breakKinds = ["counts", "chains", "groups", "heights", "terms"] as const
export type BreakKind = (typeof breakKinds)[number]

export interface Broken {
  readonly id: string
  readonly kind: BreakKind
  readonly what: string
  /** Place of the true correction among the mends, from 1; null when it is not there. */
  readonly place: number | null
  readonly proposed: readonly string[]
}

interface Sound {
  readonly id: string
  readonly motif: Motif
  readonly gauge: Gauge
  readonly text: string
}

/** Share of chains from which on a piece is lace. */
const laceShare = 0.2
/** Fewer rounds have no pattern to keep to. */
const fewestRounds = 4
/** Of a case: makers reported it not to lie flat, or its text is read without being sure of a count. */
const unsound = /ruffl|cup|curl|wav/i

/** Pieces of the data sets that are read without a warning and that nobody calls unsound. */
export function soundPieces(): Sound[] {
  return (["handbook-motifs", "measured-motifs"] as const).flatMap((name) =>
    loadCases(name).flatMap((one): Sound[] => {
      const text = caseText(one)
      const { motif, problems, gauge } = readPattern(text)
      const doubted = problems.some(({ severity }) => severity !== "note")
      if (
        motif.rounds.length < fewestRounds ||
        doubted ||
        leftOut.has(one.id) ||
        unsound.test(one.reported?.flatness ?? "")
      )
        return []
      return [{ id: one.id, motif, gauge: gaugeFrom(gauge), text }]
    }),
  )
}

/** Squares and hexagons as they are planned, in three stitches. */
function planned(): Sound[] {
  const gauge = gaugeFrom({ swatches: [] })
  return ([4, 6] as const).flatMap((corners) =>
    (["sc", "hdc", "dc"] as const).map((basic) => ({
      id: `${basic} with ${corners} corners`,
      motif: withStarts(planCircle({ stitches: [{ basic }], gauge, rounds: 7, corners }).motif),
      gauge,
      text: "",
    })),
  )
}

/** Pieces to break: squares, hexagons and lace that the ledger calls flat. */
export function breakable(pieces: readonly Sound[]): Sound[] {
  return [...pieces, ...planned()].filter(({ motif, gauge }) => {
    const corners = findCorners(motif).at(-1)!.count
    let [chains, all] = [0, 0]
    for (const round of motif.rounds) {
      const counted = countRound(round)
      chains += counted.chains
      all += counted.chains + counted.stitches
    }
    const wanted = corners === 4 || corners === 6 || chains / all > laceShare
    return wanted && keepLedger(motif, gauge).verdict === "flat"
  })
}

/** Breaks of one kind in the same piece. */
const mostOfOne = 4

/** A piece with one slip in it. */
export interface BrokenPiece {
  readonly id: string
  readonly kind: BreakKind
  readonly what: string
  readonly motif: Motif
  readonly gauge: Gauge
  /** What the right piece holds, as `keyOf` tells it. */
  readonly wanted: string
}

/** Breaks `each` pieces of every kind; the same seed gives the same breaks. */
export function brokenPieces(each: number, seed: number): BrokenPiece[] {
  const pieces = breakable(soundPieces())
  const random = seededRandom(seed)
  return breakKinds.flatMap((kind) => {
    const found: BrokenPiece[] = []
    const tried = new Set<string>()
    for (let tries = 0; found.length < each && tries < 200 * each; tries++) {
      const { id, motif, gauge } = pick(random, pieces)
      const broken = breakOne(kind, motif, random)
      const wanted = keyOf(motif)
      if (!broken || keyOf(broken.motif) === wanted) continue
      const name = `${id} ${broken.what}`
      if (tried.has(name) || found.filter((one) => one.id === id).length >= mostOfOne) continue
      tried.add(name)
      // A slip that shows: where the piece still lies flat there is nothing to mend.
      if (keepLedger(broken.motif, gauge).verdict === "flat") continue
      found.push({ id, kind, ...broken, gauge, wanted })
    }
    return found
  })
}

/** The place of the true correction among the mends of every broken piece. */
export function breakTrials(each: number, seed: number): Broken[] {
  return brokenPieces(each, seed).map(({ id, kind, what, motif, gauge, wanted }) => {
    const mends = findMends(motif, gauge)
    const at = mends.findIndex((mend) => mend.motif !== null && keyOf(mend.motif) === wanted)
    const proposed = mends.map(({ change }) => change)
    return { id, kind, what, place: at < 0 ? null : at + 1, proposed }
  })
}

function pick<T>(random: RandomSource, list: readonly T[]): T {
  return list[Math.min(list.length - 1, Math.floor(random.uniform() * list.length))]!
}

function breakOne(
  kind: BreakKind,
  motif: Motif,
  random: RandomSource,
): { motif: Motif; what: string } | null {
  const index = 1 + Math.floor(random.uniform() * (motif.rounds.length - 1))
  const round = motif.rounds[index]!
  const sign = random.uniform() < 0.5 ? -1 : 1
  const told = (changed: Motif | null, what: string) =>
    changed && { motif: changed, what: `round ${round.number}: ${what}` }
  switch (kind) {
    case "counts": {
      if (index < solidFrom(motif)) return null
      const k = findCorners(motif)[index]!.count
      const by = sign * (k > 0 ? 2 * k : repeatsOf(motif, index))
      const following = changeCount(motif, index, by)
      const keeps = random.uniform() < 0.5 && index + 1 < motif.rounds.length
      const changed = following && keeps ? changeCount(following, index + 1, -by) : following
      return told(
        changed && valid(changed),
        `${by} stitches${keeps ? ", later ones as they were" : ""}`,
      )
    }
    case "chains": {
      const sizes = countRound(round).spacesBySize.map(({ chains }) => chains)
      if (sizes.length === 0) return null
      const from = pick(random, sizes)
      const to = from + sign * (1 + Math.floor(random.uniform() * 2))
      if (to < 1 || sizes.includes(to)) return null
      return told(
        applyToMotif(motif, index, { kind: "chains", from, to }),
        `ch ${from} as ch ${to}`,
      )
    }
    case "groups": {
      const sizes = [...groupSizes(round).keys()].filter((size) => size > 1)
      if (sizes.length === 0) return null
      const from = pick(random, sizes)
      const to = from + sign
      // Among others of that size what was meant is lost; so it is with chains.
      if (groupSizes(round).has(to)) return null
      return told(applyToMotif(motif, index, { kind: "group", from, to }), `${from} as ${to}`)
    }
    case "heights": {
      const main = countRound(round).byKind.reduce((a, b) => (b.count > a.count ? b : a)).kind
      const ladder: StitchKind["basic"][] = ["sc", "hdc", "dc", "tr", "dtr"]
      const place = ladder.indexOf(main.basic)
      const basic = ladder[place + sign * (1 + Math.floor(random.uniform() * 2))]
      if (place < 0 || !basic || main.gathered) return null
      // Among others of that name what was meant is lost.
      if (countRound(round).byKind.some(({ kind: own }) => own.basic === basic)) return null
      const elements = round.elements.map((element) =>
        element.type === "stitch" && kindKey(element.kind) === kindKey(main)
          ? { ...element, kind: { ...element.kind, basic } }
          : element,
      )
      const rounds = motif.rounds.map((own, i) => (i === index ? { ...own, elements } : own))
      return told({ ...motif, rounds }, `${main.basic} as ${basic}`)
    }
    case "terms": {
      const changed = applyToMotif(motif, 0, { kind: "terms", by: 1 })
      return changed && { motif: changed, what: "UK terms read as US" }
    }
  }
}

function valid(motif: Motif): Motif | null {
  return applyToMotif(motif, 0, { kind: "leave" })
}

/** Equal for pieces of the same stitches and chains in every round. */
export function keyOf(motif: Motif): string {
  return JSON.stringify(
    motif.rounds.map((round) => {
      const { byKind, spacesBySize } = countRound(round)
      const kinds = byKind.map(({ kind, count }) => `${kindKey(kind)} ${count}`).sort()
      return [kinds, spacesBySize]
    }),
  )
}

export interface Offered {
  readonly id: string
  readonly proposed: readonly string[]
}

/** Changes offered for pieces that are sound, as a check with the laid-out shape offers them; to leave or block one is none. */
export function offersForSound(most: number): {
  readonly pieces: number
  readonly offered: readonly Offered[]
} {
  const pieces = soundPieces().slice(0, most)
  const offered = pieces.flatMap(({ id, text }): Offered[] => {
    const { remedies } = examinePattern(text, { shape: "net" }).result
    const changes = remedies
      .map(({ change }) => change)
      .filter((change) => !/^Leave it/.test(change))
    return changes.length === 0 ? [] : [{ id, proposed: changes }]
  })
  return { pieces: pieces.length, offered }
}
