// What the counts alone settle: rounds whose words, taken as they are usually meant, do not come out, so that the reader
// took them otherwise. A maker has no such second look, and the designer is asked.

import type { Remark } from "./finding.ts"
import { type Manuscript, type ManuscriptRound, roundNumbered } from "./manuscript.ts"

/** A reading that the words leave open and that what comes after decides. */
const bentForOthers =
  /: then the (?:rounds after it fit|counts fit the round before)|chains are worked into like stitches/

/** Choices that another rule asks about in words of its own. */
const asOfStarts = /\bstarting chain|\bchains? at the start/

export function chosenReadings(manuscript: Manuscript): Remark[] {
  const { problems, lines } = manuscript
  return problems.flatMap((problem): Remark[] => {
    if (problem.code !== "reading-chosen") return []
    const round = roundNumbered(manuscript, problem.round)
    if (!round) return []
    if (asOfStarts.test(problem.message)) return thinStart(problem.message, round)
    if (!bentForOthers.test(problem.message)) return []
    const start = lines.offset(problem.line, problem.column)
    return [
      {
        severity: "query",
        code: "not-settled",
        round: round.number,
        start,
        end: start + problem.length,
        message: `${problem.message} ${problem.hint}`,
      },
    ]
  })
}

const chainOne = /^[\s(*]*ch(?:ain)?\s?-?\s?1\b/i

/** One chain is hardly ever a stitch: where the counts need it to be one, a stitch is wanting. */
function thinStart(told: string, { reading, body, bodyStart, number }: ManuscriptRound): Remark[] {
  const found = chainOne.exec(body)
  if (!found || !reading.counted || !/chain counts as a stitch/.test(told)) return []
  const { stitches } = reading.counted
  const end = bodyStart + found[0].length
  return [
    {
      severity: "query",
      code: "stitches-left-over",
      round: number,
      start: end - found[0].trimStart().length,
      end,
      message: `The ch 1 would have to count as a stitch: without it round ${number} comes to ${stitches - 1}, and what follows wants ${stitches}. Is a stitch left out?`,
    },
  ]
}

/** Totals that count chains with the stitches, in a text whose other totals do not or whose rounds can be told apart. */
export function totalsWithChains(manuscript: Manuscript): Remark[] {
  const { problems, lines, rounds } = manuscript
  const told = problems.filter(({ code }) => code === "total-includes-chains")
  // Where all totals count them it is the designer's way, and is asked about once.
  const plain = rounds.some(({ number, reading: { agrees, stated, counted } }) =>
    Boolean(agrees && stated === counted?.stitches && !told.some(({ round }) => round === number)),
  )
  return (plain ? told : told.slice(0, 1)).flatMap((problem): Remark[] => {
    const round = roundNumbered(manuscript, problem.round)
    const counted = round?.reading.counted
    if (!round || !counted) return []
    const start = lines.offset(problem.line, problem.column)
    const end = start + problem.length
    return [
      {
        severity: "query",
        code: "total-wrong",
        round: round.number,
        start,
        end,
        message: `${problem.message} Totals count stitches, and name chain spaces beside them.`,
        wording: lines.text.slice(start, end).replace(/\d+/, String(counted.stitches)),
      },
    ]
  })
}

const differs = /states (\d{1,20})\b.{0,900}\bcomes to (\d{1,20})/

/** A round without a total of its own, where the next would come to its total if this one had another count. */
export function countsForNext({ problems, rounds }: Manuscript): Remark[] {
  return problems.flatMap((problem): Remark[] => {
    if (problem.code !== "stated-total-differs") return []
    const index = rounds.findIndex(({ number }) => number === problem.round)
    const before = rounds[index - 1]
    const found = differs.exec(problem.message)
    const own = before?.reading.counted?.stitches
    if (!before || !found || !own || before.reading.stated !== null) return []
    const [stated, worked] = [Number(found[1]), Number(found[2])]
    const each = worked / own
    const wanted = stated / each
    if (!Number.isInteger(each) || !Number.isInteger(wanted) || wanted === own) return []
    return [
      {
        severity: "query",
        code: "repeat-does-not-fit",
        round: before.number,
        start: before.bodyStart,
        end: before.end,
        message: `Worked as written round ${before.number} comes to ${own}; with ${wanted} the next round would come to its total of ${stated}.`,
      },
    ]
  })
}
