// One of two pieces told by what is known of it, parted by commas: "12 in, worsted, 5 mm hook, 16 rounds".

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

/** Null where no size is told, or a part is nothing of the kind, or the size is all there is. */
export function readThing(text: string): Thing | null {
  const parts = text.split(/,(?!\d)|;|\bwith\b/i).map((part) => part.trim())
  if (parts.length < 2 || parts.length > mostParts) return null
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
    if (hook !== null) {
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
    if (stitch === null) return null
  }
  if (mm === null || !(mm > 0)) return null
  return { mm, unit, hookMm, yarn, stitch, rounds, counted }
}

function hookIn(part: string): number | null {
  const words = part.replace(/\b(?:hook|needles?|with|on|a)\b/gi, " ").trim()
  return readHeading("hook", words, "US").hookMm?.value ?? null
}
