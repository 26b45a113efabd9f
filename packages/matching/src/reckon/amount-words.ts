// Amounts as they are told back: few digits, in every unit that was used for them.

import { laidAs } from "../blanket/counts-alone.ts"
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
  if (!flat.test(key) || !Number.isInteger(count) || count < 4 || count > mostLaid) return null
  return `${count}${laidAs(count)}.`
}

const mostLaid = 3000
