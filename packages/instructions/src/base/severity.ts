// How much a problem weighs.

/** `error` stops the motif at its round, `warning` makes it doubtful, `note` is only told. */
export type Severity = "error" | "warning" | "note"
