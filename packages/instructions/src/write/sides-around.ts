// A polygon that grows in its own fabric, as patterns have it: "dc in each st around, working (2 dc, ch 2, 2 dc) in each
// corner sp". One stitch along all sides, one group in every corner; where a side differs there is no such wording.

import type { Part } from "./part.ts"

/** No polygon has fewer. */
const fewestCorners = 3

const inCorner = /^(.*) in next (corner (?:sp|st))$/
const inSame = /^(.*) in same (?:sp|st)$/

/** The words; null for a round that is told otherwise. */
export function sidesAround(parts: readonly Part[]): string | null {
  const [first] = parts
  // The round may begin in a corner, whose group then differs by its starting chain.
  const head = first && inSame.test(first.text) ? first.text : null
  const rest = head === null ? parts : parts.slice(1)
  const corner = rest.find(({ text }) => inCorner.test(text))
  const side = rest.find(({ text }) => text !== corner?.text)
  const told = corner && inCorner.exec(corner.text)
  if (!side?.each || !told) return null
  const corners = rest.filter(({ text }) => text === corner.text).length
  const alike = rest.every(({ text }) => text === corner.text || text === side.text)
  if (!alike || corners + (head === null ? 0 : 1) < fewestCorners) return null
  const [, group, place] = told
  const each = side.each.several.replace(/\bsts\b/, "st").replace(/\bsps\b/, "sp")
  const remaining = head === null ? "each" : "each remaining"
  return [
    ...(head === null ? [] : [head]),
    `${side.each.work} in each ${each} around`,
    `working ${group} in ${remaining} ${place}`,
  ].join(", ")
}
