// Reading of texts as makers published them: counts by round against a key made by hand before the reader was
// run. The texts themselves are not kept; their addresses, keys and first-look scores are.

import { readPattern } from "@roundwright/instructions"

/** One keyed round: what a practised maker counts, and what else the words allow. */
export interface KeyedRound {
  readonly round: number
  /** Null where the text does not settle it. */
  readonly stitches: number | null
  readonly accept?: readonly number[]
  readonly spaces?: number | null
  readonly printed?: number | null
  readonly printedWrong?: boolean
  readonly note?: string
}

export interface KeyedText {
  readonly id: string
  readonly url: string
  readonly terms: "US" | "UK"
  readonly kind: string
  readonly fabric: string
  readonly style: string
  readonly whole: boolean
  readonly rounds: readonly KeyedRound[]
}

export interface TextScore {
  readonly id: string
  readonly rounds: number
  readonly right: number
  /** Counted otherwise than by hand, and no warning on that round. */
  readonly silentlyWrong: number
  /** Right, and warned of all the same. */
  readonly falselyWarned: number
  /** Every keyed round has a count and none ended the motif. */
  readonly toTheEnd: boolean
  readonly details: readonly string[]
}

export function scoreText(key: KeyedText, text: string): TextScore {
  const reading = readPattern(text)
  let right = 0
  let silentlyWrong = 0
  let falselyWarned = 0
  const details: string[] = []
  const keyed = key.rounds.filter(({ stitches }) => stitches !== null)
  for (const round of keyed) {
    const found = reading.rounds.find(({ number }) => number === round.round)
    const counted = found?.counted?.stitches ?? null
    const wanted = [round.stitches!, ...(round.accept ?? [])]
    const isRight = counted !== null && wanted.includes(counted)
    const warned = reading.problems.some(
      (problem) => problem.round === round.round && problem.severity !== "note",
    )
    if (isRight) right += 1
    if (isRight && warned) falselyWarned += 1
    if (!isRight && counted !== null && !warned) silentlyWrong += 1
    if (!isRight || warned)
      details.push(
        `${key.id} ${round.round}: ${counted ?? "none"} for ${wanted.join("/")}${warned ? " warned" : ""}${!isRight && counted !== null && !warned ? " SILENT" : ""}`,
      )
  }
  const toTheEnd = keyed.every((round) => {
    const found = reading.rounds.find(({ number }) => number === round.round)
    return found?.counted !== null && found?.counted !== undefined
  })
  return {
    id: key.id,
    rounds: keyed.length,
    right,
    silentlyWrong,
    falselyWarned,
    toTheEnd,
    details,
  }
}
