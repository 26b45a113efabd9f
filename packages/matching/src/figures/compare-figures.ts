// Two things set side by side from a line each: rows, gauges, hooks, yarns, or a count that drifts from row to row.

import { RoundwrightError } from "@roundwright/numerics"
import { readHeading } from "@roundwright/stitches"
import { readBlanketSize } from "../blanket/read-blanket.ts"
import { compareCounts, readAt } from "../compare/counts-compared.ts"
import { driftOf } from "../compare/drift.ts"
import {
  compareGauges,
  compareYarns,
  readGaugeTold,
  readYarnAndHook,
} from "../compare/gauges-compared.ts"
import { growthOfList } from "../compare/one-list.ts"
import {
  compareBySides,
  comparePerPlace,
  compareWidths,
  readPerPlace,
} from "../compare/plain-compared.ts"
import { readThing, tellsMore } from "../compare/read-thing.ts"
import { compareRows, readRows } from "../compare/rows.ts"
import { compareStitches, readStitchTold } from "../compare/stitches-compared.ts"
import { compareSwatches, readSwatchTold } from "../compare/swatches-compared.ts"
import { compareThings } from "../compare/things-compared.ts"
import { lengthAt, readLength, unitIn } from "../lengths.ts"
import { compareHooks } from "../ways/hooks-compared.ts"
import { readCounted, readLengthOrCount } from "../ways/straight.ts"
import { readTarget } from "../ways/target.ts"
import { type Asked, type FiguresAnswer, wholeOf } from "./values.ts"

/** Null where they are pieces told round by round. @throws RoundwrightError for what cannot be set side by side */
export function compareFigures(first: string, second: string, asked: Asked): FiguresAnswer | null {
  if (asked.rows !== undefined) {
    const [from, to] = [readCounted(first), readCounted(second)]
    if (!from || !to)
      throw new RoundwrightError("not-whole", "With --rows two counts are set side by side.", {
        hint: "Such as: compare 120 106 --rows 14.",
      })
    const drift = driftOf(from.count, to.count, wholeOf(asked.rows, "the rows"))
    return { ...drift, todo: drift.change !== 0 }
  }
  if (asked.sides !== undefined) {
    const [made, meant] = [readCounted(first), readCounted(second)]
    if (!made || !meant)
      throw new RoundwrightError("not-whole", "With --sides two counts are set side by side.", {
        hint: "Such as: compare 56 64 --sides 8.",
      })
    return compareBySides(made.count, meant.count, wholeOf(asked.sides, "the sides"))
  }
  if (second === "") {
    const counts = countsIn(first)
    if (counts === null) return null
    const grown = growthOfList(counts)
    return { ...grown, todo: grown.round !== null }
  }
  const swatches = [readSwatchTold(first), readSwatchTold(second)] as const
  if (swatches[0] && swatches[1]) {
    const whole = asked.whole === undefined ? null : readBlanketSize(asked.whole).mm
    const compared = compareSwatches(swatches[0], swatches[1], whole)
    return { ...compared, todo: compared.cause !== null }
  }
  const things = [readThing(first), readThing(second)] as const
  if (things[0] && things[1] && things.some((one) => tellsMore(one!))) {
    const compared = compareThings(things[0], things[1])
    return { ...compared, todo: compared.cause !== null }
  }
  const counts = [readCounted(first), readCounted(second)] as const
  if (counts[0] && counts[1]) {
    const at = asked.at === undefined ? null : readAt(asked.at)
    const compared = compareCounts(counts[0], counts[1], at)
    return { ...compared, todo: compared.difference !== 0 }
  }
  const places = [readPerPlace(first), readPerPlace(second)] as const
  if (places[0] && places[1]) return comparePerPlace(places[0], places[1])
  const stitches = [readStitchTold(first), readStitchTold(second)] as const
  if (stitches[0] && stitches[1]) {
    const compared = compareStitches(stitches[0], stitches[1])
    return { ...compared, todo: compared.cause !== null }
  }
  // So few millimetres are no piece: they are hooks.
  const thin = [bareMillimetres(first), bareMillimetres(second)] as const
  if (thin[0] !== null && thin[1] !== null) {
    const compared = compareHooks(thin[0], thin[1])
    return { ...compared, todo: compared.hookRatio !== 1 }
  }
  const widths = [onlyLength(first), onlyLength(second)] as const
  if (widths[0] !== null && widths[1] !== null)
    return compareWidths(widths[0], widths[1], unitIn(first))
  const rows = [readRows(first), readRows(second)] as const
  if (rows[0] && rows[1]) {
    const compared = compareRows(
      rows[0],
      rows[1],
      asked.whole === undefined ? undefined : readLength(asked.whole, "--whole"),
    )
    return { ...compared, todo: compared.cause !== null }
  }
  const gauges = [readGaugeTold(first), readGaugeTold(second)] as const
  if (gauges[0] && gauges[1]) {
    const whole =
      asked.whole === undefined ? undefined : readLengthOrCount(asked.whole, gauges[0].noun).to
    const compared = compareGauges(gauges[0], gauges[1], whole)
    return { ...compared, todo: compared.cause !== null }
  }
  const hooks = [hookIn(first), hookIn(second)] as const
  const yarns = [readYarnAndHook(first), readYarnAndHook(second)] as const
  if (yarns[0] && yarns[1]) {
    const whole = asked.whole === undefined ? undefined : readTarget(asked.whole, "the whole")
    const compared = compareYarns(yarns[0], yarns[1], whole?.mm, whole?.unit)
    return { ...compared, todo: compared.cause !== null }
  }
  if (hooks[0] && hooks[1]) {
    const compared = compareHooks(hooks[0], hooks[1])
    return { ...compared, todo: compared.hookRatio !== 1 }
  }
  return null
}

/** One length and nothing else, mm. */
function onlyLength(text: string): number | null {
  const found = lengthAt(text)
  return found && text.slice(found.length).trim() === "" ? found.mm : null
}

/** "3 mm hook", "hook I": a hook in place of a piece, mm. */
function hookIn(text: string): number | null {
  if (!/\bhook\b/i.test(text)) return null
  return readHeading("hook", text.replace(/\bhook\b/i, "").trim(), "US").hookMm?.value ?? null
}

/** "10, 20, 30, 38": at least two counts and nothing else. */
function countsIn(text: string): number[] | null {
  const parts = text.split(/[\s,;]+/).filter((part) => part !== "")
  return parts.length > 1 && parts.every((part) => /^\d{1,5}$/.test(part))
    ? parts.map(Number)
    : null
}

/** "5 mm" and no more, as hooks are named; null for anything else and for what is thicker than hooks are. */
function bareMillimetres(text: string): number | null {
  const mm = Number(/^\s*(\d{1,2}(?:\.\d{1,2})?)\s*mm\s*$/i.exec(text)?.[1] ?? 0)
  return mm > 0 && mm <= thickestHook ? mm : null
}

const thickestHook = 25
