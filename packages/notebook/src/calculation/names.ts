// The names a calculation may use for what is known of a pattern.
//
// Of the piece: rounds, corners, repeats, verdict, from_round, across, side_reach, corner_reach,
// chance_flat, chance_blocks_flat, chance_cups, chance_ruffles, sc_width, remedies, and the bounds
// flat_least and flat_most of fullness that count as flat.
// Of a round n (or `last`): stitches_n, chains_n, spaces_n, stated_n, edge_n, gathered_edge_n,
// depth_n, radius_n, corner_n, growth_n, flat_growth_n, fullness_n, accumulated_n, curvature_n,
// slack_n, verdict_n. Of a remedy n: remedy_n_round, remedy_n_fullness.
// Of the laid-out shape: lift, waves, bow, corner_angle, skew, blocking_stretch, across_after_n. Using one of
// these has the piece laid out; until it is, they are still to come.
// Lengths carry mm, or scwidth where no gauge is known; angles carry deg.

import { type CheckResult, type LaidOut, verdictWord } from "@roundwright/assessment"
import { bands, type LedgerRow } from "@roundwright/flatness"

/** A figure with the unit it is in; `text` is for words such as the verdict; `wanted` is not known yet. */
export type Figure =
  | { readonly number: number; readonly unit?: "mm" | "scwidth" | "deg" }
  | { readonly text: string }
  | Wanted

/** A figure still to come. `pattern` has to be laid out for it; null when it comes of something else. */
export interface Wanted {
  readonly wanted: { readonly pattern: string | null }
}

/** Rounds past this have no names of their own; the table of the ledger shows them. */
const mostNamedRounds = 500

/**
 * Every name of one checked pattern. What the pattern has no value for is left out.
 * @param unlaid the pattern's name while it can still be laid out: figures of its shape are then to come
 * @param isLaid false before it was laid out; what to change is looked for only then
 */
export function namesOf(
  result: CheckResult,
  unlaid?: string,
  isLaid = true,
): ReadonlyMap<string, Figure> {
  const names = new Map<string, Figure>()
  const length = result.gauge.absolute ? "mm" : "scwidth"
  const put = (name: string, value: number | null | undefined, unit?: "mm" | "scwidth" | "deg") => {
    if (typeof value === "number" && Number.isFinite(value))
      names.set(name, unit ? { number: value, unit } : { number: value })
  }
  putPiece(result, put)
  if (result.laidOut?.by === "net") putShape(result.laidOut, put)
  else if (unlaid !== undefined && result.laidOut)
    for (const name of [...shapeNames, ...result.laidOut.acrossAfterRoundMm.map(afterRound)])
      names.set(name, { wanted: { pattern: unlaid } })
  if (!isLaid && unlaid !== undefined && result.laidOut)
    for (const name of remedyNames) names.set(name, { wanted: { pattern: unlaid } })
  if (result.laidOut) names.set("verdict", { text: verdictWord(result.laidOut.verdict) })
  const rows = new Map(result.ledger.map((row) => [row.round, row]))
  const lastRow = result.ledger.at(-1)
  for (const round of result.rounds.slice(0, mostNamedRounds)) {
    const row = rows.get(round.round)
    const suffixes = row !== undefined && row === lastRow ? [round.round, "last"] : [round.round]
    for (const suffix of suffixes) {
      put(`stitches_${suffix}`, round.counted?.stitches)
      put(`chains_${suffix}`, round.counted?.chains)
      put(`spaces_${suffix}`, round.counted?.spaces)
      put(`stated_${suffix}`, round.stated)
      if (!row) continue
      for (const [name, value, isLength] of figuresOf(row))
        put(`${name}_${suffix}`, value, isLength ? length : undefined)
      put(`curvature_${suffix}`, row.curvatureDeg, "deg")
      names.set(`verdict_${suffix}`, { text: verdictWord(row.verdict) })
    }
  }
  return names
}

type Put = (name: string, value: number | null | undefined, unit?: "mm" | "scwidth" | "deg") => void

function putPiece(result: CheckResult, put: Put): void {
  put("rounds", result.motif?.rounds)
  put("corners", result.motif?.corners)
  put("repeats", result.motif?.symmetry)
  put("remedies", result.remedies.length)
  put("flat_least", 1 - bands.flat)
  put("flat_most", 1 + bands.flat)
  const width = result.gauge.scWidthMm
  if (typeof width === "number") put("sc_width", width, "mm")
  result.remedies.slice(0, 20).forEach((remedy, index) => {
    put(`remedy_${index + 1}_round`, remedy.round)
    put(`remedy_${index + 1}_fullness`, remedy.fullnessAfter)
  })
  const laid = result.laidOut
  if (!laid) return
  put("from_round", laid.fromRound)
  put("across", laid.acrossMm, "mm")
  put("side_reach", laid.sideReachMm, "mm")
  put("corner_reach", laid.cornerReachMm, "mm")
  put("chance_flat", laid.odds.flat)
  put("chance_blocks_flat", laid.odds.blocksFlat)
  put("chance_cups", laid.odds.cups)
  put("chance_ruffles", laid.odds.ruffles)
}

/** As many remedies as are ever told. */
const mostRemedies = 6

const remedyNames = [
  "remedies",
  ...Array.from({ length: mostRemedies }, (_, index) => index + 1).flatMap((one) => [
    `remedy_${one}_round`,
    `remedy_${one}_fullness`,
  ]),
]

const shapeNames = ["lift", "waves", "bow", "corner_angle", "skew", "blocking_stretch"]

function afterRound(_: unknown, index: number): string {
  return `across_after_${index + 1}`
}

function putShape(laid: LaidOut, put: Put): void {
  put("lift", laid.liftMm, "mm")
  put("waves", laid.waves)
  put("bow", laid.bowMm, "mm")
  put("corner_angle", laid.cornerAngleDeg, "deg")
  put("skew", laid.skewDeg, "deg")
  put("blocking_stretch", laid.blockingStretch)
  laid.acrossAfterRoundMm.slice(0, mostNamedRounds).forEach((across, index) => {
    put(afterRound(across, index), across, "mm")
  })
}

function figuresOf(row: LedgerRow): [name: string, value: number, isLength: boolean][] {
  return [
    ["edge", row.edgeMm, true],
    ["gathered_edge", row.gatheredEdgeMm, true],
    ["depth", row.depthMm, true],
    ["radius", row.radiusMm, true],
    ["corner", row.cornerReachMm, true],
    ["growth", row.growthMm, true],
    ["flat_growth", row.flatGrowthMm, true],
    ["slack", row.slackMm, true],
    ["fullness", row.fullness, false],
    ["accumulated", row.accumulatedFullness, false],
  ]
}
