// Remedies tried on pieces broken on purpose: flat discs and polygons with one count changed, the later counts kept
// or carried along; is the true correction among the first three?

import { keepLedger } from "@roundwright/flatness"
import { commonDivisor, countRound, type Motif } from "@roundwright/motif"
import { seededRandom } from "@roundwright/numerics"
import { changeCount, findMends, planCircle, spreadRound } from "@roundwright/shaping"
import { gaugeFrom, type StitchKind } from "@roundwright/stitches"

export interface MendTrial {
  readonly name: string
  /** Printed number of the broken round, its true count and the broken one. */
  readonly round: number
  readonly right: number
  readonly broken: number
  readonly carried: boolean
  /** Place of the true correction among the remedies, from 1; null when it is not there. */
  readonly place: number | null
  readonly proposed: readonly string[]
}

const gauge = gaugeFrom({ swatches: [] })
const kinds: readonly StitchKind[] = [{ basic: "sc" }, { basic: "hdc" }, { basic: "dc" }]

/** Breaks and mends `many` pieces; the same seed gives the same pieces. */
export function mendTrials(many: number, seed: number): MendTrial[] {
  const source = seededRandom(seed)
  const random = () => source.uniform()
  const whole = (low: number, high: number) => low + Math.floor(random() * (high - low + 1))
  const trials: MendTrial[] = []
  while (trials.length < many) {
    const kind = kinds[whole(0, kinds.length - 1)]!
    const corners = random() < 0.3 ? [4, 6][whole(0, 1)]! : 0
    const plan = planCircle({
      stitches: [kind],
      gauge,
      rounds: whole(5, 9),
      corners,
      cornerStyle: "stitches",
    })
    // Only a piece that lies flat in every round has a true count to go back to.
    if (isOff(plan.motif)) continue
    const round = whole(1, plan.counts.length - 2)
    const step = corners > 0 ? 2 * corners : plan.repeats
    const by = (random() < 0.5 ? -1 : 1) * step * whole(1, corners > 0 ? 1 : 2)
    const carried = random() < 0.5
    const broken = breakCount(plan.motif, kind, round, by, carried, corners)
    if (broken === null || !isOff(broken)) continue
    trials.push(tryMend(broken, plan.motif, round, carried, `${kind.basic} ${corners || "disc"}`))
  }
  return trials
}

/** Discs are spread anew from their counts; polygons have their corner groups changed. */
function breakCount(
  motif: Motif,
  kind: StitchKind,
  round: number,
  by: number,
  carried: boolean,
  corners: number,
): Motif | null {
  const counts = countsOf(motif)
  if (counts[round]! + by < counts[round - 1]!) return null
  if (corners > 0) {
    const following = changeCount(motif, round, by)
    return carried || following === null ? following : changeCount(following, round + 1, -by)
  }
  const wanted = counts.map((count, r) =>
    r === round || (carried && r > round) ? count + by : count,
  )
  if (wanted.some((count, r) => r > 0 && count < wanted[r - 1]!)) return null
  let made: Motif = { centre: motif.centre, rounds: [] }
  wanted.forEach((count, r) => {
    const repeats = r === 0 ? 1 : commonDivisor(count, wanted[r - 1]!)
    made = {
      ...made,
      rounds: [...made.rounds, spreadRound(made, kind, count, repeats, "staggered")],
    }
  })
  return made
}

function isOff(motif: Motif): boolean {
  return keepLedger(motif, gauge)
    .rows.slice(1)
    .some((row) => row.verdict !== "flat")
}

function tryMend(
  broken: Motif,
  right: Motif,
  round: number,
  carried: boolean,
  name: string,
): MendTrial {
  const wanted = countsOf(right)
  const mends = findMends(broken, gauge)
  const found = mends.findIndex(({ motif }) => {
    const counts = motif ? countsOf(motif) : []
    return counts.length === wanted.length && counts.every((count, r) => count === wanted[r])
  })
  return {
    name,
    round: round + 1,
    right: wanted[round]!,
    broken: countsOf(broken)[round]!,
    carried,
    place: found < 0 ? null : found + 1,
    proposed: mends.map(({ change }) => change),
  }
}

function countsOf(motif: Motif): number[] {
  return motif.rounds.map((round) => countRound(round).stitches)
}
