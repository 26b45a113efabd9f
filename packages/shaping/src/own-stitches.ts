// Stitches of a maker's own in a plan: all a plan needs of a stitch is its size, and that is what a swatch tells. Such a
// stitch is written as the ordinary one it is most like, to which the swatch is given, so that the text reads back.

import { RoundwrightError } from "@roundwright/numerics"
import {
  gaugeFrom,
  kindName,
  readGaugeLine,
  readStitchName,
  type StitchKind,
  sizeOf,
  type Terms,
} from "@roundwright/stitches"
import { termsOfStitchList } from "./published.ts"

export interface PlannedStitches {
  readonly stitches: readonly StitchKind[]
  /** The gauge line with own stitches called by the ordinary ones that stand for them. */
  readonly gauge: string | undefined
  /** What stands for what, in sentences. */
  readonly words: readonly string[]
}

/** What an own stitch may stand as, lowest first. */
const ordinary: readonly StitchKind[] = [
  { basic: "sc" },
  { basic: "hdc" },
  { basic: "dc" },
  { basic: "tr" },
  { basic: "dtr" },
]

/** Stands in a gauge line for an own stitch while it is read: the tallest such lines know, of which nobody plans a disc. */
const standIn = { basic: "trtr" } as const

/**
 * A list of stitches, `sc,dc` or with names of the maker's own that the gauge line gives sizes to.
 * @param gauge `10 petal x 6 rows = 10 cm`, further swatches after a comma
 * @throws RoundwrightError `unknown-stitch` for a name that is neither known nor in the gauge line, or that it gives
 *   no width or no height
 */
export function readPlannedStitches(
  list: string,
  gauge: string | undefined,
  terms: Terms,
): PlannedStitches {
  const names = list
    .split(",")
    .map((word) => word.trim())
    .filter((word) => word !== "")
  const known = names.filter((name) => readStitchName(name, "US") ?? readStitchName(name, "UK"))
  const own = termsOfStitchList(known.join(","), terms)
  const taken = known.map((name) => readStitchName(name, own)?.basic)
  const standFor = new Map<string, StitchKind>()
  const words: string[] = []
  let line = gauge
  for (const name of new Set(names.filter((one) => !known.includes(one)))) {
    const { ratio, rest } = measured(name, line, terms)
    const free = ordinary.filter(
      (kind) => !taken.includes(kind.basic) && !mentions(rest, kind, terms),
    )
    const kind = nearest(free.length > 0 ? free : ordinary, ratio)
    taken.push(kind.basic)
    standFor.set(name, kind)
    const stand = kindName(kind, terms)
    line = rest.replaceAll(kindName(standIn, terms), stand)
    words.push(
      `"${name}" is a stitch of your own: it is written ${stand} below, and the gauge gives ${stand} its size. Work ${name} wherever the text says ${stand}.`,
    )
  }
  const stitches = names.map((name) => standFor.get(name) ?? readStitchName(name, own))
  const lost = stitches.indexOf(undefined)
  if (lost >= 0) throw unknown(names[lost]!)
  return { stitches: stitches as StitchKind[], gauge: line, words }
}

/** Height over width of an own stitch in a gauge line, and the line with the stand-in's name for it. */
function measured(name: string, line: string | undefined, terms: Terms) {
  const word = name.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")
  const named = new RegExp(`(?<![\\p{L}\\d-])${word}(?![\\p{L}\\d-])`, "giu")
  if (line === undefined || !named.test(line)) throw unknown(name)
  const rest = line.replace(named, kindName(standIn, terms))
  const swatch = readGaugeLine(rest, terms).swatches.find(
    ({ kind }) => kind.basic === standIn.basic,
  )
  if (swatch?.widthMm === undefined || swatch.heightMm === undefined)
    throw new RoundwrightError(
      "unknown-stitch",
      `The swatch of "${name}" gives no width and height that a stitch can have.`,
      { hint: `Give stitches and rows, such as: --gauge '10 ${name} x 6 rows = 10 cm'.` },
    )
  return { ratio: swatch.heightMm / swatch.widthMm, rest }
}

function unknown(name: string): RoundwrightError {
  const shown = name.slice(0, 40)
  return new RoundwrightError("unknown-stitch", `"${shown}" is no stitch known here.`, {
    hint: `Use trade names such as sc, hdc, dc, tr, separated by commas. Is it a stitch of your own, give its swatch: --gauge '10 ${shown} x 6 rows = 10 cm'.`,
  })
}

function mentions(line: string, kind: StitchKind, terms: Terms): boolean {
  return readGaugeLine(line, terms).swatches.some((swatch) => swatch.kind.basic === kind.basic)
}

function nearest(kinds: readonly StitchKind[], ratio: number): StitchKind {
  const gauge = gaugeFrom({ swatches: [] })
  const off = (kind: StitchKind) => {
    const { heightMm, widthMm } = sizeOf(kind, gauge, { turned: false })
    return Math.abs(Math.log(heightMm / widthMm / ratio))
  }
  return kinds.reduce((best, kind) => (off(kind) < off(best) ? kind : best))
}
