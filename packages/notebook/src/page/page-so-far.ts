// What the cells of a page must know of one another: what was said above need not be said again.

import type { NotebookResult } from "../result.ts"

export interface PageSoFar {
  /** Names of the patterns whose problems a cell of the notebook lists. */
  readonly listed: ReadonlySet<string>
  /** True when there is one pattern only: nothing need be said of which. */
  readonly alone: boolean
  /** Sentences that one saying is enough of, as far as they were said; cells add theirs. */
  readonly told: Set<string>
}

/** Make one for each page, and give it to its cells from top to bottom. */
export function pageSoFar({ cells, patterns }: NotebookResult): PageSoFar {
  const listed = new Set(
    cells.flatMap(({ content }) => (content?.kind === "problems" ? [content.pattern.name] : [])),
  )
  return { listed, alone: patterns.length < 2, told: new Set() }
}
