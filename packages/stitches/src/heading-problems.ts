// What is said of a heading that cannot be used, each with a place and a way to write it.

import type { Spot } from "./heading-tokens.ts"
import type { SizeRefused } from "./piece-size.ts"
import type { HookReading } from "./read-hook.ts"

export interface HeadingProblem {
  readonly code:
    | "gauge-line"
    | "hook-not-read"
    | "hook-impossible"
    | "yarn-not-read"
    | "size-not-read"
    | "size-impossible"
    | "heading-not-read"
  readonly message: string
  readonly hint: string
  /** Offset in the text and length, UTF-16 units. */
  readonly start: number
  readonly length: number
}

const at = ({ start, end }: Spot) => ({ start, length: end - start })
const hookHint = 'Give it in mm: "Hook: 4 mm".'
const sizeHint =
  'Give it as a ruler has it: "Size: 9 cm", or after a round: "Size: 9 cm after Rnd 3".'

export function hookProblem(refused: NonNullable<HookReading["refused"]>): HeadingProblem {
  const messages = {
    "below zero": "A hook cannot be below zero; none is taken.",
    unbelievable: "No hook of this size is made; none is taken.",
    undecided: "This hook size is not understood, or tables differ on it.",
  }
  const code = refused.why === "undecided" ? "hook-not-read" : "hook-impossible"
  return { code, message: messages[refused.why], hint: hookHint, ...at(refused) }
}

export function sizeProblem(refused: SizeRefused): HeadingProblem {
  const messages = {
    unit: "A motif is not measured in this unit; the size was not used.",
    nothing: "A piece cannot have this size; it was not used.",
    unbelievable: "No motif has this size; it was not used.",
    "not square": "This is longer than wide, which is no size of one motif; it was not used.",
    several: "Several sizes are given and no round says which is meant; none was used.",
  }
  const open = refused.why === "not square" || refused.why === "several"
  const code = open ? "size-not-read" : "size-impossible"
  return { code, message: messages[refused.why], hint: sizeHint, ...at(refused) }
}

export function severalYarns(start: number, end: number): HeadingProblem {
  return {
    code: "yarn-not-read",
    message: "More than one yarn weight is named here; none is taken.",
    hint: 'Name the one you work with: "Yarn: DK".',
    ...at({ start, end }),
  }
}

export function nothingRead(about: string, start: number, end: number): HeadingProblem {
  if (about === "hook") return hookProblem({ start, end, why: "undecided" })
  return {
    code: "heading-not-read",
    message: "This heading is too long to be read to its end.",
    hint: "Give yarn, hook, gauge and size each on a line of its own.",
    ...at({ start, end }),
  }
}
