// How a round opens in words: its centre, slip stitches to its start, and the starting chain.

import {
  type Anchor,
  anchorKey,
  type Motif,
  type Round,
  type StitchElement,
} from "@roundwright/motif"
import type { Voice } from "./house-style.ts"
import { cannot } from "./part.ts"
import { type Hook, placeWords } from "./write-places.ts"

export interface Opening {
  /** Making the centre, told apart from the work. */
  readonly centre: string | null
  /** Slip stitches to the start and the starting chain. */
  readonly words: string[]
  /** First element not told by the opening. */
  readonly from: number
}

export function openingWords(
  motif: Motif,
  round: Round,
  index: number,
  hook: Hook,
  voice: Voice,
): Opening {
  const first = round.elements[0]
  const chain = round.startChain
  const counting =
    first?.type === "stitch" && first.madeOfChains !== undefined && chain?.counts === true
      ? first
      : null
  const space = counting && chain ? spaceAfterStart(round, chain.chains, counting) : 0
  const as = counting ? voice.name(counting.kind) + (space > 0 ? `, ch ${space}` : "") : ""
  const from = counting ? (space > 0 ? 2 : 1) : 0
  const { centre } = motif
  if (index === 0 && centre.kind === "single-chain") {
    const skipped =
      chain && counting
        ? ` (${chain.chains} skipped ch count as ${as})`
        : chain && chain.chains > 1
          ? ` (${chain.chains} skipped ch do not count)`
          : ""
    return { centre: `ch ${centre.chains}${skipped}`, words: [], from }
  }
  const ring =
    index === 0 && centre.kind === "chain-ring"
      ? `ch ${centre.chains}, join with ${voice.name({ basic: "sl st" })} to form a ring`
      : null
  const words: string[] = []
  if (counting && chain) {
    words.push(...moveWords(hook, counting.anchors[0]!, round))
    if (counting.kind.gathered) {
      words.push(`ch ${chain.chains}, ${firstLegWords(hook, counting, round, voice)}`)
      return { centre: ring, words, from: 1 }
    }
    words.push(`ch ${chain.chains} (counts as ${as})`)
  } else if (chain && !chain.counts)
    words.push(chain.chains === 1 ? "ch 1" : `ch ${chain.chains} (does not count)`)
  return { centre: ring, words, from }
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
  if (anchor.round !== hook.edge.round)
    throw cannot(round, "starts away from where the round before ends")
  if (!closed) hook.at = 1
  const place = placeWords(hook, anchor)
  const over = place?.over ?? null
  if (!place || over === null)
    throw cannot(round, "starts in a place that slip stitches do not reach")
  hook.shared.start = anchor
  const slip = hook.shared.voice.name({ basic: "sl st" })
  if (place.noun === "next st" && over > 0) return [`${slip} in next ${over + 1} sts`]
  const way = over === 0 ? [] : [`${slip} in next ${over === 1 ? "st" : `${over} sts`}`]
  return [...way, `${slip} ${anchor.at === "space" ? "to" : "in"} ${place.noun}`]
}

/** "dc2tog in same st (counts as dc3tog)" after the chain that is its first leg. */
function firstLegWords(hook: Hook, first: StitchElement, round: Round, voice: Voice): string {
  const gathered = first.kind.gathered!
  const start = first.anchors[0]!
  const space = start.at === "space" || start.at === "between"
  const same = start.at === "centre" ? "ring" : space ? "same sp" : "same st"
  const one = first.anchors.every((anchor) => anchorKey(anchor) === anchorKey(start))
  if (gathered.how !== "cluster" && gathered.how !== "together")
    return `${voice.name(first.kind)} in ${same}`
  if (gathered.legs < 2) throw cannot(round, "starts with a cluster of one leg")
  const named = (legs: number) =>
    legs === 1
      ? voice.name({ basic: first.kind.basic })
      : voice.name({ ...first.kind, gathered: { how: "together", legs } })
  if (one) return `${named(gathered.legs - 1)} in ${same} (counts as ${named(gathered.legs)})`
  const places = first.anchors.slice(1).map((anchor) => placeWords(hook, anchor))
  if (places.some((place) => !place || place.skip !== null || place.noun !== "next st"))
    throw cannot(round, "starts with a stitch spread over places that are not next to each other")
  return `${named(gathered.legs - 1)} over next ${places.length} sts (counts as ${named(gathered.legs)})`
}
