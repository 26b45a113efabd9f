// The worker's part of a page with pictures: it measures what is asked, tells what it is doing, and keeps what was
// measured last, so that a count set by hand is shown at once. All other questions go to the notebook's answerer.

import { type MeasuringMemory, measureCell } from "../../picture/measure-cell.ts"
import type { Answerer } from "../answer.ts"
import { pictureWords } from "./words.ts"

export function withPictures(others: Answerer): Answerer {
  const memory: MeasuringMemory & { picture: number } = { key: "", measured: null, picture: -1 }
  return {
    answer: async (question, tell, rest) => {
      if (!("measure" in question)) return others.answer(question, tell, rest)
      const { id, measure } = question
      if (!(await rest("heavy work"))) return
      if (memory.picture !== measure.picture) {
        memory.measured = null
        memory.picture = measure.picture
      }
      const found = measureCell(measure.text, measure.decoded, memory, (stage) =>
        tell({ part: "working", id, doing: pictureWords.stages[stage] }),
      )
      tell({ part: "picture", id, found })
      tell({ part: "end", id })
    },
  }
}
