// A place called by a word nobody knows: "in next nook", "into the dimple of the next frill", "in the eye of every
// star". Which of them is said, what it is called is passed over, and told: the next natural unit of the round below.

import type { Noun, Place } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readNoun } from "./nouns.ts"
import { readUntil } from "./until.ts"

/** Longest name of such a place. */
const mostWords = 7

export function readUnknownPlace(cursor: Cursor, start: number): Place | null {
  const from = cursor.at
  let which: "next" | "each" | "same" | "any" | null = null
  let stranger = false
  let noun: Noun | null = null
  let end = -1
  for (let k = 0; k < mostWords && !cursor.done(); k++) {
    const said = (["each", "next", "same", "any"] as const).find((name) => cursor.is(name))
    if (said && which && which !== said) return null
    which = said ?? which
    if (cursor.peek()?.unknown) {
      stranger = true
      cursor.at += 1
      end = cursor.at
      continue
    }
    if (said || cursor.is("base")) {
      cursor.at += 1
      continue
    }
    // Whose it is: "of the next petal".
    if (stranger && cursor.is("of")) {
      cursor.at += 1
      continue
    }
    noun = stranger && which ? readNoun(cursor) : null
    if (noun) end = cursor.at
    break
  }
  if (!stranger || !which || end < 0) return null
  cursor.at = end
  for (let k = from; k < end; k++) if (cursor.lexemes[k]!.unknown) cursor.placeNames.add(k)
  const unit: Noun = noun && noun.what !== "ring" ? noun : { what: "unit" }
  if (which === "same") return { ...cursor.since(start), at: "same", noun: { what: "any" } }
  if (which === "each") {
    const until = readUntil(cursor) ?? { kind: "around" as const, implied: true as const }
    return { ...cursor.since(start), at: "each", nouns: [unit], until }
  }
  const order = which === "any" ? { order: "any" as const } : {}
  return { ...cursor.since(start), at: "next", noun: unit, count: 1, ...order }
}
