// "In next": "in next 2 sts", "in next ch-3 sp", "in any corner", "in last sc", "in next sc and hdc".

import type { Noun, Place } from "../base/tree.ts"
import { gapIf } from "../edge/gap-sides.ts"
import type { Cursor } from "./cursor.ts"
import { acceptTwo, chainOfSize, readNoun, sizesGroup } from "./nouns.ts"
import { readBeside } from "./places-beside.ts"
import { readPicked } from "./places-picked.ts"

export function readNext(
  cursor: Cursor,
  start: number,
  between: boolean,
  preposition: string,
): Place | null {
  let order: "first" | "last" | "any" | undefined
  const said = cursor.is("next")
  if (said) {
    cursor.at += 1
    if (cursor.is("and") && cursor.is("next", 1)) cursor.at += 2
    else cursor.take("next")
    const picked = cursor.attempt(() => readPicked(cursor, start))
    if (picked) return picked
  } else if (isAnyOf(cursor)) {
    order = "any"
    cursor.at += 1
    cursor.accept("of")
    cursor.take("that")
  } else if (cursor.is("first")) {
    order = "first"
    cursor.at += 1
  } else if (cursor.is("last") && !cursor.is("repeat", 1) && !cursor.is("round", 1)) {
    order = "last"
    cursor.at += 1
  }
  cursor.take("rest")
  const figure = cursor.isNumber()
  const placed = countedNext(cursor, start, between)
  if (placed?.at !== "next") return placed
  const named = cursor.lexemes[cursor.at - 1]?.text ?? ""
  if (
    said &&
    !figure &&
    placed.noun.what === "space" &&
    /^(?:sps|spaces|loops|lps|arches|chsps)$/.test(named)
  )
    // "in following ch-1 spaces": in each of those left.
    return {
      ...cursor.since(start),
      at: "each",
      nouns: [placed.noun],
      until: { kind: "around", rest: true },
    }
  const plural = cursor.lexemes[cursor.at - 1]?.text ?? ""
  if (
    order === undefined &&
    !said &&
    placed.count === 1 &&
    /^(?:in|into)$/.test(preposition) &&
    (placed.noun.what === "space" || placed.noun.what === "corner") &&
    /^(?:sps|spaces|loops|lps|corners|arches|chsps)$/.test(plural)
  )
    // "in corners", "in side sps": in each of them.
    return { ...cursor.since(start), at: "each", nouns: [placed.noun], until: { kind: "around" } }
  const beside = readBeside(cursor, 1)
  if (beside) return { ...placed, order: "any", beside }
  if (placed.noun.what === "chain" && /^(?:over|under)$/.test(preposition) && placed.count === 1) {
    // "under next 2 ch", "under ch 2": all of the chains there.
    const size = cursor.takeCount(1)
    const noun: Noun = { what: "space", ...(size === null ? {} : { size }) }
    cursor.attempt(() => {
      if (!cursor.accept("between")) return null
      while (cursor.take("each", "next"));
      if (!acceptTwo(cursor)) return null
      return readNoun(cursor) ? true : null
    })
    return { ...placed, ...cursor.since(start), noun, ...(said ? {} : { bare: true }) }
  }
  if (placed.noun.what === "chain" && preposition === "under")
    return { ...placed, noun: { what: "space", size: placed.count }, count: 1 }
  if (order !== undefined) return { ...placed, order }
  return said ? placed : { ...placed, bare: true }
}

export function countedNext(cursor: Cursor, start: number, between: boolean): Place | null {
  if (cursor.value() === 1 && cursor.isNumber() && /^(?:after|following)$/.test(cursor.text(1))) {
    // "in the one after that".
    cursor.at += 2
    cursor.accept("that", "it")
    return { ...cursor.since(start), at: "next", noun: { what: "stitch" }, count: 1 }
  }
  if (cursor.value() === 1 && cursor.isNumber() && /^[,;.)*]?$/.test(cursor.text(1))) {
    // "in the next one".
    cursor.at += 1
    return { ...cursor.since(start), at: "next", noun: { what: "stitch" }, count: 1 }
  }
  let count = 1
  const size =
    cursor.is("chain", 1) &&
    (cursor.is("space", 2) || (cursor.text(2) === "-" && cursor.is("space", 3)))
  if (cursor.isNumber() && cursor.text(1) !== "-" && !size && !sizesGroup(cursor)) {
    const value = cursor.takeCount(1)
    if (value === null) return null
    count = value
  }
  cursor.take("more")
  if (cursor.is("stitch") && cursor.text(1) === "of" && cursor.is("chain", 2) && count === 1) {
    // "in next st of ch".
    const named = !cursor.isNumber(3) && cursor.text(3) !== "-" && !cursor.is("space", 3)
    if (named) {
      cursor.at += 3
      return { ...cursor.since(start), at: "next", noun: { what: "chain" }, count: 1 }
    }
  }
  if (cursor.is("adjective") && cursor.is("stitch", 1)) cursor.at += 1
  // "in next (corner) sc": an aside that says which it is.
  if (
    /^[([]$/.test(cursor.text()) &&
    (cursor.is("corner", 1) || cursor.is("centre", 1) || cursor.is("same", 1)) &&
    /^[)\]]$/.test(cursor.text(2))
  )
    cursor.at += 3
  const named = readNoun(cursor)
  if (named?.what === "ring" && count > 1) return null
  const noun = named && count === 1 ? chainOfSize(cursor, named) : named
  if (!noun) {
    if (count > 1) return { ...cursor.since(start), at: "next", noun: { what: "stitch" }, count }
    // "in next" alone: the next stitch.
    const previous = cursor.lexemes[cursor.at - 1]
    const alone =
      previous &&
      ["next", "last", "first"].some((name) => previous.classes.has(name as "next")) &&
      (cursor.done() ||
        cursor.peek()!.type === "mark" ||
        cursor.is("and") ||
        cursor.is("place") ||
        cursor.is("until"))
    if (!alone) return null
    cursor.take("place")
    return { ...cursor.since(start), at: "next", noun: { what: "stitch" }, count: 1 }
  }
  if (noun.what === "picot")
    cursor.attempt(() => {
      // "in picot of next point": whose it is says nothing new.
      if (!cursor.take("of", "in")) return null
      while (cursor.take("next", "each"));
      const owner = readNoun(cursor)
      return owner?.what === "group" || owner?.what === "corner" ? true : null
    })
  if (between) return betweenPlace(cursor, start, noun, count)
  const nouns = cursor.attempt(() => readNounList(cursor, noun))
  if (nouns) {
    // "in next 2 dc and next ch-2 sp": the figure is of the first.
    const places = nouns.map((each, i) => ({
      ...cursor.since(start),
      at: "next" as const,
      noun: each,
      count: i === 0 ? count : 1,
    }))
    return { ...cursor.since(start), at: "list", places }
  }
  if ((noun.what === "chain" || noun.what === "space") && count === 1)
    cursor.attempt(() => {
      // "over the ch 1 between cluster sts": where it is tells nothing new.
      if (!cursor.accept("between")) return null
      while (cursor.take("each", "next"));
      if (!acceptTwo(cursor)) return null
      return readNoun(cursor) ? true : null
    })
  return { ...cursor.since(start), at: "next", noun, count }
}

/** "in next sc and hdc", "in next dc and next ch-1 sp": one after the other. */
function readNounList(cursor: Cursor, first: Noun): Noun[] | null {
  const nouns = [first]
  // "and 2ch sp": a figure that is the size of a space.
  const sized = () => {
    const chain = cursor.text(2) === "-" ? 3 : 2
    return (
      cursor.is("chain", chain) &&
      cursor.is("space", cursor.text(chain + 1) === "-" ? chain + 2 : chain + 1)
    )
  }
  while (cursor.is("and") && !cursor.is("in", 1) && (!cursor.isNumber(1) || sized())) {
    const more = cursor.attempt(() => {
      cursor.at += 1
      const next = cursor.take("next")
      const noun = readNoun(cursor)
      // "in next st and chain 1": the chain is made.
      if (noun?.what === "chain" && !next && cursor.isNumber()) return null
      if (!noun || (!next && (cursor.is("in") || noun.kind?.basic === "sl st"))) return null
      return noun.what === "stitch" || noun.what === "space" || noun.what === "chain" ? noun : null
    })
    if (!more) break
    nouns.push(more)
  }
  return nouns.length > 1 ? nouns : null
}

function betweenPlace(cursor: Cursor, start: number, noun: Noun, count: number): Place {
  let other: Noun | null = null
  if (cursor.is("and"))
    other = cursor.attempt(() => {
      cursor.at += 1
      const next = cursor.take("next", "same")
      return readNoun(cursor) ?? (next && /^[,;.)*]?$/.test(cursor.text()) ? noun : null)
    })
  acceptOwner(cursor)
  const what = gapIf(noun, true, other)
  const everywhere = cursor.attempt(() => {
    if (!cursor.take("in", "around")) return null
    if (!cursor.take("each")) return null
    return cursor.take("side") ? true : null
  })
  if (everywhere)
    return { ...cursor.since(start), at: "each", nouns: [what], until: { kind: "around" } }
  // "between next 2 groups" names one gap.
  const gaps = other || count === 2 ? 1 : count
  return { ...cursor.since(start), at: "next", noun: what, count: gaps }
}

/** "between two dc of next shell": whose they are. */
function acceptOwner(cursor: Cursor): void {
  cursor.attempt(() => {
    if (!cursor.take("of")) return null
    while (cursor.take("next", "each", "same", "that"));
    const owner = readNoun(cursor)
    return owner && owner.what !== "stitch" ? true : null
  })
}

/** "any", "any of", "one of". */
function isAnyOf(cursor: Cursor): boolean {
  return cursor.isNumber() ? cursor.value() === 1 && cursor.text(1) === "of" : cursor.is("any")
}
