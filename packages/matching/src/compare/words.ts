// What a comparison says, as a maker would.

import { formatLength, formatPercent } from "@roundwright/assessment"
import { countRound } from "@roundwright/motif"
import type { MeasuredPiece } from "../measured/read-measured.ts"
import type { Comparison } from "./result.ts"

type Compared = Omit<Comparison, "text">

export function comparisonText(found: Compared, a: MeasuredPiece, b: MeasuredPiece): string {
  if (found.cause === null || found.partAtRound === null) return alikeText(found, a, b)
  return (found.by === "counts" ? countText : sizeText)(found, a, b)
}

function alikeText(
  { by, rounds, countsAgree }: Compared,
  a: MeasuredPiece,
  b: MeasuredPiece,
): string {
  const last = rounds.findLast((one) => one.ratio !== null)!
  const spaces = by === "counts" ? chainsPart(a, b) : null
  if (spaces) return spaces
  const what = by === "counts" ? "count" : "size"
  const also =
    by === "sizes" && countsAgree
      ? " Their counts agree as well."
      : by === "counts" && a.sizes === null && b.sizes === null
        ? " If they differ in size all the same, it is the hand, the hook or the yarn: measure both after each round."
        : ""
  return `${a.name} and ${b.name} do not part: the same ${what} as far as round ${last.round}, within what can be measured.${also}`
}

/** The same stitches with other chains between them; null where the chains are the same, or not known. */
function chainsPart(a: MeasuredPiece, b: MeasuredPiece): string | null {
  for (const round of a.motif?.rounds ?? []) {
    const other = b.motif?.rounds.find(({ number }) => number === round.number)
    if (!other) continue
    const [own, theirs] = [countRound(round).chains, countRound(other).chains]
    if (own !== theirs)
      return `${a.name} and ${b.name} have the same stitches, but round ${round.number} has ${own} chains in ${a.name} and ${theirs} in ${b.name}: compare its spaces.`
  }
  return null
}

function countText(found: Compared, a: MeasuredPiece, b: MeasuredPiece): string {
  const { partAtRound, rounds, slip, cause, amount } = found
  const own = rounds.find(({ round }) => round === partAtRound)!
  const names = { a: a.name, b: b.name }
  const head = `They part in round ${partAtRound}: ${a.name} has ${own.a}, ${b.name} has ${own.b}.`
  const below = rounds.find(({ round }) => round === partAtRound! - 1)
  return [
    head,
    growthText(below ?? null, own),
    countWhy(cause!, amount!, own),
    slip && slipText(slip, names),
  ]
    .filter((part) => part)
    .join(" ")
}

/** How many in each stitch of the round below, where both have the same below and it goes in whole numbers. */
function growthText(
  below: Comparison["rounds"][number] | null,
  { a, b }: Comparison["rounds"][number],
): string | null {
  if (!below?.a || below.a !== below.b || !a || !b) return null
  if (a % below.a !== 0 && b % below.a !== 0) return null
  const each = (count: number) => Number((count / below.a!).toFixed(2))
  return `On the ${below.a} below that is ${each(a)} in each in the first and ${each(b)} in each in the second, ${Math.abs(a - b)} ${a > b ? "fewer" : "more"}.`
}

function countWhy(
  cause: string,
  amount: number,
  { a, b }: { a: number | null; b: number | null },
): string {
  if (cause === "ratio") {
    const [p, q] = simpleRatio(b!, a!)
    return `From there on the counts stand in one ratio, ${p} to ${q}: a repeat more or fewer, which every later round carries on.`
  }
  const difference = Math.round(amount)
  const way = difference > 0 ? "more" : "fewer"
  const many = Math.abs(difference)
  const stitches = many === 1 ? "1 stitch" : `${many} stitches`
  return cause === "offset"
    ? `From the first round on it is ${stitches} ${way}, an offset: the start differs and every later round is worked alike.`
    : `From there on it is ${stitches} ${way} in every round, a step: that one round differs and the later ones are worked alike.`
}

function slipText(
  { whose, repeat, has, meant }: NonNullable<Compared["slip"]>,
  names: { a: string; b: string },
): string {
  if (has !== null && meant !== null && meant === repeat)
    return `The count of ${names[whose]} slipped: ${has} where ${meant} are meant, since every other round divides by ${repeat}.`
  if (repeat > 1)
    return `The count of ${names[whose]} slipped: ${has} does not divide by ${repeat}, as every other round does; ${meant} are meant.`
  return `The count of ${names[whose]} slipped: it does not go on growing as the rounds before it did.`
}

function sizeText(found: Compared, a: MeasuredPiece, b: MeasuredPiece): string {
  const { partAtRound, cause, amount, countsAgree, parting } = found
  const counts = countsAgree ? "with the same counts" : ""
  if (cause === "ratio" && !parting!.ofGrowth && parting!.from === 0)
    return `They part in round ${partAtRound} and stay in one ratio: ${b.name} is ${share(amount!)} than ${a.name} in every round${counts && `, ${counts}`}. That is the hand, the hook or the yarn all through, and nothing worked wrong: ${hookAdvice(amount!)}.`
  if (cause === "ratio")
    return `They part in round ${partAtRound}: up to there both are the same size, from there on ${b.name} ${parting!.ofGrowth ? `grows by ${share(amount!)} a round` : `is ${share(amount!)}`}${counts && `, ${counts}`}. From that round on it was worked with another hook, another stitch or another hand.`
  const more = amount! > 0 ? "wider" : "narrower"
  const by = formatLength(Math.abs(amount!))
  return cause === "offset"
    ? `They part in round ${partAtRound}: ${b.name} is ${by} ${more} from the start and stays so, an offset. The ring or the first round differs; every later round is worked alike.`
    : `They part in round ${partAtRound}: there ${b.name} comes out ${by} ${more} and stays so, a step. That one round differs (a taller or lower stitch, or a round too many); the others are worked alike.`
}

function hookAdvice(ratio: number): string {
  return ratio > 1.02
    ? "a smaller hook brings it back"
    : ratio < 0.98
      ? "a larger hook brings it back"
      : "leave it"
}

function share(ratio: number): string {
  return `${formatPercent(Math.abs(ratio - 1))} ${ratio > 1 ? "larger" : "smaller"}`
}

/** 45 and 48 stand as 15 to 16. */
function simpleRatio(p: number, q: number): [number, number] {
  const divisor = (x: number, y: number): number => (y === 0 ? x : divisor(y, x % y))
  const whole = divisor(Math.round(p), Math.round(q)) || 1
  return [Math.round(p) / whole, Math.round(q) / whole]
}
