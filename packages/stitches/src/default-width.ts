// Width of one sc in mm when there is no swatch, from yarn weight and hook, either, or neither.
//
// Widths of sc, hdc and dc in 56 published gauges that name both yarn weight and hook (counted in
// test/evidence/stitches-gauges.json). Median width per mm of hook is 1.435. On the same yarn the
// width grows slower than the hook: fitted within weights, width goes with hook^0.53; in one
// experiment (Peppergoose Design, "Stitch anatomy part 2": 3 to 10 mm on one DK yarn) row height
// went with hook^0.45. So with both known the median width of that weight, found at the median hook
// of the same gauges, is scaled by the square root of hook over that hook.
// The trade's table and these medians disagree for weights 2, 3 and 5 (measured stitches are
// narrower, mostly because the hooks are smaller than recommended); the measured ones are used.

import type { YarnWeight } from "./gauge.ts"
import { hookExponent } from "./hook-exponent.ts"
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

/** One sc's width in mm from what is known, 1 when nothing is (source `none`). */
export function defaultScWidth(
  weight: YarnWeight | undefined,
  hookMm?: number,
  threadSize?: number,
): DefaultWidth {
  if (threadSize !== undefined) return threadDefault(threadSize, hookMm)
  if (weight === undefined && hookMm === undefined) {
    const note =
      "Neither swatch nor yarn nor hook is known: lengths are in widths of one sc, not mm."
    return { source: "none", widthMm: 1, note }
  }
  if (weight === undefined) {
    const widthMm = widthPerHook * hookMm!
    const note = `Only the hook is known: ${taken(widthMm)}, ${widthPerHook.toFixed(1)} times the hook. ${surer}`
    return { source: "hook", widthMm, note }
  }
  const anchor = widthAnchor(weight)
  if (hookMm === undefined) {
    const note = `Only the yarn is known: ${taken(anchor.widthMm)}, ${sourceWords(weight, anchor)}.${tableWords(weight)} ${surer}`
    return { source: "yarn", widthMm: anchor.widthMm, note }
  }
  const widthMm = anchor.widthMm * (hookMm / anchor.hookMm) ** hookExponent
  const from = `${sourceWords(weight, anchor)}${hookWords(hookMm, anchor)}`
  const note = `Sizes are estimates: ${taken(widthMm)}, ${from}.${tableWords(weight)} ${surer}`
  return { source: "yarn-and-hook", widthMm, note }
}

function threadDefault(size: number, hookMm: number | undefined): DefaultWidth {
  const widthMm = threadScWidth(size, hookMm)
  const other = [
    ...(size === threadWidth.size ? [] : [`to size ${size}`]),
    ...(hookMm === undefined || hookMm === threadWidth.hookMm ? [] : [`to a ${hookMm} mm hook`]),
  ]
  const brought = other.length === 0 ? "" : `, brought ${other.join(" and ")}`
  const from = `the middle of ${threadWidth.gauges} published gauges for size ${threadWidth.size} cotton with a ${threadWidth.hookMm} mm hook${brought}`
  return {
    source: hookMm === undefined ? "yarn" : "yarn-and-hook",
    widthMm,
    note: `Sizes are estimates: ${taken(widthMm)}, ${from}. ${surer}`,
  }
}

const surer = "A line such as Gauge: 16 sc x 18 rows = 10 cm, with your own counts, is surer."

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
