// Amounts as they are told back: few digits, in every unit that was used for them.

import type { Range } from "./rates.ts"
import { singular, type Unit } from "./units.ts"

/** Thousands whole, tens to a tenth, units to hundredths. */
export function figure(value: number): string {
  const digits = value >= 1000 ? 0 : value >= 10 ? 1 : value >= 0.1 ? 2 : 3
  return String(Number(value.toFixed(digits)))
}

/** "8 g", "1 square", "12 to 13 balls", of a range in base units. */
export function amountTold({ low, high }: Range, unit: Unit): string {
  const [least, most] = [figure(low / unit.inBase), figure(high / unit.inBase)]
  const number = least === most ? least : `${least} to ${most}`
  const name = number === "1" && unit.dimension === "counted" ? singular(unit.name) : unit.name
  return `${number} ${name}`
}

/** In all units used for what it measures: "2268 g, 80 oz". */
export function inAllUnits(range: Range, units: readonly Unit[]): string {
  return units.map((unit) => amountTold(range, unit)).join(", ")
}

export function percentTold(share: number): string {
  const percent = 100 * share
  return `${Number(percent.toFixed(Math.abs(percent) < 20 ? 1 : 0))} %`
}

const flat = /(?:square|block|motif|hexagon|piece|patch|granny|tile)$/

/** Things that are laid side by side. */
export function laysFlat(key: string): boolean {
  return flat.test(key)
}

/** What so many pieces can be laid as; null for things that are not laid out, or too many. */
export function layoutsTold(count: number, key: string): string | null {
  if (!flat.test(key) || !Number.isInteger(count) || count < 4 || count > 3000) return null
  const own = rectanglesOf(count)
  const good = own.filter(([a, b]) => b / a <= longest)
  const name = (one: readonly [number, number]) => `${one[0]} by ${one[1]}`
  if (good.length > 0) return `${count} can be laid ${good.slice(0, 3).map(name).join(", ")}.`
  const near = [1, -1, 2, -2, 3, -3, 4, -4]
    .map((by) => count + by)
    .flatMap((other) => {
      const best = rectanglesOf(other).find(([a, b]) => b / a <= longest)
      return best ? [`${other} ${name(best)}`] : []
    })
    .slice(0, 4)
  const only = own[0] && own[0][0] > 1 ? `only ${name(own[0])}` : "only one row"
  return `${count} make ${only}; ${near.join(", ")}.`
}

/** Blankets are hardly longer than twice their width. */
const longest = 2

/** Squarest first. */
function rectanglesOf(count: number): [number, number][] {
  const found: [number, number][] = []
  for (let rows = Math.floor(Math.sqrt(count)); rows >= 1; rows--)
    if (count % rows === 0) found.push([rows, count / rows])
  return found
}
