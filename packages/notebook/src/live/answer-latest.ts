// Answers one question at a time and gives up on it when a newer one comes.

import { makeAnswerer, type Rest } from "./answer.ts"
import type { Answer, Question } from "./messages.ts"

/**
 * @param tell hears the answers, in order; parts of a question given up on may have been told
 * @param heavyRestMs rest before work that holds up the thread: where a reader shares it, until they pause
 */
export function answerLatest(
  tell: (answer: Answer) => void,
  heavyRestMs: number,
): {
  ask(question: Question): void
  stop(): void
} {
  const answerer = makeAnswerer(heavyRestMs > 0)
  let wanted: Question | null = null
  let busy = false
  const work = async () => {
    busy = true
    while (wanted) {
      const question: Question = wanted
      const goesOn: Rest = async (before) => {
        await pause(before ? heavyRestMs : 0)
        return wanted === question
      }
      try {
        if (await goesOn()) await answerer.answer(question, tell, goesOn)
      } catch (error) {
        const message = error instanceof Error ? error.message : String(error)
        tell({ part: "failed", id: question.id, message })
      }
      if (wanted === question) wanted = null
    }
    busy = false
  }
  return {
    ask: (question) => {
      wanted = question
      if (!busy) void work()
    },
    stop: () => {
      wanted = null
    },
  }
}

/** Lets whoever shares the thread do something: take in a key, or hear a newer question. */
function pause(ms: number): Promise<void> {
  return new Promise((resolve) => {
    globalThis.setTimeout(resolve, ms)
  })
}
