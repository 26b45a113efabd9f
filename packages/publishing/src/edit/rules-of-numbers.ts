// Labels of rounds without their number: "Rnd: ch 3, ..." between "Rnd 2:" and "Rnd 4:".

import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"

const unnumbered = /^([ \t>•*_#-]{0,8})(rnd|round|row)(\.?[ \t]{0,2}:)/gim

export function unnumberedRounds({ text, rounds }: Manuscript): Remark[] {
  if (rounds.length < 2) return []
  return [...text.matchAll(unnumbered)].flatMap((match): Remark[] => {
    const [, marks = "", word = ""] = match
    const start = match.index + marks.length
    const labelled = rounds.filter((round) => round.label.trim() !== "")
    const before = labelled.filter((round) => round.start < start).at(-1)
    const after = labelled.find((round) => round.start > start)
    // A heading above the rounds is none of them.
    if (!before) return []
    const number = before.number + 1
    const fits = after?.number === number + 1
    return [remark(start, word, number, fits)]
  })
}

/** @param fits whether the number that is missing is the one the numbers around it leave out */
function remark(start: number, word: string, number: number, fits: boolean): Remark {
  return {
    severity: fits ? "must-mend" : "query",
    code: "round-not-labelled",
    round: number,
    start,
    end: start + word.length,
    message: `This round has no number; it comes after round ${number - 1}.`,
    wording: `${word} ${number}`,
    ...(fits ? { sure: true as const } : {}),
  }
}
