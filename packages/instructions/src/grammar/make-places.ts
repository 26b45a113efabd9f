// The places of stitches just named: "in next st and in next sp", "sc next st", "in back loop of".

import type { Place, Step, StitchName } from "../base/tree.ts"
import type { Cursor } from "./cursor.ts"
import { readPlace, readTarget } from "./places.ts"

/** The stitches with their place, and with further places told after it. */
export function placed(
  cursor: Cursor,
  given: StitchName,
  count: number,
  place: Place | null,
  start: number,
): Step[] {
  const stitch = formed(given, place)
  const step = { ...cursor.since(start), do: "work" as const, stitch, count }
  if (!place) return [{ ...step, place }]
  return placesOf(cursor, place).map((each) => ({
    ...step,
    start: each === place ? start : each.start,
    end: each.end,
    place: each,
  }))
}

/** "in back loop of", "around post of": the place says how the stitch is worked. */
function formed(stitch: StitchName, place: Place | null): StitchName {
  if (!place || (!place.loops && !place.post)) return stitch
  const kind = {
    ...stitch.kind,
    ...(place.loops ? { loops: place.loops } : {}),
    ...(place.post && !stitch.kind.post ? { post: place.post } : {}),
  }
  return { ...stitch, kind }
}

/** A place, or one without its preposition ("sc next st", "2 dc each st"). */
export function readWorkPlace(cursor: Cursor): Place | null {
  const place = readPlace(cursor)
  if (place?.over && cursor.is("in")) {
    // "over ch-3 in 2nd tr of ...": what is worked over, then the place.
    const real = readPlace(cursor)
    if (real)
      return {
        ...real,
        passes: "front",
        ...(place.at === "next" ? { covers: place.noun, coversCount: place.count } : {}),
      }
  }
  if (place) return place
  if (
    cursor.is("next") ||
    cursor.is("each") ||
    cursor.is("same") ||
    cursor.is("back-loop") ||
    cursor.is("front-loop") ||
    (cursor.is("last") && cursor.is("stitch", 1))
  )
    return cursor.attempt(() => readTarget(cursor, cursor.start(), "in"))
  return null
}

/** "... and in next 2 dc", "..., and in each ch-1 sp": all the places told. */
function placesOf(cursor: Cursor, first: Place): Place[] {
  const places: Place[] = [first]
  for (;;) {
    const place = cursor.attempt(() => {
      const comma = cursor.accept(",")
      if (!cursor.take("and") && !comma) return null
      if (comma && !cursor.is("in")) return null
      if (!cursor.is("in") && !cursor.is("next") && !cursor.is("each") && cursor.text() !== "over")
        return null
      const found = readPlace(cursor) ?? readTarget(cursor, cursor.start(), "in")
      // ", in the back loop": how it is worked, and no place more.
      if (found?.at === "next" && found.bare && found.loops) return null
      // "sc in next st, in next ch-sp work 3 dc": the second place is that of what follows.
      if (!found || startsWork(cursor)) return null
      return found
    })
    if (!place) return places
    const both = goRound(places[places.length - 1]!, place)
    if (both) places[places.length - 1] = both
    else places.push(place)
  }
}

/** "in each dc and in each ch sp until the corner": one walk over both. */
function goRound(first: Place, second: Place): Place | null {
  if (
    first.at !== "each" ||
    second.at !== "each" ||
    !first.until ||
    first.until.kind !== "around" ||
    !first.until.implied
  )
    return null
  if (first.every || second.every || first.pick || second.pick) return null
  return { ...second, nouns: [...first.nouns, ...second.nouns], start: first.start }
}

function startsWork(cursor: Cursor): boolean {
  return (
    cursor.is("work") || /^[([]$/.test(cursor.text()) || cursor.isNumber() || cursor.text() === ":"
  )
}
