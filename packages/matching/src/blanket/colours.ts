// Colours shared out over a blanket: so many pieces of each (alike, or as the weight left of it allows), placed by a seed so
// that as few as possible lie beside their own colour.

import { RoundwrightError, seededRandom } from "@roundwright/numerics"
import { gramsIn } from "../yarn/read-yarn-options.ts"

export interface Colour {
  readonly name: string
  /** Grams left; null where there is enough. */
  readonly grams: number | null
}

export interface SharedColour extends Colour {
  readonly pieces: number
}

export interface SharedColours {
  readonly colours: readonly SharedColour[]
  /** Colour of each piece, by index; null for one that no yarn is left for. */
  readonly of: readonly (number | null)[]
  /** Pieces that no yarn is left for. */
  readonly missing: number
  /** Neighbours of one colour that could not be parted. */
  readonly alike: number
}

/** "rose 120 g, cream 300 g", "rose, cream". @throws RoundwrightError `bad-colours` */
export function readColours(text: string): Colour[] {
  // A number alone: so many colours without names.
  const many = /^(\d{1,2})\s*(?:colou?rs?)?$/i.exec(text.trim())
  const named = many
    ? Array.from({ length: Number(many[1]) }, (_, k) => `colour ${k + 1}`).join(",")
    : text
  const found = named
    .split(/[,;\n]/)
    .map((part) => part.trim())
    .filter((part) => part !== "")
    .map((part): Colour => {
      const grams = gramsIn(part)
      const name = part
        .replace(
          /[:=(]?\s{0,9}-?[\d.,]{1,20}\s{0,9}(?:kg|g|grams?|oz|ounces?|lbs?)\s{0,9}\)?\s{0,9}$/i,
          "",
        )
        .trim()
      if (name === "" || (grams !== null && grams < 0))
        throw new RoundwrightError(
          "bad-colours",
          `"${part.slice(0, 40)}" is no colour with its weight.`,
          {
            hint: "Write them such as: rose 120 g, cream 300 g.",
          },
        )
      return { name, grams }
    })
  if (found.length > 0 && found.length <= 40) return found
  throw new RoundwrightError("bad-colours", "No colours are named, or more than 40.", {
    hint: "Write them such as: rose 120 g, cream 300 g.",
  })
}

/** Changes tried for each piece; a few thousand pieces then take a second. */
const triesEach = 60

/**
 * @param weights of each piece, in whole pieces (a half is 0.5) @param pairs neighbours, by index
 * @param gramsEach what a whole piece weighs, on the safe side; null where it is not known
 */
export function shareColours(
  weights: readonly number[],
  pairs: readonly (readonly [number, number])[],
  colours: readonly Colour[],
  gramsEach: number | null,
  seed = 1,
): SharedColours {
  const counts = countsFor(weights.length, colours, gramsEach, weights)
  const random = seededRandom(seed)
  const of: (number | null)[] = counts.flatMap((count, colour) => Array(count).fill(colour))
  while (of.length < weights.length) of.push(null)
  for (let k = of.length - 1; k > 0; k -= 1) {
    const other = Math.floor(random.uniform() * (k + 1))
    ;[of[k], of[other]] = [of[other]!, of[k]!]
  }
  const beside: number[][] = weights.map(() => [])
  for (const [a, b] of pairs) {
    beside[a]!.push(b)
    beside[b]!.push(a)
  }
  const clash = (piece: number) =>
    of[piece] === null ? 0 : beside[piece]!.filter((other) => of[other] === of[piece]).length
  // Min-conflicts: a piece beside its own colour changes places with another, where that leaves no more clashes than before.
  for (let tries = triesEach * of.length; tries > 0; tries -= 1) {
    const clashing = of.flatMap((_, piece) => (clash(piece) > 0 ? [piece] : []))
    if (clashing.length === 0) break
    const a = clashing[Math.floor(random.uniform() * clashing.length)]!
    const b = Math.floor(random.uniform() * of.length)
    if (of[a] === of[b] || weights[a] !== weights[b]) continue
    const before = clash(a) + clash(b)
    ;[of[a], of[b]] = [of[b]!, of[a]!]
    if (clash(a) + clash(b) > before) [of[a], of[b]] = [of[b]!, of[a]!]
  }
  const alike = pairs.filter(([a, b]) => of[a] !== null && of[a] === of[b]).length
  return {
    colours: colours.map((colour, k) => ({
      ...colour,
      pieces: of.filter((one) => one === k).length,
    })),
    of,
    missing: of.filter((one) => one === null).length,
    alike,
  }
}

/** As equal as what is left of each allows; who has more takes what the others cannot. */
function countsFor(
  pieces: number,
  colours: readonly Colour[],
  gramsEach: number | null,
  weights: readonly number[],
): number[] {
  // A blanket's halves are counted as whole pieces here: on the safe side.
  const heaviest = Math.max(...weights, 1)
  const most = colours.map(({ grams }) =>
    grams === null
      ? Number.POSITIVE_INFINITY
      : gramsEach === null
        ? null
        : Math.floor(grams / (gramsEach * heaviest) + 1e-9),
  )
  if (most.includes(null)) return byWeight(pieces, colours)
  const counts = colours.map(() => 0)
  for (let k = 0; k < pieces; k += 1) {
    let next = -1
    counts.forEach((count, colour) => {
      if (count < most[colour]! && (next < 0 || count < counts[next]!)) next = colour
    })
    if (next < 0) break
    counts[next]! += 1
  }
  return counts
}

/** In proportion to the weights, where nothing tells what a piece weighs (largest remainders). */
function byWeight(pieces: number, colours: readonly Colour[]): number[] {
  const known = colours.map(({ grams }) => grams ?? 0)
  const all = known.reduce((sum, one) => sum + one, 0)
  if (all <= 0) return colours.map(() => 0)
  const exact = known.map((grams) => (pieces * grams) / all)
  const counts = exact.map(Math.floor)
  const order = exact
    .map((one, k) => ({ k, rest: one - Math.floor(one) }))
    .sort((a, b) => b.rest - a.rest || a.k - b.k)
  for (const { k } of order.slice(0, pieces - counts.reduce((sum, one) => sum + one, 0)))
    counts[k]! += 1
  return counts
}
