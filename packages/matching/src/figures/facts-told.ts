// What a maker knows beside the sizes, as options or lines: what differs, how the fabric comes out, hooks tried, the hook meant.

import { RoundwrightError } from "@roundwright/numerics"
import { readHeading } from "@roundwright/stitches"
import type { KnownFacts } from "../ways/result.ts"
import { readTriedHooks } from "../ways/tried-hooks.ts"
import { type Asked, choice } from "./values.ts"

/** Names of the lines that tell them. */
export const factNames = ["changed", "fabric", "tried", "meant-hook"] as const

/** @throws RoundwrightError `no-choice`, `bad-trial`, `unknown-hook` */
export function factsTold(asked: Asked): KnownFacts {
  const changed = choice(asked, "changed", ["yarn", "pattern", "hook", "nothing"] as const)
  const fabric = choice(asked, "fabric", ["tight", "loose"] as const)
  const { tried } = asked
  const meant = asked["meant-hook"]
  return {
    ...(changed === undefined ? {} : { changed }),
    ...(fabric === undefined ? {} : { fabric }),
    ...(tried === undefined ? {} : { tried: readTriedHooks(tried) }),
    ...(meant === undefined ? {} : { meantHookMm: hookOf(meant) }),
  }
}

function hookOf(text: string): number {
  const mm = readHeading("hook", text, "US").hookMm?.value
  if (mm !== undefined) return mm
  throw new RoundwrightError("unknown-hook", `"${text.slice(0, 40)}" is no hook size known here.`, {
    hint: "Write it in mm, such as 1.75 mm.",
  })
}
