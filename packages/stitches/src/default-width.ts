// Width of one sc in mm when there is no swatch, from yarn and hook, either, or neither.
//
// With both known: the median width of that yarn weight, found at the median hook of the same published gauges (56 of sc,
// hdc and dc that name both, test/evidence/stitches-gauges.json), brought to the hook by hook-law.ts. The trade's table and
// these medians disagree for weights 2, 3 and 5 (measured stitches are narrower, mostly because the hooks are smaller than
// recommended); the measured ones are used. With a hook alone: the yarn that goes with it, see hook-alone.ts.
//
// Strands. Yarn held double is a yarn of twice the section, so the square root of 2 as thick. A width that goes with the hook
// to the power p goes with the yarn's thickness to the power 1 - p, since yarn and hook are all the lengths there are: with
// n strands on the same hook a stitch is n^((1 - p) / 2) as wide, 1.19 times for two strands of yarn.

import type { GaugeInput, YarnWeight } from "./gauge.ts"
import { type HookAndYarn, widthOfHookAlone } from "./hook-alone.ts"
import { hookFactor } from "./hook-law.ts"
import { threadScWidth, threadWidth } from "./thread-size.ts"
import { recommendedHookMm, yarnWeights } from "./yarn-weights.ts"

/** Median stitch width over hook in 56 gauges of sc, hdc and dc. */
export const widthPerHook = 1.435
/** Fewer gauges than this do not outweigh the trade's table. */
const enoughGauges = 3

export interface WidthAnchor {
  readonly widthMm: number
  readonly hookMm: number
  readonly gauges: number
}

/** Median width and median hook of the published gauges by yarn weight; n beside them. */
export const measuredWidths: Readonly<Partial<Record<YarnWeight, WidthAnchor>>> = {
  2: { widthMm: 4.6, hookMm: 3.25, gauges: 4 },
  3: { widthMm: 5.48, hookMm: 4, gauges: 18 },
  4: { widthMm: 7.62, hookMm: 5, gauges: 23 },
  5: { widthMm: 8.57, hookMm: 6.5, gauges: 7 },
  6: { widthMm: 14.51, hookMm: 12, gauges: 3 },
}

/** Width and hook to scale from: measured where there are enough gauges, else the table's middle. */
export function widthAnchor(weight: YarnWeight): WidthAnchor {
  // The table itself names 10-count thread for weight 0.
  if (weight === 0) return threadWidth
  const measured = measuredWidths[weight]
  if (measured !== undefined && measured.gauges >= enoughGauges) return measured
  const hookMm = recommendedHookMm(weight)
  const { fewest, most } = yarnWeights[weight]!.gauge
  // Weight 7 is open: "5 or fewer in 4 in". There the hook decides.
  const widthMm = fewest === null ? widthPerHook * hookMm : 101.6 / ((fewest + most) / 2)
  return { widthMm, hookMm, gauges: 0 }
}

export interface DefaultWidth {
  readonly source: "yarn-and-hook" | "yarn" | "hook" | "none"
  readonly widthMm: number
  readonly note: string
}

/** What of a gauge tells a width without a swatch. */
export type YarnAndHook = Pick<
  GaugeInput,
  "yarnWeight" | "threadSize" | "strands" | "hookMm" | "yarnOfHookMm"
>

/** One sc's width in mm from what is known, 1 when nothing is (source `none`). */
export function defaultScWidth(known: YarnAndHook): DefaultWidth {
  const { yarnWeight, threadSize, hookMm } = known
  if (threadSize !== undefined) return threadDefault(threadSize, known)
  if (yarnWeight !== undefined) return yarnDefault(yarnWeight, known)
  if (hookMm !== undefined) return hookDefault(hookMm, known)
  const note = "Neither swatch nor yarn nor hook is known: lengths are in widths of one sc, not mm."
  return { source: "none", widthMm: 1, note }
}

/** The hook that a yarn's usual width is known with, mm; undefined where no yarn is known. */
export function usualHookMm({
  yarnWeight,
  threadSize,
  strands = 1,
}: YarnAndHook): number | undefined {
  if (threadSize === undefined && yarnWeight === undefined) return undefined
  const { hookMm } = threadSize === undefined ? widthAnchor(yarnWeight!) : threadWidth
  return hookMm * Math.sqrt(strands)
}

/** Thickness of so many strands over that of one. */
const thicker = (strands: number | undefined) => Math.sqrt(strands ?? 1)

/** Width of a yarn whose one strand is so wide with that hook: thicker yarn on a thicker hook, then the hook brought to `hookMm`. */
function widthWith(
  anchor: { readonly widthMm: number; readonly hookMm: number },
  known: YarnAndHook,
): number {
  const times = thicker(known.strands)
  const usualMm = times * anchor.hookMm
  return times * anchor.widthMm * hookFactor(known, usualMm, known.hookMm ?? usualMm)
}

function yarnDefault(weight: YarnWeight, known: YarnAndHook): DefaultWidth {
  const { hookMm, strands } = known
  const anchor = widthAnchor(weight)
  const widthMm = widthWith(anchor, known)
  const from = sourceWords(weight, anchor)
  const held = strandWords(strands)
  if (hookMm === undefined) {
    const note = `Only the yarn is known: ${taken(widthMm)}, ${from}${held}.${tableWords(weight)} ${surer}`
    return { source: "yarn", widthMm, note }
  }
  const note = `Sizes are estimates: ${taken(widthMm)}, ${from}${held}${hookWords(hookMm, anchor)}.${tableWords(weight)} ${surer}`
  return { source: "yarn-and-hook", widthMm, note }
}

function hookDefault(
  hookMm: number,
  { yarnOfHookMm = hookMm, strands }: YarnAndHook,
): DefaultWidth {
  const usual = widthOfHookAlone(yarnOfHookMm, ({ yarn, hookMm: mm }: HookAndYarn) =>
    "threadSize" in yarn ? threadScWidth(yarn.threadSize, mm) : widthAt(yarn.weight, mm),
  )
  // No yarn is named, so that strands are part of what goes with the hook.
  const widthMm = usual * hookFactor({}, yarnOfHookMm, hookMm)
  const held = strands === undefined || strands === 1 ? "" : ", however many strands it is held in"
  const other = yarnOfHookMm === hookMm ? "it" : `a ${yarnOfHookMm} mm hook`
  const note = `Only the hook is known: ${taken(widthMm)}, as of the yarn that motifs name with ${other}${held}. A line such as Yarn: DK makes it surer. ${surer}`
  return { source: "hook", widthMm, note }
}

function widthAt(weight: YarnWeight, hookMm: number): number {
  return widthWith(widthAnchor(weight), { yarnWeight: weight, hookMm })
}

function strandWords(strands: number | undefined): string {
  if (strands === undefined || strands === 1) return ""
  return `, ${strands} strands taken as one yarn ${thicker(strands).toFixed(1)} times as thick`
}

function threadDefault(size: number, known: YarnAndHook): DefaultWidth {
  const { hookMm, strands } = known
  const one = { hookMm: threadWidth.hookMm, widthMm: threadScWidth(size) }
  const widthMm = widthWith(one, known)
  const other = [
    ...(size === threadWidth.size ? [] : [`to size ${size}`]),
    ...(hookMm === undefined || hookMm === threadWidth.hookMm ? [] : [`to a ${hookMm} mm hook`]),
  ]
  const brought = other.length === 0 ? "" : `, brought ${other.join(" and ")}`
  const from = `the middle of ${threadWidth.gauges} published gauges for size ${threadWidth.size} cotton with a ${threadWidth.hookMm} mm hook${brought}${strandWords(strands)}`
  return {
    source: hookMm === undefined ? "yarn" : "yarn-and-hook",
    widthMm,
    note: `Sizes are estimates: ${taken(widthMm)}, ${from}. ${surer}`,
  }
}

/** The measured round is asked for first: it mends every size at once, a swatch the sizes of its stitch. */
const surer =
  "A round of yours, measured, is surer (Size: 9 cm after Rnd 3), and so is a swatch (Gauge: 16 sc x 18 rows = 10 cm)."

function taken(widthMm: number): string {
  return `one sc is taken ${widthMm.toFixed(1)} mm wide`
}

function sourceWords(weight: YarnWeight, { gauges, hookMm }: WidthAnchor): string {
  const yarn = `this yarn (weight ${weight}, ${yarnWeights[weight]!.name.toLowerCase()}) with a ${hookMm} mm hook`
  return gauges === 0
    ? `as the yarn trade's table has it for ${yarn}`
    : `the middle of ${gauges} published gauges for ${yarn}`
}

/** Where the maker's hook is not the one that the yarn's width is known with. */
function hookWords(hookMm: number, anchor: WidthAnchor): string {
  if (hookMm === anchor.hookMm) return ""
  const way = hookMm > anchor.hookMm ? "wider" : "narrower"
  return ` (${anchor.widthMm.toFixed(1)} mm) and made ${way} for a ${hookMm} mm hook`
}

/** Said where the measured median lies outside the table's range: weights 2, 3 and 5, not 4 and 6. */
function tableWords(weight: YarnWeight): string {
  return weight === 2 || weight === 3 || weight === 5
    ? " The yarn trade's table has wider stitches; what makers publish goes before it."
    : ""
}
