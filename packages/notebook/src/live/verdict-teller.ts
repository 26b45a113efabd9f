// Telling the verdict of the pattern at hand: shown at once, spoken when it has stood for a while, so
// that half-typed words are not told.

import { firstAnswer } from "../page/verdict-html.ts"
import type { Bar } from "./bar.ts"
import type { Saying } from "./messages.ts"

/** A verdict is spoken when it has stood this long, ms. */
const speakAfterMs = 700

export class VerdictTeller {
  #sayings: readonly Saying[] = []
  #waiting: ReturnType<typeof setTimeout> | undefined
  #heard = ""

  constructor(private readonly bar: Bar) {}

  /** What is said of each pattern now. A first answer is shown, not spoken: the next may be another. */
  hear(sayings: readonly Saying[]): void {
    this.#sayings = sayings
  }

  /**
   * Tells of the pattern of that name, or of the first.
   * @param aloud false while nothing was changed: nobody has to hear the verdict of a page just opened
   */
  tell(name: string | undefined, aloud: boolean): void {
    const saying = this.#sayings.find((one) => one.name === name) ?? this.#sayings[0]
    if (!saying) return
    const { title, name: ownName, sentence, provisional } = saying
    const of = title ?? (this.#sayings.length > 1 ? ownName : null)
    const said = of === null ? sentence : `${of}: ${sentence}`
    this.bar.say(provisional ? `${said} ${firstAnswer}` : said)
    clearTimeout(this.#waiting)
    if (!aloud) this.#heard = said
    if (said === this.#heard || provisional) return
    this.#waiting = setTimeout(() => {
      this.bar.speak(said)
      this.#heard = said
    }, speakAfterMs)
  }
}
