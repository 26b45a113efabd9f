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

/** "*A; rep from * 5 more times", "*A**, B; rep from * around, ending at **". */
const repeat =
  /\*([^*]*?)(?:\*\*([^*]*?))?;? rep from \* (?:(\d+) more times?|around)(,? ending (?:last rep )?at \*\*)?/g

/** Cut at the semicolons outside repeats. */
function steps(work: string): string[] {
  const whole = work.replace(
    repeat,
    (_, body: string, end: string | undefined, more: string | undefined, cut?: string) => {
      const times = more === undefined ? 0 : Number(more) + 1
      const often = times === 0 ? "all the way round" : howOften(times)
      const last = (end ?? "").replace(/^[\s,]+|(?<![\s,])[\s,]+$/g, "")
      const all = [body.replace(/(?<![\s,])[\s,]+$/, ""), last]
        .filter((part) => part !== "")
        .join(", ")
      const less = cut !== undefined && last !== "" ? ", the last time without its end" : ""
      const told = less === "" ? "" : `, which ends with ${last}`
      return `; work the following ${often}${less}: ${(all + told).replaceAll(";", ",")};`
    },
  )
  return whole
    .split(/;/)
    .map((step) => step.replace(/^[\s,]{1,40}|[\s,]{1,40}$/g, ""))
    .filter((step) => step !== "")
}

function howOften(times: number): string {
  return times === 1 ? "once" : times === 2 ? "twice" : `${times} times`
}

function plainBrackets(step: string): string {
  return step
    .replace(/ \(corner made\)/g, ", which makes a corner")
    .replace(
      /\[([^[\]]*)\] (?:(once|twice)|(\d+) times?)/g,
      (_, work: string, word: string | undefined, count: string) =>
        `${work}, and all of that from "${firstWords(work)}" on ${word ?? howOften(Number(count))}`,
    )
    .replace(/\(\(?([^()]*)\)?\) 1 time/g, "$1")
    .replace(/\(((?:counts|does)[^()]*)\)/g, ", which $1")
    .replace(
      /\(([^()]*)\) in ((?:each of next|next|same|first|last)[^,;:()]*|ring)/g,
      "all in $2: $1, that is the group",
    )
    .replace(/\(([^()]*)\) (\d+) times/g, "$1, worked $2 times in all")
    .replace(/ ,/g, ",")
}

/** Enough of a phrase to find its beginning again. */
function firstWords(work: string): string {
  return work.split(/[,;:]/)[0]!.trim()
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
