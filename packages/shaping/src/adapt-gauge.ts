// Another yarn or hook than the pattern's: which way the piece goes, and how much to correct.
//
// Size goes with the width of a stitch, flatness only with height over width: scaling both alike changes nothing
// but the size. So the two gauges are compared stitch by stitch, the piece is judged in both, and the
// correction is sought where the difference is: rounds for size, increases for flatness, hook for neither
// where it cannot be the cause.

import {
  keepLedger,
  type Ledger,
  type LedgerRow,
  planBand,
  type Verdict,
} from "@roundwright/flatness"
import { countRound, kindKey, type Motif } from "@roundwright/motif"
import {
  type Gauge,
  hookExponent,
  kindName,
  nearestHook,
  type StitchKind,
  sizeOf,
  type Terms,
} from "@roundwright/stitches"

export interface StitchShift {
  readonly stitch: string
  /** Mine over the pattern's. */
  readonly width: number
  readonly height: number
  /** Height over width, mine over the pattern's: above 1 asks for more increases. */
  readonly ratio: number
}

export interface Adaptation {
  readonly shifts: readonly StitchShift[]
  readonly verdictThere: Verdict
  readonly verdictHere: Verdict
  /** Side to side; null where either gauge knows no mm. */
  readonly acrossThereMm: number | null
  readonly acrossHereMm: number | null
  /** Size here over size there; null as above. */
  readonly sizeFactor: number | null
  /** Accumulated fullness of the last round in either gauge: below 1 lean, above 1 full. */
  readonly fullnessThere: number
  readonly fullnessHere: number
  /** Stitches to add to (or leave out of) the last round to come as near to flat as the pattern did. */
  readonly stitchesMore: number
  /** Rounds more (or fewer) of the last stitch to reach the pattern's size; null where sizes are unknown. */
  readonly roundsMore: number | null
  /** Hook that would give the pattern's size on my yarn, mm; null where unknown or out of reach. */
  readonly hookMm: number | null
  /** What to do, in sentences, most telling first. */
  readonly advice: readonly string[]
}

/** Sizes off by less than this are matched by the hand of the day. */
const sameSize = 0.03
/** A hook changes size by a power of its thickness, about the root; beyond this another yarn is the answer, not another hook. */
const hookCanMend = 0.2

/** @param terms in which stitches are named in what is said; US when absent */
export function adaptGauge(
  patternGauge: Gauge,
  myGauge: Gauge,
  motif: Motif,
  terms: Terms = "US",
): Adaptation {
  const there = keepLedger(motif, patternGauge)
  const here = keepLedger(motif, myGauge)
  const known = patternGauge.absolute && myGauge.absolute
  const [lastThere, lastHere] = [there.rows.at(-1)!, here.rows.at(-1)!]
  const acrossThereMm = known ? acrossOf(lastThere) : null
  const acrossHereMm = known ? acrossOf(lastHere) : null
  const sizeFactor = known ? acrossHereMm! / acrossThereMm! : null
  const main = mainKind(motif)
  const own = sizeOf(main, myGauge, { turned: motif.rounds.at(-1)!.turned })
  const missingMm =
    lastHere.edgeMm * (lastThere.accumulatedFullness / lastHere.accumulatedFullness - 1)
  const stitchesMore = Math.round(missingMm / own.widthMm)
  const roundsMore = known ? Math.round((acrossThereMm! - acrossHereMm!) / 2 / own.heightMm) : null
  const hookMm = sizeFactor === null ? null : hookFor(myGauge, sizeFactor)
  const adaptation = {
    shifts: shiftsOf(motif, patternGauge, myGauge, terms),
    verdictThere: there.verdict,
    verdictHere: here.verdict,
    acrossThereMm,
    acrossHereMm,
    sizeFactor,
    fullnessThere: lastThere.accumulatedFullness,
    fullnessHere: lastHere.accumulatedFullness,
    stitchesMore:
      Math.abs(stitchesMore) * own.widthMm > planBand * lastHere.edgeMm ? stitchesMore : 0,
    roundsMore,
    hookMm,
  }
  return { ...adaptation, advice: adviceOn(adaptation, there, here, kindName(main, terms)) }
}

/** Side to side, or side to corner where the corners are odd in number. */
function acrossOf(row: LedgerRow): number {
  return row.outline.corners % 2 === 1 ? row.radiusMm + row.cornerReachMm : 2 * row.radiusMm
}

function mainKind(motif: Motif): StitchKind {
  const { byKind } = countRound(motif.rounds.at(-1)!)
  return byKind.reduce((best, entry) => (entry.count > best.count ? entry : best), byKind[0]!).kind
}

function shiftsOf(motif: Motif, there: Gauge, here: Gauge, terms: Terms): StitchShift[] {
  const seen = new Map<string, StitchShift>()
  for (const round of motif.rounds)
    for (const { kind } of countRound(round).byKind) {
      if (seen.has(kindKey(kind))) continue
      const [a, b] = [there, here].map((gauge) => sizeOf(kind, gauge, { turned: round.turned }))
      const width = b!.widthMm / a!.widthMm
      const height = b!.heightMm / a!.heightMm
      seen.set(kindKey(kind), {
        stitch: kindName(kind, terms),
        width,
        height,
        ratio: height / width,
      })
    }
  return [...seen.values()]
}

/** On one yarn width goes with a power of the hook (hook-law.ts); only where the hook can reach. */
function hookFor(mine: Gauge, sizeFactor: number): number | null {
  const own = mine.input.hookMm
  if (own === undefined || Math.abs(sizeFactor - 1) <= sameSize) return null
  if (Math.abs(sizeFactor - 1) > hookCanMend) return null
  return nearestHook(own * sizeFactor ** (-1 / hookExponent(mine.input))).mm
}

function adviceOn(
  found: Omit<Adaptation, "advice">,
  there: Ledger,
  here: Ledger,
  main: string,
): string[] {
  const advice: string[] = []
  const percent = (share: number) => `${Math.round(100 * Math.abs(share))} %`
  if (found.sizeFactor !== null) {
    const off = found.sizeFactor - 1
    if (Math.abs(off) <= sameSize) advice.push("The size comes out the same.")
    else {
      const way = off > 0 ? "larger" : "smaller"
      const rounds =
        found.roundsMore === 0 || found.roundsMore === null
          ? ""
          : `; ${Math.abs(found.roundsMore)} ${found.roundsMore > 0 ? "more" : "fewer"} round${Math.abs(found.roundsMore) === 1 ? "" : "s"} of ${main} would bring it to the pattern's size`
      advice.push(`It comes out ${percent(off)} ${way}${rounds}.`)
      if (found.hookMm !== null)
        advice.push(`A hook of about ${found.hookMm} mm would bring the same rounds to size.`)
      else if (Math.abs(off) > hookCanMend)
        advice.push(
          "That is too far off for another hook: the yarn is another weight, or the terms are.",
        )
    }
  } else
    advice.push("Sizes cannot be compared: one of the gauges gives no length, only proportions.")
  const change = found.fullnessHere / found.fullnessThere - 1
  if (found.stitchesMore === 0)
    advice.push(`Flatness hardly changes (${percent(change)}): the counts can stay as they are.`)
  else
    advice.push(
      `Your stitches are ${change < 0 ? "taller" : "shorter"} for their width, so the last round ${change < 0 ? "wants" : "has"} about ${Math.abs(found.stitchesMore)} stitches ${change < 0 ? "more" : "too many"}: spread that over the rounds as ${change < 0 ? "more" : "fewer"} increases.`,
    )
  if (there.verdict !== here.verdict)
    advice.push(
      `In the pattern's gauge the piece ${wordFor(there.verdict)}; in yours it ${wordFor(here.verdict)}.`,
    )
  return advice
}

function wordFor(verdict: Verdict): string {
  return verdict === "flat" ? "lies flat" : verdict === "blocks-flat" ? "blocks flat" : verdict
}
