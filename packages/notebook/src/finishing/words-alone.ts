// An answer that is words alone: a first sentence, and lines below it.

import type { FinishingAnswer } from "./types.ts"

export function wordsAlone({
  text,
  lines = [],
}: {
  readonly text: string
  readonly lines?: readonly string[] | undefined
}): FinishingAnswer {
  return {
    lead: text,
    items: lines.map((line) => ({ text: line, rounds: [] })),
    table: null,
    notes: [],
    drawing: null,
  }
}
