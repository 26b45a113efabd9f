// The size that the pattern claims against the size that its stitches come to: worked out from its gauge, or from yarn
// and hook, with the claimed size left out of the reckoning.

import { examinePattern, formatLength } from "@roundwright/assessment"
import type { Remark } from "./finding.ts"
import { isBorneOut, type Manuscript, withTotalsInBrackets } from "./manuscript.ts"

/**
 * How far a claimed size may be from the computed one before it is asked about, as a factor. With a swatch sizes are
 * met to some 10 %, from yarn and hook alone to some 25 % (the table of evidence); twice that is asked about.
 */
const askedBeyond = { swatch: 1.2, yarn: 1.5 } as const
/** Beyond this, where a swatch is given, no hand, no blocking and no other way of measuring explains it. */
const mendBeyond = 1.5

/** Growth and laid-out shape differ by less than this in size, so that nothing within it can be beyond what is asked about. */
const surelyNear = 1.08

function factor(a: number, b: number): number {
  return Math.max(a / b, b / a)
}

export function claimedSize(manuscript: Manuscript): Remark[] {
  const { reading, text } = manuscript
  const pieces = (reading.gauge.pieces ?? []).filter(
    ({ round, place }) => round === "last" && place,
  )
  const piece = pieces[0]
  if (!piece?.place || reading.motif.rounds.length < reading.rounds.length) return []
  if (reading.rounds.some(({ assumed }) => assumed)) return []
  const { start, end } = piece.place
  const blanked = withTotalsInBrackets(
    text.slice(0, start) + " ".repeat(end - start) + text.slice(end),
  )
  // The growth of the rounds tells a size in milliseconds; only where that is off is the piece laid out.
  const quick = examinePattern(blanked, { remedies: false })
  const across = quick.result.laidOut?.acrossMm
  const near = piece.across === "sides" && across && factor(across, piece.mm) <= surelyNear
  if (near || !quick.gauge?.absolute) return []
  const { result, gauge } = examinePattern(blanked, { shape: "net", remedies: false })
  const laid = result.laidOut
  if (!laid || !gauge?.absolute) return []
  const corner =
    (laid.corners ?? 0) > 0 && (laid.corners ?? 0) % 2 === 0 ? 2 * (laid.cornerReachMm ?? 0) : 0
  const computed = piece.across === "corners" && corner > 0 ? corner : laid.acrossMm
  if (!computed) return []
  const by = gauge.source === "swatch" || gauge.source === "piece" ? "swatch" : "yarn"
  // A claimed diagonal that is not called one is not taken for a wrong side.
  const off = [computed, ...(corner > 0 ? [corner] : [])].map((mm) => factor(mm, piece.mm))
  const least = Math.min(...off)
  if (least <= askedBeyond[by]) return []
  const certain = by === "swatch" && least > mendBeyond && isBorneOut(manuscript, null)
  const from = by === "swatch" ? "at its gauge" : "in its yarn with its hook"
  return [
    {
      severity: certain ? "must-mend" : "query",
      code: "size-impossible",
      round: null,
      start,
      end,
      message: `The finished size is given as ${formatLength(piece.mm)}; worked ${from} the piece comes to about ${formatLength(computed)}${piece.across === "corners" ? " corner to corner" : " across"}.`,
      wording: formatLength(computed),
    },
  ]
}
