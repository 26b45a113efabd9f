// Beside each remedy a button: try it, or, where the text cannot be changed safely, the round to change.

/// <reference lib="dom" />

import { button } from "./dom.ts"
import type { TriedRemedy } from "./trials.ts"

export interface TrialActions {
  take(text: string): void
  showLine(line: number): void
}

/** @param remedies list items in the order of `trials` */
export function offerTrials(
  remedies: Iterable<Element>,
  trials: readonly (TriedRemedy | null)[],
  actions: TrialActions,
): void {
  let place = 0
  for (const remedy of remedies) {
    remedy.querySelector(".try")?.remove()
    const trial = trials[place]
    place += 1
    if (!trial) continue
    const { text, line } = trial
    const about = `remedy ${place}`
    remedy.append(
      text === null
        ? button("Show the round to change", () => actions.showLine(line), {
            class: "try",
            "aria-label": `Show the round to change by ${about}`,
          })
        : button("Try it", () => actions.take(text), {
            class: "try",
            "aria-label": `Try it: change the pattern by ${about}`,
          }),
    )
  }
}
