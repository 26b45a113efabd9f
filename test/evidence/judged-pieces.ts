// The judge against pieces of known behaviour, set by set: the panel, published pieces made to lie flat, reported outcomes, and
// the batches of outcomes gathered afresh, whose first looks stand as they were. Which sets fitted a constant is told.

import { readFileSync } from "node:fs"
import { examinePattern } from "@roundwright/assessment"
import { keepLedger, type Odds, type Verdict } from "@roundwright/flatness"
import { countRound, type Motif } from "@roundwright/motif"
import { unlessRefused } from "@roundwright/numerics"
import { layOut } from "@roundwright/relaxation"
import { caseText, countsText, loadCases } from "./cases.ts"

/** Sets whose pieces the bands and odds were fitted on; they guard, and prove nothing. */
export const fittedSets: ReadonlySet<string> = new Set(["measured-motifs", "flatness-outcomes"])

/** Not made to lie flat, or no whole piece: hats, mops, ruffled flowers, first rounds of something larger. */
export const leftOut: ReadonlySet<string> = new Set([
  "boutonniere-dish-mop",
  "beeton-242-dahlia-circle",
  "journal-gazette-beanie",
  "beret-12dc-worsted-size",
  "amber-waves-start",
  "sunshine-coaster-start",
  "octagon-medallion-start",
])

/** Chains in a piece from which on it is lace, as a share of stitches and chains. */
const laceShare = 0.2

export interface JudgedPiece {
  readonly id: string
  readonly set: string
  readonly lace: boolean
  /** Verdicts that agree with the makers, the first their own word. */
  readonly accept: readonly string[]
  readonly verdict: Verdict | null
  readonly odds: Odds | null
  readonly fullness: number | null
}

export interface Batch {
  readonly batch: string
  readonly firstLook: { readonly n: number; readonly agree: number; readonly opposite: number }
  readonly cases: readonly BatchCase[]
}

interface BatchCase {
  readonly id: string
  readonly accept: readonly string[]
  readonly roundsJudged: number
  readonly pattern: string
  readonly firstLook: string
}

export function loadBatches(): readonly Batch[] {
  return read<{ batches: Batch[] }>("outcome-batches").batches
}

/** Every piece of every set, judged as a check judges it. */
export function judgePieces(): JudgedPiece[] {
  const panel = read<{ id: string; makers_say: string; pattern: string }[]>("flatness-panel")
  return [
    ...panel.flatMap(({ id, makers_say, pattern }) => judge(id, "panel", pattern, [makers_say])),
    ...(["measured-motifs", "handbook-motifs"] as const).flatMap((set) =>
      loadCases(set).flatMap((one) =>
        leftOut.has(one.id) ? [] : judge(one.id, set, caseText(one), ["flat"]),
      ),
    ),
    ...loadCases("flatness-outcomes").flatMap((one) => {
      if (one.accept === undefined) return []
      const read = examinePattern(caseText(one)).reading.motif.rounds.length
      const summed = one.counts !== undefined && read < one.counts.length
      return judge(
        one.id,
        "flatness-outcomes",
        summed ? countsText(one) : caseText(one),
        one.accept,
      )
    }),
    ...loadBatches().flatMap(({ batch, cases }) =>
      cases.flatMap(({ id, pattern, accept, roundsJudged }) =>
        judge(id, batch, pattern, accept, roundsJudged),
      ),
    ),
  ]
}

/** Nothing for a published piece that does not read whole, every round worked from its words. */
function judge(
  id: string,
  set: string,
  text: string,
  accept: readonly string[],
  upTo = Number.POSITIVE_INFINITY,
): JudgedPiece[] {
  const { reading, gauge } = examinePattern(text)
  const published = set === "measured-motifs" || set === "handbook-motifs"
  const whole = reading.motif.rounds.length === reading.rounds.length
  if (published && (!whole || reading.rounds.some(({ assumed }) => assumed))) return []
  const rounds = reading.motif.rounds.filter(({ number }) => number <= upTo)
  const motif = { ...reading.motif, rounds }
  const found =
    gauge === null || rounds.length === 0
      ? null
      : unlessRefused(
          () => layOut(motif, gauge, { inSpace: false }),
          () => keepLedger(motif, gauge),
        )
  return [
    {
      id,
      set,
      lace: chainShare(motif) > laceShare,
      accept,
      verdict: found?.verdict ?? null,
      odds: found?.odds ?? null,
      fullness: found?.fullness ?? null,
    },
  ]
}

function chainShare({ rounds }: Motif): number {
  let [chains, all] = [0, 0]
  for (const round of rounds) {
    const count = countRound(round)
    chains += count.chains
    all += count.chains + count.stitches
  }
  return all > 0 ? chains / all : 0
}

export function isOpposite({ verdict, accept }: JudgedPiece): boolean {
  const against = verdict === "cups" ? "ruffles" : verdict === "ruffles" ? "cups" : null
  return against !== null && !accept.includes(verdict!) && accept.includes(against)
}

export interface Bin {
  readonly from: number
  readonly n: number
  readonly told: number
  readonly seen: number
}

/** Odds of lying flat against what makers call flat, in tenths of the odds put together to five bins; and the Brier score. */
export function reliabilityOf(pieces: readonly JudgedPiece[]): {
  bins: Bin[]
  brier: number
  base: number
} {
  const known = pieces.flatMap(({ odds, accept }) =>
    odds === null ? [] : [{ p: odds.flat, y: accept[0] === "flat" ? 1 : 0 }],
  )
  const mean = (of: readonly number[]) => of.reduce((sum, one) => sum + one, 0) / of.length
  const bins = [0, 0.2, 0.4, 0.6, 0.8].flatMap((from): Bin[] => {
    const own = known.filter(({ p }) => p >= from && (p < from + 0.2 || from === 0.8))
    if (own.length === 0) return []
    return [
      { from, n: own.length, told: mean(own.map(({ p }) => p)), seen: mean(own.map(({ y }) => y)) },
    ]
  })
  const rate = mean(known.map(({ y }) => y))
  return { bins, brier: mean(known.map(({ p, y }) => (p - y) ** 2)), base: rate * (1 - rate) }
}

function read<T>(name: string): T {
  return JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), "utf8"))
}
