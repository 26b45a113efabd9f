// Asking the engines of a page. One answers at once from the ledger; where a shape has to be laid out for the
// rest, another does that meanwhile, so that the first stays free for the next change.

/// <reference lib="dom" />

import type { Bar } from "./bar.ts"
import { type Engine, startEngine } from "./engine.ts"
import type { Answer, NotebookQuestion } from "./messages.ts"

/** Rest after a key before the engine is asked, ms: keys struck in one go ask once. */
const restMs = 40

/** Work longer than this is told of, and can be stopped, ms. */
const longWorkMs = 500

export interface Askers {
  /** What to ask now. */
  question(): Pick<NotebookQuestion, "markdown" | "known">
  /** Hears every part of every answer. `quick` is false for the answer with shapes laid out. */
  hear(answer: Answer, quick: boolean): void
  /** Texts of the pieces to lay out after a quick answer. */
  toLayOut(): readonly string[]
  /** Nothing is being worked out any more. @param done false when it was stopped or has failed */
  rested(done: boolean): void
}

export class Asking {
  readonly #quick: Engine
  readonly #deep: Engine
  #waiting = 0
  #longWork = 0

  constructor(
    script: string,
    private readonly bar: Bar,
    private readonly askers: Askers,
  ) {
    this.#quick = startEngine(script, (answer) => this.#hearQuick(answer))
    this.#deep = startEngine(script, (answer) => this.#hearDeep(answer))
  }

  /** After a short rest, since more keys may follow. What is being laid out is of yesterday. */
  askSoon(): void {
    if (this.#deep.busy()) this.#deep.stop()
    document.body.classList.add("old", "waiting")
    clearTimeout(this.#waiting)
    this.#waiting = window.setTimeout(() => this.ask(), restMs)
  }

  ask(): void {
    document.body.classList.add("waiting")
    clearTimeout(this.#waiting)
    clearTimeout(this.#longWork)
    this.#longWork = window.setTimeout(
      () => this.bar.showWork("Working it out; earlier answers stay until then."),
      longWorkMs,
    )
    this.#quick.ask({ ...this.askers.question(), layOut: [] })
  }

  stop(): void {
    this.#quick.stop()
    this.#deep.stop()
    this.#rest(false)
    this.bar.speak("Stopped. Earlier answers are shown.")
  }

  where(): "worker" | "page" {
    return this.#quick.where()
  }

  #hearQuick(answer: Answer): void {
    this.askers.hear(answer, true)
    if (answer.part === "failed") this.#rest(false)
    if (answer.part !== "end") return
    document.body.classList.remove("old")
    const layOut = this.askers.toLayOut()
    if (layOut.length === 0) this.#rest(true)
    else this.#deep.ask({ ...this.askers.question(), layOut })
  }

  #hearDeep(answer: Answer): void {
    this.askers.hear(answer, false)
    if (answer.part === "working")
      this.bar.tellWork(`Working it out: ${answer.doing}. What needs it is marked as earlier.`)
    if (answer.part === "end" || answer.part === "failed") this.#rest(answer.part === "end")
  }

  #rest(done: boolean): void {
    document.body.classList.remove("waiting")
    clearTimeout(this.#longWork)
    this.bar.showWork(null)
    this.askers.rested(done)
  }
}
