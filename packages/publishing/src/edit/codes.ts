// The codes of all findings of an edit, each with the severities it may have. The union is closed: no other code is told.

/** An editor's order: what must be mended before it is published, what the designer is asked, what is a matter of style. */
export type EditSeverity = "must-mend" | "query" | "style"

const mend: readonly EditSeverity[] = ["must-mend"]
const query: readonly EditSeverity[] = ["query"]
const style: readonly EditSeverity[] = ["style"]
/** Must be mended where the reader is sure of all it rests on, else asked. */
const either: readonly EditSeverity[] = ["must-mend", "query"]

export const editCodes = {
  "no-pattern": query,
  // Counts and work of the rounds.
  "total-wrong": either,
  "spaces-total-wrong": either,
  "total-missing": query,
  "repeat-does-not-fit": either,
  "stitches-left-over": either,
  "place-not-there": either,
  "bracket-open": either,
  "repeat-marks-missing": either,
  "repeats-differ": query,
  "round-missing": either,
  "round-number-again": either,
  "round-not-labelled": either,
  "not-understood": query,
  "not-settled": query,
  "chart-differs": either,
  "round-named-not-there": query,
  // Starts, joins and the end.
  "start-not-said": query,
  "join-into-wrong-place": either,
  "join-missing": query,
  "no-fasten-off": query,
  // Terms and abbreviations.
  "terms-mixed": either,
  "terms-not-stated": query,
  "abbreviation-not-listed": query,
  "abbreviation-not-used": style,
  "abbreviations-missing": query,
  "special-stitch-not-explained": query,
  // What stands above the rounds.
  "yarn-missing": query,
  "hook-missing": query,
  "gauge-missing": query,
  "size-missing": query,
  "hook-letter-differs": either,
  "gauge-impossible": either,
  "heading-impossible": mend,
  "heading-not-understood": query,
  "size-impossible": either,
  "measures-differ": query,
  "colour-not-listed": query,
  // Style.
  "totals-in-two-styles": style,
  "labels-in-two-styles": style,
  "words-in-two-styles": style,
  "word-twice": style,
} as const satisfies Readonly<Record<string, readonly EditSeverity[]>>

export type EditCode = keyof typeof editCodes
