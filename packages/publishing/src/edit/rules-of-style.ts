// Style: one thing said in two ways.

import type { Remark } from "./finding.ts"
import type { Manuscript, ManuscriptRound } from "./manuscript.ts"

interface Pair {
  readonly what: string
  readonly ways: readonly (readonly [word: string, pattern: RegExp])[]
}

/** Words written in two ways, told for the rounds that differ from most. */
const pairs: readonly Pair[] = [
  {
    what: "Repeats",
    ways: [
      ["rep", /\brep\b/i],
      ["repeat", /\brepeat\b/i],
    ],
  },
  {
    what: "Stitches in general",
    ways: [
      ["st", /\bsts?\b(?<!sl st|sl sts)/i],
      ["stitch", /(?<!slip )\bstitch(?:es)?\b/i],
    ],
  },
  {
    what: "Spaces",
    ways: [
      ["sp", /\bsps?\b/i],
      ["space", /\bspaces?\b/i],
    ],
  },
  {
    what: "Slip stitches",
    ways: [
      ["sl st", /\bsl\.? ?sts?\b/i],
      ["slip stitch", /\bslip stitch(?:es)?\b/i],
      ["ss", /\bss\b/i],
    ],
  },
  {
    what: "Double crochets",
    ways: [
      ["dc", /\bdc\b/i],
      ["double crochet", /(?<!half )\bdouble crochets?\b/i],
    ],
  },
  {
    what: "Single crochets",
    ways: [
      ["sc", /\bsc\b/i],
      ["single crochet", /\bsingle crochets?\b/i],
    ],
  },
  {
    what: "Trebles",
    ways: [
      ["tr", /\btr\b/i],
      ["treble", /(?<!half |double )\btrebles?\b/i],
    ],
  },
]

export function wordsInTwoStyles({ rounds }: Manuscript): Remark[] {
  return pairs.flatMap(({ what, ways }) => {
    const users = ways.map(([word, pattern]) => ({
      word,
      pattern,
      rounds: rounds.filter(({ body }) => pattern.test(body)),
    }))
    const most = users.reduce((best, one) => (one.rounds.length > best.rounds.length ? one : best))
    return users
      .filter((one) => one !== most && one.rounds.length > 0)
      .flatMap((other) =>
        other.rounds.map((round): Remark => {
          const match = other.pattern.exec(round.body)!
          const start = round.bodyStart + match.index
          const wording = `${most.word}${/s$/i.test(match[0]) && other.word !== "ss" && most.word !== "ss" ? (/h$/.test(most.word) ? "es" : "s") : ""}`
          return {
            severity: "style",
            code: "words-in-two-styles",
            round: round.number,
            start,
            end: start + match[0].length,
            message: `${what} are written "${other.word}" here and "${most.word}" in ${most.rounds.length === 1 ? "another round" : "most rounds"}.`,
            wording,
          }
        }),
      )
  })
}

const labelWord = /\b(rnds?|rounds?|rows?|r)\b\.?(?=\s{0,3}\d)|\b(rnd|round|row)\b/i

/** "Rnd 3" among "Round 1" and "Round 2". */
export function labelsInTwoStyles({ rounds }: Manuscript): Remark[] {
  const found = rounds.flatMap((round) => {
    const match = labelWord.exec(round.label)
    return match ? [{ round, word: match[0], start: round.start + match.index }] : []
  })
  const styleOf = (word: string) => word.replace(/s?\.?$/i, "").toLowerCase()
  const counts = new Map<string, typeof found>()
  for (const one of found)
    counts.set(styleOf(one.word), [...(counts.get(styleOf(one.word)) ?? []), one])
  const most = [...counts.values()].sort((a, b) => b.length - a.length)[0]
  if (!most || counts.size < 2) return []
  const usual = most[0]!.word.replace(/s(?=\.?$)/i, "")
  return found
    .filter((one) => styleOf(one.word) !== styleOf(usual))
    .map(
      ({ round, word, start }): Remark => ({
        severity: "style",
        code: "labels-in-two-styles",
        round: round.number,
        start,
        end: start + word.length,
        message: `This round is called "${word}", others "${usual}".`,
        ...(isPlain(round) ? { wording: usual, sure: true as const } : {}),
      }),
    )
}

/** A label of one round; of "Rnds 3-5" the plural would go. */
function isPlain({ label }: ManuscriptRound): boolean {
  return !/\d\s*[-–&]\s*\d/.test(label)
}

const doubled =
  /\b(in|into|the|to|of|and|next|from|each|with|around|same|a|is|on|sp|sts|rep|repeat)([ \t]+)\1\b(?![-*])/gi

/** "in in next st". */
export function wordsTwice({ rounds }: Manuscript): Remark[] {
  return rounds.flatMap((round) =>
    [...round.body.matchAll(doubled)].map((match): Remark => {
      const start = round.bodyStart + match.index
      return {
        severity: "style",
        code: "word-twice",
        round: round.number,
        start,
        end: start + match[0].length,
        message: `"${match[1]}" stands twice.`,
        wording: match[1]!,
        ...(/^(?:in|into|the|to|of|and|next)$/i.test(match[1]!) ? { sure: true as const } : {}),
      }
    }),
  )
}
