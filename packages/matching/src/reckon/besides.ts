// Amounts that are asked beside one another: short, over, ratio, together; of one kind, or of two that facts lead to one another.

import { amountTold, figure, inAllUnits, percentTold } from "./amount-words.ts"
import { baseOf, middle, type Range, type Rates } from "./rates.ts"
import type { Asked } from "./read-statement.ts"
import type { Unit } from "./units.ts"

/** Units by what they measure, each once, in the order they were used. */
export type Units = ReadonlyMap<string, readonly Unit[]>

const near = 1e-6

/** Amounts of one kind beside one another: short, over, ratio, together. */
export function besides(asked: readonly Asked[], rates: Rates, units: Units): string[] {
  const lines: string[] = []
  const kinds = new Map<string, Asked[]>()
  for (const one of asked) {
    const { unit } = one.quantity
    kinds.set(unit.key, [...(kinds.get(unit.key) ?? []), one])
  }
  for (const [key, group] of kinds) {
    const unit = units.get(key)![0]!
    const have = group.filter(({ role }) => role === "have")
    const want = group.filter(({ role }) => role === "want")
    const sum = (all: readonly Asked[]) =>
      all.reduce((total, { quantity }) => total + middle(baseOf(quantity)), 0)
    if (have.length > 0 && want.length > 0)
      lines.push(shortOrOver(sum(have), sum(want), unit, rates.from(key), units))
    else if (group.length > 1)
      lines.push(...sideBySide(group, sum(group), unit, rates.from(key), units))
  }
  return [...lines, ...acrossKinds(asked, rates, units), ...allTogether(asked, rates, units)]
}

export function also(value: number, to: ReadonlyMap<string, Range>, units: Units): string {
  const parts = [...to].map(([key, rate]) =>
    inAllUnits({ low: value * rate.low, high: value * rate.high }, units.get(key) ?? []),
  )
  return parts.length > 0 ? ` = ${parts.join(" = ")}` : ""
}

function shortOrOver(
  have: number,
  want: number,
  unit: Unit,
  to: ReadonlyMap<string, Range>,
  units: Units,
): string {
  const tell = (value: number) => amountTold({ low: value, high: value }, unit)
  const by = have - want
  const share = `${percentTold(have / want)} are there`
  if (Math.abs(by) < near * want) return `${tell(have)} are just what is wanted.`
  return by > 0
    ? `${tell(have)} are enough for ${tell(want)}: ${tell(by)} over${also(by, to, units)}.`
    : `${tell(have)} of ${tell(want)}, ${share}: ${tell(-by)} to go${also(-by, to, units)}.`
}

function sideBySide(
  group: readonly Asked[],
  sum: number,
  unit: Unit,
  to: ReadonlyMap<string, Range>,
  units: Units,
): string[] {
  const values = group.map(({ quantity }) => middle(baseOf(quantity)))
  const [first, ...others] = values as [number, ...number[]]
  const tell = (value: number) => amountTold({ low: value, high: value }, unit)
  return [
    ...others.map((value) => {
      const by = value - first
      if (Math.abs(by) < near * first) return `${tell(value)} are as many as the first.`
      const root =
        unit.dimension === "area"
          ? `, each side ${figure(Math.sqrt(value / first))} times as long`
          : ""
      return `${tell(value)} are ${figure(value / first)} times ${tell(first)}: ${tell(Math.abs(by))} ${by > 0 ? "more" : "less"} (${percentTold(Math.abs(by) / first)})${also(Math.abs(by), to, units)}; the first are ${figure(first / value)} times the other${root}.`
    }),
    `Together: ${tell(sum)}${also(sum, to, units)}.`,
  ]
}

/** What is there in one kind and wanted in another: "have 500 g", "want 30 squares". */
function acrossKinds(asked: readonly Asked[], rates: Rates, units: Units): string[] {
  const lines: string[] = []
  for (const want of asked.filter(({ role }) => role === "want"))
    for (const have of asked.filter(({ role }) => role === "have")) {
      const [from, to] = [want.quantity.unit, have.quantity.unit]
      if (from.key === to.key) continue
      const rate = rates.from(from.key).get(to.key)
      if (!rate) continue
      const needed = middle(baseOf(want.quantity)) * rate.high
      lines.push(shortOrOver(middle(baseOf(have.quantity)), needed, to, rates.from(to.key), units))
    }
  return lines
}

/** Things of several kinds in what all of them are measured in: "20 rose squares", "30 cream squares" in grams. */
function allTogether(asked: readonly Asked[], rates: Rates, units: Units): string[] {
  const plain = asked.filter(
    ({ role, quantity }) => role === null && quantity.unit.dimension === "counted",
  )
  if (new Set(plain.map(({ quantity }) => quantity.unit.key)).size < 2) return []
  return (["area", "weight", "yarn", "time", "money"] as const).flatMap((key) => {
    const parts = plain.map(({ quantity }) => {
      const rate = rates.from(quantity.unit.key).get(key)
      const base = baseOf(quantity)
      return rate === undefined ? null : { low: base.low * rate.low, high: base.high * rate.high }
    })
    // One led to the other by the facts is no second thing.
    const led = plain.some(({ quantity }, k) =>
      plain.some(
        (other, l) =>
          l !== k &&
          rates.from(quantity.unit.key).has(other.quantity.unit.key) &&
          rates.linked(quantity.unit.key, other.quantity.unit.key),
      ),
    )
    if (led || parts.some((one) => one === null)) return []
    const sum = parts.reduce<Range>(
      (all, one) => ({ low: all.low + one!.low, high: all.high + one!.high }),
      { low: 0, high: 0 },
    )
    const to = new Map(
      [...rates.from(key)].filter(
        ([other]) => !plain.some((one) => one.quantity.unit.key === other),
      ),
    )
    return [`All of them: ${inAllUnits(sum, units.get(key) ?? [])}${also(middle(sum), to, units)}.`]
  })
}
