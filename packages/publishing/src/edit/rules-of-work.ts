// The work of the rounds: repeats that are not alike, and chain spaces named by a size that the piece has not.

import { countRound, type Motif, type Round, repeatsOf } from "@roundwright/motif"
import type { Remark } from "./finding.ts"
import { isBorneOut, isSure, type Manuscript, type ManuscriptRound } from "./manuscript.ts"

/** Two halves may well differ. */
const leastRepeats = 3

/** A round whose repeats are not alike on a round that comes out in even parts: a first group of its own, often. */
export function unlikeRepeats(manuscript: Manuscript): Remark[] {
  const { rounds } = manuscript
  return rounds.flatMap((round): Remark[] => {
    const before = rounds[round.index - 1]?.round
    if (!before || round.round === null || !isSure(manuscript, round.number)) return []
    const repeats = repeatsAlong(before)
    if (repeats < leastRepeats || repeatsAlong(round.round) > 1) return []
    if (round.round.closing === "spiral") return []
    return [
      {
        severity: "query",
        code: "repeats-differ",
        round: round.number,
        start: round.bodyStart,
        end: round.end,
        message: `The round before repeats ${repeats} times, but the repeats of round ${round.number} are not alike. Check its first and its last group against the others.`,
      },
    ]
  })
}

/** How often the run of stitches and chains comes round, whatever each is worked into. */
function repeatsAlong(round: Round): number {
  const elements = round.elements.map((element) =>
    element.type === "stitch"
      ? { ...element, kind: plainKind(element.kind), anchors: [{ at: "centre" } as const] }
      : element,
  )
  const motif: Motif = { centre: { kind: "adjustable-ring" }, rounds: [{ ...round, elements }] }
  return repeatsOf(motif, 0)
}

/** A chain at the start stands for a stitch whatever loop or post the others are worked in. */
function plainKind({ basic, gathered }: { basic: string; gathered?: object }) {
  return { basic, ...(gathered ? { gathered } : {}) } as never
}

const named =
  /\bch(?:ain)?[- ]?(\d{1,2})[- ]?(?:sps?|spaces?|lps?|loops?|arch(?:es)?)\b|\b(\d{1,2})[- ]ch(?:ain)?[- ](?:sps?|spaces?|lps?|loops?|arch(?:es)?)\b/gi

/** "In the ch-3 space" where the rounds before have chain spaces, and none of that size. */
export function spacesNamed(manuscript: Manuscript): Remark[] {
  return manuscript.rounds.flatMap((round): Remark[] => {
    const { body, bodyStart, index } = round
    const before = manuscript.rounds.slice(0, index)
    if (index === 0 || before.some((one) => one.round === null)) return []
    const below = sizesOf(before.at(-1)!.round!)
    if (below.length === 0) return []
    const earlier = new Set(before.flatMap((one) => sizesOf(one.round!)))
    const made = new Set(
      [...body.matchAll(/\bch(?:ain)?\s?(\d{1,2})\b/gi)].map((match) => Number(match[1])),
    )
    const work = withoutAsides(body)
    for (const match of work.matchAll(named)) {
      const size = Number(match[1] ?? match[2])
      const lead = work.slice(Math.max(0, match.index - 40), match.index + match[0].length + 20)
      const ofThisRound = made.has(size) && ownPlace.test(lead)
      const ofAnother = earlier.has(size) && anotherRound.test(body)
      if (below.includes(size) || ofThisRound || ofAnother) continue
      return [remarkOf(manuscript, round, bodyStart + match.index, match[0], size)]
    }
    return []
  })
}

/** Words by which a space made in the same round is meant. */
const ownPlace = /\b(?:join|sl ?st|ss|first|1st|beg(?:inning)?|starting|just|made|same|that)\b/i
const anotherRound = /\b(?:rnds?|rounds?|rows?)\b|\b\d rnds? below\b|\bbehind\b|\bin front\b/i

/** Sizes of the runs of chains in a round. */
function sizesOf(round: Round): number[] {
  return countRound(round).spacesBySize.map(({ chains }) => chains)
}

/** Brackets that tell a total or what counts as what are blanked: they name what this round makes. */
function withoutAsides(body: string): string {
  const blank = (found: string) => " ".repeat(found.length)
  return body
    .replace(/\((?:counts?|\d)[^()]*\)|\[\d[^[\]]*\]/gi, blank)
    .replace(/[-–—=]\s*\d[^.\n]*$/gm, blank)
}

function remarkOf(
  manuscript: Manuscript,
  round: ManuscriptRound,
  start: number,
  words: string,
  size: number,
): Remark {
  const below = manuscript.rounds[round.index - 1]!
  const own = countRound(below.round!).spacesBySize.map(({ chains }) => chains)
  const [only] = own
  return {
    severity: isBorneOut(manuscript, below.number) ? "must-mend" : "query",
    code: "place-not-there",
    round: round.number,
    start,
    end: start + words.length,
    message: `Round ${below.number} has no ch-${size} spaces; its spaces are of ${own.map((chains) => `ch ${chains}`).join(" and ")}.`,
    ...(own.length === 1
      ? { wording: words.replace(/\d+/, String(only)), sure: true as const }
      : {}),
  }
}
