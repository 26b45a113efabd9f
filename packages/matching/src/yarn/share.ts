// What is still to do from what was done: parts of a project weighed, the rest told in step; pieces of what is left; balls.

import { RoundwrightError, requirePositive } from "@roundwright/numerics"
import { amountFigure } from "./amounts.ts"

export interface ShareAsked {
  /** Parts done, of how many (null: as many as the yarn gives). */
  readonly done: number
  readonly of: number | null
  /** What they took, and what there is for the rest; in one unit. */
  readonly used?: number
  readonly left?: number
  /** Step of the scale, where it was weighed. */
  readonly step?: number
  /** Parts one ball makes, at least and at most. */
  readonly perBall?: readonly [number, number]
  /** A ball, in the same unit: whole parts a ball and balls in all are told. */
  readonly ball?: number
  /** Everything there was before the first part, in place of what is left. */
  readonly all?: number
  /** Metres in one of the unit, by the label. */
  readonly metresPerUnit?: number
  /** Whether the parts are laid in rows, so that rectangles are told. */
  readonly laidOut?: boolean
}

export interface ShareTold {
  readonly toDo: number | null
  readonly perPart: number | null
  /** For the rest; between what the scale's step leaves open. */
  readonly needed: number | null
  readonly neededBand: readonly [number, number] | null
  /** What is missing (positive) or over. */
  readonly short: number | null
  readonly enough: boolean | null
  /** Whole parts that what is left makes. */
  readonly makes: number | null
  readonly ballsLeft: readonly [number, number] | null
  readonly ballsAll: readonly [number, number] | null
  readonly text: string
}

/** @throws RoundwrightError `not-positive`, `nothing-told`, `no-yarn-left` */
export function shareOut(asked: ShareAsked, unit: string): ShareTold {
  // A scale shows whole grams; lengths and balls are not weighed.
  const { done, of, used, ball, all, step = unit === "g" ? 1 : 0 } = asked
  const left = asked.left ?? (all !== undefined && used !== undefined ? all - used : undefined)
  requirePositive(done, "What is done")
  if (of !== null && of < done)
    throw new RoundwrightError("bad-count", `${done} of ${of} cannot be done.`, {
      hint: "Give what is done first, then how many there are to be in all.",
    })
  if (left !== undefined && !(left > 0))
    throw new RoundwrightError("no-yarn-left", "No yarn is left for the rest.", {
      hint: "Weigh what is left.",
    })
  const toDo = of === null ? null : of - done
  const perPart = used === undefined ? null : requirePositive(used, "What was used") / done
  const needed = perPart === null || toDo === null ? null : perPart * toDo
  const slack = toDo === null ? 0 : (step * toDo) / done
  const makes = perPart === null || left === undefined ? null : Math.floor(left / perPart + 1e-9)
  const short = needed === null || left === undefined ? null : needed - left
  if (ball !== undefined) requirePositive(ball, "A ball")
  const wholePerBall =
    ball === undefined || perPart === null ? null : Math.floor(ball / perPart + 1e-9)
  const perBall = asked.perBall ?? rangePerBall(wholePerBall, ball, perPart)
  const balls = (parts: number): [number, number] | null =>
    perBall ? [Math.ceil(parts / perBall[1] - 1e-9), Math.ceil(parts / perBall[0] - 1e-9)] : null
  const told = {
    toDo,
    perPart,
    needed,
    neededBand: needed === null ? null : ([Math.max(0, needed - slack), needed + slack] as const),
    short,
    enough: short === null ? null : short <= 0,
    makes,
    ballsLeft: toDo === null ? null : balls(toDo),
    ballsAll: of === null ? null : balls(of),
  }
  return { ...told, text: shareText({ ...told, wholePerBall }, { ...asked, left }, unit) }
}

/** Whole parts a ball, to all of it used with the ends joined in mid-part. */
function rangePerBall(
  whole: number | null,
  ball: number | undefined,
  perPart: number | null,
): readonly [number, number] | null {
  if (whole === null || ball === undefined || perPart === null) return null
  return whole < 1 ? [ball / perPart, ball / perPart] : [whole, ball / perPart]
}

function shareText(
  told: Omit<ShareTold, "text"> & { readonly wholePerBall: number | null },
  {
    done,
    of,
    left,
    laidOut,
    all,
    metresPerUnit,
  }: Omit<ShareAsked, "left"> & { readonly left?: number | undefined },
  unit: string,
): string {
  const f = amountFigure
  const { toDo, perPart, needed, neededBand, short, makes, ballsLeft, ballsAll, wholePerBall } =
    told
  const parts: string[] = []
  if (toDo !== null) parts.push(`${done} of ${of} are done, ${toDo} to do`)
  const metres = (value: number) =>
    metresPerUnit === undefined
      ? ""
      : ` (${f(value * metresPerUnit)} m, ${f((value * metresPerUnit) / 0.9144)} yd)`
  if (perPart !== null) parts.push(`each takes ${f(perPart)} ${unit}${metres(perPart)}`)
  if (needed !== null && perPart !== null)
    parts.push(
      `all take ${f(perPart * of!)} ${unit}${metres(perPart * of!)}, the rest ${f(needed)}${neededBand![0] < neededBand![1] ? ` (${f(neededBand![0])} to ${f(neededBand![1])} by the scale's step)` : ""}`,
    )
  if (short !== null)
    parts.push(
      short > 0
        ? `${f(left!)} ${unit} are not enough: ${f(short)} short`
        : `${f(left!)} ${unit} are enough, ${f(-short)} over${-short < neededBand![1] - needed! ? ", but within what the scale leaves open" : ""}`,
    )
  if (makes !== null) {
    // Those done are among all that there was yarn for.
    const inAll = makes + done
    const grids = laidOut && inAll > 3 ? `: ${gridsBelow(inAll)}` : ""
    parts.push(
      all === undefined
        ? `${f(left!)} ${unit} make ${makes} more${grids ? ` (${inAll} in all${grids})` : ""}`
        : `${f(all)} ${unit} make ${inAll} in all${grids ? ` (${grids.slice(2)})` : ""}`,
    )
  }
  if (wholePerBall !== null && wholePerBall > 0)
    parts.push(`a ball makes ${wholePerBall} whole ones`)
  const range = ([least, most]: readonly [number, number]) =>
    least === most ? `${least}` : `${least} to ${most}`
  if (ballsLeft) parts.push(`${range(ballsLeft)} balls for the rest, buy ${ballsLeft[1]}`)
  if (ballsAll) parts.push(`${range(ballsAll)} balls in all`)
  if (parts.length === 0)
    throw new RoundwrightError(
      "nothing-told",
      "Neither what was used nor how many are to be made is told.",
      {
        hint: "Such as: --done 11 --used '210 g' --left '500 g'.",
      },
    )
  const text = parts.join("; ")
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`
}

/** Rectangles of no more pieces than that, not longer than twice their width. */
function gridsBelow(most: number): string {
  const found: string[] = []
  for (let pieces = most; pieces > 0 && found.length < 2; pieces -= 1)
    for (let rows = Math.floor(Math.sqrt(pieces)); rows >= Math.sqrt(pieces / 2); rows -= 1)
      if (pieces % rows === 0) {
        found.push(
          `${rows} by ${pieces / rows}${pieces === most ? "" : ` with ${most - pieces} over`}`,
        )
        break
      }
  return found.join(", ")
}
