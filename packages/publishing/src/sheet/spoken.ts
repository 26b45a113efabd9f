// A round in full words for readers who listen or need large print: no abbreviation, no asterisk, no bracket that carries
// meaning; repeats say what is repeated and how often.

import type { Terms } from "@roundwright/stitches"
import { abbreviationsIn } from "../abbreviations.ts"

/** The steps of a round, each a phrase. */
export function spokenSteps(work: string, terms: Terms): string[] {
  return steps(work.replace(/\.$/, "")).map((step) => capital(inFull(plainBrackets(step), terms)))
}

/** "(36 dc + 12 ch-2 sps)" as "36 double crochet and 12 2-chain spaces". */
export function spokenTotal(total: string, terms: Terms): string {
  return inFull(total.replace(/^\(|\)$/g, "").replace(/ \+ /g, " and "), terms)
}

const repeat = /\*([^*]*?);? rep from \* (\d+) more times?/g

/** Cut at the semicolons outside repeats. */
function steps(work: string): string[] {
  const whole = work.replace(repeat, (_, body: string, more: string) => {
    const times = Number(more) + 1
    return `; work the following ${times === 2 ? "twice" : `${times} times`}: ${body.replaceAll(";", ",")};`
  })
  return whole
    .split(/;/)
    .map((step) => step.replace(/^[\s,]{1,40}|[\s,]{1,40}$/g, ""))
    .filter((step) => step !== "")
}

function plainBrackets(step: string): string {
  return step
    .replace(/\(\(?([^()]*)\)?\) 1 time/g, "$1")
    .replace(/\(((?:counts|does)[^()]*)\)/g, ", which $1")
    .replace(
      /\(([^()]*)\) in ((?:each of next|next|same|first|last)[^,;:()]*|ring)/g,
      "all in $2: $1, that is the group",
    )
    .replace(/\(([^()]*)\) (\d+) times/g, "$1, worked $2 times in all")
    .replace(/ ,/g, ",")
}

/** Every abbreviation by its long form. */
export function inFull(text: string, terms: Terms): string {
  const spaces = text.replace(
    /\bch-(\d+) (sps?)\b/g,
    (_, size: string, word: string) => `${size}-chain ${word === "sp" ? "space" : "spaces"}`,
  )
  let [out, at] = ["", 0]
  for (const { start, end, long } of abbreviationsIn(spaces, terms)) {
    const word = spaces.slice(start, end)
    const many = /\b(\d+) $/.exec(spaces.slice(0, start))
    out += spaces.slice(at, start) + longForm(word, long, many !== null && many[1] !== "1")
    at = end
  }
  return (out + spaces.slice(at)).replace(/(\d)-(double|single|half|treble)/g, "$1 $2")
}

function longForm(word: string, long: string, many: boolean): string {
  const several =
    (many || /s$/i.test(word)) &&
    !/crochet$|^chain$|together$/.test(long) &&
    !/^(?:ss|rs|ws)$/i.test(word)
  if (!several) return long
  return /(?:ch|sh|s)$/.test(long) ? `${long}es` : `${long}s`
}

function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
