// Figures reckoned through one another, as makers ask it: "3 mats = 42 g", "1 ball = 100 g = 210 m", and what 58 g are. Every amount
// is told in all that it stands for, in whole things with what is left over, and beside the others of its kind.

import { RoundwrightError } from "@roundwright/numerics"
import type { FiguresAnswer } from "../figures/values.ts"
import { amountTold, figure, inAllUnits, layoutsTold, laysFlat } from "./amount-words.ts"
import { also, besides, type Units } from "./besides.ts"
import { baseOf, goesUp, middle, type Range, type Rates, ratesOf } from "./rates.ts"
import { type Asked, type Quantity, readStatement } from "./read-statement.ts"
import { repeatsTold } from "./repeats-told.ts"
import type { Unit } from "./units.ts"

export interface Reckoned extends FiguresAnswer {
  readonly rates: readonly Told[]
  readonly asked: readonly Told[]
}

interface Told {
  readonly of: string
  readonly is: readonly { readonly unit: string; readonly low: number; readonly high: number }[]
}

const mostStatements = 40

/**
 * @param repeat "15 + 3": stitches of a pattern's repeat and beside the repeats
 * @throws RoundwrightError `bad-statement`, `nothing-asked`
 */
export function reckon(statements: readonly string[], repeat?: string): Reckoned {
  if (statements.length === 0 || statements.length > mostStatements) throw nothingAsked()
  const read = statements.map(readStatement)
  const facts = read.flatMap((one) => one.facts)
  const asked = read.flatMap((one) => one.asked)
  const rates = ratesOf(facts)
  const units = unitsUsed(facts, asked)
  if (asked.length === 0 && facts.length === 0) throw nothingAsked()
  const lines = [
    ...asked.flatMap((one) => askedLines(one, facts, rates, units, repeat)),
    ...besides(asked, rates, units),
    ...contraryLines(rates, units),
    ...eachLines(facts, rates, units),
  ]
  if (lines.length === 0)
    throw new RoundwrightError(
      "nothing-asked",
      "The figures told have nothing to do with one another.",
      {
        hint: "Say what stands for what, such as '14 stitches = 4 in', and what is asked, '50 in'.",
      },
    )
  const [text, ...rest] = lines
  return {
    text: text!,
    lines: rest,
    rates: [...units.values()].map(([unit]) =>
      told(`1 ${unit!.key}`, rates.from(unit!.key), 1, 1, units),
    ),
    asked: asked.map(({ quantity }) => {
      const base = baseOf(quantity)
      return told(quantityTold(quantity), rates.from(quantity.unit.key), base.low, base.high, units)
    }),
  }
}

function nothingAsked(): RoundwrightError {
  return new RoundwrightError("nothing-asked", "No figures are told.", {
    hint: "Such as: reckon '3 squares = 42 g' '58 g', or: reckon '14 stitches = 4 in' '50 in'.",
  })
}

function unitsUsed(
  facts: readonly (readonly [Quantity, Quantity])[],
  asked: readonly Asked[],
): Units {
  const units = new Map<string, Unit[]>()
  for (const { unit } of [...facts.flat(), ...asked.map(({ quantity }) => quantity)]) {
    const own = units.get(unit.key) ?? []
    if (!own.some(({ name }) => name === unit.name)) units.set(unit.key, [...own, unit])
  }
  return units
}

function told(
  of: string,
  to: ReadonlyMap<string, Range>,
  low: number,
  high: number,
  units: Units,
): Told {
  return {
    of,
    is: [...to].flatMap(([key, rate]) =>
      (units.get(key) ?? []).map((unit) => ({
        unit: unit.name,
        low: (low * rate.low) / unit.inBase,
        high: (high * rate.high) / unit.inBase,
      })),
    ),
  }
}

function quantityTold({ unit, low, high, sides, sideUnit }: Quantity): string {
  return sides
    ? `${figure(sides[0])} by ${figure(sides[1])} ${sideUnit!.name}`
    : amountTold({ low: low * unit.inBase, high: high * unit.inBase }, unit)
}

function askedLines(
  { quantity }: Asked,
  facts: readonly (readonly [Quantity, Quantity])[],
  rates: Rates,
  units: Units,
  repeat: string | undefined,
): string[] {
  const { unit, sides, sideUnit } = quantity
  const base = baseOf(quantity)
  const to = rates.from(unit.key)
  const others = (units.get(unit.key) ?? []).filter(({ name }) => name !== unit.name)
  const is = [
    ...(sides ? [amountTold(base, unit)] : []),
    ...others.map((other) => amountTold(base, other)),
    ...[...to]
      // So many rows are not so many times as wide as one.
      .filter(([key]) => key !== "fabric" || !goesUp(unit.key) || rates.linked(unit.key, key))
      .map(
        ([key, rate]) =>
          `${inAllUnits({ low: base.low * rate.low, high: base.high * rate.high }, units.get(key) ?? [])}${key === "fabric" && laysFlat(unit.key) ? " in one row" : ""}`,
      ),
  ]
  const said = quantityTold(quantity)
  const wholes = [...to].flatMap(([key, rate]) =>
    wholesTold(base, unit, rate, units.get(key) ?? []),
  )
  const size = sides && unit.dimension === "counted" ? sizeOfLayout(sides, rates, unit, units) : []
  const laid = sides && unit.dimension === "area" ? gridsFor(sides, sideUnit!, rates, units) : []
  const count = unit.dimension === "counted" && quantity.low === quantity.high ? quantity.low : null
  const layouts = count === null || sides ? null : layoutsTold(count, unit.key)
  const repeats =
    repeat !== undefined && unit.key === "stitch" && count !== null
      ? repeatsTold(count, repeat)
      : null
  return [
    ...(is.length > 0
      ? [`${said} ${quantity.low === 1 && !sides ? "is" : "are"} ${is.join(" = ")}.`]
      : []),
    ...wholes,
    ...inProportion(to.get("area"), base, facts, unit),
    ...size,
    ...laid,
    ...(layouts ? [layouts] : []),
    ...(repeats ? [repeats] : []),
  ]
}

/** An area that something makes, in the proportion of the one size that was told. */
function inProportion(
  rate: Range | undefined,
  base: Range,
  facts: readonly (readonly [Quantity, Quantity])[],
  unit: Unit,
): string[] {
  // The size of one thing is no proportion of many.
  const size = facts
    .filter((fact) => !fact.some((one) => one.unit.dimension === "counted" && one.high === 1))
    .flat()
    .find(({ unit: own, sides }) => own.key === "area" && sides)
  if (!rate || !size?.sides || unit.key === "area") return []
  const times = Math.sqrt((middle(base) * middle(rate)) / middle(baseOf(size)))
  const [a, b] = size.sides
  return [
    `In the proportion of ${figure(a)} by ${figure(b)} that is ${figure(a * times)} by ${figure(b * times)} ${size.sideUnit!.name}, each side ${figure(times)} times as long.`,
  ]
}

/** Whole things in an amount: how many, what is over, what the next takes. */
function wholesTold(base: Range, unit: Unit, rate: Range, [counted]: readonly Unit[]): string[] {
  if (counted?.dimension !== "counted") return []
  const [low, high] = [base.low * rate.low, base.high * rate.high]
  const [down, up] = [Math.floor(low + near), Math.ceil(high - near)]
  if (Math.abs(low - high) > near) {
    const [least, most] = [down, Math.floor(high + near)]
    const whole = least === most ? "for sure" : `to ${most}`
    return [`Whole ${counted.name}: ${least} ${whole}; to have enough take ${up}.`]
  }
  if (down === up) return []
  const amount = (many: number) =>
    amountTold({ low: many / rate.low, high: many / rate.high }, unit)
  const takes = (many: number) => `${one(many)} ${many === 1 ? "takes" : "take"} ${amount(many)}`
  const over = base.low - down / rate.low
  const short = up / rate.low - base.low
  const tell = (value: number) => amountTold({ low: value, high: value }, unit)
  const one = (many: number) => amountTold({ low: many, high: many }, { ...counted, inBase: 1 })
  const below = down > 0 ? `${takes(down)}, ${tell(over)} over` : "less than one"
  return [`Whole ${counted.name}: ${below}; ${takes(up)}, ${tell(short)} more.`]
}

const near = 1e-6

/** "14 x 16 squares" of 5 in. */
function sizeOfLayout(
  sides: readonly [number, number],
  rates: Rates,
  unit: Unit,
  units: Units,
): string[] {
  const each = rates.from(unit.key).get("fabric")
  const [length] = units.get("fabric") ?? []
  if (!each || !length) return []
  const side = (many: number) =>
    amountTold({ low: many * each.low, high: many * each.high }, length)
  return [`${sides[0]} by ${sides[1]} lie ${side(sides[0])} by ${side(sides[1])}, without joins.`]
}

/** An area laid with pieces whose side is told: how many each way, up and down. */
function gridsFor(
  sides: readonly [number, number],
  sideUnit: Unit,
  rates: Rates,
  units: Units,
): string[] {
  const lines: string[] = []
  for (const [key, [unit]] of units) {
    if (unit?.dimension !== "counted") continue
    const to = rates.from(key)
    const each = to.get("fabric")
    if (!each || to.has("area")) continue
    if (!laysFlat(key)) {
      const along = sides.map((side) => {
        const many = (side * sideUnit.inBase) / middle(each)
        return `${figure(many)} ${unit.name} along ${figure(side)} ${sideUnit.name}`
      })
      lines.push(`That is ${along.join(" and ")}.`)
      continue
    }
    const [across, down] = sides.map((side) => (side * sideUnit.inBase) / middle(each)) as [
      number,
      number,
    ]
    const choices = [
      [Math.ceil(across - near), Math.ceil(down - near)],
      [Math.floor(across + near), Math.floor(down + near)],
    ] as const
    const tell = ([a, b]: readonly [number, number]) =>
      `${a} by ${b} = ${a * b} ${unit.name} lie ${figure((a * middle(each)) / sideUnit.inBase)} by ${figure((b * middle(each)) / sideUnit.inBase)} ${sideUnit.name}`
    const told = [...new Set(choices.filter(([a, b]) => a > 0 && b > 0).map(tell))]
    lines.push(
      `That is ${figure(across)} by ${figure(down)} ${unit.name} a side: ${told.join("; ")}.`,
    )
  }
  return lines
}

function contraryLines({ contrary }: Rates, units: Units): string[] {
  return contrary.map(({ a, b, first, later }) => {
    const [one, other] = [units.get(a)![0]!, units.get(b)![0]!]
    const of = (rate: Range) =>
      amountTold({ low: one.inBase * rate.low, high: one.inBase * rate.high }, other)
    const ratio = middle(later) / middle(first)
    return `Two figures told differ: ${amountTold({ low: one.inBase, high: one.inBase }, one)} is ${of(first)} by the first and ${of(later)} by the later, ${figure(ratio)} times (the other way ${figure(1 / ratio)}). The first is reckoned with.`
  })
}

/** What one of each thing counted is. */
function eachLines(
  facts: readonly (readonly [Quantity, Quantity])[],
  rates: Rates,
  units: Units,
): string[] {
  const told = new Set<string>()
  return facts.flat().flatMap(({ unit }) => {
    if (unit.dimension !== "counted" || told.has(unit.key)) return []
    told.add(unit.key)
    return [`${amountTold({ low: 1, high: 1 }, unit)}${also(1, rates.from(unit.key), units)}.`]
  })
}
