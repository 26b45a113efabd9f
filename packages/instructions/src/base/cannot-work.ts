// What stops the work of a round. A shortage is often only tried for, so its words are made when they are asked for.

import type { ProblemCode } from "./problem-codes.ts"
import type { Finding } from "./problem-list.ts"

/** Thrown inside a round only: it cannot be worked on from here. */
export class CannotWork {
  private told: Finding | null = null

  /** @param made the finding, or how it is made where it is not always told */
  constructor(
    private readonly made: Finding | (() => Finding),
    readonly code: ProblemCode | "" = typeof made === "function" ? "" : made.code,
  ) {}

  get finding(): Finding {
    this.told ??= typeof this.made === "function" ? this.made() : this.made
    return this.told
  }
}
