// Which hook would make a piece of the size anew. On one yarn swatches and discs give sizes that go with the root of the hook;
// makers who remade whole pieces tell of more: squares of 6 and 7 in with 3.5 and 4 mm (Priscilla Hewitt), coasters of 8.8 and
// 9.8 cm with 5 and 5.5 mm (victorianeclectic.com), as the hook itself. So a range of hooks is told, the nearest first to try.

import { type GaugeInput, hookExponent, hooks, yarnHookExponent } from "@roundwright/stitches"

export interface HookAdvice {
  /** The likeliest, the nearest to the hook now and the furthest that may be needed, mm. */
  readonly likelyMm: number
  readonly firstMm: number
  readonly furthestMm: number
  /** Sizes sold from the hook now to each. */
  readonly likelySizes: number
  readonly firstSizes: number
  readonly furthestSizes: number
  readonly way: "up" | "down"
  readonly text: string
}

/** In the order they are sold in shops: half a millimetre apart, and the quarters below 4 mm. */
const sold = hooks.map(({ mm }) => mm)
/** Where no hook is known sizes are counted from this one. */
const usualHookMm = 5

/** @param factor size wished for over size now; null where that is as good as one */
export function hookAdvice(factor: number, input: GaugeInput): HookAdvice | null {
  if (Math.abs(Math.log(factor)) < 0.02) return null
  const hookMm = input.hookMm ?? usualHookMm
  const exponent = hookExponent(input)
  const [near, likely, far] = [1, Math.sqrt(exponent), exponent].map((power) =>
    nearestOther(hookMm * factor ** (1 / power), hookMm, factor),
  ) as [number, number, number]
  const [firstSizes, likelySizes, furthestSizes] = [near, likely, far].map((mm) =>
    sizesBetween(hookMm, mm),
  ) as [number, number, number]
  const way = factor > 1 ? "up" : "down"
  const named = (mm: number) => (input.hookMm === undefined ? "" : ` (${mm} mm)`)
  const range =
    firstSizes === furthestSizes
      ? ""
      : likelySizes === firstSizes
        ? `, ${numberWord(furthestSizes)}${named(far)} if that is not enough`
        : `; between ${numberWord(firstSizes)}${named(near)} and ${numberWord(furthestSizes)}${named(far)}, as the hand goes`
  return {
    likelyMm: likely,
    firstMm: near,
    furthestMm: far,
    likelySizes,
    firstSizes,
    furthestSizes,
    way,
    text: `about ${likelySizes === 1 ? "one size" : `${numberWord(likelySizes)} sizes`} ${way}${named(likely)}${range}`,
  }
}

/** The hook sold nearest to a size, on the side that is asked for. */
function nearestOther(wantedMm: number, nowMm: number, factor: number): number {
  const choice = sold.filter((mm) => (factor > 1 ? mm > nowMm : mm < nowMm))
  return choice.reduce(
    (best, mm) => (Math.abs(mm - wantedMm) < Math.abs(best - wantedMm) ? mm : best),
    choice[0] ?? nowMm,
  )
}

function sizesBetween(from: number, to: number): number {
  const [least, most] = [Math.min(from, to), Math.max(from, to)]
  const between = sold.filter((mm) => mm > least && mm < most).length
  return from === to ? 0 : between + 1
}

export function numberWord(value: number): string {
  return ["no", "one", "two", "three", "four", "five", "six"][value] ?? String(value)
}

/** On one yarn swatches go with this power of the hook. */
const exponentLeast = yarnHookExponent

function shareWords(share: number): string {
  return `${Math.round(100 * share)} %`
}

/**
 * Another hook in hand than the one that was meant: how much of the size that makes, at most as the hook itself.
 * @param wanted size meant over size now; null where no such hook is told
 */
export function meantHook(
  { meantHookMm, changed }: { readonly meantHookMm?: number; readonly changed?: string },
  hookMm: number | undefined,
  wanted: number,
): { readonly explains: boolean; readonly text: string } | null {
  if (meantHookMm === undefined || hookMm === undefined) return null
  const hooks = hookMm / meantHookMm
  const share = Math.log(hooks) / Math.log(1 / wanted)
  const rest = 1 / wanted / hooks
  const sizes = `The hooks stand as ${hooks.toFixed(2)} (${hookMm} mm over ${meantHookMm} mm), the sizes as ${(1 / wanted).toFixed(2)}`
  if (!Number.isFinite(share))
    return hooks === 1
      ? null
      : {
          explains: false,
          text: `${sizes}: what the hook changes, the yarn or the hand takes back.`,
        }
  if (changed === "yarn" && share > 0)
    return {
      explains: false,
      text: `${sizes}: the hook makes ${shareWords(exponentLeast * share)} to ${shareWords(share)} of it, the yarn the rest.`,
    }
  if (!(share > 0))
    return { explains: false, text: `${sizes}: the other way, so it is not the hook.` }
  if (share >= 0.85) return { explains: true, text: `${sizes}: it is the hook.` }
  if (share >= 0.5)
    return {
      explains: true,
      text: `${sizes}: it is the hook for the greater part, at most; the rest, ${rest.toFixed(2)}, is the hand, the yarn or the count.`,
    }
  return {
    explains: false,
    text: `${sizes}: the hook makes the lesser part of it; the rest, ${rest.toFixed(2)}, is something else.`,
  }
}
