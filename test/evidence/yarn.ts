// Yarn against what makers unravelled and weighed: ratios between kinds within one source; amounts from yarn and hook or from
// solid fabric alone, with their 80 % bands; and one kind told from another that was weighed. The yarn-over's 0.86 and the sc's
// 8.4 widths were fitted on windchilde.com; 0.8 kg/m2 is a round figure below the middle of the solid projects.

import { readFileSync } from "node:fs"
import {
  band80,
  scYarnInWidths,
  solidFabricKgPerM2,
  unweighedSpreads,
  yarnOfChain,
  yarnOfStitch,
} from "@roundwright/matching"
import { type BasicStitch, type GaugeInput, gaugeFrom, sizeOf } from "@roundwright/stitches"

interface Source {
  readonly by?: string
  readonly title?: string
}
interface Row {
  readonly stitch?: string
  readonly what?: string
  readonly cyc?: number
  readonly hook_mm?: number
  readonly source: Source
  readonly [key: string]: unknown
}

const data: Readonly<Record<string, readonly Row[]>> = JSON.parse(
  readFileSync(new URL("./yarn-consumption.json", import.meta.url), "utf8"),
)

export interface YarnCase {
  readonly source: string
  readonly what: string
  readonly found: number
  readonly stated: number
  readonly error: number
  /** Whether the source fitted a constant. */
  readonly fitted: boolean
  /** 80 % band as told; null for ratios. */
  readonly inBand: boolean | null
}

const fittedSource = "windchilde.com, bluedepth"

function caseOf(
  source: Source,
  what: string,
  found: number,
  stated: number,
  spread?: number,
): YarnCase {
  const by = source.by ?? source.title ?? "?"
  const error = found / stated - 1
  const share = spread === undefined ? null : band80 * spread
  return {
    source: by,
    what,
    found,
    stated,
    error,
    fitted: by === fittedSource,
    inBand: share === null ? null : stated >= found / (1 + share) && stated <= found * (1 + share),
  }
}

const modelOf = (stitch: string): number => {
  if (stitch === "ch") return yarnOfChain
  const [, basic] = /^(?:foundation )?(.*)$/.exec(stitch)!
  // A foundation stitch draws up a chain of its own.
  const chain = stitch.startsWith("foundation") ? yarnOfChain : 0
  return yarnOfStitch({ basic: basic as BasicStitch }) + chain
}

const dkOrNone = (input: Partial<GaugeInput>) => gaugeFrom({ swatches: [], ...input })

function heightOf(basic: BasicStitch): number {
  return sizeOf({ basic }, dkOrNone({}), { turned: true }).heightMm
}

/** Chains and foundation rows lie 0.9 and one stitch to the width. */
const chainWidth = 0.9

/** Yarn of a kind over that of sc, within one source. */
export function yarnRatios(): YarnCase[] {
  const rows = data.single_rows!
  const sc = rows.find(({ stitch }) => stitch === "sc")!.yarn_in_per_in_of_width as number
  const strips = rows
    .filter(({ stitch }) => stitch !== "sc")
    .map((row) =>
      caseOf(
        row.source,
        `${row.stitch} over sc, single row`,
        modelOf(row.stitch!),
        (row.yarn_in_per_in_of_width as number) / sc,
      ),
    )
  const foundations = data.foundation_rows!.map((row) => {
    const width = row.stitch === "ch" ? chainWidth : 1
    return caseOf(
      row.source,
      `${row.stitch} over sc, single row`,
      modelOf(row.stitch!),
      (width * (row.yarn_in_per_in as number)) / sc,
    )
  })
  const areas = data.per_area!
  const scArea = areas.find(({ stitch }) => stitch === "sc")!.yarn_m_per_m2 as number
  const squares = areas
    .filter(({ stitch }) => stitch !== "sc")
    .map((row) => {
      const basic = row.stitch as BasicStitch
      const stated = ((row.yarn_m_per_m2 as number) * heightOf(basic)) / (scArea * heightOf("sc"))
      return caseOf(row.source, `${basic} over sc, square`, modelOf(basic), stated)
    })
  const weighed = data.weight_experiments!
  const scGrams = weighed.find(({ stitch }) => stitch === "sc")!.g_per_stitch as number
  const grams = weighed
    .filter(({ stitch }) => stitch !== "sc")
    .map((row) =>
      caseOf(
        row.source,
        `${row.stitch} over sc, weighed`,
        modelOf(row.stitch!),
        (row.g_per_stitch as number) / scGrams,
      ),
    )
  const equal = data.equal_yarn_experiment!.map((row) => {
    const { heightMm, widthMm } = sizeOf({ basic: row.stitch as BasicStitch }, dkOrNone({}), {
      turned: true,
    })
    const stated = (heightMm * widthMm) / heightOf("sc") / (row.area_vs_sc as number)
    return caseOf(row.source, `${row.stitch} over sc, equal yarn`, modelOf(row.stitch!), stated)
  })
  return [...strips, ...foundations, ...squares, ...grams, ...equal]
}

/** Amounts told with nothing weighed. */
export function unfittedYarn(): YarnCase[] {
  const strips = [...data.single_rows!].map((row) =>
    caseOf(
      row.source,
      `${row.stitch} in an inch, single row`,
      modelOf(row.stitch!) * scYarnInWidths,
      row.yarn_in_per_in_of_width as number,
      unweighedSpreads.length,
    ),
  )
  const chain = data.foundation_rows!.find(({ stitch }) => stitch === "ch")!
  const chains = [
    caseOf(
      chain.source,
      "chain in an inch",
      (yarnOfChain * scYarnInWidths) / chainWidth,
      chain.yarn_in_per_in as number,
      unweighedSpreads.length,
    ),
  ]
  const squares = data.per_area!.map((row) => {
    const basic = row.stitch as BasicStitch
    const gauge = dkOrNone({ yarnWeight: 4, hookMm: row.hook_mm! })
    const { heightMm } = sizeOf({ basic }, gauge, { turned: true })
    return caseOf(
      row.source,
      `${basic}, m in a square metre`,
      (1000 * scYarnInWidths * modelOf(basic)) / heightMm,
      row.yarn_m_per_m2 as number,
      unweighedSpreads.length,
    )
  })
  const stitches = data.other_measurements!.map((row) => {
    const gauge = dkOrNone({ yarnWeight: row.cyc as 5, hookMm: row.hook_mm! })
    const sts = row.sts as number | undefined
    // The scarf's own width over its stitches is a measured width.
    const widthMm = sts ? ((row.size_in as number[])[0]! * 25.4) / sts : gauge.scWidthMm
    return caseOf(
      row.source,
      "sc, cm",
      (scYarnInWidths * widthMm) / 10,
      row.yarn_per_stitch_cm as number,
      unweighedSpreads.length,
    )
  })
  const swatches = data.weight_experiments!.map((row) =>
    caseOf(
      row.source,
      `${row.stitch}, g in a square metre`,
      1000 * solidFabricKgPerM2,
      row.g_per_m2 as number,
      unweighedSpreads.fabric,
    ),
  )
  const projects = data
    .projects!.filter((row) => row.g_per_m2 !== undefined && !/shawl/.test(row.what!))
    .map((row) =>
      caseOf(
        row.source,
        `${row.what}, g in a square metre`,
        1000 * solidFabricKgPerM2,
        row.g_per_m2 as number,
        unweighedSpreads.fabric,
      ),
    )
  return [...strips, ...chains, ...squares, ...stitches, ...swatches, ...projects]
}

/** Amounts of one kind told from sc of the same hand, weighed or unravelled; the same figures as ratios, of whole pieces only. */
export function weighedYarn(): YarnCase[] {
  return yarnRatios().filter(({ what }) => /square|weighed|equal/.test(what))
}

export function medianError(cases: readonly YarnCase[]): number {
  const off = cases.map(({ error }) => Math.abs(error)).sort((a, b) => a - b)
  const middle = (off.length - 1) / 2
  return off.length === 0 ? Number.NaN : (off[Math.floor(middle)]! + off[Math.ceil(middle)]!) / 2
}
