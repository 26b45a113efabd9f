// Proposals of a squaring for a person at 80 columns: the best in a sentence, then each with its rounds.

import { formatLength, formatPercent, verdictWord } from "@roundwright/assessment"
import { bands } from "@roundwright/flatness"
import type { PublishedProposal } from "@roundwright/shaping"
import { wrap } from "./wrap.ts"

/**
 * @param toKnow sentences on the whole, printed with what all proposals share
 * @param base what must be said of the circle before anything is added, or null
 */
export function printProposals(
  proposals: readonly PublishedProposal[],
  corners: number,
  toKnow: readonly string[],
  base: string | null = null,
): string[] {
  const best = proposals[0]!
  const first = proposals.length === 1 ? "One proposal" : `The best of ${proposals.length}`
  const lines = [
    ...(base === null ? [] : [wrap(base, 80), ""]),
    wrap(
      `${first}: ${verdictWord(best.verdict)}, ${corners} sides of ${formatLength(best.sideMm)}, ${bowWords(best)}, corners of ${Math.round(best.cornerAngleDeg)}°.`,
      80,
    ),
  ]
  const shared = best.notes.filter((note) => proposals.every(({ notes }) => notes.includes(note)))
  proposals.forEach((proposal, index) => {
    const facts = [
      `sides of ${formatLength(proposal.sideMm)}`,
      bowWords(proposal),
      `corners of ${Math.round(proposal.cornerAngleDeg)}°`,
      `last edge ${fullnessWords(proposal.fullness)}`,
      `worked in ${proposal.stitchKinds.join(", ")}`,
      proposal.price,
    ]
    const head = `${index + 1}. ${proposal.idea}: ${verdictWord(proposal.verdict)}${stretchWords(proposal)}; ${facts.join("; ")}.`
    lines.push("", wrap(head, 80, "", "   "))
    for (const round of proposal.rounds) lines.push(wrap(round, 80, "   ", "     "))
    const own = proposal.notes.filter((note) => !shared.includes(note))
    for (const note of [...proposal.changes, ...own]) lines.push(wrap(note, 80, "   - ", "     "))
  })
  const all = [...toKnow, ...shared]
  if (all.length > 0)
    lines.push("", "To know", ...all.map((note) => wrap(note, 80, "  - ", "    ")))
  return lines
}

/** Straight as far as a ruler tells; else which way the middle of the side departs, and by how much. */
function bowWords({ bowMm, sideMm }: PublishedProposal): string {
  const way = bowMm > 0 ? "outward" : "inward"
  const share = ((100 * Math.abs(bowMm)) / sideMm).toFixed(1)
  return Math.abs(bowMm) < leastBowMm
    ? "straight sides"
    : `sides bowed ${way} by ${Math.abs(bowMm).toFixed(1)} mm (${share}\u00a0%)`
}

/** Below the thickness of a strand nobody sees a bow. */
const leastBowMm = 0.5

function fullnessWords(fullness: number): string {
  const off = fullness - 1
  if (Math.abs(off) < 0.005) return "just long enough"
  const way = off > 0 ? "long" : "short"
  const taken = Math.abs(off) <= bands.flat ? "takes up" : "must be blocked into"
  return `${Math.abs(Math.round(100 * off))}\u00a0% too ${way}, which the yarn ${taken}`
}

/** For a piece that blocks flat: how far pins must stretch it, and where. */
function stretchWords({ verdict, blockingStretch, blockingRound }: PublishedProposal): string {
  if (verdict !== "blocks-flat" || blockingStretch === null || blockingRound === null) return ""
  return ` (a stretch of ${formatPercent(blockingStretch)} in round ${blockingRound})`
}
