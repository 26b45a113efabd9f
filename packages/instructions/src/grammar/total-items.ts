// One item of a total: "24 dc", "8 ch-2 sps", "6 shells", "12 sts on each side".

import type { StatedItem } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readNoun } from "./nouns.ts"
import { readKind } from "./stitch-names.ts"

export const separators = new Set([
  "+",
  ",",
  ";",
  "and",
  "&",
  "-",
  "/",
  "=",
  ".",
  "with",
  "plus",
  "--",
  ":",
  "*",
])

/** "per side", "on each side", "between corners", "along each edge": a part of the round. */
export function isPart(cursor: Cursor): boolean {
  // "11 sts on a side", "11 sts a side".
  if (cursor.is("side") && /^[)\].,;]?$/.test(cursor.text(1))) return true
  if (cursor.text() === "on" && cursor.is("side", 1)) return true
  if (cursor.text() === "per" || cursor.text() === "along each side") return true
  return (
    ((cursor.is("each") || cursor.text() === "a") &&
      (cursor.is("side", 1) || cursor.is("corner", 1) || cursor.is("group", 1))) ||
    (cursor.is("between") && (cursor.is("corner", 1) || cursor.is("corner", 2)))
  )
}

export function leads(cursor: Cursor): boolean {
  return (
    cursor.is("says-total") ||
    cursor.is("chat") ||
    cursor.is("made") ||
    cursor.is("stitch") ||
    cursor.is("counts") ||
    cursor.is("more") ||
    cursor.is("round")
  )
}

/** Words that may stand in a total without a bracket after its first figure. */
export function belongs(cursor: Cursor): boolean {
  if (
    cursor.is("repeat") ||
    cursor.is("join") ||
    cursor.is("turn") ||
    cursor.is("skip") ||
    cursor.is("fasten")
  )
    return false
  return (
    cursor.is("says-total") ||
    cursor.is("made") ||
    cursor.is("round") ||
    cursor.is("around") ||
    cursor.is("chat") ||
    cursor.is("end") ||
    cursor.is("of") ||
    cursor.is("with") ||
    cursor.is("side") ||
    cursor.is("size") ||
    cursor.is("each") ||
    cursor.is("between") ||
    (cursor.is("in") &&
      (cursor.is("end", 1) ||
        cursor.is("side", 1) ||
        cursor.is("round", 1) ||
        cursor.is("each", 1) ||
        cursor.text(1) === "total" ||
        cursor.is("that", 1)))
  )
}

/** After the name of a stitch these make it part of a longer one: "3 dc groups". */
function isPartOfNoun(cursor: Cursor): boolean {
  return cursor.is("group") || cursor.is("space") || cursor.text() === "-"
}

export function readItem(cursor: Cursor, end: number): StatedItem | null {
  const start = cursor.start()
  const count = cursor.takeCount(0)
  if (count === null) return null
  const span = () => cursor.since(start)
  cursor.attempt(() =>
    cursor.accept("x") && (cursor.isNumber() || cursor.is("chain") || cursor.is("group"))
      ? true
      : null,
  )
  // "18 white sc, 18 red sc".
  while (cursor.is("colour") && cursor.at < end - 1) cursor.at += 1
  const first = cursor.at
  const ofGroups = cursor.attempt(() => {
    // "6, 5dc groups": six of them.
    if (!cursor.accept(",") || cursor.takeCount(1) === null) return null
    cursor.accept("-")
    return readKind(cursor) && cursor.take("group") ? true : null
  })
  if (ofGroups) return { ...span(), count, unit: "groups", word: "groups" }
  const word = () =>
    cursor.lexemes
      .slice(first, cursor.at)
      .map(({ text }) => text)
      .join(" ")
  while (cursor.at < end && (cursor.is("size") || cursor.accept("total")))
    if (cursor.is("size")) cursor.at += 1
  if (cursor.is("side") && (cursor.is("space", 1) || cursor.is("chain", 1))) cursor.at += 1
  if (cursor.is("corner") && (cursor.is("space", 1) || cursor.is("chain", 1) || cursor.isNumber(1)))
    cursor.at += 1
  if (cursor.accept("sts total")) return { ...span(), count, unit: "stitches", word: word() }
  if (cursor.is("stitch")) {
    cursor.at += 1
    const chains =
      cursor.attempt(() => {
        if (!cursor.accept("with", "incl", "including", "counting", "inclusive", "include"))
          return null
        cursor.take("each")
        return cursor.take("chain") ? true : null
      }) !== null
    if (chains) cursor.take("stitch", "space")
    cursor.accept("total")
    return { ...span(), count, unit: chains ? "with-chains" : "stitches", word: word() }
  }
  const at = cursor.at
  const kind = readKind(cursor)
  if (kind && !isPartOfNoun(cursor)) {
    cursor.accept("stated", "total")
    // "(12 dc in ring)", told after they are made.
    cursor.attempt(() =>
      cursor.take("in") && cursor.take("ring") ? cursor.at >= end || null : null,
    )
    return { ...span(), count, unit: "kind", kind, word: word() }
  }
  cursor.at = at
  if (cursor.is("picot") && !cursor.is("space", 1)) {
    cursor.at += 1
    return { ...span(), count, unit: "picots", word: word() }
  }
  if (cursor.accept("repeats", "reps", "repeat"))
    return { ...span(), count, unit: "repeats", word: word() }
  if (cursor.is("group") || cursor.is("tip") || cursor.is("dip")) {
    let each: number | null = null
    const group = cursor.attempt(() => {
      const noun = readNoun(cursor)
      if (noun?.what === "space") return null
      each = noun?.what === "group" ? (noun.size ?? null) : null
      cursor.attempt(() => {
        // "6 petals of 6 sts": the second figure is told, and checked with the first.
        if (!cursor.accept("of")) return null
        const count = cursor.takeCount(0)
        if (count === null) return null
        each = count
        return readKind(cursor) ?? (cursor.take("stitch") ? true : null)
      })
      return true
    })
    if (group)
      return { ...span(), count, unit: "groups", ...(each === null ? {} : { each }), word: word() }
    cursor.at = at
  }
  const noun = readNoun(cursor)
  if (noun?.what === "space" && cursor.take("picot"))
    return {
      ...span(),
      count,
      unit: "picots",
      ...(noun.size === undefined ? {} : { size: noun.size }),
      word: word(),
    }
  if (noun?.what === "space" || noun?.what === "gap" || noun?.what === "corner") {
    cursor.take("corner", "side")
    if (noun.size === undefined && noun.what === "corner")
      return { ...span(), count, unit: "groups", word: word() }
    return {
      ...span(),
      count,
      unit: "space",
      ...(noun.size === undefined ? {} : { size: noun.size }),
      word: word(),
    }
  }
  if (noun?.what === "chain") return { ...span(), count, unit: "chains", word: word() }
  if (noun?.what === "group") return { ...span(), count, unit: "groups", word: word() }
  cursor.at = at
  if (/^(?:or|to|then|and|-)$/.test(cursor.text()) && cursor.isNumber(1))
    return { ...span(), count, unit: "stitches", word: "" }
  if (
    cursor.at >= end ||
    /^[)\].,:/;}!]?$/.test(cursor.text()) ||
    /^(?:total|in total|in all|altogether)$/.test(cursor.text())
  )
    return { ...span(), count, unit: "stitches", word: "" }
  return null
}
