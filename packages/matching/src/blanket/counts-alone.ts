// Blankets by their number of pieces alone, no size told: how many a layout takes, how many are still to make, how many blankets so
// many pieces are, and how a number that makes no good rectangle can be laid.

import { RoundwrightError } from "@roundwright/numerics"

export interface CountsAlone {
  readonly needed: number
  readonly have: number | null
  readonly toMake: number | null
  readonly text: string
  readonly lines: readonly string[]
}

/** @throws RoundwrightError `bad-count` */
export function countsAlone({
  layout,
  pieces,
  have,
}: {
  readonly layout?: readonly [number, number]
  readonly pieces?: number
  readonly have?: number
}): CountsAlone {
  const needed = layout ? layout[0] * layout[1] : (pieces ?? have ?? 0)
  if (!(needed >= 1))
    throw new RoundwrightError("bad-count", "No number of pieces is told.", {
      hint: "Give --layout 6x9, or --pieces 34.",
    })
  const head = layout
    ? `${layout[0]} by ${layout[1]} are ${needed} pieces, ${ratioWords(layout)}.`
    : `${needed} pieces${laidAs(needed)}.`
  const there = have === undefined ? "" : ` ${haveText(have, needed)}`
  const another = layout ? [oneMore(layout)] : []
  return {
    needed,
    have: have ?? null,
    toMake: have === undefined ? null : Math.max(0, needed - have),
    text: `${head}${there}`,
    lines: [...another, "Tell a piece's size (--piece '15 cm') for the size of the blanket."],
  }
}

/** What is there against what is needed: to make, over, whole blankets. */
export function haveText(have: number, needed: number): string {
  if (have < needed)
    return `${have} are there (${Math.round((100 * have) / needed)} %), ${needed - have} more to make.`
  const whole = Math.floor(have / needed)
  const over = have - whole * needed
  if (whole === 1 && over === 0) return "All are there."
  return `All are there${over > 0 || whole > 1 ? `, and ${have - needed} left over` : ""}: ${have} are ${whole} such ${whole === 1 ? "blanket" : "blankets"}${over > 0 ? ` and ${over}, ${needed - over} more for ${whole === 1 ? "a second" : "one more"}` : ""}.`
}

function ratioWords([a, b]: readonly [number, number]): string {
  const ratio = Math.max(a, b) / Math.min(a, b)
  return ratio === 1 ? "a square" : `${Number(ratio.toFixed(2))} to 1`
}

/** With a row or a strip more each way. */
function oneMore([rows, columns]: readonly [number, number]): string {
  return `One more each way: ${rows + 1} by ${columns} are ${(rows + 1) * columns} (${columns} more, ${ratioWords([rows + 1, columns])}), ${rows} by ${columns + 1} are ${rows * (columns + 1)} (${rows} more, ${ratioWords([rows, columns + 1])}); one fewer: ${Math.max(1, rows - 1)} by ${columns} are ${Math.max(1, rows - 1) * columns}, ${rows} by ${Math.max(1, columns - 1)} are ${rows * Math.max(1, columns - 1)}.`
}

/** Longer than twice its width a blanket is a scarf. */
const longest = 2
const mostPieces = 20_000

/** " can be laid 4 by 6", or the nearest numbers that can; nothing where there are too many. */
export function laidAs(count: number): string {
  if (count > mostPieces) return ""
  const own = goodLayouts(count)
  if (own.length > 0) return ` can be laid ${own.slice(0, 3).join(", ")}`
  const only = rectangles(count)[0]!
  const near = [1, -1, 2, -2, 3, -3, 4, -4].flatMap((by) => {
    const [best] = count + by > 0 ? goodLayouts(count + by) : []
    return best ? [`${count + by} (${best})`] : []
  })
  return ` make ${only[0] > 1 ? `only ${only[0]} by ${only[1]}` : "only one row"}; near it are ${near.slice(0, 4).join(", ")}`
}

function goodLayouts(count: number): string[] {
  return rectangles(count)
    .filter(([a, b]) => b / a <= longest)
    .map(([a, b]) => `${a} by ${b}`)
}

/** Squarest first. */
function rectangles(count: number): [number, number][] {
  const found: [number, number][] = []
  for (let rows = Math.floor(Math.sqrt(count)); rows >= 1; rows--)
    if (count % rows === 0) found.push([rows, count / rows])
  return found
}
