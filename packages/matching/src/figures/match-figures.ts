// Matching from figures alone: straight work by its count, a foundation chain, several pieces measured.

import { RoundwrightError } from "@roundwright/numerics"
import { rectangleIn } from "../blanket/piece-told.ts"
import { readRepeat } from "../border/fit-repeat.ts"
import {
  chainByLength,
  chainsForStitches,
  rowStitches,
  stitchesOnChains,
  tightFoundation,
} from "../border/foundation.ts"
import { lengthAt, readLength, unitIn } from "../lengths.ts"
import { acrossOf } from "../ways/around.ts"
import { fromCorner } from "../ways/from-corner.ts"
import { ovalOf, plainRounds, roundShapes } from "../ways/plain-rounds.ts"
import { matchRectangle } from "../ways/rectangle.ts"
import { matchSeveral, readSizes } from "../ways/several.ts"
import { standInNow } from "../ways/stand-in-now.ts"
import { matchStraight, readCounted, readLengthOrCount } from "../ways/straight.ts"
import { readTarget } from "../ways/target.ts"
import { type Asked, choice, type FiguresAnswer, gaugeTold, whole } from "./values.ts"

/** Null where what is asked is about a piece worked in rounds. @throws RoundwrightError for what cannot be used */
export function matchFigures(asked: Asked): FiguresAnswer | null {
  if (asked["from-corner"] !== undefined) return cornerAsked(asked)
  const shape = choice(asked, "shape", roundShapes)
  if (asked.around !== undefined) {
    const told = choice(asked, "shape", ["circle", "square", "hexagon"] as const) ?? "circle"
    return acrossOf(readLength(asked.around, "--around"), told, unitIn(asked.around))
  }
  if (shape === "oval") return ovalAsked(asked)
  if (asked.chains !== undefined) {
    const byLength = lengthAt(asked.chains)
    if (byLength) return chainAsked(asked)
    if (asked.now !== undefined && asked.to !== undefined)
      return tightFoundation(
        readTarget(asked.now, "the chain").mm,
        readTarget(asked.to, "the row above it").mm,
      )
    const stitch = choice(asked, "stitch", rowStitches) ?? "sc"
    return stitchesOnChains(whole(asked, "chains")!, stitch)
  }
  if (asked.stitches !== undefined || asked.rows !== undefined) return straight(asked)
  if (shape !== undefined && asked.rounds !== undefined && asked.now === undefined)
    return plainRounds(shape, whole(asked, "rounds")!, choice(asked, "stitch", rowStitches) ?? "dc")
  if (asked.now === undefined || asked.to === undefined) return null
  const [from, onto] = [rectangleIn(asked.now), rectangleIn(asked.to)]
  if (from || onto) {
    const found = matchRectangle(
      from ?? bothWays(readLength(asked.now, "--now")),
      onto ?? bothWays(readLength(asked.to, "--to")),
      unitIn(asked.to),
    )
    return { ...found, todo: found.missingMm.some((mm) => Math.abs(mm) > 1) }
  }
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

function bothWays(mm: number): readonly [number, number] {
  return [mm, mm]
}

function wishedFor(asked: Asked, example: string): string {
  if (asked.to !== undefined) return asked.to
  throw new RoundwrightError("no-size", "The size wished for is not told.", {
    hint: `Add --to, such as: ${example}.`,
  })
}

function cornerAsked(asked: Asked): FiguresAnswer {
  const to = wishedFor(asked, "match --from-corner --to '10 in'")
  return fromCorner(
    readTarget(to, "--to").mm,
    asked.now === undefined ? null : readTarget(asked.now, "--now").mm,
    unitIn(to),
  )
}

function ovalAsked(asked: Asked): FiguresAnswer {
  const to = wishedFor(asked, "match --shape oval --to '20 x 14 in'")
  const sides = rectangleIn(to)
  if (!sides)
    throw new RoundwrightError("no-size", "An oval has a length and a width.", {
      hint: "Write both: --to '20 x 14 in'.",
    })
  const stitch = choice(asked, "stitch", rowStitches) ?? "sc"
  return ovalOf(sides, stitch, gaugeTold(asked), unitIn(to))
}

function chainAsked(asked: Asked): FiguresAnswer {
  const example = "match --chains '24 in' --now '27 in' --to '24 in'"
  const to = wishedFor(asked, example)
  if (asked.now === undefined)
    throw new RoundwrightError("no-size", "How wide the work is on that chain is not told.", {
      hint: `Add --now, such as: ${example}.`,
    })
  return chainByLength(
    readLength(asked.chains!, "--chains"),
    readLength(asked.now, "--now"),
    readLength(to, "--to"),
    unitIn(to),
  )
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
