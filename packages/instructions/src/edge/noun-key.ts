// What a noun says as a key: equal for nouns that mean the same.

import type { Noun } from "../base/tree.ts"

const nounKeys = new WeakMap<Noun, string>()

/** Equal for nouns that mean the same; remembered, as it is asked for at every step. */
export function nounKey(noun: Noun): string {
  const known = nounKeys.get(noun)
  if (known !== undefined) return known
  const key = `meaning:${writtenKey(noun)}`
  nounKeys.set(noun, key)
  return key
}

function writtenKey(noun: Noun): string {
  const { what, size, kind, sides } = noun
  const marks = `${noun.corner ? "c" : ""}|${noun.small ? "s" : ""}|${noun.side ? "d" : ""}|${noun.middle ? "m" : ""}|${noun.unworked ? "u" : ""}|${noun.betweenGroups ? "b" : ""}`
  const between = sides ? sides.map((side) => side.basic).join("&") : ""
  const named = kind ? `${kind.basic}:${kind.gathered?.how ?? ""}${kind.gathered?.legs ?? ""}` : ""
  return `${what}|${size ?? ""}|${marks}|${between}|${named}`
}
