// The abbreviations of the trade: how each is spelled in running text and what it stands for, in US and UK terms.
// Source: the list of "Crochet abbreviations", sage-urban-homesteading.com, and the pairs of "US and UK crochet
// terms", funcrochetdesigns.com; stitches are named as everywhere in the project.

import { basicName, basicStitches, fullKindName, type Terms } from "@roundwright/stitches"

export interface Abbreviation {
  /** As it is listed. */
  readonly key: string
  readonly long: string
}

export interface Spelled extends Abbreviation {
  readonly start: number
  readonly end: number
  /** Also listed when one of these is: "dc2tog" under "tog". */
  readonly within: readonly string[]
}

interface Row {
  readonly key: string
  readonly spelled: string
  readonly long: Readonly<Record<Terms, string>>
}

const both = (key: string, spelled: string, long: string): Row => ({
  key,
  spelled,
  long: { US: long, UK: long },
})

const words: readonly Row[] = [
  both("ch", "chs?", "chain"),
  both("sp", "sps?", "space"),
  both("st", "sts?", "stitch"),
  both("rep", "rep|rpt", "repeat"),
  both("rnd", "rnds?", "round"),
  both("sk", "sk", "skip"),
  both("beg", "beg", "beginning"),
  both("prev", "prev", "previous"),
  both("rem", "rem", "remaining"),
  both("foll", "foll", "following"),
  both("cont", "cont", "continue"),
  both("inc", "inc", "increase"),
  both("dec", "dec", "decrease"),
  { key: "yo", spelled: "yo|yoh|yrh", long: { US: "yarn over", UK: "yarn over hook" } },
  both("lp", "lps?", "loop"),
  both("RS", "rs", "right side"),
  both("WS", "ws", "wrong side"),
  both("CL", "cls?", "cluster"),
  both("pc", "pc", "popcorn"),
  both("BLO", "blo", "back loop only"),
  both("FLO", "flo", "front loop only"),
  both("MC", "mc", "main colour"),
  both("CC", "cc", "contrast colour"),
  both("tch", "tch|t-ch", "turning chain"),
  both("tog", "tog", "together"),
  both("bet", "bet", "between"),
  both("approx", "approx", "approximately"),
  both("alt", "alt", "alternate"),
  both("nxt", "nxt", "next"),
]

const slip = "sl\\.?[ -]?sts?|slst"

interface Speller {
  readonly pattern: RegExp
  readonly rows: readonly Row[]
  readonly terms: Terms
}

function spellerOf(terms: Terms): Speller {
  const stitches = basicStitches.map((basic): Row => {
    const key = basicName(basic, terms)
    const long = fullKindName({ basic }, terms)
    const spelled = basic === "sl st" ? `${slip}|ss` : `${key}s?`
    return { key, spelled, long: { US: long, UK: long } }
  })
  // Of the other terms too, so that a stray name is seen as an abbreviation that is not listed.
  const rows = [...stitches, ...words]
  const names = stitches.slice(1).map(({ key }) => key)
  const compound = `(?<post>[fb]p)(?<posted>${names.join("|")})(?<postTog>\\d?tog)?|(?<togOf>${names.join("|")})(?<legs>\\d)tog`
  const plain = rows.map(({ spelled }, k) => `(?<w${k}>${spelled})`).join("|")
  return {
    pattern: new RegExp(`(?<![A-Za-z])(?:${compound}|${plain})(?![A-Za-z])`, "gi"),
    rows,
    terms,
  }
}

const spellers: Readonly<Record<Terms, Speller>> = { US: spellerOf("US"), UK: spellerOf("UK") }

/** Every abbreviation in a stretch of text, in order. @param offset added to the places */
export function abbreviationsIn(text: string, terms: Terms, offset = 0): Spelled[] {
  const { pattern, rows } = spellers[terms]
  return [...text.matchAll(pattern)].map((match) => {
    const place = { start: offset + match.index, end: offset + match.index + match[0].length }
    const groups = match.groups!
    if (groups.post) return { ...place, ...postAbbreviation(groups, rows, terms) }
    if (groups.togOf) return { ...place, ...togetherAbbreviation(groups, rows, terms) }
    const row = rows.find((_, k) => groups[`w${k}`] !== undefined)!
    return { ...place, key: row.key, long: row.long[terms], within: [] }
  })
}

type Groups = Readonly<Record<string, string | undefined>>

function postAbbreviation(groups: Groups, rows: readonly Row[], terms: Terms) {
  const side = groups.post!.toUpperCase()
  const stitch = rows.find(({ key }) => key === groups.posted!.toLowerCase())!
  const way = side === "FP" ? "front" : "back"
  return {
    key: `${side}${stitch.key}${groups.postTog ?? ""}`,
    long: `${way} post ${stitch.long[terms]}${groups.postTog ? " worked together" : ""}`,
    within: [side, `${side}${stitch.key}`, "FP/BP"],
  }
}

function togetherAbbreviation(groups: Groups, rows: readonly Row[], terms: Terms) {
  const stitch = rows.find(({ key }) => key === groups.togOf!.toLowerCase())!
  return {
    key: `${stitch.key}${groups.legs}tog`,
    long: `${groups.legs} ${stitch.long[terms]} worked together`,
    within: ["tog", "dec", `${stitch.key}2tog`, `${stitch.key}3tog`],
  }
}

export interface ListedAbbreviation {
  /** As the list has it, without "(s)". */
  readonly name: string
  /** The key of the trade's abbreviation it is; null for one of the designer's own. */
  readonly keys: readonly string[]
  /** The entry with the sign that parts it from the next, to be struck out whole. */
  readonly start: number
  readonly end: number
}

/** A part of a list without the signs and spaces that part it from the next. */
export function withoutTail(text: string): string {
  let end = text.length
  while (end > 0 && /[\s,;|]/.test(text[end - 1]!)) end -= 1
  return text.slice(0, end)
}

/** The entries of a list: lines, or parts between commas and semicolons, each with a sign or brackets in it. */
export function listedIn(value: string, terms: Terms, offset: number): ListedAbbreviation[] {
  const found: ListedAbbreviation[] = []
  for (const { 0: entry, index } of value.matchAll(/[^\n\r,;|]+[\n\r,;|]*/g)) {
    const text = withoutTail(entry)
    const parted =
      /^[\s>•*+-]{0,40}[*_`]{0,2}([^=:–—()\t]{1,28}?)(?:\(s\))?[*_`]{0,2}\s{0,9}(?:[=:–—\t]|\s-\s|\s-|-\s|\()(.*)$/.exec(
        text,
      )
    if (!parted) continue
    const [, left = "", right = ""] = parted
    const own = abbreviationsIn(left, terms)
    const short = /^([A-Za-z. -]{1,9})(?:\(s\))?\)/.exec(right.trimStart())
    const other = short ? abbreviationsIn(short[1]!, terms) : []
    const reversed = own.length === 0 && other.length > 0
    const name = (reversed ? short![1]! : left).trim()
    if (name === "" || name.split(/\s+/).length > 3) continue
    found.push({
      name,
      keys: (reversed ? other : own).map(({ key }) => key),
      start: offset + index,
      end: offset + index + entry.length,
    })
  }
  return found
}
