// Labels of rounds without their number: "Rnd: ch 3, ..." between "Rnd 2:" and "Rnd 4:".

import type { Remark } from "./finding.ts"
import type { Manuscript } from "./manuscript.ts"

const unnumbered = /^([ \t>•*_#-]{0,8})(rnd|round|row)(\.?[ \t]{0,2}:)/gim

export function unnumberedRounds({ text, rounds }: Manuscript): Remark[] {
  if (rounds.length < 2) return []
  let added = 0
  return [...text.matchAll(unnumbered)].flatMap((match): Remark[] => {
    const [, marks = "", word = "", tail = ""] = match
    const start = match.index + marks.length
    const before = rounds.filter((round) => round.start < start && round.label.trim() !== "").at(-1)
    // A heading above the rounds is none of them.
    if (!before) return rounds[0]!.number === 1 ? [] : [remark(start, word, tail, 1)]
    added = before.start >= 0 ? before.number + 1 : added
    return [remark(start, word, tail, added)]
  })
}

function remark(start: number, word: string, tail: string, number: number): Remark {
  return {
    severity: "must-mend",
    code: "round-not-labelled",
    round: number,
    start,
    end: start + word.length,
    message: `This round has no number; it comes after round ${number - 1}.`,
    wording: `${word} ${number}`,
    ...(tail ? { sure: true as const } : {}),
  }
}
