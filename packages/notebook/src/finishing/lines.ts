// Values of the lines of a finishing cell. What the line names may be was checked before.

import { RoundwrightError } from "@roundwright/numerics"
import { headingValue } from "../headings.ts"

export interface Lines {
  text(name: string): string | undefined
  whole(name: string): number | undefined
  /** "4x8", rows by columns. */
  layout(name: string): [number, number] | undefined
}

const mostDigits = 5

/** @throws RoundwrightError `not-whole`, `bad-layout` from its readers */
export function linesOf(cell: string): Lines {
  const text = (name: string) => {
    const value = headingValue(cell.replace(/\r\n?/g, "\n"), name)
    return value === null || value === "" ? undefined : value
  }
  return {
    text,
    whole: (name) => {
      const value = text(name)
      if (value === undefined) return undefined
      if (/^\d+$/.test(value) && value.length <= mostDigits) return Number(value)
      throw new RoundwrightError(
        "not-whole",
        `"${name}" takes a whole number, not "${value.slice(0, 40)}".`,
      )
    },
    layout: (name) => {
      const value = text(name)
      if (value === undefined) return undefined
      const match = /^(\d{1,3})\s*(?:x|×|by)\s*(\d{1,3})$/i.exec(value)
      if (match && Number(match[1]) > 0 && Number(match[2]) > 0)
        return [Number(match[1]), Number(match[2])]
      throw new RoundwrightError("bad-layout", `"${value.slice(0, 40)}" is no layout.`, {
        hint: "Write rows by columns, such as 4x8.",
      })
    },
  }
}
