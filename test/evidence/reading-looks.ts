// First looks at patterns as makers published them, batch by batch, and the same texts read again by whoever has saved them.

import { existsSync, readFileSync } from "node:fs"
import { join } from "node:path"
import { type KeyedText, scoreText, type TextScore } from "./found-texts.ts"

export interface ReadingLook {
  /** Keyed rounds, how many of them were counted as by hand, otherwise without a warning, and rightly but warned of. */
  readonly rounds: number
  readonly right: number
  readonly silent: number
  readonly falselyWarned: number
  readonly texts: number
  readonly toTheEnd: number
}

export interface ReadingBatch {
  readonly batch: number
  readonly firstLook: ReadingLook
  /** What another reader made of the same texts. */
  readonly beside?: string
  readonly texts: readonly KeyedText[]
}

/** The batches in the order they were drawn. */
export function readingBatches(): ReadingBatch[] {
  const path = new URL("./reading-batches.json", import.meta.url)
  return JSON.parse(readFileSync(path, "utf8")).batches
}

/** The batch read now, of the texts saved as `<id>.txt` in a folder; null when none is there. */
export function readAgain({ texts }: ReadingBatch, folder: string): ReadingLook | null {
  const scores = texts.flatMap((key): TextScore[] => {
    const file = join(folder, `${key.id}.txt`)
    return existsSync(file) ? [scoreText(key, readFileSync(file, "utf8"))] : []
  })
  if (scores.length === 0) return null
  const sum = (of: (score: TextScore) => number) => scores.reduce((all, one) => all + of(one), 0)
  return {
    rounds: sum(({ rounds }) => rounds),
    right: sum(({ right }) => right),
    silent: sum(({ silentlyWrong }) => silentlyWrong),
    falselyWarned: sum(({ falselyWarned }) => falselyWarned),
    texts: scores.length,
    toTheEnd: sum(({ toTheEnd }) => (toTheEnd ? 1 : 0)),
  }
}

/** "91 of 270 rounds right (34 %), 25 of 45 texts to the end, ...". */
export function lookWords(look: ReadingLook): string {
  const share = (part: number, of: number) => `${((100 * part) / Math.max(1, of)).toFixed(1)} %`
  return (
    `${look.right} of ${look.rounds} rounds right (${share(look.right, look.rounds)}), ` +
    `${look.toTheEnd} of ${look.texts} texts to the end (${share(look.toTheEnd, look.texts)}), ` +
    `wrong in silence ${look.silent} (${share(look.silent, look.rounds)}), ` +
    `right and warned of ${look.falselyWarned} (${share(look.falselyWarned, look.right)})`
  )
}
