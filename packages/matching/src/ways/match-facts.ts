// What a maker is told beside a match: how much a round adds, how far blocking goes, what the size is from corner to corner, how
// many more pieces cover the same.

import { basicName, sizeOf } from "@roundwright/stitches"
import { lengthWords } from "../lengths.ts"
import { alreadyThere } from "./already-there.ts"
import { blockingLimit } from "./blocking.ts"
import type { PieceNow } from "./piece.ts"
import type { Target } from "./target.ts"

/** From here on the missing size is many pieces more. */
const manyMore = 1.08

export function factsBeside(piece: PieceNow, target: Target, wanted: number): string[] {
  const { motif, gauge, now, check } = piece
  const { terms } = check.reading
  const facts: string[] = []
  const tell = (mm: number) => lengthWords(mm, target.unit)
  if (Math.abs(wanted - 1) > alreadyThere) {
    const adds = (["sc", "hdc", "dc", "tr"] as const).map((basic) => {
      const { heightMm } = sizeOf({ basic }, gauge, { turned: false })
      return `${basicName(basic, terms)} ${tell(2 * heightMm)}`
    })
    facts.push(`A round adds to the size across about: ${adds.join(", ")}.`)
  }
  const rounds = motif.rounds.length
  const reach = Math.round(rounds * wanted)
  if (piece.roundsTold !== false && reach !== rounds && reach > 0)
    facts.push(
      `In rounds like those it has ${rounds} are ${tell(target.mm / wanted)}, so ${tell(target.mm)} takes about ${reach}: ${Math.abs(reach - rounds)} ${reach > rounds ? "more" : "fewer"}.`,
    )
  const limit = blockingLimit(motif)
  if (wanted > 1 + limit)
    facts.push(
      `Blocking does not reach it: about ${Math.round(100 * limit)} % is what such a piece keeps.${wanted >= manyMore ? ` Kept as it is, it takes ${(wanted ** 2).toFixed(1)} times as many pieces for the same blanket.` : ""}`,
    )
  if (wanted < 1 - alreadyThere) facts.push("Blocking makes nothing smaller.")
  if (now.corners === 4 && !target.said && piece.standIn !== undefined) {
    const root = Math.SQRT2
    facts.push(
      `A square's size is along its side unless said: ${tell(target.mm)} there is ${tell(root * target.mm)} corner to corner, and ${tell(target.mm)} corner to corner is a side of ${tell(target.mm / root)}.`,
    )
  }
  return facts
}
