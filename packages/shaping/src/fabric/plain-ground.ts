// Units that the corners cannot share: a plain round of low stitches over them, which divides, as the ground for units that
// stand evenly, as makers do with "work 40 sc evenly around".

import type { Motif } from "@roundwright/motif"
import { type Gauge, kindName, type Terms } from "@roundwright/stitches"
import { layFeet } from "../base-edge.ts"
import type { Palette } from "../palette.ts"
import { plainRound } from "../plain-round.ts"
import { type Fabric, fabricOf } from "./fabric-of.ts"
import { thinned } from "./thinned.ts"

export interface PlainGround {
  readonly motif: Motif
  /** Places for as many units as come nearest to those below and divide. */
  readonly fabric: Fabric
  readonly words: string
}

/** Lower stitches than the others take least of the circle. */
const usual = ["sc", "hdc", "dc"]

/** Null where no allowed stitch makes it. */
export function plainGround(
  motif: Motif,
  gauge: Gauge,
  below: Fabric,
  corners: number,
  { palette, terms }: { readonly palette: Palette; readonly terms: Terms },
): PlainGround | null {
  const kind = usual
    .map((name) => palette.kinds.find((one) => kindName(one) === name))
    .find((one) => one !== undefined)
  if (kind === undefined) return null
  const feet = layFeet(motif, gauge)
  // Where there are spaces all goes into them: quicker to work, and evenly spread.
  const spaces = feet.filter(({ anchor }) => anchor.at === "space")
  const onto = spaces.length >= below.units.length ? spaces : feet
  const plain = plainRound(motif, onto, gauge, corners, kind, terms)
  if (plain === null) return null
  const solid = fabricOf(plain.motif)
  const wanted = corners * Math.max(1, Math.round(below.units.length / corners))
  const fabric = thinned(solid, corners, solid.units.length / wanted)
  return fabric === null ? null : { motif: plain.motif, fabric, words: plain.words }
}
