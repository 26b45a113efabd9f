// A border round by round: counts a side and at the corners, fitted to a repeat where one is wished for, and judged flat. A
// round of height h makes every side of a rectangle 2 h longer, so that its four corners together ask for 8 h of edge.

import { planBand, type Verdict, verdictOf } from "@roundwright/flatness"
import { RoundwrightError } from "@roundwright/numerics"
import {
  chainLengthInStitches,
  type Gauge,
  kindName,
  type StitchKind,
  sizeOf,
  type Terms,
} from "@roundwright/stitches"
import { evenPlaces, type FittedSide, fitRepeat, plusWords } from "./fit-repeat.ts"

export interface BorderSide {
  /** Places between the corners. */
  readonly between: number
  /** Length of the edge, mm; as long as its places where absent. */
  readonly edgeMm?: number
}

export interface BorderRequest {
  /** Four of a rectangle: two of each where two are given, all alike where one is. */
  readonly sides: readonly BorderSide[]
  readonly rounds: readonly StitchKind[]
  readonly repeat?: { readonly of: number; readonly plus: number; readonly wanted?: number }
  readonly terms?: Terms
  /** What goes into every corner of every round; as many stitches as lie flat where absent. */
  readonly corner?: Corner
}

/** Stitches and chains in a corner: of (sc, ch 2, sc) two and two. */
export interface Corner {
  readonly stitches: number
  readonly chains: number
}

export interface BorderRound {
  readonly stitch: string
  /** Stitches between the corners, by side. */
  readonly sides: readonly number[]
  /** Stitches in each corner. */
  readonly corner: number
  readonly total: number
  /** Edge over the edge that lies flat. */
  readonly fullness: number
  readonly verdict: Verdict
  readonly text: string
}

export interface BorderPlan {
  readonly fitted: readonly FittedSide[]
  readonly rounds: readonly BorderRound[]
  readonly verdict: Verdict
  /** How much wider the whole becomes, mm; in stitch widths where the gauge knows none. */
  readonly addsMm: number
  readonly text: string
}

const mostRounds = 60

/** @throws RoundwrightError `no-sides`, `too-many-rounds`, what `fitRepeat` throws */
export function planBorder(gauge: Gauge, request: BorderRequest): BorderPlan {
  const { rounds: kinds, repeat, terms = "US" } = request
  const sides = fourSides(request.sides)
  const chains = request.corner?.chains ?? 0
  if (kinds.length < 1 || kinds.length > mostRounds)
    throw new RoundwrightError(
      "too-many-rounds",
      `A border of ${kinds.length} rounds is not planned.`,
      {
        hint: `Name the stitch of each round, 1 to ${mostRounds} of them, such as sc,hdc,sc.`,
      },
    )
  const size = (kind: StitchKind) => sizeOf(kind, gauge, { turned: false })
  // The repeat is that of the last round: what the corners before it add is there already, and round 1 makes up the rest.
  const before = kinds
    .slice(0, -1)
    .map(size)
    .reduce((sum, { heightMm, widthMm }) => {
      if (request.corner) return sum + request.corner.stitches - (chains > 0 ? 0 : 1)
      return sum + oddCorner((2 * heightMm) / widthMm) - 1
    }, 0)
  const fitted = sides.map(({ between }) =>
    fitBefore(between, before, repeat ?? { of: 1, plus: 0 }),
  )
  const first = size(kinds[0]!)
  let counts = fitted.map(({ count }) => count)
  let lengths = sides.map(({ edgeMm, between }) => edgeMm ?? (between + 1) * first.widthMm)
  let grown = 0
  const rounds = kinds.map((kind, index): BorderRound => {
    const { heightMm, widthMm } = size(kind)
    const corner = request.corner?.stitches ?? oddCorner((2 * heightMm) / widthMm)
    // What the corner grew by stands on the sides of the next round.
    if (index > 0) counts = counts.map((count) => count + grown)
    // A chain is the new corner by itself; else the middle stitch is.
    grown = chains > 0 ? corner : corner - 1
    lengths = lengths.map((length) => length + 2 * heightMm)
    const edge =
      counts.reduce((sum, count) => sum + count + corner + chains * chainLengthInStitches, 0) *
      widthMm
    const flat = lengths.reduce((sum, length) => sum + length, 0)
    const fullness = edge / flat
    const total = counts.reduce((sum, count) => sum + count, 0) + counts.length * corner
    const verdict = borderVerdict(fullness)
    const name = kindName(kind, terms)
    const own = sideWords(counts)
    return {
      stitch: name,
      sides: counts,
      corner,
      total,
      fullness,
      verdict,
      text: `Rnd ${index + 1}: ${own} ${name} a side, ${corner} in each corner${chains > 0 ? ` with ch ${chains} between` : ""} (${total} ${name}${chains > 0 ? `, ${counts.length} ch-${chains} sps` : ""}; ${sideWords(counts.map((count) => count + corner))} to a side with its corners)${index === 0 && repeat ? fitWords(fitted) : ""}`,
    }
  })
  const addsMm = kinds.reduce((sum, kind) => sum + 2 * size(kind).heightMm, 0)
  const worst = rounds.reduce((a, b) =>
    Math.abs(b.fullness - 1) > Math.abs(a.fullness - 1) ? b : a,
  )
  return {
    fitted,
    rounds,
    verdict: worst.verdict,
    addsMm,
    text: `${judgedText(worst, rounds.indexOf(worst))}${repeatsText(fitted, repeat)}`,
  }
}

/** A side that has `before` stitches more by the round that is to hold the repeat. */
function fitBefore(
  between: number,
  before: number,
  { of, plus, wanted }: { readonly of: number; readonly plus: number; readonly wanted?: number },
): FittedSide {
  const there = fitRepeat(between + before, of, plus, wanted)
  if (before === 0) return there
  const own = fitRepeat(between, 1)
  const { added, repeats } = there
  const count = between + added
  const many = Math.abs(added)
  const places = evenPlaces(between, many)
  const how =
    added === 0
      ? "it comes out as it is"
      : `in round 1 ${added > 0 ? "work 2 in 1" : "skip 1"} ${many === 1 ? `at place ${places[0]}` : `${many} times, about every ${(between / many).toFixed(1)} places`}`
  const sum = `${there.count} = ${of} x ${repeats}${plusWords(plus)} in the last round`
  return { ...own, count, repeats, added, places, share: added / between, text: `${sum}: ${how}` }
}

/** "(sc, ch 2, sc)", "3". @throws RoundwrightError `bad-corner` */
export function readCorner(text: string): Corner {
  const plain = /^\s*(\d{1,2})(?:\s*(?:sts?|sc|hdc|dc|tr))?\s{0,9}$/i.exec(text)
  if (plain) return { stitches: Number(plain[1]), chains: 0 }
  let stitches = 0
  let chains = 0
  for (const part of text.replace(/[()]/g, "").split(/\s{0,9},\s{0,9}/)) {
    const chain = /^ch[\s-]*(\d{1,2})$/i.exec(part)
    const work = /^(\d{1,2})?\s*(?:sc|hdc|dc|tr|htr|dtr)$/i.exec(part)
    if (chain) chains += Number(chain[1])
    else if (work) stitches += Number(work[1] ?? 1)
    else
      throw new RoundwrightError("bad-corner", `"${text.slice(0, 40)}" is no corner.`, {
        hint: "Write what goes into it, such as '(sc, ch 2, sc)' or 3.",
      })
  }
  return { stitches, chains }
}

function fourSides(sides: readonly BorderSide[]): BorderSide[] {
  const [a, b = a] = sides
  if (!a || !b)
    throw new RoundwrightError("no-sides", "No side is given to put a border on.", {
      hint: "Give its length or the stitches along it.",
    })
  return sides.length === 4 ? [...sides] : [a, b, a, b]
}

/** An odd number turns a corner about its middle stitch; the nearest to what the corner asks for. */
function oddCorner(asked: number): number {
  return 1 + 2 * Math.max(1, Math.round(asked / 2))
}

/** How many repeats go round, where a repeat is wished for. */
function repeatsText(fitted: readonly FittedSide[], repeat: BorderRequest["repeat"]): string {
  if (!repeat) return ""
  const all = fitted.reduce((sum, { repeats }) => sum + repeats, 0)
  const added = fitted.reduce((sum, one) => sum + one.added, 0)
  const more =
    added === 0 ? "nothing to add" : `${Math.abs(added)} ${added > 0 ? "more" : "fewer"} all round`
  return ` ${all} repeats and 4 corners in all, ${more}.`
}

/** A long edge shows less: half of what a small piece takes up is flat, and what a piece takes up blocks. */
function borderVerdict(fullness: number): Verdict {
  if (Math.abs(fullness - 1) <= planBand) return "flat"
  const verdict = verdictOf(fullness)
  return verdict === "flat" ? "blocks-flat" : verdict
}

function sideWords(counts: readonly number[]): string {
  const [a, b] = counts
  return counts.every((count) => count === a) ? String(a) : `${a} and ${b}`
}

function fitWords(fitted: readonly FittedSide[]): string {
  const texts = [...new Set(fitted.map(({ text }) => text))]
  return `; ${texts.join("; ")}`
}

function judgedText({ fullness, verdict }: BorderRound, index: number): string {
  const share = Math.round(100 * Math.abs(fullness - 1))
  if (verdict === "flat")
    return share === 0
      ? "The border lies flat."
      : `The border lies flat: at most ${share} % off, in round ${index + 1}.`
  const way = fullness > 1 ? "too full" : "too short"
  const help =
    fullness > 1
      ? "skip places evenly, take a smaller hook, or a smaller repeat"
      : "work 2 in 1 evenly, take a larger hook, or more in the corners"
  const what = {
    "blocks-flat": "blocks flat",
    cups: "draws in",
    ruffles: "ruffles",
    flat: "lies flat",
  }[verdict]
  return `The border ${what}: round ${index + 1} is ${share} % ${way}; ${help}.`
}
