// Shells, Vs and whatever the pattern defines itself, worked as one thing.

import { readSteps } from "./grammar.ts"
import { readStitch } from "./stitch-grammar.ts"
import type { Place, Step, StitchName } from "../base/tree.ts"
import { readUntil } from "./until-grammar.ts"
import type { LocalStitch, Words } from "./words.ts"
import { readCounted, readWorkPlace } from "./work-grammar.ts"

/** Stitches the pattern defines itself: "shell in next st". */
export function readLocal(words: Words, start: number): Step[] | null {
  if (words.locals.size === 0 && !namesShell(words)) return null
  return words.attempt((): Step[] | null => {
    let count = 1
    if (words.isNumber() && words.text(1) !== "-") {
      count = words.value()
      words.at += 1
    } else words.accept("a", "one")
    words.accept("beg", "beginning")
    const shell = readShell(words, start)
    const found = shell ? { steps: shell } : localHere(words)
    if (!found?.steps) return null
    words.accept("st", "stitch")
    const until = readUntil(words)
    const place: Place = until
      ? { ...words.since(start), at: "each", nouns: [{ what: "stitch" }], until }
      : (readWorkPlace(words) ?? {
          ...words.since(start),
          at: "next",
          noun: { what: "stitch" },
          count: 1,
        })
    const span = words.since(start)
    return Array.from({ length: Math.min(count, 50) }, () => ({
      ...span,
      do: "group" as const,
      steps: found.steps ?? [],
      place,
    }))
  })
}

const shellWords = new Set(["shell", "fan", "shells", "fans"])
const startsShell = new Set(["a", "one", "beg", "beginning", "shell", "fan", "v"])

/** A shell, fan or V may be named here. */
function namesShell(words: Words): boolean {
  if (!words.isNumber()) return startsShell.has(words.text())
  if (words.text(1) !== "-") return words.isNumber(1) || startsShell.has(words.text(1))
  for (const word of shellWords) if (words.has(word)) return true
  return false
}

/** "3-dc shell", "shell of 5 dc", "V-st", with "(dc, ch 1, dc)" after it if it says so. */
function readShell(words: Words, start: number): Step[] | null {
  return words.attempt((): Step[] | null => {
    let steps: Step[] | null = null
    const span = () => words.since(start)
    const sized = words.attempt(() => {
      if (!words.isNumber() || words.text(1) !== "-") return null
      const count = words.value()
      words.at += 2
      const stitch = readStitch(words)
      words.accept("-")
      return stitch && words.accept("shell", "fan", "shells", "fans") ? { count, stitch } : null
    })
    if (sized)
      steps = [{ ...span(), do: "work", stitch: sized.stitch, count: sized.count, place: null }]
    else if (words.accept("shell", "fan")) {
      const of = words.attempt(() => (words.accept("of") ? readShellList(words) : null))
      if (!of && !/^[([]$/.test(words.text())) return null
      if (of) {
        steps = of
        // From here on "shell" is that.
        if (of.length > 1 && !words.locals.has("shell")) words.locals.set("shell", { steps: of })
      }
    } else if (
      words.text() === "v" &&
      words.text(1) === "-" &&
      /^(st|sts|stitch)$/.test(words.text(2)) &&
      !words.locals.has("v")
    ) {
      words.at += 3
      const dc: StitchName = { kind: { basic: "dc" }, tog: false }
      // The usual V is a stitch, one chain and a stitch: common practice, no source.
      steps = [
        { ...span(), do: "work", stitch: dc, count: 1, place: null },
        { ...span(), do: "chain", chains: 1, place: null },
        { ...span(), do: "work", stitch: dc, count: 1, place: null },
      ]
    } else return null
    const said = words.attempt(() => {
      if (!words.accept("(", "[")) return null
      words.accept("made", "of", "=")
      const run = readSteps(words, () => false)
      return words.accept(")", "]") && run.steps.some((step) => step.do === "work")
        ? run.steps
        : null
    })
    return said ?? steps
  })
}

/** "2 dc, ch 2, 2 dc in": a list as far as the place it goes into; else its first stitch alone. */
function readShellList(words: Words): Step[] | null {
  const first = readShellPart(words)
  if (!first) return null
  const list = words.attempt(() => {
    const parts = [first]
    while (words.accept(",", "and")) {
      words.accept("and")
      const part = readShellPart(words)
      if (!part) return null
      parts.push(part)
    }
    return parts.length > 1 && /^(?:in|into)$/.test(words.text()) ? parts : null
  })
  return list ?? [first]
}

function readShellPart(words: Words): Step | null {
  return words.attempt((): Step | null => {
    const start = words.start()
    const before = words.isNumber() && /^(?:ch|chain)$/.test(words.text(1))
    if (before || /^(?:ch|chain)$/.test(words.text())) {
      const chains = words.value(before ? 0 : 1)
      if (!Number.isInteger(chains) || chains < 1) return null
      words.at += 2
      return { ...words.since(start), do: "chain", chains, place: null }
    }
    const counted = readCounted(words)
    return (
      counted && {
        ...words.since(start),
        do: "work",
        stitch: counted.stitch,
        count: counted.count,
        place: null,
      }
    )
  })
}

function localHere(words: Words): LocalStitch | null {
  const three = [0, 1, 2].map((i) => words.text(i)).join("")
  const two = words.text() + words.text(1)
  for (const [text, length] of [
    [three, 3],
    [two, 2],
    [words.text(), 1],
  ] as const) {
    const local = words.locals.get(text)
    if (local?.steps && words.at + length <= words.tokens.length) {
      words.at += length
      return local
    }
  }
  return null
}
