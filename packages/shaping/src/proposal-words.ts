// A proposal in words: how sides of unequal counts are evened out, where, and what that costs; what else to know.

import { severityOf, type Verdict } from "@roundwright/flatness"
import { listed } from "@roundwright/instructions"
import { countRound, findCorners, type Motif } from "@roundwright/motif"
import { kindName } from "@roundwright/stitches"
import type { Beginning } from "./base-edge.ts"
import { type Fabric, type FabricName, fabricOf } from "./fabric/fabric-of.ts"
import type { Seating } from "./fabric/fabric-plan.ts"
import { unitNames } from "./fabric/unit-names.ts"
import type { ProposalShape } from "./measure-proposal.ts"
import type { Palette } from "./palette.ts"
import { sideSpread, squaringTarget } from "./squaring-target.ts"
import type { Evening } from "./work-plan.ts"

/** How sides of unequal counts are evened out over round `below`, and at which of its stitches; nothing where all are alike. */
export function evenedWords({ sides, start }: Beginning, below: number): string[] {
  const places = sides.reduce((sum, side) => sum + side.feet, 0)
  const at: number[] = []
  let foot = start
  let evening: Evening = "none"
  for (const side of sides) {
    if (side.evening !== "none") {
      at.push((foot % places) + 1)
      evening = side.evening
    }
    foot += side.feet
  }
  if (at.length === 0) return []
  at.sort((a, b) => a - b)
  const which = `${at.length === 1 ? "stitch" : "stitches"} ${listed(at.map(String))} of round ${below}`
  const where = `in the middle of ${at.length} of the ${sides.length} sides`
  const pairs = listed(at.map((one) => `${one} and ${(one % places) + 1}`))
  const words: Record<Evening, string> = {
    none: "",
    add: `add a stitch ${where}: what two places would take goes into ${which}.`,
    skip: `skip ${which}, ${where}.`,
    together: `work two places together ${where}: stitches ${pairs} of round ${below}.`,
  }
  return [`Round ${below + 1}: ${words[evening]}`]
}

/** What evening out costs: after a count that divides, every side and corner would be alike. */
export function costWords(shape: ProposalShape, corners: number): string {
  const spread = (values: readonly number[]) => Math.max(...values) - Math.min(...values)
  const length = (100 * spread(shape.sides.map((side) => side.lengthMm))) / shape.sideMm
  const bow = (100 * spread(shape.sides.map((side) => side.bowMm))) / shape.sideMm
  const angle = spread(shape.cornerAnglesDeg)
  return `What that costs: sides differ by up to ${length.toFixed(1)} % in length and ${bow.toFixed(1)} % in bow, corners by up to ${angle.toFixed(1)}°; after a count that ${corners} divides all would be alike.`
}

/** What a proposal costs the maker: the stitches and chains to work, and what becomes of the piece's own fabric. */
export function priceWords(
  motif: Motif,
  from: number,
  fabric: FabricName,
  cornerElements: readonly (readonly number[])[],
): string {
  const own = fabricOf({ ...motif, rounds: motif.rounds.slice(0, from) }).name
  let [stitches, chains] = [0, 0]
  for (const round of motif.rounds.slice(from)) {
    const counted = countRound(round)
    stitches += counted.stitches
    chains += counted.chains
  }
  const last = motif.rounds.at(-1)!.elements
  const open = cornerElements.some((corner) => corner.some((e) => last[e]?.type === "chain"))
  const work = [`${stitches} stitches`, ...(chains > 0 ? [`${chains} chains`] : [])]
  return [
    listed(work),
    ...(own === fabric ? [] : [`${fabricNouns[own]} changes to ${fabricNouns[fabric]}`]),
    open ? "a hole at each corner" : "no hole at the corners, which stay softer",
  ].join("; ")
}

const fabricNouns: Readonly<Record<FabricName, string>> = {
  lace: "lace",
  mesh: "mesh",
  groups: "groups",
  shells: "shells",
  solid: "solid fabric",
}

/**
 * How the corners share the units of the round below, where they cannot do so evenly: "18 loops over 4 sides: 4 and 5 in
 * turn".
 */
export function sharedWords(base: Motif, seating: Seating, fabric: Fabric): string[] {
  const sides = seating.sides.map(({ length }) => length)
  const classes = seating.corners.map((corner) => corner.class)
  const { one, many } = unitNames[fabric.name]
  const alternate = <T>(list: readonly T[]) =>
    list.every((own, i) => own !== list[(i + 1) % list.length]!) && new Set(list).size === 2
  const how = [
    ...(new Set(sides).size < 2
      ? []
      : [
          alternate(sides)
            ? `${sides[0]} and ${sides[1]} in turn between the corners`
            : `${listed(sides.map(String))} between the corners`,
        ]),
    ...(new Set(classes).size < 2
      ? []
      : [
          alternate(classes)
            ? `corners on a ${one} and between two in turn`
            : `${classes.filter((own) => own === "on").length} corners on a ${one}, the others between two`,
        ]),
  ]
  if (how.length === 0) return []
  const { number } = base.rounds.at(-1)!
  return [
    `${fabric.units.length} ${many} of round ${number} over ${sides.length} sides: ${how.join("; ")}.`,
  ]
}

/** Names of the stitches the rounds from index `from` on use, lowest first. */
export function kindsUsed(motif: Motif, from: number, palette: Palette): string[] {
  return usedOf(motif, from, palette).map((i) => kindName(palette.kinds[i]!, palette.terms))
}

/** Indices into the palette of the stitches used. */
function usedOf(motif: Motif, from: number, palette: Palette): number[] {
  const names = new Set<string>()
  for (const round of motif.rounds.slice(from))
    for (const element of round.elements)
      if (element.type === "stitch") {
        const { gathered: _, ...kind } = element.kind
        names.add(kindName(kind))
      }
  return palette.kinds.flatMap((kind, i) => (names.has(kindName(kind)) ? [i] : []))
}

export function notesOn(
  motif: Motif,
  from: number,
  palette: Palette,
  corners: number,
  shape: ProposalShape,
  verdict: Verdict,
): string[] {
  return [
    ...missedWords(shape, corners, verdict),
    ...guessedWords(motif, from, palette),
    ...corneredWords({ ...motif, rounds: motif.rounds.slice(0, from) }, corners),
  ]
}

function missedWords(shape: ProposalShape, corners: number, verdict: Verdict): string[] {
  const bow = Math.abs(shape.bowMm) / shape.sideMm
  const off = Math.abs(shape.cornerAngleDeg - (180 - 360 / corners))
  const spread = sideSpread(shape.sides)
  const falls = [
    ...(bow >= squaringTarget.bow ? [`its sides bow by ${(100 * bow).toFixed(1)} %`] : []),
    ...(off > squaringTarget.angleDeg ? [`a corner is ${off.toFixed(1)}° off`] : []),
    ...(spread > squaringTarget.sideSpread
      ? [`its sides differ by ${(100 * spread).toFixed(0)} % in length`]
      : []),
    ...(severityOf(verdict) > severityOf("blocks-flat") ? ["it cannot be pinned flat"] : []),
  ]
  if (falls.length === 0) return []
  return [
    `Not straight enough to be called true (${listed(falls)}): one round more, or a taller stitch, gives the corners further to go.`,
  ]
}

function guessedWords(motif: Motif, from: number, palette: Palette): string[] {
  const guessed = usedOf(motif, from, palette).flatMap((i) =>
    palette.extrapolated[i] ? [kindName(palette.kinds[i]!, palette.terms)] : [],
  )
  return guessed.length > 0
    ? [`The size of ${listed(guessed)} is extrapolated: a swatch of it would settle the corner.`]
    : []
}

/** A piece that has corners already is no circle; that is worth a word before it is worked on. */
function corneredWords(base: Motif, corners: number): string[] {
  const found = findCorners(base).at(-1)?.count ?? 0
  if (found === 0) return []
  return [
    found === corners
      ? `The piece has ${found} corners already: these rounds keep them.`
      : `The piece has ${found} corners already, not a circle's edge: these rounds make ${corners} of it.`,
  ]
}
