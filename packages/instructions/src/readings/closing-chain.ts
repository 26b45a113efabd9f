// "(3 dc, ch 2) three times, 3 dc; join": groups with chains between all but the last and the first. The chain
// before the join is often left out of the words; the round after tells whether it is there.

import type { Element, Round } from "@roundwright/motif"
import type { Finding } from "../base/problem-list.ts"
import type { Span } from "../base/tree.ts"
import { plural } from "../base/wording.ts"

/** Fewest spaces that make a chain between groups a rule. */
const fewestSpaces = 2

/** The chains missing before the join; null where the round does not go round in like groups. */
export function missingClosingChain(round: Round): number | null {
  const groups: number[] = [0]
  const sizes: number[] = []
  for (const element of round.elements) {
    if (element.type === "chain") {
      sizes.push(element.chains)
      groups.push(0)
    } else if (element.type === "stitch") groups[groups.length - 1]! += 1
    else return null
  }
  const [group] = groups
  const [size] = sizes
  if (round.closing !== "joined" || sizes.length < fewestSpaces || !size || !group) return null
  return groups.every((one) => one === group) && sizes.every((one) => one === size) ? size : null
}

export function withClosingChain(round: Round, chains: number): Round {
  const closing: Element = { type: "chain", chains }
  return { ...round, elements: [...round.elements, closing] }
}

export function closingChainFinding(chains: number, span: Span): Finding {
  return {
    severity: "warning",
    code: "closing-chain-assumed",
    ...span,
    message: `Chains stand between all groups but the last and the first; ${plural(chains, "chain", "chains")} before the join ${chains === 1 ? "is" : "are"} assumed, as the rounds after need the space.`,
    hint: `Write "ch ${chains}" before the join.`,
  }
}
