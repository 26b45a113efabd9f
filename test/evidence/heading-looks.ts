// First looks at headings as makers wrote them: how many of each batch were read right when they were run for the only time.

import { readFileSync } from "node:fs"

export interface HeadingLook {
  readonly id: string
  readonly url: string
  readonly about: string
  readonly key: Readonly<Record<string, unknown>>
  /** missed: something of it was not read; wrong: something was read that is not there. */
  readonly firstLook: "right" | "missed" | "wrong"
}

export interface HeadingBatch {
  readonly batch: number
  readonly headings: readonly HeadingLook[]
}

/** The batches in the order they were drawn. */
export function headingBatches(): HeadingBatch[] {
  return JSON.parse(readFileSync(new URL("./headings.json", import.meta.url), "utf8")).batches
}

/** Counts of one batch. */
export function scoreOf({ headings }: HeadingBatch) {
  const count = (look: HeadingLook["firstLook"]) =>
    headings.filter(({ firstLook }) => firstLook === look).length
  return {
    all: headings.length,
    right: count("right"),
    missed: count("missed"),
    wrong: count("wrong"),
  }
}
