// Blankets made in one piece: worked from corner to corner in blocks, or in rounds about a square or a first row.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { type LengthUnit, lengthWords } from "../lengths.ts"

export interface CornerToCorner {
  readonly across: number
  readonly down: number
  readonly blocks: number
  /** Diagonal rows: those that grow, those that stay as long, those that shrink. */
  readonly rows: number
  readonly growing: number
  readonly level: number
  readonly shrinking: number
  readonly text: string
}

const mostBlocks = 5000

/** @param wanted width and length, mm @param block side of a block, mm @throws RoundwrightError `too-small`, `too-many-pieces` */
export function cornerToCorner(
  wanted: readonly [number, number],
  block: number,
  unit: LengthUnit = "cm",
): CornerToCorner {
  requirePositive(block, "A block")
  const [across, down] = wanted.map((mm) => Math.round(mm / block)) as [number, number]
  if (across < 1 || down < 1)
    throw new RoundwrightError("too-small", "That is smaller than one block.", {
      hint: "Check the units.",
    })
  if (Math.max(across, down) > mostBlocks)
    throw new RoundwrightError("too-many-pieces", `${across} blocks by ${down} are too many.`, {
      hint: "Check the units of both sizes.",
    })
  const [short, long] = [Math.min(across, down), Math.max(across, down)]
  const rows = across + down - 1
  const tell = (mm: number) => lengthWords(mm, unit)
  const level = long - short
  return {
    across,
    down,
    blocks: across * down,
    rows,
    growing: short,
    level,
    shrinking: short - 1,
    text: `${across} blocks by ${down} of ${tell(block)}: ${tell(across * block)} by ${tell(down * block)}, ${across * down} blocks in ${rows} diagonal rows. Increase to row ${short}${level > 0 ? `, go on for ${level} rows with one end increasing and the other decreasing` : ""}, then decrease for ${short - 1} rows. It goes by the size of a block in your yarn, not by a number of rows.`,
  }
}

export interface InRounds {
  /** Length of the first row that the rounds go about, mm; 0 for a square. */
  readonly firstRowMm: number
  /** Rounds, where a round's depth is told. */
  readonly rounds: number | null
  readonly text: string
}

/** A rectangle in rounds keeps the difference of its sides: the first row is as long as length less width. */
export function rectangleInRounds(
  [a, b]: readonly [number, number],
  roundMm: number | null,
  unit: LengthUnit = "cm",
): InRounds {
  const [width, length] = [Math.min(a, b), Math.max(a, b)]
  requirePositive(width, "The width")
  const firstRowMm = length - width
  const tell = (mm: number) => lengthWords(mm, unit)
  const rounds =
    roundMm === null
      ? null
      : Math.max(1, Math.round(width / (2 * requirePositive(roundMm, "A round"))))
  const first =
    firstRowMm < 1e-6
      ? "A square grows from its middle"
      : `Begin with a row of ${tell(firstRowMm)}, the length less the width: rounds add as much to both`
  return {
    firstRowMm,
    rounds,
    text: `${first}${rounds === null ? "." : `; ${rounds} rounds of ${tell(roundMm!)} make it ${tell(firstRowMm + 2 * rounds * roundMm!)} by ${tell(2 * rounds * roundMm!)}.`}`,
  }
}

/**
 * A granny rectangle told in groups a side: the first row holds as many more as its length has, each round one more on every side.
 * @param chainsEach chains to a group in the foundation, one of them left off at the end; null where it is not told
 */
export function rectangleInGroups(
  [a, b]: readonly [number, number],
  chainsEach: number | null,
): InRounds {
  const [width, length] = [Math.min(a, b), Math.max(a, b)]
  requirePositive(width, "The groups of a side")
  const first = length - width
  const chains =
    chainsEach === null
      ? ""
      : `, ${Math.max(0, chainsEach * first - 1)} chains (${chainsEach} to a group, less one)`
  return {
    firstRowMm: 0,
    rounds: width,
    text: `Begin with ${first} groups${chains}, the length less the width; each round adds one to every side, so ${width} rounds make ${width} by ${length} (${width - 1} where the first row counts as one).`,
  }
}
