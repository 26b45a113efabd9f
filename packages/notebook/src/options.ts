// The options each kind of cell takes, checked with valibot; an unknown or ill-formed one is a
// problem at its place.

import { chartNames, shapeChartNames } from "@roundwright/charts"
import * as v from "valibot"
import type { CellKind, CellOptions } from "./written-cell.ts"

/** A name for a pattern: a letter, then letters, digits or underlines. */
const patternName = v.pipe(
  v.string(),
  v.maxLength(40, "is longer than 40 characters"),
  v.regex(/^[A-Za-z][A-Za-z0-9_]*$/, "must be a letter followed by letters, digits or underlines"),
  v.check(
    (name) => !reservedNames.has(name.toLowerCase()),
    "is a word that calculations use already",
  ),
)

/** Words that would mean something else in a calculation: its operators, constants and units. */
export const reservedNames: ReadonlySet<string> = new Set(
  "to in mod and or not xor end true false null undefined nan infinity pi tau e i mm cm m inch inches ft foot feet yard yards g kg deg rad scwidth scwidths".split(
    " ",
  ),
)

const of = v.optional(patternName)

/** Every chart a cell may ask for. */
const allCharts = [...chartNames, ...shapeChartNames]

const schemas = {
  pattern: v.strictObject({ name: patternName }),
  gauge: v.strictObject({ for: patternName }),
  calculation: v.strictObject({ of }),
  verdict: v.strictObject({ of }),
  ledger: v.strictObject({ of }),
  remedies: v.strictObject({ of }),
  problems: v.strictObject({ of }),
  edit: v.strictObject({ of }),
  sheet: v.strictObject({ of, terms: v.optional(v.picklist(["US", "UK"], "must be US or UK")) }),
  squaring: v.strictObject({ of }),
  heights: v.strictObject({ of }),
  circle: v.strictObject({ name: patternName }),
  transitions: v.strictObject({ name: patternName }),
  match: v.strictObject({ of }),
  compare: v.strictObject({ of }),
  hand: v.strictObject({ of }),
  reckon: v.strictObject({}),
  yarn: v.strictObject({ of }),
  border: v.strictObject({ of }),
  blanket: v.strictObject({ of }),
  picture: v.strictObject({}),
  chart: v.strictObject({
    of,
    name: v.picklist(allCharts, `must be one of ${allCharts.join(", ")}`),
  }),
} as const

export interface OptionFault {
  /** The option it is about; null when one is missing. */
  readonly key: string | null
  readonly message: string
}

export function checkOptions(
  kind: CellKind,
  given: ReadonlyMap<string, string>,
): { readonly options: CellOptions } | { readonly faults: readonly OptionFault[] } {
  // Maps hold any key safely; the object for valibot has no prototype for a key to reach.
  const record: Record<string, string> = Object.assign(
    Object.create(null) as object,
    Object.fromEntries(given),
  )
  const known = Object.keys(schemas[kind].entries)
  const faults: OptionFault[] = [...given.keys()]
    .filter((key) => !known.includes(key))
    .map((key) => ({ key, message: `A ${kind} cell has no option "${key}".` }))
  if (faults.length > 0) return { faults }
  const checked = v.safeParse(schemas[kind], { ...record })
  if (checked.success) return { options: checked.output }
  return {
    faults: checked.issues.map((issue) => {
      const key = String(issue.path?.[0]?.key ?? "")
      return given.has(key)
        ? { key, message: `The option ${key}=${given.get(key)} ${issue.message}.` }
        : { key: null, message: `A ${kind} cell needs the option ${key}=...` }
    }),
  }
}

/** How the fence of a cell is written, for hints. */
export const fenceForms: Readonly<Record<CellKind, string>> = {
  pattern: "pattern name=NAME",
  gauge: "gauge for=NAME",
  calculation: "calculation, or calculation of=NAME",
  verdict: "verdict of=NAME",
  ledger: "ledger of=NAME",
  remedies: "remedies of=NAME",
  problems: "problems of=NAME",
  edit: "edit of=NAME",
  sheet: "sheet of=NAME, or sheet of=NAME terms=UK",
  squaring: "squaring of=NAME",
  heights: "heights of=NAME",
  circle: "circle name=NAME",
  transitions: "transitions name=NAME",
  match: "match of=NAME",
  compare: "compare of=NAME",
  hand: "hand of=NAME",
  reckon: "reckon",
  yarn: "yarn of=NAME",
  border: "border of=NAME",
  blanket: "blanket of=NAME",
  picture: "picture",
  chart: `chart of=NAME name=CHART, where CHART is ${allCharts.join(", ")}`,
}
