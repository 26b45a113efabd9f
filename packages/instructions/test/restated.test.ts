// The same pattern said in another way comes to the same: labels, spellings, marks, numbers and line breaks
// are changed all through, and no restated round may come to something else without a word.

import { describe, expect, it } from "vitest"
import { type PatternReading, readPattern } from "../src/index.ts"
import { patterns as ukPatterns } from "./varied-uk.ts"
import { patterns as usPatterns } from "./varied-us.ts"
import { patterns as morePatterns } from "./varied-us-more.ts"

/** Share of patterns that may be read otherwise when restated, if it is told: now and then two sentences run together. */
const mostTold = 0.03

const numberWords = "zero one two three four five six seven eight nine ten eleven twelve".split(" ")
const label = (make: (n: string) => string) => (text: string) =>
  text.replace(/^Rnd (\d+):/gm, (_, n: string) => make(n))
const ordinal = (n: string) => `${n}${["th", "st", "nd", "rd"][Number(n)] ?? "th"}`
const spelled: Readonly<Record<string, string>> = {
  dc: "double crochet",
  sc: "single crochet",
  hdc: "half double crochet",
}

const restatements: Readonly<Record<string, (text: string) => string>> = {
  "all in capitals": (text) => text.toUpperCase(),
  "Round 1 -": label((n) => `Round ${n} -`),
  "R1.": label((n) => `R${n}.`),
  "Rnd. 1)": label((n) => `Rnd. ${n})`),
  "1st round.": label((n) => `${ordinal(n)} round.`),
  "ROUND 1 \u2014": label((n) => `ROUND ${n} \u2014`),
  "**Round 1:**": label((n) => `**Round ${n}:**`),
  "- Rnd 1:": label((n) => `- Rnd ${n}:`),
  slst: (text) => text.replace(/\bsl st\b/g, "slst"),
  ss: (text) => text.replace(/\bsl st\b/g, "ss"),
  "slip stitch": (text) => text.replace(/\bsl st\b/g, "slip stitch"),
  "d.c.": (text) => text.replace(/\b(?:dc|sc)\b/g, (name) => `${name[0]}.${name[1]}.`),
  "double crochet": (text) =>
    /UK/.test(text) ? text : text.replace(/\b(?:dc|sc|hdc)\b/g, (name) => spelled[name]!),
  ch3: (text) => text.replace(/\bch (\d)/g, "ch$1"),
  "chain 3": (text) => text.replace(/\bch (\d)/g, "chain $1"),
  "3ch": (text) => text.replace(/\bch (\d+)\b/g, "$1ch"),
  "3dc": (text) => text.replace(/\b(\d+) (dc|sc|hdc|tr)\b/g, "$1$2"),
  "repeat from": (text) => text.replace(/\brep from\b/g, "repeat from"),
  "full stops for semicolons": (text) =>
    text.replace(/; ([a-z])/g, (_, letter: string) => `. ${letter.toUpperCase()}`),
  "commas for semicolons": (text) => text.replace(/;/g, ","),
  "no space after commas": (text) => text.replace(/, /g, ","),
  "no full stops": (text) => text.replace(/\.(?=\s|$)/g, ""),
  "short lines": (text) =>
    text
      .split("\n")
      .map((line) =>
        /^(?:Rnd|R\d|Round)/.test(line) ? line.replace(/(.{25,40}?) /g, "$1\n") : line,
      )
      .join("\n"),
  "numbers in words": (text) =>
    text.replace(
      /(?<=[ (*])(?:[1-9]|1[0-2])(?= (?:dc|sc|hdc|tr|more times|times|sts)\b)/g,
      (number) => numberWords[Number(number)]!,
    ),
  miss: (text) => text.replace(/\b(?:skip|sk)\b/g, "miss"),
  space: (text) => text.replace(/\bsp\b(?!\.)/g, "space").replace(/\bsps\b/g, "spaces"),
  "ch-2 loop": (text) => text.replace(/\bch-(\d+) sp\b/g, "ch-$1 loop"),
  "2-ch sp": (text) => text.replace(/\bch-(\d+) sp/g, "$1-ch sp"),
  "ch2 sp": (text) => text.replace(/\bch-(\d+) sp/g, "ch$1 sp"),
  "ch-sp": (text) => text.replace(/\bch-(\d+) sp\b/g, "ch-sp"),
  into: (text) => text.replace(/\bin (next|same|ring)\b/g, "into $1"),
  "in the next": (text) => text.replace(/\bin next\b/g, "in the next"),
  "x 3": (text) => text.replace(/\) (\d+) times/g, ") x $1"),
  "= 12 sc": (text) => text.replace(/\((\d+ (?:dc|sc|hdc|sts))\)\.?\s*$/gm, "= $1"),
  "- 12 sc": (text) => text.replace(/\.? ?\((\d+ (?:dc|sc|hdc|sts))\)\.?\s*$/gm, " - $1"),
  "[12 sc]": (text) => text.replace(/\((\d+ (?:dc|sc|hdc|sts))\)\.?\s*$/gm, "[$1]"),
  "to end": (text) => text.replace(/rep from \* around/g, "rep from * to end"),
  "another 3 times": (text) =>
    text.replace(/rep from \* (\d+) more times/g, "rep from * another $1 times"),
  "*...* 4 times": (text) =>
    text.replace(
      /\*([^*\n]*); rep from \* (\d+) more times/g,
      (_, body: string, n: string) => `*${body}* ${Number(n) + 1} times`,
    ),
  "(...) 4 times": (text) =>
    text.replace(
      /\*([^*\n()[\]]*); rep from \* (\d+) more times/g,
      (_, body: string, n: string) => `(${body}) ${Number(n) + 1} times`,
    ),
  "in each of the next 3": (text) =>
    text.replace(/\bin next (\d+) (sts|dc|sc)\b/g, "in each of the next $1 $2"),
}

const texts = [...usPatterns, ...morePatterns, ...ukPatterns].map(({ text }) => text)
const usual = new Map(texts.map((text) => [text, countsOf(readPattern(text))]))

describe("a pattern restated", () => {
  it.each(Object.entries(restatements))("%s", (_, restate) => {
    const silent: string[] = []
    let told = 0
    for (const text of texts) {
      const changed = restate(text)
      if (changed === text) continue
      const reading = readPattern(changed)
      const counts = countsOf(reading)
      if (counts.join() === usual.get(text)!.join()) continue
      if (reading.problems.some((problem) => problem.severity !== "note")) told += 1
      else silent.push(changed)
    }
    expect(silent).toEqual([])
    expect(told / texts.length).toBeLessThanOrEqual(mostTold)
  })
})

function countsOf(reading: PatternReading): string[] {
  return reading.rounds.map(({ counted }) =>
    counted ? `${counted.stitches}/${counted.chains}/${counted.spaces}` : "none",
  )
}
