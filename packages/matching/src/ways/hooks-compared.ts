// Two hooks set side by side: how far apart they bring one piece in one yarn. By swatches and discs sizes go with the root of
// the hook, by whole pieces that makers remade as the hook itself; both ends are told.

import { formatPercent } from "@roundwright/assessment"
import { yarnHookExponent } from "@roundwright/stitches"

export interface HooksCompared {
  readonly hookRatio: number
  /** Size over size, at least and at most. */
  readonly sizeRatio: readonly [number, number]
  readonly text: string
}

export function compareHooks(firstMm: number, secondMm: number): HooksCompared {
  const hookRatio = secondMm / firstMm
  const [a, b] = [hookRatio ** yarnHookExponent, hookRatio]
  const [least, most] = Math.abs(a - 1) < Math.abs(b - 1) ? [a, b] : [b, a]
  const way = hookRatio > 1 ? "larger" : "smaller"
  const share = (ratio: number) => formatPercent(Math.abs(ratio - 1))
  return {
    hookRatio,
    sizeRatio: [least, most],
    text:
      hookRatio === 1
        ? "The hooks are marked the same. If they are two, measure both shafts: makes differ by a few tenths of a millimetre and in the throat. If it is one, what differs is something else: yarn, hand or count."
        : `The hook can be the cause: ${secondMm} mm over ${firstMm} mm is ${hookRatio.toFixed(2)}, and pieces come out ${share(least)} to ${share(most)} ${way} with the second, in every round alike. Make the odd ones again with the hook of the others, or work their next rounds with it where more are to come; a round more or fewer only where the gap is a round wide.`,
  }
}
