// Yarn from figures alone: how far a piece goes on that grows in rounds or in rows, shares of a project, skeins of another label,
// another size, colours of one piece, what is left on a ball.

import { formatPercent } from "@roundwright/assessment"
import { RoundwrightError } from "@roundwright/numerics"
import { readYarnWeight } from "@roundwright/stitches"
import { readBlanketSize } from "../blanket/read-blanket.ts"
import { lengthWords, readLength, unitIn } from "../lengths.ts"
import { type Amount, type AmountUnit, amountIn, amountWords, readAmount } from "../yarn/amounts.ts"
import { growInRounds, growInRows } from "../yarn/growth.ts"
import {
  leftOnBall,
  skeinsFor,
  yarnForSize,
  yarnOfEach,
  yarnOfSize,
} from "../yarn/project-amounts.ts"
import { readSkein } from "../yarn/read-yarn-options.ts"
import { shareOut } from "../yarn/share.ts"
import type { Skein } from "../yarn/yarn-basis.ts"
import { type Asked, type FiguresAnswer, whole, wholeOf } from "./values.ts"

/** Null where nothing but a pattern can be asked about. @throws RoundwrightError for what cannot be used */
export function yarnFigures(asked: Asked): FiguresAnswer | null {
  const { need, each, done, row, used, left, size } = asked
  const skein = asked.skein === undefined ? undefined : readSkein(asked.skein)
  if (need !== undefined) return skeinsFor(readAmount(need, "--need"), labelOf(skein))
  if (each !== undefined)
    return yarnOfEach(each, partsOf(asked.of ?? asked.pieces ?? "1", "--of"), skein)
  if (done !== undefined) return ofWhatWasDone(asked, skein)
  if (row !== undefined) return inRows(asked, skein)
  if (used !== undefined && asked.to !== undefined) {
    if (asked.now === undefined)
      throw missing("--now", "yarn --used '1200 yd' --now '40 x 50 in' --to '60 x 80 in'")
    return yarnForSize(
      readAmount(used, "--used"),
      readBlanketSize(asked.now).mm,
      readBlanketSize(asked.to).mm,
      skein,
    )
  }
  if (used !== undefined) return inRounds(asked)
  if (left !== undefined && skein) return leftOnBall(readAmount(left, "--left"), skein)
  if (size !== undefined) {
    const weight = readYarnWeight(
      /^\s*\d\s*$/.test(asked.yarn ?? "") ? `weight ${asked.yarn}` : (asked.yarn ?? ""),
    )
    if (!weight) throw missing("--yarn", "yarn --size '50 x 60 in' --yarn worsted")
    return yarnOfSize(readBlanketSize(size).mm, weight.weight)
  }
  return null
}

function labelOf(skein: Skein | undefined): Skein {
  if (skein) return skein
  throw missing("--skein", "yarn --need '8 x 220 yd' --skein '100 g = 170 yd'")
}

function missing(name: string, example: string): RoundwrightError {
  return new RoundwrightError("nothing-told", `${name} is missing.`, {
    hint: `Such as: ${example}.`,
  })
}

/** "11", "11 squares". */
function partsOf(text: string, option: string): number {
  return wholeOf(text.replace(/(?<![a-z ])[a-z ]+$/i, "").trimEnd(), option)
}

/** All amounts in the unit of the first that is told. */
function inOneUnit(asked: Asked, names: readonly string[], skein?: Skein) {
  const told = names.flatMap((name) => {
    const text = asked[name]
    return text === undefined ? [] : [[name, readAmount(text, `--${name}`)] as const]
  })
  const unit: AmountUnit = told[0]?.[1].unit ?? "g"
  const value = (name: string): number | undefined => {
    const found = told.find(([own]) => own === name)?.[1]
    return found === undefined ? undefined : amountIn(found, unit, skein)
  }
  return { unit, value }
}

function ofWhatWasDone(asked: Asked, skein: Skein | undefined): FiguresAnswer {
  const balls = /^(\d{1,4}(?:\.\d+)?)\s*(?:(?:[–-]|to)\s*)?(\d{1,4}(?:\.\d+)?)?$/i.exec(
    (asked["per-ball"] ?? "").trim().slice(0, 40).trimEnd(),
  )
  if (asked["per-ball"] !== undefined && !(balls && Number(balls[1]) > 0))
    throw new RoundwrightError(
      "not-whole",
      `--per-ball takes a number or a range, not "${asked["per-ball"].slice(0, 40)}".`,
      { hint: "Such as --per-ball '12-13'." },
    )
  const names = ["used", "left", "all", "step"]
  const { unit, value } = inOneUnit(asked, names, skein)
  const ball =
    asked.ball === undefined
      ? skein && amountIn({ value: 1, unit: "balls" }, unit, skein)
      : amountIn(readAmount(asked.ball, "--ball"), unit, skein)
  const optional = <Key extends string>(key: Key, one: number | undefined) =>
    one === undefined ? {} : ({ [key]: one } as Record<Key, number>)
  const perUnit =
    skein && skein.metres !== null && unit !== "m" && unit !== "yd"
      ? amountIn({ value: 1, unit }, "m", skein)
      : null
  return shareOut(
    {
      ...(perUnit === null ? {} : { metresPerUnit: perUnit }),
      done: partsOf(asked.done!, "--done"),
      laidOut: /square|piece|motif|hexagon|block|grann/i.test(asked.done!),
      of: asked.of === undefined ? null : partsOf(asked.of, "--of"),
      ...optional("used", value("used")),
      ...optional("left", value("left")),
      ...optional("all", value("all")),
      ...optional("step", value("step")),
      ...optional("ball", ball),
      ...(balls ? { perBall: [Number(balls[1]), Number(balls[2] ?? balls[1])] as const } : {}),
    },
    unit,
  )
}

function inRounds(asked: Asked): FiguresAnswer {
  const { unit, value } = inOneUnit(asked, ["used", "left", "keep", "last-round"])
  const used = value("used")!
  const left = value("left") ?? null
  const keep = value("keep") ?? 0
  const last = value("last-round")
  const more = whole(asked, "more")
  const sizeMm = asked.now === undefined ? 1000 : readLength(asked.now, "--now")
  const tell = (mm: number) => lengthWords(mm, unitIn(asked.now ?? ""))
  const roundsNow = whole(asked, "rounds")
  const grown = growInRounds({
    sizeMm,
    used,
    ...(last === undefined ? {} : { lastRound: last }),
    ...(roundsNow === undefined ? {} : { roundsNow }),
    ...(more === undefined ? {} : { more }),
    ...(left === null ? {} : { spare: left - keep }),
  })
  const size =
    asked.now === undefined
      ? ""
      : `, from ${tell(sizeMm)} to ${tell(grown.sizeMm)} across, ${tell(grown.addedMm ?? 0)} more`
  const rounds =
    grown.roundsNow === null
      ? ""
      : `It stands at about ${Math.round(grown.roundsNow)} rounds${asked.now === undefined ? "" : ` of ${tell(sizeMm / grown.roundsNow)} each across`}. `
  const all =
    left !== null && keep > 0
      ? ` With all ${amountWords(left, unit)} it would be ${Math.sqrt((used + left) / used).toFixed(2)} times as wide.`
      : ""
  const roundsMore =
    grown.roundsNow !== null && more === undefined
      ? `, about ${Math.floor(grown.roundsNow * (grown.sizeFactor - 1) + 1e-9)} rounds`
      : ""
  return {
    ...grown,
    text:
      more === undefined
        ? `${rounds}To spare are ${amountWords(grown.grams, unit)}. Yarn goes with the area, so the size grows by ${formatPercent(grown.sizeFactor - 1)} (${grown.sizeFactor.toFixed(2)} times)${roundsMore}${size}.${all}`
        : `${rounds}${more} rounds more take about ${amountWords(grown.grams, unit)}, each a little more than the last: ${grown.sizeFactor.toFixed(2)} times as wide${size}.`,
  }
}

function inRows(asked: Asked, skein: Skein | undefined): FiguresAnswer {
  for (const name of ["row-height", "ball", "balls"] as const)
    if (asked[name] === undefined)
      throw missing(`--${name}`, "yarn --row '15 g' --row-height '2 cm' --ball '100 g' --balls 15")
  const ball: Amount = readAmount(asked.ball!, "--ball")
  const grown = growInRows({
    perRow: amountIn(readAmount(asked.row!, "--row"), ball.unit, skein),
    rowMm: readLength(asked["row-height"]!, "--row-height"),
    ball: ball.value,
    balls: whole(asked, "balls")!,
  })
  const tell = (mm: number) => lengthWords(mm, unitIn(asked["row-height"]!))
  return {
    ...grown,
    text: `A ball makes ${grown.perBall} whole rows, ${amountWords(grown.overPerBall, ball.unit)} over: ${grown.rows} rows, ${tell(grown.lengthMm)}. With the ends joined in mid-row ${grown.rowsWithEnds} rows, ${tell(grown.lengthWithEndsMm)}.`,
  }
}
