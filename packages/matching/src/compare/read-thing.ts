// One of two pieces told by what is known of it, parted by commas: "10 in, worsted, 5 mm hook, 12 rounds".

import { RoundwrightError } from "@roundwright/numerics"
import { readHeading } from "@roundwright/stitches"
import { type LengthUnit, lengthAt, unitIn } from "../lengths.ts"
import { readCounted } from "../ways/straight.ts"
import { readYarnAndHook, type YarnAndHookTold } from "./gauges-compared.ts"
import { readStitchTold, type StitchTold } from "./stitches-compared.ts"

export interface Thing {
  readonly mm: number
  readonly unit: LengthUnit
  readonly hookMm: number | null
  readonly yarn: Omit<YarnAndHookTold, "hookMm"> | null
  readonly stitch: StitchTold | null
  readonly rounds: number | null
  /** Any other count, with what is counted. */
  readonly counted: { readonly count: number; readonly noun: string } | null
}

const mostParts = 8

/** Whether anything is told beside the size. */
export function tellsMore({ hookMm, yarn, stitch, rounds, counted }: Thing): boolean {
  return [hookMm, yarn, stitch, rounds, counted].some((one) => one !== null)
}

/** No hook is thicker, mm: a thicker one is a size. */
const thickestHook = 25

/** Null where no one size is told. @throws RoundwrightError `unknown-part` for what is nothing known of a piece */
export function readThing(text: string): Thing | null {
  const parts = text.split(/,(?!\d)|;|\bwith\b/i).map((part) => part.trim())
  if (parts.length > mostParts) return null
  // Several sizes are a piece told round by round.
  const sizes = parts.filter((part) => !/hook|needle/i.test(part) && isLength(part))
  if (sizes.length === 0 || sizes.filter((part) => !/mm$/i.test(part)).length > 1) return null
  if (sizes.length === parts.length && parts.length > 1) return null
  let mm: number | null = null
  let unit: LengthUnit = "cm"
  let hookMm: number | null = null
  let yarn: Thing["yarn"] = null
  let stitch: StitchTold | null = null
  let rounds: number | null = null
  let counted: Thing["counted"] = null
  for (const part of parts) {
    const length = lengthAt(part)
    if (length && part.slice(length.length).trim() === "" && mm === null) {
      mm = length.mm
      unit = unitIn(part)
      continue
    }
    const hook = /hook|needle|mm$/i.test(part) ? hookIn(part) : null
    if (hook !== null && hook <= thickestHook) {
      hookMm = hook
      continue
    }
    const count = readCounted(part)
    if (count && /^(?:rounds|rnds)$/.test(count.noun)) {
      rounds = count.count
      continue
    }
    if (count) {
      counted = count
      continue
    }
    // Crochet thread goes by numbers of its own; as a weight it is the thinnest.
    const spun = readYarnAndHook(/\bthread\b/i.test(part) ? "lace" : part)
    if (spun) {
      yarn = { weight: spun.weight, strands: spun.strands }
      hookMm ??= spun.hookMm
      continue
    }
    stitch = readStitchTold(part)
    if (stitch === null)
      throw new RoundwrightError(
        "unknown-part",
        `"${part.slice(0, 40)}" is nothing that is known of a piece here.`,
        {
          hint: "Beside the size tell a yarn (worsted), a hook (5 mm hook), rounds (12 rounds), a stitch (US dc) or a count (25 sts), parted by commas.",
        },
      )
  }
  if (mm === null || !(mm > 0)) return null
  return { mm, unit, hookMm, yarn, stitch, rounds, counted }
}

function isLength(part: string): boolean {
  const length = lengthAt(part)
  return length !== null && part.slice(length.length).trim() === ""
}

function hookIn(part: string): number | null {
  const words = part.replace(/\b(?:hook|needles?|with|on|a)\b/gi, " ").trim()
  return readHeading("hook", words, "US").hookMm?.value ?? null
}
