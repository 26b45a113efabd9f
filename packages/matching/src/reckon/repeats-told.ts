// A count beside the repeat of a pattern: how many repeats it holds, and the next that fit.

import { readRepeat } from "../border/fit-repeat.ts"

/** @throws RoundwrightError for no repeat */
export function repeatsTold(count: number, repeat: string): string {
  const { of, plus } = readRepeat(repeat)
  const exact = (count - plus) / of
  const down = Math.floor(exact)
  const at = (many: number) => of * many + plus
  const sum = `${of} x repeats${plus === 0 ? "" : plus > 0 ? ` + ${plus}` : ` - ${-plus}`}`
  return Number.isInteger(exact) && exact > 0
    ? `${count} = ${sum.replace("repeats", String(exact))}: it fits, ${exact} repeats; the next are ${at(exact - 1)} and ${at(exact + 1)}.`
    : `${count} is no ${sum}: ${down} repeats are ${at(down)}, ${count - at(down)} fewer; ${down + 1} are ${at(down + 1)}, ${at(down + 1) - count} more.`
}
