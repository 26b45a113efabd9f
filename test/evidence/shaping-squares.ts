// Published squares (handbook and measured motifs) laid out and measured as squares: bow of the sides, corners,
// verdict, and whether any round grades its heights. A piece read only in part is laid out as far as it reads and
// gets a verdict, but no bow: its square is still to come. So it is with the one handbook square whose frame grades
// its heights (dillmont-481): its petals are worked in rows of another craft, and reading ends before them.
// Nothing is fitted on these.

import { readPattern } from "@roundwright/instructions"
import { countRound } from "@roundwright/motif"
import { RoundwrightError } from "@roundwright/numerics"
import { measureProposal } from "@roundwright/shaping"
import { gaugeFrom } from "@roundwright/stitches"
import { caseText, loadCases } from "./cases.ts"

export interface PublishedSquare {
  readonly set: "handbook-motifs" | "measured-motifs"
  readonly id: string
  readonly roundsRead: number
  readonly rounds: number
  /** Three heights or more in one of the rounds read. */
  readonly graded: boolean
  /** Shares of the side; null where it could not be laid out, or was read only in part. */
  readonly bow: number | null
  readonly uneven: number | null
  readonly cornerAngleDeg: number | null
  readonly verdict: string | null
}

export function measureSquares(): PublishedSquare[] {
  return (["handbook-motifs", "measured-motifs"] as const).flatMap((set) =>
    loadCases(set)
      .filter(({ shape }) => /square/.test(shape))
      .map((one): PublishedSquare => {
        const { motif, gauge } = readPattern(caseText(one))
        const graded = motif.rounds.some((round) => {
          const heights = countRound(round).byKind.map(({ kind }) => kind.basic)
          return new Set(heights.filter((basic) => basic !== "sl st")).size >= 3
        })
        const read = {
          set,
          id: one.id,
          roundsRead: motif.rounds.length,
          rounds: one.rounds.length,
          graded,
        }
        const unknown = { ...read, bow: null, uneven: null, cornerAngleDeg: null, verdict: null }
        if (motif.rounds.length === 0) return unknown
        try {
          const shape = measureProposal(motif, gaugeFrom(gauge), 4, 0)
          if (read.roundsRead < read.rounds) return { ...unknown, verdict: shape.judged.verdict }
          return {
            ...read,
            bow: shape.bowMm / shape.sideMm,
            uneven: shape.unevenMm / shape.sideMm,
            cornerAngleDeg: shape.cornerAngleDeg,
            verdict: shape.judged.verdict,
          }
        } catch (error) {
          if (error instanceof RoundwrightError) return unknown
          throw error
        }
      }),
  )
}
