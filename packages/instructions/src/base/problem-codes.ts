// The codes of all problems the reader tells, each with the severities it may have. The union is closed: no other
// code can be told, and every one of them is reached by a text of the tests.

import type { Severity } from "./severity.ts"

const error: readonly Severity[] = ["error"]
const warning: readonly Severity[] = ["warning"]
const note: readonly Severity[] = ["note"]
/** A warning, or a note where a stated total bears the round out. */
const doubt: readonly Severity[] = ["warning", "note"]
/** What stops a round; less where the round stands for its stated total all the same. */
const stop: readonly Severity[] = ["error", "warning", "note"]

export const problemCodes = {
  // The text, or a round of it, cannot be read.
  "empty-text": error,
  "no-rounds": error,
  "not-text": error,
  "number-too-large": error,
  "round-too-long": error,
  "round-without-number": error,
  "text-too-long": error,
  "too-many-rounds": error,
  "worked-along-chain": error,
  // A round cannot be worked as its words say.
  "chain-used-up": stop,
  "empty-round": stop,
  "figure-passed-over": stop,
  "growth-not-placed": stop,
  "needs-more-than-there-is": stop,
  "nested-too-deeply": stop,
  "no-such-place": stop,
  "no-such-round": stop,
  "nothing-left": stop,
  "repeat-without-end": stop,
  "round-too-large": stop,
  "too-many-chains": stop,
  "too-many-repeats": stop,
  "too-many-steps": stop,
  "words-passed-over": stop,
  // Something between rounds does not agree.
  "round-missing": warning,
  "round-number-again": warning,
  "second-piece": warning,
  "stands-on-doubt": warning,
  // Something in a round does not agree, or is open.
  "bracket-not-closed": doubt,
  "closing-chain-assumed": warning,
  "corner-not-said": doubt,
  "few-stitches": warning,
  "first-place-short": doubt,
  "fold-lost": warning,
  "growth-implied": doubt,
  "last-time-in-part": doubt,
  "left-to-maker": doubt,
  "named-space-absent": doubt,
  "named-stitch-absent": doubt,
  "open-at-join": doubt,
  "counted-by-itself": doubt,
  "read-with-gap": doubt,
  "repeat-does-not-divide": doubt,
  "repeat-end-missing": doubt,
  "repeat-implied": doubt,
  "repeat-start-missing": doubt,
  "round-without-label": doubt,
  "skip-runs-out": doubt,
  "spaces-left-over": doubt,
  "stated-total-differs": doubt,
  "step-without-effect": doubt,
  "stitches-left-over": doubt,
  "stitches-passed-over": doubt,
  "terms-may-be-uk": doubt,
  "total-met-rarely": warning,
  "two-readings": doubt,
  "uneven-at-join": doubt,
  // A choice is told, or what was passed over knowingly.
  "bracket-opens-repeat": note,
  aside: note,
  "begins-in-space": note,
  "first-size-read": note,
  "further-rounds": note,
  "gauge-line": doubt,
  "gauge-unlike-yarn": warning,
  "heading-not-read": note,
  "hook-impossible": warning,
  "hook-not-read": note,
  "size-impossible": warning,
  "size-not-read": note,
  "yarn-not-read": note,
  "last-stitch-is-first": note,
  "loop-closed-by-cluster": note,
  "more-problems": note,
  "not-of-the-work": note,
  "not-reckoned": note,
  "not-worked": note,
  "other-way": note,
  "outside-rounds": note,
  "reading-chosen": note,
  "ring-not-described": note,
  "rounds-by-paragraph": note,
  "side-finished": note,
  "skew-not-read": note,
  "spread-evenly": note,
  "taken-for": note,
  "terms-by-names": note,
  "terms-overruled": note,
  "total-includes-chains": note,
  "total-not-firm": note,
  "word-in-total": note,
} as const satisfies Readonly<Record<string, readonly Severity[]>>

/** Stable, hyphenated: `stated-total-differs`, `repeat-does-not-divide`, `words-passed-over` ... */
export type ProblemCode = keyof typeof problemCodes
