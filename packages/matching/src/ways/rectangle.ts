// A rectangle brought to another, "5 x 7 in" to "8 x 8 in": a border is as wide all round and cannot do it where more is missing one
// way than the other; strips along the edges can, the first along one edge, the second along the lengthened other.

import { formatPercent } from "@roundwright/assessment"
import { requirePositive } from "@roundwright/numerics"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export interface RectangleMatch {
  readonly missingMm: readonly [number, number]
  readonly factors: readonly [number, number]
  readonly addedMm2: number
  readonly areaFactor: number
  readonly text: string
  readonly lines: readonly string[]
}

type Sides = readonly [number, number]

const alike = 0.02

/** The way round that the sides fit better is taken. */
export function matchRectangle(
  nowAsTold: Sides,
  to: Sides,
  unit: LengthUnit = "cm",
): RectangleMatch {
  for (const mm of [...nowAsTold, ...to]) requirePositive(mm, "A side")
  const off = ([a, b]: Sides) => Math.abs(Math.log(to[0] / a)) + Math.abs(Math.log(to[1] / b))
  const turned: Sides = [nowAsTold[1], nowAsTold[0]]
  const now = off(turned) < off(nowAsTold) - 1e-9 ? turned : nowAsTold
  const missingMm = [to[0] - now[0], to[1] - now[1]] as const
  const factors = [to[0] / now[0], to[1] / now[1]] as const
  const addedMm2 = to[0] * to[1] - now[0] * now[1]
  const areaFactor = (to[0] * to[1]) / (now[0] * now[1])
  const tell = (mm: number) => lengthWords(mm, unit)
  const size = ([a, b]: Sides) => `${tell(a)} by ${tell(b)}`
  const area = (mm2: number) =>
    unit === "in" ? `${(mm2 / 645.16).toFixed(1)} sq in` : `${(mm2 / 100).toFixed(0)} sq cm`
  const head = `${size(now)} now, ${size(to)} wished for: ${missing(missingMm[0], "the width", tell)} and ${missing(missingMm[1], "the length", tell)} (factors ${factors.map((one) => one.toFixed(2)).join(" and ")}). In area ${areaFactor.toFixed(2)} times: ${area(Math.abs(addedMm2))} ${addedMm2 < 0 ? "less" : "more"} on ${area(now[0] * now[1])}, ${formatPercent(Math.abs(areaFactor - 1))} ${areaFactor < 1 ? "less" : "more"} yarn.`
  return {
    missingMm,
    factors,
    addedMm2,
    areaFactor,
    text: head,
    lines: cures(now, to, missingMm, factors, tell),
  }
}

function missing(mm: number, what: string, tell: (mm: number) => string): string {
  if (Math.abs(mm) < 0.5) return `nothing of ${what} is missing`
  return mm > 0 ? `${tell(mm)} of ${what} is missing` : `${what} is ${tell(-mm)} too much`
}

function cures(
  now: Sides,
  to: Sides,
  [wide, long]: Sides,
  factors: Sides,
  tell: (mm: number) => string,
): string[] {
  const hook =
    Math.abs(factors[0] / factors[1] - 1) <= alike
      ? "Both ways by the same factor: another hook or yarn, or a round more or less, can do it."
      : "Not the hook, which changes both ways by the same factor: one way it is the stitches, the other the rows."
  if (wide < -0.5 || long < -0.5)
    return [
      hook,
      "Where it is too large, take rows or rounds out, or work it anew: blocking makes nothing smaller.",
    ]
  const least = Math.min(wide, long)
  if (Math.abs(wide - long) < 0.5)
    return [hook, `A border all round does it: ${tell(wide / 2)} on each side.`]
  const strips =
    wide > 0.5 && long > 0.5
      ? `Strips: ${tell(wide)} wide along the edge of ${tell(now[1])} (so it is ${tell(to[0])} by ${tell(now[1])}), then ${tell(long)} along the edge of ${tell(to[0])}; or half of each on both sides.`
      : wide > 0.5
        ? `A strip ${tell(wide)} wide along the edge of ${tell(now[1])}, or half of it on both sides.`
        : `A strip ${tell(long)} wide along the edge of ${tell(now[0])}, or half of it on both sides.`
  const even =
    least > 0.5
      ? `A border of one width all round does not do: ${tell(wide / 2)} on each side gives ${tell(now[0] + wide)} by ${tell(now[1] + wide)}, ${tell(long / 2)} gives ${tell(now[0] + long)} by ${tell(now[1] + long)}. ${tell(least / 2)} all round and a strip of ${tell(Math.abs(wide - long))} along one edge does.`
      : "A border of one width all round would make both ways larger."
  return [
    strips,
    even,
    `${hook} Stretching it would be ${formatPercent(Math.max(...factors) - 1)}; blocking keeps about 5 %.`,
  ]
}
