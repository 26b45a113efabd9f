// Yarn weights, hooks and named blanket sizes value by value against the published tables that were gathered.

import { readFileSync } from "node:fs"
import { namedSizes, usualMetresPer100g } from "@roundwright/matching"
import { hooks, steelHooksMm, yarnWeights } from "@roundwright/stitches"

const read = (name: string) =>
  JSON.parse(readFileSync(new URL(`./${name}.json`, import.meta.url), "utf8"))

export interface TableAgreement {
  readonly table: string
  readonly values: number
  readonly agree: number
  /** Ours and the table's, and where tables contradict each other. */
  readonly differ: readonly string[]
}

interface WeightRow {
  readonly cyc: number
  readonly name: string
  readonly crochet_gauge: {
    stitch: string
    min_sts_per_4in: number | null
    max_sts_per_4in: number
  }
  readonly recommended_hook: {
    mm?: [number, number | null]
    regular_mm?: number[]
    steel_mm?: [number, number]
  }
}
interface HookRow {
  readonly mm: number
  readonly us: string | null
  readonly uk_old?: string | null
  readonly source: { by?: string }
}

export function compareStandards(): TableAgreement[] {
  const standards = read("yarn-standards")
  const sizes: {
    name: string
    kind: string
    in: [number, number]
    cm: [number, number]
    source: { by: string }
  }[] = read("yarn-consumption").blanket_sizes
  return [
    weights(standards.yarn_weights),
    hookTable(standards.hook_sizes),
    otherHooks(standards.hook_sizes_other_tables),
    steel(standards.steel_sizes_check.values),
    metres(),
    {
      table: "blanket and mattress sizes",
      ...tally(
        sizes.map((one, k) => {
          const own = namedSizes.find(
            ({ name, kind, inches, source }) =>
              name === one.name &&
              kind === one.kind &&
              inches.join() === one.in.join() &&
              source === one.source.by,
          )
          const cm = one.in.every((inch, i) => Math.abs(inch * 2.54 - one.cm[i]!) <= 0.051)
          return own && cm ? null : `${one.name} (${one.source.by}), entry ${k + 1}`
        }),
      ),
    },
  ]
}

function tally(lines: readonly (string | null)[]): Omit<TableAgreement, "table"> {
  const differ = lines.filter((line) => line !== null)
  return { values: lines.length, agree: lines.length - differ.length, differ }
}

function weights(rows: readonly WeightRow[]): TableAgreement {
  const same = (what: string, ours: unknown, theirs: unknown) =>
    ours === theirs ? null : `${what}: ours ${ours}, the table ${theirs}`
  return {
    table: "yarn weights 0 to 7",
    ...tally(
      rows.flatMap((row) => {
        const own = yarnWeights[row.cyc]!
        const { mm, regular_mm, steel_mm } = row.recommended_hook
        const [least, most] = mm ?? [
          steel_mm?.[0] ?? regular_mm?.[0] ?? null,
          regular_mm?.[0] ?? null,
        ]
        return [
          same(`weight ${row.cyc}, name`, own.name, row.name),
          same(`weight ${row.cyc}, stitch`, own.gauge.stitch, row.crochet_gauge.stitch),
          same(`weight ${row.cyc}, fewest`, own.gauge.fewest, row.crochet_gauge.min_sts_per_4in),
          same(`weight ${row.cyc}, most`, own.gauge.most, row.crochet_gauge.max_sts_per_4in),
          same(`weight ${row.cyc}, smallest hook`, own.hookMm.smallest, least),
          same(`weight ${row.cyc}, largest hook`, own.hookMm.largest, most),
        ]
      }),
    ),
  }
}

function usOf({ usLetter, usNumber }: (typeof hooks)[number]): string | null {
  return usLetter && usNumber ? `${usLetter}-${usNumber}` : (usLetter ?? usNumber ?? null)
}

function hookTable(rows: readonly HookRow[]): TableAgreement {
  return {
    table: "hooks of 2 to 10 mm",
    ...tally(
      rows.flatMap(({ mm, us, uk_old }) => {
        const own = hooks.find((hook) => hook.mm === mm)
        return [
          own ? null : `${mm} mm is not among ours`,
          (own && usOf(own)) === us
            ? null
            : `${mm} mm, US: ours ${own && usOf(own)}, the table ${us}`,
          (own?.oldUk ?? null) === (uk_old ?? null)
            ? null
            : `${mm} mm, old UK: ours ${own?.oldUk}, the table ${uk_old}`,
        ]
      }),
    ),
  }
}

/** Other makers' tables, which contradict the first and one another: listed, not to agree with. */
function otherHooks(rows: readonly HookRow[]): TableAgreement {
  return {
    table: "hooks in other tables (contradictions among sources)",
    ...tally(
      rows.map(({ mm, us, source }) => {
        const own = hooks.find((hook) => hook.mm === mm)
        const plain = (text: string | null | undefined) => (text ?? "").replace(/[-/]/g, "")
        return own && plain(usOf(own)) === plain(us)
          ? null
          : `${mm} mm: ours ${(own && usOf(own)) ?? "none"}, ${source.by ?? "a table"} ${us}`
      }),
    ),
  }
}

function steel(rows: readonly { steel_us: string; mm: number | number[] }[]): TableAgreement {
  return {
    table: "steel hooks",
    ...tally(
      rows.map(({ steel_us, mm }) =>
        [mm].flat().includes(steelHooksMm[steel_us]!)
          ? null
          : `steel ${steel_us}: ours ${steelHooksMm[steel_us]}, the table ${mm}`,
      ),
    ),
  }
}

/** Metres in 100 g: ours within the ranges that tables print for the weight (per 50 g doubled). */
function metres(): TableAgreement {
  const printed: readonly (readonly [0 | 1 | 2 | 3 | 4 | 5 | 6 | 7, number, number, string])[] = [
    [0, 600, 800, "skeinqueenyarns"],
    [1, 350, 450, "skeinqueenyarns"],
    [2, 250, 350, "skeinqueenyarns"],
    [3, 200, 250, "skeinqueenyarns"],
    [4, 120, 200, "skeinqueenyarns"],
    [5, 100, 130, "skeinqueenyarns"],
    [6, 0, 100, "skeinqueenyarns"],
    [2, 270, 290, "colourspun"],
    [3, 200, 250, "colourspun"],
    [4, 130, 180, "colourspun"],
    [5, 90, 100, "colourspun"],
    [6, 60, 70, "colourspun"],
    [4, 130, 200, "handout, aran"],
    [3, 210, 250, "handout, DK"],
    [5, 90, 120, "handout, bulky"],
    [6, 40, 80, "handout, super bulky"],
    [7, 0, 40, "handout, jumbo"],
  ]
  return {
    table: "metres in 100 g",
    ...tally(
      printed.map(([weight, least, most, by]) => {
        const own = usualMetresPer100g[weight]
        return own >= least && own <= most
          ? null
          : `weight ${weight}: ours ${own}, ${by} ${least} to ${most}`
      }),
    ),
  }
}
