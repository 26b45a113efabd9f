// The ways to work a ring, from its counts and its circumference: solid where posts stand as close as
// stitches do, lace where they stand wider, with the chains that fill the gap.

import { chainSize, type Gauge, sizeOf } from "@roundwright/stitches"
import { type RebuildKind, type RoundChoice, rebuildKinds, type SeenRing } from "./seen-ring.ts"

/** How often rounds of patterns are of each stitch, by and large (common practice, no source). */
const usual: Readonly<Record<RebuildKind, number>> = {
  sc: 0.3,
  hdc: 0.15,
  dc: 0.41,
  tr: 0.11,
  dtr: 0.03,
}
/** Posts nearer than this many stitch widths stand side by side; farther apart there are chains between. */
const solidUpTo = 1.35
/** Spread of stitches a circumference about what lies flat, as a logarithm: makers' rounds are a tenth too full or too few. */
const fullnessSpread = 0.12
/** A lone post between chain spaces takes this much of its solid width, a chain this much of a stitch (filet grids agree). */
const [postShare, chainShare] = [0.7, 0.9]
/** A ring that holds two rounds, and a round that shows as two rings. */
const [twoRounds, partOfNext] = [0.04, 0.03]
/** Rings thinner than this share of an sc may be a part of the next. */
const thinShare = 0.75

export interface ChoiceContext {
  readonly gauge: Gauge
  /** Outer radius of the ring below, mm. */
  readonly innerMm: number
  readonly last: boolean
  /** Commonest number of repeats of the piece, for rings that could not be read. */
  readonly repeats: number
}

export function choicesOf(seen: SeenRing, context: ChoiceContext): RoundChoice[] {
  const { gauge, innerMm, last } = context
  const depth = seen.outerMm - innerMm
  const round = 2 * Math.PI * seen.outerMm
  const worked = { turned: false }
  const counts = seen.counts.length > 0 ? seen.counts : countsByWidth(round, context)
  const kinds =
    seen.stitch === undefined ? rebuildKinds : rebuildKinds.filter((k) => k === seen.stitch)
  const choices: RoundChoice[] = []
  for (const { count, chance } of counts)
    for (const kind of kinds) {
      const { widthMm, heightMm } = sizeOf({ basic: kind }, gauge, worked)
      const spacing = round / count / widthMm
      const prior = Math.log(chance) + Math.log(usual[kind])
      if (spacing <= solidUpTo) {
        const misfit = Math.log(spacing) / fullnessSpread
        const solid = { count, chains: 0, depthMm: heightMm, kinds: [kind] }
        choices.push({ ...solid, prior: prior - 0.5 * misfit * misfit })
        if (depth > 1.5 * heightMm)
          for (const below of kinds)
            choices.push({
              count,
              chains: 0,
              kinds: [below, kind],
              depthMm: heightMm + sizeOf({ basic: below }, gauge, worked).heightMm,
              prior: prior - 0.5 * misfit * misfit + Math.log(twoRounds) + Math.log(usual[below]),
            })
      } else choices.push(...laceChoices(seen, context, kind, count, prior))
    }
  const thin = depth < thinShare * sizeOf({ basic: "sc" }, gauge, worked).heightMm
  if (thin && !last)
    choices.push({
      kinds: [],
      count: counts[0]?.count ?? 0,
      chains: 0,
      prior: Math.log(partOfNext),
      depthMm: 0,
    })
  return choices
}

/** Posts with chains between, and for sc also loops of chains whose arch makes the depth. */
function laceChoices(
  seen: SeenRing,
  { gauge, innerMm }: ChoiceContext,
  kind: RebuildKind,
  count: number,
  prior: number,
): RoundChoice[] {
  const { widthMm, heightMm } = sizeOf({ basic: kind }, gauge, { turned: false })
  const chainMm = chainShare * chainSize(gauge).lengthMm
  const spacingMm = (2 * Math.PI * seen.outerMm) / count
  if (kind === "sc") {
    // An arch of c chains over the gap below rises by about that of two straight legs.
    const gap = (2 * Math.PI * Math.max(innerMm, 1)) / count
    return [3, 4, 5, 6, 7, 8, 9, 10, 12, 15]
      .map((chains) => {
        const half = (chains * chainMm) / 2
        const rise = half > gap / 2 ? Math.sqrt(half * half - (gap / 2) ** 2) : 0
        return { chains, depthMm: rise }
      })
      .filter(({ depthMm }) => depthMm > 0)
      .map(({ chains, depthMm }) => ({
        kinds: [kind],
        count,
        chains,
        depthMm,
        prior: prior - loopsMany,
      }))
  }
  const middle = (spacingMm - postShare * widthMm) / chainMm
  return [Math.floor(middle), Math.ceil(middle)]
    .filter((chains, i, all) => chains >= 1 && all.indexOf(chains) === i)
    .map((chains) => {
      const misfit = Math.log(spacingMm / (postShare * widthMm + chains * chainMm)) / fullnessSpread
      return {
        kinds: [kind],
        count,
        chains,
        depthMm: heightMm,
        prior: prior - 0.5 * misfit * misfit,
      }
    })
}

/** Loops of several lengths share one chance. */
const loopsMany = Math.log(4)

/** Where no count was seen: multiples of the piece's repeats that fit round it as sc to tr stand. */
function countsByWidth(round: number, { gauge, repeats }: ChoiceContext) {
  const step = Math.max(1, repeats)
  const fits = round / gauge.scWidthMm
  const middle = Math.max(step, Math.round(fits / step) * step)
  return [middle, middle - step, middle + step]
    .filter((count) => count >= 3)
    .map((count, i) => ({ count, chance: i === 0 ? 0.5 : 0.25 }))
}
