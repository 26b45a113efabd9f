// Rounds that break the piece's own rhythm. A disc grows by the same number every round; a round that grows by another is
// mostly miscounted or misprinted, whether or not the piece still lies flat with it.

import { countRound, kindKey, type Motif } from "@roundwright/motif"

export interface RhythmBreak {
  /** The round as the text numbers it. */
  readonly round: number
  /** Stitches it adds to the round before, and what the others add. */
  readonly adds: number
  readonly usual: number
  /** Its count if it kept the rhythm. */
  readonly probably: number
}

/** So many rounds, and this share of all, must add the same before that is a rhythm. */
const fewestAlike = 3
const shareAlike = 0.7

/** Rounds of one kind of stitch without chains that add another number than most of their kind do. */
export function rhythmBreaks(motif: Motif): RhythmBreak[] {
  const steps = motif.rounds.flatMap((round, index) => {
    const own = plain(motif, index)
    const below = plain(motif, index - 1)
    if (own === null || below === null || own.kind !== below.kind) return []
    return [{ round: round.number, before: below.stitches, adds: own.stitches - below.stitches }]
  })
  const alike = new Map<number, number>()
  for (const { adds } of steps) alike.set(adds, (alike.get(adds) ?? 0) + 1)
  const [usual, count] = [...alike].reduce((best, one) => (one[1] > best[1] ? one : best), [0, 0])
  if (usual <= 0 || count < fewestAlike || count < shareAlike * steps.length) return []
  // Where one break follows another the second is counted from what the first was probably to be.
  const breaks: RhythmBreak[] = []
  for (const { round, before, adds } of steps) {
    if (adds === usual || adds <= 0) continue
    const last = breaks.at(-1)
    const from = last?.round === round - 1 ? last.probably : before
    breaks.push({ round, adds, usual, probably: from + usual })
  }
  return breaks
}

/** "Round 9 adds 24, the others 12: probably 108." */
export function rhythmSentence({ round, adds, usual, probably }: RhythmBreak): string {
  return `Round ${round} adds ${adds}, the others ${usual}: probably ${probably} stitches are meant.`
}

function plain(motif: Motif, index: number): { stitches: number; kind: string } | null {
  const round = motif.rounds[index]
  if (!round) return null
  const { stitches, chains, byKind } = countRound(round)
  return chains === 0 && byKind.length === 1 ? { stitches, kind: kindKey(byKind[0]!.kind) } : null
}
