// The totals of the rounds: wrong, missing on some, or in two manners.

import { countRound, type Round } from "@roundwright/motif"
import { kindName, type Terms } from "@roundwright/stitches"
import type { Remark } from "./finding.ts"
import {
  isBorneOut,
  isSure,
  type Manuscript,
  type ManuscriptRound,
  roundNumbered,
} from "./manuscript.ts"
import { figuresOf, groupUnits, unreadTotal } from "./rules-of-unread-totals.ts"
import { type TotalPlace, type TotalStyle, totalInStyle, totalPlace } from "./totals.ts"

/** Totals that differ from the work. Where the next round fits what is counted, the total is the slip. */
export function wrongTotals(manuscript: Manuscript): Remark[] {
  const { lines, problems, reading } = manuscript
  return problems.flatMap((problem): Remark[] => {
    if (problem.code !== "stated-total-differs") return []
    const round = roundNumbered(manuscript, problem.round)
    if (!round) return []
    const start = lines.offset(problem.line, problem.column)
    const end = start + problem.length
    const words = manuscript.text.slice(start, end)
    const grouped = groupUnits.test(words)
    const figure = Number(/\d+/.exec(words)?.[0])
    if (grouped && round.round && figuresOf(round.round).has(figure)) return []
    const spaces = /\b(?:sps?|spaces?|loops?|lps?|arches)\b/i.test(words)
    const fixed = grouped ? null : totalMended(words, round)
    const borneOut = fixed !== null && nextFits(manuscript, round)
    const sure = !grouped && problem.severity !== "note" && isBorneOut(manuscript, problem.round)
    const whichOne = borneOut
      ? " The next round fits the count as worked, so the total is the slip."
      : " Either the total or the work is wrong."
    const remark: Remark = {
      severity: sure ? "must-mend" : "query",
      code: spaces ? "spaces-total-wrong" : "total-wrong",
      round: problem.round,
      start,
      end,
      message: `${problem.message}${whichOne}`,
    }
    // The figure itself may be met by another count than the one it is held against.
    if (fixed === null || fixed === words) return [remark]
    const wording = { ...remark, wording: fixed }
    return [sure && borneOut && reading.rounds.length > 0 ? { ...wording, sure: true } : wording]
  })
}

/** The words of a total with the figure that the work gives; null where it is not plain which figure that is. */
function totalMended(words: string, { reading, round }: ManuscriptRound): string | null {
  const counted = reading.counted
  const figure = /\d+/.exec(words)
  if (!counted || !round || !figure) return null
  const counts = countRound(round)
  const size = /ch-?\s?(\d+)/i.exec(words.slice(figure.index + figure[0].length))
  const into = (count: number) => words.replace(/\d+/, String(count))
  if (/\b(?:sps?|spaces?|loops?|lps?|arches)\b/i.test(words)) {
    if (!size) return into(counted.spaces)
    const own = counts.spacesBySize.find(({ chains }) => chains === Number(size[1]))
    return own ? into(own.count) : null
  }
  const kinds = counts.byKind.length
  return kinds <= 1 ||
    /^\d+(?:\s*(?:sts?|stitches))?\s{0,9}$/i.test(words) ||
    Number(figure[0]) === reading.stated
    ? into(counted.stitches)
    : null
}

/** Whether the round behind one uses up what was counted, so that the count is borne out. */
function nextFits({ rounds, problems }: Manuscript, { index }: ManuscriptRound): boolean {
  const next = rounds[index + 1]
  if (!next || next.reading.counted === null || next.reading.assumed) return false
  return !problems.some(
    ({ round, severity, code }) =>
      round === next.number && severity !== "note" && code !== "stands-on-doubt",
  )
}

/** A total left out where most rounds have one. */
export function missingTotals(manuscript: Manuscript): Remark[] {
  const { rounds, reading, text } = manuscript
  const counted = rounds.filter((round) => round.reading.counted !== null)
  const stated = counted.filter((round) => round.reading.stated !== null)
  if (stated.length === 0 || stated.length * 2 < counted.length) return []
  const style = commonStyle(rounds)
  return counted
    .filter(({ reading: { stated, assumed } }) => stated === null && !assumed)
    .filter((round) => unreadTotal(round) === null)
    .map((round): Remark => {
      const at = endOfWork(round)
      const total = round.round
        ? totalWords(round.round, reading.terms)
        : String(round.reading.counted!.stitches)
      const sign = /[.!?)\]]$/.test(text.slice(round.bodyStart, at)) ? " " : ". "
      return {
        severity: "query",
        code: "total-missing",
        round: round.number,
        start: at,
        end: at,
        message: `The other rounds end with their total; round ${round.number} does not. Worked as written it comes to ${total}.`,
        wording: `${sign}${totalInStyle(total, style).trim()}`,
        ...(isSure(manuscript, round.number) ? { sure: true as const } : {}),
      }
    })
}

/** Behind the work of a round, before a sentence of its own that ends the piece. */
function endOfWork({ body, bodyStart }: ManuscriptRound): number {
  const first = body.split(/\r\n|\r|\n/)[0]!
  const ending =
    /[.;,]?\s{0,9}(?:fasten|finish) off|[.;,]?\s{0,9}(?:break|cut) (?:off|the )?(?:yarn|thread)?/i.exec(
      first,
    )
  return bodyStart + (ending ? ending.index : first.trimEnd().length)
}

/** "36 dc", "12 dc + 12 ch-2 sps". */
export function totalWords(round: Round, terms: Terms): string {
  const { byKind, stitches, spacesBySize } = countRound(round)
  const only = byKind.length === 1 ? byKind[0]!.kind : null
  const plain = only && !only.gathered && !only.loops && !only.post
  const unit = plain ? kindName(only, terms) : stitches === 1 ? "st" : "sts"
  const spaces = spacesBySize.map(
    ({ chains, count }) => `${count} ch-${chains} ${count === 1 ? "sp" : "sps"}`,
  )
  return [...(stitches > 0 ? [`${stitches} ${unit}`] : []), ...spaces].join(" + ")
}

const itemOfTotal = /\b\d{1,4}\s+((?:sc|hdc|htr|dc|tr|dtr|trtr)\b)(?!\s*(?:on|in|per|each))/gi

/** "(24 dc, 24 dc)": one stitch counted in two places, so that another was meant in one of them. */
export function totalsNamingTwice({ rounds }: Manuscript): Remark[] {
  return rounds.flatMap((round): Remark[] => {
    const place = totalPlace(round)
    if (!place) return []
    const names = [...place.inner.matchAll(itemOfTotal)].map((match) => match[1]!.toLowerCase())
    const twice = names.find((name, k) => names.indexOf(name) !== k)
    if (twice === undefined) return []
    return [
      {
        severity: "query",
        code: "total-wrong",
        round: round.number,
        start: place.start,
        end: place.end,
        message: `The total of round ${round.number} names ${twice} twice. Is another stitch meant in one place?`,
      },
    ]
  })
}

function commonStyle(rounds: readonly ManuscriptRound[]): TotalStyle {
  const counts = new Map<TotalStyle, number>()
  for (const round of rounds) {
    const style = totalPlace(round)?.style
    if (style) counts.set(style, (counts.get(style) ?? 0) + 1)
  }
  return [...counts].sort((a, b) => b[1] - a[1])[0]?.[0] ?? "brackets"
}

/** Totals in brackets on most rounds and behind a dash on others. */
export function totalsInTwoStyles({ rounds, text }: Manuscript): Remark[] {
  const places = rounds.flatMap((round) => {
    const place = totalPlace(round)
    return place ? [{ round, place }] : []
  })
  const usual = commonStyle(rounds)
  const bareUsual = places.filter(({ place }) => place.bare).length * 2 > places.length
  return places.flatMap(({ round, place }): Remark[] => {
    const otherStyle = place.style !== usual
    if (!otherStyle && place.bare === bareUsual) return []
    if (!otherStyle && !place.bare) return []
    return [
      {
        severity: "style",
        code: "totals-in-two-styles",
        round: round.number,
        start: place.start,
        end: place.end,
        message: otherStyle
          ? `The total of round ${round.number} is given ${told[place.style]}, those of other rounds ${told[usual]}.`
          : `The total of round ${round.number} does not name its stitches, those of other rounds do.`,
        ...wordingOf(place, usual, text, otherStyle),
      },
    ]
  })
}

function wordingOf(
  place: TotalPlace,
  usual: TotalStyle,
  text: string,
  otherStyle: boolean,
): Pick<Remark, "wording" | "sure"> {
  if (!otherStyle) return {}
  const blank = /\s/.test(text[place.start - 1] ?? " ")
  const wording = totalInStyle(place.inner, usual)
  return { wording: blank ? wording.trimStart() : ` ${wording.trimStart()}`, sure: true }
}

const told: Readonly<Record<TotalStyle, string>> = {
  brackets: "in brackets",
  "square brackets": "in square brackets",
  dash: "behind a dash",
  equals: "behind an equals sign",
  sentence: "as a sentence of its own",
}
