// From any last round to a polygon with straight sides: ideas are searched one after the other, the laid-out shape decides
// within each, and what is shown differs in kind.

import { keepLedger } from "@roundwright/flatness"
import type { Motif } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import type { Gauge } from "@roundwright/stitches"
import { firstWithout } from "./different.ts"
import { ideasFor } from "./ideas.ts"
import { inPattern } from "./in-pattern.ts"
import { measureProposal } from "./measure-proposal.ts"
import { paletteOf, usualStitches } from "./palette.ts"
import type { SearchCount } from "./plan-score.ts"
import type { Proposal } from "./proposal.ts"
import { settleInSpace } from "./settle-in-space.ts"
import { checkOptions, type SquareOptions } from "./square-options.ts"
import { type StandIn, standInFor } from "./stand-in.ts"
import { distanceFromTarget } from "./target.ts"

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
  const standIn = standInFor(motif, gauge)
  const chosen: Proposal[] = []
  const rest: Proposal[] = []
  let refused: unknown = null
  for (const idea of ideasFor(
    standIn?.motif ?? motif,
    gauge,
    options,
    palette,
    allowed,
    count,
    standIn?.restore ?? ((worked) => worked),
  )) {
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
  const shown = workable(chosen).slice(0, wanted)
  const whole = standIn === null ? shown : workable(putBack(shown, standIn, motif, gauge))
  return settleInSpace(whole, gauge, options.judgeAllInSpace ?? false)
}

/**
 * Those that are straight, true and flat by their own measure, and what goes on in the piece's own pattern; all where none
 * is.
 */
function workable(proposals: readonly Proposal[]): readonly Proposal[] {
  const good = proposals.filter((one) => one.idea === inPattern || distanceFromTarget(one) <= 1)
  return good.length > 0 ? good : proposals
}

/** Nodes laid out beyond the first proposal's: a second or so. */
const mostNodes = 1_000

/** The proposals on the whole piece; measured on it again as far as that is quick, the first always. */
function putBack(
  found: readonly Proposal[],
  standIn: StandIn,
  base: Motif,
  gauge: Gauge,
): Proposal[] {
  let nodes = 0
  return found.map((proposal, place) => {
    const motif = standIn.restore(proposal.motif)
    const moved = { ...proposal, motif, from: base.rounds.length }
    nodes += place === 0 ? 0 : motif.rounds.reduce((sum, round) => sum + round.elements.length, 0)
    if (nodes > mostNodes) return moved
    const shape = measureProposal(motif, gauge, proposal.cornerElements, moved.from)
    return { ...moved, shape, ledger: keepLedger(motif, gauge), verdict: shape.judged.verdict }
  })
}
