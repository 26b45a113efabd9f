// Matching from figures alone: straight work by its count, a foundation chain, several pieces measured.

import { RoundwrightError } from "@roundwright/numerics"
import { readRepeat } from "../border/fit-repeat.ts"
import {
  chainsForStitches,
  rowStitches,
  stitchesOnChains,
  tightFoundation,
} from "../border/foundation.ts"
import { matchSeveral, readSizes } from "../ways/several.ts"
import { standInNow } from "../ways/stand-in-now.ts"
import { matchStraight, readCounted, readLengthOrCount } from "../ways/straight.ts"
import { readTarget } from "../ways/target.ts"
import { type Asked, choice, type FiguresAnswer, gaugeTold, whole } from "./values.ts"

/** Null where what is asked is about a piece worked in rounds. @throws RoundwrightError for what cannot be used */
export function matchFigures(asked: Asked): FiguresAnswer | null {
  if (asked.chains !== undefined) {
    if (asked.now !== undefined && asked.to !== undefined)
      return tightFoundation(
        readTarget(asked.now, "the chain").mm,
        readTarget(asked.to, "the row above it").mm,
      )
    const stitch = choice(asked, "stitch", rowStitches) ?? "sc"
    return stitchesOnChains(whole(asked, "chains")!, stitch)
  }
  if (asked.stitches !== undefined || asked.rows !== undefined) return straight(asked)
  if (asked.now === undefined || asked.to === undefined) return null
  const sizes = readSizes(asked.now)
  if (!sizes) return null
  const target = readTarget(asked.to, "the size to match")
  const own = gaugeTold(asked)
  const gauge = own.absolute ? own : standInNow(target, {}).gauge
  const told = matchSeveral(
    sizes.map(({ mm }) => mm),
    target.mm,
    gauge,
    target.unit,
  )
  return {
    ...told,
    lines: told.pieces.map((one) => one.text),
    todo: told.asTheyAre < told.pieces.length,
  }
}

function straight(asked: Asked): FiguresAnswer {
  const noun = asked.rows === undefined ? "stitches" : "rows"
  const counted = readCounted(asked.rows ?? asked.stitches!, noun)
  if (!counted)
    throw new RoundwrightError(
      "not-whole",
      `"${(asked.rows ?? asked.stitches!).slice(0, 40)}" is no count.`,
      {
        hint: "Write it such as 60, or '5 blocks'.",
      },
    )
  if (asked.now === undefined && noun === "stitches") {
    const stitch = choice(asked, "stitch", rowStitches) ?? "sc"
    return chainsForStitches(counted.count, stitch)
  }
  if (asked.now === undefined || asked.to === undefined)
    throw new RoundwrightError(
      "no-size",
      `How long so many ${noun} are, or what is wished for, is not said.`,
      {
        hint: "Such as: match --stitches 60 --now '35 in' --to '50 in', or --to '80 rows'.",
      },
    )
  const now = readTarget(asked.now, "what is measured")
  const { to, unit } = readLengthOrCount(asked.to, counted.noun)
  if (typeof to !== "number" && to.noun !== counted.noun)
    throw new RoundwrightError(
      "no-size",
      `"${asked.to.slice(0, 40)}" is no length and no number of ${counted.noun}.`,
      { hint: `Write it such as 120 cm, or 50 ${counted.noun}.` },
    )
  const found = matchStraight({
    ...counted,
    nowMm: now.mm,
    to,
    unit: typeof to === "number" ? unit : (now.unit ?? "cm"),
    ...(asked.repeat === undefined ? {} : { repeat: readRepeat(asked.repeat) }),
  })
  return { ...found, todo: found.more !== 0 }
}
