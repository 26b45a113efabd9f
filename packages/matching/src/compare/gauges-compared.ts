// Two gauges set side by side, counts over a length, and two yarns with their hooks: how much larger or smaller the same
// pattern comes out, and how many stitches bring it back.

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import {
  gaugeFrom,
  hookExponent,
  readHeading,
  readYarnWeight,
  type YarnWeight,
  yarnWeights,
} from "@roundwright/stitches"
import { type LengthUnit, lengthAt, lengthWords, stitchLengthWords, unitIn } from "../lengths.ts"
import { hookAdvice } from "../ways/hook-advice.ts"
import { type Counted, readCounted } from "../ways/straight.ts"

export interface GaugeTold extends Counted {
  readonly mm: number
  readonly unit: LengthUnit
  /** The hook it was worked with, where it is told. */
  readonly hookMm: number | null
}

/** "13 sts = 4 in", "4 repeats, 10 cm"; null for anything else, rows among it. */
export function readGaugeTold(text: string): GaugeTold | null {
  const match = /^(.*?[a-z])\s*(?:=|:|,|\bare\b|\bis\b|\bin\b|\bto\b|\bmeasures?\b)\s*(\S.*)/i.exec(
    text,
  )
  // It is all one line.
  if (match?.[0] !== text) return null
  const counted = readCounted(match[1]!)
  const length = lengthAt(match[2]!)
  if (!counted || !length || !(length.mm > 0) || /^(?:rows|rounds|rnds)$/.test(counted.noun))
    return null
  const rest = match[2]!.slice(length.length)
  const hookMm = /\d|hook/i.test(rest) ? (hookIn(rest) ?? null) : null
  return { ...counted, mm: length.mm, unit: unitIn(match[2]!.slice(0, length.length)), hookMm }
}

export interface GaugesCompared {
  /** Size of a stitch of the second over one of the first. */
  readonly ratio: number
  readonly cause: "ratio" | null
  /** The whole in the second gauge: its size, and the count that brings it back. */
  readonly wholeMm: number | null
  readonly countWanted: number | null
  readonly text: string
}

/** A hook this many times as thick is the furthest on one yarn, as in matching. */
const furthestHook = 1.4
const alike = 0.02

/** @param whole what the pattern (the first) asks for: a length in mm, or a count */
export function compareGauges(
  a: GaugeTold,
  b: GaugeTold,
  whole?: number | Counted,
): GaugesCompared {
  if (a.noun !== b.noun)
    throw new RoundwrightError(
      "nothing-to-compare",
      `${a.noun} and ${b.noun} cannot be set side by side.`,
      { hint: "Count the same in both, such as '13 sts = 4 in' and '15 sts = 4 in'." },
    )
  const { noun } = a
  const [eachA, eachB] = [a.mm / a.count, b.mm / b.count]
  const ratio = eachB / eachA
  const tell = (mm: number) => lengthWords(mm, a.unit)
  const each = (mm: number) => stitchLengthWords(mm, a.unit)
  const head = `One of the ${noun} takes ${each(eachA)} in the first and ${each(eachB)} in the second, ${ratio.toFixed(2)} times, so the same count comes out ${formatPercent(Math.abs(ratio - 1))} ${ratio > 1 ? "larger" : "smaller"}.`
  const told = whole === undefined ? null : wholeTold(whole, eachA, eachB, noun, tell)
  const cure = Math.abs(ratio - 1) <= alike ? "That is alike." : hookWords(1 / ratio, a, b)
  return {
    ratio,
    cause: Math.abs(ratio - 1) <= alike ? null : "ratio",
    wholeMm: told?.mm ?? null,
    countWanted: told?.count ?? null,
    text: [head, ...(told ? [told.text] : []), cure].join(" "),
  }
}

function wholeTold(
  whole: number | Counted,
  eachA: number,
  eachB: number,
  noun: string,
  tell: (mm: number) => string,
) {
  if (typeof whole !== "number" && whole.noun !== noun) {
    const needed = (whole.count * eachA) / eachB
    return {
      mm: null,
      count: Math.max(1, Math.round(needed)),
      text: `${whole.count} ${whole.noun} of the first are as large as ${needed.toFixed(2)} of the second, so ${Math.max(1, Math.round(needed))}.`,
    }
  }
  const count = typeof whole === "number" ? whole / eachA : whole.count
  const meant = count * eachA
  const mm = count * eachB
  const wanted = Math.round(meant / eachB + 1e-9)
  return {
    mm,
    count: wanted,
    text: `The pattern's ${Math.round(count)} ${noun}, ${tell(meant)}, come to ${tell(mm)} in the second gauge; for ${tell(meant)} take ${wanted} ${noun}.`,
  }
}

/** Swatches on one yarn go with the root of the hook, whole pieces up to the hook itself: between them a hook may do it. */
const between = 1.5

function hookWords(factor: number, a: GaugeTold, b: GaugeTold): string {
  if (a.hookMm !== null && a.hookMm !== b.hookMm)
    return `The ${a.hookMm} mm hook gave the first gauge: take it where that is wanted.${bothHooks(factor, a.hookMm, b.hookMm)}`
  const exponent = hookExponent({})
  const reach = exponent * Math.log(furthestHook)
  const off = Math.abs(Math.log(factor))
  const advice = hookAdvice(factor, {
    swatches: [],
    ...(b.hookMm === null ? {} : { hookMm: b.hookMm }),
  })
  if (off > between * reach || !advice)
    return "Not the hook: that is beyond what another hook does to one yarn. Take the stitches, or another yarn."
  const hard =
    off > reach ? " That is much for a hook: where the fabric spoils, take the stitches." : ""
  return `To come to the first gauge: the hook ${advice.text}.${hard}`
}

/** How far the size went with the hook. */
function bothHooks(factor: number, first: number, second: number | null): string {
  if (second === null) return ""
  const hooks = second / first
  const followed = Math.log(1 / factor) / Math.log(hooks)
  const words =
    followed > 0.85
      ? "the size follows the hook"
      : followed > 0.15
        ? "the size follows the hook only in part"
        : "the size does not follow the hook: it is the hand, the yarn or the count"
  return ` The hooks stand as ${hooks.toFixed(2)}, the sizes as ${(1 / factor).toFixed(2)}: ${words}.`
}

/** A hook named in a few words, mm. */
function hookIn(text: string): number | undefined {
  return readHeading("hook", text.replace(/\b(?:hook|with|on|a)\b|,/gi, " ").trim(), "US").hookMm
    ?.value
}

export interface YarnAndHookTold {
  readonly weight: YarnWeight
  /** Strands held together; null for one. */
  readonly strands: number | null
  readonly hookMm: number | null
}

/** "worsted, 5 mm hook", "DK and 4 mm", "weight 3"; null where no yarn is named. */
export function readYarnAndHook(text: string): YarnAndHookTold | null {
  const yarn = readYarnWeight(text)
  if (yarn === undefined) return null
  const rest =
    /((?<!\d)\d+(?:\.\d+)?\s*mm|\bhook\s+[a-z0-9/.-]+|(?<![a-z0-9/.-])[a-z0-9/.-]+\s+hook)/i.exec(
      text,
    )?.[1] ?? ""
  const strands = readHeading("yarn", text, "US").strands?.value ?? null
  return { weight: yarn.weight, strands, hookMm: hookIn(rest) ?? null }
}

/** How large a piece of the first comes out in the second. @param wholeMm a size in the first */
export function compareYarns(
  a: YarnAndHookTold,
  b: YarnAndHookTold,
  wholeMm?: number,
  unit: LengthUnit = "cm",
): GaugesCompared {
  const width = ({ weight, strands, hookMm }: YarnAndHookTold) =>
    gaugeFrom({
      swatches: [],
      yarnWeight: weight,
      ...(strands === null ? {} : { strands }),
      ...(hookMm === null ? {} : { hookMm }),
    }).scWidthMm
  const ratio = width(b) / width(a)
  const name = ({ weight, strands, hookMm }: YarnAndHookTold) =>
    `${yarnWeights[weight]!.name.toLowerCase()} (weight ${weight}${strands === null ? "" : `, ${strands} strands`}) with ${hookMm === null ? "its usual hook" : `a ${hookMm} mm hook`}`
  const head = `By usual gauges a piece in ${name(b)} is ${ratio.toFixed(2)} times the size of one in ${name(a)}, ${formatPercent(Math.abs(ratio - 1))} ${ratio > 1 ? "larger" : "smaller"}, in every round alike; hands differ by a tenth.`
  const whole =
    wholeMm === undefined
      ? ""
      : ` ${lengthWords(wholeMm, unit)} in the first are ${lengthWords(wholeMm * ratio, unit)} in the second; for the same size take ${(1 / ratio).toFixed(2)} times the rounds or pieces each way.`
  return {
    ratio,
    cause: Math.abs(ratio - 1) <= alike ? null : "ratio",
    wholeMm: wholeMm === undefined ? null : wholeMm * ratio,
    countWanted: null,
    text: `${head}${whole}`,
  }
}
