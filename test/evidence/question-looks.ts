// First looks at makers' own questions: what was scored when each batch was run, never changed afterwards.

import { readFileSync } from "node:fs"

interface QuestionLook {
  readonly batch: string
  readonly n: number
  readonly right: number
  readonly opposite: number
  readonly notTheHook: readonly [right: number, of: number]
  readonly note?: string
  /** Of batches gathered by another: where each was found, the least and most that were keyed, and its score. */
  readonly cases?: readonly {
    readonly address: string
    readonly key: Readonly<Record<string, readonly [least: number, most: number]>>
    readonly notTheHook: boolean
    readonly score: "right" | "part" | "wrong" | "opposite"
  }[]
}

/** A line a batch. */
export function questionLooks(): string[] {
  return readLooks().map(
    ({ batch, n, right, opposite, notTheHook, note }) =>
      `${batch}: ${right} of ${n} right (${Math.round((100 * right) / n)} %), ${opposite} opposite; 'not the hook' ${notTheHook[0]} of ${notTheHook[1]} right${note ? `; ${note}` : ""}`,
  )
}

export function readLooks(): QuestionLook[] {
  return JSON.parse(readFileSync(new URL("./question-looks.json", import.meta.url), "utf8"))
}
