// What the options of `measure` ask, in place of what the lines of a notebook say.

import { RoundwrightError } from "@roundwright/numerics"
import {
  askedBy,
  type CountByHand,
  type MeasurementLines,
  type PictureAsked,
  readKnownLength,
} from "@roundwright/picture"
import { quoted, readLengthMm, wholeNumber } from "./option-values.ts"
import { noPicture } from "./picture-file.ts"

export interface MeasureOptionsGiven {
  readonly box?: string | undefined
  readonly tap?: string | undefined
  readonly centre?: string | undefined
  readonly corners?: string | undefined
  readonly side?: string | undefined
  readonly across?: string | undefined
  readonly known?: string | undefined
  readonly ring?: readonly string[] | undefined
  readonly "as-it-is"?: boolean | undefined
  readonly "round-edge"?: boolean | undefined
}

/** @param lines of the notebook; null without one @throws RoundwrightError for options that cannot be used */
export function askedFor(given: MeasureOptionsGiven, lines: MeasurementLines | null): PictureAsked {
  const said: PictureAsked = lines
    ? askedBy(lines)
    : {
        box: null,
        tap: null,
        corners: null,
        centre: null,
        view: null,
        known: null,
        counts: new Map(),
      }
  const asIs = given["as-it-is"] === true
  const round = given["round-edge"] === true
  if ([asIs, round, given.corners !== undefined].filter(Boolean).length > 1)
    throw noPicture("one way to see the picture is enough: --corners, --round-edge or --as-it-is.")
  return {
    box: given.box === undefined ? said.box : numbers(given.box, 4, "--box", "0,0,600,600"),
    tap: given.tap === undefined ? said.tap : numbers(given.tap, 2, "--tap", "312,308"),
    centre:
      given.centre === undefined ? said.centre : numbers(given.centre, 2, "--centre", "312,308"),
    corners:
      given.corners === undefined
        ? said.corners
        : numbers(given.corners, 8, "--corners", "10,12 590,8 596,603 4,598"),
    view: asIs ? "as it is" : round ? "round edge" : said.view,
    known: knownWords(given) ?? said.known,
    counts: new Map([...said.counts, ...(given.ring ?? []).map(ringCount)]),
  }
}

function knownWords({ side, across, known }: MeasureOptionsGiven): string | null {
  if ([side, across, known].filter((one) => one !== undefined).length > 1)
    throw noPicture("one known length is enough: --side, --across or --known.")
  if (known !== undefined) {
    readKnownLength(known)
    return known.trim()
  }
  const [name, text] = side !== undefined ? ["side", side] : ["across", across]
  if (text === undefined) return null
  readLengthMm(text)
  return `${name} ${text.trim()}`
}

function numbers(text: string, count: number, option: string, example: string): number[] {
  const parts = text.trim().split(/[\s,;]+/)
  const values = parts.map((part) =>
    /^-?\d{1,6}(\.\d{1,6})?$/.test(part) ? Number(part) : Number.NaN,
  )
  if (values.length !== count || values.some(Number.isNaN))
    throw new RoundwrightError(
      "no-numbers",
      `${option} takes ${count} numbers, not ${quoted(text)}.`,
      {
        hint: `Such as: ${option} '${example}'.`,
      },
    )
  return values
}

function ringCount(text: string): [number, CountByHand] {
  const match = /^\s*(\d{1,3})\s*=\s*(\d{1,4})\s*$/.exec(text)
  if (!match)
    throw new RoundwrightError(
      "no-ring",
      `--ring takes a ring and its count, not ${quoted(text)}.`,
      {
        hint: "Such as: --ring 3=12.",
      },
    )
  return [wholeNumber(match[1]!, "--ring"), { repeats: wholeNumber(match[2]!, "--ring") }]
}
