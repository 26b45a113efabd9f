// Names of stitches in running text: abbreviations, full words, post and loop forms, stitches
// worked together, clusters, and what the pattern itself defines.

import type { StitchKind } from "@roundwright/stitches"
import { table } from "../base/table.ts"
import type { StitchName } from "../base/tree.ts"
import { type Cursor, stitchNamed } from "./cursor.ts"

/** Longest name in words: "extended half double crochet stitches 2 together". */
const longestName = 6

/** Gathered stitches whose legs are not named: the usual number, common practice, no source. */
const usualGathered: Readonly<Record<string, NonNullable<StitchKind["gathered"]>>> = table({
  cluster: { how: "cluster", legs: 3 },
  clusters: { how: "cluster", legs: 3 },
  cl: { how: "cluster", legs: 3 },
  cls: { how: "cluster", legs: 3 },
  clst: { how: "cluster", legs: 3 },
  clus: { how: "cluster", legs: 3 },
  popcorn: { how: "popcorn", legs: 5 },
  popcorns: { how: "popcorn", legs: 5 },
  pop: { how: "popcorn", legs: 5 },
  pc: { how: "popcorn", legs: 5 },
  pcs: { how: "popcorn", legs: 5 },
  puff: { how: "puff", legs: 3 },
  puffs: { how: "puff", legs: 3 },
  ps: { how: "puff", legs: 3 },
  bobble: { how: "bobble", legs: 5 },
  bobbles: { how: "bobble", legs: 5 },
  bo: { how: "bobble", legs: 5 },
  tuft: { how: "bobble", legs: 5 },
  tufts: { how: "bobble", legs: 5 },
})

/** The stitch named here, stepped over; null when none is. */
export function readStitch(cursor: Cursor): StitchName | null {
  return cursor.attempt(() => {
    const stitch = readRemarked(cursor)
    return stitch
  })
}

/** "11 tr [dc]": the same stitch in the other terms, in a bracket behind its name. */
function readOtherTerm(cursor: Cursor): true | null {
  if (!cursor.accept("[", "(", "{")) return null
  let name = ""
  for (let k = 0; k < 4 && cursor.peek()?.type === "word"; k++) {
    name += cursor.text()
    cursor.at += 1
  }
  if (!cursor.accept("]", ")", "}")) return null
  return stitchNamed(name, "US") !== null || stitchNamed(name, "UK") !== null ? true : null
}

/** "stitch between dc and tr": of a height between two, which is the extended form of the lower. */
function readHeightBetween(cursor: Cursor): StitchName | null {
  if (!cursor.take("stitch") || !cursor.take("between")) return null
  const lower = readKind(cursor)
  if (!lower || !cursor.take("and")) return null
  const upper = readKind(cursor)
  if (!upper || lower.gathered || upper.gathered) return null
  const extended = heightsBetween[`${lower.basic} ${upper.basic}`]
  return extended ? { kind: { basic: extended }, tog: false } : null
}

const heightsBetween: Readonly<Record<string, StitchKind["basic"]>> = table({
  "sc hdc": "esc",
  "sc dc": "hdc",
  "hdc dc": "ehdc",
  "dc tr": "edc",
  "tr dtr": "etr",
})

/** Words about a stitch that change neither its height nor its place. */
function isRemark(cursor: Cursor): boolean {
  if (cursor.is("in") || cursor.is("stitch")) return false
  return (
    cursor.is("adjective") ||
    cursor.is("colour") ||
    cursor.is("size") ||
    cursor.is("more") ||
    cursor.is("start") ||
    cursor.is("first") ||
    /^(?:inv|crab|loosely|work)$/.test(cursor.text())
  )
}

function readRemarked(cursor: Cursor): StitchName | null {
  // "spike st", "crab st": a single crochet worked lower down, or backwards.
  if (/^(?:spike|crab|reverse)$/.test(cursor.text()) && cursor.is("stitch", 1)) {
    cursor.at += 2
    return { kind: { basic: "sc" }, tog: false }
  }
  const first = cursor.at
  while (isRemark(cursor)) {
    cursor.at += 1
    if (cursor.text() === "-") cursor.at += 1
    if (cursor.done()) return null
  }
  // "first sc" names a stitch only where work is being told; the caller decides.
  if (cursor.at > first && cursor.is("stitch")) return null
  const between = cursor.attempt(() => readHeightBetween(cursor))
  if (between) return between
  const shaped = readShape(cursor)
  if (shaped) return shaped
  const kind = readKind(cursor)
  if (!kind) return null
  if (!kind.gathered && cursor.take("increase")) return { kind, tog: false, shape: "increase" }
  if (!kind.gathered && cursor.take("decrease"))
    return {
      kind: { ...kind, gathered: { how: "together", legs: 2 } },
      tog: true,
      shape: "decrease",
    }
  return { kind, tog: kind.gathered?.how === "together" || kind.gathered?.how === "cluster" }
}

function readShape(cursor: Cursor): StitchName | null {
  if (cursor.text().endsWith("ing")) return null
  if (cursor.take("increase")) {
    if (cursor.text() === "s") cursor.at += 1
    return { kind: { basic: "sc" }, tog: false, shape: "increase" }
  }
  if (cursor.take("decrease"))
    return {
      kind: { basic: "sc", gathered: { how: "together", legs: 2 } },
      tog: true,
      shape: "decrease",
    }
  return null
}

/** Kind only, for nouns as well as for work. */
export function readKind(cursor: Cursor): StitchKind | null {
  const word = cursor.peek()
  if (!word || (word.type !== "word" && word.type !== "number")) return null
  const local = cursor.locals.get(word.text)
  if (local?.kind && word.type === "word") {
    cursor.at += 1
    cursor.take("stitch")
    return local.kind
  }
  const gathered = cursor.attempt(() => readGathered(cursor))
  if (gathered) return gathered
  if (word.type !== "word") return null
  const begins = word.classes.size === 0 || startsName(cursor)
  if (!begins) return null
  let text = ""
  let best: { kind: StitchKind; length: number } | null = null
  for (let n = 0; n < longestName; n++) {
    const next = cursor.peek(n)
    if (!next) break
    if (next.text === "-" && n > 0) {
      text += "-"
      continue
    }
    if (next.type === "number" && !cursor.is("together", n + 1)) break
    if (next.type !== "word" && next.type !== "number") break
    if (n > 0 && endsName(cursor, n)) break
    text += (text === "" || text.endsWith("-") ? "" : " ") + next.text
    const kind = stitchNamed(text, cursor.terms)
    if (kind) best = { kind, length: n + 1 }
  }
  if (!best) return null
  cursor.at += best.length
  acceptStitchWord(cursor)
  return best.kind
}

/** Words of other classes that may begin a name: "half double", "front post dc", "blo sc", "round post". */
function startsName(cursor: Cursor): boolean {
  return (
    cursor.is("half") ||
    cursor.is("back-loop") ||
    cursor.is("front-loop") ||
    cursor.is("third-loop") ||
    cursor.is("adjective") ||
    /^(?:front|back|bo)$/.test(cursor.text()) ||
    stitchNamed(cursor.text(), cursor.terms) !== null
  )
}

function endsName(cursor: Cursor, ahead: number): boolean {
  const text = cursor.text(ahead)
  if (text === "group" || text === "groups" || text === "cluster") return true
  return (
    (cursor.is("in", ahead) ||
      cursor.is("of", ahead) ||
      cursor.is("and", ahead) ||
      cursor.is("next", ahead) ||
      cursor.is("each", ahead) ||
      cursor.is("to", ahead)) &&
    !cursor.is("post", ahead)
  )
}

/** "hdc st", "puff sts", "dc's", "sc (s)": what follows the name says nothing new. */
function acceptStitchWord(cursor: Cursor): void {
  cursor.attempt(() => (cursor.accept("'") && cursor.accept("s") ? true : null))
  if (cursor.text() === "(" && cursor.text(1) === "s" && cursor.text(2) === ")") cursor.at += 3
  cursor.take("stitch")
  cursor.attempt(() => readOtherTerm(cursor))
}

/** "cluster", "dc cluster", "dc-cluster", "3-dc cluster", "3 dc tog", "cluster of 3 dc". */
function readGathered(cursor: Cursor): StitchKind | null {
  let legs: number | null = null
  const usual = usualGathered[cursor.text()]
  if (usual && !cursor.locals.get(cursor.text())?.kind) {
    cursor.at += 1
    cursor.attempt(() => (cursor.accept("-") && cursor.take("stitch") ? true : null))
    cursor.take("stitch")
    const of = cursor.attempt(() => {
      if (!cursor.accept("of")) return null
      const count = cursor.takeCount(2)
      const kind = count === null ? null : readKind(cursor)
      return kind && !kind.gathered ? { kind, count: count! } : null
    })
    if (of) return { ...of.kind, gathered: { how: usual.how, legs: of.count } }
    return { basic: usual.how === "puff" ? "hdc" : "dc", gathered: usual }
  }
  if (cursor.isNumber()) {
    legs = cursor.takeCount(2)
    if (legs === null) return null
    cursor.accept("-")
  }
  const written = /^(.{2,4})(?:cl|cls|clus|cluster|pop|pc|puff)$/.exec(cursor.text())
  const joinedName = written
    ? stitchNamed(written[1] === "trb" ? "tr" : written[1]!, cursor.terms)
    : null
  if (joinedName && !joinedName.gathered) {
    // "5trcl", "dccl"
    cursor.at += 1
    cursor.take("stitch")
    return {
      ...joinedName,
      gathered: {
        how: /pop|pc$/.test(cursor.lexemes[cursor.at - 1]!.text) ? "popcorn" : "cluster",
        legs: legs ?? 3,
      },
    }
  }
  const basic = basicName(cursor)
  if (!basic) return null
  cursor.accept("-")
  if (cursor.is("together")) {
    if (legs === null) return null
    cursor.at += 1
    return { ...basic, gathered: { how: "together", legs } }
  }
  const how = usualGathered[cursor.text()]
  if (!how) return null
  cursor.at += 1
  cursor.attempt(() => (cursor.accept("-") && cursor.take("stitch") ? true : null))
  cursor.take("stitch")
  return { ...basic, gathered: legs === null ? how : { how: how.how, legs } }
}

/** A counted stitch: "3 dc", "dc", "a dc", "sc 5", "inc x 6". */
export interface CountedStitch {
  readonly count: number
  readonly stitch: StitchName
  /** A figure was given. */
  readonly counted: boolean
}

export function readCounted(cursor: Cursor): CountedStitch | null {
  return cursor.attempt(() => {
    if (cursor.isNumber()) {
      // "3-dc cluster" is a name, as is "2 dc tog"; "3 dc" a count and a name.
      const named = cursor.attempt(() => {
        const joined = cursor.text(1) === "-"
        const stitch = readStitch(cursor)
        if (!stitch) return null
        const words = cursor.lexemes
          .slice(Math.max(0, cursor.at - 2), cursor.at)
          .map(({ text }) => text)
        const last = words.find((text) => usualGathered[text] !== undefined) ?? ""
        // "3 dc cluster" is one, "3 dc clusters" are three.
        const one =
          stitch.kind.gathered !== undefined &&
          stitch.kind.gathered.legs > 1 &&
          usualGathered[last] !== undefined &&
          !last.endsWith("s")
        return joined || one || stitch.kind.gathered?.how === "together" ? stitch : null
      })
      if (named) return { count: 1, stitch: named, counted: false }
      const count = cursor.takeCount()
      if (count === null) return null
      cursor.accept("x", "more")
      cursor.attempt(() => (cursor.accept("of") ? true : null))
      const stitch = readStitch(cursor)
      return stitch ? { count, stitch, counted: true } : null
    }
    const stitch = readStitch(cursor)
    if (!stitch) return null
    const times = cursor.attempt(() => readStitchTimes(cursor))
    return { count: times ?? 1, stitch, counted: times !== null }
  })
}

/** "inc x 6", "dec 4 times", "sc 5": how many of them, after the name. */
function readStitchTimes(cursor: Cursor): number | null {
  const crossed = cursor.accept("x")
  const count = cursor.takeCount(1)
  if (count === null) return null
  if (cursor.is("more") && cursor.is("times", 1)) {
    // "dc 11 more times": so many beside the chain that stands for the first.
    cursor.at += 2
    return count
  }
  if (cursor.accept("times", "time", "x") || crossed) return cursor.is("more") ? null : count
  // "dc 11 sts in ring", "single crochet 8 stitches into the circle".
  const bare = cursor.is("stitch") && /^[,;.]?$/.test(cursor.text(1))
  if (cursor.is("stitch") && (cursor.is("in", 1) || cursor.is("around", 1) || bare)) {
    cursor.at += 1
    return count
  }
  // "sc 180 around ring".
  if (cursor.is("around") && (cursor.is("ring", 1) || cursor.is("bought-ring", 1))) return count
  // "sc 2, inc 1": the count after the name, where nothing follows that it could count.
  return isEndOfCount(cursor) ? count : null
}

function isEndOfCount(cursor: Cursor): boolean {
  const text = cursor.text()
  if (text === "" || /^[,;.)\]([]$/.test(text) || /^\*+$/.test(text) || cursor.is("and"))
    return true
  // "dc 1 in next st", "BPdc 2 in next": the figure counts the stitch, not the places.
  return cursor.is("in") || cursor.is("next") || cursor.is("same")
}

/** Most words of a plain stitch's name: "half double crochet". */
const mostNameWords = 3

/** The longest name of a plain stitch here, stepped over. */
function basicName(cursor: Cursor): StitchKind | null {
  for (let words = mostNameWords; words >= 1; words--) {
    const name = cursor.lexemes.slice(cursor.at, cursor.at + words)
    if (name.length < words || name.some(({ type }) => type !== "word")) continue
    const kind = stitchNamed(name.map(({ text }) => text).join(" "), cursor.terms)
    if (!kind || kind.gathered) continue
    cursor.at += words
    return kind
  }
  return null
}
