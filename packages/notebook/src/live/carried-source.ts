// What a page carries with it, read back: somebody may have changed the file. What does not fit is left out and told, and
// the text of the notebook is kept as long as it can be found at all.

/// <reference lib="dom" />

import * as v from "valibot"
import type { CarriedAnswers } from "../carried.ts"
import { carriedSchemas } from "../carried-schemas.ts"
import { sourceId } from "../page/document.ts"
import { pageWords } from "./page-words.ts"

/** What a live page carries with it. */
export interface CarriedSource extends CarriedAnswers {
  readonly notebook: string
  /** Absent while nothing was changed. */
  readonly original?: string
  /** Digests of the words of each run of prose (text-digest.ts), to tell one that was changed in the file. */
  readonly prose?: readonly string[]
}

export interface ReadSource {
  /** Null where not even the notebook could be found. */
  readonly source: CarriedSource | null
  /** What is to be said of it, in sentences. */
  readonly told: readonly string[]
}

const texts = v.object({
  notebook: v.string(),
  original: v.exactOptional(v.string()),
  prose: v.exactOptional(v.array(v.string())),
})

/** The source in the page. */
export function carriedSource(): ReadSource {
  return readSource(document.getElementById(sourceId)?.textContent ?? "")
}

/** @param json text of the element that holds it */
export function readSource(json: string): ReadSource {
  let carried: unknown
  try {
    carried = JSON.parse(json)
  } catch {
    const notebook = notebookIn(json)
    return notebook === null
      ? { source: null, told: [pageWords.unreadable] }
      : { source: { notebook }, told: [pageWords.onlyNotebook] }
  }
  const read = v.safeParse(texts, carried)
  if (!read.success) {
    const notebook = (carried as { notebook?: unknown } | null)?.notebook
    return typeof notebook === "string"
      ? { source: { notebook }, told: [pageWords.onlyNotebook] }
      : { source: null, told: [pageWords.unreadable] }
  }
  const { answers, misfits } = fitting(carried as Record<string, unknown>)
  return {
    source: { ...read.output, ...answers },
    told: misfits > 0 ? [pageWords.misfits(misfits)] : [],
  }
}

/** The answers that are what they should be; a list that is none counts as one misfit. */
function fitting(carried: Record<string, unknown>): { answers: CarriedAnswers; misfits: number } {
  let misfits = 0
  const answers: Record<string, unknown> = {}
  for (const [name, schema] of Object.entries(carriedSchemas)) {
    const list = Object.hasOwn(carried, name) ? carried[name] : []
    if (!Array.isArray(list)) misfits += 1
    else {
      const read = list.map((one: unknown) => v.safeParse(schema, one))
      misfits += read.filter(({ success }) => !success).length
      const fit = read.flatMap((one) => (one.success ? [one.output] : []))
      if (fit.length > 0) answers[name] = fit
    }
  }
  return { answers, misfits }
}

/** The notebook in a text that is no JSON any more: its string may be whole where something after it is not. */
function notebookIn(json: string): string | null {
  const found = /"notebook"\s*:\s*"/.exec(json)
  if (!found) return null
  const start = found.index + found[0].length - 1
  let end = start + 1
  while (end < json.length && json[end] !== '"') end += json[end] === "\\" ? 2 : 1
  try {
    const notebook: unknown = JSON.parse(json.slice(start, end + 1))
    return typeof notebook === "string" ? notebook : null
  } catch {
    return null
  }
}
