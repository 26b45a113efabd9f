// What can be asked of a squaring, checked, and as rules for each round.

import { RoundwrightError } from "@roundwright/numerics"
import { kindName, type StitchKind, type Terms } from "@roundwright/stitches"
import type { Grading, RoundRules } from "./candidates.ts"
import type { Palette } from "./palette.ts"

/** `chains`: a chain space at every corner; `stitches`: none; `any`: whichever comes out better. */
export type CornerStyle = "any" | "chains" | "stitches"

export interface SquareOptions {
  /** 3 to 12. */
  readonly corners: number
  /** Rounds to work, 1 to 12, a last straightening round not counted. */
  readonly rounds: number
  /** Stitches allowed; sc, hdc, dc and tr when absent. */
  readonly stitches?: readonly StitchKind[]
  readonly cornerStyle?: CornerStyle
  /** A last round of one stitch that follows, with a corner group of its own. */
  readonly lastStraightRound?: StitchKind
  /** How many proposals to give; 5 when absent. */
  readonly proposals?: number
  /** Lay every proposal out in space for its verdict, not the first alone; false when absent. */
  readonly judgeAllInSpace?: boolean
  /** Terms in which stitches are told of in words; US when absent. */
  readonly terms?: Terms
}

const fewestCorners = 3
const mostCorners = 12
const mostRounds = 12
/** Longer corner chains are loops, not corners. */
const mostCornerChains = 3
/** More stitches in one corner place than this do not fit side by side. */
const mostInCorner = 7

/** @throws RoundwrightError `bad-corners`, `bad-rounds` */
export function checkOptions({ corners, rounds }: SquareOptions): void {
  if (!Number.isInteger(corners) || corners < fewestCorners || corners > mostCorners)
    throw new RoundwrightError(
      "bad-corners",
      `A piece cannot be given ${corners} ${corners === 1 ? "corner" : "corners"}.`,
      {
        hint: `Ask for ${fewestCorners} to ${mostCorners} corners.`,
        numbers: { corners },
      },
    )
  if (!Number.isInteger(rounds) || rounds < 1 || rounds > mostRounds)
    throw new RoundwrightError("bad-rounds", `${rounds} rounds cannot be planned.`, {
      hint: `Give a whole number of rounds from 1 to ${mostRounds}.`,
      numbers: { rounds },
    })
}

/** How freely heights are chosen: fewer rounds graded and lower stitches are easier to work. */
export interface Manner {
  /** The round (from 0) whose heights may differ, or all. */
  readonly gradedAt: number | "all"
  /** Taller stitches are left out; null for none. */
  readonly tallest: StitchKind["basic"] | null
  /** Of the rounds that may be graded. */
  readonly grading: Grading
}

/** One for each round to work, a last straightening round included. */
export function rulesFor(
  options: SquareOptions,
  palette: Palette,
  allowed: readonly StitchKind[],
  manner: Manner = { gradedAt: "all", tallest: null, grading: "any" },
): RoundRules[] {
  const names = allowed.map((kind) => kindName(kind))
  const index = (kind: StitchKind) =>
    palette.kinds.findIndex((other) => kindName(other) === kindName(kind))
  const all = palette.kinds.flatMap((kind, i) => (names.includes(kindName(kind)) ? [i] : []))
  const low = all.filter((kind) => !(palette.heightMm[kind]! > heightOf(palette, manner.tallest)))
  const kinds = low.length > 0 ? low : all.slice(0, 1)
  const style = options.cornerStyle ?? "any"
  const every = Array.from({ length: mostCornerChains + 1 }, (_, chains) => chains)
  const chains = style === "stitches" ? [0] : style === "chains" ? every.slice(1) : every
  const straight = options.lastStraightRound
  const total = options.rounds + (straight ? 1 : 0)
  return Array.from({ length: total }, (_, round): RoundRules => {
    const last = round === total - 1
    // In rounds that are easy to work the corner is the same kind from the first to the last.
    const alike = manner.grading !== "any" && style !== "any"
    return {
      kinds: last && straight ? [index(straight)] : kinds,
      cornerChains: last || alike ? chains : style === "stitches" ? [0] : every,
      sharpCorners: last || alike,
      mostInCorner,
      grading:
        manner.gradedAt === "all" || manner.gradedAt === round
          ? manner.grading
          : ("plain" as const),
    }
  })
}

function heightOf(palette: Palette, tallest: StitchKind["basic"] | null): number {
  if (tallest === null) return Number.POSITIVE_INFINITY
  const index = palette.kinds.findIndex((kind) => kindName(kind) === tallest)
  return index < 0 ? Number.POSITIVE_INFINITY : palette.heightMm[index]!
}
