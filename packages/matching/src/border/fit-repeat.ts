// A side's count brought to a repeat of m q + r: the nearest count that fits, and where places are doubled or skipped so that
// they lie evenly, mirrored about the middle of the side.

import { RoundwrightError } from "@roundwright/numerics"

export interface FittedSide {
  readonly from: number
  readonly count: number
  /** q of m q + r. */
  readonly repeats: number
  /** Stitches more (positive) or fewer than places. */
  readonly added: number
  /** Places, from 1, that get two stitches or none. */
  readonly places: readonly number[]
  /** Change of the edge as a share. */
  readonly share: number
  readonly text: string
}

/** "6 + 1", "multiple of 6 plus 1", "6 less 2", "6". @throws RoundwrightError `bad-repeat` */
export function readRepeat(text: string): { readonly of: number; readonly plus: number } {
  const match =
    /^\s*(?:(?:a\s+)?multiples?\s+of\s+)?(\d{1,4})(?:\s{0,9}(?:sts?|stitches))?(?:\s{0,9}(\+|plus|-|−|less|minus)\s{0,9}(\d{1,4}))?(?:\s{0,9}(?:sts?|stitches))?\s{0,9}$/i.exec(
      text,
    )
  const of = Number(match?.[1])
  const rest = match?.[3] === undefined ? 0 : Number(match[3])
  const less = /^[-−lm]/i.test(match?.[2] ?? "")
  if (match && of > 0 && (!less || rest < of)) return { of, plus: less && rest > 0 ? -rest : rest }
  throw new RoundwrightError("bad-repeat", `"${text.slice(0, 40)}" is no repeat.`, {
    hint: "Write it such as: 6 + 1, or: multiple of 6 plus 1.",
  })
}

/**
 * The nearest count of at least one repeat; of two as near the larger, which no side is drawn in by.
 * @param places stitches there are to work into @param wanted repeats, where their number is given
 * @throws RoundwrightError `bad-repeat`, `too-short`
 */
export function fitRepeat(places: number, of: number, plus = 0, wanted?: number): FittedSide {
  if (!Number.isInteger(of) || of < 1 || !Number.isInteger(plus) || plus <= -of)
    throw new RoundwrightError("bad-repeat", `A repeat of ${of} plus ${plus} cannot be worked.`, {
      hint: "Give a whole number above 0, and none or some more or less.",
    })
  if (!Number.isInteger(places) || places < 1)
    throw new RoundwrightError("bad-count", `There cannot be ${places} stitches on a side.`)
  const exact = wanted ?? (places - plus) / of
  const repeats = Math.max(1, Math.floor(exact + 0.5))
  const count = repeats * of + plus
  const added = count - places
  const many = Math.abs(added)
  if (added > places)
    throw new RoundwrightError(
      "too-short",
      `A side of ${places} stitches is too short for one repeat of ${of}${plusWords(plus)}.`,
      { hint: "Take a smaller repeat, or work a plain round that widens the side first." },
    )
  const changed = evenPlaces(places, many)
  return {
    from: places,
    count,
    repeats,
    added,
    places: changed,
    share: added / places,
    text: `${fitText(places, { count, repeats, added, places: changed }, of, plus)}${wanted === undefined ? otherText(places, repeats, added, of, plus) : ""}`,
  }
}

/** `many` of `places`, from 1, as even as whole places allow and mirrored about the middle; each within one of its even place. */
export function evenPlaces(places: number, many: number): number[] {
  return Array.from({ length: many }, (_, k) => {
    const at = ((k + 0.5) * places) / many
    // Rounded towards the middle on both halves, so that the side is the same read from either end.
    const first = k < many / 2
    return first ? Math.floor(at) + 1 : places - Math.floor(((many - 1 - k + 0.5) * places) / many)
  })
}

/** The next count the other way; of a count that fits both beside it. */
function otherText(places: number, own: number, added: number, of: number, plus: number): string {
  if (of === 1) return ""
  if (added === 0) {
    const [below, above] = [(own - 1) * of + plus, (own + 1) * of + plus]
    return ` (beside it ${below > 0 ? `${below} and ` : ""}${above})`
  }
  const repeats = own + (added > 0 ? -1 : 1)
  const count = repeats * of + plus
  if (repeats < 1) return ""
  return ` (or ${count}, ${repeats} repeats, ${Math.abs(count - places)} ${count > places ? "more" : "fewer"})`
}

function fitText(
  places: number,
  { count, repeats, added, places: at }: Pick<FittedSide, "count" | "repeats" | "added" | "places">,
  of: number,
  plus: number,
): string {
  const sum = `${count} = ${of} x ${repeats}${plusWords(plus)}`
  if (added === 0) return `${sum}: it fits as it is`
  const many = Math.abs(added)
  const what = added > 0 ? "work 2 in 1" : "skip 1"
  const where =
    many === 1
      ? `at place ${at[0]}`
      : many <= 12
        ? `at places ${at.slice(0, -1).join(", ")} and ${at.at(-1)}`
        : `${many} times, about every ${(places / many).toFixed(1)} places`
  return `${sum}, ${many} ${added > 0 ? "more" : "fewer"} than ${places}: ${what} ${where}`
}

/** " + 1", " - 2", nothing for none. */
export function plusWords(plus: number): string {
  return plus === 0 ? "" : plus > 0 ? ` + ${plus}` : ` - ${-plus}`
}
