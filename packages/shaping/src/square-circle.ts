// From any last round to a polygon with straight sides: ideas are searched one after the other, the laid-out shape decides
// within each, and what is shown differs in kind.

import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { firstWithout } from "./different.ts"
import { ideasFor } from "./ideas.ts"
import { paletteOf, usualStitches } from "./palette.ts"
import type { SearchCount } from "./plan-score.ts"
import type { Proposal } from "./proposal.ts"
import { settleInSpace } from "./settle-in-space.ts"
import { checkOptions, type SquareOptions } from "./square-options.ts"

const usualProposals = 5

/**
 * Proposals for added rounds that turn the motif's last round into a polygon: the best in the piece's own fabric first.
 * @throws RoundwrightError `bad-corners`, `bad-rounds`, `no-stitches`, `slip-stitch`, `no-rounds`, `too-few-places`,
 *   `too-many-places`, `nothing-fits`
 */
export function squareCircle(
  motif: Motif,
  gauge: Gauge,
  options: SquareOptions,
  count: SearchCount = { bounded: 0 },
): Proposal[] {
  checkOptions(options)
  if (motif.rounds.length === 0)
    throw new RoundwrightError("no-rounds", "The motif has no round to start from.", {
      hint: "Give at least one round.",
    })
  const { lastStraightRound: last, terms = "US", proposals: wanted = usualProposals } = options
  const allowed = options.stitches ?? usualStitches
  const palette = paletteOf(last ? [...allowed, last] : allowed, gauge, terms)
  const chosen: Proposal[] = []
  const rest: Proposal[] = []
  let refused: unknown = null
  for (const idea of ideasFor(motif, gauge, options, palette, allowed, count)) {
    if (chosen.length >= wanted) break
    try {
      const found = idea.find()
      const own = firstWithout(found, chosen)
      if (own !== null) chosen.push(own)
      rest.push(...found.filter((one) => one !== own))
    } catch (error) {
      if (!(error instanceof RoundwrightError)) throw error
      refused ??= error
    }
  }
  while (chosen.length < wanted) {
    const next = firstWithout(rest, chosen)
    if (next === null) break
    chosen.push(next)
  }
  if (chosen.length === 0) {
    if (refused !== null) throw refused
    throw new RoundwrightError("nothing-fits", "No round of these stitches and corners fits.", {
      hint: "Allow more stitches, another corner style or more rounds.",
      numbers: { corners: options.corners, rounds: options.rounds },
    })
  }
  return settleInSpace(chosen, gauge, options.judgeAllInSpace ?? false)
}
