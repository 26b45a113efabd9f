// The list of abbreviations against what the rounds use: used and not listed, listed and not used, no list at all; and
// special stitches that nothing explains.

import {
  abbreviationsIn,
  type ListedAbbreviation,
  listedIn,
  type Spelled,
  withoutTail,
} from "../abbreviations.ts"
import type { Remark } from "./finding.ts"
import { type Manuscript, type ManuscriptRound, sectionOf } from "./manuscript.ts"
import type { Section } from "./sections.ts"

/** A list with fewer entries is none that could be complete. */
const leastEntries = 2

/** No list of the trade is longer; the rest of one that is is let be. */
const mostEntries = 300

interface Use extends Spelled {
  readonly round: ManuscriptRound
}

export function abbreviationRemarks(manuscript: Manuscript): Remark[] {
  const { rounds, reading, text } = manuscript
  if (rounds.length === 0) return []
  const lists = manuscript.sections.filter(({ name }) => name === "abbreviations")
  const listed = lists
    .flatMap(({ value, start }) => listedIn(value, reading.terms, start))
    .slice(0, mostEntries)
  const used = usesIn(manuscript)
  if (listed.length < leastEntries)
    return used.size < leastEntries ||
      manuscript.sections.some(({ name }) => name === "abbreviations")
      ? []
      : [noList(used, rounds[0]!)]
  const missing = [...used.values()].filter((use) => !isListed(use, listed, text, lists))
  return [
    ...missing.map((use) => notListed(use, listed, manuscript)),
    ...listed
      .filter((entry) => !isUsed(entry, manuscript, lists))
      .map((entry) => notUsed(entry, text, lists)),
  ]
}

/** The first use of every abbreviation, in the words of the rounds. */
function usesIn({ rounds, reading }: Manuscript): Map<string, Use> {
  const used = new Map<string, Use>()
  for (const round of rounds)
    for (const found of abbreviationsIn(round.body, reading.terms, round.bodyStart))
      if (!used.has(found.key)) used.set(found.key, { ...found, round })
  return used
}

function isListed(
  use: Use,
  listed: readonly ListedAbbreviation[],
  text: string,
  lists: readonly Section[],
): boolean {
  const spelled = text.slice(use.start, use.end).toLowerCase()
  return (
    listed.some(
      ({ name, keys }) =>
        keys.some((key) => key === use.key || use.within.includes(key)) ||
        name.toLowerCase() === spelled ||
        use.within.includes(name),
    ) ||
    // An entry of a manner of its own: the word stands somewhere in the list.
    lists.some(({ value }) =>
      new RegExp(`(?:^|[\\n,;|(*-])\\s*\\**${escaped(use.key)}(?:\\(s\\)|s)?\\b`, "i").test(value),
    )
  )
}

/** Where several rounds use it the list lacks an entry; where one does it may as well be spelled out there. */
function notListed(
  use: Use,
  listed: readonly ListedAbbreviation[],
  manuscript: Manuscript,
): Remark {
  const { text, rounds, reading } = manuscript
  const users = rounds.filter(({ body }) =>
    abbreviationsIn(body, reading.terms).some(({ key }) => key === use.key),
  )
  const remark = {
    severity: "query",
    code: "abbreviation-not-listed",
    message: `"${use.key}" is used from round ${use.round.number} on and is not in the list of abbreviations.`,
  } as const
  if (users.length === 1)
    return {
      ...remark,
      round: use.round.number,
      start: use.start,
      end: use.end,
      message: `"${use.key}" is used in round ${use.round.number} alone and is not in the list of abbreviations: list it, or spell it out.`,
      wording: use.long,
    }
  const last = listed.at(-1)!
  const shown = withoutTail(text.slice(last.start, last.end))
  const at = last.start + shown.length
  const wording = `${partingOf(text, listed)}${entryLike(shown, use)}`
  return { ...remark, round: null, start: at, end: at, wording, sure: true }
}

/** What parts the entries of a list: a new line with its mark, a comma or a semicolon. */
function partingOf(text: string, listed: readonly ListedAbbreviation[]): string {
  const first = listed[0]!
  const firstEntry = text.slice(first.start, first.end)
  const tail = firstEntry.slice(withoutTail(firstEntry).length) || "\n"
  if (listed.length > 1 && !/[\n\r]/.test(tail)) return /[,;]/.test(tail) ? tail : ", "
  return `\n${/^[ \t>•*+-]*(?=\S)/.exec(text.slice(listed.at(-1)!.start))?.[0] ?? ""}`
}

/** An entry with the same sign between the short and the long form as another has. */
function entryLike(entry: string, use: Spelled): string {
  const sign = /\s{0,9}[=:–—]\s{0,9}|\s-\s/.exec(entry.slice(1))?.[0] ?? " = "
  return `${use.key}${sign}${use.long}`
}

function isUsed(
  entry: ListedAbbreviation,
  { text, rounds, reading }: Manuscript,
  lists: readonly Section[],
): boolean {
  const elsewhere = lists.reduceRight(
    (rest, { start, end }) => `${rest.slice(0, start)}\n${rest.slice(end)}`,
    text,
  )
  const names = [entry.name, ...entry.keys]
  if (
    names.some((name) =>
      new RegExp(`(?<![A-Za-z])${escaped(name)}s?(?![A-Za-z])`, "i").test(elsewhere),
    )
  )
    return true
  const found = abbreviationsIn(elsewhere, reading.terms)
  return (
    rounds.length === 0 ||
    found.some(
      ({ key, within }) =>
        entry.keys.includes(key) ||
        within.some((one) => entry.keys.includes(one) || one === entry.name),
    ) ||
    // The stitch that a compound is made of.
    entry.keys.some((key) =>
      new RegExp(`(?:FP|BP)${escaped(key)}|${escaped(key)}\\d?tog`, "i").test(elsewhere),
    )
  )
}

function notUsed(entry: ListedAbbreviation, text: string, lists: readonly Section[]): Remark {
  const list = lists.find(({ start, end }) => entry.start >= start && entry.start <= end)!
  const last = entry.end >= list.end
  // The last entry takes the sign before it along.
  const before = last
    ? entry.start - list.start - withoutTail(text.slice(list.start, entry.start)).length
    : 0
  const end = last ? entry.start + text.slice(entry.start, entry.end).trimEnd().length : entry.end
  return {
    severity: "style",
    code: "abbreviation-not-used",
    round: null,
    start: entry.start - before,
    end,
    message: `"${entry.name}" is in the list of abbreviations and is used nowhere.`,
    wording: "",
    sure: true,
  }
}

function noList(used: ReadonlyMap<string, Use>, first: ManuscriptRound): Remark {
  const list = [...used.values()].map(({ key, long }) => `${key} = ${long}`).join(", ")
  return {
    severity: "query",
    code: "abbreviations-missing",
    round: null,
    start: first.start,
    end: first.start,
    message: "There is no list of the abbreviations used.",
    wording: `Abbreviations: ${list}\n\n`,
  }
}

const special =
  /\b(?:popcorn|pc|cluster|cl|puff|bobble|picot|shell|v[- ]?st(?:itch)?|crossed|spike|surface|solomon'?s knot|crab|reverse (?:sc|single)|foundation (?:sc|dc))\b/gi

/** Special stitches that are worked from the rounds alone, with nothing that explains them. */
export function specialStitches(manuscript: Manuscript): Remark[] {
  const { rounds, sections } = manuscript
  const told = sections
    .map(({ value }) => value)
    .join("\n")
    .toLowerCase()
  const seen = new Set<string>()
  const remarks: Remark[] = []
  if (!sectionOf(manuscript, "abbreviations", "special", "materials", "notes")) return []
  for (const { body, bodyStart, number } of rounds)
    for (const match of body.matchAll(special)) {
      const name = match[0].toLowerCase().replace(/^cl$/, "cluster").replace(/^pc$/, "popcorn")
      if (seen.has(name)) continue
      seen.add(name)
      const spelledOut =
        /\bcluster|popcorn|puff|bobble/.test(name) &&
        new RegExp(`\\d-\\w+ ${name}|${name} of \\d`, "i").test(body)
      if (told.includes(name) || told.includes(match[0].toLowerCase()) || spelledOut) continue
      const start = bodyStart + match.index
      remarks.push({
        severity: "query",
        code: "special-stitch-not-explained",
        round: number,
        start,
        end: start + match[0].length,
        message: `How the ${name} is worked is explained nowhere.`,
      })
    }
  return remarks
}

function escaped(words: string): string {
  return words.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")
}
