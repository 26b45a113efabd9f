// How makers go on in each fabric: what stands in a unit along the side, and what in a corner. Common practice, no source.

import type { CornerStyle } from "../square-options.ts"
import type { FabricName } from "./fabric-of.ts"
import type { CornerWork } from "./fabric-plan.ts"
import type { Filling } from "./fit-fabric.ts"

const lone = (fewest: number, most: number): Filling => ({
  stitches: 1,
  inner: 0,
  gaps: [fewest, most],
  next: "spaces",
})
const spread = (stitches: number, inner: number): Filling => ({
  stitches,
  inner,
  gaps: [1, 3],
  next: "spaces",
})
const group = (stitches: number): Filling => ({ stitches, inner: 0, gaps: [1, 3], next: "spaces" })
const shell = (stitches: number): Filling => ({ stitches, inner: 0, gaps: [0, 2], next: "tips" })

/** Fillings of each fabric, the usual one first. */
export const fillings: Readonly<Record<Exclude<FabricName, "solid">, readonly Filling[]>> = {
  lace: [
    lone(3, 7),
    spread(3, 1),
    spread(2, 2),
    spread(2, 1),
    spread(2, 3),
    spread(3, 2),
    group(2),
    group(3),
  ],
  mesh: [lone(1, 3), spread(2, 1), group(2), spread(2, 2)],
  groups: [group(3), group(2), group(4)],
  shells: [shell(5), shell(4), shell(6), shell(7), shell(3)],
}

type Corner = Omit<CornerWork, "kind">
const corner = (each: number, chains: number, inner = 0): Corner => ({ each, chains, inner })

const chained: readonly Corner[] = [
  corner(3, 2),
  corner(3, 3),
  corner(2, 2),
  corner(2, 3),
  corner(1, 3),
  corner(1, 2),
  corner(4, 2),
  corner(4, 3),
  corner(5, 2),
]
const laceCorners: readonly Corner[] = [
  ...chained,
  corner(2, 3, 1),
  corner(3, 3, 1),
  corner(1, 4),
  corner(2, 4),
  corner(1, 5),
  corner(2, 5),
  corner(3, 4),
]
const closed: readonly Corner[] = [corner(2, 0), corner(3, 0), corner(4, 0)]

export function cornersOf(name: FabricName, style: CornerStyle): readonly Corner[] {
  if (style === "stitches") return closed
  return name === "lace" || name === "mesh" ? laceCorners : chained
}
