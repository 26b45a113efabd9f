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
    const note = `Only the hook is known: a stitch is taken ${widthPerHook} times as wide as the hook.`
    return { source: "hook", widthMm: widthPerHook * hookMm!, note }
  }
  const anchor = widthAnchor(weight)
  const from = anchorWords(weight, anchor)
  if (hookMm === undefined) {
    return { source: "yarn", widthMm: anchor.widthMm, note: `Only the yarn is known: ${from}.` }
  }
  const widthMm = anchor.widthMm * (hookMm / anchor.hookMm) ** hookExponent
  return {
    source: "yarn-and-hook",
    widthMm,
    note: `Size from yarn and hook: ${from}, scaled by the square root of the hook.`,
  }
}

function threadDefault(size: number, hookMm: number | undefined): DefaultWidth {
  const from = `${threadWidth.gauges} published gauges of size ${threadWidth.size} cotton, ${threadWidth.widthMm} mm a stitch at a ${threadWidth.hookMm} mm hook`
  const finer =
    size === threadWidth.size
      ? ""
      : `, brought to size ${size} as filet meshes of three sizes let expect`
  return {
    source: hookMm === undefined ? "yarn" : "yarn-and-hook",
    widthMm: threadScWidth(size, hookMm),
    note: `Size from thread${hookMm === undefined ? "" : " and hook"}: ${from}${finer}.`,
  }
}

function anchorWords(weight: YarnWeight, anchor: WidthAnchor): string {
  const name = yarnWeights[weight]!.name
  const size = `${anchor.widthMm.toFixed(2)} mm a stitch at a ${anchor.hookMm} mm hook`
  if (anchor.gauges === 0) return `weight ${weight} (${name}), the trade's table, ${size}`
  const clash = tableDisagrees(weight)
    ? ", narrower than the trade's table has it, which was set aside"
    : ""
  return `weight ${weight} (${name}), median of ${anchor.gauges} published gauges, ${size}${clash}`
}

/** True when the measured median lies outside the table's range (weights 2, 3 and 5, not 4 and 6). */
function tableDisagrees(weight: YarnWeight): boolean {
  return weight === 2 || weight === 3 || weight === 5
}
