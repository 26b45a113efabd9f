// How rounds begin and end: starting chains that do not say whether they count, joins into another place than the top of
// the first stitch, a join left out, and the end of the piece.

import { ordinal } from "@roundwright/instructions"
import { turningChainCounts, turningChains } from "@roundwright/stitches"
import type { Remark } from "./finding.ts"
import { isBorneOut, isSure, type Manuscript, type ManuscriptRound } from "./manuscript.ts"

const startChain =
  /^[\s(*,;.]*(?:in(?:to)? (?:a |the )?(?:(?:magic|adjustable) )?(?:ring|circle|loop)[,:]?\s{1,3}(?:make\s)?)?(?:(?:join|attach|with)\b[^.:;]{0,60}?[,;.]\s*)?(?:(?:sl ?st|ss|slip stitch)\b[^.;:]{0,60}?[,;.]\s*)?(?:make\s+|work\s+)?(?:beg(?:inning)?\s+)?(?:ch(?:ain)?\s?-?\s?(\d{1,2})|(\d{1,2})\s?ch(?:ain)?s?(?![\s-]?(?:sps?|spaces?|lps?|loops?|arch)))\b/i
/** The chain that the piece begins with: joined into a ring, or worked into. */
const foundation =
  /^[\s(*]*(?:with\b[^.:;,]{0,40}[,;.]\s*)?(?:make\s+a\s+)?(?:ch(?:ain)?\s?-?\s?\d{1,2}|\d{1,2}\s?ch(?:ain)?s?)\b(?:[^.;(*]{0,20}?\b(?:join|form|close|unite|sl\.? ?st|slip|ss)[^.;(*]{0,50}?(?:\bring\b|\bcircle\b|\bloop\b|[.;]|$)(?:\s*[.;,]\s*)?|[^.]{0,40}\bfrom (?:the )?hook\b)/i

/** The words of a round behind its foundation, where it has one, and how far in they begin. */
function behindFoundation({ body, index }: ManuscriptRound): { words: string; skipped: number } {
  const skipped = index === 0 ? (foundation.exec(body)?.[0].length ?? 0) : 0
  return { words: body.slice(skipped), skipped }
}

const saysCounts =
  /\b(?:counts?|counting|counted|stands? for|in place of|as (?:the )?(?:first|1st)|=|equals|(?:does|do) not count|not counted)\b/i
const saysThroughout =
  /\b(?:throughout|always|every round|each round|all rounds|(?:all|any|every) (?:starting|beginning|turning|beg) ch(?:ain)?s?)\b/i

/** Rounds that begin with a chain which is not said to count, or not to. */
export function unsaidStarts(manuscript: Manuscript): Remark[] {
  const { front, rounds, sections } = manuscript
  const notes = [front, ...sections.map(({ value }) => value)].join("\n")
  if (/\bch(?:ain)?\b[^.\n]{0,60}\bcounts?\b|\bcounts?\b[^.\n]{0,60}\bch(?:ain)?\b/i.test(notes))
    return []
  const found: { round: ManuscriptRound; start: number; end: number; chains: number }[] = []
  let said = 0
  for (const round of rounds) {
    const { words, skipped } = behindFoundation(round)
    const match = startChain.exec(words)
    if (!match) continue
    const chains = Number(match[1] ?? match[2])
    const behind = words.slice(match[0].length, match[0].length + 90)
    const told = saysCounts.test(behind.split(/[;.]/)[0] ?? "") || /^\s*\(/.test(behind)
    if (told) {
      said += 1
      if (saysThroughout.test(behind)) return remarksOf(found, said)
      continue
    }
    if (chains < 2 || !standsFor(round)) continue
    const start = round.bodyStart + skipped + match[0].length
    found.push({ round, start, end: start, chains })
  }
  return remarksOf(found, said)
}

/** Where no round says it, it is asked once. */
function remarksOf(
  found: readonly { round: ManuscriptRound; start: number; end: number; chains: number }[],
  said: number,
): Remark[] {
  return (said === 0 ? found.slice(0, 1) : found).map(({ round, start, end, chains }) => {
    const wording = countsWording(round)
    return {
      severity: "query",
      code: "start-not-said",
      round: round.number,
      start,
      end,
      message: `Does the ch ${chains} at the start of round ${round.number} count as a stitch? The counts come out as if it does${wording === null ? " or not" : wording.includes("not") ? " not" : ""}.`,
      ...(wording === null ? {} : { wording: ` ${wording}` }),
    }
  })
}

/** The chain begins the round in place of a stitch, or stands beside its first one. */
function standsFor({ round, reading }: ManuscriptRound): boolean {
  if (round === null || reading.assumed) return true
  return round.startChain !== undefined
}

function countsWording({ round }: ManuscriptRound): string | null {
  const chain = round?.startChain
  const first = round?.elements[0]
  if (!chain || first?.type !== "stitch") return null
  if (!chain.counts) return "(does not count as a stitch)"
  const rest = chain.chains - (first.madeOfChains ?? chain.chains)
  return rest > 0 ? `(counts as first st and ch ${rest})` : "(counts as first st)"
}

const joinAt =
  /\b(?:join|sl\.? ?st|ss|slip stitch)\b[^.;\n]{0,50}?\b(?:in(?:to)?|to|with)\s+(?:the\s+)?(?:top of\s+)?(?:the\s+)?(?:(\d{1,2})(?:st|nd|rd|th)\s+ch(?:ain)?\b|(second|third|fourth|fifth|sixth)\s+ch(?:ain)?\b)(?!\s?-?\d|\s?-?(?:sps?|spaces?|lps?|loops?)\b)/gi
const joinTop =
  /\b(?:join|sl\.? ?st|ss|slip stitch)\b[^.;\n]{0,50}?\b(?:in(?:to)?|to)\s+(?:the\s+)?top of\s+(?:the\s+)?(?:(?:beg(?:inning)?|starting|first|1st|initial|turning|opening)\s+)?ch(?:ain)?[- ]?(\d{1,2})\b/gi
const spelledOut: Readonly<Record<string, number>> = {
  second: 2,
  third: 3,
  fourth: 4,
  fifth: 5,
  sixth: 6,
}

/** Joins into a chain that is not the top of what the starting chain stands for. */
export function wrongJoins(manuscript: Manuscript): Remark[] {
  return manuscript.rounds.flatMap((round): Remark[] => {
    const opening = startChain.exec(behindFoundation(round).words)
    if (!opening) return []
    const chains = Number(opening[1] ?? opening[2])
    const top = topOf(round, chains)
    const last = [...round.body.matchAll(joinAt)].at(-1)
    if (top !== null && last) {
      const named = last[1] === undefined ? spelledOut[last[2]!.toLowerCase()]! : Number(last[1])
      if (named !== top) {
        const word =
          last[1] === undefined
            ? last[2]!
            : last[0].slice(last[0].lastIndexOf(last[1]), last[0].search(/\s{1,9}ch(?:ain)?$/i))
        const start = round.bodyStart + last.index + last[0].lastIndexOf(word)
        return [
          {
            severity:
              isSure(manuscript, round.number) || saidHeight(round) !== null
                ? "must-mend"
                : "query",
            code: "join-into-wrong-place",
            round: round.number,
            start,
            end: start + word.length,
            message: `The join goes into the ${ordinal(named)} chain, but the first stitch of round ${round.number} ends with the ${ordinal(top)} of its ch ${chains}.`,
            wording: ordinal(top),
            sure: true,
          },
        ]
      }
      const usual = lowJoin(manuscript, round, chains, named)
      if (usual !== null) {
        const start = round.bodyStart + last.index
        return [
          {
            severity: "query",
            code: "join-into-wrong-place",
            round: round.number,
            start,
            end: start + last[0].length,
            message: `The join goes into the ${ordinal(named)} chain of ch ${chains}; the first stitch of round ${round.number} ends by custom with the ${ordinal(usual)}.`,
          },
        ]
      }
    }
    const over = [...round.body.matchAll(joinTop)].at(-1)
    if (over && Number(over[1]) !== chains && Number(over[1]) !== top) {
      const start = round.bodyStart + over.index + over[0].lastIndexOf(over[1]!)
      return [
        {
          severity: isBorneOut(manuscript, round.number) ? "must-mend" : "query",
          code: "join-into-wrong-place",
          round: round.number,
          start,
          end: start + over[1]!.length,
          message: `The join goes into the top of a ch ${over[1]}, but round ${round.number} begins with ch ${chains}.`,
          wording: String(chains),
          sure: true,
        },
      ]
    }
    return joinsToAbsentStitch(manuscript, round, chains)
  })
}

/** The height by custom, in chains, of a first stitch that the join alone makes lower; null where the text makes it so elsewhere. */
function lowJoin(
  { rounds }: Manuscript,
  round: ManuscriptRound,
  chains: number,
  named: number,
): number | null {
  const first = round.round?.elements[0]
  if (first?.type !== "stitch" || first.kind.gathered) return null
  const usual = turningChains(first.kind.basic)
  if (named >= usual || chains < usual) return null
  const elsewhere = rounds.some(
    (other) =>
      other !== round &&
      other.round?.startChain?.chains === named &&
      other.round.startChain.counts === true,
  )
  return elsewhere ? null : usual
}

/** How many chains of the start make its first stitch: as the round says, else as the reader works it. */
function topOf(round: ManuscriptRound, chains: number): number | null {
  const said = saidHeight(round)
  if (said !== null) return chains - said
  const first = round.round?.elements[0]
  return first?.type === "stitch" && first.madeOfChains ? first.madeOfChains : null
}

/** Chains of the start that are said to be a space beside the stitch; 0 where it is said to be the stitch alone. */
function saidHeight(round: ManuscriptRound): number | null {
  const { words } = behindFoundation(round)
  const match = startChain.exec(words)
  const said =
    match &&
    /^\s{0,9},?\s{0,9}\(?(?:counts?|counting)\b([^;.)]{0,60})/i.exec(words.slice(match[0].length))
  if (!said) return null
  const space =
    /(?:\band\b|\bplus\b|[,+&])\s*(?:a\s+)?ch(?:ain)?[- ]?(\d{1,2})\b|(\d{1,2})[- ]?ch\b/i.exec(
      said[1]!,
    )
  return space ? Number(space[1] ?? space[2]) : 0
}

const joinFirst =
  /\b(?:join|sl\.? ?st|ss|slip stitch)\b[^.;\n]{0,40}?\b(?:in(?:to)?|to)\s+(?:the\s+)?(?:top of\s+)?(?:the\s+)?(?:first|1st|beg(?:inning)?|starting|beg)\s+(ch|chain|sc|hdc|dc|htr|tr|dtr|st)\b/gi

/** "Join in first sc" where the round begins with another stitch. */
function joinsToAbsentStitch(
  manuscript: Manuscript,
  round: ManuscriptRound,
  chains: number,
): Remark[] {
  const last = [...round.body.matchAll(joinFirst)].at(-1)
  const first = round.round?.elements[0]
  if (
    !last ||
    first?.type !== "stitch" ||
    first.madeOfChains === undefined ||
    !turningChainCounts(first.kind.basic)
  )
    return []
  const named = last[1]!.toLowerCase()
  if (named !== "sc" || manuscript.reading.terms !== "US" || first.kind.basic === "sc") return []
  if (
    round.round!.elements.some(
      (element) => element.type === "stitch" && element.kind.basic === "sc",
    )
  )
    return []
  const start = round.bodyStart + last.index + last[0].length - last[1]!.length
  return [
    {
      severity: isSure(manuscript, round.number) ? "must-mend" : "query",
      code: "join-into-wrong-place",
      round: round.number,
      start,
      end: start + last[1]!.length,
      message: `Round ${round.number} is joined to its first ${named}, but it has none: it begins with ch ${chains}.`,
    },
  ]
}

const joins =
  /\bjoin|\b(?:sl\.? ?st|ss|slip stitch)\b[^.;]{0,40}\b(?:first|1st|top|beg|starting|\d(?:nd|rd|th))\b|\binvisible|\bclose\b/i
const ends =
  /\b(?:fasten|finish|tie|end|bind)(?:ing)? off\b|\b(?:break|cut)(?:ing)?\b[^.\n]{0,20}\b(?:yarn|thread|wool|off)\b|\bF\.?O\b|\bweave\b|\bdarn in\b|\binvisible\b|\bseamless\b|\bsew in\b/i

/** A round that is not joined where nearly all are. */
export function missingJoins({ rounds, reading, sections, front }: Manuscript): Remark[] {
  const notes = [front, ...sections.map(({ value }) => value)].join("\n")
  if (
    /\bjoin\b[^.\n]{0,40}\b(?:each|every|all|end)\b|\b(?:each|every|all)\b[^.\n]{0,40}\bjoin/i.test(
      notes,
    )
  )
    return []
  const worked = rounds.filter(({ body }) => body.length > 10)
  const joined = worked.filter(({ body }) => joins.test(body))
  if (joined.length < 2 || joined.length < (2 / 3) * worked.length) return []
  return worked
    .filter(
      ({ body, round }) =>
        !joins.test(body) &&
        !ends.test(body) &&
        round?.closing !== "open" &&
        !/\bspiral\b|\bdo not\b/i.test(body),
    )
    .filter(({ body }) => !/\b(?:like|same as|as (?:rnd|round))\b/i.test(body))
    .map((round) => ({
      severity: "query" as const,
      code: "join-missing" as const,
      round: round.number,
      start: round.bodyStart,
      end: round.end,
      message: `The other rounds${reading.rounds.length > 2 ? "" : ""} are joined; round ${round.number} does not say so.`,
    }))
}

/** Nothing says that the yarn is fastened off. */
export function missingEnd({ rounds, text }: Manuscript): Remark[] {
  const last = rounds.at(-1)
  if (!last || rounds.length < 2 || ends.test(text.slice(last.start))) return []
  const sentence = /[.!?)\]]$/.test(last.body) ? " " : ". "
  return [
    {
      severity: "query",
      code: "no-fasten-off",
      round: last.number,
      start: last.end,
      end: last.end,
      message: "The pattern does not say that the yarn is fastened off after its last round.",
      wording: `${sentence}Fasten off and weave in ends.`,
      sure: true,
    },
  ]
}
