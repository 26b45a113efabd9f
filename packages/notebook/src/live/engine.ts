// Where a page's answers are computed: in a worker made from the page's own script, or, where workers
// are not to be had, on the page's thread with pauses for its reader. Only the latest question counts.

/// <reference lib="dom" />

import { type Answerer, makeAnswerer } from "./answer.ts"
import { answerLatest } from "./answer-latest.ts"
import type {
  Answer,
  FigureQuestion,
  NotebookQuestion,
  PictureQuestion,
  Question,
  SquaringQuestion,
} from "./messages.ts"
import { pageWords } from "./page-words.ts"

export interface Engine {
  /** Asks for the notebook; an answer to an earlier question is dropped. */
  ask(question: Asked): void
  /** Ends the work at hand; nothing more is told of it. */
  stop(): void
  /** True while a question is open. */
  busy(): boolean
  /** Where it runs. */
  where(): "worker" | "page"
}

type Asked =
  | Omit<NotebookQuestion, "id">
  | Omit<SquaringQuestion, "id">
  | Omit<FigureQuestion, "id">
  | Omit<PictureQuestion, "id">

interface Runner {
  ask(question: Question): void
  stop(): void
}

/** On the page's own thread heavy work waits until the reader has paused this long. */
const readerPauseMs = 800

/**
 * @param script text of the page's script, which knows what to do in a worker
 * @param answerer who answers where no worker can be had
 */
export function startEngine(
  script: string,
  tell: (answer: Answer) => void,
  answerer: (sharing: boolean) => Answerer = makeAnswerer,
): Engine {
  let latest = 0
  let unanswered: Question | null = null
  /** The question a worker has ended over: it is asked once more, and then given up. */
  let endedOver = 0
  const hear = (answer: Answer) => {
    if (answer.id !== latest) return
    if (answer.part === "end" || answer.part === "failed") unanswered = null
    tell(answer)
  }
  const takeOver = () => {
    runner = answerLatest(hear, readerPauseMs, answerer(true))
    where = "page"
    if (unanswered) runner.ask(unanswered)
  }
  const ended = () => {
    if (!unanswered) return
    if (endedOver === unanswered.id)
      hear({ part: "failed", id: unanswered.id, message: pageWords.workerEnded })
    else {
      endedOver = unanswered.id
      runner.ask(unanswered)
    }
  }
  let where: "worker" | "page" = "worker"
  let runner: Runner = workerRunner(script, hear, takeOver, ended)
  return {
    ask: (question) => {
      latest += 1
      unanswered = { ...question, id: latest }
      runner.ask(unanswered)
    },
    stop: () => {
      latest += 1
      unanswered = null
      runner.stop()
    },
    busy: () => unanswered !== null,
    where: () => where,
  }
}

/**
 * @param onFailure called once, never while `ask` runs, when no worker can be had
 * @param onEnd called when a worker has ended by itself, as one does that finds no memory
 */
function workerRunner(
  script: string,
  hear: (answer: Answer) => void,
  onFailure: () => void,
  onEnd: () => void,
): Runner {
  let worker: Worker | null = null
  let failed = false
  const fail = () => {
    if (failed) return
    failed = true
    worker?.terminate()
    worker = null
    queueMicrotask(onFailure)
  }
  const start = (): Worker | null => {
    try {
      const address = URL.createObjectURL(new Blob([script], { type: "text/javascript" }))
      const made = new Worker(address)
      const lock = crypto.randomUUID()
      made.onmessage = ({ data }: MessageEvent<Answer | Held>) => {
        if (!("holds" in data)) hear(data)
        // Given to the page only when the worker is no more.
        else
          void navigator.locks.request(lock, () => {
            if (worker !== made) return
            worker = null
            onEnd()
          })
      }
      made.postMessage({ hold: lock })
      made.onerror = (event) => {
        event.preventDefault()
        fail()
      }
      return made
    } catch {
      fail()
      return null
    }
  }
  return {
    ask: (question) => {
      if (failed) return
      worker ??= start()
      worker?.postMessage(question)
    },
    stop: () => {
      worker?.terminate()
      worker = null
    },
  }
}

/** A worker tells nobody of its end; but a lock that it holds for life is free then. */
interface Held {
  readonly holds: string
}

/** What the script does in a worker: it answers the latest question. */
export function serveWorker(answerer: Answerer): void {
  const runner = answerLatest((answer) => self.postMessage(answer), 0, answerer)
  self.onmessage = ({ data }: MessageEvent<Question | { readonly hold: string }>) => {
    if ("hold" in data) holdForLife(data.hold)
    else runner.ask(data)
  }
}

/** Browsers without locks do without: then Stop is the way out. */
function holdForLife(lock: string): void {
  navigator.locks
    ?.request(lock, () => {
      self.postMessage({ holds: lock } satisfies Held)
      return new Promise(() => {})
    })
    .catch(() => {})
}
