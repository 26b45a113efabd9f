// Units that the corners cannot share evenly: a round of the same fabric first, with as many units as divide, shared out
// over those below ("2 in every second loop").

import type { Motif } from "@roundwright/motif"
import { buildNet, layOutFlat } from "@roundwright/relaxation"
import type { Gauge } from "@roundwright/stitches"
import { kindName } from "@roundwright/stitches"
import type { Palette } from "../palette.ts"
import type { Fabric, FabricName } from "./fabric-of.ts"
import type { FabricRound, Seating, SideWork } from "./fabric-plan.ts"
import { type Filling, lengthOfWork } from "./fit-fabric.ts"
import { meanReach } from "./laid-units.ts"
import { classOf } from "./seatings.ts"
import { unitNames } from "./unit-names.ts"
import { workFabric } from "./work-fabric.ts"

export interface EvenedUnits {
  readonly motif: Motif
  readonly words: string
}

/** Stitches that an even round of each fabric is worked in, the first that is allowed. */
const usual: Readonly<Record<Exclude<FabricName, "solid">, readonly string[]>> = {
  lace: ["sc", "hdc", "dc"],
  mesh: ["dc", "hdc", "tr", "sc"],
  groups: ["dc", "hdc", "tr", "sc"],
  shells: ["dc", "hdc", "tr", "sc"],
}

/** Null where no allowed stitch makes it, or where more than twice as many units would be needed. */
export function evenUnits(
  motif: Motif,
  gauge: Gauge,
  fabric: Fabric,
  corners: number,
  palette: Palette,
  kinds: readonly number[],
  fillings: readonly Filling[],
): EvenedUnits | null {
  const { name, units } = fabric
  if (name === "solid") return null
  const n = units.length
  const wanted = corners * Math.ceil(n / corners)
  if (wanted === n || wanted > 2 * n) return null
  const byName = (one: string) => kinds.find((kind) => kindName(palette.kinds[kind]!) === one)
  const kind = usual[name].map(byName).find((one) => one !== undefined)
  if (kind === undefined) return null
  const net = buildNet(motif, gauge)
  const { xy } = layOutFlat(net)
  const edge = 2 * Math.PI * (meanReach(net, xy, units) + palette.heightMm[kind]!)
  const fits = fillings.map((filling) => {
    const work = { kind, stitches: filling.stitches, inner: filling.inner }
    const own = lengthOfWork(work, filling.gaps[1] > 0, palette)
    const [fewest, most] = filling.gaps
    const chains = Math.min(
      most,
      Math.max(fewest, Math.round((edge / wanted - own) / palette.chainMm)),
    )
    const off = Math.abs(own + chains * palette.chainMm - edge / wanted)
    return { filling, work, chains, off }
  })
  const best = fits.reduce((one, other) => (other.off < one.off - 1e-9 ? other : one))
  const seating: Seating = {
    corners: [],
    sides: [Array.from({ length: wanted }, (_, i) => units[Math.floor((i * n) / wanted)]!)],
  }
  const side: SideWork = {
    works: seating.sides[0]!.map(() => best.work),
    gaps: [0, ...seating.sides[0]!.map(() => best.chains)],
  }
  const plan: FabricRound = {
    corners: new Map(),
    sides: new Map([[classOf(seating, 0).key, side]]),
    next: best.filling.next,
  }
  const worked = workFabric(motif, seating, plan, palette)
  const { number } = worked.motif.rounds.at(-1)!
  const { many } = unitNames[name]
  return {
    motif: worked.motif,
    words: `Round ${number}: ${wanted} ${many} on the ${n} below first, ${doubled(wanted - n)}, since ${corners} corners cannot share ${n} evenly.`,
  }
}

function doubled(count: number): string {
  return count === 1 ? "two in one of them" : `two in each of ${count} of them`
}
