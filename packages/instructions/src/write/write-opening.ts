// How a round opens in words: its centre, slip stitches to its start, and the starting chain.

import {
  type Anchor,
  anchorKey,
  type Motif,
  type Round,
  type StitchElement,
} from "@roundwright/motif"
import { kindName, type Terms } from "@roundwright/stitches"
import { cannot } from "./part.ts"
import { type Hook, placeWords } from "./write-places.ts"

interface Opening {
  readonly words: string[]
  /** First element not told by the opening. */
  readonly from: number
}

export function openingWords(
  motif: Motif,
  round: Round,
  index: number,
  hook: Hook,
  terms: Terms,
): Opening {
  const words: string[] = []
  const first = round.elements[0]
  const chain = round.startChain
  const counting =
    first?.type === "stitch" && first.madeOfChains !== undefined && chain?.counts === true
      ? first
      : null
  const space = counting && chain ? spaceAfterStart(round, chain.chains, counting) : 0
  const as = counting ? kindName(counting.kind, terms) + (space > 0 ? ` + ch ${space}` : "") : ""
  if (index === 0 && motif.centre.kind === "single-chain") {
    const skipped = chain
      ? counting
        ? ` (${chain.chains} skipped ch count as ${as})`
        : chain.chains > 1
          ? ` (${chain.chains} skipped ch do not count)`
          : ""
      : ""
    words.push(`ch ${motif.centre.chains}${skipped}`)
    return { words, from: counting ? (space > 0 ? 2 : 1) : 0 }
  }
  if (index === 0 && motif.centre.kind === "chain-ring")
    words.push(`ch ${motif.centre.chains}, join to form a ring`)
  if (counting && chain) {
    words.push(...moveWords(hook, counting.anchors[0]!, round))
    if (counting.kind.gathered) {
      words.push(`ch ${chain.chains}, ${firstLegWords(hook, counting, round, terms)}`)
      return { words, from: 1 }
    }
    words.push(`ch ${chain.chains} (counts as ${as})`)
    return { words, from: space > 0 ? 2 : 1 }
  }
  if (chain && !chain.counts)
    words.push(chain.chains === 1 ? "ch 1" : `ch ${chain.chains} (does not count)`)
  return { words, from: 0 }
}

/** The chains after a counting start, when the text gives them with it. */
function spaceAfterStart(round: Round, chains: number, first: StitchElement): number {
  const next = round.elements[1]
  const rest = chains - (first.madeOfChains ?? chains)
  return next?.type === "chain" && rest > 0 && next.chains === rest ? rest : 0
}

/** Slip stitches to where the round starts, when that is not where the hook is. */
function moveWords(hook: Hook, anchor: Anchor, round: Round): string[] {
  if (anchor.at === "centre") {
    if (anchor.chain !== undefined) throw cannot(round, "starts on one chain of the ring")
    return []
  }
  const start = hook.edge.cells[0]
  const closed = hook.at > 0
  if (
    start &&
    start.element === anchor.element &&
    (anchor.at === "stitch" || (closed && anchor.at === "space"))
  ) {
    hook.shared.last = anchor
    hook.shared.start = anchor
    if (!closed) hook.at = 1
    return []
  }
  if (closed || anchor.round !== hook.edge.round)
    throw cannot(round, "starts away from where the round before ends")
  hook.at = 1
  const place = placeWords(hook, anchor)
  const over = place?.skip ? /^skip next (?:(\d+) sts|st)$/.exec(place.skip) : null
  if (!place || (place.skip && !over))
    throw cannot(round, "starts in a place that slip stitches do not reach")
  hook.shared.start = anchor
  const slips = over ? [over[1] ? `sl st in next ${over[1]} sts` : "sl st in next st"] : []
  return [...slips, `sl st ${anchor.at === "space" ? "to" : "in"} ${place.noun}`]
}

/** "dc2tog in same st (counts as dc3tog)" after the chain that is its first leg. */
function firstLegWords(hook: Hook, first: StitchElement, round: Round, terms: Terms): string {
  const gathered = first.kind.gathered!
  const start = first.anchors[0]!
  const space = start.at === "space" || start.at === "between"
  const same = start.at === "centre" ? "ring" : space ? "same sp" : "same st"
  const one = first.anchors.every((anchor) => anchorKey(anchor) === anchorKey(start))
  if (gathered.how !== "cluster" && gathered.how !== "together")
    return `${kindName(first.kind, terms)} in ${same}`
  if (gathered.legs < 3)
    throw cannot(round, "starts with a cluster of two legs, one of them a chain")
  const named = (legs: number) =>
    kindName({ ...first.kind, gathered: { how: "together", legs } }, terms)
  if (one) return `${named(gathered.legs - 1)} in ${same} (counts as ${named(gathered.legs)})`
  const places = first.anchors.slice(1).map((anchor) => placeWords(hook, anchor))
  if (places.some((place) => !place || place.skip !== null || place.noun !== "next st"))
    throw cannot(round, "starts with a stitch spread over places that are not next to each other")
  return `${named(gathered.legs - 1)} over next ${places.length} sts (counts as ${named(gathered.legs)})`
}
