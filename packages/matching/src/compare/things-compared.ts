// Two pieces of which the sizes are told and something else besides: how far hook, yarn, rounds, counts and stitch account for the
// difference, each tested, and what brings the one to the size of the other. On one yarn sizes go with the root of the hook (swatches)
// up to the hook itself (whole pieces remade), as in matching.

import { formatPercent } from "@roundwright/assessment"
import { hookExponent, yarnHookExponent, yarnWeights } from "@roundwright/stitches"
import { lengthWords } from "../lengths.ts"
import { hookAdvice } from "../ways/hook-advice.ts"
import { compareYarns } from "./gauges-compared.ts"
import type { Thing } from "./read-thing.ts"
import { compareStitches } from "./stitches-compared.ts"

export type ThingCause = "hook" | "yarn" | "rounds" | "counts" | "stitch" | "unknown" | null

export interface ThingsCompared {
  /** Size of the second over the first. */
  readonly ratio: number
  readonly cause: ThingCause
  readonly text: string
  readonly lines: readonly string[]
}

/** Less is a ruler's doubt. */
const alike = 0.02
/** Hands differ by so much: a cause within it may be the whole of it. */
const handsDiffer = 0.12

/** A hook this many times as thick is the furthest on one yarn, and between swatches and whole pieces it does a half more, as with gauges. */
const hookReach = () => 1.5 * hookExponent({}) * Math.log(1.4)

interface Tested {
  readonly cause: Exclude<ThingCause, null | "unknown">
  /** Size ratio it makes, at least and at most. */
  readonly makes: readonly [number, number]
  readonly told: string
}

export function compareThings(a: Thing, b: Thing): ThingsCompared {
  const ratio = b.mm / a.mm
  const tell = (mm: number) => lengthWords(mm, a.unit)
  const head = `${tell(b.mm)} over ${tell(a.mm)} is ${ratio.toFixed(2)} (the other way ${(1 / ratio).toFixed(2)}; in area ${(ratio ** 2).toFixed(2)} and ${(1 / ratio ** 2).toFixed(2)})`
  const tested = [
    ...roundsTested(a, b, tell),
    ...countsTested(a, b),
    ...stitchTested(a, b),
    ...yarnTested(a, b),
    ...hookTested(a, b, ratio),
  ]
  const lines = [...tested.map(({ told }) => told), ...toBring(a, b, tell)]
  if (Math.abs(ratio - 1) <= alike)
    return { ratio, cause: null, text: `${head}: as good as alike.`, lines }
  const { cause, words } = causeOf(ratio, tested, a.hookMm === null || b.hookMm === null)
  return { ratio, cause, text: `${head}. ${words}`, lines }
}

function within(ratio: number, [least, most]: readonly [number, number], slack: number): boolean {
  const [low, high] = [Math.min(least, most), Math.max(least, most)]
  return ratio >= low / (1 + slack) && ratio <= high * (1 + slack)
}

const causeWords: Readonly<Record<Tested["cause"], string>> = {
  rounds: "Not the hook: it is the number of rounds",
  counts: "Not the hook: it is the count",
  stitch: "Not the hook: it is the stitch, or what the other country calls so",
  yarn: "Not the hook by itself: it is the yarn, with the hook that goes with it",
  hook: "It is the hook",
}

function causeOf(
  ratio: number,
  tested: readonly Tested[],
  hooksUntold: boolean,
): { cause: ThingCause; words: string } {
  const [first] = tested.filter(({ makes }) => makes.some((one) => Math.abs(one - 1) > alike))
  const fits = tested.filter(
    ({ makes, cause }) =>
      within(ratio, makes, cause === "hook" ? alike : handsDiffer) &&
      makes.some((one) => Math.abs(Math.log(one)) > 0.3 * Math.abs(Math.log(ratio))),
  )
  const best = fits[0]
  const partial = tested.find(({ cause }) => cause === "hook")
  if (best) return { cause: best.cause, words: `${causeWords[best.cause]}.` }
  const sameWay = (one: readonly [number, number]) =>
    Math.sign(Math.log(one[1])) === Math.sign(Math.log(ratio)) && Math.abs(one[1] - 1) > alike
  if (partial && sameWay(partial.makes)) {
    const [least] = partial.makes
    if (Math.abs(Math.log(ratio)) < Math.abs(Math.log(least)))
      return {
        cause: "hook",
        words: "It is the hook, and less than hooks do by rule: the hand has held it back.",
      }
    const [low, high] = partial.makes.map((one) => Math.log(one) / Math.log(ratio)) as [
      number,
      number,
    ]
    if (tested.length === 1)
      return {
        cause: high >= 0.5 ? "hook" : "unknown",
        words: `The hook makes ${formatPercent(low)} to ${formatPercent(high)} of it and not the whole: the rest, ${(ratio / partial.makes[1]).toFixed(2)} to ${(ratio / least).toFixed(2)}, is the yarn, the hand, the terms or the count.`,
      }
  }
  const yarn = tested.find((one) => one.cause === "yarn")
  if (yarn && sameWay(yarn.makes))
    return {
      cause: "yarn",
      words: `Not the hook by itself: it is the yarn, ${Math.abs(Math.log(ratio)) < Math.abs(Math.log(yarn.makes[0])) ? "though it makes less than it does by usual gauges: hook or hand have held it back" : "and something besides: its hook, the hand or a count"}.`,
    }
  // What all that is told makes together.
  const all = tested
    .filter(({ cause }) => cause !== "hook" || !tested.some((one) => one.cause === "yarn"))
    .reduce<[number, number]>(
      ([low, high], { makes }) => [low * Math.min(...makes), high * Math.max(...makes)],
      [1, 1],
    )
  if (tested.length > 1 && within(ratio, all, handsDiffer) && first)
    return {
      cause: first.cause,
      words: `Together ${tested.map(({ cause }) => cause).join(" and ")} account for it (${all.map((one) => one.toFixed(2)).join(" to ")}): not the hook alone.`,
    }
  const told = tested.length > 0 ? "What is told does not explain it. " : ""
  const advice = hookAdvice(1 / ratio, { swatches: [] })
  if (hooksUntold && advice && Math.abs(Math.log(ratio)) <= hookReach())
    return {
      cause: "unknown",
      words: `${told}It may be the hook, for both hooks are not told (to come to the first, the second takes the hook ${advice.text}); or the yarn, the terms of the stitches, a count or the hand. Tell what each was made with, and count the rounds.`,
    }
  return {
    cause: "unknown",
    words: `Not the hook${tested.length > 0 ? " nor anything else that is told, by itself" : ""}: what is left is the yarn, the terms of the stitches, a count or the hand. Compare both after each round.`,
  }
}

function roundsTested(a: Thing, b: Thing, tell: (mm: number) => string): Tested[] {
  if (a.rounds === null || b.rounds === null) return []
  const makes = b.rounds / a.rounds
  return [
    {
      cause: "rounds",
      makes: [makes, makes],
      told: `Rounds: ${b.rounds} over ${a.rounds} is ${makes.toFixed(2)}; each adds ${tell(a.mm / a.rounds)} across in the first and ${tell(b.mm / b.rounds)} in the second, ${(b.mm / b.rounds / (a.mm / a.rounds)).toFixed(2)} times.${b.rounds === a.rounds ? "" : ` With ${b.rounds} rounds the first would be about ${tell((a.mm / a.rounds) * b.rounds)}, with ${a.rounds} the second ${tell((b.mm / b.rounds) * a.rounds)}.`}`,
    },
  ]
}

function countsTested(a: Thing, b: Thing): Tested[] {
  if (!a.counted || !b.counted || a.counted.noun !== b.counted.noun) return []
  const makes = b.counted.count / a.counted.count
  return [
    {
      cause: "counts",
      makes: [makes, makes],
      told: `Counts: ${b.counted.count} over ${a.counted.count} ${a.counted.noun} is ${makes.toFixed(2)}; one takes ${(b.mm / b.counted.count / (a.mm / a.counted.count)).toFixed(2)} times the room in the second.`,
    },
  ]
}

function stitchTested(a: Thing, b: Thing): Tested[] {
  if (!a.stitch || !b.stitch) return []
  const { heightRatio, text } = compareStitches(a.stitch, b.stitch)
  return [{ cause: "stitch", makes: [heightRatio, heightRatio], told: `Stitches: ${text}` }]
}

function yarnTested(a: Thing, b: Thing): Tested[] {
  if (!a.yarn || !b.yarn) return []
  const same = a.yarn.weight === b.yarn.weight && a.yarn.strands === b.yarn.strands
  if (same) return []
  const usual = (one: Thing) => ({ ...one.yarn!, hookMm: null })
  const own = (one: Thing) => ({ ...one.yarn!, hookMm: one.hookMm })
  const [byOwn, byUsual] = [
    compareYarns(usual(a), usual(b)).ratio,
    compareYarns(own(a), own(b)).ratio,
  ]
  const name = (one: Thing) => yarnWeights[one.yarn!.weight]!.name.toLowerCase()
  return [
    {
      cause: "yarn",
      makes: [byOwn, byUsual],
      told: `Yarn: ${name(b)} for ${name(a)} comes to ${spread(byOwn, byUsual)} by usual gauges, its hook with it; hands differ by a tenth.`,
    },
  ]
}

function hookTested(a: Thing, b: Thing, ratio: number): Tested[] {
  if (a.hookMm === null || b.hookMm === null) return []
  const hooks = b.hookMm / a.hookMm
  if (hooks === 1)
    return [
      {
        cause: "hook",
        makes: [1, 1],
        told: `The hook is the same, ${a.hookMm} mm: it makes no difference.`,
      },
    ]
  const least = hooks ** yarnHookExponent
  const shown = Math.log(ratio) / Math.log(hooks)
  const share =
    shown <= 0
      ? "and the size goes the other way"
      : shown > 1.1
        ? "more than the hooks"
        : `so ${formatPercent(shown)} of the hook's change shows in the size`
  return [
    {
      cause: "hook",
      makes: [least, hooks],
      told: `Hooks: ${b.hookMm} mm over ${a.hookMm} mm is ${hooks.toFixed(2)}, which alone makes ${spread(least, hooks)} on one yarn; the sizes stand as ${ratio.toFixed(2)}, ${share}.`,
    },
  ]
}

function spread(one: number, other: number): string {
  const [low, high] = [one, other].map((value) => value.toFixed(2)).sort()
  return low === high ? low! : `${low} to ${high}`
}

/** What is missing, on each side and in rounds. */
function toBring(a: Thing, b: Thing, tell: (mm: number) => string): string[] {
  const by = a.mm - b.mm
  if (Math.abs(by) <= alike * a.mm) return []
  const rounds = b.rounds ?? a.rounds
  const each = rounds === null ? null : b.mm / rounds
  const inRounds =
    each === null
      ? ""
      : `; at ${tell(each)} a round across that is about ${Number((Math.abs(by) / each).toFixed(1))} rounds ${by > 0 ? "more" : "fewer"} (${Math.max(1, Math.round(Math.abs(by) / each))} whole)`
  return [
    `To bring the second to ${tell(a.mm)}: ${tell(Math.abs(by))} ${by > 0 ? "more" : "less"} across, ${tell(Math.abs(by) / 2)} on each side${inRounds}. Of the second it takes ${((a.mm / b.mm) ** 2).toFixed(2)} times as many pieces for the same blanket.`,
  ]
}
