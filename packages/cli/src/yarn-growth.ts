// `roundwright yarn` without a pattern: how far a piece goes on that grows in rounds or in rows.

import { formatLength, formatPercent } from "@roundwright/assessment"
import { gramsIn, growInRounds, growInRows, readLength, shareOut } from "@roundwright/matching"
import { RoundwrightError } from "@roundwright/numerics"
import { quoted, wholeNumber } from "./option-values.ts"

export interface GrowthRequest {
  readonly now?: string | undefined
  readonly used?: string | undefined
  readonly left?: string | undefined
  readonly keep?: string | undefined
  readonly done?: string | undefined
  readonly of?: string | undefined
  readonly "per-ball"?: string | undefined
  readonly step?: string | undefined
  readonly "last-round"?: string | undefined
  readonly more?: string | undefined
  readonly row?: string | undefined
  readonly "row-height"?: string | undefined
  readonly ball?: string | undefined
  readonly balls?: string | undefined
}

/** @throws RoundwrightError for what cannot be used */
export function growthAsked(request: GrowthRequest): { readonly text: string } & object {
  if (request.done !== undefined) return ofWhatWasDone(request)
  return request.row === undefined ? inRounds(request) : inRows(request)
}

/** "11", "11 squares". */
function partsOf(text: string, option: string): number {
  return wholeNumber(text.replace(/\s{0,9}[a-z ]{1,40}$/i, ""), option)
}

function ofWhatWasDone(request: GrowthRequest) {
  const { used, left, step } = request
  const balls = /^\s*(\d{1,4})\s{0,9}(?:[–-]|to)?\s{0,9}(\d{1,4})?\s{0,9}$/i.exec(
    request["per-ball"] ?? "",
  )
  if (request["per-ball"] !== undefined && !balls)
    throw new RoundwrightError(
      "not-whole",
      `--per-ball takes a number or a range, not ${quoted(request["per-ball"])}.`,
      {
        hint: "Such as --per-ball '12-13'.",
      },
    )
  return shareOut(
    {
      done: partsOf(request.done!, "--done"),
      laidOut: /square|piece|motif|hexagon|block|grann/i.test(request.done!),
      of: request.of === undefined ? null : partsOf(request.of, "--of"),
      ...(used === undefined ? {} : { used: amountOf(used, "--used") }),
      ...(left === undefined ? {} : { left: amountOf(left, "--left") }),
      ...(step === undefined ? {} : { step: amountOf(step, "--step") }),
      ...(balls ? { perBall: [Number(balls[1]), Number(balls[2] ?? balls[1])] as const } : {}),
    },
    unitOf(used ?? left ?? "1 g"),
  )
}

function inRounds(request: GrowthRequest) {
  const used = amountOf(request.used!, "--used")
  const unit = unitOf(request.used!)
  const left = request.left === undefined ? null : amountOf(request.left, "--left")
  const keep = request.keep === undefined ? 0 : amountOf(request.keep, "--keep")
  const last = request["last-round"]
  const sizeMm = request.now === undefined ? 1000 : readLength(request.now, "--now")
  const asked = {
    sizeMm,
    used,
    ...(last === undefined ? {} : { lastRound: amountOf(last, "--last-round") }),
    ...(request.more === undefined ? {} : { more: wholeNumber(request.more, "--more") }),
    ...(left === null ? {} : { spare: left - keep }),
  }
  const grown = growInRounds(asked)
  const size =
    request.now === undefined
      ? ""
      : `, from ${formatLength(sizeMm)} to ${formatLength(grown.sizeMm)} across, ${formatLength(grown.addedMm ?? 0)} more`
  const rounds =
    grown.roundsNow === null
      ? ""
      : `It stands at about ${Math.round(grown.roundsNow)} rounds of ${formatLength(sizeMm / grown.roundsNow)} each across. `
  const all =
    left !== null && keep > 0
      ? ` With all ${left} ${unit} it would be ${Math.sqrt((used + left) / used).toFixed(2)} times as wide.`
      : ""
  const text =
    request.more === undefined
      ? `${rounds}To spare are ${figure(grown.grams)} ${unit}. Yarn goes with the area, so the size grows by ${formatPercent(grown.sizeFactor - 1)} (${grown.sizeFactor.toFixed(2)} times)${size}.${all}`
      : `${rounds}${request.more} rounds more take about ${figure(grown.grams)} ${unit}, each a little more than the last: ${grown.sizeFactor.toFixed(2)} times as wide${size}.`
  return { ...grown, text }
}

function inRows(request: GrowthRequest) {
  for (const name of ["row-height", "ball", "balls"] as const)
    if (request[name] === undefined)
      throw new RoundwrightError("nothing-told", `--${name} is missing.`, {
        hint: "Such as: yarn --row '15 g' --row-height '2 cm' --ball '100 g' --balls 15.",
      })
  const grown = growInRows({
    perRow: amountOf(request.row!, "--row"),
    rowMm: readLength(request["row-height"]!, "--row-height"),
    ball: amountOf(request.ball!, "--ball"),
    balls: wholeNumber(request.balls!, "--balls"),
  })
  const unit = unitOf(request.ball!)
  const text = `A ball makes ${grown.perBall} whole rows, ${figure(grown.overPerBall)} ${unit} over: ${grown.rows} rows, ${formatLength(grown.lengthMm)}. With the ends joined in mid-row ${grown.rowsWithEnds} rows, ${formatLength(grown.lengthWithEndsMm)}.`
  return { ...grown, text }
}

/** Grams, or balls, or a number by itself. */
function amountOf(text: string, option: string): number {
  const grams = gramsIn(text)
  const bare = /^\s*(\d{1,6}(?:\.\d+)?)(?:\s*(?:balls?|skeins?|hanks?))?\s{0,9}$/i.exec(text)
  const value = grams ?? (bare ? Number(bare[1]) : Number.NaN)
  if (value >= 0) return value
  throw new RoundwrightError("bad-weight", `${option} takes grams or balls, not ${quoted(text)}.`, {
    hint: "Write it such as '45 g' or '8 balls'.",
  })
}

function unitOf(text: string): string {
  return gramsIn(text) === null ? "balls" : "g"
}

function figure(value: number): string {
  return value >= 100 ? String(Math.round(value)) : String(Math.round(10 * value) / 10)
}
