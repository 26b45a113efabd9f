// The size wished for, in a maker's words: "15.2 cm", "side 6 in", "21 cm corner to corner".

import { RoundwrightError } from "@roundwright/numerics"
import { believable, type LengthUnit, lengthAt, unitIn } from "../lengths.ts"
import { type Along, readAlong } from "./sizes.ts"

export interface Target {
  readonly mm: number
  readonly along: Along
  /** Whether the words said along what. */
  readonly said: boolean
  /** What lengths are told in; cm where absent. */
  readonly unit?: LengthUnit
}

/** @throws RoundwrightError `no-size` */
export function readTarget(text: string, option = "the size to match"): Target {
  const along = readAlong(text)
  for (let at = 0; at < text.length; at += 1) {
    if (at > 0 && !/[\s:(=]/.test(text[at - 1]!)) continue
    const found = lengthAt(text.slice(at))
    if (found)
      return {
        mm: believable(found.mm, option),
        along: along ?? "across",
        said: along !== null,
        unit: unitIn(text.slice(at)),
      }
  }
  throw new RoundwrightError("no-size", `"${text.slice(0, 40)}" tells no length for ${option}.`, {
    hint: "Write it such as '15.2 cm', 'side 6 in' or 'diagonal 21 cm', or name a file with sizes round by round.",
  })
}
