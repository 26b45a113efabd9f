// The one error class of the project: what went wrong, where, what to do, and the numbers involved.
//
// Readers of text return problems instead of throwing; everything else throws this for input that
// cannot be used (not finite, negative length, unknown name). A solver that does not converge is
// not an error: how it ended is part of its result.

/** A place in a text, counted from 1; `length` is in characters. */
export interface Place {
  readonly line: number
  readonly column: number
  readonly length: number
}

export interface ErrorDetails {
  /** What the user can do about it, one sentence. */
  readonly hint?: string
  readonly place?: Place
  /** The numbers the message speaks of, by name. */
  readonly numbers?: Readonly<Record<string, number>>
}

export class RoundwrightError extends Error {
  override readonly name = "RoundwrightError"
  readonly hint: string
  readonly place: Place | undefined
  readonly numbers: Readonly<Record<string, number>>

  /** @param code stable short identifier, words joined by hyphens, e.g. `not-finite` */
  constructor(
    readonly code: string,
    message: string,
    details: ErrorDetails = {},
  ) {
    super(message)
    this.hint = details.hint ?? ""
    this.place = details.place
    this.numbers = details.numbers ?? {}
  }
}

/** What `run` gives, or `instead` of what it was refused with; errors of any other kind pass. */
export function unlessRefused<T, Instead>(
  run: () => T,
  instead: (refusal: RoundwrightError) => Instead,
): T | Instead {
  try {
    return run()
  } catch (error) {
    if (!(error instanceof RoundwrightError)) throw error
    return instead(error)
  }
}

/** Refuses NaN and infinities at a border. @throws RoundwrightError `not-finite` */
export function requireFinite(value: number, what: string): number {
  if (Number.isFinite(value)) return value
  throw new RoundwrightError("not-finite", `${what} must be a finite number, not ${value}.`, {
    numbers: { value },
  })
}

/** Refuses anything that is not a finite number above zero. @throws RoundwrightError `not-positive` */
export function requirePositive(value: number, what: string): number {
  if (requireFinite(value, what) > 0) return value
  throw new RoundwrightError("not-positive", `${what} must be above zero, not ${value}.`, {
    numbers: { value },
  })
}
