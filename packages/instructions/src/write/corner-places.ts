// Where the corners of a round are, as places the next one works into.

import {
  anchorKey,
  type Element,
  findCorners,
  type Motif,
  type RoundCorners,
} from "@roundwright/motif"

export interface CornersTold {
  /** Keys of the places in the corners of the round below. */
  readonly below: ReadonlySet<string>
  /** First elements of the round's own corner groups. */
  readonly made: ReadonlySet<number>
}

/** Corners of every round, found once for a whole piece. */
export function cornersOf(motif: Motif): readonly RoundCorners[] {
  return findCorners(motif)
}

export function cornersTold(
  motif: Motif,
  index: number,
  corners: readonly RoundCorners[],
): CornersTold {
  const [own, before] = [corners[index], corners[index - 1]]
  // Corners that the round does not keep are no corners to whoever works it: a rosette of twelve becomes a square.
  const kept = !own || own.count === 0 || own.count === before?.count
  return { below: kept ? placesOf(motif, index - 1, before) : new Set(), made: madeIn(own) }
}

function placesOf(
  motif: Motif,
  round: number,
  corners: RoundCorners | undefined,
): ReadonlySet<string> {
  const elements = motif.rounds[round]?.elements ?? []
  const n = elements.length
  const keys = new Set<string>()
  const groups = corners?.groups ?? []
  for (const { first, last } of groups) {
    const span = (last - first + n) % n
    if (span % 2 === 1) continue
    // One loop among others like it shows nobody that a later round makes a corner of it.
    const hidden =
      first === last &&
      elements.some(
        (other, e) => isLike(other, elements[first]!) && !groups.some((group) => group.first === e),
      )
    if (hidden) continue
    const element = (first + span / 2) % n
    const middle = elements[element]
    if (middle?.type === "chain") keys.add(anchorKey({ at: "space", round, element }))
    else if (middle?.type === "stitch") keys.add(anchorKey({ at: "stitch", round, element }))
  }
  return keys
}

function isLike(one: Element, other: Element): boolean {
  return one.type === "chain" && other.type === "chain" && one.chains === other.chains
}

function madeIn(corners: RoundCorners | undefined): ReadonlySet<number> {
  return new Set(corners?.groups.map(({ first }) => first))
}
