// The trade's yarn weights 0 to 7 with the gauge and hooks recommended for each.
// Source: "Yarn size and gauge", the Craft Yarn Council's table as reproduced by 222handspun.com;
// reproductions differ a little (weight 0 also 32-48 dc and 1.5-2.25 mm; weight 6 also 9-15 mm).
// The table calls its figures guidelines: label and pattern take precedence.

import type { YarnWeight } from "./gauge.ts"

export interface YarnWeightFacts {
  readonly weight: YarnWeight
  readonly name: string
  /** Other names of the trade for yarns of this weight. */
  readonly alsoCalled: readonly string[]
  /** Stitches in 4 in (101.6 mm) of the named stitch; null where the table leaves the range open. */
  readonly gauge: {
    readonly stitch: "sc" | "dc"
    readonly fewest: number | null
    readonly most: number
  }
  /** Recommended hooks, mm; the upper end is null where the table leaves it open. */
  readonly hookMm: { readonly smallest: number; readonly largest: number | null }
}

export const yarnWeights: readonly YarnWeightFacts[] = [
  {
    weight: 0,
    name: "Lace",
    alsoCalled: ["lace weight", "10-count crochet thread"],
    gauge: { stitch: "dc", fewest: 32, most: 42 },
    // Steel 1.4 to 1.6 mm, regular 2.25 mm.
    hookMm: { smallest: 1.4, largest: 2.25 },
  },
  {
    weight: 1,
    name: "Super Fine",
    alsoCalled: ["sock", "fingering", "4 ply"],
    gauge: { stitch: "sc", fewest: 21, most: 32 },
    hookMm: { smallest: 2.25, largest: 3.5 },
  },
  {
    weight: 2,
    name: "Fine",
    alsoCalled: ["sport", "5 ply"],
    gauge: { stitch: "sc", fewest: 16, most: 20 },
    hookMm: { smallest: 3.5, largest: 4.5 },
  },
  {
    weight: 3,
    name: "Light",
    alsoCalled: ["DK", "double knitting", "light worsted", "8 ply"],
    gauge: { stitch: "sc", fewest: 12, most: 17 },
    hookMm: { smallest: 4.5, largest: 5.5 },
  },
  {
    weight: 4,
    name: "Medium",
    alsoCalled: ["worsted", "aran", "afghan", "10 ply"],
    gauge: { stitch: "sc", fewest: 11, most: 14 },
    hookMm: { smallest: 5.5, largest: 6.5 },
  },
  {
    weight: 5,
    name: "Bulky",
    alsoCalled: ["chunky", "craft", "rug", "12 ply"],
    gauge: { stitch: "sc", fewest: 8, most: 11 },
    hookMm: { smallest: 6.5, largest: 9 },
  },
  {
    weight: 6,
    name: "Super Bulky",
    alsoCalled: ["super chunky", "roving"],
    gauge: { stitch: "sc", fewest: 6, most: 9 },
    hookMm: { smallest: 9, largest: 16 },
  },
  {
    weight: 7,
    name: "Jumbo",
    alsoCalled: [],
    gauge: { stitch: "sc", fewest: null, most: 5 },
    hookMm: { smallest: 16, largest: null },
  },
]

/** The middle of the recommended hooks, mm; for weight 7, which is open upwards, its lower end. */
export function recommendedHookMm(weight: YarnWeight): number {
  const { smallest, largest } = yarnWeights[weight]!.hookMm
  return largest === null ? smallest : (smallest + largest) / 2
}
