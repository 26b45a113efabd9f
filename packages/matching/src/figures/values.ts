// Values of options or lines from which figures alone are answered, read the same way whoever asks: a command or a notebook.

import { RoundwrightError } from "@roundwright/numerics"
import { type Gauge, gaugeFrom, readGaugeLine, readHeading } from "@roundwright/stitches"

/** What was asked, by name: "now", "to", "row-height". */
export type Asked = Readonly<Record<string, string | undefined>>

export interface FiguresAnswer {
  /** One sentence or a few. */
  readonly text: string
  /** Further lines, each by itself. */
  readonly lines?: readonly string[]
  /** Whether there is something to do. */
  readonly todo?: boolean
}

const mostDigits = 6

/** @throws RoundwrightError `not-whole` */
export function whole(asked: Asked, name: string): number | undefined {
  const text = asked[name]
  return text === undefined ? undefined : wholeOf(text, name)
}

/** @param least 0 where none may be told @throws RoundwrightError `not-whole` */
export function wholeOf(text: string, name: string, least = 1): number {
  const digits =
    /^\s*(\d+)(?:\s{0,9}(?:sts?|stitches|sc|dc|hdc|rows?|rounds?|rnds?|pieces?|squares?|repeats?))?\s*$/i
      .exec(text)?.[1]
      ?.replace(/^0+(?=\d)/, "")
  if (digits !== undefined && digits.length > mostDigits)
    throw new RoundwrightError(
      "not-whole",
      `${digits.slice(0, 12)}... is far too many for ${name}.`,
    )
  if (digits !== undefined && Number(digits) >= least) return Number(digits)
  throw new RoundwrightError(
    "not-whole",
    `A whole number${least > 0 ? " above 0" : ""} is wanted for ${name}, not "${text.slice(0, 40)}".`,
  )
}

/** One of a few words. @throws RoundwrightError `no-choice` */
export function choice<Word extends string>(
  asked: Asked,
  name: string,
  words: readonly Word[],
): Word | undefined {
  const text = asked[name]
  if (text === undefined) return undefined
  const found = words.find((word) => word === text.trim().toLowerCase())
  if (found) return found
  throw new RoundwrightError(
    "no-choice",
    `${name} takes ${words.slice(0, -1).join(", ")} or ${words.at(-1)}, not "${text.slice(0, 40)}".`,
  )
}

/** The gauge that yarn, hook and swatch tell; one that knows no lengths where none does. */
export function gaugeTold({ gauge, yarn, hook }: Asked): Gauge {
  const swatches = gauge === undefined ? [] : readGaugeLine(gauge, "US").swatches
  const yarnWeight =
    yarn === undefined
      ? undefined
      : readHeading("yarn", /^\s*\d\s*$/.test(yarn) ? `weight ${yarn}` : yarn, "US").yarnWeight
          ?.value
  const hookMm = hook === undefined ? undefined : readHeading("hook", hook, "US").hookMm?.value
  return gaugeFrom({
    swatches,
    ...(yarnWeight === undefined ? {} : { yarnWeight }),
    ...(hookMm === undefined ? {} : { hookMm }),
  })
}

/** First letter as a sentence has it. */
export function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1)
}
