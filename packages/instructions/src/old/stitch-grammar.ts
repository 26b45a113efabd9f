// Names of stitches in running text: abbreviations, full words, post and loop forms, stitches
// worked together, clusters, and what the pattern itself defines.

import type { StitchKind } from "@roundwright/stitches"
import { table } from "../base/table.ts"
import type { StitchName } from "../base/tree.ts"
import { stitchNamed, type Words } from "./words.ts"

/** Longest name in words: "extended half double crochet stitches 2 together". */
const longestName = 6

/** Words about a stitch that change neither its height nor its place. */
export const stitchRemarks: ReadonlySet<string> = new Set([
  "standing",
  "beg",
  "beginning",
  "invisible",
  "regular",
  "surface",
  "complete",
  "completed",
  "additional",
  "more",
  "small",
  "large",
  "plain",
  "loose",
  "loosely",
  "full",
  "starting",
  "initial",
  // Worked backwards, into a lower place or hooked to its neighbour: as tall as the stitch they are named after.
  "reverse",
  "spike",
  "linked",
])

/** Gathered stitches whose legs are not named: the usual number, common practice, no source. */
const usualGathered: Readonly<Record<string, NonNullable<StitchKind["gathered"]>>> = table({
  cluster: { how: "cluster", legs: 3 },
  clusters: { how: "cluster", legs: 3 },
  cl: { how: "cluster", legs: 3 },
  cls: { how: "cluster", legs: 3 },
  clst: { how: "cluster", legs: 3 },
  popcorn: { how: "popcorn", legs: 5 },
  popcorns: { how: "popcorn", legs: 5 },
  pop: { how: "popcorn", legs: 5 },
  pc: { how: "popcorn", legs: 5 },
  pcs: { how: "popcorn", legs: 5 },
  puff: { how: "puff", legs: 3 },
  puffs: { how: "puff", legs: 3 },
  bobble: { how: "bobble", legs: 5 },
  bobbles: { how: "bobble", legs: 5 },
  tuft: { how: "bobble", legs: 5 },
  tufts: { how: "bobble", legs: 5 },
})

const notNames = new Set([
  "in",
  "of",
  "the",
  "and",
  "or",
  "next",
  "each",
  "a",
  "an",
  "to",
  "back",
  "front",
])

/** The stitch named here, stepped over; null when none is. */
export function readStitch(words: Words): StitchName | null {
  return words.attempt(() => {
    const stitch = readRemarked(words)
    if (stitch && startsBracket(words.text())) words.attempt(() => readOtherTerm(words))
    return stitch
  })
}

function startsBracket(text: string): boolean {
  return text === "[" || text === "("
}

/** "11 tr [dc]": the same stitch in the other terms, in a bracket behind its name. */
function readOtherTerm(words: Words): true | null {
  if (!words.accept("[", "(")) return null
  const token = words.peek()
  if (token?.type !== "word" || stitchNamed(token.text, words.terms) === null) return null
  words.at += 1
  return words.accept("]", ")") && /^(?:in|into|around|round)$/.test(words.text()) ? true : null
}

/** "stitch between dc and tr": of a height between two, which is the extended form of the lower. */
function readHeightBetween(words: Words): StitchName | null {
  if (words.text(1) !== "between") return null
  return words.attempt(() => {
    if (!words.accept("stitch", "st") || !words.accept("between")) return null
    const lower = readKind(words)
    if (!lower || !words.accept("and")) return null
    const upper = readKind(words)
    if (!upper || lower.gathered || upper.gathered) return null
    const extended = heightsBetween[`${lower.basic} ${upper.basic}`]
    return extended ? { kind: { basic: extended }, tog: false } : null
  })
}

const heightsBetween: Readonly<Record<string, StitchKind["basic"]>> = table({
  "sc hdc": "esc",
  "sc dc": "hdc",
  "hdc dc": "ehdc",
  "dc tr": "edc",
  "tr dtr": "etr",
})

/** "spike st", "crab st": a single crochet worked lower down, or backwards. */
function readOtherName(words: Words): StitchName | null {
  if (words.text() !== "spike" && words.text() !== "crab") return null
  if (!/^(?:st|sts|stitch|stitches)$/.test(words.text(1))) return null
  words.at += 2
  return { kind: { basic: "sc" }, tog: false }
}

function readRemarked(words: Words): StitchName | null {
  const other = readOtherName(words)
  if (other) return other
  let elongated = false
  while (stitchRemarks.has(words.text()) || isColour(words.text()) || words.text() === "long") {
    if (words.text() === "long") elongated = true
    words.at += 1
    if (words.done()) return null
  }
  if (words.text() === "beg" || words.text() === "inv") words.at += 1
  const shaped = readHeightBetween(words) ?? readShape(words)
  if (shaped) return shaped
  const kind = readKind(words)
  if (!kind) return null
  if (!kind.gathered && words.accept("inc", "increase"))
    return { kind, tog: false, shape: "increase" }
  if (!kind.gathered && words.accept("dec", "decrease"))
    return {
      kind: { ...kind, gathered: { how: "together", legs: 2 } },
      tog: true,
      shape: "decrease",
    }
  const tog = kind.gathered?.how === "together" || kind.gathered?.how === "cluster"
  if (elongated && kind.basic === "sc" && !kind.gathered) return { kind, tog }
  return { kind, tog }
}

function readShape(words: Words): StitchName | null {
  const word = words.text()
  if (!word.includes("inc") && !word.includes("dec")) return null
  if (/^(inc|incs|increase|increases)$/.test(word)) {
    words.at += 1
    return { kind: { basic: "sc" }, tog: false, shape: "increase" }
  }
  if (/^(dec|decs|decrease|decreases|invdec)$/.test(word)) {
    words.at += 1
    return {
      kind: { basic: "sc", gathered: { how: "together", legs: 2 } },
      tog: true,
      shape: "decrease",
    }
  }
  return null
}

/** Kind only, for nouns as well as for work. */
export function readKind(words: Words): StitchKind | null {
  return words.recall("kind", readKindHere)
}

function readKindHere(words: Words): StitchKind | null {
  const local = words.locals.get(words.text())
  if (local?.kind && words.peek()?.type === "word") {
    words.at += 1
    acceptStitchWord(words)
    return local.kind
  }
  const gathered = readGathered(words)
  if (gathered) return gathered
  const first = words.peek()
  const post = words.text(1) === "post"
  if (first?.type !== "word" || (notNames.has(first.text) && !post)) return null
  let text = ""
  let best: { kind: StitchKind; length: number } | null = null
  for (let n = 0; n < longestName; n++) {
    const token = words.peek(n)
    if (!token) break
    if (token.type === "mark" && token.text === "-" && n > 0) {
      text += "-"
      continue
    }
    if (token.type !== "word" && token.type !== "number") break
    if (n > 0 && (notNames.has(token.text) || token.text === "group")) break
    if (token.type === "number" && !isTogether(words.text(n + 1))) break
    text += (text === "" || text.endsWith("-") ? "" : " ") + token.text
    const kind = stitchNamed(text, words.terms)
    if (kind) best = { kind, length: n + 1 }
  }
  if (!best) return null
  words.at += best.length
  acceptTogetherNumber(words)
  acceptStitchWord(words)
  return best.kind
}

function isTogether(text: string): boolean {
  return text === "tog" || text === "together"
}

function acceptTogetherNumber(words: Words): void {
  if (words.text() === "(" && words.text(1) === "s" && words.text(2) === ")") words.at += 3
}

const stitchWords = new Set(["st", "sts", "stitch", "stitches"])

/** "hdc st", "puff sts": the word after the name says nothing new. */
function acceptStitchWord(words: Words): void {
  if (stitchWords.has(words.text())) words.at += 1
}

function readGathered(words: Words): StitchKind | null {
  if (!namesGathered(words)) return null
  return words.attempt(() => {
    let legs: number | null = null
    if (words.isNumber()) {
      legs = words.value()
      words.at += 1
      words.accept("-")
    }
    const named = words.locals.get(words.text())?.kind
    const usual = usualGathered[words.text()]
    if (usual && !named && legs === null) {
      words.at += 1
      acceptStitchWord(words)
      const of = words.attempt(() => {
        if (!words.accept("of") || !words.isNumber()) return null
        const count = words.value()
        words.at += 1
        const kind = readKind(words)
        return kind && !kind.gathered ? { kind, count } : null
      })
      if (of) return { ...of.kind, gathered: { how: usual.how, legs: of.count } }
      return { basic: usual.how === "puff" ? "hdc" : "dc", gathered: usual }
    }
    if (legs === null) {
      // "dc cluster" without a number of legs.
      const kind = stitchNamed(words.text(), words.terms)
      const how =
        usualGathered[words.text(1)] ??
        (words.text(1) === "-" ? usualGathered[words.text(2)] : undefined)
      if (!kind || kind.gathered || !how) return null
      words.at += words.text(1) === "-" ? 3 : 2
      acceptStitchWord(words)
      return { ...kind, gathered: how }
    }
    const basic = stitchNamed(words.text(), words.terms)
    if (!basic || basic.gathered) return null
    words.at += 1
    words.accept("-")
    if (isTogether(words.text())) {
      words.at += 1
      return { ...basic, gathered: { how: "together" as const, legs } }
    }
    const how = usualGathered[words.text()]
    if (!how) return null
    words.at += 1
    acceptStitchWord(words)
    return { ...basic, gathered: { how: how.how, legs } }
  })
}

/** "cluster", "dc cluster", "dc-cluster", "3-dc cluster", "3 dc tog". */
function namesGathered(words: Words): boolean {
  if (words.isNumber()) {
    const name = words.text(1) === "-" ? 2 : 1
    const how = words.text(words.text(name + 1) === "-" ? name + 2 : name + 1)
    return isTogether(how) || usualGathered[how] !== undefined
  }
  const second = words.text(1)
  return (
    usualGathered[words.text()] !== undefined ||
    usualGathered[second === "-" ? words.text(2) : second] !== undefined
  )
}

const colours = new Set(
  "red blue green yellow white black grey gray pink purple violet orange brown cream beige teal navy lilac turquoise gold silver dark light drab ecru natural ivory mauve rose peach mint coral main contrast contrasting second new fresh".split(
    " ",
  ),
)

/** A word that names a colour. */
export function isColour(text: string): boolean {
  return colours.has(text)
}
