// What proposals can differ in: the piece's own fabric first, then other fabrics, then a corner without a hole, then fewer
// rounds. Each idea is searched on its own, so that five proposals are five ideas.

import type { Motif } from "@roundwright/motif"
import type { Gauge, StitchKind } from "@roundwright/stitches"
import { type Fabric, type FabricName, fabricOf } from "./fabric/fabric-of.ts"
import { fabricProposals } from "./fabric/fabric-proposals.ts"
import { cornersOf, fillings } from "./fabric/fillings.ts"
import { thinned } from "./fabric/thinned.ts"
import { goOnInPattern, inPattern } from "./in-pattern.ts"
import type { Palette } from "./palette.ts"
import type { SearchCount } from "./plan-score.ts"
import type { Proposal } from "./proposal.ts"
import { solidProposals } from "./solid-proposals.ts"
import type { SquareOptions } from "./square-options.ts"
import { straightened } from "./straighten.ts"
import { distanceFromTarget } from "./target.ts"

export interface Idea {
  readonly idea: string
  /** Best first. */
  find(): Proposal[]
}

const fabricWords: Readonly<Record<FabricName, string>> = {
  lace: "In lace",
  mesh: "In mesh",
  groups: "In groups",
  shells: "In shells",
  solid: "In solid fabric",
}
export const softest = "Softest corner"
export const quickest = "Quickest"

/** Best fabric first: the piece's own. */
export function ideasFor(
  motif: Motif,
  gauge: Gauge,
  options: SquareOptions,
  palette: Palette,
  allowed: readonly StitchKind[],
  count: SearchCount,
  restore: (worked: Motif) => Motif,
): Idea[] {
  const own = fabricOf(motif)
  const style = options.cornerStyle ?? "any"
  const solid = (idea: string, changed: Partial<SquareOptions>, thorough: boolean): Idea => ({
    idea,
    find: () => {
      const wish = {
        options: { ...options, ...changed },
        palette,
        allowed,
        idea,
        thorough,
        restore,
      }
      return solidProposals(motif, gauge, wish, count).map(({ proposal }) => proposal)
    },
  })
  const fabric = (
    name: Exclude<FabricName, "solid">,
    onto: Fabric,
    changed: Partial<SquareOptions> & { readonly idea?: string },
    thorough: boolean,
  ): Idea => {
    const idea = changed.idea ?? fabricWords[name]
    const { rounds, cornerStyle = style } = { ...options, ...changed }
    return {
      idea,
      find: () =>
        fabricProposals(motif, gauge, options.corners, {
          idea,
          name,
          onto,
          fillings: fillings[name],
          corners: cornersOf(name, cornerStyle),
          rounds,
          palette,
          terms: options.terms ?? "US",
          thorough,
          restore,
        }),
    }
  }
  const chains = style === "any" ? ({ cornerStyle: "chains" } as const) : {}
  const onwards: Idea = {
    idea: inPattern,
    find: () => {
      const found = goOnInPattern(motif, gauge, options.corners, options.rounds, palette, restore)
      // What does not lie flat, or is no polygon any more, is not gone on with.
      return found === null || distanceFromTarget(found) > 2 ? [] : [found]
    },
  }
  const asIsAllowed = options.stitches === undefined && style === "any"
  const begun = asIsAllowed ? [onwards] : []
  const inSolid = (thorough: boolean) => solid(fabricWords.solid, chains, thorough)
  const last = options.lastStraightRound
  if (last !== undefined) {
    const singly = [inSolid(true), solid(softest, {}, true)]
    if (own.name === "solid") return singly
    const open = fabric(own.name, own, chains, true)
    const find = () =>
      open
        .find()
        .slice(0, mostStraightened)
        .flatMap((one) => straightened(one, last, gauge, restore, options.terms ?? "US") ?? [])
        .sort((a, b) => distanceFromTarget(a) - distanceFromTarget(b) || a.score - b.score)
    return [{ idea: open.idea, find }, ...singly]
  }
  const fewer = { rounds: options.rounds - 1 }
  if (own.name === "solid") {
    const long = own.units.length > longRound
    const tooLong = own.units.length * options.rounds > mostForOthers
    const groups = tooLong ? null : thinned(own, options.corners, stitchesOfGroup)
    const mesh = long ? null : thinned(own, options.corners, stitchesOfMesh)
    return [
      ...begun,
      inSolid(true),
      ...(groups === null ? [] : [fabric("groups", groups, {}, false)]),
      ...(mesh === null ? [] : [fabric("mesh", mesh, {}, false)]),
      ...(style === "any" && !long ? [solid(softest, { cornerStyle: "stitches" }, false)] : []),
      ...(fewer.rounds > 0 && !long ? [solid(quickest, { ...chains, ...fewer }, false)] : []),
    ]
  }
  const other = own.name === "groups" ? ("lace" as const) : ("groups" as const)
  return [
    ...begun,
    fabric(own.name, own, {}, true),
    inSolid(false),
    fabric(other, own, {}, false),
    ...(style === "any"
      ? [fabric(own.name, own, { cornerStyle: "stitches", idea: softest }, false)]
      : []),
    ...(fewer.rounds > 0 ? [fabric(own.name, own, { ...fewer, idea: quickest }, false)] : []),
  ]
}

/** Pieces that a straightening round is tried on. */
const mostStraightened = 2

/** Over a longer round another fabric is the one other idea: each takes seconds. */
const longRound = 100
/** Stitches of all new rounds, about, beyond which another fabric takes as long to look at as the piece's own, and is left out. */
const mostForOthers = 400

/** Stitches of solid fabric that a group, and a post of mesh, takes up. */
const stitchesOfGroup = 3
const stitchesOfMesh = 2
